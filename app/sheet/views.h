#pragma once

#include "app/sheet/plan.h"

/// The elevation, and the end view beside it, on the page.
namespace siphonwright::sheet {

/// Where names stand in both, found once for a plan.
struct ViewNames {
    drawing::PlacedNames elevation;
    drawing::PlacedNames end;
};
ViewNames placeNames(const Sketch& sketch, const Analysis& analysis, const Options& options,
                     const Plan& plan);

void paintViews(const Page& page, const Plan& plan, const ViewNames& names);

} // namespace siphonwright::sheet
