#include "core/commissioning/likelihood.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace siphonwright {
namespace {

constexpr double kept_correlation = 0.7;
constexpr double off_spread_A = 0.15; ///< of a clamp meter at nothing
constexpr double least_share_on = 0.03;
constexpr double wrong_supply = 0.02;

constexpr std::array temperatures = {Channel::inlet, Channel::outlet, Channel::hose_surface, Channel::engine};

double logNormal(double off, double spread)
{
    return -0.5 * (off / spread) * (off / spread) - std::log(spread);
}

double total(const Course& course, std::size_t time, Channel channel)
{
    return std::hypot(course.spreadOf(time, channel), spreadOf(channel, course.meanOf(time, channel)));
}

/// A temperature that was read.
struct Point {
    std::size_t time = 0;
    Channel channel = Channel::inlet;
    double off_K = 0; ///< read less the members' mean
};

std::vector<Point> pointsOf(const Evidence& evidence, const Course& course)
{
    std::vector<Point> out;
    for (std::size_t i = 0; i < evidence.readings.size(); ++i)
        for (const Channel channel : temperatures)
            if (const std::optional<double>& value = readOn(evidence.readings[i], channel))
                out.push_back({i, channel, *value - course.meanOf(i, channel)});
    return out;
}

double covariance(const Course& course, const Point& a, const Point& b)
{
    const double mean_a = course.meanOf(a.time, a.channel);
    const double mean_b = course.meanOf(b.time, b.channel);
    double sum = 0;
    for (const std::vector<Instant>& member : course.members)
        sum += (member[a.time][static_cast<std::size_t>(a.channel)] - mean_a) *
               (member[b.time][static_cast<std::size_t>(b.channel)] - mean_b);
    return sum / std::max(1.0, double(course.members.size()) - 1);
}

/// ln of a normal density by Cholesky's factor of its covariance, row after row.
double logNormal(const std::vector<Point>& points, const Course& course)
{
    const std::size_t n = points.size();
    std::vector<double> factor(n * n);
    std::vector<double> solved(n);
    double out = 0;
    for (std::size_t i = 0; i < n; ++i) {
        double left = points[i].off_K;
        for (std::size_t k = 0; k <= i; ++k) {
            double value = covariance(course, points[i], points[k]);
            if (i == k) {
                const double own =
                    spreadOf(points[i].channel, course.meanOf(points[i].time, points[i].channel));
                value += own * own;
            } else {
                value *= kept_correlation;
            }
            for (std::size_t j = 0; j < k; ++j)
                value -= factor[i * n + j] * factor[k * n + j];
            if (i == k)
                factor[i * n + i] = std::sqrt(std::max(value, 1e-6));
            else
                factor[i * n + k] = value / factor[k * n + k];
        }
        for (std::size_t k = 0; k < i; ++k)
            left -= factor[i * n + k] * solved[k];
        solved[i] = left / factor[i * n + i];
        out += -0.5 * solved[i] * solved[i] - std::log(factor[i * n + i]);
    }
    return out;
}

double logCurrent(const Course& course, std::size_t time, double read_A)
{
    const double share = std::clamp(course.shareOn(time), least_share_on, 1 - least_share_on);
    const double on_A = currentWhileOn(course, time);
    const double off = std::log(1 - share) + logNormal(read_A, off_spread_A);
    if (!(on_A > 0))
        return off;
    const double on = std::log(share) + logNormal(read_A - on_A, spreadOf(Channel::current, on_A));
    const double larger = std::max(on, off);
    return larger + std::log(std::exp(on - larger) + std::exp(off - larger));
}

double startsMean(const Course& course)
{
    double sum = 0;
    for (const double starts : course.starts)
        sum += starts;
    return sum / std::max(1.0, double(course.starts.size()));
}

double startsSpread(const Course& course)
{
    const double mean = startsMean(course);
    double sum = 1;
    for (const double starts : course.starts)
        sum += (starts - mean) * (starts - mean) / std::max(1.0, double(course.starts.size()) - 1);
    return std::sqrt(sum);
}

} // namespace

double currentWhileOn(const Course& course, std::size_t time)
{
    double sum = 0;
    double count = 0;
    for (const std::vector<Instant>& member : course.members) {
        const double current_A = member[time][static_cast<std::size_t>(Channel::current)];
        if (current_A > 1e-3) {
            sum += current_A;
            count += 1;
        }
    }
    return count > 0 ? sum / count : 0;
}

double logLikelihood(const Evidence& evidence, const Course& course)
{
    double out = logNormal(pointsOf(evidence, course), course);
    for (std::size_t i = 0; i < evidence.readings.size(); ++i) {
        const Reading& reading = evidence.readings[i];
        if (reading.current_A)
            out += logCurrent(course, i, *reading.current_A);
        for (const Channel channel : {Channel::voltage, Channel::coolant_level})
            if (const std::optional<double>& value = readOn(reading, channel))
                out += logNormal(*value - course.meanOf(i, channel), total(course, i, channel));
        if (reading.energised)
            out += std::log(*reading.energised == course.supplied ? 1 - wrong_supply : wrong_supply);
    }
    if (evidence.starts)
        out += logNormal(*evidence.starts - startsMean(course), startsSpread(course));
    return out;
}

double separationAt(const Course& a, const Course& b, std::size_t time, Channel channel)
{
    if (channel == Channel::current) {
        constexpr double sure = 4; // one that draws and one that does not: own choice
        const double by_share = sure * std::abs(a.shareOn(time) - b.shareOn(time));
        const double a_A = currentWhileOn(a, time);
        const double b_A = currentWhileOn(b, time);
        const double both_on = std::min(a.shareOn(time), b.shareOn(time));
        const double by_size =
            both_on > 0 ? both_on * std::abs(a_A - b_A) / spreadOf(channel, std::max(a_A, b_A)) : 0;
        return std::max(by_share, by_size);
    }
    const double off = std::abs(a.meanOf(time, channel) - b.meanOf(time, channel));
    const double spread_a = total(a, time, channel);
    const double spread_b = total(b, time, channel);
    return off / std::sqrt((spread_a * spread_a + spread_b * spread_b) / 2);
}

double separation(const Evidence& evidence, const Course& a, const Course& b)
{
    constexpr double told_apart = 16; // one is supplied, the other is not
    double sum = 0;
    for (std::size_t i = 0; i < evidence.readings.size(); ++i) {
        if (evidence.readings[i].energised && a.supplied != b.supplied)
            sum += told_apart;
        for (const Instrument& row : instruments())
            if (readOn(evidence.readings[i], row.channel)) {
                const double apart = separationAt(a, b, i, row.channel);
                sum += apart * apart;
            }
    }
    if (evidence.starts) {
        const double apart = (startsMean(a) - startsMean(b)) / std::max(startsSpread(a), startsSpread(b));
        sum += apart * apart;
    }
    return sum;
}

double misfit(const Evidence& evidence, const Course& course)
{
    const std::vector<Point> points = pointsOf(evidence, course);
    double sum = 0;
    for (const Point& point : points) {
        const double spread = total(course, point.time, point.channel);
        sum += point.off_K / spread * (point.off_K / spread);
    }
    return points.empty() ? 0 : sum / double(points.size());
}

} // namespace siphonwright
