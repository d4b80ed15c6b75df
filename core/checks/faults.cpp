#include "core/checks/faults.h"

#include "core/checks/rules.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace siphonwright {
namespace {

/// What several rules see from their sides: air along a hose, heat at a heater, air in a chamber.
enum class Subject { stretch, heat, chamber };

/// Rules that see one fault; one with a higher side goes under one with a lower where they meet: along a
/// hose, or on the same heater.
struct Side {
    std::string_view rule;
    Subject subject;
    int side;
};
constexpr std::array sides = {
    Side{"supply-high-point", Subject::stretch, 0},
    Side{"return-high-point", Subject::stretch, 0},
    Side{"return-dip", Subject::stretch, 1},
    Side{"supply-dip", Subject::stretch, 1},
    Side{"return-slope", Subject::stretch, 2},
    Side{"air-locked", Subject::stretch, 3},
    Side{"air-weakens-flow", Subject::stretch, 4},
    Side{"not-cleared-by-running", Subject::stretch, 5},
    Side{"outlet-over-limit", Subject::heat, 0},
    Side{"boiling-margin", Subject::heat, 1},
    Side{"bore-starves-flow", Subject::heat, 2},
    Side{"cycles-over-4", Subject::heat, 3},
    Side{"heater-chamber-traps-air", Subject::chamber, 0},
    Side{"chamber-not-full", Subject::chamber, 1},
};

/// Rules by id, for one sorting: place in the book, and what side of a fault they see.
class InBook {
public:
    const Side* side(const Finding& finding) const { return of(finding).side; }
    std::ptrdiff_t place(const Finding& finding) const { return of(finding).place; }

private:
    struct Entry {
        std::string_view rule;
        std::ptrdiff_t place = 0;
        const Side* side = nullptr;
    };
    /// Findings of one rule follow each other, so the last answer mostly holds.
    const Entry& of(const Finding& finding) const
    {
        if (last_.rule == finding.rule)
            return last_;
        const auto side = std::find_if(sides.begin(), sides.end(),
                                       [&](const Side& one) { return one.rule == finding.rule; });
        const Rule* rule = ruleById(finding.rule);
        last_ = {rule ? rule->id : std::string_view(), rule ? rule - ruleBook().data() : 0,
                 side == sides.end() ? nullptr : &*side};
        return last_;
    }
    mutable Entry last_;
};

/// Length that two findings share on their hose, mm; negative when they do not meet.
double shared(const Finding& a, const Finding& b)
{
    if (!a.from_mm || !a.to_mm || !b.from_mm || !b.to_mm)
        return -1;
    return std::min(*a.to_mm, *b.to_mm) - std::max(*a.from_mm, *b.from_mm);
}

bool belongsUnder(const Finding& finding, const Side* own, const Finding& head, const Side* of_head)
{
    if (finding.only_on_grade && sameThing(finding, head))
        return true;
    if (!own || !of_head || of_head->side >= own->side || own->subject != of_head->subject)
        return false;
    return own->subject == Subject::stretch ? finding.hose == head.hose && shared(finding, head) >= 0
                                            : finding.part == head.part;
}

using Fault = std::vector<Finding>;

/// Gathers faults. A finding goes under one on its own hose or of its own part alone, so only those are
/// looked through: a large drawing has thousands.
class Faults {
public:
    void add(Finding&& finding, const Side* side)
    {
        if (Fault* host = hostOf(finding, side)) {
            host->push_back(std::move(finding));
            return;
        }
        on_hose_[finding.hose].push_back(faults_.size());
        if (side && side->subject != Subject::stretch)
            of_part_[finding.part].push_back(faults_.size());
        heads_.push_back(side);
        faults_.emplace_back().push_back(std::move(finding));
    }
    std::vector<Fault> take() { return std::move(faults_); }

private:
    /// The fault that it shares most of its length with; of equals the first.
    Fault* hostOf(const Finding& finding, const Side* side)
    {
        if (!finding.only_on_grade && (!side || side->side == 0))
            return nullptr; // it can only head one
        Fault* best = nullptr;
        const auto look = [&](const std::vector<std::size_t>& places) {
            for (const std::size_t i : places)
                if (belongsUnder(finding, side, faults_[i].front(), heads_[i]) &&
                    (!best || shared(finding, faults_[i].front()) > shared(finding, best->front()) ||
                     (&faults_[i] < best &&
                      shared(finding, faults_[i].front()) == shared(finding, best->front()))))
                    best = &faults_[i];
        };
        if (const auto found = on_hose_.find(finding.hose); found != on_hose_.end())
            look(found->second);
        if (side && side->subject != Subject::stretch)
            if (const auto found = of_part_.find(finding.part); found != of_part_.end())
                look(found->second);
        return best;
    }

    std::vector<Fault> faults_;
    std::vector<const Side*> heads_; ///< side of each fault's head
    std::unordered_map<std::string, std::vector<std::size_t>> on_hose_;
    std::map<PartRef, std::vector<std::size_t>> of_part_;
};

/// Under one heading: the worst first, among equals what is found on the level, then in the order in which
/// they were gathered.
Finding headed(Fault fault)
{
    std::stable_sort(fault.begin(), fault.end(), [](const Finding& a, const Finding& b) {
        return std::pair(-static_cast<int>(a.severity), a.only_on_grade.has_value()) <
               std::pair(-static_cast<int>(b.severity), b.only_on_grade.has_value());
    });
    Finding head = std::move(fault.front());
    head.details.assign(std::make_move_iterator(fault.begin() + 1), std::make_move_iterator(fault.end()));
    return head;
}

} // namespace

bool sameThing(const Finding& a, const Finding& b)
{
    if (a.rule != b.rule || a.part != b.part || a.hose != b.hose)
        return false;
    constexpr double touch_mm = 1e-6; // humps that follow each other share a sill and are two
    const bool same_stretch = a.from_mm == b.from_mm && a.to_mm == b.to_mm; // which may have no length
    return !a.from_mm || !b.from_mm || same_stretch || shared(a, b) > touch_mm;
}

std::vector<Finding> faultsOf(std::vector<Finding> found)
{
    // Heads before what goes under them, and the level before the grades. A flat stretch and the hump that it
    // becomes on a grade are one fault too. Findings are large: places are sorted in their stead.
    struct Place {
        int first = 0;
        std::ptrdiff_t second = 0;
        std::size_t at = 0;
        const Side* side = nullptr;
        auto key() const { return std::tuple(first, second, at); }
        bool operator<(const Place& other) const { return key() < other.key(); }
    };
    const InBook in_book;
    std::vector<Place> order(found.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        const Side* side = in_book.side(found[i]);
        order[i] = {side ? side->side : -1, found[i].only_on_grade ? 1 : 0, i, side};
    }
    std::sort(order.begin(), order.end());
    Faults faults;
    for (const Place& place : order)
        faults.add(std::move(found[place.at]), place.side);
    std::vector<Finding> heads;
    heads.reserve(order.size());
    for (Fault& fault : faults.take())
        heads.push_back(headed(std::move(fault)));
    order.resize(heads.size());
    for (std::size_t i = 0; i < heads.size(); ++i)
        order[i] = {-static_cast<int>(heads[i].severity), in_book.place(heads[i]), i, nullptr};
    std::sort(order.begin(), order.end());
    std::vector<Finding> out;
    out.reserve(heads.size());
    for (const Place& place : order)
        out.push_back(std::move(heads[place.at]));
    return out;
}

} // namespace siphonwright
