#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

/// Reading the number at the start of a typed text.
namespace siphonwright {

constexpr std::size_t longest_typed_bytes = 80; ///< of a quantity

/// Characters people type or paste that mean an ordinary one: minus sign, prime, degree sign, ready-made
/// fractions, no-break space; letters in lower case; blanks at both ends left out.
std::string plainText(std::string_view typed);

/// Take a number off the front of `text` ("19", "1.9", "1,9", "3/4", "1 1/8", "1-1/8"), no sign.
/// @return nothing, with `problem` telling why, where no number stands or it can be read in two ways.
std::optional<double> takeNumber(std::string_view& text, std::string& problem);

void skipBlanks(std::string_view& text);

} // namespace siphonwright
