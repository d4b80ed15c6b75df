#include "core/sketch/template_parts.h"

namespace siphonwright {
namespace {

/// Heights over the datum (frame or base rail) and half the length of the water jacket's underside, mm.
struct VeeShape {
    double half;
    double sump;
    double crank;
    double housing; ///< radius of the flywheel housing
    double deck;
    double cover_low; ///< where rocker covers meet the heads
    double cover_top;
    double plenum_top; ///< intake between the banks
    double jacket_low;
    double jacket_top;
    double half_width; ///< of the jacket, over both banks
    double port_bore;

    double front() const { return -half - 130; }
    double rear() const { return half + 150; }
};

/// From the sump's front corner: sump, flywheel housing, bank with its cover, intake, thermostat housing,
/// front cover.
std::vector<Vec2> outlineOf(const VeeShape& s)
{
    const double f = s.front();
    const double r = s.rear();
    return {{f + 150, s.sump},
            {0.15 * s.half, s.sump},
            {0.15 * s.half + 70, s.sump + 120},
            {r - 170, s.sump + 130},
            {r - 160, s.crank - s.housing},
            {r, s.crank - s.housing},
            {r, s.crank + s.housing},
            {r - 125, s.crank + s.housing + 15},
            {r - 125, s.cover_low},
            {r - 150, s.cover_top},
            {0.55 * s.half, s.cover_top},
            {0.5 * s.half, s.plenum_top},
            {-0.6 * s.half, s.plenum_top},
            {-0.65 * s.half, s.cover_top},
            {f + 145, s.cover_top},
            {f + 130, s.cover_low + 5},
            {f + 112, s.cover_low + 5},
            {f + 105, s.cover_low + 55},
            {f + 30, s.cover_low + 55},
            {f + 20, s.cover_low - 30},
            {f, s.cover_low - 90},
            {f, s.crank - 70},
            {f + 50, s.crank - 120},
            {f + 135, s.crank - 130}};
}

std::vector<Vec2> jacketOf(const VeeShape& s)
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

/// On both banks: the loop of a vee engine goes from one bank to the other.
std::vector<Port> portsOf(const VeeShape& s)
{
    const double side = s.half_width;
    const double low = s.jacket_low;
    const double high = s.jacket_top - 25;
    const double head_side = 0.8 * side;
    std::vector<Port> ports = {
        typicalPort(PortKind::drain_port, PortRole::supply, {-s.half + 60, -side, low + 20}, {270, -30},
                    s.port_bore),
        typicalPort(PortKind::drain_port, PortRole::spare, {-s.half + 60, side, low + 20}, {90, -30},
                    s.port_bore),
        typicalPort(PortKind::core_plug, PortRole::spare, {-0.4 * s.half, -side, low + 40}, {270, 0},
                    s.port_bore + 6),
        typicalPort(PortKind::head_port, PortRole::spare, {s.half + 10, -head_side, high}, {0, 0},
                    s.port_bore),
        typicalPort(PortKind::head_port, PortRole::return_, {s.half + 10, head_side, high}, {0, 0},
                    s.port_bore),
        typicalPort(PortKind::head_port, PortRole::sensor, {0, -side, high + 5}, {270, 0}, 12.7)};
    for (Port& port : ports) {
        port.name = port.role == PortRole::sensor      ? "Sensor port"
                    : port.kind == PortKind::head_port ? "Head port"
                    : port.kind == PortKind::core_plug ? "Core plug"
                                                       : "Drain port";
        port.name += port.position.y < 0 ? ", near bank" : ", far bank";
    }
    return ports;
}

EngineTemplate engineOf(const VeeShape& s, const char* id, const char* title, Arrangement arrangement)
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
    made.engine.thermostat->position = {s.front() + 68, 0, s.cover_low + 15};
    made.ports = portsOf(s);
    made.tank = typicalTank(s.front() - 180, s.plenum_top);
    return finished(std::move(made));
}

} // namespace

std::vector<EngineTemplate> veeEngines()
{
    constexpr VeeShape six = {270, -220, 40, 210, 430, 550, 620, 690, 280, 530, 260, 15.875};
    constexpr VeeShape eight = {400, -240, 40, 240, 460, 600, 680, 760, 300, 580, 320, 19.05};
    constexpr VeeShape twelve = {1000, 30, 420, 360, 960, 1220, 1340, 1470, 680, 1190, 480, 31.75};
    EngineTemplate small = engineOf(six, "vee-6", "Vee 6, medium diesel", Arrangement::vee_6);
    small.engine.displacement_l = typical(6.5);
    small.engine.mass_kg = typical(560);
    small.engine.coolant_volume_l = typical(20);
    EngineTemplate medium = engineOf(eight, "vee-8", "Vee 8, heavy diesel", Arrangement::vee_8);
    medium.engine.displacement_l = typical(14.0);
    medium.engine.mass_kg = typical(1150);
    medium.engine.coolant_volume_l = typical(45);
    EngineTemplate large = engineOf(twelve, "vee-12-generator", "Vee 12, generator set", Arrangement::vee_12);
    large.engine.displacement_l = typical(38);
    large.engine.mass_kg = typical(4200);
    large.engine.coolant_volume_l = typical(180);
    return {std::move(small), std::move(medium), std::move(large)};
}

} // namespace siphonwright
