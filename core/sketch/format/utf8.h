#pragma once

#include <cstddef>
#include <string_view>

namespace siphonwright {

/// Where the first byte stands that begins no well-formed UTF-8 character; the size of the text if none does.
std::size_t firstNotUtf8(std::string_view text);

/// Characters (code points) of a well-formed text.
std::size_t characterCount(std::string_view text);

} // namespace siphonwright
