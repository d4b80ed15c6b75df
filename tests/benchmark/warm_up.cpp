#include "tests/warm_up/typical_engine.h"

#include "core/physics/warm_up_bands.h"

#ifdef SIPHONWRIGHT_HAS_CVODE
#include "tests/warm_up/cvode_day.h"
#endif

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <random>

/// How long a warm-up over 24 hours takes: in milliseconds, as a ratio to sorting 100,000 doubles in the same
/// run, and against CVODE on the same equations at an error no smaller than ours.
namespace {

using namespace siphonwright;
using siphonwright::test::halfGlycol;
using siphonwright::test::TypicalEngine;
using siphonwright::test::typicalWarmUp;

/// Shortest of some calls, milliseconds: what else the machine does can only add to it.
double shortest_ms(int calls, const std::function<void()>& call)
{
    double shortest = 1e9;
    for (int i = 0; i < calls; ++i) {
        const auto start = std::chrono::steady_clock::now();
        call();
        const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
        shortest = std::min(shortest, took.count());
    }
    return shortest;
}

double sorting_ms()
{
    std::mt19937 random(1);
    std::vector<double> numbers(100000);
    for (double& number : numbers)
        number = static_cast<double>(random());
    return shortest_ms(20, [&] {
        std::vector<double> copy = numbers;
        std::sort(copy.begin(), copy.end());
    });
}

#ifdef SIPHONWRIGHT_HAS_CVODE

/// Error of a day's last switch, s; a day with another count of switches is no match at all.
double lastError_s(const test::CvodeDay& day, const test::CvodeDay& exact)
{
    const bool same = day.worked && day.switches_s.size() == exact.switches_s.size();
    return same ? std::abs(day.switches_s.back() - exact.switches_s.back()) : 1e9;
}

/// The fastest of CVODE's methods and tolerances among those that err no less than we do; the tightest of
/// them when all err less.
void againstCvode(const WarmUpInputs& inputs, double ours_ms)
{
    const test::CvodeDay exact = test::cvodeDay(inputs, halfGlycol(), 1e-11, 1e-10);
    const WarmUp ours = warmUp(inputs, halfGlycol());
    const double ours_s = std::abs(ours.loops[0].switches.back().time_s - exact.switches_s.back());
    std::printf("    last switch off by %.4f s, %zu evaluations\n", ours_s, ours.evaluations);
    for (const auto method : {test::CvodeMethod::bdf, test::CvodeMethod::adams}) {
        for (const double tolerance : {1e-5, 1e-6, 1e-7, 1e-8, 1e-9}) {
            test::CvodeDay day;
            const double theirs_ms = shortest_ms(
                3, [&] { day = test::cvodeDay(inputs, halfGlycol(), tolerance, tolerance * 10, method); });
            const double theirs_s = lastError_s(day, exact);
            std::printf(
                "    CVODE %-5s %.0e %9.2f ms, %5.2f times ours; last off by %8.4f s%s, %ld evaluations\n",
                method == test::CvodeMethod::bdf ? "BDF" : "Adams", tolerance, theirs_ms, theirs_ms / ours_ms,
                theirs_s, theirs_s >= ours_s ? " (no better)" : "", day.evaluations);
        }
    }
}

#endif

void day(const char* what, const WarmUpInputs& inputs, double reference_ms)
{
    std::size_t switches = 0;
    const double took_ms =
        shortest_ms(20, [&] { switches = warmUp(inputs, halfGlycol()).loops[0].switches.size(); });
    std::printf("%-40s %8.2f ms %7.3f of the reference, %zu switches\n", what, took_ms,
                took_ms / reference_ms, switches);
#ifdef SIPHONWRIGHT_HAS_CVODE
    againstCvode(inputs, took_ms);
#endif
}

} // namespace

int main()
{
    const double reference_ms = sorting_ms();
    std::printf("%-40s %8.2f ms\n", "reference: std::sort of 100,000 doubles", reference_ms);
    TypicalEngine engine;
    day("24 h at -20 degC, sound", typicalWarmUp(engine), reference_ms);
    engine.air_degC = engine.start_degC = 0;
    day("24 h at 0 degC, sound", typicalWarmUp(engine), reference_ms);
    engine.port_distance_mm = 100;
    day("24 h at 0 degC, ports close", typicalWarmUp(engine), reference_ms);
    const double bands_ms = shortest_ms(1, [] { warmUpBands(typicalWarmUp({}), halfGlycol()); });
    std::printf("%-40s %8.0f ms %7.1f of the reference\n", "bands of 200 samples at -20 degC", bands_ms,
                bands_ms / reference_ms);
    return 0;
}
