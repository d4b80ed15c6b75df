#pragma once

#include "core/sketch/sketch.h"

namespace siphonwright::test {

/// A sketch with every member of the document set to something else than its default, and every list filled.
Sketch fullSketch();

} // namespace siphonwright::test
