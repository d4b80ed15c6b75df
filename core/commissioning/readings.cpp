#include "core/commissioning/readings.h"

#include "core/commissioning/allowed.h"
#include "core/commissioning/likelihood.h"
#include "core/physics/bands.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// Judges one value after the other.
class ReadingJudge {
public:
    ReadingJudge(const Sketch& sketch, const Evidence& evidence, const Course* course)
        : sketch_(sketch),
          allowed_(allowedIn(sketch)),
          evidence_(evidence),
          course_(course),
          heater_(*sketch.heater(evidence.heater))
    {}

    ReadingVerdict verdict(std::size_t i, Channel channel, double read) const
    {
        ReadingVerdict out;
        out.reading = evidence_.of_sketch[i];
        out.channel = channel;
        out.read = read;
        if (channel == Channel::outlet && overLimit(out))
            return out;
        if (channel == Channel::coolant_level) {
            judgeLevel(out);
            return out;
        }
        if (channel == Channel::current) {
            judgeCurrent(out, i);
            return out;
        }
        if (!course_) {
            out.words = {"Not judged against the drawing.", {}, {}};
            return out;
        }
        out.expected = expectedRange(*course_, i, channel);
        judgeAgainstBand(out);
        return out;
    }

private:
    bool overLimit(ReadingVerdict& out) const
    {
        const std::optional<double>& limit = allowed_.outlet_degC;
        if (!limit || !(out.read > *limit))
            return false;
        out.fit = Fit::over_limit;
        out.words = {"Over the limit of {0}. Switch off and find out why.", {{*limit, Unit::degC}}, {}};
        return true;
    }

    void judgeAgainstBand(ReadingVerdict& out) const
    {
        const ExpectedRange& range = *out.expected;
        const Unit unit = instrumentFor(out.channel).unit;
        const double past = std::max(range.low - out.read, out.read - range.high);
        const double spread = instrumentSpread(out.channel, out.read);
        out.fit = past <= spread ? Fit::fits : past <= 2 * spread ? Fit::doubtful : Fit::off;
        const char* pattern = out.fit == Fit::fits   ? "Fits: {0} to {1} expected."
                              : out.read < range.low ? "Lower than expected: {0} to {1}."
                                                     : "Higher than expected: {0} to {1}.";
        out.words = {pattern, {{range.low, unit}, {range.high, unit}}, {}};
    }

    void judgeLevel(ReadingVerdict& out) const
    {
        if (!allowed_.least_level_mm) {
            out.words = {"Not judged: the cold marks of the surge tank are not entered.", {}, {}};
            return;
        }
        const SurgeTank& tank = *sketch_.tank;
        const double least = *allowed_.least_level_mm;
        const double most = tank.hot_mm.known() ? *tank.hot_mm.value - *tank.cold_full_mm.value : 0;
        const double spread = 2 * instrumentSpread(Channel::coolant_level, out.read);
        out.expected = ExpectedRange{least, 0, std::max(most, 0.0)};
        if (out.read < least) {
            out.fit = Fit::over_limit;
            out.words = {"Under the cold minimum, {0} under the full mark. Power off, find the leak, top up.",
                         {{-least, Unit::mm}},
                         {}};
        } else if (tank.hot_mm.known() && out.read > most + spread) {
            out.fit = Fit::off;
            out.words = {"Over the hot mark.", {}, {}};
        } else {
            out.fit = Fit::fits;
            out.words = {"Between the marks.", {}, {}};
        }
    }

    /// Against rated power at the voltage that was read, else the drawing's.
    void judgeCurrent(ReadingVerdict& out, std::size_t i) const
    {
        const std::optional<double>& read_V = evidence_.readings[i].voltage_V;
        const double rated_V = heater_.rated_V.value.value_or(0);
        const double volts = read_V.value_or(heater_.actual_V.value.value_or(rated_V));
        if (!heater_.power_W.known() || !(rated_V > 0)) {
            out.words = {"Not judged: rated power or rated voltage is not entered.", {}, {}};
            return;
        }
        const double power_W = *heater_.power_W.value * volts / rated_V * volts / rated_V;
        const double amperes =
            volts > 0 ? power_W / (heater_.phases == 3 ? std::sqrt(3.0) * volts : volts) : 0;
        constexpr double tolerance = 0.1; // makers' +5/-10 % of power (common practice)
        const double least_A = 0.05 * amperes;
        out.expected = ExpectedRange{amperes * (1 - tolerance), amperes, amperes * (1 + tolerance)};
        if (out.read <= std::max(0.15, least_A)) {
            judgeOff(out, i);
            return;
        }
        const double spread = instrumentSpread(Channel::current, amperes);
        const double past = std::abs(out.read - amperes) - tolerance * amperes;
        out.fit = past <= 0 ? Fit::fits : past <= 2 * spread ? Fit::doubtful : Fit::off;
        const char* pattern = out.fit == Fit::fits ? "Fits: {0} is its rated power at {1}."
                              : out.read < amperes ? "Too little: its rated power at {1} would be {0}."
                                                   : "Too much: its rated power at {1} would be {0}.";
        out.words = {pattern, {{amperes, Unit::ampere}, {volts, Unit::volt}}, {}};
    }

    void judgeOff(ReadingVerdict& out, std::size_t i) const
    {
        const double on = course_ ? course_->shareOn(i) : 1;
        out.fit = on > 0.9 ? Fit::off : on > 0.5 ? Fit::doubtful : Fit::fits;
        out.words = {out.fit == Fit::fits ? "Off: its thermostat may well be open then."
                                          : "Draws nothing, where it should be on and draw {0}.",
                     {{out.expected->middle, Unit::ampere}},
                     {}};
    }

    const Sketch& sketch_;
    Allowed allowed_;
    const Evidence& evidence_;
    const Course* course_;
    const Heater& heater_;
};

void judgeCycles(JudgedReadings& out, const Sketch& sketch)
{
    out.cycles_per_hour = cyclesPerHour(sketch, out.evidence.heater);
    const std::optional<double> limit = allowedIn(sketch).cycles_per_hour;
    if (!out.cycles_per_hour) {
        out.cycles_words = {"Cycles: not judged, no switching off was noted.", {}, {}};
    } else if (*out.cycles_per_hour < 1) {
        out.cycles_words = {"Cycles: not judged, it was not seen to turn on again.", {}, {}};
    } else if (limit && *out.cycles_per_hour > *limit) {
        out.cycles_fit = Fit::over_limit;
        out.cycles_words = {"On {0} times within an hour, over the limit of {1}.",
                            {{*out.cycles_per_hour, Unit::none}, {*limit, Unit::none}},
                            {}};
    } else {
        out.cycles_fit = Fit::fits;
        out.cycles_words = {"On {0} times within an hour at most.", {{*out.cycles_per_hour, Unit::none}}, {}};
    }
}

} // namespace

std::string_view nameOf(Fit fit)
{
    switch (fit) {
    case Fit::fits:
        return "fits";
    case Fit::doubtful:
        return "doubtful";
    case Fit::off:
        return "off";
    case Fit::over_limit:
        return "over_limit";
    case Fit::not_judged:
        break;
    }
    return "not_judged";
}

ExpectedRange expectedRange(const Course& course, std::size_t time, Channel channel)
{
    std::vector<double> values;
    for (const std::vector<Instant>& member : course.members)
        values.push_back(member[time][static_cast<std::size_t>(channel)]);
    std::sort(values.begin(), values.end());
    const double model = isTemperature(channel) ? instrumentFor(channel).model_spread : 0;
    constexpr std::size_t nominal = 1; // the first sample, at the time itself
    return {percentile(values, 0.05) - model,
            course.members[nominal][time][static_cast<std::size_t>(channel)],
            percentile(values, 0.95) + model};
}

JudgedReadings judgeReadings(const Sketch& sketch, const Id& heater)
{
    JudgedReadings out;
    out.evidence = evidenceOf(sketch, heater);
    if (out.evidence.readings.empty()) {
        out.missing = out.evidence.missing;
        return out;
    }
    const Course course = SimulatedJob(sketch, out.evidence.request()).run({});
    out.missing = course.missing;
    const ReadingJudge judge(sketch, out.evidence, course.missing.empty() ? &course : nullptr);
    for (std::size_t i = 0; i < out.evidence.readings.size(); ++i)
        for (const Instrument& row : instruments())
            if (const std::optional<double>& read = readOn(out.evidence.readings[i], row.channel))
                out.verdicts.push_back(judge.verdict(i, row.channel, *read));
    judgeCycles(out, sketch);
    return out;
}

} // namespace siphonwright
