#pragma once

#include "app/drawing/elevation.h"

#include <QImage>
#include <QPainter>
#include <QPoint>
#include <QPointF>
#include <QTransform>

#include <cstddef>
#include <vector>

namespace siphonwright::drawing {

/// The balloons of a large drawing as small pictures, kept from one frame to the next: most stand still
/// while a part is dragged, and their edges take longer than all else. Each is what painting it there gives,
/// but that its rim is rounded once more. Owned by a view.
class BalloonPictures {
public:
    /// A balloon of this frame; those that it does not have are forgotten by the next one.
    void begin(const QPainter& painter, const Palette& palette);
    void paint(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
               int number, double line_width);

private:
    struct Kept {
        QPointF centre;
        double radius = 0;
        Severity severity = Severity::advice;
        double line_width = 0;
        QPoint at; ///< of the picture's corner, on the device
        QImage image;

        bool shows(const Kept& other) const;
    };
    void draw(Kept& balloon, const QPainter& painter, const Palette& palette) const;

    bool usable_ = false; ///< pictures can be laid down pixel on pixel
    double pixel_ratio_ = 0;
    QTransform transform_;
    QPainter::RenderHints hints_;
    std::vector<QColor> colours_;
    std::vector<Kept> before_;
    std::vector<Kept> now_;
    std::size_t next_ = 0; ///< of those before: they come in the same order, most likely
};

} // namespace siphonwright::drawing
