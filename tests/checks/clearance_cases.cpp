#include "tests/checks/cases.h"

#include <cmath>
#include <numbers>

/// Rules on how hoses are held and what they keep clear of.
namespace siphonwright::test {
namespace {

using SketchChange = std::function<void(Sketch&)>;

/// The return hose as a straight between two open ends, without clips, rising at an angle from level.
SketchChange clippedReturn(double length_mm, double degrees, std::vector<double> clips_mm = {})
{
    return [=](Sketch& s) {
        s.hoses[return_hose].edit([&](Hose& h) {
            const double rise = degrees * std::numbers::pi / 180;
            h.from = {};
            h.to = {};
            h.from.open_at = {0, 0, 0};
            h.to.open_at = {length_mm * std::cos(rise), 0, length_mm * std::sin(rise)};
            h.points.clear();
            h.parts.clear();
            h.clips_mm = clips_mm;
        });
    };
}

/// From straight up to level and on, in an arc: within 30 degrees of level are the arc's last 30 degrees,
/// 300 (pi / 6) = 157.1 mm, and the straight after it.
SketchChange archedReturn(double straight_mm)
{
    return [=](Sketch& s) {
        s.hoses[return_hose].edit([&](Hose& h) {
            h.from = {};
            h.to = {};
            h.from.open_at = {0, 0, 0};
            h.points = {{{0, 0, 300}, 300, BendKind::hose}};
            h.to.open_at = {300 + straight_mm, 0, 300};
            h.parts.clear();
            h.clips_mm.clear();
        });
    };
}

std::vector<Case> spanCases()
{
    const std::string rule = "unsupported-span";
    const double in_arc_mm = 300 * std::numbers::pi / 6;
    const SketchChange leaning = [](Sketch& s) {
        // 35 degrees from level on the drawing, 25 along plumb.
        clippedReturn(500, 35)(s);
        s.engine->mount_angle_deg = 10;
    };
    return {
        {rule, "300 mm", passes, clippedReturn(300, 0)},
        {rule, "over 300 mm", advice, clippedReturn(300.01, 0)},
        {rule, "450 mm", advice, clippedReturn(450, 0)},
        {rule, "over 450 mm", caution, clippedReturn(450.01, 0)},
        {rule, "30 degrees from level", caution, clippedReturn(500, 30)},
        {rule, "falling 30 degrees", caution, clippedReturn(500, -30)},
        {rule, "over 30 degrees from level", passes, clippedReturn(500, 30.01)},
        {rule, "steep on the drawing, near level along plumb", caution, leaning},
        {rule, "a clip every 300 mm", passes, clippedReturn(900, 0, {600, 300})},
        {rule, "301 mm between clips", advice, clippedReturn(900, 0, {299, 600})},
        {rule, "up to the last clip short, then long", caution, clippedReturn(900, 0, {300})},
        {rule, "arc and straight, 300 mm near level", passes, archedReturn(300 - in_arc_mm)},
        {rule, "arc and straight, over 300 mm near level", advice, archedReturn(300.01 - in_arc_mm)},
    };
}

/// The supply hose straight from the port's stub to the inlet's, 300 mm to the side, or bulging by one point
/// in its middle. 300 mm apart, a bulge of b makes it 2 sqrt(150^2 + b^2) long.
SketchChange tautSupply(double share_longer, std::optional<Mounting> mounting = Mounting::frame)
{
    return [=](Sketch& s) {
        s.ports[0].axis = {0, 0};
        s.ports[0].position = {690 - 30, 0, -40}; // its stub ends at x 690, the inlet's at x 990 - 30
        s.heaters[0].position.x = 1030 + 30;
        s.heaters[0].mounting.value = mounting;
        s.hoses[supply_hose].edit([&](Hose& h) {
            h.points.clear();
            if (share_longer > 0) {
                const double half_mm = 150 * (1 + share_longer);
                h.points = {{{840, std::sqrt(half_mm * half_mm - 150 * 150), -40}, 0, BendKind::hose}};
            }
        });
    };
}

std::vector<Case> slackCases()
{
    const std::string rule = "no-slack";
    const auto bent = [](double degrees) {
        return [=](Sketch& s) {
            // Two bends of the same angle in space, too far apart to make 3 %: one short jog.
            tautSupply(0)(s);
            const double aside_mm = 2 * std::tan(degrees * std::numbers::pi / 180);
            s.hoses[supply_hose].edit([&](Hose& h) {
                h.points = {{{800, 0, -40}, 0, BendKind::hose}, {{802, aside_mm, -40}, 0, BendKind::hose}};
            });
            s.heaters[0].position.y = aside_mm;
        };
    };
    return {
        {rule, "3 % longer than straight", passes, tautSupply(0.03)},
        {rule, "just under 3 % longer", caution, tautSupply(0.02999)},
        {rule, "straight", caution, tautSupply(0)},
        {rule, "straight, heater on the engine", passes, tautSupply(0, Mounting::engine)},
        {rule, "straight, mounting not entered", passes, tautSupply(0, std::nullopt)},
        {rule, "a bend of 45 degrees", passes, bent(45)},
        {rule, "bends of just under 45 degrees", caution, bent(44.9)},
    };
}

/// The supply hose lies at z -40, its outside at z -53.5; the heater ends at z -70.
std::vector<Case> groundCases()
{
    const std::string rule = "ground-clearance";
    const auto ground = [](std::optional<double> z) { return [=](Sketch& s) { s.ground_z_mm = z; }; };
    const auto level_hose_at = [](double z) {
        return [=](Sketch& s) {
            s.ground_z_mm = -400;
            s.hoses[supply_hose].edit([&](Hose& h) {
                h.from = {};
                h.to = {};
                h.from.open_at = {100, 0, z};
                h.to.open_at = {700, 0, z};
                h.points.clear();
            });
        };
    };
    const SketchChange sagging = [](Sketch& s) {
        // An arc of radius 200 through a right angle about its lowest point: its bottom is 200 (sqrt 2 - 1)
        // over the point at z -300, at z -217.2, and the hose's outside 13.5 mm under that.
        s.ground_z_mm = -300 + 200 * (std::numbers::sqrt2 - 1) - 13.5 - 199.9;
        s.hoses[supply_hose].edit([](Hose& h) { h.points = {{{400, 0, -300}, 200, BendKind::hose}}; });
        s.hoses[supply_hose].edit([](Hose& h) {
            h.from = {};
            h.to = {};
            h.from.open_at = {100, 0, 0};
            h.to.open_at = {700, 0, 0};
        });
    };
    const SketchChange insulated = [](Sketch& s) {
        s.ground_z_mm = -274;
        s.hoses[supply_hose].edit([](Hose& h) { h.insulation_mm = 20.6; });
    };
    const SketchChange nose_high = [](Sketch& s) {
        // The rear, where the heater is, lies lower by sin 10 degrees of 1030 mm.
        s.engine->mount_angle_deg = 10;
    };
    return {
        {rule, "heater 200 mm over the ground", passes, ground(-270)},
        {rule, "heater just under 200 mm over it", caution, ground(-269.99)},
        {rule, "hose 200 mm over the ground", passes, level_hose_at(-186.5)},
        {rule, "hose just under 200 mm over it", caution, level_hose_at(-186.51)},
        {rule, "under the ground", caution, ground(100)},
        {rule, "ground not entered", passes, ground(std::nullopt)},
        {rule, "bottom of an arc too low", caution, sagging},
        {rule, "insulation counts", caution, insulated},
        {rule, "engine mounted nose-high", caution, nose_high},
    };
}

/// A box beside the supply hose's level stretch, which is at z -40, 27 mm thick: away_mm over its outside.
SketchChange boxOver(double away_mm, Hazard what, std::optional<double> own = {}, bool depth = true,
                     double y_from_mm = -50)
{
    return [=](Sketch& s) {
        const double z = -40 + 13.5 + away_mm;
        Area area;
        area.id = "area-1";
        area.what = what;
        area.outline = {{500, z}, {600, z}, {600, z + 30}, {500, z + 30}};
        if (depth) {
            area.y_from_mm = y_from_mm;
            area.y_to_mm = y_from_mm + 100;
        }
        area.clearance_mm = own;
        s.areas = {Shared<Area>(area)};
    };
}

/// A box under the heater's flat end at z -70.
SketchChange boxUnderHeater(double away_mm)
{
    return [=](Sketch& s) {
        const double z = -70 - away_mm;
        Area area;
        area.id = "area-1";
        area.what = Hazard::shaft;
        area.outline = {{1040, z - 30}, {1200, z - 30}, {1200, z}, {1040, z}};
        area.y_from_mm = -500;
        area.y_to_mm = 500;
        s.areas = {Shared<Area>(area)};
    };
}

std::vector<Case> keepClearCases()
{
    const std::string rule = "keep-clear";
    std::vector<Case> all = {
        {rule, "the area's own 20 mm", passes, boxOver(20, Hazard::exhaust, 20)},
        {rule, "just inside the area's own 20 mm", caution, boxOver(19.99, Hazard::exhaust, 20)},
        {rule, "nearly touching", caution, boxOver(0.01, Hazard::belt)},
        {rule, "touching", stop, boxOver(0, Hazard::belt)},
        {rule, "through the hose", stop, boxOver(-15, Hazard::belt)},
        {rule, "over the hose on paper, 50 mm behind it", passes,
         boxOver(0, Hazard::belt, {}, true, 13.5 + 50)},
        {rule, "over the hose on paper, just under 50 mm behind it", caution,
         boxOver(-20, Hazard::belt, {}, true, 13.5 + 49.9)},
        {rule, "beside it both ways, 3-4-5", passes,
         boxOver(30 + 0.6 * 13.5 - 13.5, Hazard::belt, {}, true, 40 + 0.8 * 13.5)},
        {rule, "beside it both ways, just nearer", caution,
         boxOver(29.9 + 0.6 * 13.5 - 13.5, Hazard::belt, {}, true, 40 + 0.8 * 13.5)},
        {rule, "depth not known, 50 mm in the side view", passes, boxOver(50, Hazard::fan, {}, false)},
        {rule, "depth not known, under 50 mm", advice, boxOver(49.99, Hazard::fan, {}, false)},
        {rule, "depth not known, crossing in the side view", advice, boxOver(-15, Hazard::fan, {}, false)},
        {rule, "heater 50 mm over a shaft", passes, boxUnderHeater(50)},
        {rule, "heater just under 50 mm over a shaft", caution, boxUnderHeater(49.99)},
        {rule, "heater on a shaft", stop, boxUnderHeater(0)},
        {rule, "an area without corners", passes, [](Sketch& s) { s.areas = {Shared<Area>(Area{})}; }},
    };
    const std::pair<Hazard, double> usual[] = {
        {Hazard::exhaust, 150}, {Hazard::turbo, 150},     {Hazard::heat_shield, 75},
        {Hazard::belt, 50},     {Hazard::fan, 50},        {Hazard::shaft, 50},
        {Hazard::steering, 50}, {Hazard::suspension, 50}, {Hazard::other, 50}};
    int kind = 0;
    for (const auto& [what, clearance_mm] : usual) {
        const std::string name = "hazard " + std::to_string(++kind);
        all.push_back({rule, name + " at its clearance", passes, boxOver(clearance_mm, what)});
        all.push_back({rule, name + " just inside it", caution, boxOver(clearance_mm - 0.01, what)});
    }
    return all;
}

} // namespace

std::vector<Case> clearanceCases()
{
    std::vector<Case> all = spanCases();
    for (const auto& group : {slackCases(), groundCases(), keepClearCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

} // namespace siphonwright::test
