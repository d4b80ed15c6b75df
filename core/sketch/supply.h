#pragma once

#include <optional>
#include <string>
#include <vector>

/// What is entered about the electrical supply at the bay, the nights a heater is plugged in, and the coolant
/// that is wanted. No value means: not entered, so what needs it is not computed.
namespace siphonwright {

enum class Glycol;

enum class ConductorMaterial { copper, aluminium };

/// One row of a season: so many nights at this temperature.
struct ColdNights {
    double ambient_degC = 0;
    double nights = 0;
    friend bool operator==(const ColdNights&, const ColdNights&) = default;
};

/// Supply at the bay, and how long the heater is plugged in.
struct Supply {
    std::optional<double> volts_V; ///< between conductors, at the start of the run to the bay
    std::optional<int> phases;     ///< 1 or 3
    std::string conductor;         ///< size as people write it: "12 AWG", "4 mm2"; empty: not entered
    ConductorMaterial material = ConductorMaterial::copper;
    std::optional<double> one_way_m;       ///< length of the run, one way
    std::optional<double> tariff_per_kWh;  ///< price of energy, in the currency of the quote
    std::optional<double> hours_per_night; ///< plugged in
    std::optional<double> reach_h;         ///< time allowed to reach the target
    std::vector<ColdNights> season;
    friend bool operator==(const Supply&, const Supply&) = default;
};

/// What is in the water that coolant is mixed with; 1 ppm is 1 mg/l.
struct WaterQuality {
    std::optional<double> chloride_ppm;
    std::optional<double> sulphate_ppm;
    std::optional<double> hardness_ppm; ///< as CaCO3
    std::optional<double> solids_ppm;   ///< total dissolved
    std::optional<double> pH;
    friend bool operator==(const WaterQuality&, const WaterQuality&) = default;
};

/// The coolant that is wanted. What is in the engine now is Coolant.
struct CoolantPlan {
    std::optional<Glycol> wanted_glycol;  ///< kind of antifreeze; nothing: of the kind that is in now
    std::optional<double> wanted_percent; ///< antifreeze by volume
    std::optional<double> system_l;       ///< whole cooling system, radiator included; nothing: engine alone
    std::optional<double> drainable_l;    ///< what runs out at the drains in one go
    WaterQuality water;
    friend bool operator==(const CoolantPlan&, const CoolantPlan&) = default;
};

} // namespace siphonwright
