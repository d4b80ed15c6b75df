#include "app/drawing/ink.h"

#include "app/drawing/text.h"
#include "app/drawing/thin_line.h"

#include <QTransform>

#include <algorithm>
#include <cmath>

namespace siphonwright::drawing {

namespace {

/// A device without a size (a recording) shows everything; so does a view that cannot be inverted.
QRectF visibleArea(const QPainter& painter, const Sketch& sketch, const Analysis& analysis,
                   const Projection& view)
{
    if (painter.hasClipping())
        return painter.clipBoundingRect();
    bool invertible = false;
    const QTransform back = painter.combinedTransform().inverted(&invertible);
    const QRectF seen = back.mapRect(QRectF(painter.viewport()));
    return invertible && !seen.isEmpty() ? seen : boundsOf(sketch, analysis, view);
}

/// A line with more points than people put into one.
constexpr qsizetype many_points = 200;

double pixelOf(const QPainter& painter)
{
    const double scale = std::sqrt(std::abs(painter.combinedTransform().determinant()));
    return scale > 0 ? 1 / scale : 0;
}

} // namespace

Ink::Ink(QPainter& to, const Sketch& what, const Analysis& judged, const Style& how)
    : painter(to),
      sketch(what),
      analysis(judged),
      style(how),
      palette(how.palette),
      visible(how.page ? how.page->visible : visibleArea(to, what, judged, how.view)),
      pixel(pixelOf(to)),
      room_{LineField(paper(12)), LineField(paper(12)), LineField(paper(8)), {}}
{}

bool Ink::draws(const ResolvedHose& hose) const
{
    return left_out.empty() || !left_out[static_cast<std::size_t>(&hose - analysis.layout.hoses.data())];
}

std::vector<Crossing> Ink::crossings(double gap_mm) const
{
    const auto wanted = [this](std::size_t i, std::size_t k) {
        const bool one = draws(analysis.layout.hoses[i]);
        const bool other = draws(analysis.layout.hoses[k]);
        return over_picture_ ? one || other : one && other;
    };
    SeenRuns own;
    return crossingsOf(analysis.layout, style.view, gap_mm, runs ? *runs : own, wanted);
}

QPolygonF Ink::shown(const QPolygonF& line) const
{
    // Points of a line as people draw it all stay.
    constexpr double unseen_mm = 0.03;
    return line.size() > many_points ? thinned(line, std::min(pixel / 4, paper(unseen_mm))) : line;
}

QPen Ink::pen(const QColor& colour, double width_mm, Qt::PenStyle line) const
{
    QPen out(colour, paper(width_mm), line, Qt::FlatCap, Qt::RoundJoin);
    if (ghost && line == Qt::SolidLine)
        out.setDashPattern({ghost_dash_mm / width_mm, ghost_gap_mm / width_mm});
    return out;
}

QPen Ink::chainPen(const QColor& colour, double width_mm) const
{
    // Dash lengths count in pen widths; 5 mm, gap, dot, gap whatever the width.
    QPen chain = pen(colour, width_mm);
    chain.setDashPattern({5 / width_mm, 0.9 / width_mm, 0.5 / width_mm, 0.9 / width_mm});
    return chain;
}

QBrush Ink::fill(const QColor& colour) const
{
    if (!style.fills)
        return Qt::NoBrush;
    constexpr float tint = 0.25F;
    QColor laid = colour;
    if (style.photo)
        laid.setAlphaF(laid.alphaF() * tint);
    return laid;
}

void Ink::arrowhead(QPointF tip, QPointF direction, double length_mm, const QColor& colour) const
{
    const QPointF d = unitOf(direction) * paper(length_mm);
    const QPointF side = turned(d) * 0.36;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF({tip, tip - d + side, tip - d * 0.8, tip - d - side}));
}

void Ink::hatch(const QPolygonF& area, double spacing_mm, double angle_deg, const QPen& with) const
{
    QTransform turn;
    turn.rotate(-angle_deg);
    const QTransform back = turn.inverted();
    const QPolygonF flat = turn.map(area);
    const QRectF box = flat.boundingRect();
    // A hatch finer than the eye is only slow.
    const double step = std::max(paper(spacing_mm), box.height() / 400);
    if (!(step > 0))
        return;
    painter.setPen(with);
    for (double y = std::ceil(box.top() / step) * step; y < box.bottom(); y += step) {
        std::vector<double> cuts;
        for (qsizetype i = 0; i < flat.size(); ++i) {
            const QPointF a = flat[i];
            const QPointF b = flat[(i + 1) % flat.size()];
            if ((a.y() <= y) != (b.y() <= y))
                cuts.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
        std::sort(cuts.begin(), cuts.end());
        // A line without length, in a corner, would be an empty path in a PDF, at which readers complain.
        for (std::size_t i = 0; i + 1 < cuts.size(); i += 2)
            if (cuts[i + 1] - cuts[i] > step / 100)
                painter.drawLine(back.map(QPointF(cuts[i], y)), back.map(QPointF(cuts[i + 1], y)));
    }
}

const Ink::SeenLine& Ink::seenLine(const ResolvedHose& hose) const
{
    const std::vector<ResolvedHose>& all = analysis.layout.hoses;
    seen_lines_.resize(all.size());
    SeenLine& seen = seen_lines_[std::size_t(&hose - all.data())];
    if (seen.line.isEmpty()) {
        seen.line = trace(hose->path.line, 0, hose->path.line.length(), style.view);
        seen.box = seen.line.boundingRect();
    }
    return seen;
}

void Ink::reserve(const QRectF& area)
{
    room_.taken.add(area);
}

void Ink::reserveText(const QRectF& area)
{
    reserve(area);
    room_.texts.add(area);
}

void Ink::reserveLine(const QPolygonF& line)
{
    for (const QRectF& piece : piecesOf(line, paper(0.25)))
        room_.taken.add(piece);
}

void Ink::keepLeader(QPointF from, QPointF dot)
{
    if (!style.page)
        return;
    leaders_.emplace_back(from, dot);
    dots_.push_back(dot);
}

void Ink::groundOf(const QPolygonF& area, const QColor& colour, bool hatched)
{
    room_.grounds.push_back({area, colour, hatched});
}

void Ink::label(std::vector<Spot> spots, const QString& text, const QColor& colour,
                const std::optional<Led>& led)
{
    waiting_.push_back(Waiting{std::move(spots), text, colour, led});
}

void Ink::labelFirst(std::vector<Spot> spots, const QString& text, const QColor& colour,
                     const std::optional<Led>& led)
{
    waiting_.insert(waiting_.begin(), Waiting{std::move(spots), text, colour, led, true});
}

std::vector<QRectF> Ink::piecesOf(const QPolygonF& line, double half_width) const
{
    std::vector<QRectF> pieces;
    const double step = std::max(paper(2.5), 2 * half_width);
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const bool square = std::abs(way.x()) < 1e-6 || std::abs(way.y()) < 1e-6;
        const double far = std::hypot(way.x(), way.y());
        const int parts = square ? 1 : std::clamp(int(std::ceil(far / step)), 1, 500);
        for (int k = 0; k < parts; ++k) {
            const QRectF piece(line[i] + way * k / parts, line[i] + way * (k + 1) / parts);
            pieces.push_back(piece.normalized().adjusted(-half_width, -half_width, half_width, half_width));
        }
    }
    return pieces;
}

void Ink::avoid(const QPolygonF& line, double half_width)
{
    const bool broad = half_width > paper(0.3);
    // Of a very long line only what is in sight is kept: nothing is written elsewhere.
    const bool long_line = line.size() > many_points;
    for (const QRectF& piece : piecesOf(line, half_width))
        if (!long_line || piece.intersects(visible))
            room_.lines.add(piece, broad);
}

void Ink::avoidAcross(const QPolygonF& line)
{
    avoid(line, paper(0.2));
    if (style.page)
        for (const QRectF& piece : piecesOf(line, paper(0.2)))
            across_.add(piece);
}

void Ink::avoidOutline(QPolygonF outline)
{
    if (outline.isEmpty())
        return;
    outline << outline.first();
    for (const QRectF& piece : piecesOf(outline, paper(0.28)))
        room_.lines.add(piece, style.page != nullptr);
}

bool Ink::hits(LineField Room::*field, const QRectF& area) const
{
    return (room_.*field).hits(area) || (under_ && ((*under_).*field).hits(area));
}

bool Ink::isFree(const QRectF& area, bool of_lines) const
{
    return visible.contains(area) && !hits(&Room::taken, area) && !(of_lines && hits(&Room::lines, area));
}

double Ink::covered_mm2(const QRectF& area) const
{
    const double covered = room_.lines.covered(area) + (under_ ? under_->lines.covered(area) : 0);
    return covered * style.scale * style.scale;
}

bool Ink::Room::same(const Room& other) const
{
    const auto same_ground = [](const Ground& a, const Ground& b) {
        return a.area == b.area && a.colour == b.colour && a.hatched == b.hatched;
    };
    return taken.areas() == other.taken.areas() && texts.areas() == other.texts.areas() &&
           lines.areas() == other.lines.areas() &&
           std::equal(grounds.begin(), grounds.end(), other.grounds.begin(), other.grounds.end(),
                      same_ground);
}

void Ink::standOver(std::shared_ptr<const Room> room)
{
    over_picture_ = true;
    keepOff(std::move(room));
}

/// A leader line from the text's nearest edge, ending with a dot in what it is of (ISO 128).
void Ink::leadTo(QPointF from, QPointF to, const QColor& colour) const
{
    constexpr double dot_mm = 0.45;
    painter.setPen(pen(colour, thin_mm));
    line(from, to);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(to, paper(dot_mm), paper(dot_mm));
}

QRectF Ink::boxOf(const Spot& spot, const QString& text) const
{
    const double h = paper(style.lettering_mm);
    const double w = paper(textWidth(text, style.lettering_mm));
    const double left = spot.anchor == Anchor::left ? 0 : spot.anchor == Anchor::centre ? -w / 2 : -w;
    QTransform place;
    place.translate(spot.at.x(), spot.at.y());
    place.rotate(spot.angle_deg);
    return place.mapRect(QRectF(left, -1.12 * h, w, 1.4 * h));
}

bool Ink::labelTwo(const Spot& spot, const QString& text, const Spot& other, const QString& other_text,
                   const QColor& colour)
{
    if (!style.labels)
        return false;
    const QRectF box = boxOf(spot, text);
    const QRectF other_box = boxOf(other, other_text);
    for (const QRectF& one : {box, other_box})
        if (!isFree(one, true) || onHatching(one))
            return false;
    return !box.intersects(other_box) && labelNow({spot}, text, colour) &&
           labelNow({other}, other_text, colour);
}

bool Ink::labelNow(const std::vector<Spot>& spots, const QString& text, const QColor& colour)
{
    if (!style.labels || text.isEmpty())
        return false;
    for (const bool over_lines : {false, true}) {
        for (const Spot& spot : spots) {
            const QRectF box = boxOf(spot, text);
            if (!isFree(box, !over_lines))
                continue;
            reserveText(box);
            write(spot, text, colour, over_lines || onHatching(box));
            return true;
        }
    }
    return false;
}

QPointF unitOf(QPointF a)
{
    const double n = std::hypot(a.x(), a.y());
    return n > 0 ? a / n : QPointF();
}

double readableAngle(QPointF direction)
{
    const double angle = std::atan2(direction.y(), direction.x()) * 180 / 3.14159265358979323846;
    return angle > 90 - 1e-6 ? angle - 180 : angle < -90 - 1e-6 ? angle + 180 : angle;
}

QPointF onLevel(const Plumb& plumb, double height_mm, double x, const Projection& view)
{
    const Vec2 up = view.flat(plumb.up());
    return toPage(Vec2{x, (height_mm - up.x * x) / up.z});
}

QPolygonF trace(const Centreline& line, double from_mm, double to_mm, const Projection& view)
{
    constexpr double step_rad = 0.06;
    QPolygonF points;
    if (line.empty() || !(to_mm > from_mm))
        return points;
    points << toPage(line.at(from_mm), view);
    for (std::size_t k = line.pieceAt(from_mm); k < line.pieces().size(); ++k) {
        const Piece& piece = line.pieces()[k];
        if (piece.s >= to_mm)
            break;
        const double first = std::max(from_mm, piece.s);
        const double last = std::min(to_mm, piece.s + piece.length_mm);
        if (!(last > first))
            continue;
        const double turn = piece.radius_mm > 0 ? (last - first) / piece.radius_mm : 0;
        const int parts = std::max(1, int(std::ceil(turn / step_rad)));
        for (int i = 1; i <= parts; ++i)
            points << toPage(piece.at(first - piece.s + (last - first) * i / parts), view);
    }
    return points;
}

} // namespace siphonwright::drawing
