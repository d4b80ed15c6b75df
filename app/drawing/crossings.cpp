#include "app/drawing/crossings.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::drawing {

namespace {

/// A short straight of a hose as the view shows it.
struct Chord {
    Vec2 a;
    Vec2 b;
    double s_a = 0;
    double s_b = 0;
};

std::vector<Chord> chordsOf(const Route& route, const Projection& view)
{
    constexpr double step_rad = 0.12;
    std::vector<Chord> chords;
    const Centreline& line = route.path.line;
    for (const Piece& piece : line.pieces()) {
        const double first = std::max(piece.s, route.hose_from_mm);
        const double last = std::min(piece.s + piece.length_mm, route.hose_to_mm);
        if (!(last > first))
            continue;
        const double turn = piece.radius_mm > 0 ? (last - first) / piece.radius_mm : 0;
        const int parts = std::max(1, int(std::ceil(turn / step_rad)));
        for (int i = 0; i < parts; ++i) {
            const double s_a = first + (last - first) * i / parts;
            const double s_b = first + (last - first) * (i + 1) / parts;
            chords.push_back(
                {view.flat(piece.at(s_a - piece.s)), view.flat(piece.at(s_b - piece.s)), s_a, s_b});
        }
    }
    return chords;
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
    constexpr double same_depth_mm = 1;
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

void addCrossings(const Pair& with, std::size_t i, std::size_t k,
                  const std::vector<std::vector<Chord>>& chords, std::vector<Crossing>& out)
{
    for (std::size_t m = 0; m < chords[i].size(); ++m) {
        const Chord& p = chords[i][m];
        // With itself: only what lies further along, and not the next bend.
        for (std::size_t n = i == k ? m + 2 : 0; n < chords[k].size(); ++n) {
            const Chord& q = chords[k][n];
            double on_p = 0;
            double on_q = 0;
            if (!meet(p, q, on_p, on_q))
                continue;
            addCrossing(with, i, p.s_a + (p.s_b - p.s_a) * on_p, k, q.s_a + (q.s_b - q.s_a) * on_q,
                        sineBetween(p, q), out);
        }
    }
}

} // namespace

std::vector<Crossing> crossingsOf(const Layout& layout, const Projection& view, double gap_mm)
{
    std::vector<std::vector<Chord>> chords;
    for (const ResolvedHose& hose : layout.hoses)
        chords.push_back(chordsOf(*hose, view));
    const Pair with{layout, view, gap_mm};
    std::vector<Crossing> out;
    for (std::size_t i = 0; i < chords.size(); ++i)
        for (std::size_t k = i; k < chords.size(); ++k)
            addCrossings(with, i, k, chords, out);
    std::stable_sort(out.begin(), out.end(),
                     [](const Crossing& a, const Crossing& b) { return a.depth_mm > b.depth_mm; });
    return out;
}

std::vector<std::size_t> farToNear(const Layout& layout, const Projection& view)
{
    constexpr int places = 16;
    std::vector<double> depths;
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < layout.hoses.size(); ++i) {
        const Route& route = *layout.hoses[i].route;
        double sum = 0;
        for (int k = 0; k <= places; ++k)
            sum += view.depth(route.path.line.at(route.path.line.length() * k / places));
        depths.push_back(sum);
        order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return depths[a] > depths[b]; });
    return order;
}

} // namespace siphonwright::drawing
