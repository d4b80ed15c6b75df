#pragma once

#include <QPolygonF>

namespace siphonwright::drawing {

/// A line with fewer points: none of those left out lies farther than `off` from it (up to twice that where
/// the line turns back on itself). Its ends stay. One pass.
QPolygonF thinned(const QPolygonF& line, double off);

} // namespace siphonwright::drawing
