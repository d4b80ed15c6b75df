#include "app/drawing/dimension_shape.h"
#include "app/drawing/ink.h"

/// The dimensions that were drawn.
namespace siphonwright::drawing {

void reserveDimensions(Ink& ink)
{
    if (ink.style.view.isEnd())
        return;
    for (const Dimension& dimension : ink.sketch.dimensions) {
        const DimensionShape shape = shapeOf(measure(dimension, ink.sketch, ink.analysis.layout), ink.style);
        ink.reserve(shape.text_box.boundingRect());
        ink.avoid(shape.line, ink.paper(0.2));
    }
}

void paintDimensions(Ink& ink)
{
    if (ink.style.view.isEnd()) // they belong to the side elevation
        return;
    for (const Dimension& dimension : ink.sketch.dimensions)
        paintDimension(ink.painter, shapeOf(measure(dimension, ink.sketch, ink.analysis.layout), ink.style),
                       ink.style, ink.palette.ink);
}

} // namespace siphonwright::drawing
