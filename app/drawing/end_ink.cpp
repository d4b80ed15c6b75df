#include "app/drawing/ink.h"
#include "app/drawing/seen.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <algorithm>
#include <cmath>

/// What only an end view has: cylinder axes seen along the crankshaft, which side is which, areas whose depth
/// nobody entered.
namespace siphonwright::drawing {

namespace {

/// Angle of a bank from upright, in degrees: 45 for 90 degree vees of eight and sixteen, 30 for 60 degree
/// vees of six and twelve (the usual ones). Nothing for engines whose axes are not known to lean.
double bankAngle_deg(Arrangement arrangement)
{
    switch (arrangement) {
    case Arrangement::vee_8:
    case Arrangement::vee_16:
        return 45;
    case Arrangement::vee_6:
    case Arrangement::vee_12:
        return 30;
    default:
        return 0;
    }
}

} // namespace

void paintEndAxes(Ink& ink, const Engine& engine)
{
    const QRectF jacket = pageOf(jacketSeen(engine, ink.style.view)).boundingRect();
    if (jacket.isEmpty())
        return;
    ink.painter.setPen(ink.chainPen(ink.palette.faint, hairline_mm));
    const auto axis = [&ink](QPointF a, QPointF b) {
        ink.line(a, b);
        ink.avoid(QPolygonF({a, b}), ink.paper(0.2));
    };
    const QPointF top(jacket.center().x(), jacket.top() - ink.paper(2));
    const double angle = bankAngle_deg(engine.arrangement) * 3.14159265358979323846 / 180;
    if (engine.arrangement == Arrangement::horizontal) {
        axis({jacket.left() - ink.paper(2), jacket.center().y()},
             {jacket.right() + ink.paper(2), jacket.center().y()});
    } else if (angle > 0) {
        // Both meet in the crankshaft, under the middle of the decks.
        const double out = jacket.width() * 0.36;
        const QPointF crank(jacket.center().x(), jacket.top() + out / std::tan(angle));
        for (const double side : {-1.0, 1.0}) {
            const QPointF deck(crank.x() + side * out, jacket.top());
            axis(crank, deck + unitOf(deck - crank) * ink.paper(2));
        }
        const double r = ink.paper(1.5);
        axis(crank - QPointF(r, 0), crank + QPointF(r, 0));
        axis(crank - QPointF(0, r), crank + QPointF(0, r));
    } else {
        axis(top, {top.x(), jacket.bottom() + ink.paper(2)});
    }
}

/// It may be anywhere across: two lines at its heights, never left out.
void paintUnknownDepth(Ink& ink, const Area& area)
{
    if (area.outline.empty())
        return;
    const auto [low, high] = std::minmax_element(area.outline.begin(), area.outline.end(),
                                                 [](const Vec2& a, const Vec2& b) { return a.z < b.z; });
    ink.painter.setPen(ink.pen(ink.palette.keep_clear, thin_mm, Qt::DashLine));
    for (const double z : {low->z, high->z}) {
        const QPointF left(ink.visible.left(), -z);
        const QPointF right(ink.visible.right(), -z);
        ink.line(left, right);
        ink.avoid(QPolygonF({left, right}), ink.paper(0.2));
    }
    const QString name = tr("%1: depth not entered").arg(inWords(area.name));
    const double h = ink.paper(ink.style.lettering_mm);
    const double in = ink.paper(3);
    const double middle = -(low->z + high->z) / 2 + h / 2;
    ink.label({{{ink.visible.left() + in, -high->z - ink.paper(1)}},
               {{ink.visible.right() - in, -high->z - ink.paper(1)}, Anchor::right},
               {{ink.visible.left() + in, middle}},
               {{ink.visible.right() - in, middle}, Anchor::right}},
              name, ink.palette.keep_clear);
}

/// The engine's own sides, as somebody sitting behind it has them.
void labelSides(Ink& ink, const Engine& engine)
{
    const QRectF box = pageOf(engineSeen(engine, ink.style.view)).boundingRect();
    if (box.isEmpty())
        return;
    // Looking at the front one has the engine's left at one's right.
    const bool front = endSeen(engine, ink.style.view) == EndSeen::front;
    const QString left = front ? tr("Right side") : tr("Left side");
    const QString right = front ? tr("Left side") : tr("Right side");
    const double h = ink.paper(ink.style.lettering_mm);
    const double gap = ink.paper(2);
    const double beside = ink.paper(1.5);
    const auto both = [&](double y, double out) {
        const Spot one{{box.left() - out, y}, out > 0 ? Anchor::right : Anchor::left};
        const Spot other{{box.right() + out, y}, out > 0 ? Anchor::left : Anchor::right};
        return ink.labelTwo(one, left, other, right, ink.palette.faint);
    };
    // Both at one height, beside the block first, where the eye looks for a side; then under its corners.
    for (const double share : {0.5, 0.4, 0.6, 0.7, 0.3, 0.8, 0.9, 0.2})
        for (const double far : {1.0, 4.0, 8.0})
            if (both(box.top() + share * box.height(), beside * far))
                return;
    for (const double y : {box.bottom() + gap + h, box.bottom() + 2.4 * (gap + h), box.top() - gap})
        if (both(y, beside))
            return;
    const auto put = [&](double x, double out, Anchor outer, const QString& name) {
        std::vector<Spot> spots;
        // Beside the block first, where the eye looks for a side; then under and over its corner.
        for (const double share : {0.5, 0.4, 0.6, 0.7, 0.3, 0.8, 0.9, 0.2})
            for (const double far : {1.0, 4.0, 8.0})
                spots.push_back({{x + out * beside * far, box.top() + share * box.height()}, outer});
        for (const double y : {box.bottom() + gap + h, box.bottom() + 2.4 * (gap + h), box.top() - gap,
                               box.top() - 2 * gap - h})
            spots.push_back({{x + out * beside, y}, outer});
        ink.label(std::move(spots), name, ink.palette.faint);
    };
    put(box.left(), -1, Anchor::right, left);
    put(box.right(), 1, Anchor::left, right);
}

} // namespace siphonwright::drawing
