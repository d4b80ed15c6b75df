#pragma once

#include "core/physics/enthalpy_table.h"
#include "core/physics/loop_resistance.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// The flow through a loop whose cells' states are known, for the right-hand side of warm-up: what
/// LoopResistance::flowFor() answers, some five times faster, since it takes no logarithm or exponential of
/// a cell.
///
/// Method: a cell's loss is L(ln(m/viscosity)) viscosity^2 / density, L its loss at unit viscosity and
/// density. L is tabulated from LoopResistance::slopeOf() as cubics by value and slope in steps of 0.025,
/// each node when it is first needed: a day comes by a tenth of them. Beyond the table L is a power law.
/// Chebyshev's method (Newton's with the curvature's correction) in ln m, begun at the flow found last, moved
/// on by what the pressure has changed since, with a bracket as its safeguard.
///
/// Error against flowFor(): up to 5e-4 of the flow beside a Reynolds number where a loss's law changes, where
/// that itself is not surer; in the mean under 1e-5.
class FlowLaw {
public:
    /// \param resistance of the cells, whose pockets and shut valves stay its own affair
    explicit FlowLaw(LoopResistance resistance);

    /// The flow that loses a pressure, both over 0. \param states one per cell
    double flowLosing(double loss_Pa, bool forward, const std::vector<HeatState>& states);

    /// A cell's loss at unit viscosity squared per density, and its derivatives by ln(flow).
    struct Slope {
        double loss_Pa = 0;
        double per_ln_flow_Pa = 0;
        double curvature_Pa = 0; ///< second derivative
    };
    /// Those of every cell in a flow over 0. \param slopes one per cell
    void findSlopes(bool forward, double flow_kg_per_s, const std::vector<HeatState>& states,
                    std::vector<Slope>& slopes);

private:
    struct Node {
        double loss = 0;
        double slope = 0; ///< by node
    };
    /// A cell's losses in one direction.
    struct Table {
        std::size_t cell = 0;
        std::vector<Node> nodes; ///< by place; not a number until first asked for
    };
    LoopResistance resistance_;
    std::vector<Table> forward_, backward_; ///< cells that have any loss
    double last_ln_flow_ = -4;
    double last_loss_Pa_ = 0; ///< there
    double last_power_ = 1;   ///< of the flow that the loss goes with, there

    const Node& nodeAt(Table& table, bool forward, std::size_t place) const;
    Slope slopeAt(Table& table, bool forward, double ln_flow_per_viscosity) const;
    Slope slopeOfAll(bool forward, double ln_flow, const std::vector<HeatState>& states);
};

} // namespace siphonwright
