#pragma once

#include <algorithm>
#include <compare>
#include <cstddef>
#include <string>
#include <vector>

namespace siphonwright {

using Id = std::string; ///< unique within a sketch, never empty: "port-1", "heater-1", "hose-2"

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
    photo,
    dimension
};

/// Names a thing on the drawing by id and index, never by pointer. `index` means: corner of an outline, route
/// point, in-line part or clip; for hose_end 0 is from, 1 is to.
struct PartRef {
    PartKind kind = PartKind::nothing;
    Id id;
    std::size_t index = 0;
    friend auto operator<=>(const PartRef&, const PartRef&) = default; // NOLINT(modernize-use-nullptr)
};

/// Is it held by the hose it lies on, at a distance along it?
inline bool liesAlongHose(const PartRef& part)
{
    return part.kind == PartKind::inline_part || part.kind == PartKind::clip;
}

inline bool contains(const std::vector<PartRef>& parts, const PartRef& part)
{
    return std::find(parts.begin(), parts.end(), part) != parts.end();
}

} // namespace siphonwright
