#include "app/drawing/crossings.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace siphonwright::drawing {

namespace {

/// A short straight of a hose as the view shows it.
struct Chord {
    Vec2 a;
    Vec2 b;
    double s_a = 0;
    double s_b = 0;
    double near_mm = 0; ///< no place of it is nearer, or farther than the other
    double far_mm = 0;
};

/// Two hoses are at one depth within this: neither is nearer.
constexpr double same_depth_mm = 1;

void addChords(const Route& route, const Projection& view, const Piece& piece, std::vector<Chord>& chords)
{
    constexpr double step_rad = 0.12;
    const double first = std::max(piece.s, route.hose_from_mm);
    const double last = std::min(piece.s + piece.length_mm, route.hose_to_mm);
    if (!(last > first))
        return;
    const double turn = piece.radius_mm > 0 ? (last - first) / piece.radius_mm : 0;
    const int parts = std::max(1, int(std::ceil(turn / step_rad)));
    // An arc bulges out of its chord by less than this share of its length, in the arc's own plane.
    constexpr double bulge = 0.02;
    const double out =
        piece.radius_mm > 0
            ? bulge * (last - first) / parts * (std::abs(view.depth(piece.u)) + std::abs(view.depth(piece.n)))
            : 0;
    for (int i = 0; i < parts; ++i) {
        const double s_a = first + (last - first) * i / parts;
        const double s_b = first + (last - first) * (i + 1) / parts;
        const Vec3 a = piece.at(s_a - piece.s);
        const Vec3 b = piece.at(s_b - piece.s);
        const auto [near_mm, far_mm] = std::minmax({view.depth(a), view.depth(b)});
        chords.push_back({view.flat(a), view.flat(b), s_a, s_b, near_mm - out, far_mm + out});
    }
}

/// Where two chords cross, as shares of each.
bool meet(const Chord& p, const Chord& q, double& on_p, double& on_q)
{
    const Vec2 u = {p.b.x - p.a.x, p.b.z - p.a.z};
    const Vec2 v = {q.b.x - q.a.x, q.b.z - q.a.z};
    const double turn = u.x * v.z - u.z * v.x;
    // Chords along each other, and those seen end-on, cross nowhere.
    if (std::abs(turn) < 1e-9 * (std::hypot(u.x, u.z) * std::hypot(v.x, v.z) + 1e-9))
        return false;
    const Vec2 w = {q.a.x - p.a.x, q.a.z - p.a.z};
    on_p = (w.x * v.z - w.z * v.x) / turn;
    on_q = (w.x * u.z - w.z * u.x) / turn;
    return on_p >= 0 && on_p < 1 && on_q >= 0 && on_q < 1;
}

double sineBetween(const Chord& p, const Chord& q)
{
    const Vec2 u = {p.b.x - p.a.x, p.b.z - p.a.z};
    const Vec2 v = {q.b.x - q.a.x, q.b.z - q.a.z};
    return std::abs(u.x * v.z - u.z * v.x) / (std::hypot(u.x, u.z) * std::hypot(v.x, v.z));
}

double halfWidth(const Route& route)
{
    return route.outsideDiameter() / 2 + route.hose->insulation_mm;
}

struct Pair {
    const Layout& layout;
    const Projection& view;
    double gap_mm = 0;
};

void addCrossing(const Pair& with, std::size_t i, double s_i, std::size_t k, double s_k, double sine,
                 std::vector<Crossing>& out)
{
    constexpr double least_sine = 0.35; // a long overlap is shown as far as a plain crossing would be
    const Route& a = *with.layout.hoses[i].route;
    const Route& b = *with.layout.hoses[k].route;
    const double depth_a = with.view.depth(a.path.line.at(s_i));
    const double depth_b = with.view.depth(b.path.line.at(s_k));
    if (std::abs(depth_a - depth_b) < same_depth_mm)
        return;
    const bool first_is_near = depth_a < depth_b;
    const Route& near_route = first_is_near ? a : b;
    const Route& far_route = first_is_near ? b : a;
    const double reach = (halfWidth(far_route) + with.gap_mm) / std::max(sine, least_sine);
    const double s = first_is_near ? s_i : s_k;
    Crossing crossing;
    crossing.near_hose = first_is_near ? i : k;
    crossing.far_hose = first_is_near ? k : i;
    crossing.from_mm = std::max(near_route.hose_from_mm, s - reach);
    crossing.to_mm = std::min(near_route.hose_to_mm, s + reach);
    crossing.depth_mm = std::min(depth_a, depth_b);
    out.push_back(crossing);
}

} // namespace

/// A hose's run in stretches of some pieces, with boxes round each, round every two, every four and so on.
class SeenRun {
public:
    /// What a stretch of a run takes of the view and of its depth; nothing at first.
    struct Box {
        Vec2 low{HUGE_VAL, HUGE_VAL};
        Vec2 high{-HUGE_VAL, -HUGE_VAL};
        double near_mm = HUGE_VAL;
        double far_mm = -HUGE_VAL;

        void add(const Chord& chord)
        {
            near_mm = std::min(near_mm, chord.near_mm);
            far_mm = std::max(far_mm, chord.far_mm);
            for (const Vec2 p : {chord.a, chord.b}) {
                low = {std::min(low.x, p.x), std::min(low.z, p.z)};
                high = {std::max(high.x, p.x), std::max(high.z, p.z)};
            }
        }
        void add(const Box& other)
        {
            low = {std::min(low.x, other.low.x), std::min(low.z, other.low.z)};
            high = {std::max(high.x, other.high.x), std::max(high.z, other.high.z)};
            near_mm = std::min(near_mm, other.near_mm);
            far_mm = std::max(far_mm, other.far_mm);
        }
        /// Whether one may pass before the other.
        bool mayCross(const Box& other) const
        {
            constexpr double rounding_mm = 1e-6;
            return low.x <= other.high.x + rounding_mm && other.low.x <= high.x + rounding_mm &&
                   low.z <= other.high.z + rounding_mm && other.low.z <= high.z + rounding_mm &&
                   std::max(far_mm, other.far_mm) - std::min(near_mm, other.near_mm) >=
                       same_depth_mm - rounding_mm;
        }
    };

    SeenRun(std::shared_ptr<const Route> route, const Projection& view)
        : route_(std::move(route)), view_(view)
    {
        const std::size_t pieces = route_->path.line.pieces().size();
        while (leaves_ * pieces_each < pieces)
            leaves_ *= 2;
        boxes_.resize(2 * leaves_);
        first_chords_.resize(leaves_);
        std::size_t count = 0;
        for (std::size_t leaf = 0; leaf < leaves_; ++leaf) {
            first_chords_[leaf] = count;
            for (const Chord& chord : chords(leaves_ + leaf)) {
                boxes_[leaves_ + leaf].add(chord);
                ++count;
            }
        }
        for (std::size_t node = leaves_ - 1; node > 0; --node) {
            boxes_[node].add(boxes_[2 * node]);
            boxes_[node].add(boxes_[2 * node + 1]);
        }
    }

    const std::shared_ptr<const Route>& route() const { return route_; }
    // Nodes: 1 is the whole run, 2n and 2n + 1 the halves of n.
    bool isLeaf(std::size_t node) const { return node >= leaves_; }
    const Box& box(std::size_t node) const { return boxes_[node]; }
    std::size_t firstChord(std::size_t leaf) const { return first_chords_[leaf - leaves_]; }
    std::vector<Chord> chords(std::size_t leaf) const
    {
        const std::vector<Piece>& pieces = route_->path.line.pieces();
        const std::size_t from = (leaf - leaves_) * pieces_each;
        std::vector<Chord> out;
        for (std::size_t i = from; i < std::min(from + pieces_each, pieces.size()); ++i)
            addChords(*route_, view_, pieces[i], out);
        return out;
    }

private:
    static constexpr std::size_t pieces_each = 16;
    std::shared_ptr<const Route> route_;
    Projection view_;
    std::size_t leaves_ = 1;
    std::vector<Box> boxes_;
    std::vector<std::size_t> first_chords_; ///< by leaf: how many chords come before
};

namespace {

/// Two chords that cross, by their places in their runs.
struct Met {
    std::size_t m = 0;
    std::size_t n = 0;
    double s_m = 0;
    double s_n = 0;
    double sine = 0;
};

void meetLeaves(const SeenRun& one, std::size_t a, const SeenRun& other, std::size_t b, std::vector<Met>& out)
{
    const std::vector<Chord> ps = one.chords(a);
    const std::vector<Chord> qs = other.chords(b);
    for (std::size_t i = 0; i < ps.size(); ++i)
        for (std::size_t k = 0; k < qs.size(); ++k) {
            const std::size_t m = one.firstChord(a) + i;
            const std::size_t n = other.firstChord(b) + k;
            // With itself: only what lies further along, and not the next bend.
            if (&one == &other && n < m + 2)
                continue;
            const Chord& p = ps[i];
            const Chord& q = qs[k];
            double on_p = 0;
            double on_q = 0;
            if (meet(p, q, on_p, on_q))
                out.push_back({m, n, p.s_a + (p.s_b - p.s_a) * on_p, q.s_a + (q.s_b - q.s_a) * on_q,
                               sineBetween(p, q)});
        }
}

void meetNodes(const SeenRun& one, std::size_t a, const SeenRun& other, std::size_t b, std::vector<Met>& out)
{
    if (!one.box(a).mayCross(other.box(b)))
        return;
    if (&one == &other && a == b && !one.isLeaf(a)) {
        meetNodes(one, 2 * a, one, 2 * a, out);
        meetNodes(one, 2 * a, one, 2 * a + 1, out);
        meetNodes(one, 2 * a + 1, one, 2 * a + 1, out);
    } else if (one.isLeaf(a) && other.isLeaf(b)) {
        meetLeaves(one, a, other, b, out);
    } else if (other.isLeaf(b) || (!one.isLeaf(a) && a <= b)) {
        meetNodes(one, 2 * a, other, b, out);
        meetNodes(one, 2 * a + 1, other, b, out);
    } else {
        meetNodes(one, a, other, 2 * b, out);
        meetNodes(one, a, other, 2 * b + 1, out);
    }
}

} // namespace

void SeenRuns::follow(const Layout& layout, const Projection& view)
{
    std::unordered_map<const Route*, std::shared_ptr<const SeenRun>> before;
    if (view == view_)
        for (const std::shared_ptr<const SeenRun>& run : runs_)
            before.emplace(run->route().get(), run);
    view_ = view;
    runs_.clear();
    for (const ResolvedHose& hose : layout.hoses) {
        const auto held = before.find(hose.route.get());
        runs_.push_back(held != before.end() ? held->second
                                             : std::make_shared<const SeenRun>(hose.route, view));
    }
}

std::vector<Crossing> crossingsOf(const Layout& layout, const Projection& view, double gap_mm)
{
    SeenRuns runs;
    return crossingsOf(layout, view, gap_mm, runs, nullptr);
}

std::vector<Crossing> crossingsOf(const Layout& layout, const Projection& view, double gap_mm, SeenRuns& kept,
                                  const std::function<bool(std::size_t, std::size_t)>& wanted)
{
    kept.follow(layout, view);
    const auto& runs = kept.runs();
    const Pair with{layout, view, gap_mm};
    std::vector<Crossing> out;
    std::vector<Met> met;
    for (std::size_t i = 0; i < runs.size(); ++i)
        for (std::size_t k = i; k < runs.size(); ++k) {
            if (wanted && !wanted(i, k))
                continue;
            met.clear();
            meetNodes(*runs[i], 1, *runs[k], 1, met);
            std::sort(met.begin(), met.end(),
                      [](const Met& a, const Met& b) { return std::tie(a.m, a.n) < std::tie(b.m, b.n); });
            for (const Met& one : met)
                addCrossing(with, i, one.s_m, k, one.s_n, one.sine, out);
        }
    std::stable_sort(out.begin(), out.end(),
                     [](const Crossing& a, const Crossing& b) { return a.depth_mm > b.depth_mm; });
    return out;
}

std::vector<std::size_t> farToNear(const Layout& layout, const Projection& view,
                                   const std::vector<bool>& left_out)
{
    constexpr int places = 16;
    std::vector<double> depths(layout.hoses.size());
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < layout.hoses.size(); ++i) {
        if (!left_out.empty() && left_out[i])
            continue;
        const Route& route = *layout.hoses[i].route;
        double sum = 0;
        for (int k = 0; k <= places; ++k)
            sum += view.depth(route.path.line.at(route.path.line.length() * k / places));
        depths[i] = sum;
        order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return depths[a] > depths[b]; });
    return order;
}

} // namespace siphonwright::drawing
