#include "core/paperwork/money.h"

#include <limits>

namespace siphonwright {
namespace {

constexpr const char* thin_space = "\xE2\x80\x89"; // U+2009
constexpr int most_decimals = 9;

std::optional<std::int64_t> refused(std::string* problem, std::string why)
{
    if (problem)
        *problem = std::move(why);
    return std::nullopt;
}

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// Digits and at most one mark of a decimal; how many digits stand behind the mark.
struct Digits {
    std::string digits;
    int behind = 0;
};
std::optional<Digits> digitsOf(std::string_view text, DecimalMark mark)
{
    Digits out;
    bool behind = false;
    for (const char c : text) {
        const bool is_mark = c == '.' || (c == ',' && mark == DecimalMark::point_or_comma);
        if (is_mark && !behind && !out.digits.empty()) {
            behind = true;
        } else if (c >= '0' && c <= '9') {
            out.digits += c;
            out.behind += behind ? 1 : 0;
        } else {
            return std::nullopt;
        }
    }
    if (out.digits.empty() || (behind && out.behind == 0))
        return std::nullopt;
    return out;
}

} // namespace

std::optional<std::int64_t> sumOf(std::int64_t a, std::int64_t b)
{
    std::int64_t sum = 0;
    if (__builtin_add_overflow(a, b, &sum))
        return std::nullopt;
    return sum;
}

std::optional<std::int64_t> productOf(std::int64_t a, std::int64_t b)
{
    std::int64_t product = 0;
    if (__builtin_mul_overflow(a, b, &product))
        return std::nullopt;
    return product;
}

std::optional<std::int64_t> shareOf(std::int64_t amount, std::int64_t numerator, std::int64_t denominator)
{
    const std::optional<std::int64_t> product = productOf(amount, numerator);
    if (!product || denominator <= 0)
        return std::nullopt;
    const std::int64_t whole = *product / denominator;
    const std::int64_t rest = *product % denominator; // of the product's sign
    const std::int64_t size = rest < 0 ? -rest : rest;
    if (size < denominator - size)
        return whole;
    return *product < 0 ? whole - 1 : whole + 1;
}

std::string decimalText(std::int64_t steps, int decimals, Grouping group, bool shorten)
{
    const bool negative = steps < 0;
    // The most negative number has no positive one of its size.
    std::uint64_t size = negative ? 0 - static_cast<std::uint64_t>(steps) : static_cast<std::uint64_t>(steps);
    std::string behind;
    for (int i = 0; i < decimals; ++i, size /= 10)
        behind.insert(behind.begin(), static_cast<char>('0' + size % 10));
    while (shorten && !behind.empty() && behind.back() == '0')
        behind.pop_back();
    const std::string digits = std::to_string(size);
    std::string text = negative ? "-" : "";
    for (std::size_t i = 0; i < digits.size(); ++i) {
        if (group == Grouping::thousands && i > 0 && (digits.size() - i) % 3 == 0)
            text += thin_space;
        text += digits[i];
    }
    return behind.empty() ? text : text + '.' + behind;
}

std::optional<std::int64_t> readDecimal(std::string_view text, int decimals, DecimalMark mark,
                                        std::string* problem)
{
    text = trimmed(text);
    const bool negative = !text.empty() && text.front() == '-';
    if (negative)
        text.remove_prefix(1);
    const std::optional<Digits> read = digitsOf(text, mark);
    if (!read || decimals < 0 || decimals > most_decimals)
        return refused(problem, "not a number such as 1250 or 12.5, without a sign for thousands");
    if (read->behind > decimals)
        return refused(problem, decimals == 0
                                    ? "a whole number is wanted here"
                                    : "at most " + std::to_string(decimals) + " decimals are wanted here");
    std::int64_t steps = 0;
    const std::string digits =
        read->digits + std::string(static_cast<std::size_t>(decimals - read->behind), '0');
    for (const char c : digits) {
        const std::optional<std::int64_t> tenfold = productOf(steps, 10);
        const std::optional<std::int64_t> next = tenfold ? sumOf(*tenfold, c - '0') : std::nullopt;
        if (!next)
            return refused(problem, "too large a number");
        steps = *next;
    }
    return negative ? -steps : steps;
}

std::string moneyText(std::int64_t minor, const Currency& currency)
{
    std::string amount = decimalText(minor, currency.minor_digits, Grouping::thousands);
    if (!currency.symbol.empty()) {
        const bool negative = amount.front() == '-';
        return (negative ? "-" : "") + currency.symbol + amount.substr(negative ? 1 : 0);
    }
    return currency.code.empty() ? amount : amount + "\xC2\xA0" + currency.code;
}

} // namespace siphonwright
