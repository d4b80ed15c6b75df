#include "app/drawing/ink.h"
#include "app/drawing/running_words.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"

#include <QLineF>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

/// How the loops run: a few lines beside each heater.
namespace siphonwright::drawing {

namespace {

constexpr double inset_mm = 1;
constexpr double line_heights = 1.5; ///< of the capitals

QSizeF sizeOf(const Ink& ink, const QStringList& lines)
{
    double width_mm = 0;
    for (const QString& line : lines)
        width_mm = std::max(width_mm, textWidth(line, ink.style.lettering_mm));
    return {ink.paper(width_mm + 2 * inset_mm),
            ink.paper(line_heights * ink.style.lettering_mm * double(lines.size()) + 2 * inset_mm)};
}

QString shortName(const Heater& heater)
{
    constexpr qsizetype longest = 26;
    const QString name = inWords(heater.name);
    return name.size() <= longest ? name : name.left(longest - 1).trimmed() + QStringLiteral("…");
}

struct Place {
    QRectF at;
    double gap_mm = 0; ///< from the heater
};

/// Places round a heater, the nearest first; those right under it are left to its name.
std::vector<Place> placesAround(const Ink& ink, const QRectF& body, const QSizeF& size)
{
    std::vector<Place> places;
    const double name = ink.paper(2 * ink.style.lettering_mm + 2);
    for (const double gap_mm : {2.5, 7.0, 13.0, 20.0, 30.0, 42.0, 60.0, 80.0}) {
        const double gap = ink.paper(gap_mm);
        const auto add = [&](double left, double top) {
            places.push_back({QRectF(QPointF(left, top), size), gap_mm});
        };
        const double middle = body.center().y() - size.height() / 2;
        for (const double top :
             {middle, body.top(), body.bottom() - size.height(), body.top() - size.height(), body.bottom()}) {
            add(body.right() + gap, top);
            add(body.left() - gap - size.width(), top);
        }
        for (const double left :
             {body.center().x() - size.width() / 2, body.left(), body.right() - size.width()}) {
            add(left, body.bottom() + std::max(gap, name));
            add(left, body.top() - gap - size.height());
        }
    }
    return places;
}

/// From the block's nearest edge to the heater.
QLineF leaderOf(const QRectF& block, const QRectF& body)
{
    const QPointF from(std::clamp(body.center().x(), block.left(), block.right()),
                       std::clamp(body.center().y(), block.top(), block.bottom()));
    return {from, QPointF(std::clamp(from.x(), body.left(), body.right()),
                          std::clamp(from.y(), body.top(), body.bottom()))};
}

bool crosses(const QLineF& line, const QRectF& block)
{
    const std::array sides{
        QLineF(block.topLeft(), block.topRight()), QLineF(block.topRight(), block.bottomRight()),
        QLineF(block.bottomRight(), block.bottomLeft()), QLineF(block.bottomLeft(), block.topLeft())};
    return block.contains(line.p1()) || std::any_of(sides.begin(), sides.end(), [&](const QLineF& side) {
               return line.intersects(side, nullptr) == QLineF::BoundedIntersection;
           });
}

/// The same in fewer lines, for where the room is broad and low. \param named  the first is the heater's name
QStringList pairsOf(const QStringList& lines, bool named)
{
    QStringList pairs = lines.mid(0, named ? 1 : 0);
    for (qsizetype i = pairs.size(); i < lines.size(); i += 2)
        pairs << lines.mid(i, 2).join(QStringLiteral(", "));
    return pairs;
}

/// The one that hides least, a near one before a far one: hiding a thin line across the block weighs about
/// as much as 20 mm farther away, a hose far more. Its leader runs through none of the blocks written before.
/// \param least  what the best so far costs
std::optional<QRectF> placeFor(const Ink& ink, const QRectF& body, const QSizeF& size,
                               const std::vector<QRectF>& written, double& least)
{
    const double mm2_per_mm = ink.style.page ? 0.15 : 0.5; // on paper lines must not have gaps
    std::optional<QRectF> best;
    for (const Place& place : placesAround(ink, body, size)) {
        const QLineF leader = leaderOf(place.at, body);
        if (!ink.isFree(place.at, false) ||
            std::any_of(written.begin(), written.end(),
                        [&](const QRectF& block) { return crosses(leader, block); }))
            continue;
        const double cost = ink.covered_mm2(place.at) + mm2_per_mm * place.gap_mm;
        if (cost < least) {
            least = cost;
            best = place.at;
        }
    }
    return best;
}

/// A line from the block to the heater, where they stand apart.
void lead(Ink& ink, const QLineF& leader)
{
    if (leader.length() < ink.paper(1))
        return;
    ink.painter.setPen(ink.pen(ink.palette.faint, thin_mm));
    ink.line(leader.p1(), leader.p2());
    ink.keepLeader(leader.p1(), leader.p2());
    // No name is written across it.
    const int steps = std::max(1, int(leader.length() / ink.paper(1.5)));
    for (int i = 0; i < steps; ++i)
        ink.reserve(QRectF(leader.pointAt(double(i) / steps), leader.pointAt(double(i + 1) / steps))
                        .normalized()
                        .adjusted(-ink.paper(0.3), -ink.paper(0.3), ink.paper(0.3), ink.paper(0.3)));
}

void write(Ink& ink, const QRectF& block, const QStringList& lines, const QColor& first)
{
    QColor ground = ink.palette.ground;
    if (!ink.style.page)
        ground.setAlphaF(0.9F);
    ink.painter.setPen(ink.pen(ink.palette.faint, thin_mm));
    ink.painter.setBrush(ground);
    ink.painter.drawRect(block);
    double baseline = block.top() + ink.paper(inset_mm + 1.2 * ink.style.lettering_mm);
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QPointF at(block.left() + ink.paper(inset_mm), baseline);
        paintText(ink.painter, ink.style, at, lines[i], Anchor::left, i == 0 ? first : ink.palette.text);
        baseline += ink.paper(line_heights * ink.style.lettering_mm);
    }
    ink.reserveText(block);
}

} // namespace

const LoopRun* runOf(const Ink& ink, const ResolvedHose& hose)
{
    if (!ink.style.running && !ink.style.tint)
        return nullptr;
    for (const HoseEnd* end : {&hose->hose->from, &hose->hose->to}) {
        const LoopRun* run = end->heater.empty() ? nullptr : ink.analysis.running.loopOf(end->heater);
        if (run && run->missing.empty())
            return run;
    }
    return nullptr;
}

void paintRunningFigures(Ink& ink)
{
    if (!ink.style.running || !ink.style.labels)
        return;
    std::vector<QRectF> written;
    for (const Heater& heater : ink.sketch.heaters) {
        const LoopRun* run = ink.analysis.running.loopOf(heater.id);
        QStringList lines =
            run ? runningLines(*run, ink.analysis.running.block_degC, ink.style.units) : QStringList();
        if (lines.isEmpty())
            continue;
        if (ink.sketch.heaters.size() > 1) // which one it is of must not hang on a thin line
            lines.prepend(shortName(heater));
        const QRectF body = heaterBody(heater, ink.style.view).boundingRect();
        double least = std::numeric_limits<double>::infinity();
        std::optional<QRectF> place = placeFor(ink, body, sizeOf(ink, lines), written, least);
        if (ink.style.page) {
            const QStringList pairs = pairsOf(lines, ink.sketch.heaters.size() > 1);
            least -= 1; // the usual form where it makes no odds
            if (const auto broad = placeFor(ink, body, sizeOf(ink, pairs), written, least)) {
                place = broad;
                lines = pairs;
            }
        }
        if (!place)
            continue;
        const bool sound = run->circulation.status == CirculationStatus::circulates;
        lead(ink, leaderOf(*place, body));
        write(ink, *place, lines, sound ? ink.palette.text : ink.palette.stop);
        written.push_back(*place);
    }
}

} // namespace siphonwright::drawing
