#include "app/canvas/hose_draft.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

HoseEnd endOn(const std::optional<Socket>& socket, Vec3 open_at)
{
    HoseEnd end;
    end.open_at = open_at;
    if (!socket)
        return end;
    end = socket->end;
    // A barb is bored like the fitting that it is screwed into, where that is known.
    end.bore_mm = socket->bore_mm.value_or(HoseEnd().bore_mm);
    return end;
}

/// Whether an end sends coolant into a hose of this role: a heater's outlet does, its inlet does not, an
/// engine port does into a supply and takes a return. Nothing for an open end.
std::optional<bool> sends(HoseRole role, const HoseEnd& end)
{
    if (!end.heater.empty())
        return end.nozzle == NozzleKind::outlet;
    if (!end.port.empty())
        return role == HoseRole::supply;
    return std::nullopt;
}

/// Whether coolant would flow against the order of the clicks. Where the ends contradict each other (a supply
/// pushed onto the outlet) the engine's side of the loop decides.
bool runsBackwards(HoseRole role, const HoseEnd& first, const HoseEnd& last)
{
    if (!first.port.empty() || !last.port.empty()) {
        const bool first_is_engine = !first.port.empty();
        return first_is_engine != (role == HoseRole::supply);
    }
    if (const std::optional<bool> first_sends = sends(role, first))
        return !*first_sends;
    return sends(role, last).value_or(false);
}

/// The centreline radius that the hose's maker allows: the minimum to the inside of the bend and half the
/// outside diameter; without an entered minimum six bores.
double legalRadius(const Hose& hose)
{
    constexpr double least_bores = 6;
    constexpr double usual_bore_mm = 19.05;
    const double bore_mm = hose.bore_mm.value.value_or(usual_bore_mm);
    const double inside_mm = hose.min_bend_radius_mm.value.value_or(least_bores * bore_mm);
    return std::ceil(inside_mm + (bore_mm + 2 * hose.wall_mm) / 2);
}

/// The largest radius with which a bend takes at most its share of the straights beside it: the whole of one
/// that ends in a stop, half of one that ends in another bend.
double radiusThatFits(Vec3 before, bool bend_before, Vec3 at, Vec3 after, bool bend_after)
{
    constexpr double straight_rad = 1e-6;
    const double room_mm = std::min(distance(before, at) * (bend_before ? 0.5 : 1),
                                    distance(at, after) * (bend_after ? 0.5 : 1));
    const double turn = std::acos(std::clamp(dot(unit(at - before), unit(after - at)), -1.0, 1.0));
    if (turn < straight_rad)
        return HUGE_VAL;
    return room_mm / std::tan(turn / 2);
}

/// Points are clicked in the elevation; their depth goes evenly from one end's to the other's, so that the
/// hose leaves and meets its stubs in their own plane.
void spreadDepth(std::vector<Vec3>& line)
{
    if (line.size() < 4)
        return;
    const double from_y = line.front().y;
    const double to_y = line.back().y;
    std::vector<double> run = {0};
    for (std::size_t i = 2; i + 1 < line.size(); ++i)
        run.push_back(run.back() + std::hypot(line[i].x - line[i - 1].x, line[i].z - line[i - 1].z));
    for (std::size_t i = 1; i + 1 < line.size(); ++i) {
        const double share = run.back() > 0 ? run[i - 1] / run.back() : 0;
        line[i].y = from_y + (to_y - from_y) * share;
    }
}

void fitRoute(Sketch& sketch, const Id& id)
{
    for (Shared<Hose>& shared : sketch.hoses) {
        if (shared->id != id)
            continue;
        const auto from = attachment(sketch, shared->from);
        const auto to = attachment(sketch, shared->to);
        std::vector<Vec3> line = {from ? from->stub.back().at : shared->from.open_at};
        for (const RoutePoint& point : shared->points)
            line.push_back(point.at);
        line.push_back(to ? to->stub.back().at : shared->to.open_at);
        spreadDepth(line);
        const double legal_mm = legalRadius(*shared);
        shared.edit([&](Hose& hose) {
            for (std::size_t i = 0; i < hose.points.size(); ++i) {
                hose.points[i].at = line[i + 1];
                const bool first = i == 0;
                const bool last = i + 1 == hose.points.size();
                const double fits_mm = radiusThatFits(line[i], !first, line[i + 1], line[i + 2], !last);
                // Whole millimetres, downwards, leave the fit a little air.
                hose.points[i].radius_mm = std::max(1.0, std::min(legal_mm, std::floor(fits_mm)));
            }
        });
    }
}

} // namespace

Id addDraft(Sketch& sketch, const HoseDraft& draft, const std::optional<Socket>& last)
{
    std::vector<Vec3> places = draft.places;
    if (draft.first && last && draft.first->sameAs(last->end))
        return {};
    HoseEnd from = endOn(draft.first, places.empty() ? Vec3{} : places.front());
    if (!draft.first && !places.empty())
        places.erase(places.begin());
    if (!last && places.empty())
        return {};
    HoseEnd to = endOn(last, places.empty() ? Vec3{} : places.back());
    if (!last)
        places.pop_back();
    if (runsBackwards(draft.role, from, to)) {
        std::swap(from, to);
        std::reverse(places.begin(), places.end());
    }
    std::vector<RoutePoint> points;
    for (const Vec3& place : places) {
        points.emplace_back();
        points.back().at = place;
    }
    const Id id = addHose(sketch, draft.role, from, to, std::move(points));
    fitRoute(sketch, id);
    return id;
}

} // namespace siphonwright
