#pragma once

#include "core/sketch/sketch.h"

#include <cstddef>
#include <stop_token>
#include <vector>

/// Ways to lead one hose between two stubs, before any rule has looked at them.
namespace siphonwright {

/// Where a hose is pushed on, and the unit vector along which it leaves its stub there.
struct RouteEnd {
    Vec3 stop;
    Vec3 outward;
};

struct RouteWish {
    HoseRole role = HoseRole::supply;
    double radius_mm = 100;      ///< of every bend, to the centreline
    double half_outside_mm = 15; ///< of the hose
    Vec3 up = {0, 0, 1};
    const std::vector<Shared<Area>>* areas = nullptr; ///< led round
    bool fine = false; ///< intermediate points on a grid too, where the short list gives nothing
};

/// One way: its points and the length of straight lines through them, mm, a little over that of the hose.
struct HoseWay {
    std::vector<Vec3> points;
    double length_mm = 0;
};

/// What removed ways before they were looked at more closely.
struct WaysLeftOut {
    std::size_t no_room_for_bend = 0;
    std::size_t wrong_way = 0; ///< a return that falls, or a supply that rises and falls again
};

/// All ways of one kind, shortest first: straight out of both stubs by 0.45 to 6.5 bend radii, then straight
/// across (one or two points), or by one point between (three): square round, past the corners of areas, and
/// with `fine` over a grid. No two bends want the same straight; a return never falls, a supply falls and may
/// rise once after that (which only holds coolant when drained).
std::vector<HoseWay> waysBetween(const RouteEnd& from, const RouteEnd& to, const RouteWish& wish,
                                 WaysLeftOut& left_out, const std::stop_token& stop = {});

} // namespace siphonwright
