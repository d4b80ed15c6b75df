#pragma once

/// A liquid as circulation sees it.
namespace siphonwright {

/// Properties of a liquid at one temperature, at the pressure of a cooling system.
struct FluidState {
    double density_kg_per_m3 = 0;
    double viscosity_Pa_s = 0; ///< dynamic
    double specific_heat_J_per_kg_K = 0;
    double conductivity_W_per_m_K = 0;
};

/// A liquid's properties over temperature, and the range in which they hold.
///
/// Implementations are fixed after construction and answer the same for the same temperature. Outside the
/// range at() answers as at the nearer end of it; whoever cares compares with the ends.
class Fluid {
public:
    Fluid() = default;
    Fluid(const Fluid&) = default;
    Fluid(Fluid&&) = default;
    Fluid& operator=(const Fluid&) = default;
    Fluid& operator=(Fluid&&) = default;
    virtual ~Fluid() = default;

    virtual FluidState at(double temperature_degC) const = 0;
    virtual double lowest_degC() const = 0;  ///< freezing point, or where the property data begin
    virtual double highest_degC() const = 0; ///< where the property data end
};

} // namespace siphonwright
