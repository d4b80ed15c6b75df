#pragma once

#include "tests/geometry/random_hoses.h"

#include "core/air/fill.h"

namespace siphonwright::test {

/// A loop with a hump in its supply hose, straight pieces and sharp corners, worked through by hand to the
/// last digit. Heights in mm; the jacket holds 10 ml per mm.
inline FillRequest workedFill()
{
    FillLoop loop;
    loop.supply = hose({{{0, 0, 300}, 0}, {{120, 0, 380}, 0}, {{300, 0, 260}, 0}, {{400, 0, 120}, 0}}, 19.05);
    loop.return_hose = hose({{{400, 0, 330}, 0}, {{300, 0, 500}, 0}, {{100, 0, 750}, 0}}, 19.05);
    loop.chamber = {{430, 0, 90}, {430, 0, 345}, 60};
    loop.supply_port.bore_mm = 19;
    loop.return_port.bore_mm = 19;
    loop.inlet.bore_mm = 16;
    loop.outlet.bore_mm = 16;
    FillRequest request;
    request.loops = {loop};
    request.jacket = {{0, 0}, {1000, 10000}};
    request.target_level_mm = 900;
    return request;
}

} // namespace siphonwright::test
