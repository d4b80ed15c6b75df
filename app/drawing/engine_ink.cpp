#include "app/drawing/ink.h"
#include "app/drawing/seen.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <algorithm>
#include <cmath>

/// Engine, water jacket, thermostat housing and the areas to keep clear of.
namespace siphonwright::drawing {

namespace {

/// The housing's size is not part of the sketch.
constexpr double thermostat_half_mm = 45;

QRectF thermostatBody(QPointF at)
{
    const QPointF half(thermostat_half_mm, 0.8 * thermostat_half_mm);
    return {at - half, at + half};
}

/// Cylinders seen from the side: one bank of them.
int cylindersInSight(Arrangement arrangement)
{
    switch (arrangement) {
    case Arrangement::inline_3:
    case Arrangement::vee_6:
        return 3;
    case Arrangement::inline_4:
    case Arrangement::vee_8:
        return 4;
    case Arrangement::inline_5:
        return 5;
    case Arrangement::vee_12:
    case Arrangement::inline_6:
    case Arrangement::slanted_inline:
        return 6;
    case Arrangement::vee_16:
        return 8;
    case Arrangement::horizontal:
        return 0; // they point at the viewer
    }
    return 0;
}

void paintCylinders(Ink& ink, const Engine& engine)
{
    if (ink.style.view.isEnd())
        return paintEndAxes(ink, engine);
    const int count = cylindersInSight(engine.arrangement);
    const QRectF box = pageOf(jacketSeen(engine, ink.style.view)).boundingRect();
    ink.painter.setPen(ink.chainPen(ink.palette.faint, hairline_mm));
    for (int i = 0; i < count; ++i) {
        const double x = box.left() + box.width() * (i + 0.5) / count;
        const QPolygonF axis({QPointF(x, box.top() - ink.paper(2)), QPointF(x, box.bottom() + ink.paper(2))});
        ink.painter.drawPolyline(axis);
        ink.avoid(axis, ink.paper(0.2));
    }
}

/// The level mark of technical drawings: a triangle standing on the line.
void levelMark(Ink& ink, QPointF at, double size_mm, const QColor& colour)
{
    const double s = ink.paper(size_mm);
    ink.painter.setPen(ink.pen(colour, thin_mm));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawPolygon(QPolygonF({at, at + QPointF(-s * 0.6, -s), at + QPointF(s * 0.6, -s)}));
}

void paintJacketLevels(Ink& ink, const Engine& engine)
{
    if (!ink.analysis.layout.jacket)
        return;
    const QRectF box = pageOf(jacketSeen(engine, ink.style.view)).boundingRect();
    const JacketHeights& heights = *ink.analysis.layout.jacket;
    for (const double height : {heights.lowest_mm, heights.highest_mm}) {
        const QPointF right =
            onLevel(ink.analysis.layout.plumb, height, box.right() + ink.paper(7), ink.style.view);
        ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
        const auto stroke = [&](double from, double to) {
            const QPolygonF line({onLevel(ink.analysis.layout.plumb, height, from, ink.style.view),
                                  onLevel(ink.analysis.layout.plumb, height, to, ink.style.view)});
            ink.painter.drawPolyline(line);
            ink.avoid(line, ink.paper(0.2));
        };
        stroke(box.right() - ink.paper(3), right.x());
        stroke(box.left() - ink.paper(4), box.left() + ink.paper(3));
        levelMark(ink, right - QPointF(ink.paper(2), 0), 1.6, ink.palette.ink);
        ink.reserve(
            QRectF(right - QPointF(ink.paper(3.1), ink.paper(1.7)), right - QPointF(ink.paper(0.9), 0)));
    }
}

void paintThermostat(Ink& ink, const ThermostatHousing& housing)
{
    const QPointF at = ink.page(housing.position);
    constexpr double half_mm = thermostat_half_mm;
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    ink.painter.setBrush(ink.style.fills ? ink.palette.engine_fill : ink.palette.ground);
    ink.painter.drawRoundedRect(thermostatBody(at), half_mm / 2, half_mm / 2);
    ink.reserve(thermostatBody(at));
    ink.cover(thermostatBody(at));
    // The valve plate on its spring.
    ink.painter.setPen(ink.pen(ink.palette.ink, thin_mm));
    ink.line(at + QPointF(-half_mm * 0.6, half_mm * 0.3), at + QPointF(half_mm * 0.6, half_mm * 0.3));
    QPolygonF spring;
    for (int i = 0; i <= 6; ++i)
        spring << at + QPointF((i % 2 ? 0.25 : -0.25) * half_mm, (0.3 - 0.14 * i) * half_mm);
    ink.painter.drawPolyline(spring);
}

/// Beside the engine's front end or under it, clear of lines if it can be, at least where its name is read.
void paintFrontArrow(Ink& ink, const Engine& engine)
{
    const QRectF box = pageOf(engineSeen(engine, ink.style.view)).boundingRect();
    const bool left = engine.front == EngineEnd::left;
    const double gap = ink.paper(3);
    const double half = gap / 2;
    const QPointF away(left ? -1 : 1, 0);
    const double beside = left ? box.left() - gap : box.right() + gap;
    const double within = beside - away.x() * ink.paper(17);
    const QPointF tails[] = {
        {beside, box.top() + ink.paper(4)},    {beside, box.center().y()},
        {beside, box.top() - ink.paper(8)},    {within, box.bottom() + ink.paper(9)},
        {within, box.bottom() - ink.paper(4)}, {within, box.top() - ink.paper(4)},
        {beside, box.bottom() + ink.paper(9)}, {box.center().x(), box.bottom() + ink.paper(9)}};
    for (const bool clear : {true, false}) {
        for (const QPointF& tail : tails) {
            const QPointF tip = tail + away * ink.paper(11);
            const QRectF arrow = QRectF(tail - QPointF(0, half), tip + QPointF(0, half)).normalized();
            const Spot name{tip - away * ink.paper(6) - QPointF(0, ink.paper(1.8)), Anchor::centre, 0};
            if ((clear && !ink.isFree(arrow, true)) || !ink.labelNow({name}, tr("Front"), ink.palette.ink))
                continue;
            ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
            ink.line(tail, tip - away * ink.paper(2));
            ink.arrowhead(tip, away, 3.5, ink.palette.ink);
            ink.reserve(arrow);
            return;
        }
    }
}

void labelJacket(Ink& ink, const Engine& engine)
{
    const QRectF box = pageOf(engineSeen(engine, ink.style.view)).boundingRect();
    const QRectF jacket = pageOf(jacketSeen(engine, ink.style.view)).boundingRect();
    const Layout& layout = ink.analysis.layout;
    const double h = ink.paper(ink.style.lettering_mm);
    const double gap = ink.paper(1.5);
    std::vector<Spot> spots{{{box.center().x(), jacket.top() - gap}, Anchor::centre},
                            {{box.center().x(), jacket.bottom() + gap + h}, Anchor::centre},
                            {{box.center().x(), box.top() - gap}, Anchor::centre},
                            {{jacket.left() + gap, jacket.center().y()}, Anchor::left}};
    constexpr int rows = 12;
    for (int row = 1; row < rows; ++row)
        for (const double share : {0.5, 0.35, 0.65})
            spots.push_back({{box.left() + share * box.width(), box.bottom() - row * box.height() / rows},
                             Anchor::centre});
    for (const double share : {0.5, 0.25, 0.75})
        spots.push_back({{box.left() + share * box.width(), box.bottom() + gap + h}, Anchor::centre});
    std::optional<Led> led; // in the window it is left out where it would hide something
    if (ink.style.page)
        led = ledTo(ink, pageOf(engineSeen(engine, ink.style.view)));
    ink.label(std::move(spots), inWords(engine.name), ink.palette.ink, led);
    if (!layout.jacket || ink.style.page)
        return;
    const auto mark = [&](double height_mm, double into, const QString& name) {
        const QPointF outside =
            onLevel(layout.plumb, height_mm, jacket.right() + ink.paper(8), ink.style.view);
        const QPointF right = onLevel(layout.plumb, height_mm, jacket.right() - gap, ink.style.view);
        const QPointF left = onLevel(layout.plumb, height_mm, jacket.left() + gap, ink.style.view);
        ink.label({{outside + QPointF(0, h / 2)},
                   {left + QPointF(0, into)},
                   {right + QPointF(0, into), Anchor::right}},
                  name, ink.palette.ink);
    };
    mark(layout.jacket->highest_mm, gap + h, tr("Jacket highest"));
    mark(layout.jacket->lowest_mm, -gap, tr("Jacket lowest"));
}

void labelThermostat(Ink& ink, QPointF at)
{
    const double h = ink.paper(ink.style.lettering_mm);
    const double gap = ink.paper(1.2);
    ink.label({{at + QPointF(thermostat_half_mm + gap, h / 2)},
               {at + QPointF(-thermostat_half_mm - gap, h / 2), Anchor::right},
               {at + QPointF(0, -thermostat_half_mm * 0.8 - gap), Anchor::centre},
               {at + QPointF(0, thermostat_half_mm * 0.8 + gap + h), Anchor::centre}},
              tr("Thermostat"), ink.palette.ink,
              ink.style.page ? ledTo(ink, thermostatBody(at)) : Led{at, thermostat_half_mm + 1.5 * gap});
}

} // namespace

void paintEngine(Ink& ink)
{
    if (!ink.sketch.engine)
        return;
    const Engine& engine = *ink.sketch.engine;
    const QPolygonF outline = pageOf(engineSeen(engine, ink.style.view));
    const QPolygonF jacket = pageOf(jacketSeen(engine, ink.style.view));
    ink.painter.setPen(ink.pen(ink.palette.ink, thick_mm));
    ink.painter.setBrush(ink.fill(ink.palette.engine_fill));
    ink.painter.drawPolygon(outline);
    ink.groundOf(outline, ink.palette.engine_fill, false);
    // What coolant and temperature colour changes while it is looked at: text stands on plain ground there.
    ink.groundOf(jacket, ink.style.contents ? ink.palette.ground : ink.palette.jacket_fill, true);
    for (const QPolygonF& edge : {outline, jacket})
        ink.avoidOutline(edge);

    if (ink.style.contents) {
        paintJacketContents(ink, jacket);
    } else {
        ink.painter.setPen(Qt::NoPen);
        ink.painter.setBrush(ink.fill(ink.palette.jacket_fill));
        ink.painter.drawPolygon(jacket);
    }
    QColor hatching = ink.palette.faint;
    constexpr float seen = 0.45F;
    if (ink.style.page && !ink.style.photo) { // paper knows no opacity
        const QColor& under = ink.palette.jacket_fill;
        const auto mix = [](float a, float b) { return b + (a - b) * seen; };
        hatching =
            QColor::fromRgbF(mix(hatching.redF(), under.redF()), mix(hatching.greenF(), under.greenF()),
                             mix(hatching.blueF(), under.blueF()));
    } else {
        hatching.setAlphaF(seen);
    }
    ink.hatch(jacket, 2.4, -45, ink.pen(hatching, hairline_mm));
    ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm, Qt::DashLine));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawPolygon(jacket);
    paintCylinders(ink, engine);
    paintJacketLevels(ink, engine);
    if (engine.thermostat)
        paintThermostat(ink, *engine.thermostat);
}

void paintKeepClear(Ink& ink)
{
    for (const Shared<Area>& area : ink.sketch.areas) {
        if (ink.style.view.isEnd() && !depthKnown(*area)) {
            paintUnknownDepth(ink, *area);
            continue;
        }
        const QPolygonF outline = pageOf(areaSeen(*area, ink.style.view));
        // From the end fan and exhaust lie over most of the engine: it has to be seen through them.
        const double spacing = ink.style.view.isEnd() ? 4 : 1.6;
        ink.hatch(outline, spacing, 45, ink.pen(ink.palette.keep_clear, hairline_mm));
        ink.hatch(outline, spacing, -45, ink.pen(ink.palette.keep_clear, hairline_mm));
        ink.reserve(outline.boundingRect());
        ink.cover(outline);
        ink.painter.setPen(ink.pen(ink.palette.keep_clear, edge_mm, Qt::DashLine));
        ink.painter.setBrush(Qt::NoBrush);
        ink.painter.drawPolygon(outline);
    }
}

void labelEngine(Ink& ink)
{
    if (ink.sketch.engine) {
        if (ink.style.view.isEnd())
            labelSides(ink, *ink.sketch.engine);
        else if (!ink.style.page) // a page has it in its heading
            paintFrontArrow(ink, *ink.sketch.engine);
        labelJacket(ink, *ink.sketch.engine);
        if (ink.sketch.engine->thermostat)
            labelThermostat(ink, ink.page(ink.sketch.engine->thermostat->position));
    }
    for (const Shared<Area>& area : ink.sketch.areas) {
        if (ink.style.view.isEnd() && !depthKnown(*area))
            continue;
        const QRectF box = pageOf(areaSeen(*area, ink.style.view)).boundingRect();
        const double under = box.bottom() + ink.paper(1.5 + ink.style.lettering_mm);
        const double middle = box.center().y() + ink.paper(ink.style.lettering_mm) / 2;
        ink.label({{{box.center().x(), box.top() - ink.paper(1.5)}, Anchor::centre},
                   {{box.center().x(), under}, Anchor::centre},
                   {{box.left(), box.top() - ink.paper(1.5)}, Anchor::left},
                   {{box.right(), under}, Anchor::right},
                   {{box.right() - box.width() / 4, under}, Anchor::right},
                   {{box.left(), under}, Anchor::left},
                   {{box.left() - ink.paper(1.5), middle}, Anchor::right},
                   {{box.right() + ink.paper(1.5), middle}, Anchor::left},
                   {{box.center().x(), under}, Anchor::right},
                   {{box.center().x(), under + 1.6 * ink.paper(ink.style.lettering_mm)}, Anchor::centre}},
                  inWords(area->name), ink.palette.keep_clear,
                  ledTo(ink, pageOf(areaSeen(*area, ink.style.view))));
    }
}

} // namespace siphonwright::drawing
