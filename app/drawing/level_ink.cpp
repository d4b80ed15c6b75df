#include "app/drawing/ink.h"
#include "app/language/tr.h"

#include <cmath>

/// Datum, ground, coolant level and the tank that it is read at.
namespace siphonwright::drawing {

namespace {

void levelLine(Ink& ink, double height_mm, const QPen& pen, const QString& name)
{
    const Plumb& plumb = ink.analysis.layout.plumb;
    // A level that is nearly plumb on the drawing has no line across it.
    if (std::abs(plumb.up().z) < 0.2)
        return;
    const QPointF left = onLevel(plumb, height_mm, ink.visible.left(), ink.style.view);
    const QPointF right = onLevel(plumb, height_mm, ink.visible.right(), ink.style.view);
    ink.painter.setPen(pen);
    ink.line(left, right);
    ink.avoidAcross(QPolygonF({left, right}));
    const double angle = readableAngle(right - left);
    const QPointF along = unitOf(right - left);
    const QPointF lift(0, -ink.paper(1));
    const QPointF under(0, ink.paper(1) + ink.paper(ink.style.lettering_mm));
    const QPointF in = along * ink.paper(3);
    if (ink.style.page) // named beside the view
        return;
    ink.label({{left + in + lift, Anchor::left, angle},
               {left + in + under, Anchor::left, angle},
               {right - in + lift, Anchor::right, angle},
               {right - in + under, Anchor::right, angle},
               {(left + right) / 2 + lift, Anchor::centre, angle}},
              name, pen.color());
}

/// Of a line across the view: on a page it has its name somewhere along it.
void labelLine(Ink& ink, std::vector<Spot> spots, double y, const QString& name)
{
    if (!ink.style.page)
        return ink.label(std::move(spots), name, ink.palette.ink);
    constexpr double step_mm = 8;
    constexpr double under_mm = 3; // clear of the ground's hatching
    for (double x = ink.visible.left() + ink.paper(3); x < ink.visible.right(); x += ink.paper(step_mm)) {
        spots.push_back({{x, y - ink.paper(1)}});
        spots.push_back({{x, y + ink.paper(under_mm + ink.style.lettering_mm)}});
    }
    const QPointF on_line(ink.visible.left() + ink.paper(3), y);
    ink.label(std::move(spots), name, ink.palette.ink, Led{on_line, ink.visible.width(), true, {}, true});
}

/// Filled to cold full.
void paintTankFluid(Ink& ink, const SurgeTank& tank, const QRectF& body)
{
    const double fluid = tank.cold_full_mm.known()  ? *tank.cold_full_mm.value
                         : tank.cold_min_mm.known() ? *tank.cold_min_mm.value
                                                    : tank.position.z;
    ink.painter.setPen(Qt::NoPen);
    ink.painter.setBrush(ink.fill(ink.palette.jacket_fill));
    const double inset = ink.paper(0.4) + 3;
    ink.painter.drawRoundedRect(
        QRectF(QPointF(body.left() + inset, -fluid), QPointF(body.right() - inset, body.bottom() - inset)),
        20, 20);
}

} // namespace

void paintGroundAndDatum(Ink& ink)
{
    const double left = ink.visible.left();
    const double right = ink.visible.right();
    if (ink.sketch.ground_z_mm) {
        const double y = -*ink.sketch.ground_z_mm;
        ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
        ink.line({left, y}, {right, y});
        ink.hatch(QPolygonF(QRectF(left, y, right - left, ink.paper(2))), 1.6, -45,
                  ink.pen(ink.palette.ink, hairline_mm));
        ink.reserve(QRectF(left, y, right - left, ink.paper(2)));
        labelLine(ink,
                  {{{left + ink.paper(3), y - ink.paper(1)}},
                   {{right - ink.paper(3), y - ink.paper(1)}, Anchor::right},
                   {{(left + right) / 2, y - ink.paper(1)}, Anchor::centre}},
                  y, tr("Ground, lowest ride height"));
    }
    ink.painter.setPen(ink.chainPen(ink.palette.ink, thin_mm));
    ink.line({left, 0}, {right, 0});
    ink.avoidAcross(QPolygonF(QList<QPointF>{{left, 0}, {right, 0}}));
    labelLine(ink,
              {{{left + ink.paper(3), -ink.paper(1)}},
               {{right - ink.paper(3), -ink.paper(1)}, Anchor::right},
               {{left + ink.paper(3), ink.paper(1 + ink.style.lettering_mm)}}},
              0, tr("Datum"));
}

void paintLevels(Ink& ink)
{
    const CoolantLevels& levels = ink.analysis.layout.levels;
    const QColor& colour = ink.palette.level;
    if (levels.hot_mm)
        levelLine(ink, *levels.hot_mm, ink.pen(colour, thin_mm, Qt::DotLine), tr("Level hot"));
    if (levels.cold_full_mm)
        levelLine(ink, *levels.cold_full_mm, ink.pen(colour, thin_mm, Qt::DashLine), tr("Level cold full"));
    if (levels.cold_min_mm)
        levelLine(ink, *levels.cold_min_mm, ink.pen(colour, edge_mm), tr("Level cold minimum"));
}

QRectF tankBody(const SurgeTank& tank, const Projection& view)
{
    constexpr double half_width_mm = 110;
    const double x = view.flat(tank.position).x;
    double low = tank.position.z;
    double high = tank.position.z;
    for (const Fact<double>* mark : {&tank.cold_min_mm, &tank.cold_full_mm, &tank.hot_mm}) {
        if (mark->known()) {
            low = std::min(low, *mark->value);
            high = std::max(high, *mark->value);
        }
    }
    return QRectF(QPointF(x - half_width_mm, -high - 60), QPointF(x + half_width_mm, -low + 90));
}

void paintTank(Ink& ink)
{
    if (!ink.sketch.tank)
        return;
    const SurgeTank& tank = *ink.sketch.tank;
    const QRectF body = tankBody(tank, ink.style.view);
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    ink.painter.setBrush(ink.fill(ink.palette.engine_fill));
    ink.painter.drawRoundedRect(body, 28, 28);
    if (ink.style.contents)
        paintTankContents(ink, body);
    else
        paintTankFluid(ink, tank, body);
    ink.reserve(body.adjusted(0, -44, 0, 0));
    ink.cover(body);
    // Filler neck and cap.
    ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
    ink.painter.setBrush(ink.fill(ink.palette.engine_fill));
    ink.painter.drawRect(QRectF(body.center().x() - 34, body.top() - 18, 68, 18));
    ink.painter.drawRoundedRect(QRectF(body.center().x() - 46, body.top() - 44, 92, 26), 8, 8);
    ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
    for (const Fact<double>* mark : {&tank.cold_min_mm, &tank.cold_full_mm, &tank.hot_mm}) {
        if (mark->known())
            ink.line({body.right() - 70, -*mark->value}, {body.right(), -*mark->value});
    }
    ink.label({{{body.center().x(), body.top() - 44 - ink.paper(1.5)}, Anchor::centre},
               {{body.right() + ink.paper(2), body.bottom()}, Anchor::left},
               {{body.center().x(), body.bottom() + ink.paper(4)}, Anchor::centre}},
              tr("Surge tank"), ink.palette.ink, ledTo(ink, body));
}

} // namespace siphonwright::drawing
