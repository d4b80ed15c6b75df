#include "tests/benchmark/timing.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"

#include <cstdio>

/// How long the live analysis takes.
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
    time("wavy loop, 10 bends each", wavyLoop(10));
    time("wavy loop, 100 bends each", wavyLoop(100));
    std::printf("findings counted: %zu\n", found);
    return 0;
}
