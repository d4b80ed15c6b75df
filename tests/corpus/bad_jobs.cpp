#include "tests/corpus/jobs.h"

#include "core/layout/layout.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"

namespace siphonwright::test {
namespace {

constexpr std::size_t supply = 0;
constexpr std::size_t back = 1;

PartRef hosePart(const Sketch& sketch, std::size_t hose)
{
    return {PartKind::hose, sketch.hoses[hose]->id, 0};
}

PartRef portPart(const Sketch& sketch, PortRole role)
{
    return {PartKind::port, portServing(sketch, role).id, 0};
}

PartRef heaterPart(const Sketch& sketch)
{
    return {PartKind::heater, sketch.heaters[0].id, 0};
}

/// The return hose of the ordinary six through points of its own; the heater's outlet is at (440, -320, 107),
/// the port's hose end at (490, 0, 525).
Sketch ledBack(const std::vector<RoutePoint>& points)
{
    Sketch sketch = ordinarySix();
    const Id port = portServing(sketch, PortRole::return_).id;
    sketch.hoses.pop_back();
    layHose(sketch, HoseRole::return_, sketch.heaters[0].id, port, points);
    return sketch;
}

RoutePoint turn(double x, double y, double z, double radius_mm = 85)
{
    return {{x, y, z}, radius_mm, BendKind::hose};
}

BadJob humpOverABracket()
{
    Sketch sketch =
        ledBack({turn(440, -320, 420), turn(680, -320, 420), turn(680, -200, 200), turn(490, 0, 300)});
    return {"return hose over a bracket",
            sketch,
            {"return-high-point", Severity::stop, hosePart(sketch, back), Vec3{560, -320, 420}, 60}};
}

/// The top of the hump sags between two clips: it is still one hump.
BadJob humpWithASaggingTop()
{
    Sketch sketch = ledBack({turn(440, -320, 420), turn(600, -320, 408, 0), turn(760, -320, 420),
                             turn(760, -200, 200), turn(490, 0, 300)});
    sketch.hoses[back].edit([](Hose& h) { h.points[1].bend = BendKind::moulded_elbow; });
    return {"hump whose top sags between clips",
            sketch,
            {"return-high-point", Severity::stop, hosePart(sketch, back), Vec3{600, -320, 420}, 200}};
}

/// Out of a side outlet down under an air pipe and up again.
BadJob dipUnderAPipe()
{
    Sketch sketch = engineOf("in-line-6", -560);
    const Id heater = placeHeater(sketch, "tank-2000", {300, -320, -60});
    sketch.heaters[0].outlet.stub.elbow.reset();
    layHose(sketch, HoseRole::supply, heater, portServing(sketch, PortRole::supply).id, Lead(), 25.4);
    layHose(sketch, HoseRole::return_, heater, portServing(sketch, PortRole::return_).id,
            {turn(480, -320, 85, 107), turn(580, -320, -40, 107), turn(760, -300, -20, 107),
             turn(760, -160, 200, 107), turn(490, 0, 340, 107)},
            25.4);
    return {"return hose under a pipe",
            sketch,
            {"return-dip", Severity::stop, hosePart(sketch, back), Vec3{650, -320, -30}, 60}};
}

BadJob humpInTheSupply()
{
    Sketch sketch = ordinarySix();
    const Id port = portServing(sketch, PortRole::supply).id;
    const Hose kept = *sketch.hoses[back];
    sketch.hoses.clear();
    layHose(sketch, HoseRole::supply, sketch.heaters[0].id, port,
            {turn(-390, -166, 20), turn(-100, -320, 0), turn(20, -320, 190), turn(180, -320, 190),
             turn(260, -320, -157)});
    sketch.hoses.push_back(Shared<Hose>(kept));
    return {"supply hose over a cross-member",
            sketch,
            {"supply-high-point", Severity::stop, hosePart(sketch, supply), Vec3{100, -320, 190}, 60}};
}

BadJob oneSizeTooSmall()
{
    Sketch sketch = ordinarySix();
    sketch.hoses[back].edit([](Hose& h) {
        h.bore_mm.value = 15.875;
        h.from.bore_mm = h.to.bore_mm = 12.7;
        h.parts[0].bore_mm = 12.7;
    });
    return {"return hose one size too small",
            sketch,
            {"bore-under-manual", Severity::stop, hosePart(sketch, back), std::nullopt, 0}};
}

BadJob portsTooClose()
{
    Sketch sketch = engineOf("in-line-6", -520);
    portServing(sketch, PortRole::supply).role = PortRole::spare;
    Port& low = sketch.ports[1]; // the core plug
    low.role = PortRole::supply;
    low.position.x = 330;
    Port& high = portServing(sketch, PortRole::return_);
    high.position = {430, -140, 520};
    high.axis = {270, 0};
    high.stub.elbow = StubElbow{{270, -90}, 20, 30};
    layLoop(sketch, placeHeater(sketch, "tank-1500", {560, -320, -40}), {80, 80});
    return {"both ports at the rear",
            sketch,
            {"ports-too-close", Severity::caution, portPart(sketch, PortRole::return_), std::nullopt, 0}};
}

/// Somebody took the filler off the roof and put it beside the engine.
BadJob aboveTheLevel()
{
    Sketch sketch = ordinarySix();
    sketch.tank->cold_min_mm.value = 430;
    sketch.tank->cold_full_mm.value = 470;
    sketch.tank->hot_mm.value = 500;
    return {"filler too low",
            sketch,
            {"above-coolant-level", Severity::stop, hosePart(sketch, back), Vec3{490, 0, 560}, 60}};
}

BadJob closedValve()
{
    Sketch sketch = ordinarySix();
    sketch.hoses[supply].edit([](Hose& h) { h.parts[0].open = false; });
    return {"supply valve left shut",
            sketch,
            {"valve-closed",
             Severity::stop,
             {PartKind::inline_part, sketch.hoses[supply]->id, 0},
             Vec3{-390, -166, 190},
             60}};
}

/// Laid on its side the wrong way round: the outlet is at the bottom, and the chamber over it stays empty.
BadJob chamberBaredOnItsSide()
{
    Sketch sketch = engineOf("in-line-6", -560);
    const Id heater = placeHeater(sketch, "tank-2000", {330, -320, 0});
    Heater& lying = sketch.heaters[0];
    lying.tilt_deg = 90;
    lying.allowed_positions = {AllowedPositions{true, true, false}, Source::manual};
    lying.inlet.offset = {0, 0, lying.chamber_bottom_mm};
    lying.inlet.axis = {0, -90};
    lying.outlet.stub.elbow = StubElbow{{0, 90}, 20, 30};
    layLoop(sketch, heater, {}, {140, 130}, 25.4);
    return {"heater on its side, outlet at the bottom",
            sketch,
            {"heater-chamber-traps-air", Severity::stop, heaterPart(sketch), std::nullopt, 0}};
}

BadJob teeBehindTheThermostat()
{
    Sketch sketch = ordinarySix();
    portServing(sketch, PortRole::supply).kind = PortKind::lower_hose_tee;
    sketch.engine->thermostat->side = {ThermostatSide::inlet, Source::measured};
    return {"lower-hose tee, inlet thermostat",
            sketch,
            {"supply-cut-off-by-thermostat", Severity::stop, portPart(sketch, PortRole::supply), std::nullopt,
             0}};
}

/// Rises 1 in 200 towards the front over 1 m: level enough to pass by eye, a trap when parked nose-down.
BadJob flatReturn()
{
    Sketch sketch = engineOf("in-line-6", -520);
    const Id heater = placeHeater(sketch, "tank-1500", {1440, 0, -40});
    layHose(sketch, HoseRole::supply, heater, portServing(sketch, PortRole::supply).id);
    layHose(sketch, HoseRole::return_, heater, portServing(sketch, PortRole::return_).id,
            {turn(1440, 0, 395), turn(490, 0, 400)});
    return {"flat return, parked nose-down",
            sketch,
            {"return-high-point", Severity::caution, hosePart(sketch, back), Vec3{1370, 0, 395}, 60, true}};
}

BadJob sharpBend()
{
    Sketch sketch = ordinarySix();
    sketch.hoses[supply].edit([](Hose& h) { h.points[0].radius_mm = 30; });
    return {"supply hose kinked under the port",
            sketch,
            {"bend-too-tight",
             Severity::stop,
             {PartKind::hose_point, sketch.hoses[supply]->id, 0},
             sketch.hoses[supply]->points[0].at,
             40}};
}

BadJob againstTheExhaust()
{
    Sketch sketch = ordinarySix();
    Area exhaust;
    exhaust.name = "Exhaust pipe";
    exhaust.what = Hazard::exhaust;
    exhaust.outline = {{-60, -40}, {20, -40}, {20, 40}, {-60, 40}};
    exhaust.y_from_mm = -360;
    exhaust.y_to_mm = -250;
    addArea(sketch, exhaust);
    return {"supply hose on the exhaust",
            sketch,
            {"keep-clear", Severity::stop, hosePart(sketch, supply), Vec3{-20, -300, 0}, 120}};
}

/// The lower radiator hose runs lower than the frame lets the heater hang.
BadJob heaterOverTheSupplyPort()
{
    Sketch sketch = engineOf("in-line-6", -520);
    Port& tee = portServing(sketch, PortRole::supply);
    tee.kind = PortKind::lower_hose_tee;
    tee.position = {-620, -120, 0};
    layLoop(sketch, placeHeater(sketch, "tank-1500", {440, -320, 180}));
    return {"heater over its supply port",
            sketch,
            {"supply-rises", Severity::stop, hosePart(sketch, supply), Vec3{370, -320, 63}, 60}};
}

BadJob checkValve()
{
    Sketch sketch = ordinarySix();
    InlinePart valve;
    valve.kind = InlineKind::lift_check_valve;
    valve.along_mm = 200;
    valve.bore_mm = 15.2;
    addInlinePart(sketch, sketch.hoses[back]->id, valve);
    return {"check valve in the return",
            sketch,
            {"check-valve-stays-shut",
             Severity::caution,
             {PartKind::inline_part, sketch.hoses[back]->id, 1},
             std::nullopt,
             0}};
}

BadJob tautHose()
{
    Sketch sketch = engineOf("in-line-6", -520);
    const Id heater = placeHeater(sketch, "tank-1500", {490, 0, -60});
    layHose(sketch, HoseRole::supply, heater, portServing(sketch, PortRole::supply).id);
    layHose(sketch, HoseRole::return_, heater, portServing(sketch, PortRole::return_).id,
            std::vector<RoutePoint>{});
    return {"return hose taut between frame and engine",
            sketch,
            {"no-slack", Severity::caution, hosePart(sketch, back), Vec3{490, 0, 330}, 60}};
}

} // namespace

std::vector<BadJob> badJobs()
{
    return {humpOverABracket(),      humpWithASaggingTop(),     dipUnderAPipe(), humpInTheSupply(),
            oneSizeTooSmall(),       portsTooClose(),           aboveTheLevel(), closedValve(),
            chamberBaredOnItsSide(), teeBehindTheThermostat(),  flatReturn(),    sharpBend(),
            againstTheExhaust(),     heaterOverTheSupplyPort(), checkValve(),    tautHose()};
}

} // namespace siphonwright::test
