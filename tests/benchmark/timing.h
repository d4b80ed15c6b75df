#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <functional>
#include <random>
#include <vector>

/// Times in microseconds, and as ratios to sorting 10,000 doubles in the same run, so that figures from
/// different machines can be compared.
namespace siphonwright::timing {

/// The value that a share (0 to 1) of some lies under.
inline double quantile(std::vector<double> values, double share)
{
    if (values.empty())
        return 0;
    const auto place = static_cast<std::size_t>(share * static_cast<double>(values.size()));
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(std::min(place, values.size() - 1));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

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
    return quantile(std::move(times), 0.5);
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
