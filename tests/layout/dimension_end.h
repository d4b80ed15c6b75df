#pragma once

#include "core/sketch/dimension.h"

#include <cstdint>

namespace siphonwright::test {

/// An end of a dimension on a part.
inline DimensionEnd on(PartKind part, const Id& id, std::int64_t index = 0)
{
    DimensionEnd end;
    end.part = part;
    end.id = id;
    end.index = index;
    return end;
}

} // namespace siphonwright::test
