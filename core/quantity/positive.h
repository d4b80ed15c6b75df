#pragma once

#include <cmath>

namespace siphonwright {

/// False for what is no number, too.
inline bool isPositive(double value)
{
    return std::isfinite(value) && value > 0;
}

} // namespace siphonwright
