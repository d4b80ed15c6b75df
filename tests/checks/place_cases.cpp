#include "tests/checks/cases.h"

#include "core/physics/coolant.h"

#include <cmath>

/// Rules on heater, ports and coolant.
namespace siphonwright::test {
namespace {

using SketchChange = std::function<void(Sketch&)>;

SketchChange onHeater(std::function<void(Heater&)> change)
{
    return [change = std::move(change)](Sketch& s) { change(s.heaters[0]); };
}

/// The jacket's lowest point is at z 400; the body's top is 150 mm over its centre.
std::vector<Case> dropCases()
{
    const std::string rule = "heater-drop";
    const auto drop = [](double mm, std::optional<double> manual = {}) {
        return onHeater([=](Heater& h) {
            h.position.z = 400 - mm - 150;
            h.manual_min_drop_mm.value = manual;
        });
    };
    return {
        {rule, "6 in", passes, drop(152.4)},
        {rule, "just under 6 in", caution, drop(152.39)},
        {rule, "the manual's 100 mm", passes, drop(100, 100)},
        {rule, "just under the manual's 100 mm", caution, drop(99.99, 100)},
        {rule, "over 6 in but under the manual's 200 mm", caution, drop(170, 200)},
        {rule, "above the jacket's lowest point", caution, drop(-20)},
    };
}

/// The outlet is 480 mm under the return port, which is at x 800, y 0.
std::vector<Case> underReturnCases()
{
    const std::string rule = "heater-under-return";
    const auto aside = [](double x, double y) {
        return onHeater([=](Heater& h) {
            h.position.x = 800 + x;
            h.position.y = y;
        });
    };
    return {
        {rule, "as far aside as below", passes, aside(480, 0)},
        {rule, "just farther aside than below", advice, aside(480.1, 0)},
        {rule, "as far aside as below, seen from above", passes, aside(288, 384)}, // 3-4-5: 480
        {rule, "farther aside across the engine", advice, aside(288, 384.2)},
        {rule, "twice as far aside as below", advice, aside(-960, 0)},
        {rule, "just over twice as far aside", caution, aside(-960.1, 0)},
        {rule, "outlet above the return port", caution, onHeater([](Heater& h) { h.position.z = 600; })},
    };
}

std::vector<Case> chamberCases()
{
    const std::string rule = "heater-chamber-traps-air";
    const auto chamber = [](double top, double element) {
        return onHeater([=](Heater& h) {
            h.chamber_top_mm = top;
            h.element_top_mm.value = element;
        });
    };
    return {
        {rule, "outlet at the top of the chamber", passes, chamber(140, 100)},
        {rule, "chamber just over the outlet", advice, chamber(140.1, 100)},
        {rule, "element as high as the outlet", advice, chamber(150, 140)},
        {rule, "element bared", stop, chamber(150, 140.1)},
        {rule, "element level not entered", advice, onHeater([](Heater& h) {
             h.chamber_top_mm = 150;
             h.element_top_mm.value.reset();
         })},
        // A side outlet's crown is half its bore of 19 mm over its centre: 130.5 + 9.5 = 140.
        {rule, "crown of a side outlet at the top", passes, onHeater([](Heater& h) {
             h.outlet.offset = {40, 0, 130.5};
             h.outlet.axis = {0, 0};
         })},
        {rule, "crown of a side outlet under the top", advice, onHeater([](Heater& h) {
             h.outlet.offset = {40, 0, 130};
             h.outlet.axis = {0, 0};
         })},
    };
}

std::vector<Case> positionCases()
{
    const std::string rule = "heater-position-not-allowed";
    const auto tilt = [](double deg, bool upright, bool level, bool inclined) {
        return onHeater([=](Heater& h) {
            h.tilt_deg = deg;
            h.allowed_positions.value = AllowedPositions{upright, level, inclined};
        });
    };
    return {
        {rule, "5 degrees is upright", passes, tilt(5, true, false, false)},
        {rule, "5.1 degrees is inclined", stop, tilt(5.1, true, false, false)},
        {rule, "inclined where allowed", passes, tilt(45, false, false, true)},
        {rule, "95 degrees is level", passes, tilt(95, false, true, false)},
        {rule, "level where only upright is allowed", stop, tilt(90, true, false, true)},
        {rule, "upside down whatever is allowed", stop, tilt(95.1, true, true, true)},
        {rule, "upright but the engine's mount tilts it 6 degrees", stop,
         [](Sketch& s) { s.engine->mount_angle_deg = 6; }},
        {"mounted-on-engine", "on the frame", passes, {}},
        {"mounted-on-engine", "on the engine", caution,
         onHeater([](Heater& h) { h.mounting.value = Mounting::engine; })},
    };
}

std::vector<Case> portPlaceCases()
{
    const auto port = [](std::size_t index, double x, double z, EngineEnd front = EngineEnd::left) {
        return [=](Sketch& s) {
            s.ports[index].position = {x, 0, z};
            s.engine->front = front;
        };
    };
    return {
        {"supply-port-low", "a fifth up", passes, port(0, 100, 480)},
        {"supply-port-low", "just over a fifth up", caution, port(0, 100, 480.1)},
        {"supply-port-low", "under the jacket", passes, port(0, 100, 390)},
        {"return-port-high", "a third down", passes, port(1, 800, 400 + 800.0 / 3)},
        {"return-port-high", "just over a third down", caution, port(1, 800, 666.6)},
        {"supply-port-front", "middle", passes, port(0, 450, 440)},
        {"supply-port-front", "just past the middle", advice, port(0, 450.1, 440)},
        {"supply-port-front", "just past the middle, front right", advice,
         port(0, 449.9, 440, EngineEnd::right)},
        {"return-port-rear", "middle", passes, port(1, 450, 700)},
        {"return-port-rear", "just before the middle", advice, port(1, 449.9, 700)},
        {"return-port-rear", "just before the middle, front right", advice,
         port(1, 450.1, 700, EngineEnd::right)},
    };
}

std::vector<Case> portDistanceCases()
{
    // The jacket's box is 900 by 300 by 400 mm.
    const double diagonal = std::sqrt(900.0 * 900 + 300.0 * 300 + 400.0 * 400);
    const auto apart = [](double mm) {
        return [=](Sketch& s) { s.ports[1].position = s.ports[0].position + Vec3{0, 0, mm}; };
    };
    const auto thermostat = [](double mm) {
        return [=](Sketch& s) { s.engine->thermostat->position = s.ports[1].position + Vec3{0, -mm, 0}; };
    };
    const auto sensor = [](double mm) {
        return [=](Sketch& s) {
            Port port;
            port.id = "port-3";
            port.role = PortRole::sensor;
            port.position = s.ports[1].position + Vec3{-mm, 0, 0};
            s.ports.push_back(port);
        };
    };
    return {
        {"ports-too-close", "half the diagonal", passes, apart(diagonal / 2)},
        {"ports-too-close", "just under half the diagonal", advice, apart(diagonal / 2 - 0.01)},
        {"ports-too-close", "a quarter of the diagonal", advice, apart(diagonal / 4)},
        {"ports-too-close", "just under a quarter", caution, apart(diagonal / 4 - 0.01)},
        {"return-near-thermostat", "150 mm", passes, thermostat(150)},
        {"return-near-thermostat", "just under 150 mm", caution, thermostat(149.99)},
        {"sensor-near-return", "200 mm", passes, sensor(200)},
        {"sensor-near-return", "just under 200 mm", caution, sensor(199.99)},
    };
}

std::vector<Case> coolantCases()
{
    const auto share = [](double percent) {
        return [=](Sketch& s) { s.coolant.volume_percent.value = percent; };
    };
    // Coldest ambient a given margin over the freezing point of 50 % ethylene glycol.
    const auto margin = [](double kelvin) {
        return [=](Sketch& s) {
            s.site.coldest_ambient_degC.value = *freezingPoint(CoolantBase::ethylene_glycol, 50) + kelvin;
        };
    };
    const auto water = [](double coldest) {
        return [=](Sketch& s) {
            s.coolant.glycol = Glycol::none;
            s.site.coldest_ambient_degC.value = coldest;
        };
    };
    return {
        {"antifreeze-over-60", "60 %", passes, share(60)},
        {"antifreeze-over-60", "just over 60 %", stop, share(60.01)},
        {"freeze-margin", "5 K", passes, margin(5)},
        {"freeze-margin", "just under 5 K", caution, margin(4.99)},
        {"freeze-margin", "plain water at 5 degC", passes, water(5)},
        {"freeze-margin", "plain water at 4.9 degC", caution, water(4.9)},
    };
}

} // namespace

std::vector<Case> placeCases()
{
    std::vector<Case> all;
    for (const auto& group : {dropCases(), underReturnCases(), chamberCases(), positionCases(),
                              portPlaceCases(), portDistanceCases(), coolantCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

} // namespace siphonwright::test
