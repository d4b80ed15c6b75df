#include "core/proposing/conflict.h"

#include "core/checks/rules.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <tuple>

namespace siphonwright {
namespace {

/// What the candidates of a stage are, as its sentences say.
const char* pattern(SearchStage stage, bool of_area)
{
    switch (stage) {
    case SearchStage::bore:
        return "No bore is left: of those in stock, {0} fell to \"{a}\".";
    case SearchStage::ports:
        return "No pair of ports is left: {0} fell to \"{a}\".";
    case SearchStage::heater:
        return of_area ? "No place for the heater is left: {0} fell to \"{a}\" ({b})."
                       : "No place for the heater is left: {0} fell to \"{a}\".";
    case SearchStage::supply:
        return of_area ? "No way for the supply hose is left: {0} of those tried fell to \"{a}\" ({b})."
                       : "No way for the supply hose is left: {0} of those tried fell to \"{a}\".";
    case SearchStage::return_:
        return of_area ? "No way for the return hose is left: {0} of those tried fell to \"{a}\" ({b})."
                       : "No way for the return hose is left: {0} of those tried fell to \"{a}\".";
    case SearchStage::loop:
        return "Every hose is sound by itself, but {0} of the loops they make fell to \"{a}\".";
    case SearchStage::proof:
        return "Drawn soundly, but filled, warmed up and tilted {0} of the loops fell to \"{a}\".";
    }
    return "";
}

} // namespace

void RuleConflict::add(SearchStage stage, const RemovedBy& removed, std::size_t times)
{
    for (Entry& entry : entries_)
        if (entry.stage == stage && entry.rule == removed.rule && entry.by == removed.by) {
            entry.times += times;
            entry.depth = std::max(entry.depth, removed.depth);
            return;
        }
    entries_.push_back({stage, std::string(removed.rule), removed.depth, removed.by, times});
}

void RuleConflict::add(SearchStage stage, const Finding& finding)
{
    const Rule* rule = ruleById(finding.rule);
    if (rule)
        add(stage, RemovedBy{rule->id, 0, finding.part});
}

bool RuleConflict::reached(SearchStage stage) const
{
    return std::any_of(entries_.begin(), entries_.end(),
                       [&](const Entry& entry) { return entry.stage >= stage; });
}

std::vector<RuleInWay> RuleConflict::farthest(const Sketch& sketch) const
{
    if (entries_.empty())
        return {};
    const SearchStage last =
        std::max_element(entries_.begin(), entries_.end(), [](const Entry& a, const Entry& b) {
            return a.stage < b.stage;
        })->stage;
    std::vector<Entry> there;
    std::copy_if(entries_.begin(), entries_.end(), std::back_inserter(there),
                 [&](const Entry& entry) { return entry.stage == last; });
    std::stable_sort(there.begin(), there.end(), [](const Entry& a, const Entry& b) {
        return std::tuple(-a.depth, b.times) < std::tuple(-b.depth, a.times);
    });
    std::vector<RuleInWay> out;
    for (const Entry& entry : there) {
        RuleInWay way;
        way.rule = entry.rule;
        way.part = entry.by;
        way.removed = entry.times;
        const Area* area = entry.by.kind == PartKind::area ? sketch.area(entry.by.id) : nullptr;
        way.text.pattern = pattern(last, area != nullptr);
        way.text.quantities = {{static_cast<double>(entry.times), Unit::none}};
        way.text.words = {std::string(ruleById(entry.rule)->title)};
        if (area)
            way.text.words.push_back(nameOfArea(*area));
        out.push_back(std::move(way));
    }
    return out;
}

} // namespace siphonwright
