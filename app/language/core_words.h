#pragma once

#include <span>

namespace siphonwright::language {

/// Every text of core that people read, in English: sentences with their placeholders, titles, names. What
/// core joins has a place for each other part, "the bore of %1 is not entered".
std::span<const char* const> coreWords();

} // namespace siphonwright::language
