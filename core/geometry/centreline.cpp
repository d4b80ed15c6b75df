#include "core/geometry/centreline.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace siphonwright {

namespace {

constexpr double same_point_mm = 0.01;
constexpr double no_bend_rad = 1e-6;
constexpr double reversal_rad = std::numbers::pi - 0.001;
/// Takes that fill their straight to within rounding still fit.
constexpr double fit_slack = 1e-9;
/// A piece shorter than this is lost in the rounding of its neighbours.
constexpr double least_piece_mm = 1e-9;
/// 1,000 km: no drawing reaches it, and squares of it stay finite.
constexpr double reach_mm = 1e9;

/// A corner that is kept, with what is known of its bend.
struct Knot {
    std::size_t corner = 0;
    Vec3 at;
    double asked_mm = 0;
    double radius_mm = 0;
    double angle_rad = 0;
    double take_mm = 0;
};

bool isFinite(Vec3 p)
{
    return std::isfinite(p.x) && std::isfinite(p.y) && std::isfinite(p.z);
}

Vec3 withinReach(Vec3 p)
{
    return {std::clamp(p.x, -reach_mm, reach_mm), std::clamp(p.y, -reach_mm, reach_mm),
            std::clamp(p.z, -reach_mm, reach_mm)};
}

double angleBetween(Vec3 a, Vec3 b)
{
    // atan2 keeps its digits near 0 and near pi, where acos loses half of them.
    return std::atan2(length(cross(a, b)), dot(a, b));
}

/// Distinct corners only; a corner on the straight between its neighbours is no bend and splits nothing.
std::vector<Knot> knotsOf(const std::vector<Corner>& corners)
{
    std::vector<Knot> knots;
    knots.reserve(corners.size());
    for (std::size_t i = 0; i < corners.size(); ++i) {
        if (!isFinite(corners[i].at))
            continue;
        const Vec3 p = withinReach(corners[i].at);
        if (!knots.empty() && distance(knots.back().at, p) < same_point_mm)
            continue;
        while (knots.size() > 1) {
            Knot& last = knots.back();
            const Vec3 before = unit(last.at - knots[knots.size() - 2].at);
            last.angle_rad = angleBetween(before, unit(p - last.at));
            if (last.angle_rad >= no_bend_rad)
                break;
            knots.pop_back();
        }
        Knot knot;
        knot.corner = i;
        knot.at = p;
        knot.asked_mm = corners[i].radius_mm > 0 ? std::min(corners[i].radius_mm, reach_mm) : 0;
        knots.push_back(knot);
    }
    return knots;
}

/// Reduce the radii that do not fit: each by the worse of its two straights, in one pass.
void fitRadii(std::vector<Knot>& knots)
{
    for (Knot& knot : knots) {
        const bool bends = knot.angle_rad > 0 && knot.angle_rad <= reversal_rad;
        knot.radius_mm = bends ? knot.asked_mm : 0;
        knot.take_mm = knot.radius_mm * std::tan(knot.angle_rad / 2);
    }
    std::vector<double> share(knots.size(), 1.0);
    for (std::size_t i = 1; i < knots.size(); ++i) {
        const double straight = distance(knots[i - 1].at, knots[i].at);
        const double takes = knots[i - 1].take_mm + knots[i].take_mm;
        if (takes <= straight * (1 + fit_slack))
            continue;
        share[i - 1] = std::min(share[i - 1], straight / takes);
        share[i] = std::min(share[i], straight / takes);
    }
    for (std::size_t i = 0; i < knots.size(); ++i) {
        knots[i].radius_mm *= share[i];
        knots[i].take_mm *= share[i];
    }
}

Vec2 elevation(Vec3 p)
{
    return {p.x, p.z};
}

double squaredGap(const Piece& piece, double t, Vec2 p)
{
    const Vec2 q = elevation(piece.at(t));
    return (q.x - p.x) * (q.x - p.x) + (q.z - p.z) * (q.z - p.z);
}

/// Half the derivative of squaredGap along the piece.
double gapSlope(const Piece& piece, double t, Vec2 p)
{
    const Vec2 q = elevation(piece.at(t));
    const Vec2 along = elevation(piece.tangent(t));
    return (q.x - p.x) * along.x + (q.z - p.z) * along.z;
}

double nearestOnStraight(const Piece& piece, Vec2 p)
{
    const double run = piece.u.x * piece.u.x + piece.u.z * piece.u.z;
    if (run < 1e-18)
        return 0; // seen end on: one point
    const double t = ((p.x - piece.start.x) * piece.u.x + (p.z - piece.start.z) * piece.u.z) / run;
    return std::clamp(t, 0.0, piece.length_mm);
}

/// An arc is seen as part of an ellipse: at most a few nearest places, each between two signs of the slope.
double nearestOnArc(const Piece& piece, Vec2 p)
{
    constexpr int parts = 16;
    double best = squaredGap(piece, 0, p) <= squaredGap(piece, piece.length_mm, p) ? 0 : piece.length_mm;
    double best_gap = squaredGap(piece, best, p);
    double slope_before = gapSlope(piece, 0, p);
    for (int i = 0; i < parts; ++i) {
        double low = piece.length_mm * i / parts;
        double high = piece.length_mm * (i + 1) / parts;
        const double slope_after = gapSlope(piece, high, p);
        if (slope_before < 0 && slope_after > 0) {
            for (int halving = 0; halving < 48; ++halving) {
                const double middle = (low + high) / 2;
                (gapSlope(piece, middle, p) < 0 ? low : high) = middle;
            }
            const double gap = squaredGap(piece, low, p);
            if (gap < best_gap) {
                best_gap = gap;
                best = low;
            }
        }
        slope_before = slope_after;
    }
    return best;
}

Bend bendAt(const Knot& knot, double s)
{
    Bend bend;
    bend.corner = knot.corner;
    bend.angle_rad = knot.angle_rad;
    bend.asked_mm = knot.asked_mm;
    bend.radius_mm = knot.radius_mm;
    bend.s = s;
    bend.fits = knot.angle_rad <= reversal_rad && knot.radius_mm >= knot.asked_mm;
    return bend;
}

/// The pieces of a run as they are laid one after the other.
class Layer {
public:
    explicit Layer(std::size_t most_pieces) { pieces_.reserve(most_pieces); }
    void straight(Vec3 from, Vec3 u, double length_mm)
    {
        if (length_mm > least_piece_mm)
            lay({from, u, {}, 0, length_mm, s_});
    }
    void arc(const Knot& knot, Vec3 before, Vec3 after)
    {
        const double length_mm = knot.radius_mm * knot.angle_rad;
        if (length_mm <= least_piece_mm)
            return;
        Vec3 n = unit(after - before * dot(after, before));
        n = unit(n - before * dot(n, before));
        lay({knot.at - before * knot.take_mm, before, n, knot.radius_mm, length_mm, s_});
    }
    double length() const { return s_; }
    std::vector<Piece> take() { return std::move(pieces_); }

private:
    void lay(const Piece& piece)
    {
        pieces_.push_back(piece);
        s_ += piece.length_mm;
    }
    std::vector<Piece> pieces_;
    double s_ = 0;
};

} // namespace

Vec3 Piece::at(double t) const
{
    if (radius_mm <= 0)
        return start + u * t;
    const double half = t / radius_mm / 2;
    const double sine = std::sin(half);
    const double cosine = std::cos(half);
    return start + u * (2 * radius_mm * sine * cosine) + n * (2 * radius_mm * sine * sine);
}

Vec3 Piece::tangent(double t) const
{
    if (radius_mm <= 0)
        return u;
    const double a = t / radius_mm;
    return u * std::cos(a) + n * std::sin(a);
}

double Piece::nearestInElevation(Vec2 p) const
{
    return radius_mm > 0 ? nearestOnArc(*this, p) : nearestOnStraight(*this, p);
}

Centreline::Centreline(const std::vector<Corner>& corners)
{
    std::vector<Knot> knots = knotsOf(corners);
    if (knots.size() < 2)
        return;
    fitRadii(knots);

    Layer layer(2 * knots.size());
    bends_.reserve(knots.size());
    Vec3 u = unit(knots[1].at - knots[0].at);
    for (std::size_t i = 1; i < knots.size(); ++i) {
        const Knot& from = knots[i - 1];
        const Knot& to = knots[i];
        layer.straight(from.at + u * from.take_mm, u, distance(from.at, to.at) - from.take_mm - to.take_mm);
        if (i + 1 == knots.size())
            break;
        const Vec3 next = unit(knots[i + 1].at - to.at);
        const double bend_start = layer.length();
        layer.arc(to, u, next);
        bends_.push_back(bendAt(to, (bend_start + layer.length()) / 2));
        u = next;
    }
    length_mm_ = layer.length();
    pieces_ = layer.take();
}

std::vector<Bend> Centreline::bendsThrough(const std::vector<Corner>& corners)
{
    std::vector<Knot> knots = knotsOf(corners);
    fitRadii(knots);
    std::vector<Bend> out;
    out.reserve(knots.size());
    for (std::size_t i = 1; i + 1 < knots.size(); ++i)
        out.push_back(bendAt(knots[i], 0));
    return out;
}

std::size_t Centreline::pieceAt(double s) const
{
    const auto after = std::upper_bound(pieces_.begin(), pieces_.end(), s,
                                        [](double value, const Piece& piece) { return value < piece.s; });
    return after == pieces_.begin() ? 0 : static_cast<std::size_t>(after - pieces_.begin()) - 1;
}

Vec3 Centreline::at(double s) const
{
    if (empty())
        return {};
    const Piece& piece = pieces_[pieceAt(s)];
    return piece.at(std::clamp(s - piece.s, 0.0, piece.length_mm));
}

Vec3 Centreline::tangent(double s) const
{
    if (empty())
        return {};
    const Piece& piece = pieces_[pieceAt(s)];
    return piece.tangent(std::clamp(s - piece.s, 0.0, piece.length_mm));
}

Centreline::Nearest Centreline::nearestInElevation(Vec2 p) const
{
    Nearest best;
    best.distance_mm = std::numeric_limits<double>::infinity();
    for (const Piece& piece : pieces_) {
        // No point of a piece is farther from its middle than half its length.
        const double half = piece.length_mm / 2;
        if (std::sqrt(squaredGap(piece, half, p)) - half > best.distance_mm)
            continue;
        const double t = piece.nearestInElevation(p);
        const double gap = std::sqrt(squaredGap(piece, t, p));
        if (gap < best.distance_mm)
            best = {piece.s + t, gap};
    }
    return empty() ? Nearest{} : best;
}

} // namespace siphonwright
