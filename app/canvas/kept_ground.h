#pragma once

#include "app/canvas/canvas.h"

#include <QColor>
#include <QImage>
#include <QSize>
#include <QTransform>

#include <vector>

class QPainter;

namespace siphonwright {

/// Paper and grid under the drawing; painted, or as a picture that is kept while they are the same.
void paintGround(QPainter& painter, const Canvas& canvas, QSize size, bool with_grid);

class KeptGround {
public:
    /// What paintGround() gives.
    void paint(QPainter& painter, const Canvas& canvas, QSize size, bool with_grid);

private:
    struct Key {
        QSize size;
        double pixel_ratio = 0;
        bool with_grid = false;
        QTransform paper;
        QRectF area;
        UnitSystem units = UnitSystem::metric;
        double text_scale = 0;
        std::vector<QColor> colours;
        bool operator==(const Key& other) const = default;
    };
    Key key_;
    QImage image_;
};

} // namespace siphonwright
