#include "tests/geometry/random_hoses.h"
#include "tests/near.h"
#include "tests/random_runs.h"

#include "core/geometry/profile.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

using namespace siphonwright;
using siphonwright::test::Dice;
using siphonwright::test::randomHose;
using siphonwright::test::randomPlumb;

/// A thousand random hoses in space, at random attitudes, against fine sampling written from the definitions
/// alone: it walks points, knows no pieces and finds no extremum but by comparing neighbours.
namespace {

struct Sample {
    double s = 0;
    double z = 0;
    double k = 0;
    double half_bore = 0;
    double crown = 0;
};

struct SampledCrest {
    double along = 0;
    double height = 0;
    double least_ml = 0; ///< what it holds, between these two
    double most_ml = 0;
};

/// Every 0.25 mm, 400 times in each bend, and just before and after every place where direction or bore can
/// jump.
std::vector<double> places(const Path& path)
{
    const double end = path.line.length();
    std::vector<double> result;
    for (double s = 0; s < end; s += 0.25)
        result.push_back(s);
    const auto around = [&](double s) {
        for (const double side : {s - 1e-6, s + 1e-6})
            result.push_back(std::clamp(side, 0.0, end));
    };
    for (const Bend& bend : path.line.bends()) {
        const double half = bend.radius_mm * bend.angle_rad / 2;
        const double half_bore = path.boreAt(bend.s) / 2;
        for (int i = 1; i < 400 && half > 1e-3; ++i)
            result.push_back(std::clamp(bend.s - half + half * i / 200, 0.0, end));
        for (const double s : {bend.s - half, bend.s + half})
            around(s);
        for (const double s : {bend.s - half - half_bore, bend.s + half + half_bore})
            around(s);
    }
    for (const BoreSpan& span : path.bores)
        around(span.from_mm);
    result.push_back(end);
    std::sort(result.begin(), result.end());
    return result;
}

/// A bend of under half a bore that turns upward, as heightsAt states it.
struct TightBend {
    double from = 0;
    double to = 0;
    double half_bore = 0;
    double floor = 0;
    double cap = 0;
};

/// The place from a to b where the path is steepest, by thirds; b if that is at either end.
double steepestBetween(const Path& path, Vec3 up, double a, double b)
{
    const auto steepness = [&](double s) { return std::abs(dot(path.line.tangent(s), up)); };
    double best = a;
    for (int i = 0; i <= 1000; ++i) {
        const double s = a + (b - a) * i / 1000;
        best = steepness(s) > steepness(best) ? s : best;
    }
    double low = std::max(a, best - (b - a) / 1000);
    double high = std::min(b, best + (b - a) / 1000);
    for (int step = 0; step < 60; ++step) {
        const double third = (high - low) / 3;
        if (steepness(low + third) < steepness(high - third))
            low += third;
        else
            high -= third;
    }
    const double margin = 1e-6 * (b - a);
    return low - a < margin || b - high < margin ? b : (low + high) / 2;
}

std::vector<TightBend> tightBends(const Path& path, Vec3 up)
{
    std::vector<TightBend> bends;
    const auto add = [&](double from, double to, double half_bore) {
        // Within an arc, since a sharp corner may stand right at its end; on both sides of a corner.
        const double inward = to - from > 1e-3 ? 1e-8 : -1e-8;
        const double t_in = dot(path.line.tangent(from + inward), up);
        const double t_out = dot(path.line.tangent(to - inward), up);
        if (t_out <= t_in)
            return;
        const double k_in = std::sqrt(1 - t_in * t_in);
        const double k_out = std::sqrt(1 - t_out * t_out);
        const auto height = [&](double s) { return dot(path.line.at(s), up); };
        TightBend tight;
        tight.from = from;
        tight.to = to;
        tight.half_bore = half_bore;
        tight.cap = std::max(height(from) + half_bore * k_in, height(to) + half_bore * k_out);
        tight.floor = height((from + to) / 2) + half_bore * std::max(k_in, k_out);
        bends.push_back(tight);
    };
    for (const Bend& bend : path.line.bends()) {
        const double half_bore = path.boreAt(bend.s) / 2;
        if (bend.radius_mm >= half_bore)
            continue;
        const double from = bend.s - bend.radius_mm * bend.angle_rad / 2;
        const double to = bend.s + bend.radius_mm * bend.angle_rad / 2;
        const double steepest = steepestBetween(path, up, from + 1e-9, to - 1e-9);
        const bool parts = to - from > 1e-3 && steepest < to - 2e-9;
        if (parts)
            add(from, steepest, half_bore);
        add(parts ? steepest : from, to, half_bore);
    }
    return bends;
}

void holdCrowns(std::vector<Sample>& samples, const std::vector<TightBend>& bends)
{
    for (Sample& sample : samples) {
        for (const TightBend& bend : bends) {
            if (sample.s > bend.from && sample.s < bend.to && sample.half_bore <= bend.half_bore)
                sample.crown = std::min(sample.crown, bend.cap);
        }
        for (const TightBend& bend : bends) {
            if (sample.s >= bend.from - bend.half_bore && sample.s <= bend.to + bend.half_bore)
                sample.crown = std::max(sample.crown, bend.floor);
        }
    }
}

std::vector<Sample> sampled(const Path& path, Vec3 up)
{
    std::vector<Sample> samples;
    const std::vector<TightBend> tight = tightBends(path, up);
    std::vector<double> at = places(path);
    // The crown jumps where a tight bend begins or ceases to hold it, and has kinks within it.
    constexpr int places_in_a_tight_bend = 5000;
    for (const TightBend& bend : tight) {
        for (int i = 1; i < places_in_a_tight_bend; ++i)
            at.push_back(bend.from + (bend.to - bend.from) * i / places_in_a_tight_bend);
        for (const double edge : {bend.from, bend.to, bend.from - bend.half_bore, bend.to + bend.half_bore}) {
            for (const double s : {edge - 1e-6, edge + 1e-6})
                at.push_back(std::clamp(s, 0.0, path.line.length()));
        }
    }
    std::sort(at.begin(), at.end());
    for (const double s : at) {
        Sample sample;
        sample.s = s;
        sample.z = dot(path.line.at(s), up);
        sample.k = length(cross(path.line.tangent(s), up));
        sample.half_bore = path.boreAt(s) / 2;
        sample.crown = sample.z + sample.half_bore * sample.k;
        samples.push_back(sample);
    }
    holdCrowns(samples, tight);
    return samples;
}

/// Area of a disc over a chord from the angle the chord subtends.
double segment(double r, double h)
{
    if (h >= r)
        return 0;
    if (h <= -r)
        return std::numbers::pi * r * r;
    const double angle = 2 * std::acos(h / r);
    return r * r / 2 * (angle - std::sin(angle));
}

double volumeOver(const std::vector<Sample>& samples, std::pair<std::size_t, std::size_t> stretch,
                  double level)
{
    double sum = 0;
    for (std::size_t i = stretch.first; i < stretch.second; ++i) {
        const auto area = [&](const Sample& at) { return segment(at.half_bore, (level - at.z) / at.k); };
        sum += (area(samples[i]) + area(samples[i + 1])) / 2 * (samples[i + 1].s - samples[i].s);
    }
    return sum / 1000;
}

std::pair<std::size_t, std::size_t> stretchOver(const std::vector<Sample>& samples, std::size_t top,
                                                double level)
{
    std::size_t first = top;
    while (first > 0 && samples[first].crown > level)
        --first;
    std::size_t last = top;
    while (last + 1 < samples.size() && samples[last].crown > level)
        ++last;
    return {first, last};
}

std::vector<SampledCrest> crests(const std::vector<Sample>& samples, double least)
{
    std::vector<SampledCrest> result;
    for (std::size_t i = 1; i + 1 < samples.size(); ++i) {
        const double top = samples[i].crown;
        if (samples[i - 1].crown >= top || samples[i + 1].crown > top)
            continue;
        double left = top;
        for (std::size_t j = i; j-- > 0 && samples[j].crown < top;)
            left = std::min(left, samples[j].crown);
        double right = top;
        for (std::size_t j = i + 1; j < samples.size() && samples[j].crown <= top; ++j)
            right = std::min(right, samples[j].crown);
        const double sill = std::max(left, right);
        if (top - sill < least)
            continue;
        // Where another place lies at the sill to sampling accuracy, either may end the stretch.
        const double least_ml = volumeOver(samples, stretchOver(samples, i, sill + 1e-3), sill);
        const double most_ml = volumeOver(samples, stretchOver(samples, i, sill + 1e-6), sill);
        const auto level = stretchOver(samples, i, top - 0.01);
        const double middle = (samples[level.first].s + samples[level.second].s) / 2;
        result.push_back({middle, top - sill, least_ml, most_ml});
    }
    return result;
}

/// Whether a height stands so close to the limit that sampling may see it on the other side.
bool isMarginal(double height)
{
    return std::abs(height - tape_accuracy_mm) < 0.01;
}

bool agree(const SampledCrest& sample, double along, double height, double volume_ml)
{
    return test::near(height, sample.height, 1e-3) && test::near(along, sample.along, 0.5) &&
           test::near(volume_ml, std::clamp(volume_ml, sample.least_ml, sample.most_ml),
                      1e-3 * sample.most_ml + 1e-3);
}

} // namespace

class TestProfileSampled : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void crownsHighPointsAndDipsAgreeWithSampling_data()
    {
        QTest::addColumn<int>("first");
        for (int first = 0; first < test::runs(1000, 1000); first += 100)
            QTest::addRow("hoses from %d", first) << first;
    }
    void crownsHighPointsAndDipsAgreeWithSampling()
    {
        QFETCH(int, first);
        int compared = 0;
        for (int run = first; run < first + 100; ++run) {
            Dice dice(1000 + static_cast<std::uint64_t>(run));
            const Path path = randomHose(dice);
            const Plumb plumb = randomPlumb(dice);
            const Profile profile = profileOf(path, plumb);

            const std::vector<Sample> over = sampled(path, plumb.up());
            for (std::size_t i = 0; i < over.size(); i += 7)
                VERIFY_NEAR(heightsAt(path, plumb, over[i].s).crown_mm, over[i].crown, 1e-6);
            const std::vector<Sample> under = sampled(path, plumb.up() * -1);
            for (std::size_t i = 0; i < under.size(); i += 7)
                VERIFY_NEAR(heightsAt(path, plumb, under[i].s).invert_mm, -under[i].crown, 1e-6);

            const auto highs = crests(over, tape_accuracy_mm);
            const auto lows = crests(under, tape_accuracy_mm);
            const auto marginal = [](const SampledCrest& crest) { return isMarginal(crest.height); };
            if (std::any_of(highs.begin(), highs.end(), marginal) ||
                std::any_of(lows.begin(), lows.end(), marginal))
                continue;
            QVERIFY2(profile.high_points.size() == highs.size(), qPrintable(QString::number(run)));
            QVERIFY2(profile.dips.size() == lows.size(), qPrintable(QString::number(run)));
            for (std::size_t i = 0; i < highs.size(); ++i) {
                const HighPoint& p = profile.high_points[i];
                QVERIFY2(agree(highs[i], p.along_mm, p.height_mm, p.trapped_ml),
                         qPrintable(QString::number(run)));
            }
            for (std::size_t i = 0; i < lows.size(); ++i) {
                const Dip& p = profile.dips[i];
                QVERIFY2(agree(lows[i], p.along_mm, p.depth_mm, p.held_ml), qPrintable(QString::number(run)));
            }
            ++compared;
        }
        QVERIFY(compared > 90);
    }
};

QTEST_APPLESS_MAIN(TestProfileSampled)
#include "test_profile_sampled.moc"
