#include "core/commissioning/next_reading.h"

#include "core/commissioning/likelihood.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

namespace siphonwright {
namespace {

/// Joins two messages: the second's words and quantities come after the first's.
std::string takeIn(Message& into, const Message& other)
{
    std::string out;
    for (std::size_t i = 0; i < other.pattern.size(); ++i) {
        const bool place = other.pattern[i] == '{' && i + 2 < other.pattern.size();
        if (!place) {
            out += other.pattern[i];
            continue;
        }
        const char c = other.pattern[i + 1];
        if (c >= 'a' && c <= 'z')
            out += std::string("{") + static_cast<char>(c + static_cast<char>(into.words.size())) + "}";
        else
            out += "{" + std::to_string(std::size_t(c - '0') + into.quantities.size()) + "}";
        i += 2;
    }
    into.words.insert(into.words.end(), other.words.begin(), other.words.end());
    into.quantities.insert(into.quantities.end(), other.quantities.begin(), other.quantities.end());
    return out;
}

std::string put(Message& message, Quantity quantity)
{
    message.quantities.push_back(quantity);
    return "{" + std::to_string(message.quantities.size() - 1) + "}";
}

double expected(const Course& course, std::size_t time, Channel channel)
{
    if (channel == Channel::current)
        return course.shareOn(time) >= 0.5 ? currentWhileOn(course, time) : 0;
    return course.meanOf(time, channel);
}

double rounded(Channel channel, double value)
{
    return isTemperature(channel) || channel == Channel::voltage ? std::round(value) : value;
}

/// "Feel the return hose at the engine": where a hand can tell, and does not get burnt.
const char* feltAt(Channel channel)
{
    if (channel == Channel::inlet)
        return "feel the supply hose one hand from the heater";
    if (channel == Channel::hose_surface)
        return "feel the return hose at the engine";
    return nullptr;
}

Message wordsFor(const NextReading& next, const Suspect& first, const Suspect& second)
{
    constexpr double cold_degC = 25;
    constexpr double warm_degC = 35;
    constexpr double burns_degC = 55;
    const Channel channel = *next.channel;
    const double low = std::min(next.if_first, next.if_second);
    const double high = std::max(next.if_first, next.if_second);
    Message out;
    // A level and a voltage say the same at any time.
    const bool at_once = channel == Channel::coolant_level || channel == Channel::voltage;
    out.pattern = at_once ? "Now " : "In " + put(out, {next.wait_s / 60, Unit::none}) + " min ";
    const char* felt = feltAt(channel);
    if (felt && low < cold_degC && high > warm_degC && high < burns_degC) {
        const Suspect& cold = next.if_first < next.if_second ? first : second;
        const Suspect& warm = next.if_first < next.if_second ? second : first;
        out.pattern += std::string(felt) + ": cold means \"" + takeIn(out, cold.fault.title) +
                       "\", warm means \"" + takeIn(out, warm.fault.title) + "\".";
        return out;
    }
    const Instrument& row = instrumentFor(channel);
    out.pattern += "read the " + std::string(row.title) + " (" + std::string(row.where) + "): about " +
                   put(out, {rounded(channel, next.if_first), row.unit}) + " means \"" +
                   takeIn(out, first.fault.title) + "\", about " +
                   put(out, {rounded(channel, next.if_second), row.unit}) + " means \"" +
                   takeIn(out, second.fault.title) + "\".";
    return out;
}

/// How far one reading is from a course, in standard deviations, squared.
double offBy(const Course& course, std::size_t time, Channel channel, double read)
{
    const double mean = channel == Channel::current && read > 0.2 ? currentWhileOn(course, time)
                                                                  : expected(course, time, channel);
    const double model = channel == Channel::current ? 0 : course.spreadOf(time, channel);
    const double spread = std::hypot(model, spreadOf(channel, mean));
    return (read - mean) / spread * ((read - mean) / spread);
}

} // namespace

NextReading nextReading(const Suspect& first, const Suspect& second, std::size_t readings)
{
    NextReading best;
    double best_apart = 1; // less would tell nothing
    constexpr double worth_waiting = 1.5;
    for (std::size_t w = 0; w < next_waits_s.size(); ++w) {
        const std::size_t time = readings + w;
        for (const Instrument& row : instruments()) {
            const double apart = separationAt(first.course, second.course, time, row.channel);
            if (!(apart > best_apart * (w > 0 && best.channel ? worth_waiting : 1)))
                continue;
            best_apart = apart;
            best.channel = row.channel;
            best.wait_s = next_waits_s[w];
            best.if_first = expected(first.course, time, row.channel);
            best.if_second = expected(second.course, time, row.channel);
        }
    }
    if (best.channel)
        best.words = wordsFor(best, first, second);
    else
        best.words = first.fault.kind == FaultKind::none ? second.check : first.check;
    return best;
}

Message whyOf(const Fault& fault, const Course& course, const Course& as_drawn, const Evidence& evidence)
{
    double most = 0;
    std::size_t at = 0;
    std::optional<Channel> channel;
    for (std::size_t i = 0; i < evidence.readings.size(); ++i)
        for (const Instrument& row : instruments()) {
            const std::optional<double>& read = readOn(evidence.readings[i], row.channel);
            if (!read)
                continue;
            const double speaks = fault.kind == FaultKind::none ? offBy(course, i, row.channel, *read)
                                                                : offBy(as_drawn, i, row.channel, *read) -
                                                                      offBy(course, i, row.channel, *read);
            if (!channel || std::abs(speaks) > std::abs(most)) {
                most = speaks;
                at = i;
                channel = row.channel;
            }
        }
    if (!channel)
        return {"Only whether power was on was read.", {}, {}};
    const Instrument& row = instrumentFor(*channel);
    const double read = *readOn(evidence.readings[at], *channel);
    const double minutes = std::round(evidence.times_s[at] / 60);
    const std::vector<std::string> words = {std::string(row.title)};
    const Quantity given = {expected(course, at, *channel), row.unit};
    if (fault.kind == FaultKind::none)
        return {
            most > 4
                ? "Speaks against it: the {a} was {0} after {1} min, where {2} is expected."
                : "All is near what is expected; farthest off is the {a}: {0} after {1} min, where {2} is "
                  "expected.",
            {{read, row.unit}, {minutes, Unit::none}, given},
            words};
    return {
        most > 0
            ? "The {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}."
            : "Speaks against it: the {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.",
        {{read, row.unit}, {minutes, Unit::none}, given, {expected(as_drawn, at, *channel), row.unit}},
        words};
}

} // namespace siphonwright
