#include "app/drawing/contents.h"
#include "app/drawing/ink.h"
#include "app/drawing/running_words.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/layout/wording.h"
#include "core/running/loop_figures.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

/// Hoses at their true outside diameter with what sits in and on them.
namespace siphonwright::drawing {

namespace {

/// A place on a hose: where, and which way the coolant runs there.
struct Station {
    QPointF at;
    QPointF along;
    QPointF across;
};

/// Seen end-on a hose runs nowhere on the page: what sits on it is drawn level.
Station station(const Ink& ink, const Route& route, double s)
{
    const QPointF seen = ink.page(route.path.line.tangent(s));
    constexpr double end_on = 1e-3;
    const QPointF along = std::hypot(seen.x(), seen.y()) < end_on ? QPointF(1, 0) : unitOf(seen);
    return {ink.page(route.path.line.at(s)), along, turned(along)};
}

/// How much of a hose's run at s lies along the view: 0 square to it, 1 seen end-on.
double endOn(const Ink& ink, const Route& route, double s)
{
    return std::abs(ink.style.view.depth(route.path.line.tangent(s)));
}

QColor colourOf(const Ink& ink, HoseRole role)
{
    return role == HoseRole::supply ? ink.palette.supply : ink.palette.return_;
}

QColor mixed(const QColor& a, const QColor& b, double share)
{
    return QColor::fromRgbF(float(a.redF() + (b.redF() - a.redF()) * share),
                            float(a.greenF() + (b.greenF() - a.greenF()) * share),
                            float(a.blueF() + (b.blueF() - a.blueF()) * share));
}

/// The bore's colour all along, in pieces short enough to run into each other.
void strokeTinted(Ink& ink, const ResolvedHose& hose, const LoopRun& run, const TemperatureRange& range,
                  double width, double start_mm, double stop_mm)
{
    const std::vector<HoseTemperature> along = temperaturesAlong(run, hose.role());
    if (along.empty())
        return;
    const double length = stop_mm - start_mm;
    const int parts = std::clamp(int(length / ink.paper(4)), 4, 60);
    ink.painter.setBrush(Qt::NoBrush);
    for (int i = 0; i < parts; ++i) {
        const double from = start_mm + length * i / parts;
        const double to = start_mm + length * (i + 1) / parts;
        const double share =
            (temperatureAt(along, (from + to) / 2) - range.low_degC) / (range.high_degC - range.low_degC);
        // A hair longer than its part: no ground shows between two.
        const double past = i + 1 < parts ? length / parts * 0.1 : 0;
        ink.painter.setPen(
            QPen(temperatureColour(ink.palette, share), width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        ink.painter.drawPolyline(trace(hose->path.line, from, to + past, ink.style.view));
    }
}

void stroke(Ink& ink, const QPolygonF& line, double width, const QColor& colour)
{
    if (!(width > 0))
        return;
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    ink.painter.drawPolyline(line);
}

/// What shows at the edges of the next stroke: in dashes where the hose is not there yet.
void strokeEdge(Ink& ink, const QPolygonF& line, double width, const QColor& colour)
{
    if (!ink.ghost)
        return stroke(ink, line, width, colour);
    QPen pen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setDashPattern({ink.paper(ghost_dash_mm) / width, ink.paper(ghost_gap_mm) / width});
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(pen);
    ink.painter.drawPolyline(line);
}

/// A hose's cut end: a line square to it from the side, an ellipse as it turns to the viewer.
void paintCutEnd(Ink& ink, const ResolvedHose& hose, double s, const QColor& colour, const QColor& inside)
{
    const Station cut = station(ink, *hose, s);
    const double half = hose->outsideDiameter() / 2;
    const double flat = half * endOn(ink, *hose, s);
    ink.painter.setPen(ink.pen(colour, medium_mm));
    if (flat < half * 0.05) {
        ink.line(cut.at - cut.across * half, cut.at + cut.across * half);
        return;
    }
    ink.painter.save();
    ink.painter.translate(cut.at);
    ink.painter.rotate(std::atan2(cut.along.y(), cut.along.x()) * 180 / 3.14159265358979323846);
    ink.painter.setBrush(inside);
    ink.painter.drawEllipse(QPointF(), flat, half);
    const double bore = hose->bore_mm / hose->outsideDiameter();
    ink.painter.setPen(ink.pen(colour, hairline_mm));
    ink.painter.drawEllipse(QPointF(), flat * bore, half * bore);
    ink.painter.restore();
}

/// Outside, wall and bore as strokes of their true widths, the lines between them being what is left over,
/// between two places along the path; with its cut ends, if they are in it.
void paintTube(Ink& ink, const ResolvedHose& hose, double from_mm, double to_mm)
{
    const QPolygonF line = ink.shown(trace(hose->path.line, from_mm, to_mm, ink.style.view));
    if (line.size() < 2)
        return;
    const QColor colour = colourOf(ink, hose.role());
    const double outside = hose->outsideDiameter();
    const double edge = std::min(ink.paper(medium_mm), outside / 5);
    const double bore_line = std::min(ink.paper(hairline_mm), hose->hose->wall_mm / 2);
    const bool supply = hose.role() == HoseRole::supply;
    const QColor wall = mixed(ink.palette.ground, colour, ink.style.fills ? 0.32 : 0);
    const QColor bore = mixed(ink.palette.ground, colour, ink.style.fills && supply ? 0.16 : 0.02);
    if (hose->hose->insulation_mm > 0) {
        QPen sleeve = ink.pen(ink.palette.faint, thin_mm, Qt::DashLine);
        for (const double side : {-1.0, 1.0}) {
            QPolygonF edge_line;
            const double off = side * (outside / 2 + hose->hose->insulation_mm);
            for (double s = from_mm; s < to_mm; s += 5) {
                const Station here = station(ink, *hose, s);
                edge_line << here.at + here.across * off;
            }
            ink.painter.setPen(sleeve);
            ink.painter.drawPolyline(ink.shown(edge_line));
        }
    }
    strokeEdge(ink, line, outside, colour);
    stroke(ink, line, outside - 2 * edge, wall);
    stroke(ink, line, hose->bore_mm + 2 * bore_line, colour);
    const LoopRun* run = runOf(ink, hose);
    const std::optional<TemperatureRange> range = run ? temperatureRange(ink) : std::nullopt;
    if (range)
        strokeTinted(ink, hose, *run, *range, outside - 2 * edge, from_mm, to_mm);
    else
        stroke(ink, line, hose->bore_mm, bore);
    if (!supply) {
        ink.painter.setPen(ink.chainPen(colour, thin_mm));
        ink.painter.drawPolyline(line);
    }
    for (const double end : {hose->hose_from_mm, hose->hose_to_mm})
        if (end >= from_mm && end <= to_mm)
            paintCutEnd(ink, hose, end, colour, wall);
}

/// Where hoses cross the farther one is broken, and the nearer goes on over it.
void paintCrossings(Ink& ink)
{
    constexpr double gap_mm = 0.6;
    for (const Crossing& crossing : ink.crossings(ink.paper(gap_mm))) {
        const ResolvedHose& over = ink.analysis.layout.hoses[crossing.near_hose];
        const double width = over->outsideDiameter() + 2 * over->hose->insulation_mm + 2 * ink.paper(gap_mm);
        const QPolygonF line = trace(over->path.line, crossing.from_mm, crossing.to_mm, ink.style.view);
        if (!line.boundingRect().adjusted(-width, -width, width, width).intersects(ink.visible))
            continue;
        stroke(ink, line, width, ink.palette.ground);
        paintTube(ink, over, crossing.from_mm, crossing.to_mm);
    }
}

/// Arrows in the hose's own direction, or as and how much its loop flows where that is computed; in a
/// demonstration as it runs at that moment, moving.
void paintFlow(Ink& ink, const ResolvedHose& hose)
{
    const LoopContents* loop = ink.style.contents ? ink.style.contents->loopOfHose(hose.id()) : nullptr;
    if (ink.style.contents && (!loop || loop->flow == 0))
        return;
    const double drift = loop ? loop->drift : 0;
    const LoopRun* run = ink.style.contents ? nullptr : runOf(ink, hose);
    if (run && run->circulation.flow_kg_per_s == 0)
        return;
    const double length = hose->hose_to_mm - hose->hose_from_mm;
    const double spacing = ink.paper(22);
    const int count = std::clamp(int(length / spacing), 1, 60);
    const double size = run ? arrowSize_mm(flowByVolume_l_per_min(run->circulation))
                            : std::clamp(hose->outsideDiameter() * ink.style.scale * 1.1, 1.8, 3.6);
    const bool backward = (run && run->circulation.flow_kg_per_s < 0) || (loop && loop->flow < 0);
    const double way = backward ? -1 : 1;
    const bool tinted = run && temperatureRange(ink);
    for (int i = 0; i < count; ++i) {
        const double share = (i + 0.5) / count + drift / count;
        const double along = length * (share - std::floor(share));
        const bool hidden =
            std::any_of(hose->hose->parts.begin(), hose->hose->parts.end(), [&](const InlinePart& part) {
                return std::abs(part.along_mm - along) < part.length_mm / 2 + ink.paper(size);
            });
        const Station here = station(ink, *hose, hose->hose_from_mm + along);
        constexpr double square_on = 0.7; // an arrow's length that is left to see
        if (hidden || endOn(ink, *hose, hose->hose_from_mm + along) > square_on)
            continue;
        const QPointF forth = here.along * way;
        if (tinted)
            ink.arrowhead(here.at + forth * ink.paper(size / 2 + 0.8), forth, size + 1.4, ink.palette.ground);
        ink.arrowhead(here.at + forth * ink.paper(size / 2), forth, size,
                      tinted || loop ? ink.palette.ink : colourOf(ink, hose.role()));
    }
}

/// Worm-drive clamps over both hose ends, and the support clips.
void paintClampsAndClips(Ink& ink, const ResolvedHose& hose)
{
    const double half = hose->outsideDiameter() / 2;
    const double band = 9;
    const auto clampAt = [&](double s) {
        const Station here = station(ink, *hose, s);
        const QPointF a = here.along * band / 2;
        const QPointF c = here.across * (half + 1.5);
        ink.painter.setPen(ink.pen(ink.palette.ink, thin_mm));
        ink.painter.setBrush(ink.palette.ground);
        ink.painter.drawPolygon(
            QPolygonF({here.at - a - c, here.at + a - c, here.at + a + c, here.at - a + c}));
    };
    if (hose->from.connected)
        clampAt(hose->hose_from_mm + 13);
    if (hose->to.connected)
        clampAt(hose->hose_to_mm - 13);
    for (const double along : hose->hose->clips_mm) {
        const Station here = station(ink, *hose, hose->hose_from_mm + along);
        clampAt(hose->hose_from_mm + along);
        const double up = here.across.y() > 0 ? -1 : 1;
        const QPointF ear = here.across * up;
        const double r = std::max(5.0, ink.paper(0.6));
        ink.painter.drawEllipse(here.at + ear * (half + 1.5 + r), r, r);
        ink.avoid(QPolygonF({here.at, here.at + ear * (half + 1.5 + 2 * r)}), r);
    }
}

/// Generic shapes after ISO 14617: a valve is two triangles, filled when closed.
void paintValve(Ink& ink, const Station& here, double half_length, double half_width, bool open)
{
    const QPointF a = here.along * half_length;
    const QPointF c = here.across * half_width;
    const QPolygonF bow({here.at - a - c, here.at + a + c, here.at + a - c, here.at - a + c});
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    ink.painter.setBrush(open ? ink.palette.ground : ink.palette.ink);
    ink.painter.drawPolygon(bow);
}

void paintTap(Ink& ink, const Station& here, double half_width, bool up, bool open)
{
    const QPointF out(0, up ? -1 : 1);
    const QPointF foot = here.at + out * half_width;
    const QPointF head = foot + out * std::max(18.0, ink.paper(2.2));
    const double r = std::max(6.0, ink.paper(0.8));
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    ink.line(foot, head);
    ink.painter.setBrush(open ? ink.palette.ground : ink.palette.ink);
    ink.painter.drawEllipse(head, r, r);
    ink.line(head + QPointF(-1.6 * r, 0) + out * r, head + QPointF(1.6 * r, 0) + out * r);
}

void paintCheckValve(Ink& ink, const Station& here, double half_length, double half_width, bool swing)
{
    const QPointF a = here.along * half_length;
    const QPointF c = here.across * half_width;
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    ink.painter.setBrush(ink.palette.ground);
    ink.painter.drawPolygon(QPolygonF({here.at - a - c, here.at + a - c, here.at + a + c, here.at - a + c}));
    if (swing) {
        ink.line(here.at - a + c, here.at + a - c);
        ink.arrowhead(here.at + a - c, a - c, 1.8, ink.palette.ink);
    } else {
        ink.painter.setBrush(ink.palette.ink);
        ink.painter.drawPolygon(
            QPolygonF({here.at - a * 0.6 - c * 0.7, here.at + a * 0.5, here.at - a * 0.6 + c * 0.7}));
        ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
        ink.line(here.at + a * 0.5 - c * 0.8, here.at + a * 0.5 + c * 0.8);
    }
}

void paintReducer(Ink& ink, const ResolvedHose& hose, const Station& here, double half_length,
                  const InlinePart& part)
{
    const double before = hose->outsideDiameter() / 2 + 2;
    const double after = part.bore_mm / 2 + hose->hose->wall_mm + 2;
    const QPointF a = here.along * half_length;
    ink.painter.setPen(ink.pen(ink.palette.ink, edge_mm));
    ink.painter.setBrush(ink.palette.ground);
    ink.painter.drawPolygon(
        QPolygonF({here.at - a - here.across * before, here.at + a - here.across * after,
                   here.at + a + here.across * after, here.at - a + here.across * before}));
}

void paintInlinePart(Ink& ink, const ResolvedHose& hose, const InlinePart& part)
{
    const Station here = station(ink, *hose, hose->hose_from_mm + part.along_mm);
    const double half_length = std::max(part.length_mm / 2, ink.paper(1.6));
    const double half_width = std::max(hose->outsideDiameter() * 0.7, ink.paper(1.2));
    const QPointF reach(half_width + ink.paper(0.5), half_width + ink.paper(0.5));
    ink.reserve(QRectF(here.at - reach, here.at + reach));
    switch (part.kind) {
    case InlineKind::isolation_valve:
        paintValve(ink, here, half_length, half_width, part.open);
        break;
    case InlineKind::bleed:
        paintTap(ink, here, hose->outsideDiameter() / 2, true, part.open);
        break;
    case InlineKind::drain:
        paintTap(ink, here, hose->outsideDiameter() / 2, false, part.open);
        break;
    case InlineKind::lift_check_valve:
        paintCheckValve(ink, here, half_length, half_width, false);
        break;
    case InlineKind::swing_check_valve:
        paintCheckValve(ink, here, half_length, half_width, true);
        break;
    case InlineKind::reducer:
        paintReducer(ink, hose, here, half_length, part);
        break;
    }
}

/// "Supply 19 mm"; of several of a role each by its own name.
QString sizeText(const Ink& ink, const ResolvedHose& hose)
{
    const QString bore = inWords(hose->bore_mm, Unit::mm, ink.style.units);
    const auto& hoses = ink.analysis.layout.hoses;
    const auto of_role = std::count_if(
        hoses.begin(), hoses.end(), [&](const ResolvedHose& other) { return other.role() == hose.role(); });
    if (of_role > 1)
        return QStringLiteral("%1 %2").arg(inWords(nameOfHose(*hose->hose)), bore);
    return hose.role() == HoseRole::supply ? tr("Supply %1").arg(bore) : tr("Return %1").arg(bore);
}

/// Does a hose lie over or close by a place of a view?
bool liesAt(const Ink& ink, const ResolvedHose& hose, QPointF at)
{
    const double half = hose->outsideDiameter() / 2 + hose->hose->insulation_mm + ink.paper(1);
    const auto& [line, box] = ink.seenLine(hose);
    if (!box.adjusted(-half, -half, half, half).contains(at))
        return false;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const double length2 = QPointF::dotProduct(way, way);
        const double along =
            length2 > 0 ? std::clamp(QPointF::dotProduct(at - line[i], way) / length2, 0.0, 1.0) : 0;
        if (const QPointF off = at - line[i] - way * along; std::hypot(off.x(), off.y()) < half)
            return true;
    }
    return false;
}

/// Does nothing sit on a hose at a place of its path, and nothing lie there? A leader line then names the
/// hose and nothing else.
bool isBare(const Ink& ink, const ResolvedHose& hose, double s)
{
    const double apart = ink.paper(1.5);
    const double along = s - hose->hose_from_mm;
    const QPointF at = ink.page(hose->path.line.at(s));
    const QPointF reach(apart / 2, apart / 2);
    return std::none_of(hose->hose->clips_mm.begin(), hose->hose->clips_mm.end(),
                        [&](double clip) { return std::abs(clip - along) < apart; }) &&
           std::none_of(hose->hose->parts.begin(), hose->hose->parts.end(),
                        [&](const InlinePart& part) {
                            return std::abs(part.along_mm - along) < part.length_mm / 2 + 2 * apart;
                        }) &&
           ink.isFree(QRectF(at - reach, at + reach), false);
}

/// Where a leader line to a hose ends: on a page, where no other hose lies, if there is such a place.
struct HosePlace {
    double s = 0; ///< mm along the path
    bool alone = false;
};

HosePlace placeToLeadTo(const Ink& ink, const ResolvedHose& hose, const std::vector<std::size_t>& straights)
{
    const std::vector<Piece>& pieces = hose->path.line.pieces();
    const auto alone = [&](double s) { return !othersAt(ink, hose, ink.page(hose->path.line.at(s))); };
    std::optional<double> bare;
    for (const std::size_t straight : straights)
        for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
            const double s = pieces[straight].s + share * pieces[straight].length_mm;
            if (!isBare(ink, hose, s))
                continue;
            if (!ink.style.page || alone(s))
                return {s, true};
            bare = bare.value_or(s);
        }
    constexpr int places = 60; // bends too
    const double length = hose->hose_to_mm - hose->hose_from_mm;
    for (int i = 1; ink.style.page && i < places; ++i)
        if (const double s = hose->hose_from_mm + i * length / places; isBare(ink, hose, s) && alone(s))
            return {s, true};
    return {bare.value_or(pieces[straights.front()].s + pieces[straights.front()].length_mm / 2), false};
}

/// The hose that lies over a place of another; null: none is nearer.
const ResolvedHose* inFrontOf(const Ink& ink, const ResolvedHose& hose, QPointF at)
{
    const std::vector<ResolvedHose>& all = ink.analysis.layout.hoses;
    const std::vector<std::size_t> order = farToNear(ink.analysis.layout, ink.style.view, {});
    for (auto i = order.rbegin(); i != order.rend() && &all[*i] != &hose; ++i)
        if (liesAt(ink, all[*i], at))
            return &all[*i];
    return nullptr;
}

/// Along the longest straights first, on either side.
void labelSize(Ink& ink, const ResolvedHose& hose)
{
    const QString text = sizeText(ink, hose);
    struct Straight {
        double seen = 0;
        std::size_t piece = 0;
    };
    const std::vector<Piece>& pieces = hose->path.line.pieces();
    std::vector<Straight> straights;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const QPointF u = ink.page(pieces[i].u);
        if (pieces[i].radius_mm <= 0 && pieces[i].s + pieces[i].length_mm / 2 > hose->hose_from_mm)
            straights.push_back({std::hypot(u.x(), u.y()) * pieces[i].length_mm, i});
    }
    constexpr std::size_t most = 40; // shorter ones hardly have more room
    const auto end = straights.begin() + static_cast<std::ptrdiff_t>(std::min(straights.size(), most));
    std::partial_sort(straights.begin(), end, straights.end(), [](const Straight& a, const Straight& b) {
        return a.seen > b.seen || (a.seen == b.seen && a.piece < b.piece);
    });
    straights.erase(end, straights.end());
    std::vector<Spot> spots;
    const double half = hose->outsideDiameter() / 2 + hose->hose->insulation_mm;
    for (const Straight& straight : straights) {
        const Piece& piece = pieces[straight.piece];
        for (const double share : {0.5, 0.3, 0.7}) {
            const Station here = station(ink, *hose, piece.s + piece.length_mm * share);
            const double angle = readableAngle(here.along);
            const double rad = angle * 3.14159265358979323846 / 180;
            const QPointF down(-std::sin(rad), std::cos(rad));
            spots.push_back({here.at - down * (half + ink.paper(1.2)), Anchor::centre, angle});
            spots.push_back(
                {here.at + down * (half + ink.paper(1 + ink.style.lettering_mm)), Anchor::centre, angle});
        }
    }
    std::optional<Led> led;
    if (!straights.empty()) {
        std::vector<std::size_t> longest;
        for (const Straight& straight : straights)
            longest.push_back(straight.piece);
        const HosePlace place = placeToLeadTo(ink, hose, longest);
        const QPointF at = ink.page(hose->path.line.at(place.s));
        led = Led{at, half + ink.paper(ink.style.page ? 1.8 : 3.5), true};
        led->hose = &hose;
        const ResolvedHose* front = ink.style.page && !place.alone ? inFrontOf(ink, hose, at) : nullptr;
        if (front) { // whatever stood or ended there would name that one
            led->hidden = true;
            led->where = tr("behind %1").arg(inWords(nameOfHose(*(*front)->hose)));
        }
    }
    ink.label(std::move(spots), ink.numbered(text, refOf(*hose->hose)), colourOf(ink, hose.role()), led);
}

/// Straight by straight, so that a hose that crosses itself does not count as open there.
void coverWith(Ink& ink, const ResolvedHose& hose)
{
    const double half = hose->outsideDiameter() / 2 + hose->hose->insulation_mm;
    const QPolygonF& line = ink.seenLine(hose).line;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF across = turned(unitOf(line[i + 1] - line[i])) * half;
        ink.cover(
            QPolygonF({line[i] + across, line[i + 1] + across, line[i + 1] - across, line[i] - across}));
    }
}

} // namespace

bool othersAt(const Ink& ink, const ResolvedHose& hose, QPointF at)
{
    const std::vector<ResolvedHose>& all = ink.analysis.layout.hoses;
    return std::any_of(all.begin(), all.end(),
                       [&](const ResolvedHose& other) { return &other != &hose && liesAt(ink, other, at); });
}

void paintHoses(Ink& ink)
{
    const std::vector<ResolvedHose>& hoses = ink.analysis.layout.hoses;
    for (const std::size_t i : farToNear(ink.analysis.layout, ink.style.view, ink.left_out)) {
        paintTube(ink, hoses[i], hoses[i]->hose_from_mm, hoses[i]->hose_to_mm);
        if (ink.style.page)
            coverWith(ink, hoses[i]);
    }
    paintCrossings(ink);
    for (const ResolvedHose& hose : hoses) {
        if (hose->path.line.empty() || !ink.draws(hose))
            continue;
        ink.avoid(ink.shown(trace(hose->path.line, 0, hose->path.line.length(), ink.style.view)),
                  hose->outsideDiameter() / 2 + hose->hose->insulation_mm);
        labelSize(ink, hose);
    }
}

void paintHoseParts(Ink& ink)
{
    for (const ResolvedHose& hose : ink.analysis.layout.hoses) {
        if (hose->path.line.empty() || !ink.draws(hose))
            continue;
        paintFlow(ink, hose);
        paintClampsAndClips(ink, hose);
        for (std::size_t i = 0; i < hose->hose->parts.size(); ++i) {
            paintInlinePart(ink, hose, hose->hose->parts[i]);
            labelInlinePart(ink, hose, i);
        }
    }
}

} // namespace siphonwright::drawing
