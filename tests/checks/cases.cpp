#include "tests/checks/cases.h"

namespace siphonwright::test {

std::vector<Case> allCases()
{
    std::vector<Case> all = hoseCases();
    for (const auto& group : {placeCases(), circuitCases(), clearanceCases(), runningCases(), warmingCases()})
        all.insert(all.end(), group.begin(), group.end());
    return all;
}

Judged judgeCase(const Case& one)
{
    Sketch sketch = soundLoop();
    if (one.spoil)
        one.spoil(sketch);
    Judged out;
    out.layout = resolve(sketch, plumbOf(sketch));
    if (one.spoil_layout)
        one.spoil_layout(out.layout);
    const Rule* rule = ruleById(one.rule);
    if (!rule || rule->needs == Needs::layout) {
        out.judgement = judge(sketch, out.layout);
        return out;
    }
    const Assumptions assumed(sketch);
    CaseResults results;
    results.running = runSteady(sketch, out.layout, assumed);
    results.warm_up = runWarmUp(sketch, out.layout, results.running, assumed);
    if (one.spoil_results)
        one.spoil_results(results);
    Results known;
    known.running = &results.running;
    known.warm_up = &results.warm_up;
    known.bands = results.bands.empty() ? nullptr : &results.bands;
    known.by_bore = results.by_bore.empty() ? nullptr : &results.by_bore;
    const bool warmed = rule->needs == Needs::warm_up;
    out.judgement = judge(sketch, out.layout, known, warmed ? RuleSet::proven : RuleSet::live);
    return out;
}

} // namespace siphonwright::test
