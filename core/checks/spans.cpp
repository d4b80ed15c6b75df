#include "core/checks/spans.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

constexpr double near_level = 0.5; ///< sine of 30 degrees, from which on a hose hangs more than it spans
constexpr double touch_mm = 1e-6;

/// Where an arc passes 30 degrees, as distances along it: its steepness is the cosine of the way from its
/// steepest place, C cos(a - phase).
void addCrossings(const Piece& piece, const Vec3& up, std::vector<double>& places_mm)
{
    const double along = dot(piece.u, up);
    const double inwards = dot(piece.n, up);
    const double steepest = std::hypot(along, inwards);
    if (steepest <= near_level)
        return;
    const double phase = std::atan2(inwards, along);
    for (const double limit : {near_level, -near_level})
        for (const double side : {1.0, -1.0})
            for (const double turn : {0.0, 2 * std::numbers::pi}) {
                const double angle = phase + side * std::acos(limit / steepest) + turn;
                const double at_mm = angle * piece.radius_mm;
                if (at_mm > 0 && at_mm < piece.length_mm)
                    places_mm.push_back(at_mm);
            }
}

/// Stretches of the hose itself within 30 degrees of level.
std::vector<HoseSpan> nearLevel(const Route& route, const Plumb& plumb)
{
    std::vector<HoseSpan> out;
    for (const Piece& piece : route.path.line.pieces()) {
        std::vector<double> places_mm = {0, piece.length_mm};
        if (piece.radius_mm > 0)
            addCrossings(piece, plumb.up(), places_mm);
        std::sort(places_mm.begin(), places_mm.end());
        for (std::size_t i = 1; i < places_mm.size(); ++i) {
            const double middle_mm = (places_mm[i - 1] + places_mm[i]) / 2;
            if (std::abs(plumb.height(piece.tangent(middle_mm))) > near_level + 1e-9)
                continue;
            const double from_mm = std::max(piece.s + places_mm[i - 1], route.hose_from_mm);
            const double to_mm = std::min(piece.s + places_mm[i], route.hose_to_mm);
            if (to_mm <= from_mm)
                continue;
            if (!out.empty() && from_mm - out.back().to_mm < touch_mm)
                out.back().to_mm = to_mm;
            else
                out.push_back({from_mm, to_mm});
        }
    }
    return out;
}

/// Cuts a stretch at its clips.
void addSpans(const HoseSpan& stretch, const Route& route, std::vector<HoseSpan>& spans)
{
    std::vector<double> ends_mm = {stretch.from_mm, stretch.to_mm};
    for (const double clip_mm : route.hose->clips_mm) {
        const double at_mm = route.hose_from_mm + clip_mm;
        if (at_mm > stretch.from_mm && at_mm < stretch.to_mm)
            ends_mm.push_back(at_mm);
    }
    std::sort(ends_mm.begin(), ends_mm.end());
    for (std::size_t i = 1; i < ends_mm.size(); ++i)
        spans.push_back({ends_mm[i - 1], ends_mm[i]});
}

} // namespace

std::vector<HoseSpan> spansNearLevel(const Route& route, const Plumb& plumb)
{
    std::vector<HoseSpan> spans;
    for (const HoseSpan& stretch : nearLevel(route, plumb))
        addSpans(stretch, route, spans);
    return spans;
}

} // namespace siphonwright
