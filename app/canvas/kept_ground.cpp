#include "app/canvas/kept_ground.h"

#include "app/canvas/rulers.h"

#include <QPaintDevice>
#include <QPainter>

#include <cmath>
#include <utility>

namespace siphonwright {

void paintGround(QPainter& painter, const Canvas& canvas, QSize size, bool with_grid)
{
    painter.save();
    painter.fillRect(QRect(QPoint(), size), canvas.palette.ground);
    painter.setClipRect(canvas.area);
    painter.setRenderHint(QPainter::Antialiasing, false);
    if (with_grid)
        paintGrid(painter, canvas);
    painter.restore();
}

void KeptGround::paint(QPainter& painter, const Canvas& canvas, QSize size, bool with_grid)
{
    Key now;
    now.size = size;
    now.pixel_ratio = painter.device()->devicePixelRatioF();
    now.with_grid = with_grid;
    now.paper = canvas.viewport.transform();
    now.area = canvas.area;
    now.units = canvas.units();
    now.text_scale = canvas.text_scale;
    now.colours = {canvas.palette.ground, canvas.palette.grid, canvas.palette.grid_strong};
    if (now.pixel_ratio != std::floor(now.pixel_ratio)) { // a picture would not lie pixel on pixel
        paintGround(painter, canvas, size, with_grid);
        return;
    }
    if (!(now == key_)) {
        if (image_.size() != size * now.pixel_ratio) // fresh memory takes longer than all that is painted
            image_ = QImage(size * now.pixel_ratio, QImage::Format_RGB32);
        image_.setDevicePixelRatio(now.pixel_ratio);
        QPainter onto(&image_);
        paintGround(onto, canvas, size, with_grid);
        key_ = std::move(now);
    }
    painter.drawImage(QPoint(), image_);
}

} // namespace siphonwright
