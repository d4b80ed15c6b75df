#include "core/analysis/running_text.h"

#include "core/layout/wording.h"
#include "core/quantity/constants.h"
#include "core/running/loop_figures.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace siphonwright {
namespace {

double rounded(double value, double to)
{
    return std::round(value / to) * to;
}
/// Hours and kilowatt-hours to a tenth: nobody plans by less.
Quantity tenths(double value, Unit unit)
{
    return {rounded(value, 0.1), unit};
}

std::string nameOf(const Id& heater, const Sketch& sketch)
{
    const Heater* found = sketch.heater(heater);
    return found ? nameOfHeater(*found) : heater;
}

/// Put a quantity into a message under construction: the placeholder for it.
std::string put(Message& message, Quantity quantity)
{
    message.quantities.push_back(quantity);
    return "{" + std::to_string(message.quantities.size() - 1) + "}";
}

} // namespace

namespace {

/// The lowest and the highest of some figures.
class Range {
public:
    void take(double value)
    {
        low_ = any_ ? std::min(low_, value) : value;
        high_ = any_ ? std::max(high_, value) : value;
        any_ = true;
    }
    bool any() const { return any_; }
    double high() const { return high_; }
    /// The placeholder for it.
    std::string in(Message& message, Unit unit) const
    {
        const std::size_t first = message.quantities.size();
        message.quantities.push_back({low_, unit});
        message.quantities.push_back({high_, unit});
        return "{" + std::to_string(first) + "-" + std::to_string(first + 1) + "}";
    }

private:
    bool any_ = false;
    double low_ = 0;
    double high_ = 0;
};

} // namespace

std::optional<Message> textOf(const std::vector<GradeRun>& ends)
{
    Range flow;
    Range peak;
    Range cycles;
    Range target;
    bool always_forward = true;
    bool always_reached = true;
    for (const GradeRun& end : ends) {
        for (const LoopRun& run : end.running.loops)
            if (run.missing.empty()) {
                const bool runs = run.circulation.status == CirculationStatus::circulates;
                always_forward = always_forward && runs;
                if (runs)
                    flow.take(flowByVolume_l_per_min(run.circulation));
            }
        for (const LoopOutcome& outcome : end.warm_up.result.loops) {
            if (outcome.peak_outlet_degC)
                peak.take(*outcome.peak_outlet_degC);
            cycles.take(outcome.cycles_per_hour);
        }
        const std::optional<double>& target_s = end.warm_up.result.target_s;
        if (target_s)
            target.take(rounded(*target_s / s_per_h, 0.1));
        always_reached = always_reached && target_s;
    }
    if (!cycles.any())
        return std::nullopt;
    Message out;
    out.pattern = "On the steepest grades judged: ";
    if (!always_forward)
        out.pattern += flow.any() ? "no forward flow on some, on the others " : "no forward flow";
    if (flow.any())
        out.pattern += "flow " + flow.in(out, Unit::l_per_min);
    if (peak.any())
        out.pattern += ", outlet " + put(out, {peak.high(), Unit::degC}) + " at most while it warms up";
    out.pattern += ", starts an hour at most " + put(out, {cycles.high(), Unit::none});
    if (const std::optional<WarmUpInputs>& inputs = ends.front().warm_up.inputs) {
        const std::string degC = put(out, {inputs->target_degC, Unit::degC});
        out.pattern += always_reached ? ", " + degC + " after " + target.in(out, Unit::hour)
                       : target.any() ? ", " + degC + " reached on some only"
                                      : ", " + degC + " not reached";
    }
    return out;
}

Message textOf(const LoopRun& run, const Sketch& sketch)
{
    const std::string name = nameOf(run.heater, sketch);
    if (!run.missing.empty())
        return {"{a}: not computed: {b}", {}, {name, run.missing}};
    const Circulation& found = run.circulation;
    if (found.status == CirculationStatus::circulates || found.status == CirculationStatus::reverse)
        return {found.status == CirculationStatus::circulates
                    ? "{a}: {0}, {1} in, {2} out, {3} drives"
                    : "{a}: {0} backward, {1} in, {2} out, {3} drives",
                {{std::abs(flowByVolume_l_per_min(found)), Unit::l_per_min},
                 {found.heater_inlet_degC, Unit::degC},
                 {found.heater_outlet_degC, Unit::degC},
                 {found.drive_mm, Unit::head}},
                {name}};
    Message text = found.message; // says why, with both heads
    const std::string last(1, static_cast<char>('a' + text.words.size()));
    text.pattern = "{" + last + "}: no flow: " + text.pattern;
    text.words.push_back(name);
    return text;
}

Message textOf(const EngineWarmUp& warm)
{
    if (!warm.missing.empty())
        return {"Warm-up: not computed: {a}", {}, {warm.missing}};
    const WarmUp& found = warm.result;
    if (found.status == WarmUpStatus::slush && found.loops.empty())
        return {"Warm-up: not computed: {0} is under the coolant's freezing point",
                {{warm.inputs ? warm.inputs->start_degC : 0, Unit::degC}},
                {}};
    if (found.loops.empty() || !warm.inputs)
        return {"Warm-up: not computed: its inputs do not hold together", {}, {}};
    Message text;
    text.pattern = "Warm-up: ";
    const std::string target = put(text, {warm.inputs->target_degC, Unit::degC});
    if (found.target_s)
        text.pattern += target + " after " + put(text, tenths(*found.target_s / s_per_h, Unit::hour)) + ", ";
    else
        text.pattern += target + " not reached, ";
    text.pattern += put(text, {found.block_at_end_degC, Unit::degC}) + " after ";
    text.pattern += put(text, tenths(found.end_s / s_per_h, Unit::hour)) + ", ";
    text.pattern += put(text, tenths(found.energy_J / J_per_kWh, Unit::kWh));
    return text;
}

Message textOf(const LoopOutcome& outcome, const Heater& heater)
{
    if (!outcome.peak_outlet_degC)
        return {"{a}: never on", {}, {nameOfHeater(heater)}};
    Message text;
    text.words = {nameOfHeater(heater)};
    text.pattern =
        "{a}: coolant leaves at " + put(text, {*outcome.peak_outlet_degC, Unit::degC}) + " at most";
    text.pattern += ", starts in its worst hour: " + put(text, {outcome.cycles_per_hour, Unit::none});
    if (outcome.boiled_s)
        text.pattern += ", boils";
    else if (outcome.boiling_margin_K)
        text.pattern += ", " + put(text, {*outcome.boiling_margin_K, Unit::kelvin}) + " under boiling";
    return text;
}

Message textOf(const HeaterBands& bands, const Sketch& sketch)
{
    Message text;
    text.words = {nameOf(bands.heater, sketch)};
    text.pattern = "{a}, where 9 in 10 lie over what is assumed:";
    const auto add = [&](Banded which, const char* what, Unit unit, double rounding, const char* after) {
        const std::optional<ResultBand>& band = bands[which];
        if (!band)
            return;
        const auto quantity = [&](double value) {
            return Quantity{rounding > 0 ? rounded(value, rounding) : value, unit};
        };
        text.pattern += text.quantities.empty() ? " " : ", ";
        const std::string low = put(text, quantity(band->low));
        text.pattern += what + low + " to " + put(text, quantity(band->high)) + after;
    };
    add(Banded::peak_outlet_degC, "coolant leaves at ", Unit::degC, 0, "");
    add(Banded::cycles_per_hour, "on ", Unit::none, 0.1, " times in the worst hour");
    add(Banded::target_h, "target after ", Unit::hour, 0.1, "");
    return text;
}

} // namespace siphonwright
