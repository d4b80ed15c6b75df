#include "app/canvas/snap.h"

#include "app/canvas/sockets.h"

#include <array>
#include <cmath>
#include <span>

namespace siphonwright {
namespace {

constexpr double inch = 25.4;
constexpr std::array<double, 8> metric_grid = {5, 10, 50, 100, 500, 1000, 5000, 10000};
constexpr std::array<double, 9> inch_grid = {inch / 4,  inch / 2,   inch,       6 * inch,   12 * inch,
                                             60 * inch, 120 * inch, 600 * inch, 1200 * inch};

/// The coordinate of the neighbour that is nearest along one axis, if within reach.
const Vec2* nearestAlong(const std::vector<Vec2>& neighbours, double Vec2::*axis, double value,
                         double reach_mm)
{
    const Vec2* best = nullptr;
    double best_mm = reach_mm;
    for (const Vec2& n : neighbours) {
        const double off_mm = std::abs(n.*axis - value);
        if (off_mm < best_mm || (off_mm == best_mm && !best)) {
            best = &n;
            best_mm = off_mm;
        }
    }
    return best;
}

double toGrid(double value, double grid_mm)
{
    return grid_mm > 0 ? std::round(value / grid_mm) * grid_mm : value;
}

void addHoseNeighbours(const Hose& hose, const Route& route, const PartRef& part, const Projection& view,
                       std::vector<Vec2>& out)
{
    std::vector<Vec3> line = {route.from.stop};
    for (const RoutePoint& point : hose.points)
        line.push_back(point.at);
    line.push_back(route.to.stop);
    std::size_t self = part.index + 1;
    if (part.kind == PartKind::hose_end)
        self = part.index == 0 ? 0 : line.size() - 1;
    if (self > 0 && self - 1 < line.size())
        out.push_back(view.flat(line[self - 1]));
    if (self + 1 < line.size())
        out.push_back(view.flat(line[self + 1]));
}

} // namespace

double gridSpacing(double zoom, UnitSystem units)
{
    constexpr double least_px = 8;
    const std::span<const double> steps =
        units == UnitSystem::inch ? std::span<const double>(inch_grid) : std::span<const double>(metric_grid);
    for (const double step : steps)
        if (step * zoom >= least_px)
            return step;
    return steps.back();
}

double snapSpacing(double zoom, UnitSystem units)
{
    return std::min(gridSpacing(zoom, units), units == UnitSystem::inch ? inch : 50.0);
}

Snapped snapTo(Vec2 raw, const std::vector<Vec2>& neighbours, double grid_mm, double reach_mm)
{
    Snapped out;
    const Vec2* plumb = nearestAlong(neighbours, &Vec2::x, raw.x, reach_mm);
    const Vec2* level = nearestAlong(neighbours, &Vec2::z, raw.z, reach_mm);
    out.at = {plumb ? plumb->x : toGrid(raw.x, grid_mm), level ? level->z : toGrid(raw.z, grid_mm)};
    if (plumb)
        out.guides.push_back({*plumb, out.at});
    if (level)
        out.guides.push_back({*level, out.at});
    return out;
}

std::vector<Vec2> snapNeighbours(const Sketch& sketch, const Layout& layout, const PartRef& part,
                                 const Projection& view)
{
    std::vector<Vec2> out;
    const bool on_hose = part.kind == PartKind::hose_point || part.kind == PartKind::hose_end;
    const ResolvedHose* resolved = on_hose ? layout.hose(part.id) : nullptr;
    const Hose* hose = on_hose ? sketch.hose(part.id) : nullptr;
    if (hose && resolved)
        addHoseNeighbours(*hose, **resolved, part, view, out);
    for (const Socket& socket : socketsOf(sketch)) {
        const bool itself = socket.end.port == part.id || socket.end.heater == part.id;
        if (!itself)
            out.push_back(view.flat(on_hose ? socket.stop : socket.opening));
    }
    return out;
}

} // namespace siphonwright
