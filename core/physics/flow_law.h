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
/// density. L is tabulated from LoopResistance::slopeOf() as cubics by value and slope in steps of 0.05;
/// beyond the table by a power law. Newton's method in ln m, begun at the flow found last, with a bracket as
/// its safeguard.
///
/// Error: under 5e-5 of the flow against flowFor(), where a loss has a kink; elsewhere under 1e-6.
class FlowLaw {
public:
    /// \param resistance of the cells, whose pockets and shut valves stay its own affair
    explicit FlowLaw(const LoopResistance& resistance);

    /// The flow that loses a pressure, both over 0. \param states one per cell
    double flowLosing(double loss_Pa, bool forward, const std::vector<HeatState>& states);

private:
    struct Node {
        double loss = 0;
        double slope = 0; ///< by node
    };
    struct Slope {
        double loss_Pa = 0;
        double per_ln_flow_Pa = 0;
    };
    std::vector<Node> nodes;            ///< by direction, cell and place
    std::vector<std::size_t> with_loss; ///< cells that have any
    double last_ln_flow = -4;

    void addTable(const LoopResistance& resistance, std::size_t cell, bool forward);
    static Slope slopeAt(const Node* table, double ln_flow_per_viscosity);
    Slope slopeOfAll(bool forward, double ln_flow, const std::vector<HeatState>& states) const;
};

} // namespace siphonwright
