#pragma once

#include "core/physics/circulation.h"
#include "core/physics/warm_up.h"
#include "core/running/circuit.h"
#include "core/running/coolant_of.h"
#include "core/running/filling.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// How the drawn loops run: steady circulation of each, and the warm-up of the engine by all of them.
namespace siphonwright {

/// One heater's loop, or what is missing for computing it.
struct LoopRun {
    Id heater;
    PartRef missing_of;
    std::string missing; ///< empty: computed
    Circuit circuit;
    Circulation circulation;                ///< steady, at Running::block_degC, past the air that stays
    std::optional<Circulation> without_air; ///< where air stays: as it would be without
    std::shared_ptr<const LoopResistance> resistance; ///< of the circuit
};

struct Running {
    double block_degC = 0; ///< at which the steady circulation is computed
    std::vector<LoopRun> loops;
    std::shared_ptr<const FluidTable> coolant;
    LossTables tables; ///< of the loops' losses, for the next time

    const LoopRun* loopOf(const Id& heater) const;
};

/// Steady circulation of every loop of the layout. Some tenths of a millisecond a loop; half of that where
/// its losses are those of `previous`, which only saves time: results do not depend on it. \param options
/// without its boiling point, which is the sketch's
Running runSteady(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                  const Running* previous = nullptr, const CirculationOptions& options = {});

/// Let the air that stays after filling withstand the flow of its loop: the heads of all pockets of a loop
/// together, as flow would press them, and the loss past those that only narrow their bore, at the flow that
/// the loop has without air.
void passAir(Running& running, const Sketch& sketch, const Layout& layout, const Filling& filling);

/// The warm-up of the engine by all loops that can be computed, or what is missing for it.
struct EngineWarmUp {
    PartRef missing_of;
    std::string missing;                ///< empty: computed
    std::vector<Id> heaters;            ///< of result.loops, in their order
    std::optional<WarmUpInputs> inputs; ///< what it was computed from
    WarmUp result;

    const LoopOutcome* loopOf(const Id& heater) const;
};

/// The engine as loops and sizing see it, or what it lacks.
struct BlockOf {
    std::optional<EngineBlock> block;
    std::string missing; ///< "neither the engine's mass nor its displacement is entered"
};
BlockOf engineBlockOf(const Sketch& sketch, const Assumptions& assumed);

/// Coolant in a heater's chamber: as entered, else its cylinder.
double chamberLitres(const Heater& heater);

/// Everything but the run itself.
EngineWarmUp prepareWarmUp(const Sketch& sketch, const Layout& layout, const Running& running,
                           const Assumptions& assumed);
/// Some milliseconds for a day.
EngineWarmUp runWarmUp(const Sketch& sketch, const Layout& layout, const Running& running,
                       const Assumptions& assumed, const WarmUpOptions& options = {});

/// Power of a heater at its actual voltage, W; nothing where its power is not entered.
std::optional<double> actualPower_W(const Heater& heater);

} // namespace siphonwright
