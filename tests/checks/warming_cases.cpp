#include "tests/checks/cases.h"

/// Rules on how the engine warms up.
namespace siphonwright::test {
namespace {

using ResultsChange = std::function<void(CaseResults&)>;

/// The band of one result up to `high`, from a share of the samples.
void giveBand(CaseResults& r, Banded which, double high, double share = 1)
{
    if (r.bands.empty()) {
        r.bands.resize(1);
        r.bands[0].heater = "heater-1";
        ResultBand reached;
        reached.share = 1;
        r.bands[0].results[static_cast<std::size_t>(Banded::target_h)] = reached;
    }
    ResultBand band;
    band.high = high;
    band.share = share;
    r.bands[0].results[static_cast<std::size_t>(which)] = band;
}

std::vector<Case> outletCases()
{
    const std::string rule = "outlet-over-limit";
    const auto peak = [](double degC) {
        return [=](CaseResults& r) { r.outcome().peak_outlet_degC = degC; };
    };
    const auto band = [](double degC, double high_degC) {
        return [=](CaseResults& r) {
            r.outcome().peak_outlet_degC = degC;
            giveBand(r, Banded::peak_outlet_degC, high_degC);
        };
    };
    return {
        Case::ofResults(rule, "as it is", passes, {}),
        Case::ofResults(rule, "82.2 degC", passes, peak(82.2)),
        Case::ofResults(rule, "over 82.2 degC", stop, peak(82.3)),
        Case::ofResults(rule, "may be 82.2 degC", passes, band(75, 82.2)),
        Case::ofResults(rule, "may exceed 82.2 degC", caution, band(75, 82.3)),
        Case::ofResults(rule, "exceeds, and so may the band", stop, band(83, 90)),
        Case::ofResults(rule, "never on", passes,
                        [](CaseResults& r) { r.outcome().peak_outlet_degC = std::nullopt; }),
        {rule, "the manual's limit", stop,
         [](Sketch& s) {
             LimitChange change;
             change.rule = "outlet-over-limit";
             change.stop = 50; // the sound loop gets warmer than that
             s.limits = {change};
         }},
        {rule, "no ambient temperature entered", passes, [](Sketch& s) { s.site.ambient_degC = {}; }},
    };
}

std::vector<Case> boilingCases()
{
    const std::string rule = "boiling-margin";
    const auto margin = [](std::optional<double> left_K, std::optional<double> boiled_s) {
        return [=](CaseResults& r) {
            r.outcome().boiling_margin_K = left_K;
            r.outcome().boiled_s = boiled_s;
        };
    };
    return {
        Case::ofResults(rule, "as it is", passes, {}),
        Case::ofResults(rule, "5 K left", passes, margin(5, std::nullopt)),
        Case::ofResults(rule, "less than 5 K left", stop, margin(4.9, std::nullopt)),
        Case::ofResults(rule, "boils", stop, margin(0, 600)),
        Case::ofResults(rule, "never on", passes, margin(std::nullopt, std::nullopt)),
    };
}

std::vector<Case> cycleCases()
{
    const std::string rule = "cycles-over-4";
    const auto cycles = [](double per_hour, std::optional<double> high) {
        return [=](CaseResults& r) {
            r.outcome().cycles_per_hour = per_hour;
            if (high)
                giveBand(r, Banded::cycles_per_hour, *high);
        };
    };
    return {
        Case::ofResults(rule, "as it is", passes, {}),
        Case::ofResults(rule, "4 in an hour", passes, cycles(4, std::nullopt)),
        Case::ofResults(rule, "5 in an hour", caution, cycles(5, std::nullopt)),
        Case::ofResults(rule, "may be 4", passes, cycles(1, 4)),
        Case::ofResults(rule, "may exceed 4", advice, cycles(1, 4.5)),
    };
}

std::vector<Case> targetCases()
{
    const std::string rule = "target-not-reached";
    const auto reached = [](std::optional<double> time_s, std::optional<double> share) {
        return [=](CaseResults& r) {
            r.warm_up.result.target_s = time_s;
            if (share)
                giveBand(r, Banded::target_h, 5, *share);
        };
    };
    return {
        Case::ofResults(rule, "as it is", passes, {}),
        Case::ofResults(rule, "not reached", caution, reached(std::nullopt, std::nullopt)),
        Case::ofResults(rule, "reached in 95 of 100", passes, reached(3600, 0.95)),
        Case::ofResults(rule, "reached in 94 of 100", advice, reached(3600, 0.94)),
        Case::ofResults(rule, "not reached, though it may be", caution, reached(std::nullopt, 0.5)),
        {rule, "much colder than one heater is for", caution, [](Sketch& s) { s.plan.target_degC = 80; }},
        {rule, "no mass and no displacement entered", passes,
         [](Sketch& s) {
             s.engine->mass_kg = {};
             s.engine->displacement_l = {};
         }},
    };
}

BoreRow row(double bore_mm, double peak_degC, double cycles, bool runs = true)
{
    BoreRow out;
    out.bore_mm = bore_mm;
    out.drawn = bore_mm == 19.05;
    out.peak_outlet_degC = peak_degC;
    out.cycles_per_hour = cycles;
    out.runs = runs;
    return out;
}

/// The drawn hoses have 19 mm, which is the stock size of 19.05.
std::vector<Case> starvingBoreCases()
{
    const std::string rule = "bore-starves-flow";
    const auto bores = [](double peak_degC, double cycles, const BoreRow& larger) {
        return [=](CaseResults& r) {
            r.outcome().peak_outlet_degC = peak_degC;
            r.outcome().cycles_per_hour = cycles;
            r.by_bore = {row(15.875, 99, 9), row(19.05, peak_degC, cycles), larger};
        };
    };
    const BoreRow enough = row(25.4, 70, 1);
    return {
        Case::ofResults(rule, "keeps to its limits", passes, bores(82.2, 4, enough)),
        Case::ofResults(rule, "too hot, and a larger bore is not", caution, bores(82.3, 4, enough)),
        Case::ofResults(rule, "cycles, and a larger bore does not", caution, bores(70, 5, enough)),
        Case::ofResults(rule, "a larger bore is too hot as well", passes, bores(90, 4, row(25.4, 83, 1))),
        Case::ofResults(rule, "a larger bore cycles as well", passes, bores(90, 4, row(25.4, 70, 5))),
        Case::ofResults(rule, "a larger bore does not circulate", passes,
                        bores(90, 4, row(25.4, 70, 1, false))),
        Case::ofResults(rule, "no table yet", passes,
                        [](CaseResults& r) { r.outcome().peak_outlet_degC = 90; }),
        Case::ofResults(rule, "the stock size it has is not a larger one", passes,
                        [](CaseResults& r) {
                            r.outcome().peak_outlet_degC = 90;
                            r.by_bore = {row(19.05, 80, 1)};
                        }),
        [&] {
            Case between(rule, "drawn between two stock sizes", caution, [](Sketch& s) {
                for (Shared<Hose>& hose : s.hoses)
                    hose.edit([](Hose& h) { h.bore_mm.value = 17; });
            });
            between.spoil_results = [](CaseResults& r) {
                r.outcome().peak_outlet_degC = 90;
                r.by_bore = {row(15.875, 99, 9), row(19.05, 80, 1)};
                r.by_bore[1].drawn = false;
            };
            return between;
        }(),
    };
}

} // namespace

std::vector<Case> warmingCases()
{
    std::vector<Case> all = outletCases();
    for (const auto& group : {boilingCases(), cycleCases(), targetCases(), starvingBoreCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

} // namespace siphonwright::test
