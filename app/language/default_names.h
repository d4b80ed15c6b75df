#pragma once

#include "core/sketch/sketch.h"

namespace siphonwright::language {

/// Names that core gave to parts which `before` had not, "Return hose 2", in the program's language: from
/// there on they are the user's. No two parts of a kind get the same.
void nameNewParts(Sketch& sketch, const Sketch& before);

} // namespace siphonwright::language
