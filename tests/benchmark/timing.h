#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <random>
#include <vector>

/// Times in microseconds, and as ratios to sorting 10,000 doubles in the same run, so that figures from
/// different machines can be compared.
namespace siphonwright::timing {

/// Median of many calls, microseconds.
inline double median_us(int calls, const std::function<void()>& call)
{
    std::vector<double> times;
    for (int i = 0; i < calls; ++i) {
        const auto start = std::chrono::steady_clock::now();
        call();
        const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - start;
        times.push_back(took.count());
    }
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

inline void line(const char* what, double time_us, double reference_us)
{
    std::printf("%-44s %10.1f us %8.3f of the reference\n", what, time_us,
                reference_us > 0 ? time_us / reference_us : 0);
    std::fflush(stdout); // some lines take minutes
}

/// Times the sorting, prints and returns it.
inline double reference_us()
{
    std::mt19937 random(1);
    std::vector<double> numbers(10000);
    for (double& number : numbers)
        number = static_cast<double>(random());
    const double time_us = median_us(200, [&] {
        std::vector<double> copy = numbers;
        std::sort(copy.begin(), copy.end());
    });
    line("reference: std::sort of 10,000 doubles", time_us, time_us);
    return time_us;
}

} // namespace siphonwright::timing
