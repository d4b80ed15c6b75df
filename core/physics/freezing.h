#pragma once

#include <optional>

namespace siphonwright {

enum class Antifreeze { ethylene_glycol, propylene_glycol };

/// Freezing point of inhibited glycol and water, degC; `share` is the glycol's volume over the sum of both
/// volumes at 20 degC, 0 to 0.60. Outside that: nothing.
///
/// ln(T/K) = sum of c_j (share - 0.35)^j, j = 0..5: a fit to the tables of the ASHRAE Handbook Fundamentals
/// (2001), chapter on secondary coolants, published with open-source property libraries. Within 1.2 K of the
/// handbook's freezing points of pure glycols by volume.
std::optional<double> freezingPoint(Antifreeze kind, double share);

} // namespace siphonwright
