#include "tests/benchmark/timing.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"

#include <cstdio>
#include <string>

/// How long the live analysis and the proof beside it take.
namespace {

using namespace siphonwright;
using timing::line;
using timing::median_us;

/// A loop with humps and dips to find: every point of both hoses once up, once down.
Sketch wavyLoop(int points)
{
    Sketch sketch = test::soundLoop();
    for (Shared<Hose>& hose : sketch.hoses) {
        hose.edit([&](Hose& h) {
            h.points.clear();
            for (int i = 0; i < points; ++i)
                h.points.push_back({{100 + 150.0 * i, 0, i % 2 == 0 ? 300.0 : 340.0}, 60, BendKind::hose});
        });
    }
    return sketch;
}

/// The sound loop between six things that are hot or move, and a heater among them.
Sketch hemmedIn()
{
    Sketch sketch = test::soundLoop();
    for (int i = 0; i < 6; ++i) {
        Area area;
        area.id = "area-" + std::to_string(i + 1);
        area.what = i % 2 == 0 ? Hazard::exhaust : Hazard::belt;
        const double x = 150.0 + 170 * i;
        area.outline = {{x, 130}, {x + 60, 120}, {x + 90, 180}, {x + 60, 240}, {x, 240}, {x - 30, 180}};
        area.y_from_mm = 60.0 - 40 * i;
        area.y_to_mm = 160.0 - 40 * i;
        sketch.areas.push_back(Shared<Area>(area));
    }
    return sketch;
}

} // namespace

int main()
{
    const double reference_us = timing::reference_us();
    std::size_t found = 0; // printed, so that no call is left out
    const auto time = [&](const char* what, const Sketch& sketch) {
        const Analysis before = analyse(sketch);
        line(what, median_us(1000, [&] { found += analyse(sketch).findings.size(); }), reference_us);
        Sketch changed = sketch;
        const double dragging_us = median_us(1000, [&] {
            changed.hoses[0].edit([](Hose& h) { h.points[0].at.z += 0.01; });
            found += analyse(changed, &before).findings.size();
        });
        line("  the same, one hose changed since", dragging_us, reference_us);
    };
    time("sound loop, one bend each", test::soundLoop());
    time("sound loop among six areas to keep clear of", hemmedIn());
    time("wavy loop, 10 bends each", wavyLoop(10));
    time("wavy loop, 100 bends each", wavyLoop(100));
    const auto time_proof = [&](const char* what, const Sketch& sketch) {
        const Analysis level = analyse(sketch);
        line(what, median_us(50, [&] { found += prove(sketch, level)->on_grade.size(); }), reference_us);
    };
    time_proof("prove (grades and margins): sound loop", test::soundLoop());
    time_proof("prove: wavy loop, 10 bends each", wavyLoop(10));
    std::printf("findings counted: %zu\n", found);
    return 0;
}
