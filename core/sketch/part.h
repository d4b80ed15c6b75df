#pragma once

#include "core/sketch/sketch.h"

#include <cstddef>

namespace siphonwright {

enum class PartKind {
    nothing,
    engine,
    engine_corner,
    jacket,
    jacket_corner,
    thermostat,
    tank,
    port,
    heater,
    hose,
    hose_point,
    hose_end,
    inline_part,
    clip,
    area,
    area_corner,
    ground,
    photo
};

/// Names a thing on the drawing by id and index, never by pointer. `index` means: corner of an outline, route
/// point, in-line part or clip; for hose_end 0 is from, 1 is to.
struct PartRef {
    PartKind kind = PartKind::nothing;
    Id id;
    std::size_t index = 0;
    friend auto operator<=>(const PartRef&, const PartRef&) = default;
};

} // namespace siphonwright
