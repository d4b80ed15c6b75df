#pragma once

#include "core/physics/coolant.h"
#include "core/physics/fluid.h"
#include "core/physics/melinder.h"

#include <optional>

namespace siphonwright {

/// Highest temperature of coolant with which anything is computed.
constexpr double highest_coolant_degC = 120;

/// Mass percent of glycol in a mixture of `volume_percent` glycol, both measured before mixing at 20 degC, as
/// it is mixed from cans ("50/50" is 52.7 mass percent with ethylene glycol). Pure densities at 20 degC:
/// water 998.2 kg/m3 (IAPWS), ethylene glycol 1113.2 (from memory; an engine maker's manual prints 1.113
/// g/ml), propylene glycol 1036.2 (Eisenbach et al. 2021). Counting on the volume of the mixture instead,
/// which shrinks, gives up to 0.7 (ethylene) and 1.3 (propylene) mass percent less. From 0 to 100 percent.
double glycolMassPercent(CoolantBase base, double volume_percent);

/// The other way. From 0 to 100 percent.
double glycolVolumePercent(CoolantBase base, double mass_percent);

/// Coolant: water with 0 to 60 percent by volume of ethylene or propylene glycol.
///
/// Method: MelinderMix from 1 mass percent; liquidWater() for plain water; between them in proportion, the
/// viscosity by its logarithm. Over 100 degC, where Melinder's data end, ln viscosity runs linear in 1/T(K)
/// through its values at 80 and 100 degC, conductivity keeps its value at 100 degC, density and specific heat
/// follow the polynomial. 60 percent by volume of ethylene glycol is 62.6 by mass, a little past the 60 that
/// the source states; all four properties stay monotonic there.
///
/// Range: freezing point (freezingPoint(), ice forms below: slush) to highest_coolant_degC.
///
/// Error: plain water as liquidWater(). For mixtures only the spread between sources is known, since coolants
/// as sold hold inhibitors and the tables of pure ones differ too: computed less published, over all rows of
/// tests/physics/data, density -1.9 to +0.5 %, specific heat -7.8 to +1.8 %, conductivity -2 to +5 %,
/// viscosity -29 to +27 % over 0 degC and -43 to +26 % below. How density falls with temperature, which
/// drives natural circulation, differs by 10 to 20 % (ethylene glycol) from the ASHRAE tables, to which it is
/// the larger.
class GlycolWater : public Fluid {
public:
    /// Nothing when the percentage is not a number from 0 to largest_known_glycol_percent.
    static std::optional<GlycolWater> ofVolume(CoolantBase base, double volume_percent);
    /// The same by mass percent: nothing when it comes to more than largest_known_glycol_percent by volume.
    static std::optional<GlycolWater> ofMass(CoolantBase base, double mass_percent);
    static GlycolWater water();

    CoolantBase base() const { return base_; }
    double volumePercent() const { return volume_percent_; }

    /// As at the nearer end outside the range; what is not a number counts as the lower end.
    FluidState at(double temperature_degC) const override;
    double lowest_degC() const override { return freezing_degC_; }
    double highest_degC() const override { return highest_coolant_degC; }

private:
    GlycolWater(CoolantBase base, double volume_percent, double freezing_degC);
    FluidState mixture(double temperature_degC) const;

    CoolantBase base_;
    double volume_percent_;
    double freezing_degC_;
    double water_share_; ///< 1 for plain water, 0 from 1 mass percent of glycol
    MelinderMix mix_;
    double viscosity_at_100_Pa_s_;
    double ln_viscosity_slope_K_; ///< of ln viscosity over 1/T above 100 degC
};

/// By how much a volume of liquid grows from one temperature to another, as a share of the first; negative
/// when it shrinks. Temperatures are held to the liquid's range.
double expansion(const Fluid& fluid, double from_degC, double to_degC);

} // namespace siphonwright
