#pragma once

#include "core/commissioning/diagnosis.h"
#include "core/physics/latin_hypercube.h"
#include "core/sketch/file.h"

#include <QFile>

#include <cmath>
#include <string>
#include <variant>
#include <vector>

/// Jobs with readings, made by the simulation itself.
namespace siphonwright::test {

inline Sketch sampleJob(const char* name)
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/") + QString::fromUtf8(name) +
               QStringLiteral(".siphon"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const QByteArray text = file.readAll();
    auto read = readSketch({text.constData(), static_cast<std::size_t>(text.size())});
    return std::holds_alternative<Sketch>(read) ? std::get<Sketch>(read) : Sketch{};
}

/// Normal by Box and Muller's method.
inline double normal(Pcg32& random)
{
    constexpr double two_pi = 6.28318530717958647692;
    const double u = 1 - random.uniform(); // over 0
    const double v = random.uniform();
    return std::sqrt(-2 * std::log(u)) * std::cos(two_pi * v);
}

/// ISO 8601, so many minutes after six in the morning of one day.
inline std::string clock(int minutes)
{
    const int of_day = 6 * 60 + minutes;
    const auto two = [](int n) { return std::string(n < 10 ? "0" : "") + std::to_string(n); };
    return "2026-11-25T" + two(of_day / 60) + ":" + two(of_day % 60) + ":00Z";
}

constexpr std::array<int, 4> read_at_min = {15, 30, 60, 120};

/// Four readings of a heater by a course's member, with noise of the instruments \param random null: none
inline std::vector<Reading> readingsOf(const Course& course, const Id& heater, Pcg32* random)
{
    constexpr std::size_t at_the_time = 1;
    std::vector<Reading> out;
    for (std::size_t i = 0; i < read_at_min.size(); ++i) {
        Reading reading;
        reading.time = clock(read_at_min[i]);
        reading.heater = heater;
        for (const Channel channel :
             {Channel::inlet, Channel::outlet, Channel::hose_surface, Channel::engine, Channel::current}) {
            const double value = course.members[at_the_time][i][static_cast<std::size_t>(channel)];
            const double noise = random ? instrumentSpread(channel, value) * normal(*random) : 0;
            readOn(reading, channel) =
                channel == Channel::current ? std::max(0.0, value + noise) : value + noise;
        }
        out.push_back(reading);
    }
    return out;
}

/// The job with what is assumed replaced by what might be true.
inline Sketch withTruth(Sketch sketch, Pcg32& random)
{
    for (const Assumption& row : assumptionBook())
        if (row.high > row.low)
            sketch.assumptions.push_back(
                {std::string(row.id), row.low + random.uniform() * (row.high - row.low), "truth"});
    return sketch;
}

inline Course courseOf(const Sketch& sketch, const Id& heater, const FaultChange& change)
{
    CourseRequest request;
    request.heater = heater;
    request.samples = 0;
    for (const int minutes : read_at_min)
        request.times_s.push_back(minutes * 60.0);
    return SimulatedJob(sketch, request).run(change);
}

/// Energised at six, read four times.
inline Sketch withReadings(Sketch sketch, const Id& heater, std::vector<Reading> readings)
{
    sketch.checklist.switched = {{clock(0), heater, true}};
    sketch.readings = std::move(readings);
    return sketch;
}

inline std::vector<Fault> faultsIn(const Sketch& sketch, const Id& heater)
{
    const Layout layout = resolve(sketch, plumbOf(sketch));
    return faultsOf(sketch, layout, fillOf(sketch, layout, nullptr, Assumptions(sketch)), heater);
}

} // namespace siphonwright::test
