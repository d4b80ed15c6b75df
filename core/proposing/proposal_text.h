#pragma once

#include "core/proposing/propose.h"

#include <vector>

/// Proposals in words.
namespace siphonwright {

/// What it is: "1080 mm of hose of 19.1 mm bore, 0.81 l/min."
Message textOf(const Proposal& proposal);
/// What is left: grades on which it is sound, and how far its hoses may sag.
Message marginsOf(const Proposal& proposal);
/// What it changes in the drawing besides the routes of its hoses, one sentence each.
std::vector<Message> changesFrom(const Sketch& drawn, const Proposal& proposal);

} // namespace siphonwright
