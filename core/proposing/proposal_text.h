#pragma once

#include "core/proposing/propose.h"

#include <optional>
#include <string_view>
#include <vector>

/// Proposals in words.
namespace siphonwright {

/// What it is: "1080 mm of hose of 19.1 mm bore, 0.81 l/min."
Message textOf(const Proposal& proposal);
/// What is left: grades on which it is sound, and how far its hoses may sag.
Message marginsOf(const Proposal& proposal);
/// Is a rule about how a layout lies, so that its margin is a proposal's?
bool isOnLaying(std::string_view rule);
/// "Ground: 45 mm more than the least." \param margin of such a rule
Message textOf(const Margin& margin);
/// "4 mm left: ground": the least, of rules on how it lies and of the sag of its hoses; nothing where nothing
/// was measured in lengths.
std::optional<Message> leastOf(const Proposal& proposal);
/// All that is left, one sentence each: grades, sag of each hose, and every rule on how it lies; then what of
/// these could not be judged.
std::vector<Message> marginList(const Proposal& proposal);
/// What it changes in the drawing besides the routes of its hoses, one sentence each.
std::vector<Message> changesFrom(const Sketch& drawn, const Proposal& proposal);

} // namespace siphonwright
