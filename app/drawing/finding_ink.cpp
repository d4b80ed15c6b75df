#include "app/drawing/balloon.h"
#include "app/drawing/ink.h"

#include <algorithm>
#include <cmath>
#include <limits>

/// What was found, at its place: undersized stretches, numbered balloons.
namespace siphonwright::drawing {

namespace {

/// How much a balloon at a place would hide, as a length of overlap.
double crowding(const Analysis& analysis, const Projection& view, QPointF at, double radius,
                const std::vector<QPointF>& placed, const std::vector<QPointF>& points)
{
    double sum = 0;
    for (const QPointF& other : placed) {
        const double gap = std::hypot(other.x() - at.x(), other.y() - at.y());
        sum += gap < 3.1 * radius ? 4 * (6 * radius - gap) : 0;
    }
    for (const QPointF& other : points) {
        const double gap = std::hypot(other.x() - at.x(), other.y() - at.y());
        sum += std::max(0.0, 1.8 * radius - gap);
    }
    for (const ResolvedHose& hose : analysis.layout.hoses) {
        if (hose->path.line.empty())
            continue;
        const double gap = nearestSeen(view, hose->path.line, fromPage(at)).distance_mm;
        sum += std::max(0.0, 1.6 * radius + hose->outsideDiameter() / 2 - gap);
    }
    return sum;
}

/// The nearest place round a point that hides least; further out while it would lie on another balloon.
QPointF balloonPlace(const Analysis& analysis, const Projection& view, QPointF point, double radius,
                     const std::vector<QPointF>& placed, const std::vector<QPointF>& points,
                     const QRectF& near_by)
{
    QPointF best = point;
    double least = std::numeric_limits<double>::infinity();
    for (const double reach : {3.4, 5.0, 7.0, 9.5, 13.0, 17.0, 22.0, 28.0, 35.0}) {
        for (const int angle : {-60, -120, -30, -150, -90, 30, 150, 60, 120, 90, 0, 180}) {
            const double a = angle * 3.14159265358979323846 / 180;
            const QPointF at = point + QPointF(std::cos(a), std::sin(a)) * radius * reach;
            const double outside = near_by.contains(at) ? 0 : 20 * radius;
            const double cost =
                outside + crowding(analysis, view, at, radius, placed, points) + 0.02 * radius * reach;
            if (cost < least - 1e-9) {
                least = cost;
                best = at;
            }
        }
        if (least < 0.3 * radius)
            break;
    }
    return best;
}

} // namespace

double balloonRadius(const Style& style)
{
    return balloon_of_lettering * style.lettering_mm / style.scale;
}

std::vector<QPointF> balloonPlaces(const Analysis& analysis, const Style& style)
{
    constexpr double nowhere = std::numeric_limits<double>::quiet_NaN();
    const double radius = balloonRadius(style);
    std::vector<QPointF> points;
    QPolygonF drawn;
    for (const Finding& finding : analysis.findings) {
        if (finding.at)
            points.push_back(toPage(*finding.at, style.view));
    }
    for (const QPointF& point : points)
        drawn << point;
    for (const ResolvedHose& hose : analysis.layout.hoses)
        drawn << toPage(hose->from.opening, style.view) << toPage(hose->to.opening, style.view);
    const double margin = 5 * radius;
    const QRectF near_by = drawn.boundingRect().adjusted(-margin, -margin, margin, margin);
    std::vector<QPointF> placed;
    std::vector<QPointF> places;
    for (const Finding& finding : analysis.findings) {
        if (finding.at)
            placed.push_back(balloonPlace(analysis, style.view, toPage(*finding.at, style.view), radius,
                                          placed, points, near_by));
        places.push_back(finding.at ? placed.back() : QPointF(nowhere, nowhere));
    }
    return places;
}

void paintUndersized(Ink& ink)
{
    for (const Finding& finding : ink.analysis.findings) {
        const bool undersized = finding.rule == "bore-under-manual" || finding.rule == "bore-restriction";
        const ResolvedHose* hose = undersized ? ink.analysis.layout.hose(finding.hose) : nullptr;
        if (!hose || (*hose)->path.line.empty() || !finding.from_mm || !finding.to_mm)
            continue;
        const Centreline& line = (*hose)->path.line;
        const double half = (*hose)->outsideDiameter() / 2 + ink.paper(0.6);
        const double step = std::max(2 * half, ink.paper(1.6));
        ink.painter.setPen(ink.pen(severityColour(ink.palette, finding.severity), medium_mm));
        for (double s = *finding.from_mm; s < *finding.to_mm; s += step) {
            const double to = std::min(s + step, *finding.to_mm);
            const QPointF side_a = turned(unitOf(ink.page(line.tangent(s)))) * half;
            const QPointF side_b = turned(unitOf(ink.page(line.tangent(to)))) * half;
            const QPointF a = ink.page(line.at(s));
            const QPointF b = ink.page(line.at(to));
            ink.line(a - side_a, b + side_b);
            ink.line(a + side_a, b - side_b);
        }
    }
}

void reserveBalloonLines(Ink& ink)
{
    const std::vector<QPointF> places = balloonPlaces(ink.analysis, ink.style);
    for (std::size_t i = 0; i < places.size(); ++i)
        if (ink.analysis.findings[i].at)
            ink.reserveLine(QPolygonF({ink.page(*ink.analysis.findings[i].at), places[i]}));
}

void paintBalloons(Ink& ink)
{
    const std::vector<QPointF> places = balloonPlaces(ink.analysis, ink.style);
    const double radius = balloonRadius(ink.style);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Finding& finding = ink.analysis.findings[i];
        if (!finding.at)
            continue;
        const bool marked = int(i) == ink.style.highlighted_finding;
        const QColor colour = severityColour(ink.palette, finding.severity);
        const QPointF point = ink.page(*finding.at);
        ink.painter.setPen(ink.pen(colour, marked ? edge_mm : thin_mm));
        ink.line(point, places[i] + unitOf(point - places[i]) * radius);
        ink.painter.setBrush(colour);
        ink.painter.drawEllipse(point, ink.paper(0.5), ink.paper(0.5));
        paintBalloon(ink.painter, ink.palette, places[i], radius, finding.severity, int(i) + 1,
                     ink.paper(marked ? 2 * thick_mm : edge_mm));
    }
}

} // namespace siphonwright::drawing
