#pragma once

#include "core/physics/enthalpy_table.h"
#include "core/physics/loop_resistance.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// The flow through a loop whose cells' states are known, for the right-hand side of warm-up: what
/// LoopResistance::flowFor() answers, at least five times faster, since it takes no logarithm or exponential
/// at all.
///
/// Method: a cell's loss is L(m/viscosity) viscosity^2 / density, L its loss at unit viscosity and density.
/// L is tabulated from LoopResistance::slopeOf() as cubics by value and slope, 32 to each doubling of
/// m/viscosity, so that the number's own bits say which; each when it is first needed: a day comes by a tenth
/// of them. Beyond the table L is a power law.
/// Chebyshev's method (Newton's with the curvature's correction) in m, begun at the flow found last, moved on
/// by what the pressure has changed since, with a bracket as its safeguard.
///
/// Error against flowFor(): up to 5e-4 of the flow beside a Reynolds number where a loss's law changes, where
/// that itself is not surer; in the mean under 1e-5.
class FlowLaw {
public:
    /// \param resistance of the cells, whose pockets and shut valves stay its own affair
    explicit FlowLaw(LoopResistance resistance);

    /// The flow that loses a pressure, both over 0. \param states one per cell
    double flowLosing(double loss_Pa, bool forward, const std::vector<HeatState>& states);

    /// A loss and its derivatives: by m/viscosity for a cell's own L, by the flow for that of a loop.
    struct Slope {
        double loss = 0;
        double slope = 0;
        double curvature = 0; ///< second derivative
    };
    /// L of every cell in a flow over 0. \param slopes one per cell
    void findSlopes(bool forward, double flow_kg_per_s, const std::vector<HeatState>& states,
                    std::vector<Slope>& slopes);

private:
    /// L over one interval: by powers of what m/viscosity is past its start.
    struct Cubic {
        double loss = 0;
        double slope = 0;
        double square = 0;
        double cube = 0;
    };
    /// A cell's losses in one direction.
    struct Table {
        std::size_t cell = 0;
        std::vector<Cubic> cubics; ///< not numbers until first asked for
    };
    LoopResistance resistance_;
    std::vector<Table> forward_, backward_; ///< cells that have any loss
    double last_flow_kg_per_s_ = 0.02;      ///< where a search begins
    double last_loss_Pa_ = 0;               ///< there
    double last_slope_ = 0;                 ///< there, Pa s/kg; 0: not known

    Cubic between(const Table& table, bool forward, std::size_t place) const;
    const Cubic& cubicAt(Table& table, bool forward, std::size_t place) const;
    Slope slopeAt(Table& table, bool forward, double flow_per_viscosity) const;
    Slope slopeBeyond(Table& table, bool forward, double flow_per_viscosity) const;
    Slope slopeOfAll(bool forward, double flow_kg_per_s, const std::vector<HeatState>& states);
};

} // namespace siphonwright
