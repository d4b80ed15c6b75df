#pragma once

namespace siphonwright::commissioning {

/// Nothing for a gloved finger is lower.
constexpr int least_target_px = 44;

} // namespace siphonwright::commissioning
