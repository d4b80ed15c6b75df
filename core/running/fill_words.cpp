#include "core/running/fill_words.h"

#include "core/layout/wording.h"

#include <algorithm>

namespace siphonwright {
namespace {

/// A throat, as a sentence calls it.
struct ThroatWords {
    std::string name;     ///< "the hump in Supply hose"
    std::string to_left;  ///< where what passes leftward gets to
    std::string to_right; ///< and rightward
};

bool atStart(const Throat& throat)
{
    return throat.along_mm <= 0;
}

std::string kindOf(const Throat& throat)
{
    switch (throat.kind) {
    case ThroatKind::crest:
        return "the hump in ";
    case ThroatKind::hollow:
        return "the dip in ";
    case ThroatKind::reducer:
        return "the change of bore in ";
    case ThroatKind::valve:
        return "the valve in ";
    case ThroatKind::opening:
        break;
    }
    return {};
}

ThroatWords wordsFor(const Throat& throat, const HeaterLoop& loop)
{
    const bool supply = throat.part == LoopPart::supply;
    const ResolvedHose& resolved = supply ? *loop.supply : *loop.return_;
    const std::string hose = nameOfHose(*resolved->hose);
    const std::string heater = nameOfHeater(*loop.heater);
    const Port& port = supply ? *loop.supply_port : *loop.return_port;
    const std::string to_port = "toward " + nameOfPort(port);
    const std::string to_heater = "toward " + heater;
    if (throat.kind != ThroatKind::opening)
        return {kindOf(throat) + hose, supply ? to_port : to_heater, supply ? to_heater : to_port};
    if (supply && atStart(throat))
        return {nameOfPort(port), "into the engine", "into " + hose};
    if (supply)
        return {"the inlet of " + heater, "into " + hose, "into " + heater};
    if (atStart(throat))
        return {"the outlet of " + heater, "into " + heater, "into " + hose};
    return {nameOfPort(port), "into " + hose, "into the engine"};
}

constexpr double worth_saying_ml = 0.5;

bool sealedBeside(const Throat& throat, const FillFrame& then)
{
    for (const std::size_t side : {throat.left, throat.right}) {
        const CellView& cell = then.cells.at(side);
        if (side > 0 && cell.sealed && cell.gas_ml > worth_saying_ml)
            return true;
    }
    return false;
}

std::string spilling(ThroatKind kind, bool sealed)
{
    if (kind == ThroatKind::opening || kind == ThroatKind::valve)
        return "Coolant runs through {a}, {0} up, {b}.";
    return sealed ? "Coolant spills over {a}, {0} up, {b}; the air behind it is sealed."
                  : "Coolant spills over {a}, {0} up, {b}.";
}

std::string sealing(ThroatKind kind, bool sealed)
{
    switch (kind) {
    case ThroatKind::crest:
        return "Coolant fills {a} to its crown, {0} up.";
    case ThroatKind::opening:
        return sealed ? "Coolant covers {a}, {0} up: air that is still behind it is sealed."
                      : "Coolant covers {a}, {0} up.";
    default:
        return sealed ? "Coolant closes {a}, {0} up: the air beyond it is sealed."
                      : "Coolant closes {a}, {0} up: air no longer passes there.";
    }
}

std::string patternOf(FillEventKind kind, ThroatKind at, bool sealed)
{
    switch (kind) {
    case FillEventKind::spills:
        return spilling(at, sealed);
    case FillEventKind::stops_spilling:
        return "Coolant no longer runs over {a}.";
    case FillEventKind::seals:
        return sealing(at, sealed);
    case FillEventKind::opens:
        return "{a} lets air pass again, {0} up.";
    case FillEventKind::bubbles:
        return "Air bubbles through {a}, {0} up, {b}.";
    case FillEventKind::stops_bubbling:
        return "No more air bubbles through {a}.";
    case FillEventKind::bleed_closes:
        return "Coolant reaches the bleed of {a}, {0} up; it is closed.";
    case FillEventKind::element_covered:
        return "Coolant covers the element of {a}, {0} up.";
    case FillEventKind::valve_opened:
        // A hose filled before that is connected over the coolant opens at its end.
        return at == ThroatKind::opening ? "The hose is pushed onto {a}, {0} up, over the coolant."
                                         : "{a} is opened, {0} up.";
    case FillEventKind::vacuum_released:
        return "The vacuum is let go: what air is left shrinks to a fraction.";
    }
    return {};
}

/// What a class watches happen; the rest ends something or opens again.
bool isSeenToBegin(const FillEvent& event, const FillNetwork& network)
{
    switch (event.kind) {
    case FillEventKind::stops_spilling:
    case FillEventKind::opens:
    case FillEventKind::stops_bubbling:
        return false;
    case FillEventKind::spills:
        return network.throats.at(event.throat).kind != ThroatKind::hollow;
    default:
        return true;
    }
}

/// "the hump" at the start of a sentence.
std::string capitalised(std::string words)
{
    if (words.rfind("the ", 0) == 0)
        words[0] = 'T';
    return words;
}

Message textOfBleed(const FillEvent& event, const FillNetwork& network, const FillPlanOf& plan)
{
    const BleedPlace& bleed = network.bleeds.at(event.throat);
    const HeaterLoop& loop = plan.loops.at(bleed.loop);
    const LoopPart on = plan.request->loops.at(bleed.loop).bleeds.at(bleed.bleed).on;
    const ResolvedHose& hose = on == LoopPart::supply ? *loop.supply : *loop.return_;
    return {patternOf(event.kind, ThroatKind::crest, false),
            {{bleed.height_mm, Unit::mm}},
            {nameOfHose(*hose->hose)}};
}

Message textOfElement(const FillEvent& event, const FillNetwork& network, const FillPlanOf& plan)
{
    const ElementTop& element = network.elements.at(event.throat);
    const HeaterLoop& loop = plan.loops.at(network.cells.at(element.cell).loop);
    return {patternOf(event.kind, ThroatKind::crest, false),
            {{element.height_mm, Unit::mm}},
            {nameOfHeater(*loop.heater)}};
}

std::string heaterName(const Id& id, const Sketch& sketch)
{
    const Heater* heater = sketch.heater(id);
    return heater ? nameOfHeater(*heater) : "Heater " + id;
}

/// A change of bore under the crown of its hose is nothing that a person would look at.
bool worthSaying(const FillEvent& event, const FillNetwork& network)
{
    switch (event.kind) {
    case FillEventKind::bleed_closes:
    case FillEventKind::element_covered:
    case FillEventKind::vacuum_released:
        return true;
    default:
        return network.throats.at(event.throat).kind != ThroatKind::reducer;
    }
}

} // namespace

Message beginningOf(const FillPlanOf& plan)
{
    if (!plan.request)
        return {"Filling is not computed: {a}.", {}, {plan.missing}};
    const FillRequest& request = *plan.request;
    const Quantity air{request.prefilled_air_ml, Unit::ml};
    if (request.prefilled && request.prefilled_air_ml > 0)
        return {"The engine is full; hoses and heater were filled before they were connected, and {0} of air "
                "got into each hose.",
                {air},
                {}};
    if (request.prefilled)
        return {"The engine is full; hoses and heater were filled before they were connected.", {}, {}};
    if (request.method == FillMethod::under_vacuum)
        return {"Everything is pumped down to a vacuum, and coolant is let in.", {}, {}};
    if (request.method == FillMethod::from_below)
        return {"Coolant is pumped in from below, at {a}.",
                {},
                {nameOfHeater(*plan.loops.at(request.feed_loop).heater)}};
    if (plan.drained)
        return {
            request.then_open.empty()
                ? "{0} of coolant was let out of the engine, down to {1}; the new hoses are empty."
                : "{0} of coolant was let out of the engine, down to {1}; the valves are shut and the new "
                  "hoses empty.",
            {{plan.drained->drained_ml / 1000, Unit::litre}, {plan.drained->level_mm, Unit::mm}},
            {}};
    if (!request.then_open.empty())
        return {"The engine is full, the valves are shut and the new hoses empty.", {}, {}};
    return {"Coolant is poured in at the filler.", {}, {}};
}

Message textOf(const FillEvent& event, const FillNetwork& network, const FillPlanOf& plan,
               const FillFrame* then)
{
    if (event.kind == FillEventKind::vacuum_released)
        return {patternOf(event.kind, ThroatKind::crest, false), {}, {}};
    if (event.kind == FillEventKind::bleed_closes)
        return textOfBleed(event, network, plan);
    if (event.kind == FillEventKind::element_covered)
        return textOfElement(event, network, plan);
    const Throat& throat = network.throats.at(event.throat);
    const ThroatWords words = wordsFor(throat, plan.loops.at(throat.loop));
    const bool sealed = then && sealedBeside(throat, *then);
    const std::string pattern = patternOf(event.kind, throat.kind, sealed);
    const bool over_floor = event.kind == FillEventKind::spills || event.kind == FillEventKind::valve_opened;
    const bool leads = pattern.rfind("{a}", 0) == 0;
    return {pattern,
            {{over_floor ? throat.floor_mm : throat.crown_mm, Unit::mm}},
            {leads ? capitalised(words.name) : words.name, event.to_right ? words.to_right : words.to_left}};
}

std::vector<FillLine> linesOf(const FillResult& filled, const FillPlanOf& plan)
{
    std::vector<FillLine> lines;
    if (!filled.end.network || !plan.request)
        return lines;
    const FillNetwork& network = *filled.end.network;
    std::size_t frame = 0;
    for (const FillEvent& event : filled.events) {
        while (frame < filled.frames.size() && filled.frames[frame].events <= event.order)
            ++frame;
        const FillFrame* then = frame < filled.frames.size() ? &filled.frames[frame] : nullptr;
        if (!worthSaying(event, network))
            continue;
        FillLine line{event.poured_ml, event.level_mm, event.order, isSeenToBegin(event, network),
                      textOf(event, network, plan, then)};
        const bool said = std::any_of(lines.begin(), lines.end(), [&](const FillLine& before) {
            return before.poured_ml == line.poured_ml && before.text == line.text;
        });
        if (!said)
            lines.push_back(std::move(line));
    }
    return lines;
}

Message endOf(const Filling& filling)
{
    if (!filling.missing.empty())
        return {"Filling is not computed: {a}.", {}, {filling.missing}};
    Message text{"Filled to {0}: {1} of coolant in hoses and chambers.",
                 {{filling.level_mm, Unit::mm}, {filling.coolant_ml, Unit::ml}},
                 {}};
    if (filling.status == FillStatus::level_not_reached)
        text.pattern = "Filled no further than {0}: {1} of coolant in hoses and chambers.";
    if (filling.drained_ml) {
        text.pattern += " {2} was let out before, and {3} has to be poured in.";
        text.quantities.push_back({*filling.drained_ml / 1000, Unit::litre});
        text.quantities.push_back({filling.refill_ml / 1000, Unit::litre});
    }
    return text;
}

std::string placeOf(const PocketFound& pocket, const Sketch& sketch)
{
    if (const Hose* hose = sketch.hose(pocket.hose))
        return nameOfHose(*hose);
    return "the chamber of " + heaterName(pocket.heater, sketch);
}

Message textOf(const PocketFound& pocket, const Sketch& sketch, const Plumb& plumb)
{
    Message text{
        "{0} of air stay in {a}, {1} up.",
        {{pocket.volume_ml, Unit::ml}, {plumb.height(pocket.at), Unit::mm}, {pocket.height_mm, Unit::mm}},
        {placeOf(pocket, sketch)}};
    if (pocket.closes_bore)
        text.pattern = "{0} of air stay in {a}, {1} up: they close the bore and take {2} of head.";
    else if (!pocket.hose.empty())
        text.pattern = "{0} of air stay in {a}, {1} up: they narrow the bore.";
    return text;
}

Message clearingOf(const PocketFound& pocket)
{
    Message text{"Running the engine does not move it: {0} in the hose, and {1-2} clear it.",
                 {{pocket.velocity_m_per_s, Unit::m_per_s},
                  {pocket.clears.least_m_per_s, Unit::m_per_s},
                  {pocket.clears.greatest_m_per_s, Unit::m_per_s}},
                 {}};
    if (pocket.cleared_by_running == Clearing::may_clear)
        text.pattern = "Running the engine may clear it: {0} in the hose, and {1-2} clear it.";
    if (pocket.cleared_by_running == Clearing::cleared)
        text.pattern = "Running the engine clears it: {0} in the hose, and {1-2} clear it.";
    if (pocket.clears.greatest_m_per_s <= 0 && pocket.cleared_by_running == Clearing::stays)
        text = {"Running the engine does not move it.", {}, {}};
    return text;
}

Message topUpOf(const Filling& filling)
{
    constexpr double nothing_ml = 1; // under what anybody pours
    if (filling.top_up_ml < nothing_ml)
        return {"After the engine has run and cooled, nothing needs topping up.", {}, {}};
    return {"After the engine has run and cooled, top up {0}.", {{filling.top_up_ml, Unit::ml}}, {}};
}

std::optional<Message> coldestOf(const Filling& filling, const Sketch& sketch)
{
    const Fact<double>& coldest = sketch.site.coldest_ambient_degC;
    if (!filling.missing.empty() || !coldest.known())
        return std::nullopt;
    return Message{"At {0} the coolant has shrunk and stands at {1}.",
                   {{*coldest.value, Unit::degC}, {filling.coldest_level_mm, Unit::mm}},
                   {}};
}

Message baredOf(const LoopAir& air, const Sketch& sketch)
{
    return {"Coolant does not cover the element of {a}.", {}, {heaterName(air.heater, sketch)}};
}

Message runningOf(const LoopAir& air, const Sketch& sketch)
{
    const std::string name = heaterName(air.heater, sketch);
    if (air.running.flow_l_per_min <= 0)
        return {"With the engine running nothing is known to flow through {a}.", {}, {name}};
    Message text{"With the engine running {0} pass through {a}, from its supply port to its return port.",
                 {{air.running.flow_l_per_min, Unit::l_per_min}},
                 {name}};
    if (air.running.sense == FlowSense::reverse)
        text.pattern = "With the engine running {0} pass backward through {a}, from its return port to "
                       "its supply port.";
    if (air.bypasses_radiator)
        text.pattern += " They bypass the radiator.";
    return text;
}

} // namespace siphonwright
