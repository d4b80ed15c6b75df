#include "app/headless/json.h"

#include "core/quantity/constants.h"
#include "core/running/loop_figures.h"

#include <algorithm>
#include <array>
#include <utility>

/// How loops run and the engine warms up.
namespace siphonwright::headless {

namespace {

const char* wordFor(CirculationStatus status)
{
    switch (status) {
    case CirculationStatus::circulates:
        return "circulates";
    case CirculationStatus::reverse:
        return "reverse";
    case CirculationStatus::stalled:
        return "stalled";
    case CirculationStatus::closed:
        return "closed";
    case CirculationStatus::boiling:
        return "boiling";
    case CirculationStatus::slush:
        return "slush";
    case CirculationStatus::invalid_input:
    case CirculationStatus::not_converged:
        break;
    }
    return "not_computed";
}

bool flows(const Circulation& found)
{
    return found.status == CirculationStatus::circulates || found.status == CirculationStatus::reverse;
}

const ResultBand* bandOf(const Checked& file, const Id& heater, Banded which)
{
    if (!file.analysis.proof)
        return nullptr;
    for (const HeaterBands& bands : file.analysis.proof->bands)
        if (bands.heater == heater && bands[which])
            return &*bands[which];
    return nullptr;
}

/// Low and high are P5 and P95 over what is assumed; null where no bands were asked for.
Json withBand(const std::optional<double>& value, const ResultBand* band)
{
    Json drivers = Json::array();
    if (band)
        for (const Assumed driver : band->drivers)
            drivers.push_back(assumptionOf(driver).id);
    return {{"value", number(value)},
            {"low", band ? number(band->low) : Json(nullptr)},
            {"high", band ? number(band->high) : Json(nullptr)},
            {"drivers", band ? std::move(drivers) : Json(nullptr)}};
}

/// Of the longest stretch of a hose: the Reynolds number in its own bore, not that in a stub or valve.
Json reynoldsIn(const LoopRun& run, HoseRole role)
{
    const Circuit& circuit = run.circuit;
    const bool back = role == HoseRole::return_;
    const std::vector<LoopElement>& hose = back ? circuit.return_hose : circuit.supply_hose;
    const auto longest =
        std::max_element(hose.begin(), hose.end(),
                         [](const LoopElement& a, const LoopElement& b) { return a.length_m < b.length_m; });
    const auto place = static_cast<std::size_t>(longest - hose.begin()) + circuit.chamber.size() +
                       (back ? 0 : circuit.return_hose.size() + circuit.jacket.size());
    const std::vector<ElementState>& states = run.circulation.elements;
    return place < states.size() && !hose.empty() ? number(states[place].reynolds) : Json(nullptr);
}

Json lossesJson(const LoopRun& run)
{
    Json losses = Json::array();
    for (const NamedLoss& loss : largestLosses(run, run.circulation.parts.size()))
        losses.push_back(
            {{"part", partName(loss.part->part)}, {"name", loss.part->name}, {"share", number(loss.share)}});
    return losses;
}

Json othersJson(const Circulation& found)
{
    Json others = Json::array();
    for (const CirculationState& state : found.also_possible)
        others.push_back({{"flow_kg_per_s", number(state.flow_kg_per_s)},
                          {"inlet_degC", number(state.heater_inlet_degC)},
                          {"outlet_degC", number(state.heater_outlet_degC)}});
    return others;
}

Json loopJson(const Checked& file, const LoopRun& run)
{
    const bool computed = run.missing.empty();
    const Circulation& found = run.circulation;
    const bool flowing = computed && flows(found);
    const bool still =
        computed && (found.status == CirculationStatus::stalled || found.status == CirculationStatus::closed);
    const auto in_flow = [&](double value) { return flowing ? number(value) : Json(nullptr); };
    const auto with_heads = [&](double value) { return flowing || still ? number(value) : Json(nullptr); };
    const ResultBand* band = bandOf(file, run.heater, Banded::flow_kg_per_s);
    const std::string why = computed && !flowing ? format(found.message, UnitSystem::metric) : run.missing;
    Json entry;
    entry["heater"] = run.heater;
    entry["state"] = computed ? wordFor(found.status) : "not_computed";
    entry["missing"] = computed ? Json(nullptr) : Json(run.missing);
    entry["why"] = why.empty() ? Json(nullptr) : Json(why);
    entry["block_degC"] = number(file.analysis.running.block_degC);
    entry["flow_kg_per_s"] = with_heads(found.flow_kg_per_s);
    entry["flow_low_kg_per_s"] = band ? number(band->low) : Json(nullptr);
    entry["flow_high_kg_per_s"] = band ? number(band->high) : Json(nullptr);
    entry["flow_l_per_min"] = with_heads(flowing ? flowByVolume_l_per_min(found) : 0);
    entry["inlet_degC"] = in_flow(found.heater_inlet_degC);
    entry["outlet_degC"] = in_flow(found.heater_outlet_degC);
    entry["drive_Pa"] = with_heads(found.drive_Pa);
    entry["drive_mm"] = with_heads(found.drive_mm);
    entry["resistance_Pa"] = with_heads(found.resistance_Pa);
    entry["resistance_mm"] = with_heads(found.resistance_mm);
    entry["air_mm"] = with_heads(found.pocket_mm);
    entry["reynolds_return"] = flowing ? reynoldsIn(run, HoseRole::return_) : Json(nullptr);
    entry["reynolds_supply"] = flowing ? reynoldsIn(run, HoseRole::supply) : Json(nullptr);
    entry["losses"] = lossesJson(run);
    entry["also_possible"] = othersJson(found);
    return entry;
}

std::optional<double> inHours(const std::optional<double>& time_s)
{
    return time_s ? std::optional(*time_s / s_per_h) : std::nullopt;
}

Json switchesJson(const LoopOutcome& outcome)
{
    constexpr std::array words = {"thermostat", "cut_out", "boiling", "supply"};
    Json list = Json::array();
    for (const HeaterSwitch& one : outcome.switches)
        list.push_back({{"time_s", number(one.time_s)},
                        {"on", one.on},
                        {"cause", words[static_cast<std::size_t>(one.cause)]}});
    return list;
}

/// Of a heater that the warm-up has, or null throughout.
Json outcomeJson(const Checked& file, const Id& heater, const LoopOutcome* outcome, const EngineWarmUp& warm)
{
    const auto of = [&](Banded which, std::optional<double> value) {
        return withBand(outcome ? value : std::nullopt, bandOf(file, heater, which));
    };
    const LoopOutcome none;
    const LoopOutcome& o = outcome ? *outcome : none;
    Json entry;
    entry["peak_outlet_degC"] = of(Banded::peak_outlet_degC, o.peak_outlet_degC);
    entry["cycles_per_hour"] = of(Banded::cycles_per_hour, o.cycles_per_hour);
    entry["time_to_target_h"] = of(Banded::target_h, inHours(warm.result.target_s));
    entry["final_block_degC"] = of(Banded::block_at_end_degC, warm.result.block_at_end_degC);
    entry["energy_kWh"] = of(Banded::energy_kWh, o.energy_J / J_per_kWh);
    entry["return_warm_min"] = o.return_warm_s ? number(*o.return_warm_s / s_per_min) : Json(nullptr);
    entry["infrared_surface_degC"] = outcome ? number(o.at_end.return_surface_degC) : Json(nullptr);
    entry["boiling_margin_K"] = number(o.boiling_margin_K);
    entry["switches"] = outcome ? switchesJson(o) : Json::array();
    return entry;
}

/// What the grade ends of the envelope do to one heater's loop.
Json onGradesJson(const Checked& file, const Id& heater)
{
    Json list = Json::array();
    for (const GradeRun& end : file.analysis.proof->at_ends) {
        const LoopRun* run = end.running.loopOf(heater);
        const LoopOutcome* outcome = end.warm_up.loopOf(heater);
        const bool computed = run && run->missing.empty();
        const bool flowing = computed && flows(run->circulation);
        list.push_back(
            {{"along_percent", number(end.grade.along_percent)},
             {"across_percent", number(end.grade.across_percent)},
             {"state", computed ? wordFor(run->circulation.status) : "not_computed"},
             {"flow_kg_per_s", flowing ? number(run->circulation.flow_kg_per_s) : Json(nullptr)},
             {"outlet_degC", flowing ? number(run->circulation.heater_outlet_degC) : Json(nullptr)},
             {"peak_outlet_degC", outcome ? number(outcome->peak_outlet_degC) : Json(nullptr)},
             {"cycles_per_hour", outcome ? number(outcome->cycles_per_hour) : Json(nullptr)},
             {"time_to_target_h", number(inHours(end.warm_up.result.target_s))},
             {"final_block_degC", outcome ? number(end.warm_up.result.block_at_end_degC) : Json(nullptr)}});
    }
    return list;
}

} // namespace

Json loopsJson(const Checked& file)
{
    Json loops = Json::array();
    for (const LoopRun& run : file.analysis.running.loops)
        loops.push_back(loopJson(file, run));
    return loops;
}

Json warmUpJson(const Checked& file)
{
    Json list = Json::array();
    if (!file.analysis.proof)
        return list;
    const EngineWarmUp& warm = file.analysis.proof->warm_up;
    for (const LoopRun& run : file.analysis.running.loops) {
        const LoopOutcome* outcome = warm.loopOf(run.heater);
        std::string missing = run.missing.empty() ? warm.missing : run.missing;
        if (!outcome && missing.empty())
            missing = format(warm.result.message, UnitSystem::metric);
        Json entry;
        entry["heater"] = run.heater;
        entry["missing"] = outcome ? Json(nullptr) : Json(missing);
        entry["ambient_degC"] = warm.inputs ? number(warm.inputs->air_degC) : Json(nullptr);
        entry["start_degC"] = warm.inputs ? number(warm.inputs->start_degC) : Json(nullptr);
        entry["target_degC"] = warm.inputs ? number(warm.inputs->target_degC) : Json(nullptr);
        entry["hours"] = warm.inputs ? number(warm.inputs->duration_s / s_per_h) : Json(nullptr);
        entry.update(outcomeJson(file, run.heater, outcome, warm));
        entry["on_grades"] = onGradesJson(file, run.heater);
        list.push_back(std::move(entry));
    }
    return list;
}

Json byBoreJson(const Checked& file)
{
    Json rows = Json::array();
    if (!file.analysis.proof)
        return rows;
    for (const BoreRow& row : file.analysis.proof->by_bore)
        rows.push_back({{"bore_mm", number(row.bore_mm)},
                        {"drawn", row.drawn},
                        {"circulates", row.runs},
                        {"flow_kg_per_s", number(row.flow_kg_per_s)},
                        {"outlet_degC", number(row.steady_outlet_degC)},
                        {"peak_outlet_degC", number(row.peak_outlet_degC)},
                        {"cycles_per_hour", number(row.cycles_per_hour)},
                        {"time_to_target_h", number(row.target_h)}});
    return rows;
}

Json assumptionsChangedJson(const Sketch& sketch)
{
    Json list = Json::array();
    for (const AssumptionChange& change : sketch.assumptions) {
        const Assumption* row = assumptionById(change.assumption);
        list.push_back({{"assumption", change.assumption},
                        {"title", row ? Json(row->title) : Json(nullptr)},
                        {"value", number(change.value)},
                        {"usual", row ? number(row->value) : Json(nullptr)},
                        {"reason", change.reason}});
    }
    return list;
}

} // namespace siphonwright::headless
