#include "tests/benchmark/timing.h"
#include "tests/sound_loop.h"

#include "app/canvas/snap_scene.h"

#include "core/sketch/edits.h"

#include <cstdio>

/// How long one step of a drag takes to gather what there is to snap to, and to snap.
namespace {

using namespace siphonwright;

/// Many points, heaters and areas near each other.
Sketch crowded()
{
    Sketch sketch = test::soundLoop();
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([](Hose& h) {
            h.points.clear();
            for (int i = 0; i < 100; ++i)
                h.points.push_back({{100 + 12.0 * i, 0, 300.0 + i % 7}, 60, BendKind::hose});
        });
    for (int i = 0; i < 20; ++i) {
        Area area;
        const double x = 60.0 * i;
        area.outline = {{x, 130}, {x + 30, 120}, {x + 45, 180}, {x + 30, 240}, {x, 240}};
        addArea(sketch, area);
        addHeater(sketch, sketch.heaters[0]);
    }
    return sketch;
}

void time(const char* what, const Sketch& sketch, double reference_us)
{
    constexpr double zoom_reach_mm = 14;
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const PartRef part = {PartKind::hose_point, "hose-2", 0};
    double sum = 0; // printed, so that no call is left out
    double x = 500;
    const double time_us = timing::median_us(1000, [&] {
        x += 0.37;
        const Snapped snapped =
            snap({x, 310}, sceneFor(sketch, layout, part, 0.02), SnapChoice(), 10, zoom_reach_mm);
        sum += snapped.at.x;
    });
    timing::line(what, time_us, reference_us);
    std::printf("(%.0f)\n", sum);
}

} // namespace

int main()
{
    const double reference_us = timing::reference_us();
    time("snapping, sound loop", test::soundLoop(), reference_us);
    time("snapping, 200 points, 20 areas, 21 heaters", crowded(), reference_us);
}
