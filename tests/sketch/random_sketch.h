#pragma once

#include "core/sketch/format/describe_sketch.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <random>
#include <string>
#include <string_view>

namespace siphonwright::test {

/// Choices by a generator with a seed of its own.
class RandomChoices {
public:
    explicit RandomChoices(unsigned seed) : random_(seed) {}

    std::size_t upTo(std::size_t most)
    {
        return std::uniform_int_distribution<std::size_t>(0, most)(random_);
    }
    std::int64_t whole(std::int64_t least, std::int64_t most)
    {
        return std::uniform_int_distribution<std::int64_t>(least, most)(random_);
    }
    double between(double least, double most)
    {
        return std::uniform_real_distribution<double>(least, most)(random_);
    }

private:
    std::mt19937 random_;
};

/// Fills every described member with something allowed: limits themselves, awkward doubles, awkward text,
/// absent and present options. What is made follows the format, so it must survive writing and reading.
template <class Choices>
class SketchFiller {
public:
    explicit SketchFiller(Choices& choices) : choices_(choices) {}

    Sketch sketch()
    {
        Sketch sketch;
        describe(*this, sketch);
        for (std::size_t i = 0; i < sketch.ports.size(); ++i)
            sketch.ports[i].id = "port-" + std::to_string(i);
        for (std::size_t i = 0; i < sketch.heaters.size(); ++i)
            sketch.heaters[i].id = "heater-" + std::to_string(i);
        for (std::size_t i = 0; i < sketch.areas.size(); ++i)
            sketch.areas[i].edit([i](Area& area) { area.id = "area-" + std::to_string(i); });
        for (std::size_t i = 0; i < sketch.dimensions.size(); ++i)
            sketch.dimensions[i].id = "dimension-" + std::to_string(i);
        for (std::size_t i = 0; i < sketch.hoses.size(); ++i) {
            sketch.hoses[i].edit([this, i, &sketch](Hose& hose) {
                hose.id = "hose-" + std::to_string(i);
                connect(sketch, hose.from);
                connect(sketch, hose.to);
            });
        }
        return sketch;
    }

    void object(std::string_view /*name*/, std::string_view /*meaning*/) {}
    template <class M>
    void operator()(const Field& field, M& member)
    {
        value(field, member);
    }

    /// Any allowed value of one member.
    template <class M>
    void fill(const Field& field, M& member)
    {
        value(field, member);
    }

private:
    std::size_t upTo(std::size_t most) { return choices_.upTo(most); }

    void connect(const Sketch& sketch, HoseEnd& end)
    {
        end.port.clear();
        end.heater.clear();
        if (upTo(2) == 0 && !sketch.ports.empty())
            end.port = sketch.ports[upTo(sketch.ports.size() - 1)].id;
        else if (upTo(1) == 0 && !sketch.heaters.empty())
            end.heater = sketch.heaters[upTo(sketch.heaters.size() - 1)].id;
    }

    void value(const Field& /*field*/, bool& into) { into = upTo(1) == 0; }
    void value(const Field& field, int& into) { into = field.whole_numbers.at(upTo(field.whole_count - 1)); }
    void value(const Field& field, std::int64_t& into)
    {
        into = choices_.whole(static_cast<std::int64_t>(field.least), static_cast<std::int64_t>(field.most));
        if (upTo(2) == 0)
            into = static_cast<std::int64_t>(upTo(1) == 0 ? field.least : field.most);
    }
    void value(const Field& field, double& into)
    {
        const std::array special{field.least, field.most, 0.0, -0.0, 0.1, 1e-300, -5e-324, 19.05, 1.0 / 3};
        into = choices_.between(field.least, field.most);
        if (const double chosen = special.at(upTo(special.size() - 1));
            upTo(2) == 0 && chosen >= field.least && chosen <= field.most)
            into = chosen;
    }
    void value(const Field& field, std::string& into)
    {
        const std::array<std::string_view, 9> pieces{"a", "Z9 ", "\"", "\\", "\n", "\x01", "é", "≤", "🙂"};
        into.clear();
        for (std::size_t i = field.shortest_text + upTo(6); i > 0; --i)
            into += pieces.at(upTo(pieces.size() - 1));
    }
    template <Word E>
    void value(const Field& /*field*/, E& into)
    {
        into = static_cast<E>(upTo(Words<E>::list.size() - 1));
    }
    template <class T>
    void value(const Field& field, std::optional<T>& into)
    {
        into.reset();
        if (upTo(1) == 0)
            value(field, into.emplace());
    }
    template <class T>
    void value(const Field& field, Shared<T>& into)
    {
        into.edit([this, &field](T& inside) { value(field, inside); });
    }
    template <class T>
    void value(const Field& field, std::vector<T>& into)
    {
        into.resize(field.fewest_items + upTo(3));
        for (T& item : into)
            value(field, item);
    }
    template <class T>
    void value(const Field& field, Fact<T>& into)
    {
        describeFact(*this, field, into);
    }
    template <class T>
    requires std::is_class_v<T>
    void value(const Field& /*field*/, T& into) { describe(*this, into); }

    Choices& choices_;
};

class RandomFiller {
public:
    explicit RandomFiller(unsigned seed) : choices_(seed) {}
    Sketch sketch() { return SketchFiller<RandomChoices>(choices_).sketch(); }

private:
    RandomChoices choices_;
};

} // namespace siphonwright::test
