#include "tests/checks/cases.h"

/// Rules on what the loop's ports are part of, on check valves and on the kind of antifreeze.
namespace siphonwright::test {
namespace {

using SketchChange = std::function<void(Sketch&)>;

std::vector<Case> thermostatSideCases()
{
    const std::string rule = "supply-cut-off-by-thermostat";
    const auto tee = [](std::optional<ThermostatSide> side) {
        return [=](Sketch& s) {
            s.ports[0].kind = PortKind::lower_hose_tee;
            s.engine->thermostat->side.value = side;
        };
    };
    const SketchChange inlet_side_but_in_the_block = [](Sketch& s) {
        s.engine->thermostat->side.value = ThermostatSide::inlet;
    };
    const SketchChange return_on_a_tee = [](Sketch& s) {
        s.ports[1].kind = PortKind::lower_hose_tee;
        s.engine->thermostat->side.value = ThermostatSide::inlet;
    };
    return {
        {rule, "tee, thermostat on the outlet side", passes, tee(ThermostatSide::outlet)},
        {rule, "tee, thermostat on the inlet side", stop, tee(ThermostatSide::inlet)},
        {rule, "tee, side not entered", passes, tee(std::nullopt)},
        {rule, "drain port, thermostat on the inlet side", passes, inlet_side_but_in_the_block},
        {rule, "a return is not cut off", passes, return_on_a_tee},
    };
}

std::vector<Case> sharingCases()
{
    const auto cabin = [](std::optional<bool> open) {
        return [=](Sketch& s) {
            s.ports[1].kind = PortKind::cabin_line;
            s.ports[1].cabin_line_open = open;
        };
    };
    const SketchChange unused = [](Sketch& s) {
        Port spare = s.ports[1];
        spare.id = "port-3";
        spare.role = PortRole::spare;
        spare.kind = PortKind::cabin_line;
        spare.cabin_line_open = true;
        s.ports.push_back(spare);
    };
    const auto second_hose_from = [](const char* port) {
        return [=](Sketch& s) {
            Port spare = s.ports[0];
            spare.id = "port-3";
            spare.position.x = 200;
            s.ports.push_back(spare);
            Hose hose = *s.hoses[supply_hose];
            hose.id = "hose-3";
            hose.from.port = port;
            s.hoses.push_back(Shared<Hose>(hose));
        };
    };
    return {
        {"parallel-path", "cabin line open", caution, cabin(true)},
        {"parallel-path", "cabin line shut", passes, cabin(false)},
        {"parallel-path", "not known", passes, cabin(std::nullopt)},
        {"parallel-path", "an open cabin line that no hose uses", passes, unused},
        {"shared-port", "each hose on a port of its own", passes, second_hose_from("port-3")},
        {"shared-port", "two hoses on one port", caution, second_hose_from("port-1")},
    };
}

/// The jacket is 300 mm deep, its middle at y 0.
std::vector<Case> bankCases()
{
    const std::string rule = "bank-not-crossed";
    const auto ports = [](Arrangement arrangement, double supply_y, double return_y) {
        return [=](Sketch& s) {
            s.engine->arrangement = arrangement;
            s.ports[0].position.y = supply_y;
            s.ports[1].position.y = return_y;
        };
    };
    return {
        {rule, "from bank to bank", passes, ports(Arrangement::vee_8, -100, 100)},
        {rule, "on one bank", advice, ports(Arrangement::vee_8, -100, -100)},
        {rule, "on one bank of twelve cylinders, just off the middle", advice,
         ports(Arrangement::vee_12, 100, 0.1)},
        {rule, "supply in the middle", passes, ports(Arrangement::vee_6, 0, 100)},
        {rule, "sixteen cylinders, one bank", advice, ports(Arrangement::vee_16, 100, 100)},
        {rule, "in line", passes, ports(Arrangement::inline_6, -100, -100)},
        {rule, "on one bank of a jacket set off to the viewer", advice,
         [](Sketch& s) {
             s.engine->arrangement = Arrangement::vee_8;
             s.engine->jacket_y_from_mm = -250;
             s.engine->jacket_y_to_mm = -50;
             s.ports[0].position.y = -100;
             s.ports[1].position.y = 100;
         }},
    };
}

std::vector<Case> checkValveCases()
{
    const std::string rule = "check-valve-stays-shut";
    const auto part = [](InlineKind kind) {
        return [=](Sketch& s) {
            s.hoses[return_hose].edit([=](Hose& h) {
                InlinePart added = h.parts[0];
                added.kind = kind;
                added.along_mm = 200;
                h.parts.push_back(added);
            });
        };
    };
    return {
        {rule, "lift check valve", caution, part(InlineKind::lift_check_valve)},
        {rule, "swing check valve", caution, part(InlineKind::swing_check_valve)},
        {rule, "isolation valve", passes, part(InlineKind::isolation_valve)},
        {rule, "drain", passes, part(InlineKind::drain)},
    };
}

std::vector<Case> antifreezeKindCases()
{
    const std::string rule = "antifreeze-kind-unknown";
    const auto filled = [](Glycol glycol, const char* technology, const char* colour) {
        return [=](Sketch& s) {
            s.coolant.glycol = glycol;
            s.coolant.technology = technology;
            s.coolant.colour = colour;
        };
    };
    return {
        {rule, "kind known, no colour", passes, filled(Glycol::ethylene, "", "")},
        {rule, "kind and technology known", passes, filled(Glycol::propylene, "organic acid", "pink")},
        {rule, "colour alone", advice, filled(Glycol::ethylene, "", "pink")},
        {rule, "not known", advice, filled(Glycol::unknown, "organic acid", "")},
        {rule, "plain water", passes, filled(Glycol::none, "", "green")},
        {rule, "nothing drawn yet", passes,
         [](Sketch& s) {
             s.coolant.glycol = Glycol::unknown;
             s.hoses.clear();
             s.heaters.clear();
         }},
    };
}

} // namespace

std::vector<Case> circuitCases()
{
    std::vector<Case> all = thermostatSideCases();
    for (const auto& group : {sharingCases(), bankCases(), checkValveCases(), antifreezeKindCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

} // namespace siphonwright::test
