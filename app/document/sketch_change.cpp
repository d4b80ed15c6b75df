#include "app/document/sketch_change.h"

#include "app/document/memory_of.h"

#include <cstddef>
#include <utility>

namespace siphonwright {
namespace {

using Parts = std::vector<std::unique_ptr<SketchChange::Part>>;

template <class Member>
struct MemberChange : SketchChange::Part {
    MemberChange(Member Sketch::*which, Member one, Member other)
        : member(which), before(std::move(one)), after(std::move(other))
    {}
    void put(Sketch& sketch, bool to_after) const override { sketch.*member = to_after ? after : before; }
    std::size_t bytes() const override { return sizeof(member) + memoryOf(before) + memoryOf(after); }

    Member Sketch::*member;
    Member before;
    Member after;
};

template <class Element>
struct ElementChange : SketchChange::Part {
    using List = std::vector<Element>;
    ElementChange(List Sketch::*which, std::size_t place, Element one, Element other)
        : list(which), index(place), before(std::move(one)), after(std::move(other))
    {}
    void put(Sketch& sketch, bool to_after) const override
    {
        (sketch.*list)[index] = to_after ? after : before;
    }
    std::size_t bytes() const override
    {
        return sizeof(list) + sizeof(index) + memoryOf(before) + memoryOf(after);
    }

    List Sketch::*list;
    std::size_t index;
    Element before;
    Element after;
};

struct Comparison {
    const Sketch& before;
    const Sketch& after;
    Parts& parts;

    template <class Member>
    void operator()(Member Sketch::*member) const
    {
        if (!(before.*member == after.*member))
            parts.push_back(std::make_unique<MemberChange<Member>>(member, before.*member, after.*member));
    }
    template <class Element>
    void operator()(std::vector<Element> Sketch::*member) const
    {
        const auto& one = before.*member;
        const auto& other = after.*member;
        if (one.size() != other.size()) {
            parts.push_back(std::make_unique<MemberChange<std::vector<Element>>>(member, one, other));
            return;
        }
        for (std::size_t i = 0; i < one.size(); ++i) {
            if (!(one[i] == other[i]))
                parts.push_back(std::make_unique<ElementChange<Element>>(member, i, one[i], other[i]));
        }
    }
};

template <class Visit>
void forEachMember(const Visit& visit)
{
    visit(&Sketch::sheet);
    visit(&Sketch::units);
    visit(&Sketch::engine);
    visit(&Sketch::tank);
    visit(&Sketch::ports);
    visit(&Sketch::heaters);
    visit(&Sketch::hoses);
    visit(&Sketch::coolant);
    visit(&Sketch::site);
    visit(&Sketch::areas);
    visit(&Sketch::ground_z_mm);
    visit(&Sketch::photo);
    visit(&Sketch::readings);
    visit(&Sketch::checklist);
    visit(&Sketch::notes);
    visit(&Sketch::limits);
    visit(&Sketch::assumptions);
    visit(&Sketch::plan);
    visit(&Sketch::fill);
    visit(&Sketch::survey);
    visit(&Sketch::supply);
    visit(&Sketch::coolant_plan);
    visit(&Sketch::quote);
    visit(&Sketch::dimensions);
    // A member more or less does not compile here: it has to be visited above too.
    [[maybe_unused]] const auto count = [](const Sketch& sketch) {
        const auto& [a, b, c, d, e, f, g, h, i, j, k, l, m, n, o, p, q, r, s, t, u, v, w, x] = sketch;
        return &a == &sketch.sheet && &x == &sketch.dimensions;
    };
}

} // namespace

SketchChange::SketchChange(const Sketch& before, const Sketch& after)
{
    forEachMember(Comparison{before, after, parts_});
    parts_.shrink_to_fit();
    // A pointer in the list, one to the part's functions, and what the allocator keeps of each.
    constexpr std::size_t around_a_part = 4 * sizeof(void*);
    for (const auto& part : parts_)
        bytes_ += around_a_part + part->bytes();
}

void SketchChange::redo(Sketch& sketch) const
{
    for (const auto& part : parts_)
        part->put(sketch, true);
}

void SketchChange::undo(Sketch& sketch) const
{
    for (const auto& part : parts_)
        part->put(sketch, false);
}

} // namespace siphonwright
