#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/sketch.h"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Every figure that is assumed and not measured, in one place: what it is, on what basis, how far it may be
/// off. Each can be replaced per sketch, and is printed with the results.
namespace siphonwright {

enum class Assumed {
    hose_end_loss,
    fitting_loss,
    viscosity,
    buoyancy,
    roughness,
    share_at_outlet,
    jacket_exchange,
    swept_share,
    block_conduction,
    block_loss,
    engine_wind_share,
    hose_wind_share,
    mass_per_litre,
    iron_heat,
    aluminium_heat,
    coolant_per_litre,
    chamber_metal,
    chamber_convection,
    sensing_share,
    thermostat_lag,
    thermostat_on,
    thermostat_off,
    shown_block,
    pump_head,
    pump_suction,
    running_coolant,
    tank_per_metre,
    count
};
constexpr std::size_t assumed_count = static_cast<std::size_t>(Assumed::count);

/// One row of the list of assumptions.
struct Assumption {
    std::string_view id;    ///< stable, used in files
    std::string_view title; ///< a few words for people
    std::string_view basis; ///< source, "common practice", "own estimate" or "own choice"
    Unit unit;
    std::string_view unit_text; ///< where `unit` has no name for it
    double value;
    double low; ///< between these the true figure is taken to lie, all values alike likely
    double high;
};

/// All assumptions in the order in which they are listed to people; index is the enumerator.
std::span<const Assumption> assumptionBook();
const Assumption& assumptionOf(Assumed which);
const Assumption* assumptionById(std::string_view id);
/// A value of this assumption with its unit: "15 W/K", "0.005 mm"; factors stand alone.
std::string valueText(const Assumption& assumption, double value, UnitSystem units);

/// The figures in force: the book's, with the sketch's changes over them. A changed figure counts as known
/// and has no spread.
class Assumptions {
public:
    Assumptions();
    explicit Assumptions(const Sketch& sketch);

    double operator[](Assumed which) const { return values_[static_cast<std::size_t>(which)]; }
    void set(Assumed which, double value) { values_[static_cast<std::size_t>(which)] = value; }
    bool changed(Assumed which) const { return from_sketch_[static_cast<std::size_t>(which)]; }

private:
    std::array<double, assumed_count> values_{};
    std::array<bool, assumed_count> from_sketch_{};
};

/// The figures that bear on a sketch's results: without those whose fact is entered.
std::vector<Assumed> assumptionsIn(const Sketch& sketch);

} // namespace siphonwright
