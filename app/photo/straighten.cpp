#include "app/photo/straighten.h"

#include "app/language/tr.h"
#include "app/photo/read_picture.h"

#include <QLineF>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace siphonwright::photo {
namespace {

double crossOf(QPointF a, QPointF b)
{
    return a.x() * b.y() - a.y() * b.x();
}

/// Which share of the middle's measure of nearness is left before the picture is cut: nearer to the horizon
/// everything is drawn out more than sixteen times as long.
constexpr double nearest_share = 0.25;

/// Nearness to the viewer of a picture's point, up to a constant: what the map divides by.
double nearness(const QTransform& map, QPointF p)
{
    return map.m13() * p.x() + map.m23() * p.y() + map.m33();
}

/// The part of a polygon where nearness, in units of `unit`, is at least nearest_share: one edge after the
/// other (Sutherland and Hodgman 1974).
QPolygonF cutBeforeHorizon(const QPolygonF& polygon, const QTransform& map, double unit)
{
    QPolygonF out;
    for (qsizetype i = 0; i < polygon.size(); ++i) {
        const QPointF a = polygon[i];
        const QPointF b = polygon[(i + 1) % polygon.size()];
        const double over_a = nearness(map, a) / unit - nearest_share;
        const double over_b = nearness(map, b) / unit - nearest_share;
        if (over_a >= 0)
            out << a;
        if ((over_a >= 0) != (over_b >= 0))
            out << a + (b - a) * (over_a / (over_a - over_b));
    }
    return out;
}

/// What of the picture is shown, mm.
QRectF extentOf(const QSize& size, const QTransform& map, const Corners& corners, double width_mm,
                double height_mm)
{
    constexpr double most_times = 3;
    const QPointF middle = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
    const QPolygonF whole(QRectF(0, 0, size.width(), size.height()));
    QPolygonF shown = cutBeforeHorizon(whole, map, nearness(map, middle));
    for (QPointF& p : shown)
        p = map.map(p);
    const double beyond_mm = most_times * std::max(width_mm, height_mm);
    const QRectF around(-beyond_mm, -beyond_mm, width_mm + 2 * beyond_mm, height_mm + 2 * beyond_mm);
    return shown.boundingRect().intersected(around);
}

/// As fine as the rectangle's best side is in the picture, but no more pixels than a picture may have.
double pixelsPerMm(const Corners& c, double width_mm, double height_mm, const QRectF& extent_mm)
{
    const double across = std::max(QLineF(c[0], c[1]).length(), QLineF(c[3], c[2]).length()) / width_mm;
    const double along = std::max(QLineF(c[1], c[2]).length(), QLineF(c[0], c[3]).length()) / height_mm;
    return std::min(std::max(across, along),
                    longest_side_px / std::max(extent_mm.width(), extent_mm.height()));
}

QRgb between(QRgb a, QRgb b, double share)
{
    const auto mix = [share](int from, int to) { return int(std::lround(from + (to - from) * share)); };
    return qRgba(mix(qRed(a), qRed(b)), mix(qGreen(a), qGreen(b)), mix(qBlue(a), qBlue(b)),
                 mix(qAlpha(a), qAlpha(b)));
}

/// The picture at a place in it, between the middles of its four nearest pixels; nothing outside.
QRgb sample(const QImage& picture, QPointF at)
{
    if (!(at.x() >= 0 && at.y() >= 0 && at.x() <= picture.width() && at.y() <= picture.height()))
        return qRgba(0, 0, 0, 0);
    const double x = std::clamp(at.x() - 0.5, 0.0, picture.width() - 1.0);
    const double y = std::clamp(at.y() - 0.5, 0.0, picture.height() - 1.0);
    const int left = int(x);
    const int top = int(y);
    const int right = std::min(left + 1, picture.width() - 1);
    const auto* upper = reinterpret_cast<const QRgb*>(picture.constScanLine(top));
    const auto* lower =
        reinterpret_cast<const QRgb*>(picture.constScanLine(std::min(top + 1, picture.height() - 1)));
    return between(between(upper[left], upper[right], x - left), between(lower[left], lower[right], x - left),
                   y - top);
}

QImage resampled(const QImage& picture, const QTransform& to_picture, const QRectF& extent_mm, QSize size)
{
    const QImage source = picture.convertToFormat(QImage::Format_ARGB32_Premultiplied);
    QImage out(size, QImage::Format_ARGB32_Premultiplied);
    const double dx = extent_mm.width() / size.width();
    const double dy = extent_mm.height() / size.height();
    for (int row = 0; row < size.height(); ++row) {
        auto* line = reinterpret_cast<QRgb*>(out.scanLine(row));
        const double y = extent_mm.top() + (row + 0.5) * dy;
        for (int column = 0; column < size.width(); ++column)
            line[column] = sample(source, to_picture.map(QPointF(extent_mm.left() + (column + 0.5) * dx, y)));
    }
    return out;
}

} // namespace

std::optional<std::array<std::size_t, 4>> cornerOrder(const Corners& points)
{
    const QPointF middle = (points[0] + points[1] + points[2] + points[3]) / 4;
    std::array<std::size_t, 4> turn = {0, 1, 2, 3};
    // Clockwise as seen, with the second coordinate down.
    std::sort(turn.begin(), turn.end(), [&](std::size_t a, std::size_t b) {
        const QPointF from_a = points[a] - middle;
        const QPointF from_b = points[b] - middle;
        return std::atan2(from_a.y(), from_a.x()) < std::atan2(from_b.y(), from_b.x());
    });
    const auto corner = [&](std::size_t i) { return points[turn[i % 4]]; };
    for (std::size_t i = 0; i < 4; ++i) {
        const QPointF side = corner(i + 1) - corner(i);
        const QPointF next = corner(i + 2) - corner(i + 1);
        const double lengths = std::hypot(side.x(), side.y()) * std::hypot(next.x(), next.y());
        constexpr double least_sine = 0.02; // about one degree from a straight line
        if (!(crossOf(side, next) > least_sine * lengths))
            return std::nullopt;
    }
    std::size_t first = 0;
    double most = -HUGE_VAL;
    for (std::size_t i = 0; i < 4; ++i) {
        const QPointF right = corner(i + 1) - corner(i) + corner(i + 2) - corner(i + 3);
        if (right.x() > most) {
            most = right.x();
            first = i;
        }
    }
    std::rotate(turn.begin(), turn.begin() + std::ptrdiff_t(first), turn.end());
    return turn;
}

std::optional<QTransform> straighteningMap(const Corners& corners, double width_mm, double height_mm)
{
    const bool sizes = std::isfinite(width_mm) && width_mm > 0 && std::isfinite(height_mm) && height_mm > 0;
    QTransform map;
    if (!sizes || !cornerOrder(corners) ||
        !QTransform::quadToQuad(QPolygonF({corners[0], corners[1], corners[2], corners[3]}),
                                QPolygonF({{0, 0}, {width_mm, 0}, {width_mm, height_mm}, {0, height_mm}}),
                                map) ||
        !map.isInvertible())
        return std::nullopt;
    return map;
}

Straightened straighten(const QImage& picture, const Corners& corners, double width_mm, double height_mm)
{
    Straightened out;
    const std::optional<QTransform> map =
        picture.isNull() ? std::nullopt : straighteningMap(corners, width_mm, height_mm);
    if (!map) {
        out.problem = tr("The four points are not the corners of a rectangle seen at an angle: three of "
                         "them lie in one line, or one lies between the others.");
        return out;
    }
    out.extent_mm = extentOf(picture.size(), *map, corners, width_mm, height_mm);
    if (out.extent_mm.isEmpty()) {
        out.problem = tr("The four points do not lie in the picture.");
        return out;
    }
    const double scale = pixelsPerMm(corners, width_mm, height_mm, out.extent_mm);
    const QSize size(std::clamp(int(std::lround(out.extent_mm.width() * scale)), 1, longest_side_px),
                     std::clamp(int(std::lround(out.extent_mm.height() * scale)), 1, longest_side_px));
    if (std::min(size.width(), size.height()) < shortest_side_px) {
        out.problem = tr("The rectangle is too small in the picture.");
        return out;
    }
    // Pixels are square: the image is as wide as whole pixels make it.
    out.extent_mm.setSize(QSizeF(size) / scale);
    out.image = resampled(picture, map->inverted(), out.extent_mm, size);
    return out;
}

} // namespace siphonwright::photo
