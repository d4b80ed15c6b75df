#include "tests/corpus/jobs.h"

#include "core/sketch/edits.h"

namespace siphonwright::test {
namespace {

Sketch smallDrainPort()
{
    Sketch sketch = engineOf("in-line-6", -520);
    portServing(sketch, PortRole::supply).bore_mm = {12.7, Source::measured};
    layLoop(sketch, placeHeater(sketch, "tank-1500", {440, -320, -40}));
    sketch.hoses[0].edit([](Hose& h) { h.from.bore_mm = 12.7; });
    return sketch;
}

/// No room under the return port: the frame has a cross-member there.
Sketch offset400()
{
    Sketch sketch = engineOf("in-line-6", -520);
    layLoop(sketch, placeHeater(sketch, "tank-1500", {90, -120, -40}));
    return sketch;
}

/// A port that faces up takes an elbow, whose top is a crest: it gets a bleed.
Sketch topFacingHeadPort()
{
    Sketch sketch = engineOf("in-line-6", -520);
    Port& port = portServing(sketch, PortRole::return_);
    port.position = {420, -60, 610};
    port.axis = {0, 90};
    port.stub = {20, StubElbow{{0, 0}, 16, 26}};
    const Id heater = placeHeater(sketch, "tank-1500", {600, -120, -40});
    layHose(sketch, HoseRole::supply, heater, portServing(sketch, PortRole::supply).id);
    const Id back = layHose(sketch, HoseRole::return_, heater, port.id, {100, 200});
    InlinePart bleed;
    bleed.kind = InlineKind::bleed;
    bleed.bore_mm = 15.2;
    bleed.open = false;
    bleed.length_mm = 10;
    bleed.along_mm = sketch.hose(back)->parts[0].along_mm + 65;
    addInlinePart(sketch, back, bleed);
    return sketch;
}

/// A generator set on a skid: the heater stands on it, and the engine sits low.
Sketch skidWithLittleDrop()
{
    Sketch sketch = engineOf("vee-12-generator", -300);
    const Id heater = placeHeater(sketch, "tank-5000", {1040, 650, 335});
    sketch.heaters[0].manual_min_drop_mm.value.reset();
    layLoop(sketch, heater, {200, 250}, {200, 200}, 38.1);
    return sketch;
}

/// Lying along the frame: inlet in its lower end plate, outlet on top at the other end.
Sketch horizontalTank()
{
    Sketch sketch = engineOf("in-line-6", -520);
    const Id heater = placeHeater(sketch, "tank-1500", {380, -320, 20});
    Heater& lying = sketch.heaters[0];
    lying.tilt_deg = 90;
    lying.allowed_positions = {AllowedPositions{true, true, false}, Source::manual};
    lying.inlet.offset = {0, 0, lying.chamber_bottom_mm};
    lying.inlet.axis = {0, -90};
    lying.outlet.offset = {-lying.chamber_bore_mm / 2, 0, 100};
    lying.outlet.axis = {180, 0};
    layLoop(sketch, heater);
    return sketch;
}

Sketch lowerHoseTee()
{
    Sketch sketch = engineOf("in-line-6", -520);
    Port& tee = portServing(sketch, PortRole::supply);
    tee.name = "Lower radiator hose";
    tee.kind = PortKind::lower_hose_tee;
    tee.position = {-620, -120, 180};
    tee.axis = {270, -60};
    tee.bore_mm = {19.05, Source::measured};
    sketch.engine->thermostat->side = {ThermostatSide::outlet, Source::measured};
    layLoop(sketch, placeHeater(sketch, "tank-1500", {440, -320, -40}));
    return sketch;
}

/// Three quarters of the usual length, in a light truck.
Sketch shortFour()
{
    Sketch sketch = engineOf("in-line-4", -480);
    const auto shorter = [](double x) { return 0.75 * x; };
    for (auto* outline : {&sketch.engine->outline, &sketch.engine->jacket})
        for (Vec2& corner : *outline)
            corner.x = shorter(corner.x);
    for (Port& port : sketch.ports)
        port.position.x = shorter(port.position.x);
    sketch.engine->thermostat->position.x = shorter(sketch.engine->thermostat->position.x);
    layLoop(sketch, placeHeater(sketch, "tank-750", {215, -260, -20}), {90, 90}, {90, 90}, 15.875);
    return sketch;
}

Sketch veeWithCrossing()
{
    Sketch sketch = engineOf("vee-8", -560);
    layLoop(sketch, placeHeater(sketch, "tank-2000", {400, 380, -60}), {140, 140}, {140, 140}, 25.4);
    return sketch;
}

Sketch yardOnTwoPercent()
{
    Sketch sketch = ordinarySix();
    sketch.site.grade_along_percent = 2;
    sketch.site.grade_across_percent = -1;
    return sketch;
}

Sketch underfloor()
{
    Sketch sketch = engineOf("underfloor-6", -800);
    layLoop(sketch, placeHeater(sketch, "tank-1500", {500, 180, -440}));
    return sketch;
}

/// The engine hangs in its mounts with its rear 3 degrees lower, as most do.
Sketch engineAtAnAngle()
{
    Sketch sketch = ordinarySix();
    sketch.engine->mount_angle_deg = 3;
    sketch.ground_z_mm = -560;
    return sketch;
}

} // namespace

std::vector<GoodJob> goodJobs()
{
    return {{"ordinary in-line 6", ordinarySix()},
            {"small drain port", smallDrainPort()},
            {"heater 400 mm to the side", offset400()},
            {"head port that faces up, with a bleed", topFacingHeadPort()},
            {"skid heater with little drop", skidWithLittleDrop()},
            {"horizontal tank", horizontalTank()},
            {"lower-hose tee, outlet thermostat", lowerHoseTee()},
            {"short four-cylinder", shortFour()},
            {"vee 8 with crossing", veeWithCrossing()},
            {"2 % grade yard", yardOnTwoPercent()},
            {"horizontal underfloor engine", underfloor()},
            {"engine mounted at 3 degrees", engineAtAnAngle()}};
}

} // namespace siphonwright::test
