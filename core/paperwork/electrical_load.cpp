#include "core/paperwork/electrical_load.h"

#include "core/layout/wording.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>

namespace siphonwright {
namespace {

/// A heater on the supply, or on the voltage of its own where no supply is entered.
HeaterLoad loadOf(const Heater& heater, const Supply& supply)
{
    HeaterLoad out;
    out.heater = heater.id;
    out.phases = heater.phases;
    const std::optional<double> volts_V =
        supply.volts_V ? supply.volts_V
                       : (heater.actual_V.known() ? heater.actual_V.value : heater.rated_V.value);
    if (!heater.power_W.known())
        out.missing = "its power is not entered";
    else if (!volts_V)
        out.missing = "neither the supply's voltage nor its own is entered";
    else if (!heater.rated_V.known())
        out.missing = "its rated voltage is not entered";
    else if (heater.phases == 3 && supply.phases == 1)
        out.missing = "it needs three phases and the supply has one";
    if (!out.missing.empty())
        return out;
    const Figure power = powerAtVoltage_W(*heater.power_W.value, *heater.rated_V.value, *volts_V);
    const Figure current = power.value ? loadCurrent_A(*power.value, *volts_V, heater.phases)
                                       : Figure{std::nullopt, power.problem};
    if (!current.value) {
        out.missing = format(current.problem, UnitSystem::metric);
        return out;
    }
    out.power_W = *power.value;
    out.current_A = *current.value;
    out.over_rated = *volts_V > most_over_rated_V * *heater.rated_V.value;
    return out;
}

/// Current in the most loaded of three conductors, by the currents of loads between each two of them.
/// Resistive loads on balanced voltages: two that share a conductor stand 120 degrees apart, so their
/// difference is sqrt(a^2 + c^2 + a c) (law of cosines).
double mostLoaded_A(const std::array<double, 3>& between_A)
{
    double most = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const double a = between_A[i];
        const double c = between_A[(i + 1) % 3];
        most = std::max(most, std::sqrt(a * a + c * c + a * c));
    }
    return most;
}

/// The least that sharing out single-phase heaters can come to: each in turn, the largest first, goes where
/// it adds least; up to `tried` of them every way is tried.
double sharedOut_A(const std::vector<double>& single_A, std::size_t next, std::array<double, 3> between_A)
{
    constexpr std::size_t tried = 8; // 3^8 ways
    if (next == single_A.size())
        return mostLoaded_A(between_A);
    double least = std::numeric_limits<double>::infinity();
    std::array<double, 3> best = between_A;
    for (std::size_t pair = 0; pair < 3; ++pair) {
        std::array<double, 3> with = between_A;
        with[pair] += single_A[next];
        const double here =
            single_A.size() <= tried ? sharedOut_A(single_A, next + 1, with) : mostLoaded_A(with);
        if (here < least) {
            least = here;
            best = with;
        }
    }
    return single_A.size() <= tried ? least : sharedOut_A(single_A, next + 1, best);
}

/// Shares out the heaters of one phase; those of three load all pairs alike.
void shareOut(ElectricalLoad& out)
{
    std::vector<double> single_A;
    std::array<double, 3> between_A{};
    for (const HeaterLoad& heater : out.heaters) {
        if (heater.phases == 1)
            single_A.push_back(heater.current_A);
        else
            for (double& pair_A : between_A)
                pair_A += heater.current_A / std::sqrt(3.0);
    }
    std::sort(single_A.begin(), single_A.end(), std::greater<>());
    out.shared_A = sharedOut_A(single_A, 0, between_A);
    out.remarks.push_back(
        {"Single-phase heaters on three phases: counted as if all were on the same two conductors, the most "
         "that any carries. Shared out as evenly as can be it is {0}, {1} at 125 %.",
         {{*out.shared_A, Unit::ampere}, {continuous_load_factor * *out.shared_A, Unit::ampere}},
         {}});
}

/// All heaters together. Heaters of one phase on a supply of three may stand on any two of its conductors:
/// how they share is not entered, so the current counts as if all were on the same two, which is the most.
void addUp(ElectricalLoad& out, const Supply& supply)
{
    double power_W = 0;
    double current_A = 0;
    bool all = !out.heaters.empty();
    bool three = !out.heaters.empty();
    std::size_t single = 0;
    for (const HeaterLoad& heater : out.heaters) {
        all = all && heater.missing.empty();
        power_W += heater.power_W;
        current_A += heater.current_A;
        three = three && heater.phases == 3;
        single += heater.phases == 1 ? 1 : 0;
    }
    if (!all)
        return;
    out.power_W = power_W;
    out.phases = three ? 3 : 1;
    if (!supply.volts_V && out.heaters.size() > 1) {
        out.missing.push_back({"The supply's voltage is not entered: the current of all heaters together is "
                               "not computed.",
                               {},
                               {}});
        return;
    }
    out.current_A = current_A;
    out.continuous_A = continuous_load_factor * current_A;
    if (supply.phases == 3 && single > 1)
        shareOut(out);
}

void addDrop(ElectricalLoad& out, const Supply& supply)
{
    const auto lacks = [&out](const char* what) { out.missing.push_back({what, {}, {}}); };
    if (!supply.phases)
        lacks("The supply's phases are not entered.");
    if (supply.conductor.empty())
        lacks("The conductor's size is not entered: the voltage drop is not computed.");
    if (!supply.one_way_m)
        lacks("The length of the run is not entered: the voltage drop is not computed.");
    if (!supply.conductor.empty()) {
        out.conductor = findConductor(supply.conductor);
        if (!out.conductor) {
            out.missing.push_back(
                {"{a} is not a size of the tables; 12 AWG or 4 mm2 are.", {}, {supply.conductor}});
            return;
        }
        const Figure resistance = resistance_ohm_per_km(
            *out.conductor,
            supply.material == ConductorMaterial::copper ? ConductorMetal::copper : ConductorMetal::aluminium,
            conductor_degC);
        out.ohm_per_km = resistance.value;
        if (!resistance.value)
            out.missing.push_back(resistance.problem);
    }
    if (!out.current_A || !supply.volts_V || !out.ohm_per_km || !supply.one_way_m)
        return;
    const VoltageDrop drop =
        voltageDrop(*out.current_A, *supply.volts_V, out.phases, *supply.one_way_m, *out.ohm_per_km);
    if (drop.computed)
        out.drop = drop;
    else
        out.missing.push_back(drop.problem);
}

void remark(ElectricalLoad& out, const Sketch& sketch)
{
    for (const HeaterLoad& load : out.heaters) {
        const Heater& heater = *sketch.heater(load.heater);
        const std::string name = nameOfHeater(heater);
        if (load.over_rated)
            out.remarks.push_back(
                {"{a} is rated for {0}. On {1} it would take {2}: do not connect it, the element burns out.",
                 {{*heater.rated_V.value, Unit::volt},
                  {sketch.supply.volts_V ? *sketch.supply.volts_V
                                         : heater.actual_V.value.value_or(*heater.rated_V.value),
                   Unit::volt},
                  {load.power_W, Unit::watt}},
                 {name}});
        constexpr double far_share = 0.05;
        if (sketch.supply.volts_V && heater.actual_V.known() &&
            std::abs(*heater.actual_V.value - *sketch.supply.volts_V) > far_share * *sketch.supply.volts_V)
            out.remarks.push_back(
                {"The warm-up of {a} is computed at {0}, which is entered with the heater; "
                 "the supply has {1}.",
                 {{*heater.actual_V.value, Unit::volt}, {*sketch.supply.volts_V, Unit::volt}},
                 {name}});
    }
    if (out.drop && out.drop->percent > advised_drop_percent)
        out.remarks.push_back({"The drop is over the {0} that is advised for a branch circuit.",
                               {{advised_drop_percent, Unit::percent}},
                               {}});
}

} // namespace

ElectricalLoad electricalLoadOf(const Sketch& sketch)
{
    ElectricalLoad out;
    out.volts_V = sketch.supply.volts_V;
    if (!out.volts_V && sketch.heaters.size() == 1)
        out.missing.push_back({"The voltage of the supply is not entered: the load is that of the heater at "
                               "the voltage entered for it.",
                               {},
                               {}});
    for (const Heater& heater : sketch.heaters)
        out.heaters.push_back(loadOf(heater, sketch.supply));
    addUp(out, sketch.supply);
    addDrop(out, sketch.supply);
    remark(out, sketch);
    return out;
}

} // namespace siphonwright
