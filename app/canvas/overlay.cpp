#include "app/canvas/overlay.h"

#include "app/canvas/dimension_ends.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/plane.h"
#include "app/drawing/thin_line.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace siphonwright::overlay {
namespace {

QPen pen(const QColor& colour, double width, Qt::PenStyle line = Qt::SolidLine)
{
    return {colour, width, line, Qt::RoundCap, Qt::RoundJoin};
}

QPolygonF polygonOf(const Viewport& viewport, const std::vector<Vec2>& outline)
{
    QPolygonF out;
    for (const Vec2& corner : outline)
        out.append(viewport.toScreen(corner));
    return out;
}

constexpr double unseen_px = 0.2;

/// Corner of a box beside a place: within the area, where it hides least of the hoses.
QPointF clearestCorner(const Canvas& canvas, QPointF beside, QSizeF size)
{
    constexpr double away = 18;
    const QRectF& area = canvas.area;
    const double right = beside.x() + away;
    const double left = beside.x() - away - size.width();
    const double under = beside.y() + away;
    const double over = beside.y() - away - size.height();
    const QRectF corners(QPointF(left, over), QPointF(right + size.width(), under + size.height()));
    const std::vector<QPointF> on_hoses =
        canvas.hose_places.within(corners & area, canvas.layout(), canvas.viewport);
    QPointF best;
    double least_px = HUGE_VAL;
    for (const QPointF corner :
         {QPointF(right, over), QPointF(right, under), QPointF(left, under), QPointF(left, over)}) {
        const QPointF inside(
            std::clamp(corner.x(), area.left(), std::max(area.left(), area.right() - size.width())),
            std::clamp(corner.y(), area.top(), std::max(area.top(), area.bottom() - size.height())));
        // Being pushed back from the edge of the area would bring the box over the pointer.
        double hidden_px = 10 * distanceBetween(corner, inside);
        for (const QPointF& place : on_hoses)
            if (QRectF(inside, size).contains(place))
                hidden_px += HosePlaces::step_px;
        if (hidden_px < least_px) {
            best = inside;
            least_px = hidden_px;
        }
    }
    return best;
}

/// A line without the points that nobody can see, if it has very many; those left hardly turn.
void paintLine(QPainter& painter, const QPolygonF& line)
{
    constexpr qsizetype many = 2000;
    if (line.size() <= many) {
        painter.drawPolyline(line);
        return;
    }
    QPen flat = painter.pen();
    flat.setJoinStyle(Qt::BevelJoin);
    painter.setPen(flat);
    painter.drawPolyline(drawing::thinned(line, unseen_px));
}

/// Handles that stand over each other hide the hose: of very many, some of those are left out.
class Spacing {
public:
    explicit Spacing(std::size_t handles) : crowded_(handles > 200) {}

    bool crowded() const { return crowded_; }

    bool hasRoom(QPointF at)
    {
        constexpr double apart_px = 12;
        if (crowded_ && distanceBetween(last_, at) < apart_px)
            return false;
        last_ = at;
        return true;
    }

private:
    bool crowded_;
    QPointF last_{-1e9, -1e9}; ///< off the widget
};

constexpr double handle_half_px = 5;
constexpr double handle_line_px = 1.4;

/// A square handle that is neither selected nor pointed at, as two areas: of a hundred, outlines drawn by a
/// pen take as long as the rest of a frame.
void paintPlainSquare(QPainter& painter, const Canvas& canvas, const Handle& handle)
{
    const QPointF at = canvas.viewport.toScreen(handle.at);
    const auto square = [&](double half) {
        return QRectF(at - QPointF(half, half), QSizeF(2 * half, 2 * half));
    };
    painter.fillRect(square(handle_half_px + handle_line_px / 2), canvas.palette.accent);
    painter.fillRect(square(handle_half_px - handle_line_px / 2), canvas.palette.ground);
}

/// The straights that a selected hose is drawn through: they tie each handle to its bend.
void paintStraights(QPainter& painter, const Canvas& canvas, const ResolvedHose& hose)
{
    QPolygonF line = {canvas.viewport.toScreen(hose->from.stop)};
    for (const RoutePoint& point : hose->hose->points)
        line.append(canvas.viewport.toScreen(point.at));
    line.append(canvas.viewport.toScreen(hose->to.stop));
    QColor thin = canvas.palette.accent;
    thin.setAlphaF(0.55F);
    painter.setPen(pen(thin, 1, Qt::DotLine));
    paintLine(painter, line);
}

/// The contour of a part: what shows that it is selected or pointed at.
void paintContour(QPainter& painter, const Canvas& canvas, const PartRef& part, const QColor& colour,
                  double width)
{
    const Sketch& sketch = canvas.sketch();
    painter.setPen(pen(colour, width));
    painter.setBrush(Qt::NoBrush);
    const PartRef owner = ownerOf(part);
    if (const ResolvedHose* hose = owner.kind == PartKind::hose ? canvas.layout().hose(owner.id) : nullptr) {
        paintLine(painter, traceOf(canvas.viewport, (*hose)->path.line));
    } else if (const std::vector<Vec2> outline = outlineSeen(canvas, part); !outline.empty()) {
        painter.drawPolygon(polygonOf(canvas.viewport, outline));
    } else if (const Heater* heater = part.kind == PartKind::heater ? sketch.heater(part.id) : nullptr) {
        painter.drawPolygon(polygonOf(canvas.viewport, bodyOf(*heater, canvas.view())));
    } else if (part.kind == PartKind::tank && sketch.tank) {
        painter.drawPolygon(polygonOf(canvas.viewport, bodyOf(*sketch.tank, canvas.view())));
    } else if (part.kind == PartKind::photo && !canvas.view().isEnd()) {
        painter.drawPolygon(polygonOf(canvas.viewport, photoFrame(canvas)));
    } else if (part.kind == PartKind::ground && sketch.ground_z_mm) {
        const double y = canvas.viewport.toScreen(Vec2{0, *sketch.ground_z_mm}).y();
        painter.drawLine(QPointF(canvas.area.left(), y), QPointF(canvas.area.right(), y));
    } else if (part.kind == PartKind::dimension && !canvas.view().isEnd()) {
        paintDimensionContour(painter, canvas, part.id, colour, width);
    } else if (part.kind == PartKind::port) {
        HoseEnd end;
        end.port = part.id;
        if (const auto place = attachment(sketch, end))
            painter.drawLine(canvas.viewport.toScreen(place->opening),
                             canvas.viewport.toScreen(place->stub.back().at));
    }
}

/// What a guide leads to, beside the line and away from the pointer.
void paintGuideWord(QPainter& painter, const Canvas& canvas, const Guide& guide, double lift)
{
    if (guide.word.isEmpty())
        return;
    constexpr double back_px = 70;
    constexpr double pad = 3;
    const QPointF from = canvas.viewport.toScreen(guide.from);
    const QPointF to = canvas.viewport.toScreen(guide.to);
    const double px = distanceBetween(from, to);
    const QPointF on = px > 0 ? to + (from - to) * (std::min(back_px, px) / px) : to;
    const QFontMetricsF metrics(painter.font());
    QRectF box(0, 0, metrics.horizontalAdvance(guide.word) + 2 * pad, metrics.height());
    box.moveCenter(on - QPointF(0, lift));
    box.moveLeft(std::clamp(box.left(), canvas.area.left(),
                            std::max(canvas.area.left(), canvas.area.right() - box.width())));
    box.moveTop(std::clamp(box.top(), canvas.area.top(),
                           std::max(canvas.area.top(), canvas.area.bottom() - box.height())));
    QColor paper = canvas.palette.ground;
    paper.setAlphaF(0.9F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(paper);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(canvas.palette.accent);
    painter.drawText(box, Qt::AlignCenter, guide.word);
}

} // namespace

QPolygonF traceOf(const Viewport& viewport, const Centreline& line)
{
    constexpr double step_px = 3;
    constexpr double least_px = 0.5; // nobody sees that a shorter arc is drawn straight
    QPolygonF out;
    const std::vector<Piece>& pieces = line.pieces();
    out.reserve(static_cast<qsizetype>(pieces.size()) + 1);
    for (std::size_t k = 0; k < pieces.size(); ++k) {
        const Piece& piece = pieces[k];
        const double px = piece.length_mm * viewport.zoom();
        const double steps = piece.radius_mm > 0 && px > least_px ? std::clamp(px / step_px, 4.0, 64.0) : 1;
        const int count = static_cast<int>(steps);
        for (int i = out.isEmpty() ? 0 : 1; i < count; ++i)
            out.append(viewport.toScreen(piece.at(piece.length_mm * i / count)));
        // It ends where the next one begins.
        out.append(
            viewport.toScreen(k + 1 < pieces.size() ? pieces[k + 1].start : piece.at(piece.length_mm)));
    }
    return out;
}

void paintHandle(QPainter& painter, const Canvas& canvas, const Handle& handle, bool selected, bool hovered)
{
    const double half = hovered ? 6 : handle_half_px; // handles are 10 px, 12 under the pointer
    const QPointF at = canvas.viewport.toScreen(handle.at);
    const QRectF box(at.x() - half, at.y() - half, 2 * half, 2 * half);
    painter.setPen(pen(canvas.palette.accent, hovered || selected ? 2.2 : handle_line_px));
    painter.setBrush(selected ? canvas.palette.accent : canvas.palette.ground);
    switch (handle.shape) {
    case HandleShape::square:
        painter.drawRect(box);
        break;
    case HandleShape::round:
        painter.drawEllipse(box);
        break;
    case HandleShape::diamond:
        painter.drawPolygon(QPolygonF{{at.x(), box.top() - 1},
                                      {box.right() + 1, at.y()},
                                      {at.x(), box.bottom() + 1},
                                      {box.left() - 1, at.y()}});
        break;
    case HandleShape::ring: {
        painter.setBrush(canvas.palette.ground);
        painter.drawEllipse(box);
        // A turning arrow, so that the ring is not taken for a point.
        painter.setBrush(Qt::NoBrush);
        painter.drawArc(box.adjusted(-5, -5, 5, 5), 20 * 16, 140 * 16);
        break;
    }
    }
}

void paintSelection(QPainter& painter, const Canvas& canvas, const PartRef& hovered)
{
    const PartRef& selected = canvas.selection.part();
    if (hovered.kind != PartKind::nothing && hovered != selected) {
        QColor soft = canvas.palette.accent;
        soft.setAlphaF(0.35F);
        paintContour(painter, canvas, hovered, soft, 5);
    }
    const std::vector<PartRef>& all = canvas.selection.parts();
    std::vector<PartRef> owners; // of many points of one hose, once
    for (const PartRef& part : all)
        if (const PartRef owner = ownerOf(part);
            std::find(owners.begin(), owners.end(), owner) == owners.end())
            owners.push_back(owner);
    const auto shown = [&](const PartRef& part) {
        return part.kind != PartKind::nothing &&
               std::find(owners.begin(), owners.end(), ownerOf(part)) != owners.end();
    };
    for (const PartRef& owner : owners)
        paintContour(painter, canvas, owner, canvas.palette.accent, 2);
    for (const ResolvedHose& hose : canvas.layout().hoses)
        if (shown({PartKind::hose, hose.id(), 0}))
            paintStraights(painter, canvas, hose);
    HandleWish wish;
    wish.hose = [&](const Hose& hose) {
        const PartRef whole{PartKind::hose, hose.id, 0};
        return shown(whole) || belongTogether(whole, hovered);
    };
    const std::vector<Handle> handles = handlesOf(canvas, wish);
    Spacing spacing(handles.size());
    for (const Handle& handle : handles) {
        const bool is_selected = canvas.selection.contains(handle.part) && !handle.turns;
        const bool is_hovered = handle.part == hovered;
        if (is_selected || is_hovered ||
            ((shown(handle.part) || belongTogether(handle.part, hovered)) &&
             spacing.hasRoom(canvas.viewport.toScreen(handle.at)))) {
            const bool plain = handle.shape == HandleShape::square && !is_selected && !is_hovered;
            if (plain && spacing.crowded())
                paintPlainSquare(painter, canvas, handle);
            else
                paintHandle(painter, canvas, handle, is_selected, is_hovered);
        }
    }
    for (const PartRef& part : all) {
        const bool has_handle = part.kind == PartKind::heater || part.kind == PartKind::tank;
        if (const std::optional<Vec2> at = has_handle ? placeOf(canvas, part) : std::nullopt)
            paintHandle(painter, canvas, {part, *at, HandleShape::square, false}, true, false);
    }
}

void paintBand(QPainter& painter, const Canvas& canvas, Vec2 from, QPointF to,
               const std::vector<PartRef>& held)
{
    for (const PartRef& part : held) {
        paintContour(painter, canvas, part, canvas.palette.accent, 2);
        if (const std::optional<Vec2> at = placeOf(canvas, part))
            paintHandle(painter, canvas, {part, *at, HandleShape::square, false}, true, false);
    }
    QColor body = canvas.palette.accent;
    body.setAlphaF(0.1F);
    painter.setPen(pen(canvas.palette.accent, 1.2, Qt::DashLine));
    painter.setBrush(body);
    painter.drawRect(QRectF(canvas.viewport.toScreen(from), to).normalized());
}

void paintGuides(QPainter& painter, const Canvas& canvas, const std::vector<Guide>& guides)
{
    double lift = 12; // words of two guides to one place stand over each other
    constexpr double beyond_px = 40;
    for (const Guide& guide : guides) {
        const QPointF from = canvas.viewport.toScreen(guide.from);
        const QPointF to = canvas.viewport.toScreen(guide.to);
        const double px = std::hypot(to.x() - from.x(), to.y() - from.y());
        const QPointF on = px > 0 ? (to - from) * (beyond_px / px) : QPointF();
        painter.setPen(pen(canvas.palette.accent, 1, Qt::DashLine));
        painter.drawLine(from, to + on);
        painter.setPen(pen(canvas.palette.accent, 1.4));
        painter.drawLine(from - QPointF(4, 4), from + QPointF(4, 4));
        painter.drawLine(from - QPointF(4, -4), from + QPointF(4, -4));
        paintGuideWord(painter, canvas, guide, lift);
        lift = -lift;
    }
}

QStringList guideWords(const std::vector<Guide>& guides)
{
    QStringList words;
    for (const Guide& guide : guides)
        if (!guide.word.isEmpty())
            words.append(guide.word);
    if (words.isEmpty())
        return {};
    return {QCoreApplication::translate("Snap", "Snapped: %1").arg(words.join(QStringLiteral(", ")))};
}

void paintDimensions(QPainter& painter, const Canvas& canvas, QPointF beside, const QStringList& lines)
{
    if (lines.isEmpty())
        return;
    constexpr double pad = 7;
    const QFontMetricsF metrics(painter.font());
    double width = 0;
    for (const QString& line : lines)
        width = std::max(width, metrics.horizontalAdvance(line));
    const QSizeF size(width + 2 * pad, metrics.lineSpacing() * static_cast<double>(lines.size()) + 2 * pad);
    const QPointF corner = clearestCorner(canvas, beside, size);
    painter.setPen(pen(canvas.palette.accent, 1));
    // Opaque: Qt shares fills that let something through among threads and waits for them, which in a drag
    // have to wait for what is computed beside the window.
    painter.setBrush(canvas.palette.ground);
    painter.drawRoundedRect(QRectF(corner, size), 4, 4);
    painter.setPen(canvas.palette.text);
    double y = corner.y() + pad + metrics.ascent();
    for (const QString& line : lines) {
        painter.drawText(QPointF(corner.x() + pad, y), line);
        y += metrics.lineSpacing();
    }
}

void paintCrosshair(QPainter& painter, const Canvas& canvas, Vec2 at)
{
    const QPointF p = canvas.viewport.toScreen(at);
    painter.setPen(pen(canvas.palette.accent, 1));
    painter.drawLine(QPointF(canvas.area.left(), p.y()), QPointF(canvas.area.right(), p.y()));
    painter.drawLine(QPointF(p.x(), canvas.area.top()), QPointF(p.x(), canvas.area.bottom()));
    painter.setPen(pen(canvas.palette.accent, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(p, 6, 6);
}

void paintTarget(QPainter& painter, const Canvas& canvas, Vec3 at)
{
    painter.setPen(pen(canvas.palette.accent, 2.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(canvas.viewport.toScreen(at), 11, 11);
}

void paintGhostHose(QPainter& painter, const Canvas& canvas, const Centreline& line, double outside_mm)
{
    const QPolygonF trace = traceOf(canvas.viewport, line);
    QColor body = canvas.palette.accent;
    body.setAlphaF(0.22F);
    painter.setPen(QPen(body, std::max(3.0, outside_mm * canvas.viewport.zoom()), Qt::SolidLine, Qt::FlatCap,
                        Qt::RoundJoin));
    painter.drawPolyline(trace);
    painter.setPen(pen(canvas.palette.accent, 1.4, Qt::DashLine));
    painter.drawPolyline(trace);
}

void paintGhostOutline(QPainter& painter, const Canvas& canvas, const std::vector<Vec2>& outline, bool closed)
{
    const QPolygonF polygon = polygonOf(canvas.viewport, outline);
    QColor body = canvas.palette.accent;
    body.setAlphaF(0.15F);
    painter.setPen(pen(canvas.palette.accent, 1.6, Qt::DashLine));
    painter.setBrush(closed ? QBrush(body) : QBrush(Qt::NoBrush));
    if (closed)
        painter.drawPolygon(polygon);
    else
        painter.drawPolyline(polygon);
}

} // namespace siphonwright::overlay
