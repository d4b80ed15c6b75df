#include "core/commissioning/evidence.h"

#include "core/commissioning/allowed.h"
#include "core/commissioning/checklist.h"
#include "core/commissioning/iso_time.h"
#include "core/quantity/constants.h"

#include <algorithm>

namespace siphonwright {
namespace {

struct Switching {
    double time_s = 0;
    bool on = false;
};

/// Of one heater, by time; those whose time is not understood are left out.
std::vector<Switching> switchingsOf(const Sketch& sketch, const Id& heater)
{
    const bool first = !sketch.heaters.empty() && sketch.heaters.front().id == heater;
    std::vector<Switching> out;
    for (const SwitchSeen& seen : sketch.checklist.switched)
        if (seen.heater == heater || (first && seen.heater.empty()))
            if (const std::optional<double> time_s = secondsOf(seen.time))
                out.push_back({*time_s, seen.on});
    std::stable_sort(out.begin(), out.end(),
                     [](const Switching& a, const Switching& b) { return a.time_s < b.time_s; });
    return out;
}

std::optional<double> energisedAt(const Sketch& sketch, const std::vector<Switching>& switchings)
{
    for (const Switching& one : switchings)
        if (one.on)
            return one.time_s;
    const Tick* tick = tickOf(sketch.checklist, "energise");
    return tick ? secondsOf(tick->time) : std::nullopt;
}

void takeReadings(Evidence& out, const Sketch& sketch)
{
    const bool first = sketch.heaters.front().id == out.heater;
    std::vector<std::pair<double, std::size_t>> by_time;
    for (std::size_t i = 0; i < sketch.readings.size(); ++i) {
        const Reading& reading = sketch.readings[i];
        if (reading.heater != out.heater && !(first && reading.heater.empty()))
            continue;
        const std::optional<double> time_s = secondsOf(reading.time);
        if (time_s && *time_s >= out.energised_s)
            by_time.emplace_back(*time_s - out.energised_s, i);
        else
            out.left_out.push_back(i);
    }
    std::stable_sort(by_time.begin(), by_time.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    const std::size_t skip = by_time.size() > most_readings ? by_time.size() - most_readings : 0;
    double air_sum = 0;
    double air_count = 0;
    for (std::size_t k = 0; k < by_time.size(); ++k) {
        if (k < skip) {
            out.left_out.push_back(by_time[k].second);
            continue;
        }
        const Reading& reading = sketch.readings[by_time[k].second];
        out.of_sketch.push_back(by_time[k].second);
        out.readings.push_back(reading);
        out.times_s.push_back(by_time[k].first);
        if (reading.ambient_degC) {
            air_sum += *reading.ambient_degC;
            air_count += 1;
        }
    }
    if (air_count > 0)
        out.air_degC = air_sum / air_count;
}

void takeSwitchings(Evidence& out, const std::vector<Switching>& switchings)
{
    if (switchings.size() < 2)
        return;
    out.watched_from_s = std::max(0.0, switchings.front().time_s - out.energised_s);
    out.watched_to_s = switchings.back().time_s - out.energised_s;
    for (const Switching& one : switchings)
        if (one.on)
            out.starts_s.push_back(one.time_s - out.energised_s);
    out.starts = double(out.starts_s.size());
}

} // namespace

CourseRequest Evidence::request() const
{
    CourseRequest out;
    out.heater = heater;
    out.times_s = times_s;
    out.watched_from_s = watched_from_s;
    out.watched_to_s = watched_to_s;
    out.air_degC = air_degC;
    return out;
}

Evidence evidenceOf(const Sketch& sketch, const Id& heater)
{
    Evidence out;
    if (sketch.heaters.empty()) {
        out.missing = "there is no heater yet";
        return out;
    }
    out.heater = heater.empty() ? sketch.heaters.front().id : heater;
    if (!sketch.heater(out.heater)) {
        out.missing = "there is no heater \"" + out.heater + "\"";
        return out;
    }
    const std::vector<Switching> switchings = switchingsOf(sketch, out.heater);
    const std::optional<double> energised_s = energisedAt(sketch, switchings);
    if (!energised_s) {
        out.missing = "when the heater was energised is not entered";
        return out;
    }
    out.energised_s = *energised_s;
    takeReadings(out, sketch);
    takeSwitchings(out, switchings);
    out.broken_limits = brokenLimits(sketch, out);
    if (out.readings.empty())
        out.missing = out.left_out.empty() ? "there are no readings of this heater yet"
                                           : "no reading has a time after the heater was energised";
    return out;
}

std::optional<double> cyclesPerHour(const Sketch& sketch, const Id& heater)
{
    const std::vector<Switching> switchings = switchingsOf(sketch, heater);
    const auto first_off =
        std::find_if(switchings.begin(), switchings.end(), [](const Switching& one) { return !one.on; });
    if (first_off == switchings.end())
        return std::nullopt;
    double most = 0;
    for (auto from = first_off; from != switchings.end(); ++from) {
        const auto starts = std::count_if(from, switchings.end(), [&](const Switching& one) {
            return one.on && one.time_s < from->time_s + s_per_h;
        });
        most = std::max(most, double(starts));
    }
    return most;
}

} // namespace siphonwright
