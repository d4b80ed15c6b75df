#pragma once

#include <QRectF>
#include <QString>

#include <functional>

class QPainter;

namespace siphonwright::sheet {

/// Something set into the room that the views leave: lines to sign on, a hose laid flat, a table. A list of
/// them is in order of need.
struct Inset {
    QString heading; ///< over it; empty: none
    double least_width_mm = 60;
    /// The same where it depends on the lettering; null: it does not.
    std::function<double(double lettering_mm)> least_width_at = {};
    int group = 0;       ///< those of one group come together; neighbours in the list
    bool needed = false; ///< comes before notes
    /// What it takes at a width and lettering, without its heading.
    std::function<double(double width_mm, double lettering_mm)> height_mm;
    /// Into a box at least so high.
    std::function<void(QPainter& painter, const QRectF& box, double lettering_mm)> paint;
};

} // namespace siphonwright::sheet
