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
        ink.reserveText(shape.text_box.boundingRect());
        ink.reserveLine(shape.line);
        for (const QLineF& extension : shape.extensions)
            ink.reserveLine(QPolygonF({extension.p1(), extension.p2()}));
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
