#pragma once

#include "core/physics/losses.h"

#include <array>
#include <memory>
#include <vector>

/// The places over the Reynolds number at which a loop's losses are tabulated, and the coefficients there.
namespace siphonwright {

/// Nodes over ln Re, from Re 0.1 to 1e6: close together where the laws of walls, bends and hose ends change,
/// each at its own Reynolds number between 1,000 and 25,000 in the element's bore; far apart elsewhere.
namespace reynolds_nodes {

constexpr double wide_step = 0.2, close_step = 0.025;
constexpr int close_from = 46, close_to = 175, count = 195;
constexpr double first_ln = -2.3025850929940457; ///< ln 0.1
constexpr double close_ln = first_ln + close_from * wide_step;
constexpr double last_ln = close_ln + (close_to - close_from) * close_step;

constexpr double lnAt(int node)
{
    if (node < close_from)
        return first_ln + node * wide_step;
    if (node < close_to)
        return close_ln + (node - close_from) * close_step;
    return last_ln + (node - close_to) * wide_step;
}

using Values = std::array<double, count>; ///< at every node

} // namespace reynolds_nodes

/// Coefficients of losses at the nodes, each different loss evaluated once: hoses have the same wall and the
/// same ends throughout, and most of a loop's losses stay when one thing in it changes. That evaluation is
/// most of the work of making a LoopResistance.
///
/// Kept tables only save time: what they hold is what would be computed. Copies share it, and may be used in
/// different threads.
class LossTables {
public:
    /// lossCoefficient() at every node, without the loss's factor.
    /// \param reynolds_ratio Reynolds number in the loss's own bore per that of the node
    const reynolds_nodes::Values& of(const Loss& loss, double reynolds_ratio);

    /// From here on what is not asked for again is old.
    void age();
    /// Let go of what has been old since age().
    void dropOld();

    std::size_t evaluated() const { return evaluated_; } ///< by this object, not taken from what it held

private:
    /// Bore, kind, the form's numbers, ratio: what a coefficient hangs on.
    using Key = std::array<double, 6>;
    struct Known {
        Key key{};
        reynolds_nodes::Values K{};
    };
    static Key keyOf(const Loss& loss, double reynolds_ratio);

    std::vector<std::shared_ptr<const Known>> known_;
    std::vector<std::shared_ptr<const Known>> old_;
    std::size_t evaluated_ = 0;
};

} // namespace siphonwright
