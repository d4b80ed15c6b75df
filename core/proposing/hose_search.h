#pragma once

#include "core/proposing/hose_rules.h"
#include "core/proposing/routes.h"

#include <optional>
#include <stop_token>
#include <vector>

/// Hoses between two given stubs that break no rule by themselves.
namespace siphonwright {

struct HoseWish {
    std::size_t how_many = 3;
    bool fine = false;         ///< look at ways over a grid too
    double apart_share = 0.06; ///< each so much longer than the one before, so that they differ
    /// Every removed way is asked rule by rule, for naming what is in the way; else those that come too near
    /// to something in a straight are left out at once. At most so many ways then.
    std::optional<std::size_t> diagnose;
};

struct FoundHoses {
    std::vector<Hose> hoses; ///< shortest first, with valve and clips
    std::vector<double> lengths_mm;
    std::size_t looked_at = 0;
    /// What removed the ways that came farthest through the rules, with how many; in the order of how far.
    struct Tally {
        RemovedBy removed;
        std::size_t ways = 0;
    };
    std::vector<Tally> removed; ///< only where asked to diagnose
};

/// Where a hose end leaves its stub; nothing for an end on nothing.
std::optional<RouteEnd> routeEnd(const Sketch& sketch, const HoseEnd& end);

/// \param sketch with the heater and the ports that `like` is on
/// \param like the hose's role, ends, bore and name; its points, parts and clips are replaced
FoundHoses soundHoses(const Sketch& sketch, const Hose& like, PartRules& rules, const HoseWish& wish,
                      const std::stop_token& stop);

} // namespace siphonwright
