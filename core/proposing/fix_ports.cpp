#include "core/layout/wording.h"
#include "core/proposing/cures.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"

#include <algorithm>

/// Cures by another port, and by connecting what is open.
namespace siphonwright {
namespace {

bool isFree(const Sketch& sketch, const Port& port)
{
    return std::none_of(sketch.hoses.begin(), sketch.hoses.end(), [&](const Shared<Hose>& hose) {
        return hose->from.port == port.id || hose->to.port == port.id;
    });
}

/// A hose on another port, laid anew, the roles changed with it.
CureChange onOtherPort(const CureCase& of, const Id& hose, const Id& from_port, const Id& to_port)
{
    return [=, stop = of.stop](Sketch& sketch, double, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        Port* left = byId(sketch.ports, from_port);
        Port* taken = byId(sketch.ports, to_port);
        if (!shared || !left || !taken)
            return false;
        const bool start = (*shared)->from.port == from_port;
        shared->edit([&](Hose& changed) { (start ? changed.from : changed.to).port = to_port; });
        taken->role = (*shared)->role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        if (isFree(sketch, *left))
            left->role = PortRole::spare;
        words = {"Take {a} instead of {b}, and lay {c} anew from there.",
                 {},
                 {nameOfPort(*taken), nameOfPort(*left), nameOfHose(**shared)}};
        return layAnew(sketch, hose, Ways::short_list, stop);
    };
}

/// A port's role without a hose: another one takes it.
CureChange roleTo(const Id& from_port, const Id& to_port)
{
    return [=](Sketch& sketch, double, Message& words) {
        Port* left = byId(sketch.ports, from_port);
        Port* taken = byId(sketch.ports, to_port);
        if (!left || !taken)
            return false;
        taken->role = left->role;
        left->role = PortRole::spare;
        words = {"Take {a} instead of {b}.", {}, {nameOfPort(*taken), nameOfPort(*left)}};
        return true;
    };
}

/// A spare port loses a role that no hose needs.
CureChange roleGone(const Id& port)
{
    return [=](Sketch& sketch, double, Message& words) {
        Port* spare = byId(sketch.ports, port);
        if (!spare)
            return false;
        spare->role = PortRole::spare;
        words = {"Leave {a} spare: no hose is on it.", {}, {nameOfPort(*spare)}};
        return true;
    };
}

/// Free ports, those of the wanted role first, then the spare ones.
std::vector<const Port*> freePorts(const Sketch& sketch, PortRole wanted)
{
    std::vector<const Port*> out;
    for (const PortRole role : {wanted, PortRole::spare})
        for (const Port& port : sketch.ports)
            if (port.role == role && isFree(sketch, port))
                out.push_back(&port);
    return out;
}

void addOtherPorts(const CureCase& of, const Port& port, std::vector<Cure>& cures)
{
    bool carries = false;
    for (const Shared<Hose>& hose : of.sketch.hoses) {
        if (hose->from.port != port.id && hose->to.port != port.id)
            continue;
        carries = true;
        const PortRole wanted = hose->role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        for (const Port* other : freePorts(of.sketch, wanted))
            addCure(cures, refOf(port), onOtherPort(of, hose->id, port.id, other->id), {0});
    }
    if (carries)
        return;
    if (port.role == PortRole::supply || port.role == PortRole::return_)
        addCure(cures, refOf(port), roleGone(port.id), {0});
    for (const Port* other : freePorts(of.sketch, PortRole::spare))
        addCure(cures, refOf(port), roleTo(port.id, other->id), {0});
}

/// Rules on pairs of ports name one of them; the other may give way as well.
void addPartnersPorts(const CureCase& of, const Port& port, std::vector<Cure>& cures)
{
    for (const Shared<Hose>& hose : of.sketch.hoses) {
        const Port* at_start = of.sketch.port(hose->from.port);
        const Port* at_end = of.sketch.port(hose->to.port);
        for (const Port* other : {at_start, at_end})
            if (other && other->id != port.id)
                addOtherPorts(of, *other, cures);
    }
}

/// An open end onto a free port of its role, or onto its nozzle.
CureChange connected(const CureCase& of, const Id& hose, std::size_t end, const HoseEnd& onto,
                     const std::string& name, bool anew)
{
    return [=, stop = of.stop](Sketch& sketch, double, Message& words) {
        if (!connect(sketch, hose, end, onto))
            return false;
        if (Port* port = byId(sketch.ports, onto.port))
            port->role = sketch.hose(hose)->role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        words = {anew ? "Connect {a} to {b}, and lay it anew." : "Connect {a} to {b}.",
                 {},
                 {nameOfHose(*sketch.hose(hose)), name}};
        return !anew || layAnew(sketch, hose, Ways::short_list, stop);
    };
}

bool nozzleFree(const Sketch& sketch, const Id& heater, NozzleKind nozzle)
{
    const auto on = [&](const HoseEnd& end) { return end.heater == heater && end.nozzle == nozzle; };
    return std::none_of(sketch.hoses.begin(), sketch.hoses.end(),
                        [&](const Shared<Hose>& hose) { return on(hose->from) || on(hose->to); });
}

void addConnections(const CureCase& of, const Hose& hose, std::size_t end, std::vector<Cure>& cures)
{
    const bool engine_side = (hose.role == HoseRole::supply) == (end == 0);
    const auto offer = [&](const HoseEnd& onto, const std::string& name) {
        for (const bool anew : {false, true})
            addCure(cures, {PartKind::hose_end, hose.id, end}, connected(of, hose.id, end, onto, name, anew),
                    {0});
    };
    if (engine_side) {
        const PortRole wanted = hose.role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        for (const Port* port : freePorts(of.sketch, wanted)) {
            HoseEnd onto;
            onto.port = port->id;
            offer(onto, nameOfPort(*port));
        }
        return;
    }
    for (const Heater& heater : of.sketch.heaters) {
        HoseEnd onto;
        onto.heater = heater.id;
        onto.nozzle = hose.role == HoseRole::supply ? NozzleKind::inlet : NozzleKind::outlet;
        if (nozzleFree(of.sketch, heater.id, onto.nozzle))
            offer(onto, nameOfHeater(heater));
    }
}

/// A heater without a hose gets one from a free port.
CureChange hoseAdded(const CureCase& of, const Id& heater, HoseRole role, const Id& port)
{
    return [=, stop = of.stop](Sketch& sketch, double, Message& words) {
        HoseEnd at_port;
        at_port.port = port;
        HoseEnd at_heater;
        at_heater.heater = heater;
        at_heater.nozzle = role == HoseRole::supply ? NozzleKind::inlet : NozzleKind::outlet;
        const Id added = role == HoseRole::supply ? addHose(sketch, role, at_port, at_heater, {})
                                                  : addHose(sketch, role, at_heater, at_port, {});
        if (added.empty())
            return false;
        byId(sketch.ports, port)->role = role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        words = {role == HoseRole::supply ? "Lay a supply hose from {a} to {b}."
                                          : "Lay a return hose from {b} to {a}.",
                 {},
                 {nameOfPort(*sketch.port(port)), nameOfHeater(*sketch.heater(heater))}};
        return layAnew(sketch, added, Ways::grid_too, stop);
    };
}

/// Both hoses of a heater that has none.
CureChange loopAdded(const CureCase& of, const Id& heater, const Id& supply, const Id& back)
{
    return [=, first = hoseAdded(of, heater, HoseRole::supply, supply),
            second = hoseAdded(of, heater, HoseRole::return_, back)](Sketch& sketch, double, Message& words) {
        Message ignored;
        if (supply == back || !first(sketch, 0, ignored) || !second(sketch, 0, ignored))
            return false;
        words = {"Lay a supply hose from {a} and a return hose to {b}, both on {c}.",
                 {},
                 {nameOfPort(*sketch.port(supply)), nameOfPort(*sketch.port(back)),
                  nameOfHeater(*sketch.heater(heater))}};
        return true;
    };
    // False alarm of clang-tidy 14: what a std::function holds is freed by it.
} // NOLINT(clang-analyzer-cplusplus.NewDeleteLeaks)

/// A hose on nothing, on a port and on the heater.
CureChange bothConnected(const CureCase& of, const Id& hose, HoseRole role, const Id& port, const Id& heater)
{
    return [=, stop = of.stop](Sketch& sketch, double, Message& words) {
        HoseEnd at_port;
        at_port.port = port;
        HoseEnd at_heater;
        at_heater.heater = heater;
        at_heater.nozzle = role == HoseRole::supply ? NozzleKind::inlet : NozzleKind::outlet;
        const std::size_t engine_end = role == HoseRole::supply ? 0 : 1;
        if (!connect(sketch, hose, engine_end, at_port) || !connect(sketch, hose, 1 - engine_end, at_heater))
            return false;
        byId(sketch.ports, port)->role = role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        words = {"Connect {a} to {b} and {c}, and lay it anew.",
                 {},
                 {nameOfHose(*sketch.hose(hose)), nameOfPort(*sketch.port(port)),
                  nameOfHeater(*sketch.heater(heater))}};
        return layAnew(sketch, hose, Ways::grid_too, stop);
    };
}

void addBothEnds(const CureCase& of, const Hose& hose, std::vector<Cure>& cures)
{
    const PortRole wanted = hose.role == HoseRole::supply ? PortRole::supply : PortRole::return_;
    const NozzleKind nozzle = hose.role == HoseRole::supply ? NozzleKind::inlet : NozzleKind::outlet;
    for (const Heater& heater : of.sketch.heaters)
        for (const Port* port : freePorts(of.sketch, wanted))
            if (nozzleFree(of.sketch, heater.id, nozzle))
                addCure(cures, refOf(hose), bothConnected(of, hose.id, hose.role, port->id, heater.id), {0});
}

/// A heater without hoses, or with a hose of its own on the wrong nozzle.
void addWholeLoops(const CureCase& of, const Heater& heater, std::vector<Cure>& cures)
{
    for (const Shared<Hose>& hose : of.sketch.hoses) {
        const std::size_t heater_end = hose->role == HoseRole::supply ? 1 : 0;
        addConnections(of, *hose, heater_end, cures);
    }
    if (!nozzleFree(of.sketch, heater.id, NozzleKind::inlet) ||
        !nozzleFree(of.sketch, heater.id, NozzleKind::outlet))
        return;
    for (const Port* supply : freePorts(of.sketch, PortRole::supply))
        for (const Port* back : freePorts(of.sketch, PortRole::return_))
            addCure(cures, refOf(heater), loopAdded(of, heater.id, supply->id, back->id), {0});
}

void addMissingHoses(const CureCase& of, const Heater& heater, std::vector<Cure>& cures)
{
    for (const HoseRole role : {HoseRole::supply, HoseRole::return_}) {
        if (!nozzleFree(of.sketch, heater.id,
                        role == HoseRole::supply ? NozzleKind::inlet : NozzleKind::outlet))
            continue;
        const PortRole wanted = role == HoseRole::supply ? PortRole::supply : PortRole::return_;
        for (const Port* port : freePorts(of.sketch, wanted))
            addCure(cures, refOf(heater), hoseAdded(of, heater.id, role, port->id), {0});
    }
}

} // namespace

void addPortCures(const CureCase& of, std::vector<Cure>& cures)
{
    const Finding& finding = of.finding;
    if (const Port* port = of.sketch.port(finding.part.id)) {
        addOtherPorts(of, *port, cures);
        if (isOneOf(finding.rule, {"ports-too-close", "sensor-near-return", "bank-not-crossed"}))
            addPartnersPorts(of, *port, cures);
    }
    if (isOneOf(finding.rule, {"supply-rises", "return-dip", "return-high-point", "supply-high-point",
                               "return-slope", "heater-under-return"}))
        if (const ResolvedHose* hose = of.hose())
            for (const HoseEnd* end : {&(*hose)->hose->from, &(*hose)->hose->to})
                if (const Port* port = of.sketch.port(end->port))
                    addOtherPorts(of, *port, cures);
    if (!isOneOf(finding.rule, {"hose-open-end", "hose-not-connected"}))
        return;
    if (const Hose* hose = of.sketch.hose(finding.part.id)) {
        addConnections(of, *hose, finding.part.index, cures);
        addConnections(of, *hose, 1 - std::min<std::size_t>(finding.part.index, 1), cures);
        addBothEnds(of, *hose, cures);
    }
    if (const Heater* heater = of.sketch.heater(finding.part.id))
        addMissingHoses(of, *heater, cures);
    if (const Heater* heater = of.sketch.heater(finding.part.id))
        addWholeLoops(of, *heater, cures);
}

} // namespace siphonwright
