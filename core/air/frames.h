#pragma once

#include "core/air/fill.h"
#include "core/air/run.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// The states of a run as they are drawn: its start, one each time that the `count`th part of all has been
/// poured, and its end. Where nothing is poured (a valve opens, air gets in) one each time that so much has
/// left or entered the jacket, beside the first and the last. None is a step of its own: the run is not taken
/// again.
std::vector<FillFrame> framesAlong(const FillNetwork& network, const std::vector<FillRun::Step>& steps,
                                   const FillState& end, std::size_t count);

} // namespace siphonwright
