#pragma once

#include "core/physics/fluid.h"
#include "core/physics/glycol.h"
#include "core/running/assumptions.h"
#include "core/sketch/sketch.h"

#include <memory>
#include <optional>
#include <string>

namespace siphonwright {

/// The sketch's coolant as the physics sees it, with the assumed uncertainty of its properties applied.
///
/// Viscosity is multiplied; density keeps its value at 20 degC and has its change with temperature
/// multiplied.
class AssumedCoolant : public Fluid {
public:
    AssumedCoolant(GlycolWater coolant, double viscosity_factor, double buoyancy_factor);

    FluidState at(double temperature_degC) const override;
    double lowest_degC() const override { return coolant_.lowest_degC(); }
    double highest_degC() const override { return coolant_.highest_degC(); }

private:
    GlycolWater coolant_;
    double viscosity_factor_;
    double buoyancy_factor_;
    double density_at_20_;
};

/// The coolant, or which fact is missing for it ("the kind of antifreeze is not entered").
struct CoolantOf {
    std::optional<AssumedCoolant> fluid;
    std::string missing;
};
CoolantOf coolantOf(const Sketch& sketch, const Assumptions& assumed);

/// Where the coolant boils in a heater's chamber: with the cap's pressure, altitude, and the head of coolant
/// standing over it. Without a cap pressure entered the system counts as open.
std::optional<double> boilingPoint_degC(const Sketch& sketch, double head_mm);

} // namespace siphonwright
