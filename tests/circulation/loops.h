#pragma once

#include "core/physics/circulation.h"
#include "core/physics/fluid.h"

#include <cmath>
#include <numbers>

/// Fluids and loops that several tests use.
namespace siphonwright::test {

/// Constant properties but for a density that falls evenly, as closed forms have it.
class PlainFluid : public Fluid {
public:
    PlainFluid(double density, double viscosity, double specific_heat, double expansion_per_K)
        : density_kg_per_m3(density),
          viscosity_Pa_s(viscosity),
          specific_heat_J_per_kg_K(specific_heat),
          slope_kg_per_m3_K(-density * expansion_per_K)
    {}
    FluidState at(double temperature_degC) const override
    {
        const double t = std::fmin(std::fmax(temperature_degC, lowest_degC()), highest_degC());
        return {density_kg_per_m3 + slope_kg_per_m3_K * (t - 20), viscosity_Pa_s, specific_heat_J_per_kg_K,
                0.4};
    }
    double lowest_degC() const override { return -100; }
    double highest_degC() const override { return 200; }

private:
    double density_kg_per_m3, viscosity_Pa_s, specific_heat_J_per_kg_K, slope_kg_per_m3_K;
};

/// 50 % ethylene glycol by volume: fit to ASHRAE (2001) as read in an open property library, -37 to 100 degC.
class HalfGlycol : public Fluid {
public:
    FluidState at(double temperature_degC) const override
    {
        const double t = std::fmin(std::fmax(temperature_degC, lowest_degC()), highest_degC());
        return {1081.083 - 0.338265 * t - 0.00243064 * t * t,
                std::exp(-4.794039 - 0.04378271 * t + 3.2411093e-4 * t * t - 1.3528125e-6 * t * t * t),
                3203.38 + 3.85965 * t, 0.363794 + 9.0401e-4 * t - 3.8549e-6 * t * t};
    }
    double lowest_degC() const override { return -37; }
    double highest_degC() const override { return 110; }
};

inline double areaOf(double bore_m)
{
    return std::numbers::pi / 4 * bore_m * bore_m;
}

/// A stretch of smooth pipe or hose.
inline LoopElement pipe(double length_m, double rise_m, double bore_m, Heat heat = Heat::none())
{
    LoopElement element;
    element.length_m = length_m;
    element.rise_m = rise_m;
    element.bore_m = bore_m;
    element.losses = {Loss::wall(length_m, bore_m, 0)};
    element.heat = heat;
    return element;
}

/// Heated along its bottom, cooled along its top: every centre at mid-length, so that the heights between
/// heating and cooling are the rectangle's own.
inline Loop rectangle(double height_m, double width_m, double bore_m, double power_W)
{
    Loop loop;
    loop.elements = {pipe(width_m, 0, bore_m, Heat::heater(power_W)), pipe(height_m, height_m, bore_m),
                     pipe(width_m, 0, bore_m, Heat::heater(-power_W)), pipe(height_m, -height_m, bore_m)};
    return loop;
}

/// The practical circuit of case E: a tank 0.10 to 0.35 m up, a well mixed jacket with ports at 0.30 and
/// 0.75 m, 1.20 m of supply hose and 1.00 m of return hose, on each side an elbow, a full-bore ball valve,
/// entrance, exit and two hose ends 40 mm long, whose steps are Hooper's laminar ones.
struct PracticalCircuit {
    double power_W = 1500;
    double block_degC = 20;
    double hose_bore_m = 0.0159;
    double end_bore_m = 0.0120;
    double end_length_m = 0.040;
    double supply_W_per_K = 0; ///< to air
    double return_W_per_K = 0;
    double air_degC = -20;
    double jacket_W_per_K = 1e7; ///< well mixed
    double extra_height_m = 0;   ///< of the block over the tank

    std::vector<Loss> fittings(double hose_m) const
    {
        const double bore = hose_bore_m, ratio = end_bore_m / bore;
        const double large = 1 / std::pow(ratio, 4) - 1, small = 1 - std::pow(ratio, 4);
        // The jacket's and tank's openings and fittings have the hose's bore.
        std::vector<Loss> losses = {Loss::wall(hose_m, bore, 0), Loss::elbow90(bore), Loss::ballValve(bore),
                                    Loss::entrance(bore), Loss::exit(bore)};
        for (int i = 0; i < 2; ++i) {
            losses.push_back(Loss::general(1.2 * large, 160 * large, 1, bore, areaOf(bore)));
            losses.push_back(Loss::wall(end_length_m, end_bore_m, 0));
            losses.push_back(Loss::general(2 * small, 0, 1, end_bore_m, areaOf(end_bore_m)));
        }
        for (std::size_t i = 0; i < losses.size(); ++i)
            losses[i].part = static_cast<int>(i);
        return losses;
    }

    Loop loop() const
    {
        LoopElement supply, tank, back, jacket;
        supply.length_m = 1.20;
        supply.rise_m = 0.10 - 0.30 - extra_height_m;
        supply.bore_m = hose_bore_m;
        supply.losses = fittings(1.20);
        supply.heat = Heat::toAir(supply_W_per_K, air_degC);
        tank = pipe(0.25, 0.25, 0.050, Heat::heater(power_W));
        back.length_m = 1.00;
        back.rise_m = 0.75 - 0.35 + extra_height_m;
        back.bore_m = hose_bore_m;
        back.losses = fittings(1.00);
        back.heat = Heat::toAir(return_W_per_K, air_degC);
        jacket.length_m = 0.45;
        jacket.rise_m = 0.30 - 0.75;
        jacket.bore_m = 0.050;
        jacket.heat = Heat::toBlock(jacket_W_per_K, block_degC);
        Loop loop;
        loop.elements = {supply, tank, back, jacket};
        return loop;
    }
};

} // namespace siphonwright::test
