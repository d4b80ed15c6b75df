#include "core/paperwork/cut_plan.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace siphonwright {
namespace {

using Lengths = std::vector<std::int64_t>;

constexpr std::int64_t longest_length = 1'000'000'000;
constexpr std::int64_t no_roll = 0;

/// The shortest roll that holds a length. \param rolls ascending
std::int64_t rollFor(std::int64_t length, const Lengths& rolls)
{
    const auto found = std::lower_bound(rolls.begin(), rolls.end(), length);
    return found == rolls.end() ? no_roll : *found;
}

Lengths sorted(Lengths lengths)
{
    std::sort(lengths.begin(), lengths.end());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    return lengths;
}

/// What is bought is a multiple of the rolls' greatest common divisor and no less than what is cut; and cuts
/// of more than half the longest roll share none, so each takes a roll that holds it.
std::int64_t lowerBound(const Lengths& cuts, const Lengths& rolls)
{
    const std::int64_t total = std::accumulate(cuts.begin(), cuts.end(), std::int64_t{0});
    std::int64_t divisor = rolls.front();
    for (const std::int64_t roll : rolls)
        divisor = std::gcd(divisor, roll);
    const std::int64_t by_sum = (total + divisor - 1) / divisor * divisor;
    std::int64_t by_large = 0;
    for (const std::int64_t cut : cuts)
        by_large += cut > rolls.back() - cut ? rollFor(cut, rolls) : 0;
    return std::max({by_sum, by_large, rolls.front()});
}

/// Cuts as numbered in the request, longest first; of equal ones the first asked for comes first.
std::vector<std::size_t> longestFirst(const Lengths& cuts)
{
    std::vector<std::size_t> order(cuts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return cuts[a] > cuts[b]; });
    return order;
}

/// The least length for each set of cuts: the set's first cut is on some roll with others of the set.
class EverySet {
public:
    EverySet(const Lengths& cuts, const Lengths& rolls) : order_(longestFirst(cuts))
    {
        const std::size_t sets = std::size_t{1} << cuts.size();
        one_roll_.assign(sets, no_roll);
        for (std::size_t set = 1; set < sets; ++set)
            one_roll_[set] = rollFor(lengthOf(set, cuts), rolls);
        best_.assign(sets, {});
        for (std::size_t set = 1; set < sets; ++set)
            best_[set] = bestOf(set);
    }

    std::vector<CutRoll> rolls() const
    {
        std::vector<CutRoll> out;
        for (std::size_t set = best_.size() - 1; set != 0; set &= ~best_[set].first_roll) {
            CutRoll roll;
            roll.length = one_roll_[best_[set].first_roll];
            for (std::size_t i = 0; i < order_.size(); ++i)
                if (best_[set].first_roll >> i & 1U)
                    roll.cuts.push_back(order_[i]);
            out.push_back(std::move(roll));
        }
        return out;
    }

private:
    struct Best {
        std::int64_t bought = 0;
        std::size_t rolls = 0;      ///< of equal ways the one of fewest rolls
        std::size_t first_roll = 0; ///< the set on the roll of the set's first cut
    };

    std::int64_t lengthOf(std::size_t set, const Lengths& cuts) const
    {
        std::int64_t length = 0;
        for (std::size_t i = 0; i < order_.size(); ++i)
            length += set >> i & 1U ? cuts[order_[i]] : 0;
        return length;
    }

    Best bestOf(std::size_t set) const
    {
        const std::size_t first = set & (~set + 1);
        const std::size_t others = set & ~first;
        Best best;
        for (std::size_t with = others;; with = (with - 1) & others) {
            const std::size_t roll = with | first;
            if (one_roll_[roll] != no_roll) {
                const Best& rest = best_[set & ~roll];
                const std::int64_t bought = one_roll_[roll] + rest.bought;
                const bool better = best.first_roll == 0 || bought < best.bought ||
                                    (bought == best.bought && rest.rolls + 1 < best.rolls);
                if (better)
                    best = {bought, rest.rolls + 1, roll};
            }
            if (with == 0)
                return best;
        }
    }

    std::vector<std::size_t> order_;
    Lengths one_roll_; ///< the shortest roll that holds the set
    std::vector<Best> best_;
};

/// First fit decreasing onto rolls of one length, longer ones where a cut needs it.
std::vector<CutRoll> firstFit(const Lengths& cuts, const Lengths& rolls, std::int64_t usual)
{
    std::vector<CutRoll> out;
    for (const std::size_t cut : longestFirst(cuts)) {
        auto roll =
            std::find_if(out.begin(), out.end(), [&](const CutRoll& open) { return open.left >= cuts[cut]; });
        if (roll == out.end()) {
            CutRoll fresh;
            fresh.length = std::max(usual, rollFor(cuts[cut], rolls));
            fresh.left = fresh.length;
            roll = out.insert(out.end(), std::move(fresh));
        }
        roll->cuts.push_back(cut);
        roll->left -= cuts[cut];
    }
    for (CutRoll& roll : out)
        roll.length = rollFor(roll.length - roll.left, rolls);
    return out;
}

std::int64_t lengthOf(const std::vector<CutRoll>& rolls)
{
    std::int64_t length = 0;
    for (const CutRoll& roll : rolls)
        length += roll.length;
    return length;
}

std::vector<CutRoll> bestFirstFit(const Lengths& cuts, const Lengths& rolls)
{
    std::vector<CutRoll> best;
    for (const std::int64_t usual : rolls) {
        std::vector<CutRoll> tried = firstFit(cuts, rolls, usual);
        if (best.empty() || lengthOf(tried) < lengthOf(best))
            best = std::move(tried);
    }
    return best;
}

CutPlan refusal(CutStatus status, std::string message)
{
    CutPlan plan;
    plan.status = status;
    plan.message = std::move(message);
    return plan;
}

bool allSound(const Lengths& lengths)
{
    return std::all_of(lengths.begin(), lengths.end(),
                       [](std::int64_t length) { return length > 0 && length <= longest_length; });
}

void finish(CutPlan& plan, const Lengths& cuts)
{
    for (CutRoll& roll : plan.rolls) {
        roll.left = roll.length;
        for (const std::size_t cut : roll.cuts)
            roll.left -= cuts[cut];
        plan.bought += roll.length;
        plan.cut += roll.length - roll.left;
    }
    std::stable_sort(plan.rolls.begin(), plan.rolls.end(),
                     [](const CutRoll& a, const CutRoll& b) { return a.length > b.length; });
}

} // namespace

CutPlan planCuts(const std::vector<std::int64_t>& cuts, const std::vector<std::int64_t>& rolls)
{
    if (cuts.empty())
        return refusal(CutStatus::nothing_to_cut, "Nothing is to be cut.");
    if (rolls.empty())
        return refusal(CutStatus::no_rolls, "No length of roll is entered.");
    if (cuts.size() > most_cuts || !allSound(cuts) || !allSound(rolls))
        return refusal(CutStatus::bad_input,
                       "A length is not over 0 and at most 10 km, or there are too many cuts.");
    const Lengths lengths = sorted(rolls);
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (cuts[i] <= lengths.back())
            continue;
        CutPlan plan = refusal(CutStatus::cut_too_long, "A cut is longer than the longest roll.");
        plan.too_long = i;
        return plan;
    }
    CutPlan plan;
    const bool exact = cuts.size() <= most_cuts_exact;
    plan.rolls = exact ? EverySet(cuts, lengths).rolls() : bestFirstFit(cuts, lengths);
    finish(plan, cuts);
    plan.least_possible = exact ? plan.bought : lowerBound(cuts, lengths);
    plan.status = plan.bought == plan.least_possible ? CutStatus::least : CutStatus::near_least;
    return plan;
}

std::int64_t hundredthsOf(double length_mm)
{
    constexpr double slack = 1e-6; // a length on the mark stays on it
    if (!(std::isfinite(length_mm) && length_mm > 0))
        return 0;
    const double hundredths = std::ceil(length_mm * static_cast<double>(hundredths_per_mm) - slack);
    return hundredths <= static_cast<double>(longest_length) ? static_cast<std::int64_t>(hundredths) : 0;
}

} // namespace siphonwright
