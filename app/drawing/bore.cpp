#include "app/drawing/bore.h"

#include "app/drawing/ink.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace siphonwright::drawing {

namespace {

struct Slice {
    QPointF low;
    QPointF high;
};

/// The cut-off part of the bore at s. The disc's points stand at z + k eta, eta from -D/2 to D/2.
bool sliceAt(const Route& route, const Plumb& plumb, double s, double level_mm, Side side,
             const Projection& view, Slice& out)
{
    const Vec3 t = route.path.line.tangent(s);
    const Vec3 c = route.path.line.at(s);
    const double r = route.path.boreAt(s) / 2;
    const double z = plumb.height(c);
    const double t_up = dot(t, plumb.up());
    const double k = std::sqrt(std::max(0.0, 1 - t_up * t_up));
    double from = -r;
    double to = r;
    if (k < 1e-6) {
        if ((side == Side::over) != (z > level_mm))
            return false;
    } else if (side == Side::over) {
        from = std::max(-r, (level_mm - z) / k);
    } else {
        to = std::min(r, (level_mm - z) / k);
    }
    if (!(to > from))
        return false;
    QPointF normal = turned(unitOf(toPage(t, view)));
    if (normal.isNull())
        return false;
    // The side of the bore that is up along plumb.
    const Vec2 up = view.flat(plumb.up());
    if (normal.x() * up.x - normal.y() * up.z < 0)
        normal = -normal;
    const QPointF middle = toPage(c, view);
    out = {middle + normal * from, middle + normal * to};
    return true;
}

} // namespace

std::vector<QPolygonF> boreCut(const Route& route, const Plumb& plumb, double from_mm, double to_mm,
                               double level_mm, Side side, const Projection& view)
{
    std::vector<QPolygonF> cuts;
    std::vector<Slice> run;
    const auto close = [&] {
        if (run.size() > 1) {
            QPolygonF shape;
            for (const Slice& slice : run)
                shape << slice.high;
            for (auto slice = run.rbegin(); slice != run.rend(); ++slice)
                shape << slice->low;
            cuts.push_back(shape);
        }
        run.clear();
    };
    const int steps = std::clamp(int((to_mm - from_mm) / 2), 24, 400);
    for (int i = 0; i <= steps; ++i) {
        Slice slice;
        if (sliceAt(route, plumb, from_mm + (to_mm - from_mm) * i / steps, level_mm, side, view, slice))
            run.push_back(slice);
        else
            close();
    }
    close();
    return cuts;
}

QPolygonF outlineUnder(const QPolygonF& outline, const Plumb& plumb, double level_mm, double depth_mm,
                       const Projection& view)
{
    const auto over = [&](QPointF p) { return plumb.height(view.at(fromPage(p), depth_mm)) - level_mm; };
    QPolygonF under;
    for (qsizetype i = 0; i < outline.size(); ++i) {
        const QPointF a = outline[i];
        const QPointF b = outline[(i + 1) % outline.size()];
        const double over_a = over(a);
        const double over_b = over(b);
        if (over_a <= 0)
            under << a;
        if ((over_a <= 0) != (over_b <= 0))
            under << a + (b - a) * (over_a / (over_a - over_b));
    }
    return under;
}

} // namespace siphonwright::drawing
