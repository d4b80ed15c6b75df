#include "core/commissioning/checklist.h"

#include <algorithm>

namespace siphonwright {
namespace {

constexpr std::array<WorkStep, 21> steps = {{
    {"lock-out-power",
     "Lock out the heater's power",
     "Mains voltage. Switch off, lock, tag, and try it: a heater that is off by its thermostat is not dead.",
     {}},
    {"lock-out-battery",
     "Disconnect and lock out the battery",
     "Somebody may crank the engine while hands are at belts and fan.",
     {}},
    {"inhibit-start",
     "Inhibit the generator's automatic start",
     "A generator set starts by itself when the mains fail. Where there is none, tick and go on.",
     {}},
    {"chock-wheels", "Chock the wheels", "Never work under a vehicle that is not supported.", {}},
    {"block-suspension",
     "Block the air suspension",
     "Air suspension sinks without warning. Where there is none, tick and go on.",
     {"chock-wheels"}},
    {"cold-cap",
     "Open the pressure cap, cold",
     "Hot coolant under pressure scalds. Open it only when a bare hand can stay on the upper hose.",
     {"lock-out-power"}},
    {"drain-flush",
     "Drain and flush",
     "Antifreeze is poisonous: catch all of it, keep it from animals, have it disposed of properly.",
     {"lock-out-power", "lock-out-battery", "inhibit-start", "chock-wheels", "cold-cap"}},
    {"mount",
     "Mount the heater on the frame",
     "Support the heater while it hangs free. Look behind a rail before drilling it.",
     {"lock-out-power", "lock-out-battery", "inhibit-start", "chock-wheels", "block-suspension"}},
    {"route",
     "Route and clamp the hoses",
     "Keep clear of exhaust, belts, fan and shafts. Return rising all the way, supply without a high point.",
     {"drain-flush", "mount"}},
    {"open-valves",
     "Open the isolation valves",
     "A heater between two closed valves is a sealed vessel and bursts.",
     {"route"}},
    {"mix", "Mix the coolant", "Wear gloves and goggles. Poisonous; mark the can.", {}},
    {"fill",
     "Fill slowly",
     "The element burns out without coolant: the heater stays locked out.",
     {"lock-out-power", "route", "open-valves", "mix"}},
    {"run-engine",
     "Run the engine until its thermostat opens",
     "Outdoors or with extraction only. Hands, hair and sleeves away from belts and fan. The heater stays "
     "locked out.",
     {"lock-out-power", "chock-wheels", "block-suspension", "fill"}},
    {"cool", "Stop the engine and let it cool", "Do not open the cap to hurry it.", {"run-engine"}},
    {"inspect", "Inspect every joint", "Engine off, battery locked out again. Hot parts.", {"cool"}},
    {"top-up", "Top up, cold", "Open the cap only when a bare hand can stay on the upper hose.", {"cool"}},
    {"connect",
     "Have the power connected",
     "Grounded supply by the local electrical code and a licensed electrician. Still locked out.",
     {"lock-out-power", "mount"}},
    {"energise",
     "Energise the heater",
     "Never without coolant in the chamber, never with a valve closed.",
     {"open-valves", "fill", "inspect", "top-up", "connect"}},
    {"verify",
     "Verify: take readings",
     "Hot coolant and pressure: read by instrument before you touch. Switch off before a valve is closed.",
     {"energise"}},
    {"recheck",
     "Recheck after the first night",
     "Lock out the power before a clamp is tightened.",
     {"verify"}},
    {"hand-over",
     "Hand over",
     "The next who works here must know that the heater can turn on by itself: leave the label.",
     {"verify", "recheck"}},
}};

bool needs(const WorkStep& step, std::string_view other)
{
    return std::find(step.needs.begin(), step.needs.end(), other) != step.needs.end();
}

/// "Fill slowly, Top up, cold" as one word of a message.
std::string titlesOf(const std::vector<const WorkStep*>& list)
{
    std::string out;
    for (const WorkStep* step : list) {
        if (!out.empty())
            out += "; ";
        out += step->title;
    }
    return out;
}

} // namespace

std::span<const WorkStep> checklistSteps()
{
    return steps;
}

const WorkStep* stepById(std::string_view id)
{
    const auto found =
        std::find_if(steps.begin(), steps.end(), [id](const WorkStep& step) { return step.id == id; });
    return found == steps.end() || id.empty() ? nullptr : &*found;
}

const Tick* tickOf(const Checklist& checklist, std::string_view step)
{
    const auto found = std::find_if(checklist.ticks.begin(), checklist.ticks.end(),
                                    [step](const Tick& one) { return one.step == step; });
    return found == checklist.ticks.end() ? nullptr : &*found;
}

std::vector<const WorkStep*> lackingFor(const Checklist& checklist, std::string_view id)
{
    std::vector<const WorkStep*> out;
    const WorkStep* step = stepById(id);
    if (!step)
        return out;
    for (const WorkStep& before : steps)
        if (needs(*step, before.id) && !tickOf(checklist, before.id))
            out.push_back(&before);
    return out;
}

std::vector<const WorkStep*> restingOn(const Checklist& checklist, std::string_view id)
{
    // Needs always stand earlier in the table, so one pass in its order finds what rests through others too.
    std::array<bool, steps.size()> rests{};
    std::vector<const WorkStep*> out;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        rests[i] = needs(steps[i], id);
        for (std::size_t k = 0; k < i && !rests[i]; ++k)
            rests[i] = rests[k] && needs(steps[i], steps[k].id);
        if (rests[i] && tickOf(checklist, steps[i].id))
            out.push_back(&steps[i]);
    }
    return out;
}

Ticked tick(Checklist& checklist, const Tick& wanted)
{
    const WorkStep* step = stepById(wanted.step);
    if (!step)
        return {false, {"There is no step \"{a}\".", {}, {wanted.step}}};
    const std::vector<const WorkStep*> lacking = lackingFor(checklist, wanted.step);
    if (!lacking.empty() && wanted.override_reason.empty())
        return {false, {"Not yet. First: {a}.", {}, {titlesOf(lacking)}}};
    Tick kept = wanted;
    if (lacking.empty())
        kept.override_reason.clear();
    std::erase_if(checklist.ticks, [&](const Tick& one) { return one.step == wanted.step; });
    checklist.ticks.push_back(std::move(kept));
    if (lacking.empty())
        return {true, {}};
    return {true, {"Done out of order, and recorded as such. Still open: {a}.", {}, {titlesOf(lacking)}}};
}

Ticked untick(Checklist& checklist, std::string_view step)
{
    if (!tickOf(checklist, step))
        return {false, {"It is not ticked.", {}, {}}};
    std::erase_if(checklist.ticks, [&](const Tick& one) { return one.step == step; });
    const std::vector<const WorkStep*> resting = restingOn(checklist, step);
    if (resting.empty())
        return {true, {}};
    return {true, {"These rest on it and may no longer hold: {a}.", {}, {titlesOf(resting)}}};
}

Progress progressOf(const Checklist& checklist)
{
    Progress out;
    out.total = steps.size();
    for (const WorkStep& step : steps) {
        const Tick* done = tickOf(checklist, step.id);
        if (done)
            ++out.done;
        else if (!out.next)
            out.next = &step;
        if (done && (!done->override_reason.empty() || !lackingFor(checklist, step.id).empty()))
            out.against_order.push_back(done);
    }
    return out;
}

} // namespace siphonwright
