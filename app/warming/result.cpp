#include "app/warming/result.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/layout/wording.h"
#include "core/quantity/constants.h"
#include "core/running/coolant_of.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::warming {
namespace {

std::optional<double> strictest(const char* rule, const Sketch& sketch)
{
    const Rule* found = ruleById(rule);
    if (!found || switchedOff(rule, sketch))
        return std::nullopt;
    const Limits limits = limitsOf(*found, sketch);
    return limits.stop ? limits.stop : limits.caution ? limits.caution : limits.advice;
}

/// Litres for each kilogram of coolant at a temperature; plain water's where the coolant is not known.
double litrePerKg(const CoolantOf& coolant, double temperature_degC)
{
    return coolant.fluid ? 1000 / coolant.fluid->at(temperature_degC).density_kg_per_m3 : 1;
}

void addSeries(Result& out, const WarmUp& run, std::size_t loop, const CoolantOf& coolant)
{
    for (const WarmUpSample& sample : run.series) {
        if (loop >= sample.loops.size())
            continue;
        const LoopSample& at = sample.loops[loop];
        const double l_per_min = at.flow_kg_per_s * 60 * litrePerKg(coolant, at.inlet_degC);
        const std::array<double, curve_count> row = {
            at.outlet_degC,    at.inlet_degC, at.return_degC, at.return_surface_degC,
            sample.block_degC, l_per_min,     at.power_W};
        out.time_h.push_back(sample.time_s / 3600);
        for (std::size_t i = 0; i < curve_count; ++i)
            out.values[i].push_back(row[i]);
        out.flow_kg_per_s.push_back(at.flow_kg_per_s);
        out.energy_kWh.push_back(sample.energy_J / J_per_kWh);
    }
}

void addBands(Result& out, const Proof& proof)
{
    out.bands_follow = proof.bands.empty();
    for (const HeaterBands& bands : proof.bands) {
        if (bands.heater != out.heater)
            continue;
        out.peak_band = bands[Banded::peak_outlet_degC];
        out.cycles_band = bands[Banded::cycles_per_hour];
        out.target_band = bands[Banded::target_h];
    }
}

} // namespace

Unit unitOf(Curve curve)
{
    return curve == Curve::flow ? Unit::l_per_min : curve == Curve::power ? Unit::watt : Unit::degC;
}

QString nameOf(Curve curve)
{
    switch (curve) {
    case Curve::outlet:
        return tr("outlet");
    case Curve::inlet:
        return tr("inlet");
    case Curve::return_port:
        return tr("return at port");
    case Curve::hose_outside:
        return tr("hose outside");
    case Curve::block:
        return tr("block");
    case Curve::flow:
        return tr("flow");
    case Curve::power:
        return tr("power");
    case Curve::count:
        break;
    }
    return {};
}

std::size_t Result::nearest(double hour) const
{
    const auto after = std::lower_bound(time_h.begin(), time_h.end(), hour);
    if (after == time_h.begin())
        return 0;
    const auto index = static_cast<std::size_t>(after - time_h.begin());
    if (after == time_h.end())
        return index - 1;
    return *after - hour < hour - time_h[index - 1] ? index : index - 1;
}

std::optional<Result> resultOf(const Sketch& sketch, const Proof& proof, const Id& heater)
{
    const EngineWarmUp& warm = proof.warm_up;
    const LoopOutcome* outcome = warm.loopOf(heater);
    const Heater* drawn = sketch.heater(heater);
    if (!outcome || !drawn || !warm.inputs || warm.result.series.empty())
        return std::nullopt;
    Result out;
    out.heater = heater;
    out.heater_name = inWords(nameOfHeater(*drawn));
    out.name = QString::fromStdString(sketch.sheet.title);
    out.outcome = *outcome;
    const auto loop = static_cast<std::size_t>(std::find(warm.heaters.begin(), warm.heaters.end(), heater) -
                                               warm.heaters.begin());
    addSeries(out, warm.result, loop, coolantOf(sketch, Assumptions(sketch)));
    if (out.time_h.empty())
        return std::nullopt;
    if (warm.result.target_s)
        out.reached_h = *warm.result.target_s / 3600;
    out.block_at_end_degC = warm.result.block_at_end_degC;
    out.target_degC = warm.inputs->target_degC;
    out.hours = warm.inputs->duration_s / 3600;
    out.end_h = warm.result.end_s / 3600;
    out.outlet_limit_degC = strictest("outlet-over-limit", sketch);
    out.cycles_limit = strictest("cycles-over-4", sketch);
    if (warm.result.status != WarmUpStatus::done)
        out.remark = warm.result.message;
    addBands(out, proof);
    return out;
}

Missing missingFor(const Running& running, const Proof& proof, const Id& heater, UnitSystem units)
{
    const EngineWarmUp& warm = proof.warm_up;
    const LoopRun* loop = running.loopOf(heater);
    std::string why = warm.missing;
    PartRef part = warm.missing_of;
    if (why.empty() || (loop && !loop->missing.empty())) {
        why = loop ? loop->missing : "there is no loop with a heater yet";
        part = loop ? loop->missing_of : PartRef{PartKind::heater, heater, 0};
    }
    if (why.empty() && warm.result.status == WarmUpStatus::slush)
        return {{}, tr("No warm-up: at the start the coolant would be slush.")};
    if (why.empty())
        why = format(warm.result.message, units);
    return {part, tr("No warm-up: %1.").arg(inWords(why))};
}

} // namespace siphonwright::warming
