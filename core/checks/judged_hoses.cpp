#include "core/checks/judged_hoses.h"

#include <algorithm>
#include <functional>

namespace siphonwright {
namespace {

/// Everything in a sketch but its hoses. A new member of the sketch does not compile until it is named here.
bool sameAround(const Sketch& a, const Sketch& b)
{
    const auto& [sheet, units, engine, tank, ports, heaters, hoses, coolant, site, areas, ground, photo,
                 readings, checklist, notes, limits, assumptions, plan, fill, survey, supply, coolant_plan,
                 quote, dimensions] = a;
    static_cast<void>(hoses);
    return sheet == b.sheet && units == b.units && engine == b.engine && tank == b.tank && ports == b.ports &&
           heaters == b.heaters && coolant == b.coolant && site == b.site && areas == b.areas &&
           ground == b.ground_z_mm && photo == b.photo && readings == b.readings &&
           checklist == b.checklist && notes == b.notes && limits == b.limits &&
           assumptions == b.assumptions && plan == b.plan && fill == b.fill && survey == b.survey &&
           supply == b.supply && coolant_plan == b.coolant_plan && quote == b.quote &&
           dimensions == b.dimensions;
}

std::size_t hashOf(const Unconfirmed& fact)
{
    const std::hash<std::string> of_text;
    return of_text(fact.fact) ^ (of_text(fact.part.id) * 31 + static_cast<std::size_t>(fact.part.kind)) ^
           (fact.part.index * 131);
}

std::size_t placeOf(const Rule& rule)
{
    return static_cast<std::size_t>(&rule - ruleBook().data());
}

} // namespace

bool HoseVerdict::empty() const
{
    return findings.empty() && not_judged.empty() && unconfirmed.empty() && !margin;
}

JudgedHoses::JudgedHoses(const Sketch& sketch, const Layout& layout, const JudgedHoses* before)
    : up_(layout.plumb.up()), by_rule_(ruleBook().size())
{
    routes_.reserve(layout.hoses.size());
    for (const ResolvedHose& hose : layout.hoses)
        routes_.push_back(hose.route);
    if (before && sameAround(*before->around_, sketch)) {
        around_ = before->around_;
        if (before->up_ == up_)
            takeOver(*before);
        return;
    }
    Sketch around = sketch;
    around.hoses.clear();
    around_ = std::make_shared<const Sketch>(std::move(around));
}

void JudgedHoses::takeOver(const JudgedHoses& before)
{
    std::unordered_map<const Route*, std::size_t> places;
    constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
    std::vector<std::size_t> was_at(routes_.size(), nowhere);
    for (std::size_t i = 0; i < routes_.size(); ++i) {
        if (i < before.routes_.size() && before.routes_[i] == routes_[i]) {
            was_at[i] = i;
            continue;
        }
        if (places.empty())
            for (std::size_t k = 0; k < before.routes_.size(); ++k)
                places.emplace(before.routes_[k].get(), k);
        const auto found = places.find(routes_[i].get());
        was_at[i] = found == places.end() ? nowhere : found->second;
    }
    for (std::size_t rule = 0; rule < by_rule_.size() && rule < before.by_rule_.size(); ++rule) {
        const ByHose& from = before.by_rule_[rule];
        if (from.empty())
            continue;
        by_rule_[rule].resize(routes_.size());
        for (std::size_t i = 0; i < routes_.size(); ++i)
            if (was_at[i] != nowhere)
                by_rule_[rule][i] = from[was_at[i]];
    }
}

std::shared_ptr<const HoseVerdict> JudgedHoses::verdict(const Rule& rule, std::size_t hose) const
{
    const ByHose& all = by_rule_[placeOf(rule)];
    return all.empty() ? nullptr : all[hose];
}

void JudgedHoses::remember(const Rule& rule, std::size_t hose, std::shared_ptr<const HoseVerdict> verdict)
{
    ByHose& all = by_rule_[placeOf(rule)];
    if (all.empty())
        all.resize(routes_.size());
    all[hose] = std::move(verdict);
}

void OnceEach::add(const Unconfirmed& fact)
{
    constexpr std::size_t few = 16;
    if (list_.size() < few) {
        if (std::find(list_.begin(), list_.end(), fact) == list_.end())
            list_.push_back(fact);
        return;
    }
    for (; hashed_ < list_.size(); ++hashed_)
        by_hash_.emplace(hashOf(list_[hashed_]), hashed_);
    const auto [first, last] = by_hash_.equal_range(hashOf(fact));
    for (auto at = first; at != last; ++at)
        if (list_[at->second] == fact)
            return;
    list_.push_back(fact);
}

} // namespace siphonwright
