#include "core/quantity/quantity.h"

#include "core/quantity/units.h"

#include <array>
#include <charconv>
#include <cmath>

namespace siphonwright {
namespace {

constexpr const char* not_a_number = "–";
constexpr double slope_taken_as_level = 0.001; ///< 1 in 1000 is beyond what a spirit level shows

/// A number with at most so many decimals: no trailing zeros, no exponent, no negative zero.
std::string shortDecimal(double value, int decimals)
{
    std::array<char, 400> buffer; // the largest double has 309 digits before the point
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                   std::chars_format::fixed, decimals);
    std::string text(buffer.data(), end.ptr);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.')
            text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

/// "3/4 in", "1 1/8 in", "3 ft 3 3/8 in": to the nearest sixteenth, reduced.
std::string inchText(double value_mm, bool with_feet = true)
{
    constexpr double counted_exactly = 1e14; // sixteenths stay whole numbers up to here
    const double sixteenths = std::round(std::abs(value_mm) / mm_per_inch * 16);
    if (!(sixteenths < counted_exactly))
        return shortDecimal(value_mm / mm_per_inch, 0) + " in";
    const auto total = static_cast<long long>(sixteenths);
    if (total == 0)
        return "0 in";
    constexpr long long per_foot = 12LL * 16;
    const long long feet = with_feet && total >= 2 * per_foot ? total / per_foot : 0;
    const long long rest = total - feet * per_foot;
    std::string text = value_mm < 0 ? "-" : "";
    if (feet > 0)
        text += shortDecimal(static_cast<double>(feet), 0) + (rest > 0 ? " ft " : " ft");
    if (rest == 0)
        return text;
    const long long whole = rest / 16;
    long long numerator = rest % 16;
    long long denominator = 16;
    while (numerator > 0 && numerator % 2 == 0) {
        numerator /= 2;
        denominator /= 2;
    }
    if (whole > 0)
        text += shortDecimal(static_cast<double>(whole), 0);
    if (numerator > 0) {
        text += whole > 0 ? " " : "";
        text += shortDecimal(static_cast<double>(numerator), 0) + "/" +
                shortDecimal(static_cast<double>(denominator), 0);
    }
    return text + " in";
}

std::string slopeText(double slope)
{
    if (std::abs(slope) < slope_taken_as_level)
        return "level";
    const std::string n = shortDecimal(1 / std::abs(slope), 1);
    if (std::abs(slope) >= 1 || n == "1")
        return slope > 0 ? "steep" : "falls steeply";
    return (slope > 0 ? "1 in " : "falls 1 in ") + n;
}

/// "19 to 25 mm": a unit that both have is said once; one figure where both read alike.
std::string rangeText(std::string_view low, std::string_view high)
{
    if (low == high)
        return std::string(low);
    const std::size_t space = low.rfind(' ');
    const bool same_unit = space != std::string_view::npos && high.ends_with(low.substr(space)) &&
                           !low.ends_with(" in"); // inches come with fractions
    return std::string(same_unit ? low.substr(0, space) : low) + " to " + std::string(high);
}

/// A little coolant or air is not none: under three quarters of the last place a volume shows its first
/// digit, down to 0.01 ml.
std::string volumeText(double number, int decimals)
{
    constexpr int most_more = 2;
    const int most = decimals + most_more;
    for (double last_place = std::pow(10, -decimals); decimals < most && std::abs(number) < 0.75 * last_place;
         last_place /= 10)
        ++decimals;
    return shortDecimal(number, decimals);
}

/// What a placeholder of a message stands for; nothing when there is no such quantity or word.
std::optional<std::string> placeholderText(std::string_view key, const Message& message, UnitSystem system)
{
    if (key.size() == 3 && key[1] == '-') { // a range
        const auto low = placeholderText(key.substr(0, 1), message, system);
        const auto high = placeholderText(key.substr(2), message, system);
        if (low && high)
            return rangeText(*low, *high);
    }
    if (key.size() != 1)
        return std::nullopt;
    if (key[0] >= '0' && key[0] <= '9') {
        const auto index = static_cast<std::size_t>(key[0] - '0');
        if (index < message.quantities.size())
            return format(message.quantities[index].value, message.quantities[index].unit, system);
    }
    if (key[0] >= 'a' && key[0] <= 'z') {
        const auto index = static_cast<std::size_t>(key[0] - 'a');
        if (index < message.words.size())
            return message.words[index];
    }
    return std::nullopt;
}

} // namespace

std::string format(double value, Unit unit, UnitSystem system)
{
    if (!std::isfinite(value))
        return not_a_number;
    if (unit == Unit::slope)
        return slopeText(value);
    if (unit == Unit::mm && system == UnitSystem::inch)
        return inchText(value);
    const Shown& shown = shownIn(unit, system);
    const double number = value / shown.size - shown.offset;
    if (!std::isfinite(number))
        return not_a_number;
    const std::string text =
        unit == Unit::ml ? volumeText(number, shown.decimals) : shortDecimal(number, shown.decimals);
    if (unit == Unit::bores && text == "1")
        return "1 bore";
    return text + std::string(shown.symbol);
}

std::string inchesAlone(double value_mm)
{
    if (!std::isfinite(value_mm))
        return not_a_number;
    std::string text = inchText(value_mm, false);
    text.resize(text.size() - std::string_view(" in").size());
    return text;
}

std::string format(const Message& message, UnitSystem system)
{
    std::string text;
    const std::string_view pattern = message.pattern;
    std::size_t at = 0;
    while (at < pattern.size()) {
        const std::size_t open = pattern.find('{', at);
        const std::size_t close = open == std::string_view::npos ? open : pattern.find('}', open);
        if (close == std::string_view::npos)
            break;
        text += pattern.substr(at, open - at);
        const auto filled = placeholderText(pattern.substr(open + 1, close - open - 1), message, system);
        text += filled ? *filled : std::string(pattern.substr(open, close - open + 1));
        at = close + 1;
    }
    text += pattern.substr(at);
    return text;
}

std::string_view nameOf(Unit unit)
{
    return formOf(unit).name;
}

std::string exactText(double value)
{
    if (!std::isfinite(value))
        return not_a_number;
    std::array<char, 40> buffer; // the shortest form of a double never needs more than 24
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return {buffer.data(), end.ptr};
}

std::string toAMillionth(double value)
{
    return exactText(std::round(value * 1e6) / 1e6 + 0.0); // adding makes -0 a plain 0
}

} // namespace siphonwright
