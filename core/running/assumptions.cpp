#include "core/running/assumptions.h"

#include "core/physics/element.h"
#include "core/physics/heat_loss.h"
#include "core/physics/loop_resistance.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr std::array<Assumption, assumed_count> book = {{
    {"hose-end-loss", "Loss of hose ends, times the formula",
     "Hooper (1988); no measurement at such slow flow is known, +-15 % of flow comes from here", Unit::none,
     "", 1, 0.6, 1.4},
    {"fitting-loss", "Loss of valves, elbows and tees, times the formula",
     "Hooper (1981), an extrapolation under 1 in: +-35 %", Unit::none, "", 1, 0.65, 1.35},
    {"viscosity", "Viscosity of the coolant, times the formula",
     "Melinder (2010); published tables differ by so much", Unit::none, "", 1, 0.8, 1.3},
    {"buoyancy", "Fall of density with temperature, times the formula",
     "Melinder (2010); the ASHRAE tables (2001) give 10 to 20 % less", Unit::none, "", 1, 0.85, 1},
    {"roughness", "Roughness of hoses", "common practice: rubber and silicone count as smooth", Unit::mm, "",
     0.005, 0.0015, 0.01},
    {"share-at-outlet", "Share of the chamber's height at its outlet's temperature",
     "own choice: half drives about what an even rise does; none and all are the bounds", Unit::ratio, "",
     default_share_at_outlet, 0, 1},
    {"jacket-exchange", "Heat from coolant to block in the jacket, times the estimate",
     "own estimate: natural convection of a film of 100 W/m2 K over the jacket's surface", Unit::none, "", 1,
     0.5, 2},
    {"swept-share", "Share of the engine that the loop reaches, times the estimate",
     "own choice: distance between the ports over the engine's length", Unit::none, "", 1, 0.7, 1.2},
    {"block-conduction", "Conduction from the part reached to the rest",
     "own estimate: iron of 50 W/m K over 0.05 m2 and 0.3 m, and coolant moving by itself", Unit::none, "W/K",
     15, 7, 30},
    {"block-loss", "Heat loss of the engine, times the formula",
     "McAdams (1954) over five of six faces of a box round the engine, common practice", Unit::none, "", 1,
     0.75, 1.3},
    {"wind-share-at-engine", "Share of the wind that reaches the engine",
     "own estimate: an engine stands behind bodywork or in an enclosure", Unit::ratio, "", 0.25, 0.1, 0.6},
    {"wind-share-at-hose", "Share of the wind that reaches hoses", "common practice, no published source",
     Unit::ratio, "", wind_share_at_hose, 0.3, 0.5},
    {"mass-per-litre", "Engine mass where it is not entered, per litre of displacement",
     "from memory: iron diesel 75 to 110 kg", Unit::kg, "", 90, 75, 110},
    {"iron-heat", "Specific heat of iron", "from memory, textbooks: grey iron 460 to 540 J/kg K", Unit::none,
     "J/kg K", 500, 460, 540},
    {"aluminium-heat", "Specific heat of aluminium alloy", "from memory, textbooks: 880 to 960 J/kg K",
     Unit::none, "J/kg K", 900, 880, 960},
    {"coolant-per-litre", "Coolant in the engine where it is not entered, per litre of displacement",
     "from memory: 1 to 2 litre in the engine alone", Unit::litre, "", 1.5, 1, 2},
    {"chamber-metal", "Heat held by chamber and element", "own estimate: 1.5 kg of steel", Unit::none, "J/K",
     700, 400, 1200},
    {"chamber-convection", "The chamber's own convection when little flows", "own estimate", Unit::none,
     "W/K", 8, 4, 16},
    {"sensing-share", "Share of the chamber's heat that a thermostat at the inlet senses",
     "own choice, by conduction through the body it sits in", Unit::ratio, "", 0.3, 0.1, 0.5},
    {"thermostat-lag", "Lag of the thermostat", "own estimate: 20 to 60 s in a well", Unit::none, "s", 30, 20,
     60},
    {"thermostat-on", "Thermostat turns on, where it is not entered", "common practice: 100 degF", Unit::degC,
     "", 38, 38, 38},
    {"thermostat-off", "Thermostat turns off, where it is not entered", "common practice: 120 degF",
     Unit::degC, "", 49, 49, 49},
    {"shown-block", "Block temperature for which flow is shown on the drawing",
     "own choice: an engine that is kept warm", Unit::degC, "", 40, 40, 40},
    {"pump-head", "Head of the engine's pump between two ports of the block",
     "own estimate, at a fast idle; pumps differ", Unit::kPa, "", 3, 1, 10},
    {"pump-suction", "Head of the engine's pump between its suction and a port of the block",
     "own estimate, at a fast idle with the thermostat open; pumps differ", Unit::kPa, "", 12, 4, 30},
    {"running-coolant", "Coolant with the engine running", "common practice: a usual thermostat", Unit::degC,
     "", 85, 85, 85},
    {"tank-per-metre", "Coolant in the surge tank per metre of its height, times the engine's own",
     "own estimate: tanks are made to take what the coolant grows by", Unit::none, "l/(l·m)", 1.5, 0.75, 2.5},
}};

} // namespace

std::span<const Assumption> assumptionBook()
{
    return book;
}

const Assumption& assumptionOf(Assumed which)
{
    return book[static_cast<std::size_t>(which)];
}

const Assumption* assumptionById(std::string_view id)
{
    const auto row =
        std::find_if(book.begin(), book.end(), [id](const Assumption& one) { return one.id == id; });
    return row == book.end() ? nullptr : &*row;
}

std::string valueText(const Assumption& assumption, double value, UnitSystem units)
{
    // A roughness is far finer than lengths are printed.
    if (assumption.unit == Unit::mm)
        return exactText(value) + " mm";
    const std::string text = format(value, assumption.unit, units);
    return assumption.unit_text.empty() ? text : text + ' ' + std::string(assumption.unit_text);
}

Assumptions::Assumptions()
{
    for (std::size_t i = 0; i < assumed_count; ++i)
        values_[i] = book[i].value;
}

Assumptions::Assumptions(const Sketch& sketch) : Assumptions()
{
    for (const AssumptionChange& change : sketch.assumptions) {
        const auto row = std::find_if(book.begin(), book.end(),
                                      [&](const Assumption& one) { return one.id == change.assumption; });
        if (row == book.end() || !std::isfinite(change.value))
            continue;
        const auto index = static_cast<std::size_t>(row - book.begin());
        values_[index] = change.value;
        from_sketch_[index] = true;
    }
}

std::vector<Assumed> assumptionsIn(const Sketch& sketch)
{
    const auto any = [&](auto&& lacks) {
        return std::any_of(sketch.heaters.begin(), sketch.heaters.end(), lacks);
    };
    const auto bears = [&](Assumed which) {
        const std::optional<Engine>& engine = sketch.engine;
        const bool aluminium = engine && engine->material.value == Material::aluminium;
        switch (which) {
        case Assumed::mass_per_litre:
            return !engine || !engine->mass_kg.known();
        case Assumed::coolant_per_litre:
            return !engine || !engine->coolant_volume_l.known();
        case Assumed::iron_heat:
            return !aluminium;
        case Assumed::aluminium_heat:
            return aluminium;
        case Assumed::sensing_share:
            return any([](const Heater& h) { return h.thermostat == HeaterThermostat::inlet; });
        case Assumed::thermostat_on:
            return any([](const Heater& h) { return !h.on_degC.known(); });
        case Assumed::thermostat_off:
            return any([](const Heater& h) { return !h.off_degC.known(); });
        default:
            return true;
        }
    };
    std::vector<Assumed> out;
    for (std::size_t i = 0; i < assumed_count; ++i)
        if (bears(static_cast<Assumed>(i)))
            out.push_back(static_cast<Assumed>(i));
    return out;
}

} // namespace siphonwright
