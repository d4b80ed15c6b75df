#pragma once

#include "core/geometry/vec.h"
#include "core/sketch/part.h"

#include <cstdint>

/// A dimension that somebody drew: it follows the two things it measures between.
namespace siphonwright {

enum class DimensionKind {
    horizontal, ///< how far apart in x
    vertical,   ///< how far apart in z
    along,      ///< the true length of the straight line between
    slope       ///< rise over run of the straight line between
};

/// One end. It holds on to a part; the part gone, or none named, it stays at the place `at`.
struct DimensionEnd {
    PartKind part = PartKind::nothing;
    Id id;                  ///< of that part, where there can be several
    std::int64_t index = 0; ///< as in PartRef
    Vec3 at;
    friend bool operator==(const DimensionEnd&, const DimensionEnd&) = default;
};

struct Dimension {
    Id id;
    DimensionKind kind = DimensionKind::along;
    DimensionEnd from;
    DimensionEnd to;
    double aside_mm = 60; ///< from the line between the ends to the dimension line
    friend bool operator==(const Dimension&, const Dimension&) = default;
};

} // namespace siphonwright
