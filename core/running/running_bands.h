#pragma once

#include "core/physics/bands.h"
#include "core/running/running.h"

#include <array>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace siphonwright {

/// Results that come with a band.
enum class Banded {
    flow_kg_per_s,
    peak_outlet_degC,
    cycles_per_hour,
    target_h,
    block_at_end_degC,
    energy_kWh,
    count
};
constexpr std::size_t banded_count = static_cast<std::size_t>(Banded::count);

/// P5 to P95 of one result over what is assumed, and the assumptions that drive it, strongest first.
struct ResultBand {
    double low = 0;
    double middle = 0;
    double high = 0;
    /// Share of the samples that have the result: a target that is not always reached has under 1.
    double share = 0;
    std::vector<Assumed> drivers;
};

/// Of one heater; nothing where no sample has the result. Time to target and block at the end are the
/// engine's, the same for all; energy is the heater's own.
struct HeaterBands {
    Id heater;
    std::array<std::optional<ResultBand>, banded_count> results;

    const std::optional<ResultBand>& operator[](Banded which) const
    {
        return results[static_cast<std::size_t>(which)];
    }
};

/// Bands of steady flow and warm-up by a Latin hypercube over the assumption book's ranges; figures that the
/// sketch has replaced are held. The same for one sketch on every machine, up to the rounding of its math
/// library. Several heaters take half as many samples. Empty when stopped or when there is nothing to
/// compute. \param filling whose air withstands the flow in every sample, as passAir() has it
std::vector<HeaterBands> runningBands(const Sketch& sketch, const Layout& layout, const Filling& filling,
                                      const std::stop_token& stop = {}, std::size_t samples = 200);

} // namespace siphonwright
