#pragma once

#include "core/geometry/vec.h"

#include <cstddef>
#include <optional>
#include <vector>

/// Labels placed so that none lies on another, each as near to what it wants as that allows. Plane geometry
/// in any one unit; no randomness, so the same drawing is always lettered alike.
///
/// A greedy choice, the label with least to choose from first, and then exchanges: a label moves to a better
/// place if those in its way have places that together cost less (elementary local search; not the least
/// possible, but never an overlap). From several first choices, if time allows, the best is taken.
namespace siphonwright {

/// A text's box, perhaps turned.
struct LabelBox {
    Vec2 centre;
    double half_along = 0; ///< along the text
    double half_across = 0;
    double angle_rad = 0; ///< of the text's direction, from +x towards +z
};

bool overlap(const LabelBox& a, const LabelBox& b);

/// From a label to what it is of.
struct LabelLeader {
    Vec2 from;
    Vec2 to;
};

bool crosses(const LabelLeader& line, const LabelBox& box);
bool crosses(const LabelLeader& a, const LabelLeader& b);

struct LabelPlace {
    LabelBox box;
    std::optional<LabelLeader> leader;
    double cost = 0; ///< what is hidden, how far away: the less the better; finite
};

struct LabelWish {
    std::vector<LabelPlace> places;
    /// Of not being written at all: more than all that the others may cost.
    double left_out = 1e6;
};

/// For each wish the index of its place; nothing where all are taken.
/// \param starts first choices tried, 1 or more: time grows with them, and the cost never does
std::vector<std::optional<std::size_t>> placeLabels(const std::vector<LabelWish>& wishes,
                                                    std::size_t starts = 1);

} // namespace siphonwright
