#include "core/checks/faults.h"

#include "core/checks/rules.h"

#include <algorithm>
#include <array>
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

const Side* sideOf(const Finding& finding)
{
    const auto found =
        std::find_if(sides.begin(), sides.end(), [&](const Side& side) { return side.rule == finding.rule; });
    return found == sides.end() ? nullptr : &*found;
}

/// For sorting: what can head a fault comes first.
int rankOf(const Finding& finding)
{
    const Side* side = sideOf(finding);
    return side ? side->side : -1;
}

/// Length that two findings share on their hose, mm; negative when they do not meet.
double shared(const Finding& a, const Finding& b)
{
    if (!a.from_mm || !a.to_mm || !b.from_mm || !b.to_mm)
        return -1;
    return std::min(*a.to_mm, *b.to_mm) - std::max(*a.from_mm, *b.from_mm);
}

bool belongsUnder(const Finding& finding, const Finding& head)
{
    if (finding.only_on_grade && sameThing(finding, head))
        return true;
    const Side* own = sideOf(finding);
    const Side* of_head = sideOf(head);
    if (!own || !of_head || of_head->side >= own->side || own->subject != of_head->subject)
        return false;
    return own->subject == Subject::stretch ? finding.hose == head.hose && shared(finding, head) >= 0
                                            : finding.part == head.part;
}

using Fault = std::vector<Finding>;

Fault* hostOf(const Finding& finding, std::vector<Fault>& faults)
{
    Fault* best = nullptr;
    for (Fault& fault : faults)
        if (belongsUnder(finding, fault.front()) &&
            (!best || shared(finding, fault.front()) > shared(finding, best->front())))
            best = &fault;
    return best;
}

std::ptrdiff_t placeInBook(const Finding& finding)
{
    return ruleById(finding.rule) - ruleBook().data();
}

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
    // becomes on a grade are one fault too.
    std::stable_sort(found.begin(), found.end(), [](const Finding& a, const Finding& b) {
        return std::pair(rankOf(a), a.only_on_grade.has_value()) <
               std::pair(rankOf(b), b.only_on_grade.has_value());
    });
    std::vector<Fault> faults;
    for (Finding& finding : found) {
        if (Fault* host = hostOf(finding, faults))
            host->push_back(std::move(finding));
        else
            faults.push_back({std::move(finding)});
    }
    std::vector<Finding> out;
    out.reserve(faults.size());
    for (Fault& fault : faults)
        out.push_back(headed(std::move(fault)));
    std::stable_sort(out.begin(), out.end(), [](const Finding& a, const Finding& b) {
        return std::pair(-static_cast<int>(a.severity), placeInBook(a)) <
               std::pair(-static_cast<int>(b.severity), placeInBook(b));
    });
    return out;
}

} // namespace siphonwright
