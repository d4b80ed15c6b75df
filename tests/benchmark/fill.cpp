#include "tests/air/random_loops.h"
#include "tests/air/worked_loop.h"

#include "core/air/purge.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <vector>

/// How long filling takes, in microseconds: to the end alone, with 400 frames, and a purge.
namespace {

using namespace siphonwright;

double median_us(int calls, const std::function<void()>& call)
{
    std::vector<double> times;
    for (int i = 0; i < calls; ++i) {
        const auto start = std::chrono::steady_clock::now();
        call();
        const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - start;
        times.push_back(took.count());
    }
    std::nth_element(times.begin(), times.begin() + times.size() / 2, times.end());
    return times[times.size() / 2];
}

/// The worked loop with bends in place of its corners.
FillRequest bentFill()
{
    FillRequest request = test::workedFill();
    FillLoop& loop = request.loops[0];
    loop.supply =
        test::hose({{{0, 0, 300}, 0}, {{120, 0, 380}, 60}, {{300, 0, 260}, 60}, {{400, 0, 120}, 0}}, 19.05);
    loop.return_hose = test::hose({{{400, 0, 330}, 0}, {{300, 0, 500}, 60}, {{100, 0, 750}, 0}}, 19.05);
    return request;
}

} // namespace

int main()
{
    std::size_t seen = 0; // printed, so that no call is left out
    const auto time = [&](const char* what, FillRequest request) {
        const std::size_t cells = cutIntoCells(request.loops, request.jacket, request.plumb).cells.size();
        const double cut = median_us(
            300, [&] { seen += cutIntoCells(request.loops, request.jacket, request.plumb).cells.size(); });
        const double end = median_us(300, [&] { seen += fill(request).events.size(); });
        const Filled filled = fill(request).end;
        PurgeRequest pump;
        pump.flows = {{12, FlowSense::forward}};
        pump.top_up_level_mm = request.target_level_mm;
        const double purged = median_us(300, [&] { seen += purge(filled, pump).pockets.size(); });
        request.frames = 400;
        const double frames = median_us(100, [&] { seen += fill(request).frames.size(); });
        std::printf("%-28s %2zu cells: cut %6.1f, end %6.1f, 400 frames %7.1f, purge %6.1f us\n", what, cells,
                    cut, end, frames, purged);
    };
    time("worked loop, corners", test::workedFill());
    time("worked loop, bends", bentFill());
    for (const std::uint64_t seed : {3U, 4U, 5U, 6U}) {
        test::Dice dice(seed);
        time("random loop", test::randomFill(dice).built());
    }
    std::printf("counted: %zu\n", seen);
    return 0;
}
