#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<DimensionEnd> T>
void describe(V& v, T& end)
{
    v.object("dimension_end", "What a dimension holds on to, or a place");
    v(Field{"part", "Kind of part"}, end.part);
    v(Field{"id", "Of the part, where there can be several"}.text(0, 100), end.id);
    v(Field{"index", "Corner, point, end (0 from, 1 to), clip or in-line part"}.within(0, 1e6), end.index);
    v(Field{"at", "Where it was last; kept when the part is gone"}, end.at);
}

template <class V, Is<Dimension> T>
void describe(V& v, T& dimension)
{
    v.object("dimension", "A dimension between two things");
    v(identity("id", "Unique in the sketch"), dimension.id);
    v(Field{"kind", "What it measures"}.needed(), dimension.kind);
    v(Field{"from", "Where it begins"}.needed(), dimension.from);
    v(Field{"to", "Where it ends"}.needed(), dimension.to);
    v(coordinate("aside_mm", "From the line between its ends to the dimension line"), dimension.aside_mm);
}

} // namespace siphonwright
