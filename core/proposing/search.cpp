#include "core/proposing/search.h"

#include "core/proposing/verdict.h"
#include "core/running/loop_figures.h"
#include "core/sketch/find.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

constexpr std::size_t hoses_a_site = 3;
constexpr std::size_t hoses_a_site_fine = 8;
constexpr std::size_t sites_diagnosed = 6;
constexpr std::size_t ways_diagnosed = 150;

/// Pairs of sound hoses, the shortest first.
std::vector<std::pair<std::size_t, std::size_t>> shortestPairs(const FoundHoses& a, const FoundHoses& b)
{
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < a.hoses.size(); ++i)
        for (std::size_t j = 0; j < b.hoses.size(); ++j)
            pairs.emplace_back(i, j);
    std::stable_sort(pairs.begin(), pairs.end(), [&](const auto& p, const auto& q) {
        return a.lengths_mm[p.first] + b.lengths_mm[p.second] <
               a.lengths_mm[q.first] + b.lengths_mm[q.second];
    });
    return pairs;
}

/// Twice the flow is worth 41 % more hose; a loop that cannot be computed counts as one of 1 l/min.
double keyOf(double price, double flow_l_per_min)
{
    return flow_l_per_min > 0 ? price / std::sqrt(flow_l_per_min) : price;
}

bool takesPart(const Hose& hose, const Id& heater)
{
    return hose.from.heater == heater || hose.to.heater == heater;
}

} // namespace

Sketch withHoses(const HeaterSite& site, const Sketch& drawn, const Hose& supply, const Hose& back)
{
    Sketch out = site.sketch;
    out.hoses.clear();
    bool supply_in = false;
    bool back_in = false;
    for (const Shared<Hose>& hose : drawn.hoses) {
        if (hose->id == supply.id) {
            out.hoses.push_back(Shared<Hose>(supply));
            supply_in = true;
        } else if (hose->id == back.id) {
            out.hoses.push_back(Shared<Hose>(back));
            back_in = true;
        } else if (!takesPart(*hose, supply.to.heater)) {
            out.hoses.push_back(hose);
        }
    }
    if (!supply_in)
        out.hoses.push_back(Shared<Hose>(supply));
    if (!back_in)
        out.hoses.push_back(Shared<Hose>(back));
    return out;
}

LayoutSearch::LayoutSearch(const Sketch& sketch, const ProposeOptions& options, Id heater,
                           std::stop_token stop)
    : sketch_(sketch),
      options_(options),
      heater_(std::move(heater)),
      stop_(std::move(stop)),
      cleared_(cleared(sketch, heater_))
{
    std::vector<RemovedBy> removed;
    pairs_ = portPairs(sketch, heater_, removed);
    for (const RemovedBy& by : removed)
        conflict.add(SearchStage::ports, by);
    bores_ = boresFor(sketch, options, *sketch.heater(heater_));
    if (bores_.empty())
        conflict.add(SearchStage::bore, RemovedBy{"bore-under-manual", 0, {}},
                     std::max<std::size_t>(1, options.stock_bores_mm.size()));
    unpaired = pairs_.empty() && removed.empty();
}

void LayoutSearch::addSites(const std::vector<Vec3>& at)
{
    const std::vector<double> turns =
        options_.space ? std::vector<double>{0, 90, 180, -90} : std::vector<double>{0};
    for (const Vec3& place : at)
        for (const double turned_deg : turns) {
            if (stop_.stop_requested())
                return;
            bool asked = false;
            bool sound = false;
            bool on_grades = false;
            for (const PortPair& ports : pairs_)
                for (const double bore_mm : bores_) {
                    if (asked && !sound)
                        continue;
                    HeaterSite site =
                        siteAt(cleared_, sketch_, heater_, place, turned_deg, ports, bore_mm, options_);
                    if (!asked) {
                        const PartRules rules(site.sketch, heater_);
                        const auto removed = rules.heaterBreaks();
                        asked = true;
                        sound = !removed;
                        on_grades = sound && rules.heaterHoldsOnGrades();
                        if (removed)
                            conflict.add(SearchStage::heater, *removed);
                    }
                    ++places;
                    site.holds_on_grades = on_grades;
                    if (sound)
                        sites.push_back(std::move(site));
                }
        }
}

void LayoutSearch::spread()
{
    addSites(placesIn(sketch_, options_, *sketch_.heater(heater_)));
    std::stable_sort(sites.begin(), sites.end(), [](const HeaterSite& a, const HeaterSite& b) {
        return std::pair(!a.holds_on_grades, a.promise) < std::pair(!b.holds_on_grades, b.promise);
    });
}

bool LayoutSearch::mayHoldOnGrades() const
{
    return !sites.empty() && sites.front().holds_on_grades;
}

Rank LayoutSearch::rankOf(const LaidLoop& loop) const
{
    switch (options_.rank_by) {
    case RankBy::balance:
        break;
    case RankBy::length:
        return {0, loop.length_mm};
    case RankBy::flow:
        return {loop.flow_l_per_min > 0 ? std::size_t{0} : std::size_t{1}, -loop.flow_l_per_min};
    case RankBy::price: {
        // Fittings without a price are much the same from layout to layout; hose without one is not: then by
        // what hose of that bore usually costs.
        const LayoutPrice price = priceOfHoses(loop.sketch, loop.level.layout);
        constexpr std::size_t behind_all = 1000;
        return price.hose_priced ? Rank{price.not_priced.size(), static_cast<double>(price.minor.value_or(0))}
                                 : Rank{behind_all + price.not_priced.size(), loop.price};
    }
    }
    return {0, loop.key};
}

bool LayoutSearch::layAt(std::size_t index, bool fine)
{
    const HeaterSite& site = sites[index];
    PartRules rules(site.sketch, heater_);
    HoseWish wish;
    wish.how_many = fine ? hoses_a_site_fine : hoses_a_site;
    wish.fine = fine;
    wish.apart_share = fine ? 0.0 : wish.apart_share;
    const FoundHoses back = soundHoses(site.sketch, site.return_, rules, wish, stop_);
    if (back.hoses.empty()) {
        without_return_.push_back(index);
        return false;
    }
    const FoundHoses supply = soundHoses(site.sketch, site.supply, rules, wish, stop_);
    if (supply.hoses.empty()) {
        without_supply_.push_back(index);
        return false;
    }
    bool any = false;
    std::size_t kept = 0;
    for (const auto& [i, j] : shortestPairs(supply, back)) {
        if (stop_.stop_requested() || kept >= options_.how_many)
            break;
        LaidLoop loop;
        loop.site = index;
        loop.first_of_site = !any;
        loop.sketch = withHoses(site, sketch_, supply.hoses[i], back.hoses[j]);
        loop.level = analyse(loop.sketch);
        if (const std::optional<Finding> broken = breaksLive(loop.level, loop.sketch, heater_)) {
            conflict.add(SearchStage::loop, *broken);
            continue;
        }
        loop.supply_mm = supply.lengths_mm[i];
        loop.return_mm = back.lengths_mm[j];
        loop.length_mm = loop.supply_mm + loop.return_mm;
        loop.price = priceWeight(options_, site.bore_mm) * loop.length_mm / 1000;
        if (const LoopRun* run = loop.level.running.loopOf(heater_); run && run->missing.empty()) {
            loop.flow_kg_per_s = run->circulation.flow_kg_per_s;
            loop.flow_l_per_min = flowByVolume_l_per_min(run->circulation);
        }
        loop.key = keyOf(loop.price, loop.flow_l_per_min);
        loop.rank = rankOf(loop);
        laid.push_back(std::move(loop));
        any = true;
        ++kept;
    }
    return any;
}

std::size_t LayoutSearch::lay(std::size_t next, std::size_t enough, bool fine)
{
    std::size_t with_loop = 0;
    while (next < sites.size() && with_loop < enough && !stop_.stop_requested()) {
        with_loop += layAt(next++, fine) ? 1 : 0;
        ++progress.tried;
        if (options_.progress)
            options_.progress(progress);
    }
    return next;
}

void LayoutSearch::refine(std::size_t best)
{
    std::vector<LaidLoop*> order;
    for (LaidLoop& loop : laid)
        if (loop.first_of_site)
            order.push_back(&loop);
    std::stable_sort(order.begin(), order.end(),
                     [](const LaidLoop* a, const LaidLoop* b) { return a->rank < b->rank; });
    std::vector<HeaterSite> round;
    for (std::size_t i = 0; i < std::min(best, order.size()); ++i)
        round.push_back(sites[order[i]->site]);
    for (const HeaterSite& site : round) {
        const Vec3 place = site.sketch.heater(heater_)->position;
        for (const Vec3& at : placesRound(options_, place)) {
            HeaterSite moved = site;
            byId(moved.sketch.heaters, heater_)->position = at;
            const PartRules rules(moved.sketch, heater_);
            if (rules.heaterBreaks() || stop_.stop_requested())
                continue;
            moved.holds_on_grades = rules.heaterHoldsOnGrades();
            ++places;
            sites.push_back(std::move(moved));
            layAt(sites.size() - 1, false);
        }
    }
}

void LayoutSearch::diagnose()
{
    const auto ask = [&](const std::vector<std::size_t>& failed, SearchStage stage) {
        HoseWish wish;
        wish.how_many = 1;
        wish.diagnose = ways_diagnosed;
        for (std::size_t i = 0; i < std::min(sites_diagnosed, failed.size()); ++i) {
            const HeaterSite& site = sites[failed[i]];
            PartRules rules(site.sketch, heater_);
            const Hose& like = stage == SearchStage::supply ? site.supply : site.return_;
            for (const FoundHoses::Tally& tally : soundHoses(site.sketch, like, rules, wish, stop_).removed)
                conflict.add(stage, tally.removed, tally.ways);
        }
    };
    if (conflict.reached(SearchStage::loop))
        return;
    if (!without_supply_.empty())
        ask(without_supply_, SearchStage::supply);
    else
        ask(without_return_, SearchStage::return_);
}

} // namespace siphonwright
