#include "core/sketch/template_parts.h"

namespace siphonwright {
namespace {

/// Heights over the datum (frame rail) and half the length of the water jacket's underside, mm.
struct InlineShape {
    double half;
    double sump;
    double crank;
    double housing; ///< radius of the flywheel housing
    double deck;
    double head_top;
    double cover_top;
    double jacket_low;
    double jacket_top;
    double half_width; ///< of the jacket across the engine
    double port_bore;

    double front() const { return -half - 110; }
    double rear() const { return half + 140; }
};

/// From the sump's front corner: sump, flywheel housing, block and head, rocker cover, thermostat housing,
/// front cover.
std::vector<Vec2> outlineOf(const InlineShape& s)
{
    const double f = s.front();
    const double r = s.rear();
    return {{f + 140, s.sump},
            {0.1 * s.half, s.sump},
            {0.1 * s.half + 70, s.sump + 110},
            {r - 160, s.sump + 120},
            {r - 150, s.crank - s.housing},
            {r, s.crank - s.housing},
            {r, s.crank + s.housing},
            {r - 120, s.crank + s.housing + 10},
            {r - 120, s.head_top},
            {r - 145, s.head_top + 8},
            {r - 160, s.cover_top},
            {f + 165, s.cover_top},
            {f + 150, s.head_top + 8},
            {f + 125, s.head_top + 5},
            {f + 115, s.head_top + 50},
            {f + 35, s.head_top + 50},
            {f + 25, s.head_top - 20},
            {f + 40, s.deck - 10},
            {f, s.deck - 110},
            {f, s.crank - 60},
            {f + 40, s.crank - 110},
            {f + 110, s.crank - 120},
            {f + 125, s.sump + 60}};
}

std::vector<Vec2> jacketOf(const InlineShape& s)
{
    return {{-s.half, s.jacket_low},
            {s.half, s.jacket_low},
            {s.half, s.deck},
            {s.half + 10, s.deck + 10},
            {s.half + 10, s.jacket_top},
            {-s.half - 20, s.jacket_top},
            {-s.half - 20, s.deck + 10},
            {-s.half, s.deck}};
}

/// On the side towards the viewer and at the rear of the head.
std::vector<Port> portsOf(const InlineShape& s)
{
    const double near_side = -s.half_width;
    return {typicalPort(PortKind::drain_port, PortRole::supply, {-s.half + 60, near_side, s.jacket_low + 20},
                        {270, -30}, s.port_bore),
            typicalPort(PortKind::core_plug, PortRole::spare, {-0.4 * s.half, near_side, s.jacket_low + 40},
                        {270, 0}, s.port_bore + 6),
            typicalPort(PortKind::head_port, PortRole::return_, {s.half + 10, 0, s.jacket_top - 25}, {0, 0},
                        s.port_bore),
            typicalPort(PortKind::head_port, PortRole::spare, {s.half - 60, near_side, s.jacket_top - 30},
                        {270, 0}, s.port_bore),
            typicalPort(PortKind::head_port, PortRole::sensor, {0, near_side, s.jacket_top - 20}, {270, 0},
                        12.7)};
}

EngineTemplate engineOf(const InlineShape& s, const char* id, const char* title, Arrangement arrangement)
{
    EngineTemplate made;
    made.id = id;
    made.title = title;
    made.engine.arrangement = arrangement;
    made.engine.outline = outlineOf(s);
    made.engine.jacket = jacketOf(s);
    made.engine.jacket_y_from_mm = -s.half_width;
    made.engine.jacket_y_to_mm = s.half_width;
    made.engine.thermostat = ThermostatHousing();
    made.engine.thermostat->position = {s.front() + 75, 0, s.head_top + 15};
    made.ports = portsOf(s);
    made.tank = typicalTank(s.front() - 160, s.cover_top);
    return finished(std::move(made));
}

} // namespace

std::vector<EngineTemplate> inlineEngines()
{
    constexpr InlineShape four = {285, -220, 55, 200, 480, 580, 640, 285, 555, 120, 15.875};
    constexpr InlineShape six = {450, -250, 60, 230, 530, 635, 700, 300, 610, 140, 15.875};
    EngineTemplate small = engineOf(four, "in-line-4", "In-line 4, medium diesel", Arrangement::inline_4);
    small.engine.displacement_l = typical(5.0);
    small.engine.mass_kg = typical(450);
    small.engine.coolant_volume_l = typical(14);
    EngineTemplate large = engineOf(six, "in-line-6", "In-line 6, highway diesel", Arrangement::inline_6);
    large.engine.displacement_l = typical(9.0);
    large.engine.mass_kg = typical(850);
    large.engine.coolant_volume_l = typical(30);
    return {std::move(small), std::move(large)};
}

EngineTemplate underfloorEngine()
{
    // An in-line 6 laid flat under the floor: crankcase towards the viewer, heads away.
    EngineTemplate made;
    made.id = "underfloor-6";
    made.title = "In-line 6 laid flat, underfloor";
    Engine& engine = made.engine;
    engine.arrangement = Arrangement::horizontal;
    engine.outline = {{-430, -330}, {140, -330},  {190, -230}, {470, -220}, {480, -260}, {620, -260},
                      {620, 230},   {500, 240},   {495, 180},  {430, 190},  {410, 250},  {-360, 250},
                      {-380, 190},  {-430, 190},  {-440, 240}, {-540, 240}, {-550, 180}, {-600, 150},
                      {-600, -140}, {-550, -190}, {-460, -200}};
    engine.jacket = {{-470, -120}, {470, -120}, {480, -60}, {480, 110},
                     {430, 120},   {-470, 120}, {-490, 80}, {-490, -60}};
    engine.jacket_y_from_mm = 50;
    engine.jacket_y_to_mm = 420;
    engine.displacement_l = typical(11.0);
    engine.mass_kg = typical(950);
    engine.coolant_volume_l = typical(45);
    engine.thermostat = ThermostatHousing();
    engine.thermostat->position = {-490, 230, 195};
    made.ports = {typicalPort(PortKind::drain_port, PortRole::supply, {-400, 120, -120}, {270, -60}, 19.05),
                  typicalPort(PortKind::core_plug, PortRole::spare, {-150, 160, -120}, {270, -90}, 22),
                  typicalPort(PortKind::head_port, PortRole::return_, {480, 300, 90}, {0, 0}, 19.05),
                  typicalPort(PortKind::head_port, PortRole::spare, {430, 420, 90}, {90, 0}, 19.05),
                  typicalPort(PortKind::head_port, PortRole::sensor, {0, 380, 120}, {90, 60}, 12.7)};
    made.tank = typicalTank(-780, 260);
    return finished(std::move(made));
}

} // namespace siphonwright
