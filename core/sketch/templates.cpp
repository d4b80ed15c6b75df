#include "core/sketch/templates.h"

#include "core/quantity/quantity.h"
#include "core/sketch/edits.h"
#include "core/sketch/template_parts.h"

#include <iterator>

namespace siphonwright {

Port typicalPort(PortKind kind, PortRole role, Vec3 position, Direction axis, double bore_mm)
{
    Port port;
    port.kind = kind;
    port.role = role;
    port.position = position;
    port.position_source = Source::typical;
    port.axis = axis;
    port.stub.length_mm = 30;
    // Hoses hang: a port that faces sideways usually gets an elbow that lets its hose go straight down.
    constexpr double faces_down_deg = -60;
    if (role != PortRole::sensor && axis.elevation_deg > faces_down_deg)
        port.stub.elbow = StubElbow{{axis.azimuth_deg, -90}, 20, 30};
    port.bore_mm = typical(bore_mm);
    return port;
}

SurgeTank typicalTank(double x, double clear_of_z)
{
    SurgeTank tank;
    tank.position = {x, 0, clear_of_z + 80};
    tank.position_source = Source::typical;
    tank.cold_min_mm = typical(clear_of_z + 50);
    tank.cold_full_mm = typical(clear_of_z + 80);
    tank.hot_mm = typical(clear_of_z + 105);
    return tank;
}

EngineTemplate finished(EngineTemplate engine_template)
{
    // An empty sketch gives the ports their ids and names, as any sketch will.
    Sketch sketch;
    for (Port& port : engine_template.ports)
        addPort(sketch, std::move(port));
    engine_template.ports = std::move(sketch.ports);
    Engine& engine = engine_template.engine;
    engine.name = engine_template.title;
    engine.front = EngineEnd::left;
    engine.jacket_source = Source::typical;
    engine.material = {Material::iron, Source::typical};
    engine.thermostat->position_source = Source::typical;
    engine.thermostat->side = {ThermostatSide::outlet, Source::typical};
    engine.thermostat->bleed_hole = {true, Source::typical};
    return engine_template;
}

const std::vector<EngineTemplate>& engineTemplates()
{
    static const std::vector<EngineTemplate> all = [] {
        std::vector<EngineTemplate> list = inlineEngines();
        std::vector<EngineTemplate> vee = veeEngines();
        list.insert(list.end(), std::make_move_iterator(vee.begin()), std::make_move_iterator(vee.end()));
        list.push_back(underfloorEngine());
        return list;
    }();
    return all;
}

const std::vector<HeaterTemplate>& heaterTemplates()
{
    static const std::vector<HeaterTemplate> all = tankHeaters();
    return all;
}

void placeEngine(Sketch& sketch, const EngineTemplate& chosen, Vec3 at)
{
    const PartRef engine = {PartKind::engine, {}, 0};
    remove(sketch, engine);
    // Ports that were on no engine stay where they are, so the new one is moved before it takes its own.
    Sketch placed;
    placed.engine = chosen.engine;
    placed.ports = chosen.ports;
    move(placed, engine, at);
    sketch.engine = std::move(placed.engine);
    for (Port& port : placed.ports)
        addPort(sketch, std::move(port));
    sketch.tank = chosen.tank;
    sketch.tank->position = sketch.tank->position + at;
    for (Fact<double>* level : {&sketch.tank->cold_min_mm, &sketch.tank->cold_full_mm, &sketch.tank->hot_mm})
        if (level->known())
            *level->value += at.z;
}

const std::vector<HoseSize>& hoseSizes()
{
    static const std::vector<HoseSize> all = [] {
        std::vector<HoseSize> list;
        for (const double eighths : {3, 4, 5, 6, 8, 10, 12, 14, 16}) {
            HoseSize size = {eighths / 8 * 25.4, {}};
            size.title = format(size.bore_mm, Unit::mm, UnitSystem::inch) + " (" +
                         format(std::round(size.bore_mm), Unit::mm, UnitSystem::metric) + ")";
            list.push_back(std::move(size));
        }
        return list;
    }();
    return all;
}

} // namespace siphonwright
