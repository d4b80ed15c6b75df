#include "app/drawing/ghost.h"

#include "app/drawing/ink.h"

#include <algorithm>

namespace siphonwright::drawing {

namespace {

bool isOn(const Hose& hose, const Id& heater)
{
    return hose.from.heater == heater || hose.to.heater == heater;
}

} // namespace

Ghost ghostOf(const Sketch& sketch, const Id& heater)
{
    Ghost out;
    out.sketch.units = sketch.units;
    if (const Heater* drawn = sketch.heater(heater))
        out.sketch.heaters.push_back(*drawn);
    for (const Shared<Hose>& hose : sketch.hoses)
        if (isOn(*hose, heater))
            out.sketch.hoses.push_back(hose);
    for (const Port& port : sketch.ports)
        if (std::any_of(out.sketch.hoses.begin(), out.sketch.hoses.end(), [&](const Shared<Hose>& hose) {
                return hose->from.port == port.id || hose->to.port == port.id;
            }))
            out.sketch.ports.push_back(port);
    out.layout = resolve(out.sketch, plumbOf(sketch));
    return out;
}

void paintGhost(QPainter& painter, const Ghost& ghost, const Style& style)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Style own = style;
    own.labels = false;
    own.balloons = false;
    own.running = false;
    own.tint = false;
    own.contents = nullptr;
    Analysis analysis;
    analysis.layout = ghost.layout;
    Ink ink(painter, ghost.sketch, analysis, own);
    ink.ghost = true;
    if (!ghost.space.empty()) {
        QPolygonF outline;
        for (const Vec2 corner : ghost.space)
            outline << toPage(corner);
        QColor inside = own.palette.accent;
        inside.setAlphaF(0.08F);
        painter.setPen(ink.chainPen(own.palette.accent, medium_mm));
        painter.setBrush(inside);
        painter.drawPolygon(outline);
    }
    paintHeaters(ink);
    paintPorts(ink);
    paintHoses(ink);
    paintHoseParts(ink);
    painter.restore();
}

QRectF boundsOf(const Ghost& ghost)
{
    if (ghost.sketch.heaters.empty())
        return {};
    Analysis analysis;
    analysis.layout = ghost.layout;
    return boundsOf(ghost.sketch, analysis);
}

} // namespace siphonwright::drawing
