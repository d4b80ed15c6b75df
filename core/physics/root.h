#pragma once

#include <algorithm>

/// Roots of functions of one variable.
namespace siphonwright {

/// What is left of a bracket when the search ends: the root lies between low and high.
struct RootBracket {
    double low = 0;
    double high = 0;
    int evaluations = 0;

    double middle() const { return low + (high - low) / 2; }
};

/// Narrows a bracket round a root of f to at most `width`, in at most 200 evaluations.
///
/// Method: false position with the Illinois rule (Dowell and Jarratt 1971, BIT 11:168-174): an end that stays
/// twice running counts half. Whenever two steps together have not halved the bracket a bisection follows, so
/// that it never takes much longer than bisection would.
///
/// Requires: low <= high; at_low = f(low) and at_high = f(high) of opposite sign, or one of them zero; f
/// continuous. Where they have the same sign the bracket comes back as it was, with no evaluations.
template <typename Function>
RootBracket narrowRoot(Function&& f, double low, double high, double at_low, double at_high, double width)
{
    if (at_low == 0)
        return {low, low, 0};
    if (at_high == 0)
        return {high, high, 0};
    RootBracket bracket{low, high, 0};
    if (!(at_low * at_high < 0))
        return bracket;
    constexpr int most_evaluations = 200;
    int side = 0; // which end moved last: -1 low, +1 high
    double width_two_steps_ago = high - low;
    bool bisect = false;
    while (bracket.high - bracket.low > width && bracket.evaluations < most_evaluations) {
        const double span = bracket.high - bracket.low;
        // Never closer to an end than half the width asked for: the next step then closes the bracket.
        const double inward = std::min(width / 2, span / 2);
        const double secant = bracket.high - at_high * span / (at_high - at_low);
        const double x =
            bisect ? bracket.middle() : std::clamp(secant, bracket.low + inward, bracket.high - inward);
        const double y = f(x);
        ++bracket.evaluations;
        if (y == 0)
            return {x, x, bracket.evaluations};
        if ((y < 0) == (at_low < 0)) {
            bracket.low = x;
            at_low = y;
            at_high = side == -1 ? at_high / 2 : at_high;
            side = -1;
        } else {
            bracket.high = x;
            at_high = y;
            at_low = side == 1 ? at_low / 2 : at_low;
            side = 1;
        }
        bisect = false;
        if (bracket.evaluations % 2 == 0) {
            bisect = bracket.high - bracket.low > width_two_steps_ago / 2;
            width_two_steps_ago = bracket.high - bracket.low;
        }
    }
    return bracket;
}

} // namespace siphonwright
