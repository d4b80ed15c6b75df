#include "tests/checks/cases.h"

#include <cmath>

/// Rules on hoses: elevation, bores, bends, connections, valves.
namespace siphonwright::test {
namespace {

using SketchChange = std::function<void(Sketch&)>;
using LayoutChange = std::function<void(Layout&)>;

SketchChange onHose(std::size_t index, std::function<void(Hose&)> change)
{
    return [index, change = std::move(change)](Sketch& s) { s.hoses[index].edit(change); };
}

/// A crest of an exact height in the middle of a hose, whatever its drawing gives.
LayoutChange crest(std::size_t hose, double height_mm, bool within = false)
{
    return [=](Layout& layout) {
        HighPoint point;
        point.along_mm = 300;
        point.height_mm = height_mm;
        if (within)
            point.within = 0;
        layout.hoses[hose].profile.high_points = {point};
    };
}

LayoutChange hollow(std::size_t hose, double depth_mm, double held_ml = 10, bool within = false)
{
    return [=](Layout& layout) {
        Dip dip;
        dip.along_mm = 300;
        dip.depth_mm = depth_mm;
        dip.held_ml = held_ml;
        if (within)
            dip.within = 0;
        layout.hoses[hose].profile.dips = {dip};
    };
}

/// A bleed `away_mm` past the crest that crest() puts at 300 mm along the path; both hoses' stubs differ.
SketchChange bleedAway(std::size_t hose, double away_mm)
{
    const double stub_mm = hose == supply_hose ? 30 : 40;
    return onHose(hose, [=](Hose& h) {
        InlinePart bleed;
        bleed.kind = InlineKind::bleed;
        bleed.bore_mm = 19;
        bleed.along_mm = 300 + away_mm - stub_mm;
        h.parts.push_back(bleed);
    });
}

/// The return hose as a free run through sharp corners.
SketchChange freeReturn(std::vector<Vec3> corners)
{
    return onHose(return_hose, [corners = std::move(corners)](Hose& h) {
        h.from = {};
        h.to = {};
        h.from.open_at = corners.front();
        h.to.open_at = corners.back();
        h.points.clear();
        for (std::size_t i = 1; i + 1 < corners.size(); ++i)
            h.points.push_back({corners[i], 0, BendKind::hose});
        h.parts.clear();
    });
}

/// A straight return of this length and rise per length.
SketchChange straightReturn(double length_mm, double slope)
{
    const double rise_mm = length_mm * slope;
    return freeReturn({{0, 0, 0}, {std::sqrt(length_mm * length_mm - rise_mm * rise_mm), 0, rise_mm}});
}

void add(std::vector<Case>& to, std::vector<Case> more)
{
    to.insert(to.end(), more.begin(), more.end());
}

/// The bore is 19 mm: 30 % of it is 5.7 mm. Equality passes on.
std::vector<Case> highPointCases(const std::string& rule, std::size_t hose)
{
    return {
        {rule, "no crest", passes, {}},
        {rule, "3 mm, tape accuracy", advice, {}, crest(hose, 3)},
        {rule, "30 % of the bore", advice, {}, crest(hose, 5.7)},
        {rule, "just over 30 % of the bore", caution, {}, crest(hose, 5.71)},
        {rule, "the bore", caution, {}, crest(hose, 19)},
        {rule, "just over the bore", stop, {}, crest(hose, 19.01)},
        {rule, "over the bore, bleed 50 mm off", caution, bleedAway(hose, 50), crest(hose, 25)},
        {rule, "over the bore, bleed 50.1 mm off", stop, bleedAway(hose, 50.1), crest(hose, 25)},
        {rule, "a lesser crest inside a greater one", passes, {}, crest(hose, 25, true)},
    };
}

std::vector<Case> dipCases()
{
    const auto water = [](Sketch& s) { s.coolant.glycol = Glycol::none; };
    return {
        {"return-dip", "no dip", passes, {}},
        {"return-dip", "30 % of the bore", advice, {}, hollow(return_hose, 5.7)},
        {"return-dip", "just over 30 % of the bore", caution, {}, hollow(return_hose, 5.71)},
        {"return-dip", "the bore", caution, {}, hollow(return_hose, 19)},
        {"return-dip", "just over the bore", stop, {}, hollow(return_hose, 19.01)},
        {"return-dip", "a lesser dip inside a greater one", passes, {}, hollow(return_hose, 25, 10, true)},
        {"supply-dip", "100 ml", passes, {}, hollow(supply_hose, 20, 100)},
        {"supply-dip", "just over 100 ml", advice, {}, hollow(supply_hose, 20, 100.1)},
        {"supply-dip", "10 ml of plain water", advice, water, hollow(supply_hose, 20, 10)},
        {"supply-dip", "plain water without a dip", passes, water},
    };
}

/// The supply port points down with a 30 mm stub, so the hose starts 30 mm under it; it ends at z -40.
std::vector<Case> riseCases()
{
    const auto port_at = [](double z) { return [=](Sketch& s) { s.ports[0].position.z = z; }; };
    const std::string rule = "supply-rises";
    return {
        {rule, "hose level from end to end", passes, port_at(-10)},
        {rule, "hose rises, openings fall", caution, port_at(-10.1)},
        {rule, "openings level", caution, port_at(-40)},
        {rule, "inlet above the port", stop, port_at(-40.1)},
    };
}

std::vector<Case> slopeCases()
{
    const std::string rule = "return-slope";
    return {
        {rule, "1 in 50", passes, straightReturn(1000, 0.02)},
        {rule, "under 1 in 50", advice, straightReturn(1000, 0.0199)},
        {rule, "1 in 1000", advice, straightReturn(1000, 0.001)},
        {rule, "level", caution, straightReturn(1000, 0.00099)},
        {rule, "falling", caution, straightReturn(1000, -0.1)},
        {rule, "plumb", passes, straightReturn(1000, 1)},
        {rule, "short hose of 299 mm judged as a whole", advice, straightReturn(299, 0.01)},
        {rule, "short hose level in parts, steep as a whole", passes,
         freeReturn({{0, 0, 0}, {100, 0, 0}, {100, 0, 100}, {200, 0, 100}})},
        {rule, "level for 75 mm at both ends", passes,
         freeReturn({{0, 0, 0}, {75, 0, 0}, {75, 0, 500}, {0, 0, 500}})},
        {rule, "level for 230 mm at the start", caution, freeReturn({{0, 0, 0}, {230, 0, 0}, {230, 0, 500}})},
        {rule, "falling 2 mm in the first 75 mm", caution,
         freeReturn({{0, 0, 0}, {75, 0, -2}, {75, 0, 500}})},
        {rule, "falling inside a hump that is reported itself", passes,
         freeReturn({{0, 0, 0}, {0, 0, 500}, {300, 0, 400}, {300, 0, 900}})},
    };
}

std::vector<Case> levelCases()
{
    const std::string rule = "above-coolant-level";
    // Against the return hose's highest crown, the highest of all that is drawn.
    const auto levels = [](std::optional<double> min_over_mm, std::optional<double> full_over_mm) {
        return [=](Layout& layout) {
            const double top_mm = layout.hoses[return_hose].highest_crown_mm;
            layout.levels = {};
            if (min_over_mm)
                layout.levels.cold_min_mm = top_mm + *min_over_mm;
            if (full_over_mm)
                layout.levels.cold_full_mm = top_mm + *full_over_mm;
        };
    };
    const auto heater_at = [](double z) { return [=](Sketch& s) { s.heaters[0].position.z = z; }; };
    return {
        {rule, "crown at cold minimum", passes, {}, levels(0, 30)},
        {rule, "crown just over cold minimum", caution, {}, levels(-0.01, 30)},
        {rule, "crown at cold full", caution, {}, levels(-30, 0)},
        {rule, "crown just over cold full", stop, {}, levels(-30, -0.01)},
        {rule, "over cold minimum, cold full not entered", stop, {}, levels(-0.01, std::nullopt)},
        {rule, "under cold full, cold minimum not entered", passes, {}, levels(std::nullopt, 0)},
        {rule, "top of the heater over cold full", stop, heater_at(731)},
    };
}

std::vector<Case> boreCases()
{
    const auto manual = [](double bore) {
        return [=](Sketch& s) { s.heaters[0].manual_min_bore_mm.value = bore; };
    };
    const auto hose_end = [](double bore) {
        return onHose(return_hose, [=](Hose& h) { h.to.bore_mm = bore; });
    };
    const auto part = [](InlineKind kind, double bore) {
        return onHose(supply_hose, [=](Hose& h) {
            h.parts[0].kind = kind;
            h.parts[0].bore_mm = bore;
        });
    };
    return {
        {"bore-under-manual", "bore as the manual asks", passes, manual(19)},
        {"bore-under-manual", "bore just under the manual's", stop, manual(19.01)},
        {"bore-under-manual", "a reducer under the manual's", stop, part(InlineKind::reducer, 14.9)},
        {"bore-restriction", "hose end of 70 %", passes, hose_end(13.3)},
        {"bore-restriction", "hose end just under 70 %", advice, hose_end(13.29)},
        {"bore-restriction", "hose end of 60 %", advice, hose_end(11.4)},
        {"bore-restriction", "hose end just under 60 %", caution, hose_end(11.39)},
        {"bore-restriction", "narrow valve", caution, part(InlineKind::isolation_valve, 11)},
        {"bore-restriction", "narrow port", caution, [](Sketch& s) { s.ports[1].bore_mm.value = 11; }},
        {"bore-restriction", "narrow nozzle", advice,
         [](Sketch& s) { s.heaters[0].inlet.bore_mm.value = 12; }},
    };
}

/// 19 mm bore, 27 mm outside: 6 bores to the inside is a centre-line radius of 114 + 13.5 = 127.5 mm, half of
/// it 57 + 13.5 = 70.5 mm.
std::vector<Case> bendCases()
{
    const auto bend = [](double radius, BendKind kind = BendKind::hose, std::optional<double> own = {}) {
        return onHose(supply_hose, [=](Hose& h) {
            h.points[0].radius_mm = radius;
            h.points[0].bend = kind;
            h.min_bend_radius_mm.value = own;
        });
    };
    const auto off_axis = [](double degrees) {
        return onHose(supply_hose, [=](Hose& h) {
            const double aside = 300 * std::tan(degrees * 3.14159265358979323846 / 180);
            h.points.insert(h.points.begin(), {{100 - aside, 0, 110}, 400, BendKind::hose});
        });
    };
    const std::string tight = "bend-too-tight";
    const std::string fit = "bend-does-not-fit";
    return {
        {tight, "6 bores inside", passes, bend(127.5)},
        {tight, "just under 6 bores inside", caution, bend(127.49)},
        {tight, "3 bores inside", caution, bend(70.5)},
        {tight, "just under 3 bores inside", stop, bend(70.49)},
        {tight, "the hose's own minimum", passes, bend(73.5, BendKind::hose, 60)},
        {tight, "just under the hose's own minimum", caution, bend(73.49, BendKind::hose, 60)},
        {tight, "half the hose's own minimum", caution, bend(43.5, BendKind::hose, 60)},
        {tight, "just under half the hose's own minimum", stop, bend(43.49, BendKind::hose, 60)},
        {tight, "a moulded elbow", passes, bend(30, BendKind::moulded_elbow)},
        {tight, "a metal elbow", passes, bend(30, BendKind::metal_elbow)},
        {tight, "14.9 degrees off the stub's axis", passes, off_axis(14.9)},
        {tight, "15.1 degrees off the stub's axis", caution, off_axis(15.1)},
        // A right angle takes its radius from both straights; the shorter is 450 mm.
        {fit, "just fits", passes, bend(450)},
        {fit, "does not fit", stop, bend(450.1)},
        {fit, "turns back on itself", stop, freeReturn({{0, 0, 0}, {0, 0, 500}, {0, 0, 100}})},
    };
}

std::vector<Case> connectionCases()
{
    const auto detour = [](double aside) {
        return freeReturn({{0, 0, 0}, {0, aside, 0}, {400, aside, 400}, {400, 0, 400}});
    };
    const double diagonal = std::sqrt(2.0) * 400; // is 234.3 mm shorter than square from end to end
    const double aside = (250 + 800 - diagonal) / 2;
    const auto end = [](std::size_t hose, bool from, HoseEnd to) {
        return onHose(hose, [=](Hose& h) { (from ? h.from : h.to) = to; });
    };
    HoseEnd gone;
    gone.port = "port-9";
    HoseEnd outlet;
    outlet.heater = "heater-1";
    outlet.nozzle = NozzleKind::outlet;
    HoseEnd port;
    port.port = "port-1";
    const std::string open = "hose-open-end";
    const std::string loose = "hose-not-connected";
    return {
        {"hose-long", "250 mm over square", passes, detour(aside)},
        {"hose-long", "just over 250 mm over square", advice, detour(aside + 0.01)},
        {open, "both ends on", passes, {}},
        {open, "start open", stop, end(supply_hose, true, {})},
        {open, "end open", stop, end(return_hose, false, {})},
        {open, "end on a port that is gone", stop, end(return_hose, false, gone)},
        {loose, "a whole loop", passes, {}},
        {loose, "both ends open", stop, freeReturn({{0, 0, 0}, {0, 0, 500}})},
        {loose, "supply on the outlet", stop, end(supply_hose, false, outlet)},
        {loose, "return from a port", stop, end(return_hose, true, port)},
        {loose, "return to a heater", stop, end(return_hose, false, outlet)},
        {loose, "heater without a return", stop, [](Sketch& s) { s.hoses.pop_back(); }},
        {loose, "heater without hoses", stop, [](Sketch& s) { s.hoses.clear(); }},
    };
}

std::vector<Case> valveCases()
{
    const auto valve_at = [](double along) {
        return onHose(supply_hose, [=](Hose& h) { h.parts[0].along_mm = along; });
    };
    const auto close = [](std::size_t hose) {
        return onHose(hose, [](Hose& h) { h.parts[0].open = false; });
    };
    const auto cabin = [](bool is_open) {
        return [=](Sketch& s) {
            s.ports[1].kind = PortKind::cabin_line;
            s.ports[1].cabin_line_open = is_open;
        };
    };
    return {
        // The stub's 30 mm count too: the distance is taken from the port.
        {"valve-missing", "valve 300 mm from the port", passes, valve_at(270)},
        {"valve-missing", "valve over 300 mm from the port", caution, valve_at(270.01)},
        {"valve-missing", "no valve", caution, onHose(return_hose, [](Hose& h) { h.parts.clear(); })},
        {"valve-closed", "all open", passes, {}},
        {"valve-closed", "supply closed", stop, close(supply_hose)},
        {"valve-closed", "return closed", stop, close(return_hose)},
        {"valve-closed", "cabin line open", passes, cabin(true)},
        {"valve-closed", "cabin line shut", stop, cabin(false)},
    };
}

} // namespace

std::vector<Case> hoseCases()
{
    std::vector<Case> all = highPointCases("supply-high-point", supply_hose);
    add(all, highPointCases("return-high-point", return_hose));
    for (const auto& group : {dipCases(), riseCases(), slopeCases(), levelCases(), boreCases(), bendCases(),
                              connectionCases(), valveCases()})
        add(all, group);
    return all;
}

} // namespace siphonwright::test
