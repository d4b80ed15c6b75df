#pragma once

#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace siphonwright::fuzz {

/// Ends the program, which libFuzzer takes for a find and keeps the input of, where something does not hold.
/// \param of what it does not hold for, as it is printed
inline void require(bool holds, const char* what, std::string_view of = {})
{
    if (holds)
        return;
    std::fprintf(stderr, "does not hold: %s: %.*s\n", what, static_cast<int>(of.size()), of.data());
    std::abort();
}

} // namespace siphonwright::fuzz
