#include "core/proposing/proposal_text.h"

#include "core/analysis/margin_text.h"
#include "core/checks/rules.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace siphonwright {
namespace {

constexpr double noticed_mm = 0.5;

/// What is left of a rule on how a layout lies, as people say it.
struct ToSpare {
    std::string_view rule;
    const char* what;
    const char* pattern;
};
constexpr std::array to_spare = {
    ToSpare{"ground-clearance", "ground", "Ground: {0} more than the least clearance."},
    ToSpare{"keep-clear", "hot or moving things", "Hot or moving things: {0} more than the least clearance."},
    ToSpare{"unsupported-span", "span between clips", "Clips: the longest span could be {0} longer."},
    ToSpare{"no-slack", "slack between frame and engine",
            "Slack between frame and engine: {0} of its length more than the least."},
    ToSpare{"heater-drop", "heater under the jacket",
            "Heater under the jacket: {0} lower than it has to be."},
    ToSpare{"above-coolant-level", "coolant level", "Coolant level: {0} over the highest point."},
    ToSpare{"supply-rises", "fall of the supply hose", "Supply hose: {0} more fall than it needs."},
};

const ToSpare* toSpare(std::string_view rule)
{
    const auto found =
        std::find_if(to_spare.begin(), to_spare.end(), [&](const ToSpare& one) { return one.rule == rule; });
    return found == to_spare.end() ? nullptr : &*found;
}

/// Puts a quantity into a message under construction; its placeholder.
std::string put(Message& message, double value, Unit unit)
{
    message.quantities.push_back({value, unit});
    return "{" + std::to_string(message.quantities.size() - 1) + "}";
}

/// "Move {a} {0} to the right, {1} down."
void addMove(const Heater& from, const Heater& to, std::vector<Message>& out)
{
    Message text{"Move {a} ", {}, {nameOfHeater(from)}};
    const Vec3 by = to.position - from.position;
    bool first = true;
    const auto part = [&](double mm, const char* more, const char* less) {
        if (std::abs(mm) < noticed_mm)
            return;
        text.pattern += first ? "" : ", ";
        text.pattern += put(text, std::round(std::abs(mm)), Unit::mm) + (mm > 0 ? more : less);
        first = false;
    };
    part(by.x, " to the right", " to the left");
    part(by.y, " away from you", " towards you");
    part(by.z, " up", " down");
    text.pattern += ".";
    if (!first)
        out.push_back(std::move(text));
}

/// The port that a heater's hose of one role is on; null where none is.
const Port* portOf(const Sketch& sketch, const Id& heater, HoseRole role)
{
    for (const Shared<Hose>& hose : sketch.hoses) {
        if (hose->role != role || (hose->from.heater != heater && hose->to.heater != heater))
            continue;
        const Port* at_start = sketch.port(hose->from.port);
        return at_start ? at_start : sketch.port(hose->to.port);
    }
    return nullptr;
}

void addPort(const Sketch& drawn, const Proposal& proposal, HoseRole role, std::vector<Message>& out)
{
    const bool supply = role == HoseRole::supply;
    const Port* now = proposal.sketch.port(supply ? proposal.supply_port : proposal.return_port);
    if (!now)
        return;
    const Port* before = portOf(drawn, proposal.heater, role);
    if (before && before->id != now->id)
        out.push_back(
            {supply ? "Take {a} for the supply instead of {b}." : "Take {a} for the return instead of {b}.",
             {},
             {nameOfPort(*now), nameOfPort(*before)}});
    const Port* drawn_port = drawn.port(now->id);
    if (drawn_port && now->stub.elbow && drawn_port->stub.elbow != now->stub.elbow)
        out.push_back({"Turn the elbow on {a} so that it leads down by {0}.",
                       {{-now->stub.elbow->direction.elevation_deg, Unit::degree}},
                       {nameOfPort(*now)}});
}

void addBore(const Sketch& drawn, const Proposal& proposal, std::vector<Message>& out)
{
    constexpr double same_mm = 0.3;
    for (const Shared<Hose>& hose : drawn.hoses) {
        const bool own = hose->from.heater == proposal.heater || hose->to.heater == proposal.heater;
        if (!own || !hose->bore_mm.known() || std::abs(*hose->bore_mm.value - proposal.bore_mm) < same_mm)
            continue;
        out.push_back({"Use hose of {0} bore, with hose ends and valves to match.",
                       {{proposal.bore_mm, Unit::mm}},
                       {}});
        return;
    }
}

} // namespace

Message textOf(const Proposal& proposal)
{
    Message text{"{0} of hose of {1} bore, {2}.",
                 {{std::round(proposal.length_mm), Unit::mm},
                  {proposal.bore_mm, Unit::mm},
                  {proposal.flow_l_per_min, Unit::l_per_min}},
                 {}};
    if (proposal.flow_l_per_min > 0)
        return text;
    text.pattern = "{0} of hose of {1} bore; its flow is not computed.";
    text.quantities.pop_back();
    return text;
}

Message marginsOf(const Proposal& proposal)
{
    Message text = textOf(proposal.sound);
    const std::optional<double> sag_mm = proposal.leastSag_mm();
    const std::string number = put(text, sag_mm.value_or(droop_limit_mm), Unit::mm);
    text.pattern += sag_mm ? " Its hoses may sag " + number + " before they hold air or coolant."
                           : " Its hoses may sag more than " + number + ".";
    return text;
}

bool isOnLaying(std::string_view rule)
{
    return toSpare(rule) != nullptr;
}

Message textOf(const Margin& margin)
{
    const ToSpare* words = toSpare(margin.rule);
    return {words ? words->pattern : "{0} to spare.", {{margin.left, margin.unit}}, {}};
}

std::optional<Message> leastOf(const Proposal& proposal)
{
    const Margin* margin = proposal.leastToSpare();
    const SagMargin* sag = nullptr;
    for (const SagMargin& one : proposal.sag)
        if (!one.droop.already_trapped && one.droop.margin_mm &&
            (!sag || *one.droop.margin_mm < *sag->droop.margin_mm))
            sag = &one;
    if (sag && (!margin || *sag->droop.margin_mm < margin->left)) {
        const Hose* hose = proposal.sketch.hose(sag->hose);
        return Message{"{0} left: sag of {a}",
                       {{*sag->droop.margin_mm, Unit::mm}},
                       {hose ? nameOfHose(*hose) : sag->hose}};
    }
    if (!margin)
        return std::nullopt;
    return Message{"{0} left: {a}", {{margin->left, margin->unit}}, {toSpare(margin->rule)->what}};
}

std::vector<Message> marginList(const Proposal& proposal)
{
    std::vector<Message> out{textOf(proposal.sound)};
    if (!proposal.sound_over_envelope)
        out.push_back({"Not sound on every grade that is judged.", {}, {}});
    for (const SagMargin& margin : proposal.sag)
        out.push_back(textOf(margin, proposal.sketch));
    bool slack_measured = false;
    for (const Margin& margin : proposal.to_spare) {
        out.push_back(textOf(margin));
        slack_measured = slack_measured || margin.rule == "no-slack";
    }
    for (const NotJudged& one : proposal.not_judged) {
        out.push_back(
            {"Not judged, \"{a}\": {b}.", {}, {std::string(ruleById(one.rule)->title), one.missing}});
        slack_measured = slack_measured || one.rule == "no-slack";
    }
    if (!slack_measured && !switchedOff("no-slack", proposal.sketch))
        out.push_back({"Slack: every hose goes round a bend of {0} or more.", {{45, Unit::degree}}, {}});
    return out;
}

std::vector<Message> changesFrom(const Sketch& drawn, const Proposal& proposal)
{
    std::vector<Message> out;
    const Heater* before = drawn.heater(proposal.heater);
    const Heater* after = proposal.sketch.heater(proposal.heater);
    if (before && after)
        addMove(*before, *after, out);
    if (before && proposal.turned_deg != 0)
        out.push_back({"Turn {a} by {0} about its upright axis.",
                       {{proposal.turned_deg, Unit::degree}},
                       {nameOfHeater(*before)}});
    addPort(drawn, proposal, HoseRole::supply, out);
    addPort(drawn, proposal, HoseRole::return_, out);
    addBore(drawn, proposal, out);
    return out;
}

} // namespace siphonwright
