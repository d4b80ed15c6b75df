#pragma once

#include "core/geometry/droop.h"
#include "core/layout/layout.h"

#include <memory>
#include <optional>

namespace siphonwright {

/// A hose's geometry: stubs and route joined to one centreline, bores, lengths.
std::shared_ptr<const Route> routeOf(const Sketch& sketch, const Shared<Hose>& hose);

/// Does a route, computed earlier, still hold for this hose in this sketch?
bool stillHolds(const Route& route, const Sketch& sketch, const Shared<Hose>& hose);

/// The least sag of one inner point of a hose that makes a trap; nothing for a hose without inner points.
std::optional<Droop> sagMargin(const Route& route, const Plumb& plumb);

/// A length to cut, rounded up to what a tape shows: 5 mm, or 1/4 in.
double cutLength(double length_mm, UnitChoice units);

/// Bore taken for a hose whose bore is not entered, mm: 3/4 in, the usual size.
constexpr double usual_bore_mm = 19.05;

} // namespace siphonwright
