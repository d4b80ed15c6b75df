#include "tests/checks/cases.h"

namespace siphonwright::test {

std::vector<Case> allCases()
{
    std::vector<Case> all = hoseCases();
    for (const auto& group : {placeCases(), circuitCases(), clearanceCases()})
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
    out.judgement = judge(sketch, out.layout);
    return out;
}

} // namespace siphonwright::test
