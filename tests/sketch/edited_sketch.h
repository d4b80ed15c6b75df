#pragma once

#include "tests/sketch/random_sketch.h"

#include "core/sketch/format/describe_sketch.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

/// Sketches near a sensible one: members changed one by one by what the format allows.
namespace siphonwright::test {

/// Changes members of a sketch that choices fall on: a number a little or to anything within its range, a
/// list by an item less, one twice or all others, what may be left out left out or not.
template <class Choices>
class SketchEditor {
public:
    explicit SketchEditor(Choices& choices) : choices_(choices), filler_(choices) {}

    void change(Sketch& sketch)
    {
        chosen_ = nothing_chosen;
        at_ = 0;
        describe(*this, sketch);
        chosen_ = choices_.upTo(at_ - 1);
        at_ = 0;
        describe(*this, sketch);
    }

    void object(std::string_view /*name*/, std::string_view /*meaning*/) {}
    template <class M>
    void operator()(const Field& field, M& member)
    {
        visit(field, member);
    }

private:
    static constexpr std::size_t nothing_chosen = std::numeric_limits<std::size_t>::max();

    /// Counts a place; true where it is the one to be changed.
    bool here() { return at_++ == chosen_; }

    void visit(const Field& field, double& into)
    {
        if (!here())
            return;
        const std::size_t way = choices_.upTo(3);
        if (way == 0)
            return filler_.fill(field, into);
        const double small = std::min(50.0, (field.most - field.least) / 20);
        const double most = way == 1 ? small : 10 * small;
        into = std::clamp(into + choices_.between(-most, most), field.least, field.most);
    }
    template <class T>
    requires(std::is_same_v<T, bool> || std::is_same_v<T, int> || std::is_same_v<T, std::int64_t> ||
             std::is_same_v<T, std::string> || Word<T>) void visit(const Field& field, T& into)
    {
        if (here())
            filler_.fill(field, into);
    }
    template <class T>
    void visit(const Field& field, std::optional<T>& into)
    {
        if (here())
            return into ? into.reset() : filler_.fill(field, into.emplace());
        if (into)
            visit(field, *into);
    }
    template <class T>
    void visit(const Field& field, Shared<T>& into)
    {
        if (chosen_ == nothing_chosen) {
            T copy = *into;
            visit(field, copy);
        } else {
            into.edit([this, &field](T& inside) { visit(field, inside); });
        }
    }
    template <class T>
    void visit(const Field& field, std::vector<T>& into)
    {
        if (here())
            return changeList(field, into);
        for (T& item : into)
            visit(field, item);
    }
    template <class T>
    void visit(const Field& field, Fact<T>& into)
    {
        describeFact(*this, field, into);
    }
    template <class T>
    requires(std::is_class_v<T> && !std::is_same_v<T, std::string>) void visit(const Field& /*field*/,
                                                                               T& into)
    {
        describe(*this, into);
    }

    template <class T>
    void changeList(const Field& field, std::vector<T>& into)
    {
        const std::size_t way = choices_.upTo(2);
        if (way == 0 || into.empty())
            return filler_.fill(field, into);
        const std::size_t which = choices_.upTo(into.size() - 1);
        if (way == 1 && into.size() > field.fewest_items) {
            into.erase(into.begin() + static_cast<std::ptrdiff_t>(which));
        } else if (into.size() < field.most_items) {
            T twice = into[which];
            into.insert(into.begin() + static_cast<std::ptrdiff_t>(which), std::move(twice));
        }
    }

    Choices& choices_;
    SketchFiller<Choices> filler_;
    std::size_t chosen_ = nothing_chosen;
    std::size_t at_ = 0;
};

/// Ids that are there twice get others, ends on what is gone hang free: valid again after edits.
inline void makeValid(Sketch& sketch)
{
    std::set<Id> given;
    int fresh = 0;
    const auto unique = [&](Id id) {
        while (!given.insert(id).second)
            id = "again-" + std::to_string(++fresh);
        return id;
    };
    for (Port& port : sketch.ports)
        port.id = unique(port.id);
    for (Heater& heater : sketch.heaters)
        heater.id = unique(heater.id);
    for (Shared<Area>& area : sketch.areas)
        area.edit([&](Area& inside) { inside.id = unique(inside.id); });
    for (Dimension& dimension : sketch.dimensions)
        dimension.id = unique(dimension.id);
    const auto connect = [&](HoseEnd& end) {
        if (sketch.port(end.port) == nullptr)
            end.port.clear();
        if (sketch.heater(end.heater) == nullptr || !end.port.empty())
            end.heater.clear();
    };
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([&](Hose& inside) {
            inside.id = unique(inside.id);
            connect(inside.from);
            connect(inside.to);
        });
}

/// A sketch near `base`, or in one of eight cases any that the format allows.
template <class Choices>
Sketch sketchNear(const Sketch& base, Choices& choices)
{
    constexpr std::size_t most_changes = 24;
    Sketch sketch = base;
    if (choices.upTo(7) == 7)
        sketch = SketchFiller<Choices>(choices).sketch();
    SketchEditor<Choices> editor(choices);
    for (std::size_t i = choices.upTo(most_changes); i > 0; --i)
        editor.change(sketch);
    makeValid(sketch);
    return sketch;
}

} // namespace siphonwright::test
