#pragma once

#include "core/physics/coolant.h"

#include <optional>

/// When coolant boils.
namespace siphonwright {

/// Pressure of the air at an altitude.
///
/// Method: the standard atmosphere's lowest layer, ISO 2533 (1975): 101325 Pa (1 - 0.0065 h / 288.15)^5.2559.
/// Weather moves it by some 3 %.
/// Range: -500 to 11000 m; nothing outside.
std::optional<double> atmosphericPressure_Pa(double altitude_m);

/// What stands on the coolant at a place.
struct CoolingSystem {
    double altitude_m = 0;        ///< over sea level
    double cap_gauge_Pa = 0;      ///< pressure the cap holds over the air outside; 0 for open systems
    double head_m = 0;            ///< height of coolant standing over the place; negative under its level
    double density_kg_per_m3 = 0; ///< of that coolant
};

/// Absolute pressure in coolant at a place, with the cap's pressure fully built up, as it is when the engine
/// is hot; a cold system with an air space may hold less, so whoever needs a safe figure leaves the cap out.
/// Nothing when the altitude is out of range, cap or density negative, a member not a number or the pressure
/// not over 0.
std::optional<double> coolantPressure_Pa(const CoolingSystem& system);

/// Temperature at which water boils.
///
/// Method: IAPWS-IF97, region 4, equation 31. Range: 611.213 Pa (0 degC) to 22.064 MPa; nothing outside.
std::optional<double> waterBoilingPoint_degC(double absolute_pressure_Pa);

/// Temperature at which coolant begins to boil.
///
/// Method: Raoult's law, the glycol's own vapour left out: water's boiling point at pressure over mole
/// fraction of water. Against published points for 50 % ethylene glycol it is 0.2 K high at 1 atm and 1.6 K
/// high at 103 kPa over it.
///
/// Nothing when freezingPoint() gives nothing, or outside waterBoilingPoint_degC(). Over highest_coolant_degC
/// it still answers: coolant under pressure boils beyond the range of its other properties.
std::optional<double> boilingPoint_degC(CoolantBase base, double volume_percent, double absolute_pressure_Pa);

/// Share of water among the molecules of a mixture; molar masses 18.015, 62.068 (ethylene glycol), 76.094
/// (propylene glycol) g/mol. From 0 to 100 percent.
double waterMoleFraction(CoolantBase base, double volume_percent);

} // namespace siphonwright
