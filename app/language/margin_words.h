#pragma once

#include "core/checks/finding.h"
#include "core/quantity/quantity.h"

#include <QString>

namespace siphonwright {

/// What a rule that is kept leaves, to stand behind the rule's title and a colon: "sound, with 12 mm left:
/// measured 38 mm, limit 50 mm". A figure that says nothing (a limit of none, less than none measured) is
/// left out.
QString marginWords(const Margin& margin, UnitSystem units);

} // namespace siphonwright
