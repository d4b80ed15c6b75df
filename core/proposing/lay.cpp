#include "core/proposing/lay.h"

#include "core/checks/rules.h"
#include "core/layout/route.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double valve_length_mm = 60;
constexpr double beside_part_mm = 20; ///< room for a clip's screw

double halfOutside(const Hose& hose)
{
    return hose.bore_mm.value.value_or(usual_bore_mm) / 2 + hose.wall_mm;
}

/// A clip that falls on a part steps aside to its nearer edge.
double besideParts(const Hose& hose, double along_mm)
{
    for (const InlinePart& part : hose.parts) {
        if (part.kind == InlineKind::reducer)
            continue;
        const double off_mm = along_mm - part.along_mm;
        const double room_mm = part.length_mm / 2 + beside_part_mm;
        if (std::abs(off_mm) < room_mm)
            return part.along_mm + (off_mm < 0 ? -room_mm : room_mm);
    }
    return along_mm;
}

bool atPortStart(const Hose& hose)
{
    return !hose.from.port.empty();
}

/// Length of the straight at the port's end of the hose.
double straightAtPort(const Hose& hose, const Route& route)
{
    const double mid_mm = (route.hose_from_mm + route.hose_to_mm) / 2;
    const double from_mm = atPortStart(hose) ? route.hose_from_mm : mid_mm;
    const double to_mm = atPortStart(hose) ? mid_mm : route.hose_to_mm;
    double straight_mm = 0;
    for (const Piece& piece : route.path.line.pieces()) {
        const double begins_mm = std::max(piece.s, from_mm);
        const double ends_mm = std::min(piece.s + piece.length_mm, to_mm);
        if (piece.radius_mm > 0 || ends_mm <= begins_mm)
            continue;
        const bool at_end =
            atPortStart(hose) ? begins_mm <= route.hose_from_mm + 1 : ends_mm >= route.hose_to_mm - 1;
        if (at_end)
            straight_mm = ends_mm - begins_mm;
    }
    return straight_mm;
}

} // namespace

double leastRadius(const Sketch& sketch, const Hose& hose)
{
    const Limits limits = limitsOf(*ruleById("bend-too-tight"), sketch);
    const double bore_mm = hose.bore_mm.value.value_or(usual_bore_mm);
    const double inside_mm =
        hose.min_bend_radius_mm.value.value_or(limits.caution.value_or(limits.stop.value_or(0)) * bore_mm);
    constexpr double step_mm = 5;
    return std::ceil((inside_mm + halfOutside(hose)) / step_mm) * step_mm;
}

void putOnBore(Hose& hose, double bore_mm)
{
    constexpr double same_mm = 0.3; // 3/4 in and 19 mm are one hose
    const std::optional<double> before_mm = hose.bore_mm.value;
    if (before_mm && std::abs(*before_mm - bore_mm) < same_mm)
        return;
    const auto scale = [&](double& own_mm) {
        own_mm = before_mm ? own_mm * bore_mm / *before_mm : bore_mm * end_bore_share;
    };
    scale(hose.from.bore_mm);
    scale(hose.to.bore_mm);
    for (InlinePart& part : hose.parts)
        scale(part.bore_mm);
    hose.bore_mm = {bore_mm, Source::assumed};
    hose.min_bend_radius_mm = {};
}

void clipEvenly(Hose& hose, double length_mm)
{
    hose.clips_mm.clear();
    const int spans = std::max(1, static_cast<int>(std::ceil(length_mm / clip_spacing_mm)));
    for (int i = 1; i < spans; ++i) {
        const double at_mm = std::round(besideParts(hose, length_mm * i / spans));
        if (at_mm > 0 && at_mm < length_mm)
            hose.clips_mm.push_back(at_mm);
    }
    std::sort(hose.clips_mm.begin(), hose.clips_mm.end());
}

void valveAtPort(Hose& hose, const Route& route)
{
    const double straight_mm = straightAtPort(hose, route);
    const double from_port_mm = std::min(std::max(straight_mm / 2, valve_length_mm / 2 + 10),
                                         std::min(valve_from_port_mm, route.length_mm / 2));
    InlinePart valve;
    valve.along_mm =
        std::round(atPortStart(hose) ? from_port_mm : std::max(0.0, route.length_mm - from_port_mm));
    valve.length_mm = valve_length_mm;
    valve.bore_mm = std::max(hose.from.bore_mm, hose.to.bore_mm);
    hose.parts.push_back(valve);
}

Hose laidThrough(const Sketch& sketch, Hose hose, const std::vector<RoutePoint>& points)
{
    hose.points = points;
    hose.parts.clear();
    hose.clips_mm.clear();
    const auto route = routeOf(sketch, Shared<Hose>(hose));
    valveAtPort(hose, *route);
    clipEvenly(hose, route->length_mm);
    return hose;
}

} // namespace siphonwright
