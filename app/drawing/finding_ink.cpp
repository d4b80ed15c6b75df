#include "app/drawing/balloon.h"
#include "app/drawing/balloon_pictures.h"
#include "app/drawing/balloon_places.h"
#include "app/drawing/ink.h"

#include <algorithm>
#include <cmath>

/// What was found, at its place: undersized stretches, numbered balloons.
namespace siphonwright::drawing {

void paintUndersized(Ink& ink)
{
    for (const Finding& finding : ink.analysis.findings) {
        if (!finding.from_mm || !finding.to_mm) // most of thousands
            continue;
        const bool undersized = finding.rule == "bore-under-manual" || finding.rule == "bore-restriction";
        const ResolvedHose* hose = undersized ? ink.analysis.layout.hose(finding.hose) : nullptr;
        if (!hose || (*hose)->path.line.empty())
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

void reserveBalloonLines(Ink& ink, const Balloons& balloons)
{
    for (std::size_t i = 0; i < balloons.places.size(); ++i) {
        const std::optional<Vec3>& at = ink.analysis.findings[i].at;
        if (!at || std::isnan(balloons.places[i].x()))
            continue;
        ink.reserveLine(QPolygonF({ink.page(*at), balloons.places[i]}));
        ink.keepLeader(balloons.places[i], ink.page(*at));
    }
}

void paintBalloons(Ink& ink, const Balloons& balloons)
{
    const double radius = balloonRadius(ink.style);
    if (ink.balloon_pictures)
        ink.balloon_pictures->begin(ink.painter, ink.palette);
    for (std::size_t i = 0; i < balloons.places.size(); ++i) {
        const Finding& finding = ink.analysis.findings[i];
        const QPointF place = balloons.places[i];
        if (!finding.at || std::isnan(place.x()))
            continue;
        const bool marked = int(i) == ink.style.highlighted_finding;
        const QColor colour = severityColour(ink.palette, finding.severity);
        const QPointF point = ink.page(*finding.at);
        ink.painter.setPen(ink.pen(colour, marked ? edge_mm : thin_mm));
        ink.line(point, place + unitOf(point - place) * radius);
        ink.painter.setBrush(colour);
        ink.painter.drawEllipse(point, ink.paper(0.5), ink.paper(0.5));
        const double rim = ink.paper(marked ? 2 * thick_mm : edge_mm);
        if (ink.balloon_pictures)
            ink.balloon_pictures->paint(ink.painter, ink.palette, place, radius, finding.severity, int(i) + 1,
                                        rim);
        else
            paintBalloon(ink.painter, ink.palette, place, radius, finding.severity, int(i) + 1, rim);
        if (balloons.more[i] > 0)
            paintText(ink.painter, ink.style, place + QPointF(1.5 * radius, 0.45 * radius),
                      QStringLiteral("+%1").arg(balloons.more[i]), Anchor::left, ink.palette.text);
    }
}

} // namespace siphonwright::drawing
