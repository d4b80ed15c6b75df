#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string_view>

/// Electrical load figures of resistive heaters: current, power at another voltage, conductors, voltage drop.
///
/// They are figures for the electrician to check, never an instruction to wire. Input that is not finite, not
/// over 0, or past the limits below is refused with a sentence and nothing is computed from it.
namespace siphonwright {

constexpr double most_supply_V = 1000;  ///< low voltage ends here (IEC 60038); own limit of what is computed
constexpr double most_one_way_m = 1000; ///< own limit: longer runs want a design of their own
constexpr double most_heating_W = 100'000; ///< own limit

/// A figure, or why there is none.
struct Figure {
    std::optional<double> value;
    Message problem; ///< empty pattern: none
};

/// Current of a resistive load: P/V single-phase, P/(sqrt(3) V) three-phase, V between conductors.
/// \param phases 1 or 3
Figure loadCurrent_A(double power_W, double volts_V, int phases);

/// Power of a resistance rated at one voltage and used at another: rated (V/V_rated)^2. That the element's
/// resistance grows by a few percent with its temperature is left out.
Figure powerAtVoltage_W(double rated_W, double rated_V, double volts_V);

/// What a circuit is reckoned with that carries a load for three hours and more: 125 % of it (NEC 210.20(A)
/// for branch circuits, 215.3 for feeders).
constexpr double continuous_load_factor = 1.25;

enum class ConductorMetal { copper, aluminium };

/// One size of conductor with its largest direct-current resistance.
struct Conductor {
    std::string_view size;           ///< "12 AWG", "4 mm2"
    double area_mm2 = 0;             ///< nominal
    double reference_degC = 20;      ///< at which the resistances hold
    double copper_ohm_per_km = 0;    ///< plain, not coated
    double aluminium_ohm_per_km = 0; ///< 0: not made in this metal
    bool by_gauge = false;           ///< American gauge; otherwise square millimetres
};

/// All sizes, gauges first.
///
/// Square millimetres: IEC 60228 classes 1 and 2, plain conductors, ohm/km at 20 degC. Flexible cords (class
/// 5) are up to 10 % higher. Gauges: NEC chapter 9 table 8, stranded and uncoated, ohm per 1000 ft at 75 degC
/// over 0.3048. Both as makers' and reference pages print them; the standards themselves were not at hand.
std::span<const Conductor> conductors();

/// A size as people write it: "12 AWG", "#12", "1/0", "4 mm2", "4 mm²". A bare number is refused, since 4
/// could be either.
/// @return null for a size that is not in the tables
const Conductor* findConductor(std::string_view typed);

/// Resistance at a temperature.
///
/// From 20 degC: R (234.5 + t)/254.5 copper, R (228 + t)/248 aluminium (IEC 60228). From 75 degC: R (1 + a
/// (t - 75)), a = 0.00323 copper, 0.00330 aluminium (NEC chapter 9 table 8, note 2). Range: -50 to 150 degC.
Figure resistance_ohm_per_km(const Conductor& conductor, ConductorMetal metal, double temperature_degC);

/// Temperature at which conductors are taken to work: as hot as most insulation allows, so that the drop is
/// rather overstated (NEC table 8 is for it too).
constexpr double conductor_degC = 75;

struct VoltageDrop {
    double drop_V = 0;
    double percent = 0;   ///< of the supply's voltage
    double at_load_V = 0; ///< what is left there
    double loss_W = 0;    ///< heat in the conductors
    bool computed = false;
    Message problem;
};

/// Voltage lost along a run: 2 L R I single-phase, sqrt(3) L R I three-phase, L one way, power factor 1,
/// reactance left out (under 1 % of it up to 50 mm2; NEC table 9). Current is the load's at full voltage:
/// with a resistance at the end it is a little less, so the drop is overstated by as much as itself in
/// percent. A drop that would exceed a third of the voltage is refused: nothing works there.
VoltageDrop voltageDrop(double current_A, double volts_V, int phases, double one_way_m, double ohm_per_km);

/// Energy, kWh.
Figure energy_kWh(double power_W, double hours);

} // namespace siphonwright
