#pragma once

#include "core/layout/heater_loop.h"
#include "core/physics/circulation.h"
#include "core/running/assumptions.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

/// A drawn loop as the list of elements that circulation and warm-up are computed on.
namespace siphonwright {

/// What a Loss::part of a circuit stands for.
struct CircuitPart {
    PartRef part;
    std::string name; ///< "the isolation valve in Supply hose"
};

/// One heater's loop in the direction of forward flow, in four stretches that follow each other.
///
/// Every straight and every arc of a path is an element with its own rise, so that a run's shape counts.
/// Losses: the wall's friction; what bends lose beyond it; ports as entrance and exit (a lower-hose tee as a
/// tee's branch); nozzles as exit into and entrance from the chamber; hose ends; in-line parts. The jacket
/// and chamber themselves are wide and lose nothing.
struct Circuit {
    Id heater;
    std::vector<LoopElement> chamber;
    std::vector<LoopElement> return_hose;
    std::vector<LoopElement> jacket;
    std::vector<LoopElement> supply_hose;
    std::vector<CircuitPart> parts; ///< by Loss::part

    double return_wall_J_per_K = 0; ///< held by the hoses themselves
    double supply_wall_J_per_K = 0;
    double return_surface_share = 0; ///< HoseLoss::surface_share
    double swept_share = 0;          ///< of the engine that the loop reaches

    /// All four, as steadyCirculation() takes them.
    Loop loop(double power_W, double block_degC) const;
};

/// Coolant in the engine alone: as entered, else by its displacement; nothing where neither is.
std::optional<double> litresInEngine(const Sketch& sketch, const Assumptions& assumed);

/// A circuit, or the fact that is missing for it.
struct CircuitOf {
    std::optional<Circuit> circuit;
    PartRef missing_of;
    std::string missing; ///< "the bore of Supply hose is not entered"
};
CircuitOf circuitOf(const Sketch& sketch, const Layout& layout, const HeaterLoop& loop,
                    const Assumptions& assumed);

} // namespace siphonwright
