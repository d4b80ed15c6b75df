#include "app/drawing/ink.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/analysis/analysis.h"

#include <cmath>

/// What is left: how far each hose may sag, and which way is down.
namespace siphonwright::drawing {

namespace {

/// Down along plumb, as the view shows it.
QPointF down(const Ink& ink)
{
    return unitOf(-ink.page(ink.analysis.layout.plumb.up()));
}

} // namespace

/// A small arrow under the hose where the least sag makes a trap.
void paintSagMargins(Ink& ink)
{
    if (!ink.analysis.proof || !ink.style.labels)
        return;
    for (const SagMargin& margin : ink.analysis.proof->sag) {
        const ResolvedHose* hose = ink.analysis.layout.hose(margin.hose);
        if (!hose || !margin.droop.margin_mm || margin.droop.along_mm > (*hose)->path.line.length())
            continue;
        const QPointF along = down(ink);
        const QPointF from = ink.page((*hose)->path.line.at(margin.droop.along_mm)) +
                             along * ((*hose)->outsideDiameter() / 2 + ink.paper(0.8));
        const QPointF tip = from + along * ink.paper(4);
        ink.painter.setPen(ink.pen(ink.palette.faint, thin_mm));
        ink.line(from, tip);
        ink.arrowhead(tip, along, 1.6, ink.palette.faint);
        ink.avoid(QPolygonF({from, tip}), ink.paper(0.3));
        if (ink.style.page && ink.style.view.isEnd()) // the elevation says it
            continue;
        const QString text =
            tr("may sag %1").arg(inWords(*margin.droop.margin_mm, Unit::mm, ink.style.units));
        Led led{tip, ink.paper(1.6), false,
                placeWords(ink, **hose, margin.droop.along_mm - (*hose)->hose_from_mm)};
        led.hose = hose;
        ink.label({{tip + QPointF(ink.paper(1.2), 0)},
                   {tip - QPointF(ink.paper(1.2), 0), Anchor::right},
                   {tip + QPointF(0, ink.paper(0.8 + ink.style.lettering_mm)), Anchor::centre}},
                  text, ink.palette.faint, led);
    }
}

/// A plumb line with its bob, where the drawing does not stand plumb itself.
void paintPlumbArrow(Ink& ink)
{
    const Vec3& up = ink.analysis.layout.plumb.up();
    constexpr double upright = 1e-9;
    if (std::abs(up.x) < upright && std::abs(up.y) < upright)
        return;
    const QPointF along = down(ink);
    const QPointF from(ink.visible.right() - ink.paper(26), ink.visible.top() + ink.paper(5));
    const QPointF tip = from + along * ink.paper(17);
    ink.painter.setPen(ink.pen(ink.palette.level, edge_mm));
    ink.line(from, tip);
    ink.arrowhead(tip, along, 3, ink.palette.level);
    ink.painter.setPen(ink.chainPen(ink.palette.faint, thin_mm));
    ink.line(from, from + QPointF(0, ink.paper(17)));
    ink.reserve(QRectF(from, tip).normalized().adjusted(-ink.paper(2), 0, ink.paper(2), 0));
    const Led bob{tip, ink.paper(3)};
    const double off_deg = std::acos(std::min(1.0, up.z)) * 180 / 3.14159265358979323846;
    ink.label({{tip + QPointF(0, ink.paper(1.2 + ink.style.lettering_mm)), Anchor::centre}},
              tr("plumb, %1 off").arg(inWords(off_deg, Unit::degree, ink.style.units)), ink.palette.level,
              bob);
}

} // namespace siphonwright::drawing
