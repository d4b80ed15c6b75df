#include "core/paperwork/estimate.h"
#include "core/paperwork/money.h"

#include <algorithm>
#include <numeric>

/// How much of a thing is bought: in the unit of its price, and hose off its rolls.
namespace siphonwright {
namespace {

/// What one unit is, as a fraction of a metre or a litre.
struct Measure {
    int what; ///< 0 pieces, 1 length, 2 volume
    std::int64_t numerator;
    std::int64_t denominator;
};
Measure measureOf(PriceUnit unit)
{
    switch (unit) {
    case PriceUnit::metre:
        return {1, 1, 1};
    case PriceUnit::foot:
        return {1, 381, 1250}; // 0.3048
    case PriceUnit::litre:
        return {2, 1, 1};
    case PriceUnit::quart:
        return {2, 473'176'473, 500'000'000}; // 0.946352946
    case PriceUnit::gallon:
        return {2, 473'176'473, 125'000'000}; // 3.785411784
    case PriceUnit::each:
        break;
    }
    return {0, 1, 1};
}

} // namespace

std::optional<std::int64_t> converted(std::int64_t thousandths, PriceUnit from, PriceUnit to)
{
    if (from == to)
        return thousandths;
    const Measure source = measureOf(from);
    const Measure target = measureOf(to);
    if (source.what != target.what || thousandths < 0)
        return std::nullopt;
    const auto above = productOf(source.numerator, target.denominator);
    const auto below = productOf(source.denominator, target.numerator);
    if (!above || !below)
        return std::nullopt;
    const std::int64_t common = std::gcd(*above, *below); // so that large quantities still fit
    const auto product = productOf(thousandths, *above / common);
    if (!product)
        return std::nullopt;
    const std::int64_t divisor = *below / common;
    return *product / divisor + (*product % divisor > 0 ? 1 : 0);
}

std::vector<BorePlan> cutPlansOf(const Sketch& sketch, const PartsList& parts)
{
    const Quote& quote = quoteOf(sketch);
    std::vector<BorePlan> plans;
    for (const HoseCut& cut : parts.cuts) {
        auto plan = std::find_if(plans.begin(), plans.end(), [&](const BorePlan& other) {
            return other.bore_mm == cut.bore_mm && other.wall_mm == cut.wall_mm;
        });
        if (plan == plans.end()) {
            BorePlan fresh;
            fresh.bore_mm = cut.bore_mm;
            fresh.wall_mm = cut.wall_mm;
            plan = plans.insert(plans.end(), std::move(fresh));
        }
        for (std::int64_t vehicle = 0; vehicle < quote.vehicles && plan->cuts.size() <= most_cuts; ++vehicle)
            plan->cuts.push_back(cut);
    }
    for (BorePlan& bore : plans) {
        if (!bore.bore_mm) {
            bore.plan.status = CutStatus::bad_input;
            bore.plan.message = "The bore is not entered.";
            continue;
        }
        std::vector<std::int64_t> cuts;
        for (const HoseCut& cut : bore.cuts)
            cuts.push_back(hundredthsOf(cut.length_mm));
        std::vector<std::int64_t> rolls;
        for (const HoseRoll& roll : quote.rolls)
            if (!roll.bore_mm || *roll.bore_mm == *bore.bore_mm)
                rolls.push_back(hundredthsOf(roll.length_mm));
        bore.plan = planCuts(cuts, rolls);
    }
    return plans;
}

} // namespace siphonwright
