#include "app/drawing/bore.h"
#include "app/drawing/ink.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <algorithm>

/// Air that stays and coolant that is held, to scale in the bore, with what becomes of it.
namespace siphonwright::drawing {

namespace {

void paintAir(Ink& ink, const std::vector<QPolygonF>& shapes)
{
    for (const QPolygonF& air : shapes) {
        ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
        ink.painter.setBrush(ink.palette.air);
        ink.painter.drawPolygon(ink.shown(air));
    }
}

void paintHeld(Ink& ink, const ResolvedHose& hose)
{
    for (const Dip& dip : hose.profile.dips) {
        for (const QPolygonF& cut : boreCut(*hose, ink.analysis.layout.plumb, dip.from_mm, dip.to_mm,
                                            dip.rim_mm, Side::under, ink.style.view)) {
            const QPolygonF held = ink.shown(cut);
            ink.painter.setPen(ink.pen(ink.palette.held, medium_mm));
            ink.painter.setBrush(Qt::NoBrush);
            ink.painter.drawPolygon(held);
            ink.hatch(held, 0.7, 0, ink.pen(ink.palette.held, hairline_mm));
        }
    }
}

/// What filling was computed to leave; null where it could not be.
const Filling* fillingOf(const Ink& ink)
{
    const bool computed = ink.analysis.proof && ink.analysis.proof->filling.missing.empty();
    return computed ? &ink.analysis.proof->filling : nullptr;
}

bool liesIn(const PocketFound& pocket, const HighPoint& high)
{
    return std::any_of(pocket.stretches.begin(), pocket.stretches.end(), [&](const PocketStretch& part) {
        return part.from_mm < high.to_mm && part.to_mm > high.from_mm;
    });
}

/// What the air makes of a loop that would circulate without it; circulates: nothing so grave.
CirculationStatus madeOf(const Ink& ink, const PocketFound& pocket)
{
    const LoopRun* run = ink.analysis.proof->running.loopOf(pocket.heater);
    const bool would_run = pocket.closes_bore && run && run->without_air &&
                           run->without_air->status == CirculationStatus::circulates;
    return would_run ? run->circulation.status : CirculationStatus::circulates;
}

QString wordsOf(const Ink& ink, const PocketFound& pocket)
{
    const QString volume = inWords(pocket.volume_ml, Unit::ml, ink.style.units);
    const CirculationStatus made = madeOf(ink, pocket);
    if (made == CirculationStatus::reverse)
        return tr("%1 of air, turns the flow round").arg(volume);
    if (made != CirculationStatus::circulates)
        return tr("%1 of air, locks the loop").arg(volume);
    switch (pocket.cleared_by_running) {
    case Clearing::cleared:
        return tr("%1 of air, cleared by running").arg(volume);
    case Clearing::may_clear:
        return tr("%1 of air, may clear").arg(volume);
    case Clearing::stays:
        break;
    }
    return tr("%1 of air, stays").arg(volume);
}

void paintFound(Ink& ink, const PocketFound& pocket)
{
    const ResolvedHose* hose = ink.analysis.layout.hose(pocket.hose);
    if (!hose || (*hose)->path.line.empty())
        return;
    const double length = (*hose)->path.line.length();
    for (const PocketStretch& part : pocket.stretches)
        if (part.from_mm < length)
            paintAir(ink, boreCut(**hose, ink.analysis.layout.plumb, part.from_mm,
                                  std::min(part.to_mm, length), part.level_mm, Side::over, ink.style.view));
    // On a page the elevation says it; from the end another hose may hide the place.
    if (pocket.volume_ml < least_named_ml || (ink.style.page && ink.style.view.isEnd()))
        return;
    const QPointF at = ink.page(pocket.at);
    const double gap = (*hose)->outsideDiameter() / 2 + ink.paper(1.4);
    const double h = ink.paper(ink.style.lettering_mm);
    std::vector<Spot> spots;
    for (const double out : {1.0, 1.8, 2.8, 4.0, 5.5, 7.5, 10.0}) {
        spots.push_back({at + QPointF(0, -gap * out), Anchor::centre});
        spots.push_back({at + QPointF(0, gap * out + h), Anchor::centre});
        for (const double up : {-1.0, 0.0, 1.0}) {
            const double y = up * gap * out + (up < 0 ? 0 : h * (up + 1) / 2);
            spots.push_back({at + QPointF(gap * out, y), Anchor::left});
            spots.push_back({at + QPointF(-gap * out, y), Anchor::right});
        }
    }
    ink.labelFirst(std::move(spots), wordsOf(ink, pocket), ink.palette.ink,
                   Led{at, ink.style.page ? gap + ink.paper(0.8) : 2 * gap});
}

} // namespace

bool leavesAir(const Ink& ink)
{
    const Filling* filling = fillingOf(ink);
    return filling && !filling->pockets.empty();
}

void paintPockets(Ink& ink)
{
    const Filling* filling = fillingOf(ink);
    const bool kept = !leavesAir(ink); // with the hoses that are (hose_layer.h)
    for (const ResolvedHose& hose : ink.analysis.layout.hoses) {
        if (hose->path.line.empty() || (kept && !ink.draws(hose)))
            continue;
        paintHeld(ink, hose);
        for (const HighPoint& high : hose.profile.high_points) {
            const bool computed =
                filling &&
                std::any_of(filling->pockets.begin(), filling->pockets.end(), [&](const PocketFound& pocket) {
                    return pocket.hose == hose.id() && liesIn(pocket, high);
                });
            if (!computed)
                paintAir(ink, boreCut(*hose, ink.analysis.layout.plumb, high.from_mm, high.to_mm,
                                      high.sill_mm, Side::over, ink.style.view));
        }
    }
    if (filling)
        for (const PocketFound& pocket : filling->pockets)
            paintFound(ink, pocket);
}

} // namespace siphonwright::drawing
