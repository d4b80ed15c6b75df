#pragma once

#include "app/canvas/elevation_view.h"
#include "app/window/actions.h"

class QMenu;

namespace siphonwright {

/// "Snap to": each kind on or off, and the slope of the constant rise; remembered from one run to the next.
void fillSnapMenu(QMenu& menu, const Actions& actions, ElevationView& view);

} // namespace siphonwright
