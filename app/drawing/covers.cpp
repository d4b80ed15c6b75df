#include "app/drawing/ink.h"

#include <algorithm>

/// What lies over what on a page: a leader line that ends on a thing hidden there names what hides it.
namespace siphonwright::drawing {

namespace {

/// Kept round the end of a leader line, mm of the device.
constexpr double room_mm = 0.9;
/// Places looked at each way.
constexpr int places_each_way = 9;

} // namespace

void Ink::cover(const QPolygonF& outline)
{
    if (style.page && !outline.isEmpty())
        covers_.push_back(outline);
}

bool Ink::seenAt(const QPolygonF& area, QPointF at) const
{
    const double r = paper(room_mm);
    const QPointF round[] = {at, at + QPointF(-r, -r), at + QPointF(r, -r), at + QPointF(-r, r),
                             at + QPointF(r, r)};
    const auto holds_any = [&](const QPolygonF& outline) {
        return std::any_of(std::begin(round), std::end(round),
                           [&](QPointF place) { return outline.containsPoint(place, Qt::OddEvenFill); });
    };
    const auto itself = std::find(covers_.begin(), covers_.end(), area);
    const auto over = itself == covers_.end() ? covers_.begin() : itself + 1;
    const QRectF box(round[1], round[4]);
    return std::all_of(std::begin(round), std::end(round),
                       [&](QPointF place) { return area.containsPoint(place, Qt::OddEvenFill); }) &&
           std::none_of(over, covers_.end(), [&](const QPolygonF& cover) {
               return cover.boundingRect().intersects(box) && holds_any(cover);
           });
}

void Ink::findSeen()
{
    for (Waiting& one : waiting_) {
        if (!one.led || one.led->area.isEmpty())
            continue;
        Led& led = *one.led;
        const QRectF box = led.area.boundingRect();
        for (int row = 0; row < places_each_way; ++row)
            for (int column = 0; column < places_each_way; ++column) {
                const QPointF at(box.left() + box.width() * (column + 0.5) / places_each_way,
                                 box.top() + box.height() * (row + 0.5) / places_each_way);
                if (seenAt(led.area, at))
                    led.seen.push_back(at);
            }
    }
    // The elevation has named it, or says that it cannot be seen.
    if (style.view.isEnd())
        std::erase_if(waiting_, [](const Waiting& one) {
            return one.led && !one.led->area.isEmpty() && one.led->seen.empty();
        });
}

} // namespace siphonwright::drawing
