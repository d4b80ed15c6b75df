#include "tests/checks/cases.h"

#include <string>

/// Rules on how the loops run, steadily.
namespace siphonwright::test {
namespace {

using ResultsChange = std::function<void(CaseResults&)>;

ResultsChange state(CirculationStatus status, double drive_mm, double air_mm)
{
    return [=](CaseResults& r) {
        r.flow().status = status;
        r.flow().drive_mm = drive_mm;
        r.flow().resistance_mm = air_mm;
    };
}

std::vector<Case> stateCases()
{
    return {
        Case::ofResults("stalled", "as it is", passes, {}),
        Case::ofResults("stalled", "nothing drives it", stop, state(CirculationStatus::stalled, 0, 0)),
        Case::ofResults("stalled", "air withstands it", stop, state(CirculationStatus::stalled, 8, 19)),
        Case::ofResults("stalled", "a closed valve is another fault", passes,
                        state(CirculationStatus::closed, 8, 8)),
        Case::ofResults("stalled", "runs backward", passes, state(CirculationStatus::reverse, 3, 3)),
        {"stalled", "no power entered", passes, [](Sketch& s) { s.heaters[0].power_W = {}; }},
        Case::ofResults("reverse-circulation", "as it is", passes, {}),
        Case::ofResults("reverse-circulation", "runs backward", stop,
                        state(CirculationStatus::reverse, 3, 3)),
        Case::ofResults("reverse-circulation", "stalls", passes, state(CirculationStatus::stalled, 0, 0)),
    };
}

/// Share of the first part of some kind.
ResultsChange share(PartKind kind, double value)
{
    return [=](CaseResults& r) {
        const std::vector<CircuitPart>& parts = r.running.loops.at(0).circuit.parts;
        for (PartLoss& loss : r.flow().parts)
            if (loss.part >= 0 && parts.at(static_cast<std::size_t>(loss.part)).part.kind == kind) {
                loss.share = value;
                return;
            }
    };
}

std::vector<Case> shareCases()
{
    const std::string rule = "part-takes-loss";
    return {
        Case::ofResults(rule, "as it is", passes, {}),
        Case::ofResults(rule, "a valve takes 30 %", passes, share(PartKind::inline_part, 0.3)),
        Case::ofResults(rule, "a valve takes over 30 %", caution, share(PartKind::inline_part, 0.301)),
        Case::ofResults(rule, "a hose end takes over 30 %", caution, share(PartKind::hose_end, 0.301)),
        Case::ofResults(rule, "a port takes over 30 %", caution, share(PartKind::port, 0.301)),
        Case::ofResults(rule, "a hose is not one part", passes, share(PartKind::hose, 0.6)),
        {rule, "a valve of 8 mm bore", caution,
         [](Sketch& s) { s.hoses[return_hose].edit([](Hose& h) { h.parts[0].bore_mm = 8; }); }},
        {rule, "no bore entered", passes,
         [](Sketch& s) { s.hoses[return_hose].edit([](Hose& h) { h.bore_mm = {}; }); }},
    };
}

std::vector<Case> powerCases()
{
    const auto power = [](double each_W, std::size_t heaters) {
        return [=](Sketch& s) {
            s.heaters[0].power_W.value = each_W;
            for (std::size_t i = 1; i < heaters; ++i) {
                s.heaters.push_back(s.heaters[0]);
                s.heaters.back().id = "heater-" + std::to_string(i + 1);
            }
        };
    };
    return {
        {"much-power", "5 kW", passes, power(5000, 1)},
        {"much-power", "over 5 kW", advice, power(5001, 1)},
        {"much-power", "two of 2.5 kW", passes, power(2500, 2)},
        {"much-power", "two of over 2.5 kW", advice, power(2501, 2)},
        {"much-power", "over 5 kW at a higher voltage", advice,
         [](Sketch& s) {
             s.heaters[0].power_W.value = 4000;
             s.heaters[0].actual_V.value = 135; // 4000 (135/120)^2 = 5063 W
         }},
        {"much-power", "no power entered", passes, [](Sketch& s) { s.heaters[0].power_W = {}; }},
    };
}

} // namespace

std::vector<Case> runningCases()
{
    std::vector<Case> all = stateCases();
    for (const auto& group : {shareCases(), powerCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

} // namespace siphonwright::test
