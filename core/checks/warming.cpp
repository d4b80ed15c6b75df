#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

const ResultBand* bandOf(const Judge& judge, const Id& heater, Banded which)
{
    if (!judge.results.bands)
        return nullptr;
    for (const HeaterBands& bands : *judge.results.bands)
        if (bands.heater == heater && bands[which])
            return &*bands[which];
    return nullptr;
}

/// Each heater of the warm-up with its outcome, facts noted.
template <class Act>
void forEachOutcome(Judge& judge, Act&& act)
{
    for (const Id& id : judge.results.warm_up->heaters) {
        const Heater* heater = judge.sketch.heater(id);
        const LoopOutcome* outcome = judge.results.warm_up->loopOf(id);
        if (!heater || !outcome)
            continue;
        judge.about(refOf(*heater));
        judge.restsOn(heater->power_W, refOf(*heater), "the power of " + nameOfHeater(*heater));
        judge.restsOn(heater->on_degC, refOf(*heater), "where the thermostat turns on");
        judge.restsOn(heater->off_degC, refOf(*heater), "where the thermostat turns off");
        judge.restsOn(judge.sketch.site.ambient_degC, {}, "the ambient temperature");
        if (judge.sketch.engine)
            judge.restsOn(judge.sketch.engine->mass_kg, {PartKind::engine, {}, 0}, "the engine's mass");
        act(*heater, *outcome);
    }
}

Finding& reportAt(Judge& judge, Severity severity, const Heater& heater, Message text, double measured,
                  double limit)
{
    Finding& finding = judge.report(severity, refOf(heater), std::move(text));
    finding.at = heater.position;
    finding.measured = measured;
    finding.limit = limit;
    return finding;
}

std::optional<Severity> oneLower(Severity severity)
{
    if (severity == Severity::advice)
        return std::nullopt;
    return severity == Severity::stop ? Severity::caution : Severity::advice;
}

/// Judges a figure, and its band where the figure itself passes: then it may exceed, one severity lower.
void judgeFigure(Judge& judge, const Heater& heater, double measured, Banded which, const char* does,
                 const char* may)
{
    if (const std::optional<Verdict> found = judge.verdictOn(measured)) {
        reportAt(
            judge, found->severity, heater,
            {does, {{measured, judge.rule.unit}, {found->limit, judge.rule.unit}}, {nameOfHeater(heater)}},
            measured, found->limit);
        return;
    }
    const ResultBand* band = bandOf(judge, heater.id, which);
    const std::optional<Verdict> found =
        band ? verdict(band->high, judge.rule.sense, judge.limits) : std::nullopt;
    const std::optional<Severity> severity = found ? oneLower(found->severity) : std::nullopt;
    // Nothing happens a part of a time.
    const double said = band && judge.rule.unit == Unit::none ? std::ceil(band->high - 1e-9)
                        : band                                ? band->high
                                                              : 0;
    if (severity)
        reportAt(judge, *severity, heater,
                 {may, {{measured, judge.rule.unit}, {said, judge.rule.unit}}, {nameOfHeater(heater)}},
                 band->high, found->limit);
}

} // namespace

void outletOverLimit(Judge& judge)
{
    const EngineWarmUp& warm = *judge.results.warm_up;
    if (!warm.missing.empty() && judge.results.running)
        for (const LoopRun& run : judge.results.running->loops)
            if (run.missing.empty()) {
                judge.notJudged(warm.missing_of, warm.missing);
                return;
            }
    if (warm.result.status == WarmUpStatus::slush)
        judge.notJudged({}, "the coolant is slush at the start, so no warm-up can be computed");
    else if (warm.inputs && warm.result.loops.empty())
        judge.notJudged({},
                        "no warm-up could be computed: " + format(warm.result.message, UnitSystem::metric));
    forEachOutcome(judge, [&](const Heater& heater, const LoopOutcome& outcome) {
        if (outcome.peak_outlet_degC)
            judgeFigure(judge, heater, *outcome.peak_outlet_degC, Banded::peak_outlet_degC,
                        "Coolant leaves {a} at up to {0} while it is on, over {1}.",
                        "Coolant leaves {a} at up to {0}, and {1} is possible.");
    });
}

void boilingMargin(Judge& judge)
{
    forEachOutcome(judge, [&](const Heater& heater, const LoopOutcome& outcome) {
        if (!outcome.boiling_margin_K)
            return;
        const std::optional<Verdict> found = judge.verdictOn(*outcome.boiling_margin_K);
        if (!found)
            return;
        Message text{"{a} comes within {0} of boiling.",
                     {{*outcome.boiling_margin_K, Unit::kelvin}},
                     {nameOfHeater(heater)}};
        if (outcome.boiled_s)
            text = {"{a} boils its coolant.", {}, {nameOfHeater(heater)}};
        reportAt(judge, found->severity, heater, text, *outcome.boiling_margin_K, found->limit);
    });
}

void boreStarvesFlow(Judge& judge)
{
    if (!judge.results.by_bore)
        return;
    const Rule* outlet = ruleById("outlet-over-limit");
    const Rule* cycles = ruleById("cycles-over-4");
    const auto keeps = [&](const Rule& rule, double measured) {
        return !verdict(measured, rule.sense, limitsOf(rule, judge.sketch));
    };
    const auto both = [&](double peak_degC, double per_hour) {
        return keeps(*outlet, peak_degC) && keeps(*cycles, per_hour);
    };
    const std::vector<BoreRow>& rows = *judge.results.by_bore;
    // The hoses' own, which need not be a stock size; 3/4 in and 19 mm are one hose.
    constexpr double same_mm = 0.3;
    double drawn_mm = 0;
    for (const Shared<Hose>& hose : judge.sketch.hoses)
        if (hose->bore_mm.known() && (drawn_mm == 0 || *hose->bore_mm.value < drawn_mm))
            drawn_mm = *hose->bore_mm.value;
    const auto enough = std::find_if(rows.begin(), rows.end(), [&](const BoreRow& row) {
        return row.bore_mm > drawn_mm + same_mm && row.runs && row.peak_outlet_degC &&
               both(*row.peak_outlet_degC, row.cycles_per_hour);
    });
    if (drawn_mm <= 0 || enough == rows.end())
        return;
    forEachOutcome(judge, [&](const Heater& heater, const LoopOutcome& outcome) {
        if (!outcome.peak_outlet_degC || both(*outcome.peak_outlet_degC, outcome.cycles_per_hour))
            return;
        Finding& finding = reportAt(
            judge, Severity::caution, heater,
            {"{a} starves on hoses of {0}: with {1} its outlet and its cycles would keep to their limits.",
             {{drawn_mm, Unit::mm}, {enough->bore_mm, Unit::mm}},
             {nameOfHeater(heater)}},
            drawn_mm, enough->bore_mm);
        finding.fix = {"Use hose of {0} bore or more, with hose ends and valves to match.",
                       {{enough->bore_mm, Unit::mm}},
                       {}};
    });
}

void cyclesOver4(Judge& judge)
{
    forEachOutcome(judge, [&](const Heater& heater, const LoopOutcome& outcome) {
        judgeFigure(judge, heater, outcome.cycles_per_hour, Banded::cycles_per_hour,
                    "Starts of {a} in its worst hour: {0}, over {1}.",
                    "Starts of {a} in its worst hour: {0}, up to {1} possible.");
    });
}

void targetNotReached(Judge& judge)
{
    const EngineWarmUp& warm = *judge.results.warm_up;
    if (!warm.inputs || warm.result.loops.empty() || warm.result.status == WarmUpStatus::slush)
        return;
    judge.about({PartKind::engine, {}, 0});
    judge.restsOn(judge.sketch.site.ambient_degC, {}, "the ambient temperature");
    judge.restsOn(judge.sketch.site.wind_m_per_s, {}, "the wind");
    const double target_degC = warm.inputs->target_degC;
    const double hours = warm.inputs->duration_s / 3600;
    const ResultBand* band = bandOf(judge, warm.heaters.front(), Banded::target_h);
    constexpr double nearly_always = 0.95;
    const bool reached = warm.result.target_s.has_value();
    const bool may_miss = judge.results.bands && (!band || band->share < nearly_always);
    if (reached && !may_miss)
        return;
    Message text{
        "The engine gets to {0} in {1} hours, and {2} is wanted.",
        {{warm.result.block_at_end_degC, Unit::degC}, {hours, Unit::none}, {target_degC, Unit::degC}},
        {}};
    if (reached)
        text = {"The engine may not get to {0} in {1} hours.",
                {{target_degC, Unit::degC}, {hours, Unit::none}},
                {}};
    Finding& finding =
        judge.report(reached ? Severity::advice : Severity::caution, {PartKind::engine, {}, 0}, text);
    finding.measured = warm.result.block_at_end_degC;
    finding.limit = target_degC;
    if (judge.sketch.engine && !judge.sketch.engine->outline.empty()) {
        const Vec2 corner = judge.sketch.engine->outline.front();
        finding.at = Vec3{corner.x, 0, corner.z};
    }
}

} // namespace siphonwright::judges
