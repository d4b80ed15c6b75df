#include "app/drawing/line_field.h"

namespace siphonwright::drawing {

void LineField::add(const QRectF& area, bool broad)
{
    if (area.width() > cell_ || area.height() > cell_)
        large_.push_back(areas_.size());
    else
        cells_[key(cellOf(area.center().x(), cell_), cellOf(area.center().y(), cell_))].push_back(
            areas_.size());
    areas_.push_back({area, broad});
    broad_ += broad ? 1 : 0;
}

bool LineField::hits(const QRectF& area) const
{
    return near(area, [&](const Area& one) { return meet(one.area, area); });
}

double LineField::covered(const QRectF& area) const
{
    double sum = 0;
    near(area, [&](const Area& one) {
        const QRectF both = one.area.intersected(area);
        sum += both.width() * both.height();
        return false;
    });
    return sum;
}

} // namespace siphonwright::drawing
