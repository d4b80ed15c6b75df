#include "app/drawing/ink.h"
#include "app/rules/pencil.h"

#include <QPainterPath>

#include <cmath>

/// What a case is about: levels, pockets, dimensions, surroundings.
namespace siphonwright::rules {

using namespace drawing;

void Pencil::level(double z, const char* caption)
{
    painter_.setPen(pen(palette_.level, medium_mm));
    painter_.drawLine(page({2, z}), page({drawing_width_mm - 2, z}));
    // The sign of a liquid's level: a triangle standing on the line.
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolygon(QPolygonF({page({80, z}), page({78.6, z + 2.2}), page({81.4, z + 2.2})}));
    text({77, z + 1}, caption, Anchor::right);
}

void Pencil::plainLevel(double z, double from_x, double to_x)
{
    painter_.setPen(pen(palette_.faint, thin_mm, Qt::DashLine));
    painter_.drawLine(page({from_x, z}), page({to_x, z}));
}

void Pencil::air(At centre, double width, double height, double caption_above)
{
    painter_.setPen(pen(palette_.stop, medium_mm));
    painter_.setBrush(palette_.air);
    painter_.drawEllipse(page(centre), width / 2, height / 2);
    text({centre.x, centre.z + height / 2 + caption_above}, QT_TRANSLATE_NOOP("siphonwright::rules", "air"),
         Anchor::centre);
}

void Pencil::lying(At centre, double width, double height)
{
    painter_.setPen(pen(palette_.held, medium_mm));
    painter_.setBrush(palette_.held);
    painter_.drawEllipse(page(centre), width / 2, height / 2);
}

void Pencil::ice(At centre)
{
    painter_.setPen(pen(palette_.stop, edge_mm));
    for (int i = 0; i < 3; ++i) {
        const double a = i * 3.14159265358979323846 / 3;
        const QPointF reach(3 * std::cos(a), 3 * std::sin(a));
        painter_.drawLine(page(centre) - reach, page(centre) + reach);
        for (const double side : {-1.0, 1.0}) {
            const QPointF barb = page(centre) + reach * side * 0.6;
            painter_.drawLine(barb, barb + (reach + turned(reach)) * 0.28 * side);
            painter_.drawLine(barb, barb + (reach - turned(reach)) * 0.28 * side);
        }
    }
}

void Pencil::drops(At at)
{
    painter_.setPen(pen(palette_.supply, thin_mm));
    painter_.setBrush(palette_.supply);
    for (const At& off : {At{0, 0}, At{0.8, -3.4}, At{-0.6, -6.6}})
        painter_.drawEllipse(page({at.x + off.x, at.z + off.z}), 0.6, 0.9);
}

void Pencil::heat(At at)
{
    painter_.setPen(pen(palette_.return_, medium_mm));
    painter_.setBrush(Qt::NoBrush);
    for (const double dx : {-2.5, 0.0, 2.5}) {
        QPainterPath wave(page({at.x + dx, at.z}));
        wave.cubicTo(page({at.x + dx + 1.6, at.z + 1.6}), page({at.x + dx - 1.6, at.z + 3.2}),
                     page({at.x + dx, at.z + 4.8}));
        painter_.drawPath(wave);
    }
}

void Pencil::shake(At at)
{
    painter_.setPen(pen(palette_.stop, medium_mm));
    painter_.setBrush(Qt::NoBrush);
    for (const double r : {1.6, 3.0}) {
        const QRectF round(page(at) - QPointF(r, r), QSizeF(2 * r, 2 * r));
        painter_.drawArc(round, -50 * 16, 100 * 16);
    }
}

void Pencil::arrow(At from, At to)
{
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.drawLine(page(from), page(to));
    head(page(to), page(to) - page(from), palette_.ink);
}

void Pencil::bar(At from, At to)
{
    painter_.setPen(pen(palette_.ink, 1.1));
    painter_.drawLine(page(from), page(to));
}

void Pencil::ground(double z)
{
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.drawLine(page({2, z}), page({drawing_width_mm - 2, z}));
    painter_.setPen(pen(palette_.ink, hairline_mm));
    for (double x = 4; x < drawing_width_mm - 2; x += 2.5)
        painter_.drawLine(page({x, z}), page({x - 2, z - 2}));
}

void Pencil::hot(At low, At high, const char* caption)
{
    const QRectF area = box(low, high);
    painter_.setPen(pen(palette_.keep_clear, medium_mm));
    painter_.setBrush(QBrush(palette_.keep_clear, Qt::NoBrush));
    painter_.drawRect(area);
    painter_.setPen(pen(palette_.keep_clear, hairline_mm));
    const double run = area.height();
    for (double x = area.left() - run + 2; x < area.right(); x += 2) {
        const double from = std::max(area.left(), x);
        const double to = std::min(area.right(), x + run);
        painter_.drawLine(QPointF(from, area.bottom() - (from - x)), QPointF(to, area.bottom() - (to - x)));
    }
    text({(low.x + high.x) / 2, low.z - 3.4}, caption, Anchor::centre);
}

void Pencil::ring(At centre, double radius)
{
    painter_.setPen(pen(palette_.stop, edge_mm, Qt::DashLine));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawEllipse(page(centre), radius, radius);
}

void Pencil::dimension(At from, At to, const char* caption)
{
    painter_.setPen(pen(palette_.ink, thin_mm));
    const QPointF way = page(to) - page(from);
    painter_.drawLine(page(from), page(to));
    const bool upright = std::abs(way.y()) > std::abs(way.x());
    for (const At& end : {from, to}) {
        const QPointF across = upright ? QPointF(1.4, 0) : QPointF(0, 1.4);
        painter_.drawLine(page(end) - across, page(end) + across);
    }
    head(page(to), way, palette_.ink);
    head(page(from), -way, palette_.ink);
    if (upright)
        text({from.x + 1.6, (from.z + to.z) / 2 - 1}, caption);
    else
        text({(from.x + to.x) / 2, from.z + 1.3}, caption, Anchor::centre);
}

void Pencil::beaker(At low, double share, const char* caption)
{
    constexpr double width = 15;
    constexpr double height = 30;
    const double water = height * (1 - share);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(palette_.jacket_fill);
    painter_.drawRect(box(low, {low.x + width, low.z + water}));
    painter_.setBrush(palette_.held);
    painter_.drawRect(box({low.x, low.z + water}, {low.x + width, low.z + height}));
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.drawPolyline(
        QPolygonF({page({low.x, low.z + height + 3}), page(low), page({low.x + width, low.z}),
                   page({low.x + width, low.z + height + 3})}));
    if (share < 1)
        text({low.x + width + 2, low.z + water / 2 - 1}, QT_TRANSLATE_NOOP("siphonwright::rules", "water"));
    text({low.x + width + 2, low.z + water + height * share / 2 - 1}, caption);
}

void Pencil::thermometer(At low, double share, double mark, const char* caption)
{
    constexpr double height = 32;
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.setBrush(palette_.ground);
    painter_.drawRoundedRect(box({low.x - 1.6, low.z}, {low.x + 1.6, low.z + height}), 1.6, 1.6);
    painter_.setBrush(palette_.ink);
    painter_.drawEllipse(page(low), 2.8, 2.8);
    bar(low, {low.x, low.z + height * share});
    text({low.x - 3.4, low.z + height * share - 1}, QT_TRANSLATE_NOOP("siphonwright::rules", "coldest night"),
         Anchor::right);
    painter_.setPen(pen(palette_.level, medium_mm));
    painter_.drawLine(page({low.x - 3, low.z + height * mark}), page({low.x + 5, low.z + height * mark}));
    text({low.x + 6, low.z + height * mark - 1}, caption);
}

} // namespace siphonwright::rules
