// Figures of random sketches by one compiler, written to a file, held against those by another:
//   siphonwright_sketch_figures write FILE 100000
//   siphonwright_sketch_figures compare FILE

#include "tests/analysis/every_number.h"
#include "tests/long/random_job.h"

#include "core/analysis/analysis.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

using namespace siphonwright;

namespace {

constexpr double tolerance = 1e-9;

template <class T>
void put(std::ofstream& file, const T& value)
{
    file.write(reinterpret_cast<const char*>(&value), sizeof value);
}
template <class T>
T take(std::ifstream& file)
{
    T value{};
    file.read(reinterpret_cast<char*>(&value), sizeof value);
    return value;
}

int writeFigures(const test::RandomJobs& jobs, const std::string& path, unsigned count)
{
    std::ofstream file(path, std::ios::binary);
    put(file, count);
    for (unsigned number = 0; number < count; ++number) {
        const test::Figures figures(analyse(jobs.number(number)));
        put(file, figures.rest());
        put(file, figures.numbers().size());
        for (const double figure : figures.numbers())
            put(file, figure);
    }
    return file.flush() ? EXIT_SUCCESS : EXIT_FAILURE;
}

/// Relative to the larger of both, or to 1 in its own unit where both are smaller: what is left of a
/// difference of large numbers is as exact as these.
double difference(double a, double b)
{
    if (a == b)
        return 0;
    const double off = std::abs(a - b) / std::max({1.0, std::abs(a), std::abs(b)});
    return std::isnan(off) ? HUGE_VAL : off; // one infinite, the other not
}

int compareFigures(const test::RandomJobs& jobs, const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    const unsigned count = take<unsigned>(file);
    unsigned otherwise = 0; // other findings, another count of steps, another state
    unsigned apart = 0;
    unsigned same_bits = 0;
    double largest = 0;
    unsigned largest_in = 0;
    for (unsigned number = 0; number < count && file; ++number) {
        const test::Figures figures(analyse(jobs.number(number)));
        const auto rest = take<std::uint64_t>(file);
        std::vector<double> others(take<std::size_t>(file));
        for (double& other : others)
            other = take<double>(file);
        if (rest != figures.rest() || others.size() != figures.numbers().size()) {
            ++otherwise;
            std::printf("sketch %u says something else\n", number);
            continue;
        }
        double off = 0;
        for (std::size_t i = 0; i < others.size(); ++i)
            off = std::max(off, difference(others[i], figures.numbers()[i]));
        same_bits += off == 0 ? 1 : 0;
        if (off > tolerance) {
            ++apart;
            std::printf("sketch %u is %.3g apart\n", number, off);
        }
        if (off > largest) {
            largest = off;
            largest_in = number;
        }
    }
    std::printf(
        "%u sketches: %u equal in every figure; largest difference %.3g (sketch %u); %u over %g; %u say "
        "something else\n",
        count, same_bits, largest, largest_in, apart, tolerance, otherwise);
    return file && apart == 0 && otherwise == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}

} // namespace

int main(int argc, char** argv)
{
    const test::RandomJobs jobs(SIPHONWRIGHT_SOURCE_DIR "/samples");
    const std::string_view what = argc > 2 ? argv[1] : "";
    if (what == "write" && argc == 4)
        return writeFigures(jobs, argv[2], static_cast<unsigned>(std::strtoul(argv[3], nullptr, 10)));
    if (what == "compare" && argc == 3)
        return compareFigures(jobs, argv[2]);
    std::fprintf(stderr, "write FILE COUNT, or compare FILE\n");
    return EXIT_FAILURE;
}
