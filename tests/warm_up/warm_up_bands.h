#pragma once

#include "core/physics/bands.h"
#include "core/physics/warm_up.h"

#include <optional>
#include <stop_token>
#include <vector>

namespace siphonwright {

/// What a warm-up's bands are made of, in this order: factors on, or values of, the inputs' assumed figures.
/// Their ranges and what they rest on are in UncertainFigure::basis.
enum class WarmUpAssumption {
    block_loss,       ///< factor on the block's heat loss
    block_capacity,   ///< factor on its metal's heat capacity
    hose_loss,        ///< factor on what hoses and chamber lose
    pressure_loss,    ///< factor on all pressure losses
    swept_share,      ///< factor on the share of the block that a loop reaches
    jacket_exchange,  ///< factor on UA between jacket coolant and metal
    conduction,       ///< factor on conduction within the block
    share_at_outlet,  ///< of the chamber's height
    own_convection,   ///< factor on the chamber's own convection
    sensing_fraction, ///< of the thermostat
    thermostat_lag,   ///< factor
    viscosity,        ///< factor on the coolant's
    expansion,        ///< factor on its thermal expansion
    specific_heat,    ///< factor
    count
};

/// One for each WarmUpAssumption. The share at outlet and the sensing fraction go round their defaults; facts
/// that the user has entered are left out by giving them a range of nothing.
std::vector<UncertainFigure> warmUpAssumptions();

/// What warmUpBands() gives bands for, in this order.
enum class WarmUpOutput {
    peak_outlet_degC, ///< the highest of all heaters
    cycles_per_hour,  ///< the most of all heaters
    target_s,
    block_at_end_degC,
    energy_joules,
    boiling_margin_kelvin, ///< the least of all heaters
    return_warm_s,         ///< the latest of all heaters
    most_flow_kg_per_s,    ///< the least of all heaters
    count
};

/// The inputs with assumed figures as a sample has them. \param values as warmUpAssumptions()
WarmUpInputs varied(const WarmUpInputs& inputs, const std::vector<double>& values);

/// A liquid with factors on what is known of it: viscosity, specific heat, and expansion (the difference of
/// its density from that at 20 degC).
class FactoredFluid : public Fluid {
public:
    /// \param of has to outlive it
    FactoredFluid(const Fluid& of, double viscosity, double expansion, double specific_heat);

    FluidState at(double temperature_degC) const override;
    double lowest_degC() const override { return fluid_.lowest_degC(); }
    double highest_degC() const override { return fluid_.highest_degC(); }

private:
    const Fluid& fluid_;
    double viscosity_factor_;
    double expansion_factor_;
    double specific_heat_factor_;
    double middle_kg_per_m3_;
};

/// Bands of a warm-up. Boiling counts: a sample that boils has the boiling point as its peak. One that cannot
/// be followed has no outputs.
Bands warmUpBands(const WarmUpInputs& inputs, const Fluid& fluid,
                  const std::vector<UncertainFigure>& assumptions = warmUpAssumptions(),
                  const WarmUpOptions& options = {}, const BandOptions& band_options = {},
                  const std::stop_token& stop = {});

} // namespace siphonwright
