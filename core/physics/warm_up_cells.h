#pragma once

#include "core/physics/loop_resistance.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// A run of elements as a given number of cells of equal volume (equal length, or equal count, where they
/// have none): one element each, with the sum of what lies in it. Wall friction, rise and exchange of an
/// element that lies across a border are divided in proportion; its other losses and pockets go to the cell
/// that its middle is in. Losses keep their own bores, so that the cell's one Reynolds number serves them
/// all.
///
/// \param run not empty, every bore over 0
std::vector<LoopElement> cellsOf(const std::vector<LoopElement>& run, std::size_t count);

/// Coolant in a run's bores, m3.
double volume_m3(const std::vector<LoopElement>& run);

} // namespace siphonwright
