#pragma once

#include "tests/geometry/random_hoses.h"

#include "core/air/fill.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace siphonwright::test {

/// A hose through random points between two openings; sharp, tight and wide bends, now and then level.
inline Path randomRun(Dice& dice, Vec3 from, Vec3 to, std::size_t most_points)
{
    std::vector<Corner> corners = {{from, 0}};
    const std::size_t points = dice.upTo(most_points);
    for (std::size_t i = 0; i < points; ++i) {
        Corner corner;
        const double share = static_cast<double>(i + 1) / static_cast<double>(points + 1);
        corner.at.x = from.x + (to.x - from.x) * share + dice.between(-60, 60);
        corner.at.y = dice.between(-50, 50);
        corner.at.z = dice.upTo(7) == 0 ? corners.back().at.z : dice.between(60, 860);
        corner.radius_mm = dice.upTo(3) == 0 ? 0 : dice.between(5, 120);
        corners.push_back(corner);
    }
    corners.push_back({to, 0});
    Path path = hose(corners, dice.between(12, 28));
    if (dice.upTo(4) == 0) {
        const double end = path.line.length();
        const double at = end * dice.between(0.2, 0.8);
        path.bores = {{0, at, path.bores.front().bore_mm}, {at, end, dice.between(12, 28)}};
    }
    return path;
}

inline FillLoop randomLoop(Dice& dice)
{
    FillLoop loop;
    const double bottom = dice.between(40, 200);
    const double height = dice.between(120, 300);
    const double x = dice.between(380, 460);
    loop.chamber = {{x, 0, bottom}, {x + dice.between(-40, 40), 0, bottom + height}, dice.between(45, 80)};
    const double inlet = bottom + height * dice.between(0.1, 0.4);
    const double outlet = bottom + height * dice.between(0.6, 1);
    const double low_port = dice.between(150, 500);
    const double high_port = dice.between(400, 800);
    loop.supply = randomRun(dice, {0, 0, low_port}, {x, 0, inlet}, 4);
    loop.return_hose = randomRun(dice, {x, 0, outlet}, {50, 0, high_port}, 4);
    loop.supply_port.bore_mm = dice.between(12, 22);
    loop.return_port.bore_mm = dice.between(12, 22);
    loop.inlet.bore_mm = dice.between(12, 20);
    loop.outlet.bore_mm = dice.between(12, 20);
    loop.element_top_mm = bottom + height * 0.6;
    return loop;
}

inline FillRequest randomRequest(Dice& dice)
{
    FillRequest request;
    request.loops.push_back(randomLoop(dice));
    if (dice.upTo(9) == 0)
        request.loops.push_back(randomLoop(dice));
    const double area = dice.between(3, 25);
    request.jacket = {{100, 500}, {400, 500 + 300 * area}, {1000, 500 + 300 * area + 600 * area * 0.7}};
    request.target_level_mm = 900;
    request.plumb = Plumb();
    return request;
}

/// The same loops with supply and return exchanged: walked the other way round.
inline FillLoop turnedRound(const FillLoop& loop)
{
    const auto reversed = [](const Path& path) {
        // A path's corners are its pieces' meeting points: straight pieces only.
        Path back;
        const double end = path.line.length();
        std::vector<Corner> corners;
        for (const Piece& piece : path.line.pieces())
            corners.insert(corners.begin(), {piece.start, 0});
        corners.insert(corners.begin(), {path.line.at(end), 0});
        back.line = Centreline(corners);
        for (std::size_t i = path.bores.size(); i-- > 0;)
            back.bores.push_back({end - path.bores[i].to_mm, end - path.bores[i].from_mm, path.bores[i].bore_mm});
        return back;
    };
    FillLoop turned = loop;
    turned.supply = reversed(loop.return_hose);
    turned.return_hose = reversed(loop.supply);
    turned.supply_port = loop.return_port;
    turned.return_port = loop.supply_port;
    turned.inlet = loop.outlet;
    turned.outlet = loop.inlet;
    return turned;
}

} // namespace siphonwright::test
