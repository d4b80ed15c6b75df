#pragma once

#include "core/physics/coolant.h"
#include "core/physics/fluid.h"

#include <array>

namespace siphonwright {

/// Melinder's polynomials for one mixture of pure ethylene or propylene glycol and water, without inhibitors.
///
/// Method: Melinder, A. (2010), Properties of Secondary Working Fluids for Indirect Systems, IIR/IIF:
/// sum c_ij (x - x0)^i (T - T0)^j, x mass percent, T degC; viscosity is the exponential of it in mPa s.
/// Transcribed from the open property libraries CoolProp and SecondaryCoolantProps, which agree in all
/// coefficients; the book itself was not seen.
///
/// Range: 0 to 60 mass percent, freezing point to 100 degC as those libraries state it. This is the bare
/// polynomial: it answers anywhere, and what to use beyond the range is decided by GlycolWater.
class MelinderMix {
public:
    MelinderMix(CoolantBase base, double mass_percent);
    FluidState at(double temperature_degC) const;

private:
    /// In (T - centre), lowest power first.
    using Cubic = std::array<double, 4>;
    double centre_degC_ = 0;
    Cubic density_{};
    Cubic specific_heat_{};
    Cubic conductivity_{};
    Cubic ln_viscosity_{}; ///< its exponential is in mPa s
};

} // namespace siphonwright
