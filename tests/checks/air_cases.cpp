#include "tests/checks/air_cases.h"

namespace siphonwright::test {
namespace {

using Change = std::function<void(AirResults&)>;

Change state(CirculationStatus with_air, double height_mm)
{
    return [=](AirResults& r) {
        r.addPocket(height_mm);
        r.run().without_air = r.run().circulation;
        r.run().circulation.status = with_air;
    };
}

/// The flow past the air as a share of the flow without it.
Change weakened(double share)
{
    return [=](AirResults& r) {
        r.addPocket(2);
        r.run().without_air = r.run().circulation;
        r.run().circulation.flow_kg_per_s = share * r.run().without_air->flow_kg_per_s;
    };
}

std::vector<AirCase> lockedCases()
{
    const std::string rule = "air-locked";
    // Up over 100 mm and down again at the right of the hose's lowest stretch, as a cross-member asks for.
    const auto hump = [](Sketch& s) {
        s.hoses[supply_hose].edit([](Hose& h) {
            h.points = {{{100, 0, -40}, 100, BendKind::hose},
                        {{400, 0, -40}, 100, BendKind::hose},
                        {{500, 0, 160}, 100, BendKind::hose},
                        {{700, 0, 160}, 100, BendKind::hose},
                        {{800, 0, -40}, 100, BendKind::hose}};
        });
    };
    return {
        {rule, "as it is", std::nullopt, {}, {}},
        {rule, "a hump of 200 mm in the supply hose", Severity::stop, hump, {}},
        {rule, "it stalls with a pocket", Severity::stop, {}, state(CirculationStatus::stalled, 30)},
        {rule, "a pocket turns it round", Severity::stop, {}, state(CirculationStatus::reverse, 30)},
        {rule, "it runs past a pocket", std::nullopt, {}, state(CirculationStatus::circulates, 2)},
        {rule,
         "it stalls without a pocket",
         std::nullopt,
         {},
         [](AirResults& r) { r.run().circulation.status = CirculationStatus::stalled; }},
        {rule,
         "the coolant level is not entered",
         std::nullopt,
         [](Sketch& s) {
             s.tank->cold_full_mm = {};
             s.tank->cold_min_mm = {};
         },
         {},
         true},
    };
}

std::vector<AirCase> weakenedCases()
{
    const std::string rule = "air-weakens-flow";
    return {
        {rule, "as it is", std::nullopt, {}, {}},
        {rule, "by 5 %", std::nullopt, {}, weakened(0.95)},
        {rule, "by over 5 %", Severity::caution, {}, weakened(0.949)},
        {rule, "to nothing is another fault", std::nullopt, {}, state(CirculationStatus::stalled, 30)},
    };
}

std::vector<AirCase> airChamberCases()
{
    const std::string rule = "chamber-not-full";
    const auto gas = [](double ml) { return [=](AirResults& r) { r.air().chamber_gas_ml = ml; }; };
    const auto unknown = [](Sketch& s) { s.heaters[0].element_top_mm = {}; };
    return {
        {rule, "as it is", std::nullopt, {}, {}},
        {rule, "5 ml", std::nullopt, {}, gas(5)},
        {rule, "over 5 ml", Severity::advice, {}, gas(5.1)},
        {rule,
         "the element is not covered",
         Severity::stop,
         {},
         [](AirResults& r) {
             r.air().chamber_gas_ml = 300;
             r.air().element_covered = false;
         }},
        {rule, "over 5 ml, the element's top not entered", Severity::advice, unknown, gas(5.1), true},
        {rule, "full, the element's top not entered", std::nullopt, unknown, {}},
    };
}

std::vector<AirCase> clearedCases()
{
    const std::string rule = "not-cleared-by-running";
    const auto verdict = [](Clearing clearing) {
        return [=](AirResults& r) { r.addPocket(30).cleared_by_running = clearing; };
    };
    return {
        {rule, "as it is", std::nullopt, {}, {}},
        {rule, "it stays", Severity::caution, {}, verdict(Clearing::stays)},
        {rule, "it may clear", Severity::caution, {}, verdict(Clearing::may_clear)},
        {rule, "it clears, and comes again", Severity::caution, {}, verdict(Clearing::cleared)},
        {rule,
         "a pocket that only narrows",
         std::nullopt,
         {},
         [](AirResults& r) { r.addPocket(0).closes_bore = false; }},
    };
}

std::vector<AirCase> airLevelCases()
{
    const std::string rule = "low-coolant";
    const auto cold = [](double over_minimum_mm) {
        // The sound loop's cold minimum is at 850 mm.
        return [=](AirResults& r) { r.filling.coldest_level_mm = 850 + over_minimum_mm; };
    };
    return {
        {rule, "at its minimum", std::nullopt, {}, cold(0)},
        {rule, "under its minimum", Severity::caution, {}, cold(-0.1)},
        {rule, "over its minimum", std::nullopt, {}, cold(1)},
        {rule, "4 l short", Severity::caution, [](Sketch& s) { s.fill.short_by_ml = 4000; }, {}},
        {rule,
         "the coldest ambient is not entered",
         std::nullopt,
         [](Sketch& s) { s.site.coldest_ambient_degC = {}; },
         {},
         true},
    };
}

} // namespace

PocketFound& AirResults::addPocket(double height_mm)
{
    PocketFound pocket;
    pocket.heater = "heater-1";
    pocket.hose = "hose-1";
    pocket.along_mm = 700;
    pocket.volume_ml = 40;
    pocket.height_mm = height_mm;
    pocket.closes_bore = height_mm > 0;
    filling.pockets.push_back(pocket);
    return filling.pockets.back();
}

std::vector<AirCase> airCases()
{
    std::vector<AirCase> all = lockedCases();
    for (const auto& group : {weakenedCases(), airChamberCases(), clearedCases(), airLevelCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

Sketch filledLoop()
{
    Sketch s = soundLoop();
    s.engine->displacement_l.value = 8;
    s.engine->mass_kg.value = 650;
    s.engine->material.value = Material::iron;
    s.engine->coolant_volume_l.value = 30;
    Heater& heater = s.heaters[0];
    heater.power_W.value = 1500;
    heater.rated_V.value = 120;
    heater.actual_V.value = 120;
    heater.on_degC.value = 38;
    heater.off_degC.value = 60;
    s.coolant.cap_pressure_kPa.value = 90;
    s.site.ambient_degC.value = -15;
    s.site.wind_m_per_s.value = 2;
    s.site.altitude_m.value = 200;
    return s;
}

Judgement judgeCase(const AirCase& one)
{
    Sketch sketch = filledLoop();
    if (one.spoil)
        one.spoil(sketch);
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Assumptions assumed(sketch);
    AirResults results;
    results.running = runSteady(sketch, layout, assumed);
    results.filling = fillOf(sketch, layout, &results.running, assumed);
    passAir(results.running, sketch, layout, results.filling);
    if (one.spoil_results)
        one.spoil_results(results);
    Results known;
    known.running = &results.running;
    known.filling = &results.filling;
    return judge(sketch, layout, known, RuleSet::proven);
}

} // namespace siphonwright::test
