#include "core/physics/circulation.h"
#include "core/physics/warm_up.h"
#include "core/physics/warm_up_cells.h"
#include "core/quantity/positive.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace siphonwright {
namespace {

bool isShare(double value)
{
    return value >= 0 && value <= 1;
}

/// The first thing that is wrong, or nothing. The checks run in reading order and the first keeps its place.
class Complaint {
public:
    void unless(bool holds, const char* pattern)
    {
        if (!holds && message.pattern.empty())
            message.pattern = pattern;
    }
    void take(const Message& other)
    {
        if (message.pattern.empty())
            message = other;
    }
    Message message;
};

void checkHeater(const WarmUpHeater& heater, Complaint& complaint)
{
    complaint.unless(isPositive(heater.rated_W), "The heater's rated power has to be over 0.");
    complaint.unless(isPositive(heater.rated_V), "The heater's rated voltage has to be over 0.");
    complaint.unless(std::isfinite(heater.supply_V) && heater.supply_V >= 0,
                     "The supply voltage must not be negative.");
    complaint.unless(isPositive(heater.coolant_L), "The heater's chamber has to hold coolant.");
    complaint.unless(std::isfinite(heater.metal_J_per_K) && heater.metal_J_per_K >= 0,
                     "The heater's own heat capacity must not be negative.");
    complaint.unless(isPositive(heater.own_convection_W_per_K),
                     "The chamber's own convection has to be over 0.");
    const Thermostat& thermostat = heater.thermostat;
    complaint.unless(std::isfinite(thermostat.on_degC) && std::isfinite(thermostat.off_degC) &&
                         thermostat.on_degC < thermostat.off_degC,
                     "The thermostat has to switch on at a lower temperature than off.");
    complaint.unless(isShare(thermostat.sensing_fraction),
                     "The thermostat's sensing fraction has to be from 0 to 1.");
    complaint.unless(isPositive(thermostat.lag_s), "The thermostat's lag has to be over 0.");
    const CutOutSwitch& cut_out = heater.cut_out;
    complaint.unless(cut_out.reset == CutOutReset::not_fitted || std::isfinite(cut_out.trip_degC),
                     "The cut-out's trip temperature is not a number.");
    complaint.unless(cut_out.reset != CutOutReset::self || cut_out.reset_degC < cut_out.trip_degC,
                     "The cut-out has to reset at a lower temperature than it trips.");
    complaint.unless(isPositive(heater.element.diameter_mm) && isPositive(heater.element.flux_W_per_cm2),
                     "The element's diameter and flux have to be over 0.");
}

void checkRuns(const WarmUpLoop& loop, Complaint& complaint)
{
    Loop ring;
    for (const auto* run : {&loop.chamber, &loop.return_hose, &loop.jacket, &loop.supply_hose}) {
        complaint.unless(!run->empty(), "Chamber, hoses and jacket each need an element.");
        ring.elements.insert(ring.elements.end(), run->begin(), run->end());
    }
    if (!complaint.message.pattern.empty())
        return;
    complaint.take(problemIn(ring));
    complaint.unless(volume_m3(loop.return_hose) > 0 && volume_m3(loop.supply_hose) > 0,
                     "Return and supply hose have to have a length.");
    complaint.unless(std::isfinite(loop.return_wall_J_per_K) && loop.return_wall_J_per_K >= 0 &&
                         std::isfinite(loop.supply_wall_J_per_K) && loop.supply_wall_J_per_K >= 0,
                     "A hose's own heat capacity must not be negative.");
    complaint.unless(isShare(loop.return_surface_share),
                     "The share of temperature at a hose's surface has to be from 0 to 1.");
    complaint.unless(isPositive(loop.loss_factor), "The factor on pressure losses has to be over 0.");
    complaint.unless(loop.swept_share >= 0.02 && loop.swept_share <= 0.98,
                     "The share of the block that a loop sweeps has to be from 0.02 to 0.98.");
}

void checkTimes(const WarmUpInputs& inputs, Complaint& complaint)
{
    complaint.unless(isPositive(inputs.duration_s), "The duration has to be over 0.");
    complaint.unless(std::isfinite(inputs.supply_on_s) && inputs.supply_on_s >= 0 &&
                         inputs.supply_off_s >= inputs.supply_on_s,
                     "Power has to come at 0 or later, and to go after it came.");
}

void checkOptions(const WarmUpOptions& options, Complaint& complaint)
{
    complaint.unless(options.relative_tolerance >= 1e-12 && options.relative_tolerance <= 1e-2,
                     "The relative tolerance has to be from 1e-12 to 1e-2.");
    complaint.unless(options.absolute_tolerance_K >= 1e-12 && options.absolute_tolerance_K <= 1,
                     "The absolute tolerance has to be from 1e-12 to 1 K.");
    complaint.unless(options.event_tolerance_s >= 1e-9 && options.event_tolerance_s <= 10,
                     "The tolerance of switching times has to be from 1e-9 to 10 s.");
    complaint.unless(std::isfinite(options.sample_every_s) && options.sample_every_s >= 0,
                     "The time between samples must not be negative.");
    complaint.unless(options.hose_cells >= 2 && options.hose_cells <= 20 && options.jacket_cells >= 2 &&
                         options.jacket_cells <= 20,
                     "Hoses and jacket take 2 to 20 cells.");
}

} // namespace

Message problemIn(const WarmUpInputs& inputs, const WarmUpOptions& options)
{
    Complaint complaint;
    complaint.unless(!inputs.loops.empty(), "There is no heater.");
    const EngineBlock& block = inputs.block;
    complaint.unless(isPositive(block.metal_J_per_K), "The block's heat capacity has to be over 0.");
    complaint.unless(isPositive(block.coolant_L), "The engine has to hold coolant.");
    complaint.unless(std::isfinite(block.loss_W_per_K) && block.loss_W_per_K >= 0,
                     "The block's heat loss must not be negative.");
    complaint.unless(std::isfinite(block.conduction_W_per_K) && block.conduction_W_per_K >= 0,
                     "Conduction within the block must not be negative.");
    double swept = 0;
    for (const WarmUpLoop& loop : inputs.loops) {
        checkHeater(loop.heater, complaint);
        checkRuns(loop, complaint);
        swept += loop.swept_share;
    }
    complaint.unless(swept <= 0.98 + 1e-9, "The loops together sweep more than 0.98 of the block.");
    const auto inRange = [](double degC) { return degC >= -100 && degC <= 200; };
    complaint.unless(inRange(inputs.air_degC) && inRange(inputs.start_degC) && inRange(inputs.target_degC) &&
                         inRange(inputs.boiling_degC),
                     "Temperatures have to be from -100 to 200 degC.");
    complaint.unless(inputs.start_degC < inputs.boiling_degC, "The start is at the boiling point already.");
    complaint.unless(isPositive(inputs.return_warm_rise_K), "A warm return has to be over the start.");
    checkTimes(inputs, complaint);
    checkOptions(options, complaint);
    return complaint.message;
}

double sweptShare(double port_distance_mm, double engine_length_mm)
{
    constexpr double least = 0.1, most = 0.9;
    const double share = port_distance_mm / engine_length_mm;
    return share >= least ? std::min(share, most) : least;
}

double jacketExchange_W_per_K(double coolant_L, double swept_share, double film_W_per_m2_K, double passage_mm)
{
    const double wetted_m2 = 2 * coolant_L / passage_mm; // L over mm is m2
    return film_W_per_m2_K * wetted_m2 * swept_share;
}

} // namespace siphonwright
