#include "core/physics/bands.h"

#include "core/physics/latin_hypercube.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <numeric>
#include <system_error>
#include <thread>

namespace siphonwright {
namespace {

/// Ranks from 0, equal values sharing the mean of theirs.
std::vector<double> ranksOf(const std::vector<double>& values)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    std::vector<double> ranks(values.size());
    for (std::size_t first = 0, last = 0; first < order.size(); first = last) {
        while (last < order.size() && values[order[last]] == values[order[first]])
            ++last;
        for (std::size_t i = first; i < last; ++i)
            ranks[order[i]] = (static_cast<double>(first) + static_cast<double>(last - 1)) / 2;
    }
    return ranks;
}

Message problemIn(const std::vector<UncertainFigure>& assumptions, const SampleFunction& function,
                  const BandOptions& options)
{
    if (!function)
        return {"There is nothing to sample.", {}, {}};
    if (options.samples < 20 || options.samples > 100000)
        return {"Bands take 20 to 100000 samples.", {}, {}};
    for (const UncertainFigure& a : assumptions) {
        const bool ordered = std::isfinite(a.low) && std::isfinite(a.high) && a.low <= a.high;
        const bool logarithmic = a.spread != Spread::logarithmic || a.low > 0;
        const bool peaked = a.spread != Spread::peaked || (a.low <= a.likely && a.likely <= a.high);
        if (!(ordered && logarithmic && peaked))
            return {"The range of {a} does not hold together.", {}, {a.name}};
    }
    return {};
}

/// One output over all samples: where it is known, with the samples' numbers.
struct Column {
    std::vector<double> values;
    std::vector<std::size_t> samples;
};

Column columnOf(const std::vector<Outputs>& results, std::size_t output)
{
    Column column;
    for (std::size_t i = 0; i < results.size(); ++i) {
        if (output >= results[i].size() || !results[i][output] || std::isnan(*results[i][output]))
            continue;
        column.values.push_back(*results[i][output]);
        column.samples.push_back(i);
    }
    return column;
}

Band bandOf(const Column& column, const std::vector<std::vector<double>>& points, std::size_t factors)
{
    Band band;
    band.samples = column.values.size();
    if (column.values.empty())
        return band;
    std::vector<double> rising = column.values;
    std::sort(rising.begin(), rising.end());
    band.p5 = percentile(rising, 0.05);
    band.p50 = percentile(rising, 0.50);
    band.p95 = percentile(rising, 0.95);
    for (std::size_t factor = 0; factor < factors; ++factor) {
        std::vector<double> places;
        for (const std::size_t sample : column.samples)
            places.push_back(points[sample][factor]);
        band.drivers.push_back({factor, rankCorrelation(places, column.values)});
    }
    std::stable_sort(band.drivers.begin(), band.drivers.end(), [](const Driver& a, const Driver& b) {
        return std::abs(a.rank_correlation) > std::abs(b.rank_correlation);
    });
    return band;
}

/// The function at every point, or as many as were done when it was stopped; `done` counts them.
std::vector<Outputs> sampled(const std::vector<UncertainFigure>& assumptions,
                             const std::vector<std::vector<double>>& points, const SampleFunction& function,
                             unsigned threads, const std::stop_token& stop, std::atomic<std::size_t>& done)
{
    std::vector<Outputs> results(points.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        std::vector<double> values(assumptions.size());
        for (std::size_t i = next++; i < points.size() && !stop.stop_requested(); i = next++) {
            for (std::size_t k = 0; k < values.size(); ++k)
                values[k] = valueAt(assumptions[k], points[i][k]);
            results[i] = function(values);
            ++done;
        }
    };
    std::vector<std::jthread> beside;
    try {
        for (unsigned i = 1; i < threads; ++i)
            beside.emplace_back(work);
    } catch (const std::system_error&) {
        // No more threads to be had: those there are do the work.
    }
    work();
    beside.clear(); // joins them
    return results;
}

} // namespace

double valueAt(const UncertainFigure& a, double u)
{
    switch (a.spread) {
    case Spread::even:
        break;
    case Spread::logarithmic:
        return a.low * std::exp(u * std::log(a.high / a.low));
    case Spread::peaked: {
        const double width = a.high - a.low;
        if (!(width > 0))
            return a.low;
        const double rising_share = (a.likely - a.low) / width;
        return u < rising_share ? a.low + std::sqrt(u * width * (a.likely - a.low))
                                : a.high - std::sqrt((1 - u) * width * (a.high - a.likely));
    }
    }
    return a.low + u * (a.high - a.low);
}

double percentile(const std::vector<double>& rising, double share)
{
    const double place = share * static_cast<double>(rising.size() - 1);
    const auto below = std::min(static_cast<std::size_t>(place), rising.size() - 1);
    const std::size_t above = std::min(below + 1, rising.size() - 1);
    return rising[below] + (place - static_cast<double>(below)) * (rising[above] - rising[below]);
}

double rankCorrelation(const std::vector<double>& a, const std::vector<double>& b)
{
    const std::vector<double> rank_a = ranksOf(a), rank_b = ranksOf(b);
    const double mean = (static_cast<double>(a.size()) - 1) / 2;
    double ab = 0, aa = 0, bb = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        ab += (rank_a[i] - mean) * (rank_b[i] - mean);
        aa += (rank_a[i] - mean) * (rank_a[i] - mean);
        bb += (rank_b[i] - mean) * (rank_b[i] - mean);
    }
    return aa > 0 && bb > 0 ? ab / std::sqrt(aa * bb) : 0;
}

Bands bandsOf(const std::vector<UncertainFigure>& assumptions, const SampleFunction& function,
              const BandOptions& options, const std::stop_token& stop)
{
    Bands bands;
    bands.message = problemIn(assumptions, function, options);
    if (!bands.message.pattern.empty())
        return bands;
    const auto points = latinHypercube(options.samples, assumptions.size(), options.seed);
    std::atomic<std::size_t> done = 0;
    const std::vector<Outputs> results = sampled(assumptions, points, function, options.threads, stop, done);
    bands.samples_done = done;
    if (bands.samples_done < points.size()) {
        bands.status = BandStatus::stopped;
        bands.message = {"The bands were stopped.", {}, {}};
        return bands;
    }
    std::size_t outputs = 0;
    for (const Outputs& one : results)
        outputs = std::max(outputs, one.size());
    for (std::size_t output = 0; output < outputs; ++output)
        bands.outputs.push_back(bandOf(columnOf(results, output), points, assumptions.size()));
    bands.status = BandStatus::done;
    return bands;
}

} // namespace siphonwright
