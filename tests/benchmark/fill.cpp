#include "tests/air/random_loops.h"
#include "tests/air/worked_loop.h"
#include "tests/benchmark/timing.h"

#include "core/air/purge.h"
#include "core/layout/layout.h"
#include "core/running/filling.h"
#include "core/running/running.h"
#include "core/sketch/file.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <variant>
#include <vector>

/// How long filling takes: loops cut into cells, a fill to its end alone, with 400 frames, and a purge; for
/// every sample as it is filled, with all valves open from the start, and live; and for some random loops.
namespace {

using namespace siphonwright;
using timing::line;
using timing::median_us;

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

std::string contents(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// Without valves to open one after the other.
FillRequest allOpen(FillRequest request)
{
    for (const ValvePlace& place : request.then_open)
        request.loops[place.loop].valves[place.valve].open = true;
    request.then_open.clear();
    return request;
}

class Timed {
public:
    explicit Timed(double reference_us) : reference_us_(reference_us) {}

    void all(const std::string& what, FillRequest request)
    {
        const FillResult result = fill(request);
        std::printf("%s: %zu cells, %zu events%s\n", what.c_str(), result.end.network->cells.size(),
                    result.events.size(), result.status == FillStatus::filled ? "" : ", NOT FILLED");
        line("  cut into cells",
             median_us(
                 200,
                 [&] { seen_ += cutIntoCells(request.loops, request.jacket, request.plumb).cells.size(); }),
             reference_us_);
        end("  final state", request);
        if (!request.then_open.empty())
            end("  final state, valves open from the start", allOpen(request));
        PurgeRequest pump;
        pump.flows = {{12, FlowSense::forward}};
        pump.top_up_level_mm = request.target_level_mm;
        line("  purge", median_us(100, [&] { seen_ += purge(result.end, pump).pockets.size(); }),
             reference_us_);
        request.frames = 400;
        line("  400 frames", median_us(50, [&] { seen_ += fill(request).frames.size(); }), reference_us_);
    }

    /// A sketch and its layout on the way of a drag.
    struct Moved {
        Sketch sketch;
        Layout layout;
    };
    /// The first point of the first hose that has one goes a little farther from one to the next.
    static std::vector<Moved> dragged(Sketch sketch)
    {
        constexpr int moves = 100;
        constexpr double step_mm = 0.01;
        const auto hose = std::find_if(sketch.hoses.begin(), sketch.hoses.end(),
                                       [](const auto& one) { return !one->points.empty(); });
        std::vector<Moved> all;
        for (int i = 0; i < moves; ++i) {
            if (hose != sketch.hoses.end())
                hose->edit([](Hose& one) { one.points.front().at.z -= step_mm; });
            all.push_back({sketch, resolve(sketch, plumbOf(sketch))});
        }
        return all;
    }

    /// What a drag asks for at every move: the fill to its end, the engine run, the coldest level.
    void live(const Sketch& sketch)
    {
        const Layout layout = resolve(sketch, plumbOf(sketch));
        const Assumptions assumed(sketch);
        const Running running = runSteady(sketch, layout, assumed);
        LevelTables kept;
        line("  live",
             median_us(100, [&] { seen_ += fillOf(sketch, layout, &running, assumed).pockets.size(); }),
             reference_us_);
        line(
            "  live, no hose moved",
            median_us(100, [&] { seen_ += fillOf(sketch, layout, &running, assumed, &kept).pockets.size(); }),
            reference_us_);
        const std::vector<Moved> moves = dragged(sketch);
        auto moved = moves.begin();
        line("  live, one hose dragged",
             median_us(static_cast<int>(moves.size()),
                       [&] {
                           seen_ +=
                               fillOf(moved->sketch, moved->layout, &running, assumed, &kept).pockets.size();
                           ++moved;
                       }),
             reference_us_);
    }

    std::size_t seen() const { return seen_; }

private:
    void end(const char* what, const FillRequest& request)
    {
        line(what, median_us(100, [&] { seen_ += fill(request).events.size(); }), reference_us_);
    }

    double reference_us_;
    std::size_t seen_ = 0; // printed, so that no call is left out
};

} // namespace

int main(int count, char** arguments)
{
    Timed timed(timing::reference_us());
    const std::filesystem::path folder = std::filesystem::path(SIPHONWRIGHT_SOURCE_DIR) / "samples";
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".siphon" &&
            (count < 2 || entry.path().stem().string() == arguments[1]))
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    for (const auto& file : files) {
        const auto read = readSketch(contents(file));
        const Sketch* sketch = std::get_if<Sketch>(&read);
        if (!sketch)
            continue;
        const FillPlanOf plan =
            fillRequestOf(*sketch, resolve(*sketch, plumbOf(*sketch)), Assumptions(*sketch));
        if (plan.request) {
            timed.all(file.stem().string(), *plan.request);
            timed.live(*sketch);
        }
    }
    if (count < 2) {
        timed.all("worked loop, corners", test::workedFill());
        timed.all("worked loop, bends", bentFill());
        for (const std::uint64_t seed : {3U, 4U, 5U, 6U}) {
            test::Dice dice(seed);
            timed.all("random loop", test::randomFill(dice).built());
        }
    }
    std::printf("counted: %zu\n", timed.seen());
    return 0;
}
