#pragma once

#include "core/checks/finding.h"

#include <vector>

/// From findings to faults: what one hump does to a hose is one balloon.
namespace siphonwright {

/// Do two findings speak of the same thing: same rule, same part, same hose, and places that overlap?
bool sameThing(const Finding& a, const Finding& b);

/// Put the findings of one fault under one heading and sort the faults, stops first, then along the rule
/// book.
///
/// A dip goes with the hump of its hose that it shares most of its length with, a flat stretch with a hump or
/// dip; humps stay apart. What is found on a grade goes with the same thing found on the level. The worst
/// heads the fault; among equals the hump, then the dip.
std::vector<Finding> faultsOf(std::vector<Finding> found);

} // namespace siphonwright
