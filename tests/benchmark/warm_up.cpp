#include "tests/warm_up/typical_engine.h"
#include "tests/warm_up/warm_up_bands.h"

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
/// run, and against CVODE on the same equations, tolerance by tolerance down to our error.
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

/// Largest error of all switches of a day, s; a day with another count of them is no match at all.
double worstError_s(const std::vector<double>& switches_s, const std::vector<double>& exact_s)
{
    if (switches_s.size() != exact_s.size())
        return 1e9;
    double worst_s = 0;
    for (std::size_t i = 0; i < exact_s.size(); ++i)
        worst_s = std::max(worst_s, std::abs(switches_s[i] - exact_s[i]));
    return worst_s;
}

/// Each of CVODE's methods at falling tolerances, from the first that is near until one errs no more than we.
void againstCvode(const WarmUpInputs& inputs, double ours_ms)
{
    const std::vector<double> exact_s = test::cvodeDay(inputs, halfGlycol(), 1e-11, 1e-10).switches_s;
    const WarmUp ours = warmUp(inputs, halfGlycol());
    std::vector<double> switches_s;
    for (const HeaterSwitch& s : ours.loops[0].switches)
        switches_s.push_back(s.time_s);
    switches_s.erase(switches_s.begin()); // power on at the start
    const double ours_s = worstError_s(switches_s, exact_s);
    std::printf("    %zu evaluations; switches within %.4f s\n", ours.evaluations, ours_s);
    for (const auto method : {test::CvodeMethod::bdf, test::CvodeMethod::adams}) {
        for (const double tolerance : {1e-5, 1e-6, 1e-7, 1e-8, 1e-9}) {
            test::CvodeDay day;
            const double theirs_ms = shortest_ms(
                5, [&] { day = test::cvodeDay(inputs, halfGlycol(), tolerance, tolerance * 10, method); });
            const double theirs_s = day.worked ? worstError_s(day.switches_s, exact_s) : 1e9;
            std::printf("    CVODE %-5s %.0e %8.2f ms, %5.2f times ours; %ld evaluations; within %.4f s\n",
                        method == test::CvodeMethod::bdf ? "BDF" : "Adams", tolerance, theirs_ms,
                        theirs_ms / ours_ms, day.evaluations, theirs_s);
            if (theirs_s <= ours_s)
                break;
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
