#include "core/sketch/format/field.h"

#include "core/sketch/format/json_text.h"
#include "core/sketch/format/utf8.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

std::string allowedNumber(const Field& field)
{
    std::string text = jsonNumber(field.least) + " to " + jsonNumber(field.most);
    if (!field.unit.empty())
        text += " " + std::string(field.unit);
    return text;
}

std::string allowedWhole(const Field& field)
{
    std::string text = "one of ";
    for (std::size_t i = 0; i < field.whole_count; ++i)
        text += (i == 0 ? "" : ", ") + jsonNumber(field.whole_numbers.at(i));
    return text;
}

std::string allowedCount(const Field& field)
{
    return "a whole number, " + allowedNumber(field);
}

std::string allowedText(const Field& field)
{
    return "text of " + jsonNumber(static_cast<double>(field.shortest_text)) + " to " +
           jsonNumber(static_cast<double>(field.longest_text)) + " characters";
}

std::string allowedItems(const Field& field)
{
    return "a list of " + jsonNumber(static_cast<double>(field.fewest_items)) + " to " +
           jsonNumber(static_cast<double>(field.most_items)) + " items";
}

bool judgeNumber(const Field& field, double value, Report& report)
{
    if (std::isfinite(value) && value >= field.least && value <= field.most)
        return true;
    report.add(std::isfinite(value) ? jsonNumber(value) : "a number that is not finite",
               allowedNumber(field));
    return false;
}

bool judgeWhole(const Field& field, int value, Report& report)
{
    const auto end = field.whole_numbers.begin() + static_cast<std::ptrdiff_t>(field.whole_count);
    if (std::find(field.whole_numbers.begin(), end, value) != end)
        return true;
    report.add(jsonNumber(value), allowedWhole(field));
    return false;
}

bool judgeCount(const Field& field, std::int64_t value, Report& report)
{
    // The limits are whole and under 2^53, so they are exact in either type.
    if (value >= static_cast<std::int64_t>(field.least) && value <= static_cast<std::int64_t>(field.most))
        return true;
    report.add(std::to_string(value), allowedCount(field));
    return false;
}

bool judgeText(const Field& field, std::string_view value, Report& report)
{
    if (firstNotUtf8(value) != value.size()) {
        report.add("text that is not UTF-8", "UTF-8 text");
        return false;
    }
    const std::size_t length = characterCount(value);
    if (length >= field.shortest_text && length <= field.longest_text)
        return true;
    report.add(length == 0 ? "empty text"
                           : "text of " + jsonNumber(static_cast<double>(length)) + " characters",
               allowedText(field));
    return false;
}

bool judgeItems(const Field& field, std::size_t count, Report& report)
{
    if (count >= field.fewest_items && count <= field.most_items)
        return true;
    report.add("a list of " + jsonNumber(static_cast<double>(count)), allowedItems(field));
    return false;
}

} // namespace siphonwright
