#include "core/proposing/hose_rules.h"

#include <algorithm>
#include <array>
#include <span>

namespace siphonwright {
namespace {

struct Asked {
    std::string_view rule;
    bool without_heaters; ///< it asks heaters too, which are sound by now
};
constexpr std::array hose_rules = {
    Asked{"heater-under-return", false}, Asked{"bend-does-not-fit", false}, Asked{"bend-too-tight", false},
    Asked{"supply-high-point", false},   Asked{"return-high-point", false}, Asked{"return-dip", false},
    Asked{"supply-rises", false},        Asked{"return-slope", false},      Asked{"no-slack", false},
    Asked{"above-coolant-level", true},  Asked{"ground-clearance", true},   Asked{"bore-under-manual", false},
    Asked{"bore-restriction", false},    Asked{"keep-clear", true},
};
constexpr std::array heater_rules = {
    Asked{"heater-position-not-allowed", false},
    Asked{"heater-chamber-traps-air", false},
    Asked{"mounted-on-engine", false},
    Asked{"heater-drop", false},
    Asked{"above-coolant-level", false},
    Asked{"ground-clearance", false},
    Asked{"keep-clear", false},
};
constexpr std::array port_rules = {
    Asked{"supply-cut-off-by-thermostat", false},
    Asked{"parallel-path", false},
    Asked{"shared-port", false},
    Asked{"supply-port-low", false},
    Asked{"return-port-high", false},
    Asked{"ports-too-close", false},
    Asked{"return-near-thermostat", false},
    Asked{"sensor-near-return", false},
};

/// The finding of stop or caution that a rule gives; nothing if it gives none.
std::optional<Finding> broken(std::string_view id, const Sketch& sketch, const Layout& layout)
{
    const Rule* rule = ruleById(id);
    if (!rule || switchedOff(id, sketch))
        return std::nullopt;
    Judgement judgement;
    const Results none;
    Judge judge(*rule, sketch, layout, none, judgement);
    rule->judge(judge);
    const auto found = std::find_if(judgement.findings.begin(), judgement.findings.end(),
                                    [](const Finding& f) { return f.severity > Severity::advice; });
    return found == judgement.findings.end() ? std::nullopt : std::optional<Finding>(*found);
}

/// The area that a finding speaks of, by the name in its words.
PartRef areaOf(const Finding& finding, const Sketch& sketch)
{
    for (const Shared<Area>& area : sketch.areas)
        for (const std::string& word : finding.text.words)
            if (word == area->name || word == "Area " + area->id)
                return {PartKind::area, area->id, 0};
    return {};
}

std::optional<RemovedBy> firstBroken(std::span<const Asked> rules, const Sketch& sketch, const Layout& layout,
                                     const Sketch* bare, const Layout* bare_layout)
{
    int depth = 0;
    for (const Asked& asked : rules) {
        const bool leave_heaters = asked.without_heaters && bare;
        if (const std::optional<Finding> found =
                broken(asked.rule, leave_heaters ? *bare : sketch, leave_heaters ? *bare_layout : layout))
            return RemovedBy{asked.rule, depth, areaOf(*found, sketch)};
        ++depth;
    }
    return std::nullopt;
}

} // namespace

PartRules::PartRules(const Sketch& sketch, const Id& heater) : sketch_(sketch), plumb_(plumbOf(sketch))
{
    std::erase_if(sketch_.heaters, [&](const Heater& other) { return other.id != heater; });
    sketch_.hoses.clear();
    bare_ = sketch_;
    bare_.heaters.clear();
}

std::optional<RemovedBy> PartRules::heaterBreaks() const
{
    return firstBroken(heater_rules, sketch_, resolve(sketch_, plumb_), nullptr, nullptr);
}

bool PartRules::heaterHoldsOnGrades() const
{
    const std::vector<Grade> corners = cornersOf(sketch_.site);
    return std::all_of(corners.begin(), corners.end(), [&](Grade grade) {
        const Layout tilted = resolve(sketch_, plumbOf(sketch_, grade));
        return std::none_of(heater_rules.begin(), heater_rules.end(), [&](const Asked& asked) {
            return ruleById(asked.rule)->tilt != Tilt::same && broken(asked.rule, sketch_, tilted);
        });
    });
}

std::optional<RemovedBy> PartRules::hoseBreaks(const Shared<Hose>& hose)
{
    sketch_.hoses.assign(1, hose);
    const Layout layout = resolve(sketch_, plumb_);
    sketch_.hoses.clear();
    Layout bare = layout;
    bare.heaters.clear();
    return firstBroken(hose_rules, sketch_, layout, &bare_, &bare);
}

std::optional<RemovedBy> PartRules::portsBreak(const Sketch& sketch)
{
    return firstBroken(port_rules, sketch, resolve(sketch, plumbOf(sketch)), nullptr, nullptr);
}

std::vector<Grade> cornersOf(const Site& site)
{
    std::vector<Grade> out;
    for (const double along : {-site.envelope_along_percent, site.envelope_along_percent})
        for (const double across : {-site.envelope_across_percent, site.envelope_across_percent})
            out.push_back({along, across});
    return out;
}

int hoseRuleCount()
{
    return static_cast<int>(hose_rules.size());
}

} // namespace siphonwright
