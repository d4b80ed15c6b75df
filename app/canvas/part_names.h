#pragma once

#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <QString>

namespace siphonwright {

/// What people call a part: "heater Heater 1", "bend 2 of Supply hose".
QString nameOfPart(const Sketch& sketch, const PartRef& part);
/// The same on its own, as a list or a screen reader has it: "Return hose, point 3".
QString spokenName(const Sketch& sketch, const PartRef& part);
QString nameOfInline(InlineKind kind);

} // namespace siphonwright
