#include "core/running/fill_words.h"

#include "core/layout/wording.h"

#include <algorithm>

namespace siphonwright {
namespace {

/// A throat, as a sentence calls it.
struct ThroatWords {
    std::string name;     ///< "the crest of Supply hose"
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
        return "the crest of ";
    case ThroatKind::hollow:
        return "the hollow of ";
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

std::string patternOf(FillEventKind kind)
{
    switch (kind) {
    case FillEventKind::spills:
        return "Coolant spills over {a}, {0} up, {b}.";
    case FillEventKind::stops_spilling:
        return "Coolant no longer runs over {a}.";
    case FillEventKind::seals:
        return "Coolant closes {a}, {0} up: air no longer passes there.";
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
        return "{a} is opened, {0} up.";
    case FillEventKind::vacuum_released:
        return "Air is let in again over the coolant.";
    }
    return {};
}

/// "the crest" at the start of a sentence.
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
    return {patternOf(event.kind), {{bleed.height_mm, Unit::mm}}, {nameOfHose(*hose->hose)}};
}

Message textOfElement(const FillEvent& event, const FillNetwork& network, const FillPlanOf& plan)
{
    const ElementTop& element = network.elements.at(event.throat);
    const HeaterLoop& loop = plan.loops.at(network.cells.at(element.cell).loop);
    return {patternOf(event.kind), {{element.height_mm, Unit::mm}}, {nameOfHeater(*loop.heater)}};
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

Message textOf(const FillEvent& event, const FillNetwork& network, const FillPlanOf& plan)
{
    if (event.kind == FillEventKind::vacuum_released)
        return {patternOf(event.kind), {}, {}};
    if (event.kind == FillEventKind::bleed_closes)
        return textOfBleed(event, network, plan);
    if (event.kind == FillEventKind::element_covered)
        return textOfElement(event, network, plan);
    const Throat& throat = network.throats.at(event.throat);
    const ThroatWords words = wordsFor(throat, plan.loops.at(throat.loop));
    const bool over_floor = event.kind == FillEventKind::spills || event.kind == FillEventKind::valve_opened;
    const bool leads = event.kind == FillEventKind::opens || event.kind == FillEventKind::valve_opened;
    Message text{
        patternOf(event.kind),
        {{over_floor ? throat.floor_mm : throat.crown_mm, Unit::mm}},
        {leads ? capitalised(words.name) : words.name, event.to_right ? words.to_right : words.to_left}};
    if (event.kind == FillEventKind::spills && throat.kind == ThroatKind::opening)
        text.pattern = "Coolant runs through {a}, {0} up, {b}.";
    return text;
}

std::vector<FillLine> linesOf(const FillResult& filled, const FillPlanOf& plan)
{
    std::vector<FillLine> lines;
    if (!filled.end.network || !plan.request)
        return lines;
    for (const FillEvent& event : filled.events) {
        if (!worthSaying(event, *filled.end.network))
            continue;
        FillLine line{event.poured_ml, event.level_mm, textOf(event, *filled.end.network, plan)};
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
    Message text{"Running the engine does not move it: {0} in the hose, and {1} to {2} clear it.",
                 {{pocket.velocity_m_per_s, Unit::m_per_s},
                  {pocket.clears.least_m_per_s, Unit::m_per_s},
                  {pocket.clears.greatest_m_per_s, Unit::m_per_s}},
                 {}};
    if (pocket.cleared_by_running == Clearing::may_clear)
        text.pattern = "Running the engine may clear it: {0} in the hose, and {1} to {2} clear it.";
    if (pocket.cleared_by_running == Clearing::cleared)
        text.pattern = "Running the engine clears it: {0} in the hose, and {1} to {2} clear it.";
    if (pocket.clears.greatest_m_per_s <= 0 && pocket.cleared_by_running == Clearing::stays)
        text = {"Running the engine does not move it.", {}, {}};
    return text;
}

Message topUpOf(const Filling& filling)
{
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
    Message text{
        "With the engine running {0} a minute flow through {a}, from its supply port to its return port.",
        {{air.running.flow_l_per_min, Unit::litre}},
        {name}};
    if (air.running.sense == FlowSense::reverse)
        text.pattern =
            "With the engine running {0} a minute flow backward through {a}, from its return port to "
            "its supply port.";
    if (air.bypasses_radiator)
        text.pattern += " They bypass the radiator.";
    return text;
}

} // namespace siphonwright
