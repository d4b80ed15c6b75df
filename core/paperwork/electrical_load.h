#pragma once

#include "core/physics/electrical.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

/// The electrical load of the heaters drawn, on the supply entered: figures for a licensed electrician, who
/// decides with the local code.
namespace siphonwright {

/// Power by the square of the voltage may exceed the rating by so much before it is called out: supplies are
/// within +-10 % of nominal (EN 50160, IEC 60038; from memory), which is +21 % of power.
constexpr double most_over_rated_V = 1.10;

/// Drop from which it is pointed out: 3 % on a branch circuit (NEC 210.19(A) informational note, advice and
/// no rule; from memory).
constexpr double advised_drop_percent = 3;

/// One heater on its voltage.
struct HeaterLoad {
    Id heater;
    std::string missing; ///< empty: computed
    double power_W = 0;
    double current_A = 0;
    int phases = 1;
    bool over_rated = false; ///< on a voltage that burns out elements
};

struct ElectricalLoad {
    std::optional<double> volts_V; ///< of the supply; nothing: not entered, each heater on its own voltage
    std::vector<HeaterLoad> heaters;
    std::vector<Message> missing;       ///< what is not entered or does not fit, and what hangs on it
    std::optional<double> power_W;      ///< of all
    std::optional<double> current_A;    ///< in the most loaded conductor
    std::optional<double> continuous_A; ///< at 125 %
    /// The same with single-phase heaters shared out over three phases as evenly as can be; nothing where
    /// there is nothing to share out.
    std::optional<double> shared_A;
    int phases = 1;
    const Conductor* conductor = nullptr;
    std::optional<double> ohm_per_km; ///< at conductor_degC
    std::optional<VoltageDrop> drop;  ///< with all heaters on
    std::vector<Message> remarks;
};

ElectricalLoad electricalLoadOf(const Sketch& sketch);

} // namespace siphonwright
