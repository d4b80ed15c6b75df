#pragma once

#include "app/document/document.h"

#include <QStringList>

namespace siphonwright::panels {

/// How a heater's loop runs, sentence by sentence: state, flow and temperatures, heads, what takes most of
/// them, and from the warm-up the hottest outlet with its margin to boiling and the element's surface. Where
/// it could not be computed, what is missing.
QStringList runningText(const Sketch& sketch, const Analysis& analysis, const Id& heater);

} // namespace siphonwright::panels
