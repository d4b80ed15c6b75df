#include "app/canvas/hit.h"
#include "app/canvas/snap_scene.h"
#include "app/canvas/sockets.h"
#include "app/language/tr.h"

#include <cmath>

/// What a moved part lines up with as seen along the engine.
namespace siphonwright {
namespace {

/// Where the part's hose comes from and goes on to.
std::vector<Vec3> neighboursOf(const Hose& hose, const Route& route, const PartRef& part)
{
    std::vector<Vec3> line = {route.from.stop};
    for (const RoutePoint& point : hose.points)
        line.push_back(point.at);
    line.push_back(route.to.stop);
    std::size_t self = part.index + 1;
    if (part.kind == PartKind::hose_end)
        self = part.index == 0 ? 0 : line.size() - 1;
    std::vector<Vec3> out;
    if (self > 0 && self - 1 < line.size())
        out.push_back(line[self - 1]);
    if (self + 1 < line.size())
        out.push_back(line[self + 1]);
    return out;
}

void addLines(SnapScene& scene, Vec2 with, Vec2 up)
{
    scene.lines.emplace_back(SnapKind::level, with, Vec2{up.z, -up.x}, tr("level"));
    scene.lines.emplace_back(SnapKind::plumb, with, up, tr("plumb"));
}

} // namespace

SnapScene endSceneFor(const Sketch& sketch, const Layout& layout, const PartRef& part, const Projection& view)
{
    SnapScene scene;
    Vec2 up = view.flat(layout.plumb.up());
    const double share = std::hypot(up.x, up.z);
    constexpr double least = 0.2; // seen nearly from above there is no level to be seen
    if (!(share > least))
        return scene;
    up = {up.x / share, up.z / share};
    const bool on_hose = part.kind == PartKind::hose_point || part.kind == PartKind::hose_end;
    const ResolvedHose* resolved = on_hose ? layout.hose(part.id) : nullptr;
    const Hose* hose = on_hose ? sketch.hose(part.id) : nullptr;
    if (hose && resolved)
        for (const Vec3& neighbour : neighboursOf(*hose, **resolved, part))
            addLines(scene, view.flat(neighbour), up);
    for (const Socket& socket : socketsOf(sketch)) {
        const bool itself = !part.id.empty() && (socket.end.port == part.id || socket.end.heater == part.id);
        const bool moves = part.kind == PartKind::engine && !socket.end.port.empty();
        if (!itself && !moves)
            addLines(scene, view.flat(on_hose ? socket.stop : socket.opening), up);
    }
    return scene;
}

} // namespace siphonwright
