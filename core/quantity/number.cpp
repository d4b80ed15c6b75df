#include "core/quantity/number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool isAscii(char c)
{
    return static_cast<unsigned char>(c) < 0x80;
}

std::size_t digitsAt(std::string_view text, std::size_t from)
{
    std::size_t n = 0;
    while (from + n < text.size() && isDigit(text[from + n]))
        ++n;
    return n;
}

std::optional<double> decimalValue(std::string_view digits, std::string& problem)
{
    double value = 0;
    const auto result =
        std::from_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed);
    if (result.ec == std::errc::result_out_of_range || !std::isfinite(value)) {
        problem = "The number is too large or too small.";
        return std::nullopt;
    }
    if (result.ec != std::errc() || result.ptr != digits.data() + digits.size()) {
        problem = "“" + std::string(digits) + "” is not a number.";
        return std::nullopt;
    }
    return value;
}

/// Turn a run of digits, points and commas into one with a decimal point, unless it can be read in two ways.
std::optional<std::string> withDecimalPoint(std::string_view run, std::string& problem)
{
    const auto commas = std::count(run.begin(), run.end(), ',');
    const auto points = std::count(run.begin(), run.end(), '.');
    const std::string quoted = "“" + std::string(run) + "”";
    if (commas > 0 && points > 0) {
        problem = quoted + " has a comma and a point: type thousands without a separator, as in 1234.5.";
        return std::nullopt;
    }
    if (commas + points > 1) {
        problem = quoted + " has more than one decimal sign: type thousands without a separator.";
        return std::nullopt;
    }
    std::string text(run);
    const std::size_t comma = run.find(',');
    if (comma == std::string_view::npos)
        return text;
    const std::string_view before = run.substr(0, comma);
    const std::string_view after = run.substr(comma + 1);
    const bool grouped = after.size() == 3 && !before.empty() && before.size() <= 3 && before[0] != '0';
    if (grouped) {
        const std::string left(before);
        const std::string right(after);
        problem = quoted + " could be " + left + right + " or " + left + "." + right +
                  ": type one of these, with a point for decimals and nothing between thousands.";
        return std::nullopt;
    }
    text[comma] = '.';
    return text;
}

/// Take "a/b" off the front.
std::optional<double> takeFraction(std::string_view& text, std::string& problem)
{
    const std::size_t top = digitsAt(text, 0);
    const std::size_t bottom = digitsAt(text, top + 1);
    const auto numerator = decimalValue(text.substr(0, top), problem);
    const auto denominator = numerator ? decimalValue(text.substr(top + 1, bottom), problem) : std::nullopt;
    if (!denominator)
        return std::nullopt;
    if (!(*denominator > 0)) {
        problem = "A fraction cannot have 0 under the line.";
        return std::nullopt;
    }
    text.remove_prefix(top + 1 + bottom);
    return *numerator / *denominator;
}

bool fractionStarts(std::string_view text)
{
    const std::size_t top = digitsAt(text, 0);
    return top > 0 && top < text.size() && text[top] == '/' && digitsAt(text, top + 1) > 0;
}

/// The fraction of a mixed number: after blanks, or after a hyphen as in 1-1/8.
std::optional<std::string_view> fractionAfterWhole(std::string_view text)
{
    const bool hyphen = !text.empty() && text[0] == '-';
    const bool blank = !text.empty() && text[0] == ' ';
    if (!hyphen && !blank)
        return std::nullopt;
    text.remove_prefix(1);
    skipBlanks(text);
    if (!fractionStarts(text))
        return std::nullopt;
    return text;
}

} // namespace

std::string plainText(std::string_view typed)
{
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 19> meanings = {{
        {"−", "-"},    {"′", "'"},    {"’", "'"},    {"″", "\""},     {"”", "\""},
        {"°", "deg"},  {"º", "deg"},  {"³", "3"},    {"\u00a0", " "}, {"\u202f", " "},
        {"½", " 1/2"}, {"¼", " 1/4"}, {"¾", " 3/4"}, {"⅛", " 1/8"},   {"⅜", " 3/8"},
        {"⅝", " 5/8"}, {"⅞", " 7/8"}, {"⁄", "/"},    {"\t", " "},
    }};
    std::string plain;
    while (!typed.empty()) {
        const char c = typed.front();
        if (isAscii(c) && c != '\t') {
            plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            typed.remove_prefix(1);
            continue;
        }
        const auto* const known = std::find_if(meanings.begin(), meanings.end(), [&](const auto& meaning) {
            return typed.substr(0, meaning.first.size()) == meaning.first;
        });
        if (known != meanings.end()) {
            plain += known->second;
            typed.remove_prefix(known->first.size());
            continue;
        }
        plain += c;
        typed.remove_prefix(1);
    }
    const std::size_t first = plain.find_first_not_of(' ');
    if (first == std::string::npos)
        return {};
    return plain.substr(first, plain.find_last_not_of(' ') - first + 1);
}

void skipBlanks(std::string_view& text)
{
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
}

std::optional<double> takeNumber(std::string_view& text, std::string& problem)
{
    if (fractionStarts(text))
        return takeFraction(text, problem);
    std::size_t n = 0;
    while (n < text.size() && (isDigit(text[n]) || text[n] == '.' || text[n] == ','))
        ++n;
    const std::string_view run = text.substr(0, n);
    if (std::none_of(run.begin(), run.end(), isDigit)) {
        problem = "There is no number at “" + std::string(text) + "”.";
        return std::nullopt;
    }
    const auto decimal = withDecimalPoint(run, problem);
    const auto value = decimal ? decimalValue(*decimal, problem) : std::nullopt;
    if (!value)
        return std::nullopt;
    text.remove_prefix(n);
    const auto rest = fractionAfterWhole(text);
    if (!rest || digitsAt(run, 0) != run.size())
        return value;
    text = *rest;
    const auto fraction = takeFraction(text, problem);
    if (fraction && !(*fraction < 1)) {
        problem = "The fraction after a whole number must be less than 1, as in 1 1/8.";
        return std::nullopt;
    }
    return fraction ? std::optional<double>(*value + *fraction) : std::nullopt;
}

} // namespace siphonwright
