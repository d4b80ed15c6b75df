#pragma once

#include "core/layout/layout.h"

/// After any edit: dimensions go on holding what they held.
namespace siphonwright {

/// An end on a route point, corner, clip or in-line part keeps to that one when others were put in or taken
/// out before it. An end whose part is gone lets go of it and stays where it was.
///
/// Looks only at what the edit did, not at how, so it holds for every edit: call it once, with the sketch
/// from before and its layout. Dimensions that are new or were given other ends by the edit are left as they
/// are.
void followDimensions(Sketch& after, const Sketch& before, const Layout& layout_before);

} // namespace siphonwright
