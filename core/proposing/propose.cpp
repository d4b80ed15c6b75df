#include "core/proposing/propose.h"

#include "core/proposing/proposal_text.h"
#include "core/proposing/search.h"
#include "core/proposing/verdict.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace siphonwright {
namespace {

constexpr std::size_t loops_a_batch = 12; ///< sites with a loop before the best of them are proved
constexpr std::size_t places_refined = 2;
constexpr std::size_t proofs_a_batch = 8; ///< by key, and as many by flow
constexpr std::size_t sites_searched_finely = 24;

/// Are two layouts different enough to be shown side by side? Own choice: other ports, bore or turn, the
/// heater 100 mm away, or 15 % more hose.
bool differ(const LaidLoop& loop, const HeaterSite& site, const Proposal& other)
{
    constexpr double apart_mm = 100;
    constexpr double longer_share = 0.15;
    const Vec3 place = loop.sketch.heater(other.heater)->position;
    return site.supply.from.port != other.supply_port || site.return_.to.port != other.return_port ||
           site.bore_mm != other.bore_mm || site.turned_deg != other.turned_deg ||
           distance(place, other.heater_at) >= apart_mm - 1 ||
           std::abs(loop.length_mm - other.length_mm) >= longer_share * other.length_mm;
}

/// Every place in the envelope's length within the grades on which nothing is trapped.
bool soundOver(const std::optional<SoundGrades>& sound, const Sketch& sketch)
{
    const double along = std::min(sketch.site.envelope_along_percent, searched_grade_percent);
    return sound && sound->low_percent <= -along && sound->high_percent >= along;
}

Proposal proposalOf(const Sketch& drawn, const LaidLoop& loop, const HeaterSite& site,
                    const Verified& verified)
{
    Proposal out;
    out.sketch = loop.sketch;
    out.heater = site.supply.to.heater;
    out.heater_at = loop.sketch.heater(out.heater)->position;
    out.turned_deg = site.turned_deg;
    out.supply_port = site.supply.from.port;
    out.return_port = site.return_.to.port;
    out.bore_mm = site.bore_mm;
    out.length_mm = loop.length_mm;
    out.supply_mm = loop.supply_mm;
    out.return_mm = loop.return_mm;
    out.flow_kg_per_s = loop.flow_kg_per_s;
    out.flow_l_per_min = loop.flow_l_per_min;
    out.price = priceOfHoses(loop.sketch, loop.level.layout);
    out.key = loop.key;
    out.rank = loop.rank;
    out.sound = verified.sound;
    out.sound_over_envelope = verified.sound_on_grades && soundOver(verified.sound, loop.sketch);
    out.sag = verified.sag;
    std::copy_if(verified.margins.begin(), verified.margins.end(), std::back_inserter(out.to_spare),
                 [](const Margin& margin) { return isOnLaying(margin.rule); });
    std::copy_if(verified.not_judged.begin(), verified.not_judged.end(), std::back_inserter(out.not_judged),
                 [](const NotJudged& one) { return isOnLaying(one.rule); });
    for (const Shared<Hose>& hose : loop.sketch.hoses)
        if (hose->from.heater == out.heater || hose->to.heater == out.heater)
            out.clips += hose->clips_mm.size();
    out.advices = verified.advices;
    out.text = textOf(out);
    out.margins = marginsOf(out);
    out.changes = changesFrom(drawn, out);
    return out;
}

/// Proves loops until there are enough proposals.
class Proving {
public:
    Proving(const Sketch& drawn, LayoutSearch& search, const ProposeOptions& options, const Id& heater,
            const std::stop_token& stop, Proposals& out)
        : drawn_(drawn), search_(search), options_(options), heater_(heater), stop_(stop), out_(out)
    {}

    void proveBest()
    {
        std::vector<std::size_t> order(search_.laid.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        const auto by = [&](auto key) {
            std::stable_sort(order.begin(), order.end(),
                             [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
            std::size_t proofs = 0;
            for (const std::size_t i : order)
                if (!enough() && !stop_.stop_requested() && proofs < proofs_a_batch)
                    proofs += prove(i) ? 1 : 0;
        };
        const auto& laid = search_.laid;
        by([&](std::size_t i) { return std::pair(!laid[i].first_of_site, laid[i].rank); });
        if (!any()) // what starves or boils wants flow
            by([&](std::size_t i) { return std::pair(false, Rank{0, -laid[i].flow_l_per_min}); });
    }

    bool enough() const
    {
        const std::size_t on_level = search_.mayHoldOnGrades() ? 0 : on_some_grades_.size();
        return out_.best_first.size() + on_level >= options_.how_many;
    }
    /// Is there a proposal, on some grades at least?
    bool any() const { return !out_.best_first.empty() || !on_some_grades_.empty(); }

    /// Where none holds over the envelope, those that hold on the level are better than none.
    void finish()
    {
        if (out_.best_first.empty())
            out_.best_first = std::move(on_some_grades_);
        if (out_.best_first.size() > options_.how_many)
            out_.best_first.resize(options_.how_many);
    }

private:
    /// \return whether it was proved now
    bool prove(std::size_t index)
    {
        const LaidLoop& loop = search_.laid[index];
        const HeaterSite& site = search_.sites[loop.site];
        if (std::find(done_.begin(), done_.end(), index) != done_.end() ||
            !apartFrom(out_.best_first, loop, site) || !apartFrom(on_some_grades_, loop, site))
            return false;
        done_.push_back(index);
        const Verified verified = verify(loop.sketch, loop.level, heater_, stop_);
        if (stop_.stop_requested())
            return true;
        if (verified.broken) {
            search_.conflict.add(SearchStage::proof, *verified.broken);
            return true;
        }
        if (!any())
            out_.beside = verified.beside;
        Proposal proposal = proposalOf(drawn_, loop, site, verified);
        (proposal.sound_over_envelope ? out_.best_first : on_some_grades_).push_back(std::move(proposal));
        search_.progress.found = out_.best_first.size();
        return true;
    }

    static bool apartFrom(const std::vector<Proposal>& others, const LaidLoop& loop, const HeaterSite& site)
    {
        return std::all_of(others.begin(), others.end(),
                           [&](const Proposal& other) { return differ(loop, site, other); });
    }

    const Sketch& drawn_;
    LayoutSearch& search_;
    const ProposeOptions& options_;
    const Id& heater_;
    const std::stop_token& stop_;
    Proposals& out_;
    std::vector<std::size_t> done_;
    std::vector<Proposal> on_some_grades_;
};

void searchThrough(LayoutSearch& search, Proving& proving, const std::stop_token& stop)
{
    search.spread();
    const std::size_t spread = search.sites.size();
    search.progress.of = spread;
    std::size_t next = 0;
    while (next < spread && !proving.enough() && !stop.stop_requested()) {
        const bool first = next == 0;
        const std::size_t before = search.laid.size();
        next = search.lay(next, loops_a_batch, false);
        next = std::min(next, spread);
        if (first)
            search.refine(places_refined);
        if (search.laid.size() > before)
            proving.proveBest();
        if (proving.any())
            break;
    }
    if (proving.any() || stop.stop_requested())
        return;
    const std::size_t finely = std::min(sites_searched_finely, spread);
    search.progress.of += finely;
    for (std::size_t site = 0; site < finely && !proving.any() && !stop.stop_requested();) {
        const std::size_t before = search.laid.size();
        site = search.lay(site, 1, true);
        if (search.laid.size() > before)
            proving.proveBest();
    }
}

bool isBox(const HangingSpace& space)
{
    const auto range = [](double least, double most) {
        return std::isfinite(least) && std::isfinite(most) && least <= most;
    };
    return range(space.least.x, space.most.x) && range(space.least.y, space.most.y) &&
           range(space.least.z, space.most.z);
}

} // namespace

std::optional<double> Proposal::leastSag_mm() const
{
    std::optional<double> least;
    for (const SagMargin& margin : sag) {
        const std::optional<double> own =
            margin.droop.already_trapped ? std::optional<double>(0) : margin.droop.margin_mm;
        if (own && (!least || *own < *least))
            least = own;
    }
    return least;
}

const Margin* Proposal::leastToSpare() const
{
    const Margin* least = nullptr;
    for (const Margin& margin : to_spare)
        if (margin.unit == Unit::mm && (!least || margin.left < least->left))
            least = &margin;
    return least;
}

Proposals propose(const Sketch& sketch, const ProposeOptions& options, const std::stop_token& stop)
{
    Proposals out;
    const Heater* heater = options.heater.empty()
                               ? (sketch.heaters.empty() ? nullptr : &sketch.heaters.front())
                               : sketch.heater(options.heater);
    if (!heater) {
        out.missing = "there is no heater to propose a layout for";
        return out;
    }
    if (options.space && !isBox(*options.space)) {
        out.missing = "the space for the heater is no box";
        return out;
    }
    if (sketch.ports.size() < 2) {
        out.missing = "a supply port and a return port are not entered";
        return out;
    }
    LayoutSearch search(sketch, options, heater->id, stop);
    if (search.unpaired) {
        out.missing = "a supply port and a return port that no other hose is on are not entered";
        return out;
    }
    Proving proving(sketch, search, options, heater->id, stop, out);
    searchThrough(search, proving, stop);
    proving.finish();
    out.stopped = stop.stop_requested();
    out.places = search.places;
    std::stable_sort(out.best_first.begin(), out.best_first.end(),
                     [](const Proposal& a, const Proposal& b) { return a.rank < b.rank; });
    if (out.best_first.empty() && !out.stopped) {
        search.diagnose();
        out.in_conflict = search.conflict.farthest(sketch);
    }
    return out;
}

} // namespace siphonwright
