#include "app/drawing/balloon_places.h"

#include "app/drawing/balloon.h"
#include "app/drawing/hoses_near.h"

#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <tuple>
#include <utility>

namespace siphonwright::drawing {
namespace {

/// Among so many pieces of hose no balloon can keep off them all.
constexpr std::size_t most_pieces = 20'000;

bool keepsOffHoses(const Analysis& analysis)
{
    std::size_t pieces = 0;
    for (const ResolvedHose& hose : analysis.layout.hoses)
        pieces += hose->path.line.pieces().size();
    return pieces <= most_pieces;
}

bool mayTouch(QPointF a, QPointF b, double gap)
{
    return std::abs(a.x() - b.x()) < gap && std::abs(a.y() - b.y()) < gap;
}

/// How much a balloon at a place would hide, as a length of overlap.
class Crowd {
public:
    Crowd(const Analysis& analysis, const Style& style, std::vector<QPointF> points)
        : radius_(balloonRadius(style)), points_(std::move(points))
    {
        if (keepsOffHoses(analysis))
            hoses_.emplace(analysis.layout, style.view, radius_);
        if (style.page)
            unhidden_ = style.page->unhidden;
    }

    void place(QPointF at) { placed_.push_back(at); }

    /// \param most  what is as much or more may be told as less, but no less than this
    double at(QPointF at, double most) const
    {
        double sum = 0;
        for (const QPointF& other : placed_) {
            if (!mayTouch(other, at, 3.1 * radius_))
                continue;
            const double gap = std::hypot(other.x() - at.x(), other.y() - at.y());
            sum += gap < 3.1 * radius_ ? 4 * (6 * radius_ - gap) : 0;
        }
        for (const QPointF& other : points_)
            if (mayTouch(other, at, 1.8 * radius_))
                sum += std::max(0.0, 1.8 * radius_ - std::hypot(other.x() - at.x(), other.y() - at.y()));
        for (const QRectF& thing : unhidden_) {
            const QPointF reach(1.2 * radius_, 1.2 * radius_);
            const QRectF hidden = thing.intersected(QRectF(at - reach, at + reach));
            if (!hidden.isEmpty()) // by its share: a large one is known by the rest
                sum += 8 * radius_ * hidden.width() * hidden.height() / (thing.width() * thing.height());
        }
        return sum + (hoses_ && sum < most ? hoses_->overlap(at, most - sum) : 0);
    }

private:
    double radius_;
    std::optional<HosesNear> hoses_; ///< nothing: balloons need not keep off hoses
    std::vector<QPointF> points_;
    std::vector<QPointF> placed_;
    std::vector<QRectF> unhidden_;
};

/// The nearest place round a point that hides least; further out while it would lie on another balloon.
QPointF balloonPlace(const Crowd& crowd, QPointF point, double radius, const QRectF& near_by)
{
    QPointF best = point;
    double least = std::numeric_limits<double>::infinity();
    for (const double reach : {3.4, 5.0, 7.0, 9.5, 13.0, 17.0, 22.0, 28.0, 35.0}) {
        for (const int angle : {-60, -120, -30, -150, -90, 30, 150, 60, 120, 90, 0, 180}) {
            const double a = angle * 3.14159265358979323846 / 180;
            const QPointF at = point + QPointF(std::cos(a), std::sin(a)) * radius * reach;
            const double outside = near_by.contains(at) ? 0 : 20 * radius;
            const double cost = outside + crowd.at(at, least - outside) + 0.02 * radius * reach;
            if (cost < least - 1e-9) {
                least = cost;
                best = at;
            }
        }
        if (least < 0.3 * radius)
            break;
    }
    return best;
}

/// For each finding that gets a balloon, in order, how many others it stands for.
using Leaders = std::vector<std::pair<std::size_t, int>>;

/// Findings whose places lie in one square of a grid.
struct Square {
    double column = 0;
    double row = 0;
    std::size_t leader = 0; ///< the highlighted one, else the first
    int more = 0;

    auto place() const { return std::pair(column, row); }
};

/// One of each place: those that share one become one.
void joinEqual(std::vector<Square>& squares, std::size_t marked)
{
    std::sort(squares.begin(), squares.end(), [](const Square& a, const Square& b) {
        return std::tuple(a.column, a.row, a.leader) < std::tuple(b.column, b.row, b.leader);
    });
    std::size_t count = 0;
    for (const Square& square : squares) {
        if (count == 0 || squares[count - 1].place() != square.place()) {
            squares[count++] = square;
            continue;
        }
        Square& joined = squares[count - 1];
        joined.more += square.more + 1;
        if (square.leader == marked)
            joined.leader = marked;
    }
    squares.resize(count);
}

/// Those that are in sight, the nearest together: in squares of a grid as fine as leaves few enough.
Leaders merged(const Analysis& analysis, const Style& style, const std::vector<std::size_t>& placed)
{
    const auto marked = static_cast<std::size_t>(style.highlighted_finding); // none: beyond all
    const double cell = std::max(5 * balloonRadius(style), 1e-3);
    std::vector<Square> squares;
    for (const std::size_t i : placed) {
        const QPointF at = toPage(*analysis.findings[i].at, style.view);
        squares.push_back({std::floor(at.x() / cell), std::floor(at.y() / cell), i, 0});
    }
    joinEqual(squares, marked);
    constexpr int most_doublings = 1100; // then all doubles share a square
    for (int i = 0; squares.size() > most_balloons && i < most_doublings; ++i) {
        for (Square& square : squares) {
            square.column = std::floor(square.column / 2);
            square.row = std::floor(square.row / 2);
        }
        joinEqual(squares, marked);
    }
    Leaders out;
    for (const Square& square : squares)
        out.emplace_back(square.leader, square.more);
    std::sort(out.begin(), out.end());
    return out;
}

Leaders leadersOf(const Analysis& analysis, const Style& style, const QRectF& visible)
{
    std::vector<std::size_t> placed;
    for (std::size_t i = 0; i < analysis.findings.size(); ++i)
        if (const std::optional<Vec3>& at = analysis.findings[i].at;
            at && std::isfinite(at->x) && std::isfinite(at->y) && std::isfinite(at->z))
            placed.push_back(i);
    if (placed.size() > most_balloons && !visible.isNull())
        std::erase_if(placed, [&](std::size_t i) {
            return !visible.contains(toPage(*analysis.findings[i].at, style.view));
        });
    if (placed.size() > most_balloons)
        return merged(analysis, style, placed);
    Leaders out;
    for (const std::size_t i : placed)
        out.emplace_back(i, 0);
    return out;
}

} // namespace

double balloonRadius(const Style& style)
{
    return balloon_of_lettering * style.lettering_mm / style.scale;
}

Balloons balloonsOf(const Analysis& analysis, const Style& style, const QRectF& visible)
{
    constexpr double nowhere = std::numeric_limits<double>::quiet_NaN();
    const double radius = balloonRadius(style);
    const Leaders leaders = leadersOf(analysis, style, visible);
    std::vector<QPointF> points;
    QPolygonF drawn;
    for (const auto& leader : leaders) {
        points.push_back(toPage(*analysis.findings[leader.first].at, style.view));
        drawn << points.back();
    }
    for (const ResolvedHose& hose : analysis.layout.hoses)
        drawn << toPage(hose->from.opening, style.view) << toPage(hose->to.opening, style.view);
    const double margin = 5 * radius;
    QRectF near_by = drawn.boundingRect().adjusted(-margin, -margin, margin, margin);
    if (style.page && !visible.isNull()) { // all of its view, and nothing beyond, where other things stand
        const double edge = 1.2 * radius;
        near_by = visible.adjusted(edge, edge, -edge, -edge);
    }
    Crowd crowd(analysis, style, points);
    Balloons out{std::vector<QPointF>(analysis.findings.size(), QPointF(nowhere, nowhere)),
                 std::vector<int>(analysis.findings.size(), 0)};
    for (std::size_t i = 0; i < leaders.size(); ++i) {
        const QPointF at = balloonPlace(crowd, points[i], radius, near_by);
        crowd.place(at);
        out.places[leaders[i].first] = at;
        out.more[leaders[i].first] = leaders[i].second;
    }
    return out;
}

const Balloons& KeptBalloons::of(const Analysis& analysis, const Style& style, const QRectF& visible)
{
    Key now;
    now.radius = balloonRadius(style);
    now.view = style.view;
    now.highlighted = style.highlighted_finding;
    now.visible = visible;
    for (const Finding& finding : analysis.findings)
        now.points.push_back(finding.at);
    for (const ResolvedHose& hose : analysis.layout.hoses) {
        now.openings.push_back(hose->from.opening);
        now.openings.push_back(hose->to.opening);
    }
    const bool holds = !keepsOffHoses(analysis) && now == key_;
    if (!holds) {
        balloons_ = balloonsOf(analysis, style, visible);
        key_ = std::move(now);
    }
    return balloons_;
}

std::vector<QPointF> balloonPlaces(const Analysis& analysis, const Style& style)
{
    return balloonsOf(analysis, style).places;
}

} // namespace siphonwright::drawing
