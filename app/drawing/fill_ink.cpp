#include "app/drawing/between.h"
#include "app/drawing/bore.h"
#include "app/drawing/contents.h"
#include "app/drawing/ink.h"
#include "app/drawing/seen.h"
#include "app/language/in_words.h"

#include "core/sketch/edits.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <limits>

/// Coolant and air where they are at one moment: in the true bore, the chambers, the jacket and the tank.
namespace siphonwright::drawing {

namespace {

constexpr double everything = std::numeric_limits<double>::infinity();
/// Less gas than this is rounding.
constexpr double least_pocket_shown_ml = 0.01;

/// Coolant without a temperature, or as cold or hot as it is shown. On paper hot is dark.
QColor liquidColour(const Ink& ink, std::optional<double> degC)
{
    const QColor plain = between(ink.palette.ground, ink.palette.level, 0.55);
    if (!degC)
        return plain;
    const Contents& contents = *ink.style.contents;
    const double span = std::max(1.0, contents.hot_degC - contents.cold_degC);
    const double share = std::clamp((*degC - contents.cold_degC) / span, 0.0, 1.0);
    const bool coloured = ink.palette.level.saturation() > 20;
    const QColor cold = coloured ? between(ink.palette.ground, QColor(0x2b6fd0), 0.62) : QColor(0xd8d8d8);
    const QColor warm = coloured ? between(ink.palette.ground, QColor(0xe0a020), 0.75) : QColor(0x9a9a9a);
    const QColor hot = coloured ? between(ink.palette.ground, QColor(0xd0301c), 0.85) : QColor(0x555555);
    return share < 0.5 ? between(cold, warm, 2 * share) : between(warm, hot, 2 * share - 1);
}

void fillWith(Ink& ink, const QPolygonF& shape, const QColor& colour)
{
    if (shape.size() < 3)
        return;
    ink.painter.setPen(Qt::NoPen);
    ink.painter.setBrush(colour);
    ink.painter.drawPolygon(shape);
}

/// The surface of coolant: the line where the filled part's outline runs level.
void surfaceLine(Ink& ink, const QPolygonF& outline, double level_mm, double depth_mm)
{
    const Plumb& plumb = ink.analysis.layout.plumb;
    const QPolygonF under = outlineUnder(outline, plumb, level_mm, depth_mm, ink.style.view);
    if (under.size() < 3 || under.size() == outline.size())
        return;
    ink.painter.setPen(ink.pen(ink.palette.level, edge_mm));
    for (qsizetype i = 0; i < under.size(); ++i) {
        const QPointF a = under[i];
        const QPointF b = under[(i + 1) % under.size()];
        const auto at_level = [&](QPointF p) {
            return std::abs(plumb.height(ink.style.view.at(fromPage(p), depth_mm)) - level_mm) < 1e-6;
        };
        if (at_level(a) && at_level(b))
            ink.line(a, b);
    }
}

/// Temperature at a share of the way along one of a loop's hoses.
std::optional<double> temperatureAt(const LoopContents& loop, LoopPart part, double share)
{
    if (!loop.temperatures)
        return std::nullopt;
    const LoopTemperatures& t = *loop.temperatures;
    return part == LoopPart::supply ? t.supply_port + (t.inlet - t.supply_port) * share
                                    : t.outlet + (t.return_port - t.outlet) * share;
}

void paintCell(Ink& ink, const Cell& cell, const CellView& view, const LoopContents& loop)
{
    const ResolvedHose* hose =
        ink.analysis.layout.hose(cell.part == LoopPart::supply ? loop.supply : loop.return_);
    if (!hose || (*hose)->path.line.empty())
        return;
    const Plumb& plumb = ink.analysis.layout.plumb;
    const double length = (*hose)->path.line.length();
    const double from = std::min(cell.from_mm, length);
    const double to = std::min(cell.to_mm, length);
    const bool gas = view.gas_ml > least_pocket_shown_ml;
    for (const QPolygonF& bore : boreCut(**hose, plumb, from, to, -everything, Side::over, ink.style.view))
        fillWith(ink, bore, view.sealed ? ink.palette.air : ink.palette.ground);
    if (view.liquid_ml > 0) {
        const double level = gas ? view.level_mm : everything;
        // Short pieces where colour changes along the hose; they overlap by a little so that no seam shows.
        const double piece = loop.temperatures ? 20 : std::max(1.0, to - from);
        for (double s = from; s < to; s += piece)
            for (const QPolygonF& wet :
                 boreCut(**hose, plumb, s, std::min(to, s + piece + 0.6), level, Side::under, ink.style.view))
                fillWith(ink, wet,
                         liquidColour(ink, temperatureAt(loop, cell.part, (s + piece / 2) / length)));
    }
    if (!gas || !view.sealed)
        return;
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    for (const QPolygonF& air : boreCut(**hose, plumb, from, to, view.level_mm, Side::over, ink.style.view))
        ink.painter.drawPolyline(air);
}

QString degrees(const Ink& ink, double degC)
{
    return inWords(std::round(degC), Unit::degC, ink.style.units);
}

void labelEnd(Ink& ink, const Id& hose_id, double share, double degC)
{
    const ResolvedHose* hose = ink.analysis.layout.hose(hose_id);
    if (!hose || (*hose)->path.line.empty())
        return;
    const Centreline& line = (*hose)->path.line;
    const double half = (*hose)->outsideDiameter() / 2;
    const double h = ink.paper(ink.style.lettering_mm);
    std::vector<Spot> spots;
    for (const double off : {0.0, 0.08, -0.08}) {
        const double s = std::clamp(share + (share > 0.5 ? -std::abs(off) : std::abs(off)), 0.0, 1.0);
        const QPointF at = ink.page(line.at(s * line.length()));
        const double gap = half + ink.paper(1.5);
        spots.push_back({at + QPointF(gap, h / 2), Anchor::left});
        spots.push_back({at + QPointF(-gap, h / 2), Anchor::right});
        spots.push_back({at + QPointF(0, -gap), Anchor::centre});
        spots.push_back({at + QPointF(0, gap + h), Anchor::centre});
    }
    ink.labelFirst(std::move(spots), degrees(ink, degC), ink.palette.text);
}

} // namespace

const LoopContents* Contents::loopOfHose(const Id& hose) const
{
    const auto found = std::find_if(loops.begin(), loops.end(), [&](const LoopContents& loop) {
        return loop.supply == hose || loop.return_ == hose;
    });
    return found == loops.end() ? nullptr : &*found;
}

void paintJacketContents(Ink& ink, const QPolygonF& jacket)
{
    const Contents& contents = *ink.style.contents;
    fillWith(ink, jacket, ink.palette.ground);
    fillWith(
        ink,
        outlineUnder(jacket, ink.analysis.layout.plumb, contents.frame->jacket_level_mm, 0, ink.style.view),
        liquidColour(ink, contents.jacket_degC));
    surfaceLine(ink, jacket, contents.frame->jacket_level_mm, 0);
}

void paintTankContents(Ink& ink, const QRectF& body)
{
    const double inset = ink.paper(0.4) + 3;
    QPainterPath round;
    round.addRoundedRect(body.adjusted(inset, inset, -inset, -inset), 20, 20);
    const QPolygonF inside = round.toFillPolygon();
    const double level_mm = ink.style.contents->frame->jacket_level_mm;
    fillWith(ink, inside, ink.palette.ground);
    fillWith(ink, outlineUnder(inside, ink.analysis.layout.plumb, level_mm, 0, ink.style.view),
             liquidColour(ink, {}));
    surfaceLine(ink, inside, level_mm, 0);
}

void paintChamberContents(Ink& ink, const Heater& heater)
{
    const Contents& contents = *ink.style.contents;
    for (std::size_t i = 1; i < contents.network->cells.size() && i < contents.frame->cells.size(); ++i) {
        const Cell& cell = contents.network->cells[i];
        if (cell.part != LoopPart::chamber || cell.loop >= contents.loops.size() ||
            contents.loops[cell.loop].heater != heater.id)
            continue;
        const LoopContents& loop = contents.loops[cell.loop];
        const CellView& view = contents.frame->cells[i];
        const QPolygonF chamber = heaterChamber(heater, ink.style.view);
        const bool gas = view.gas_ml > least_pocket_shown_ml;
        const double depth_mm = ink.style.view.depth(heaterPoint(heater, {}));
        fillWith(ink, chamber, view.sealed && gas ? ink.palette.air : ink.palette.ground);
        std::optional<double> degC;
        if (loop.temperatures)
            degC = loop.temperatures->outlet;
        if (view.liquid_ml > 0)
            fillWith(ink,
                     gas ? outlineUnder(chamber, ink.analysis.layout.plumb, view.level_mm, depth_mm,
                                        ink.style.view)
                         : chamber,
                     liquidColour(ink, degC));
        if (gas)
            surfaceLine(ink, chamber, view.level_mm, depth_mm);
        ink.painter.setBrush(Qt::NoBrush);
        ink.painter.setPen(ink.pen(ink.palette.ink, loop.energised ? thick_mm : thin_mm,
                                   loop.energised ? Qt::SolidLine : Qt::DashLine));
        ink.painter.drawPolygon(chamber);
    }
}

void paintBoreContents(Ink& ink)
{
    const Contents& contents = *ink.style.contents;
    for (std::size_t i = 1; i < contents.network->cells.size() && i < contents.frame->cells.size(); ++i) {
        const Cell& cell = contents.network->cells[i];
        if (cell.loop < contents.loops.size() &&
            (cell.part == LoopPart::supply || cell.part == LoopPart::return_hose))
            paintCell(ink, cell, contents.frame->cells[i], contents.loops[cell.loop]);
    }
}

void labelTemperatures(Ink& ink)
{
    const Contents& contents = *ink.style.contents;
    for (const LoopContents& loop : contents.loops) {
        if (!loop.temperatures)
            continue;
        labelEnd(ink, loop.supply, 0.06, loop.temperatures->supply_port);
        labelEnd(ink, loop.supply, 0.94, loop.temperatures->inlet);
        labelEnd(ink, loop.return_, 0.06, loop.temperatures->outlet);
        labelEnd(ink, loop.return_, 0.94, loop.temperatures->return_port);
    }
    if (!contents.jacket_degC || !ink.sketch.engine || ink.sketch.engine->jacket.empty())
        return;
    const QPointF centre = pageOf(jacketSeen(*ink.sketch.engine, ink.style.view)).boundingRect().center();
    const double h = ink.paper(ink.style.lettering_mm);
    ink.labelFirst({{centre + QPointF(0, h / 2), Anchor::centre},
                    {centre + QPointF(0, -2 * h), Anchor::centre},
                    {centre + QPointF(0, 3 * h), Anchor::centre}},
                   degrees(ink, *contents.jacket_degC), ink.palette.text);
}

} // namespace siphonwright::drawing
