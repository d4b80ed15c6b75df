#include "core/proposing/cures.h"

#include "core/proposing/hose_rules.h"
#include "core/proposing/hose_search.h"
#include "core/sketch/find.h"

#include <algorithm>
#include <utility>

namespace siphonwright {

const ResolvedHose* CureCase::hose() const
{
    const Id& id = finding.hose.empty() ? finding.part.id : finding.hose;
    return analysis.layout.hose(id);
}

const Heater* CureCase::heater() const
{
    if (const Heater* own = sketch.heater(finding.part.id))
        return own;
    const ResolvedHose* on = hose();
    if (!on)
        return nullptr;
    const Heater* at_start = sketch.heater((*on)->hose->from.heater);
    return at_start ? at_start : sketch.heater((*on)->hose->to.heater);
}

void addCure(std::vector<Cure>& cures, PartRef part, CureChange change, std::vector<double> amounts,
             double most_mm)
{
    Cure& cure = cures.emplace_back();
    cure.part = std::move(part);
    cure.change = std::move(change);
    cure.amounts = std::move(amounts);
    cure.most_mm = most_mm;
}

bool isOneOf(const std::string& rule, std::initializer_list<std::string_view> rules)
{
    return std::find(rules.begin(), rules.end(), rule) != rules.end();
}

bool layAnew(Sketch& sketch, const Id& hose, Ways ways, const std::stop_token& stop)
{
    Shared<Hose>* shared = byId(sketch.hoses, hose);
    if (!shared)
        return false;
    const Id heater = (*shared)->from.heater.empty() ? (*shared)->to.heater : (*shared)->from.heater;
    PartRules rules(sketch, heater);
    HoseWish wish;
    wish.how_many = 1;
    for (const bool fine : {false, true}) {
        if (fine && ways == Ways::short_list)
            break;
        wish.fine = fine;
        const FoundHoses found = soundHoses(sketch, **shared, rules, wish, stop);
        if (found.hoses.empty())
            continue;
        *shared = Shared<Hose>(found.hoses.front());
        return true;
    }
    return false;
}

bool layBothAnew(Sketch& sketch, const Id& heater, const std::stop_token& stop)
{
    bool any = false;
    const std::vector<Shared<Hose>> hoses = sketch.hoses;
    for (const Shared<Hose>& hose : hoses)
        if (hose->from.heater == heater || hose->to.heater == heater) {
            if (!layAnew(sketch, hose->id, Ways::short_list, stop))
                return false;
            any = true;
        }
    return any;
}

} // namespace siphonwright
