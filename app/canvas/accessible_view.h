#pragma once

#include "app/canvas/elevation_view.h"

/// The elevation for screen readers: every part a child of the view, with its name, place and state, that can
/// be selected and have its menu opened.
namespace siphonwright {

/// From now on views can be asked for their parts by QAccessible.
void makeElevationAccessible();

/// Say that another part is selected, and when parts have come or gone.
void announceSelection(ElevationView& view);
void announceParts(ElevationView& view);

} // namespace siphonwright
