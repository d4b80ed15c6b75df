#pragma once

#include "core/sketch/format/report.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>

/// What the format says about one member: its key, its meaning and what it may hold.
namespace siphonwright {

struct Field {
    std::string_view name;
    std::string_view meaning;
    bool is_needed = false;
    double least = 0; ///< of a number; equal to `most` while no range is stated
    double most = 0;
    std::string_view unit{};
    std::size_t fewest_items = 0;
    std::size_t most_items = 1000;
    std::size_t shortest_text = 0; ///< in characters, not bytes
    std::size_t longest_text = 100'000;
    std::array<int, 4> whole_numbers{}; ///< the only ones allowed
    std::size_t whole_count = 0;

    /// A file without this key is refused.
    constexpr Field needed() const
    {
        Field field = *this;
        field.is_needed = true;
        return field;
    }
    constexpr Field within(double from, double to, std::string_view in_unit = {}) const
    {
        Field field = *this;
        field.least = from;
        field.most = to;
        field.unit = in_unit;
        return field;
    }
    constexpr Field items(std::size_t fewest, std::size_t at_most) const
    {
        Field field = *this;
        field.fewest_items = fewest;
        field.most_items = at_most;
        return field;
    }
    constexpr Field text(std::size_t shortest, std::size_t longest) const
    {
        Field field = *this;
        field.shortest_text = shortest;
        field.longest_text = longest;
        return field;
    }
    constexpr Field oneOf(std::initializer_list<int> numbers) const
    {
        Field field = *this;
        field.whole_count = 0;
        for (const int number : numbers)
            field.whole_numbers.at(field.whole_count++) = number;
        return field;
    }
    /// The same limits under another key.
    constexpr Field as(std::string_view other_name) const
    {
        Field field = *this;
        field.name = other_name;
        field.is_needed = false;
        return field;
    }
};

/// What may stand there, in words: "0.5 to 300 mm", "one of 1, 3".
std::string allowedNumber(const Field& field);
std::string allowedWhole(const Field& field);
std::string allowedCount(const Field& field); ///< "a whole number, 0 to 10"
std::string allowedText(const Field& field);
std::string allowedItems(const Field& field);
template <class Words>
std::string allowedWords(const Words& words)
{
    std::string text = "one of ";
    for (const std::string_view word : words)
        text += (text.back() == ' ' ? "\"" : ", \"") + std::string(word) + "\"";
    return text;
}

/// Report a value outside its limits; true if it is within them. Numbers that are not finite never are.
bool judgeNumber(const Field& field, double value, Report& report);
bool judgeWhole(const Field& field, int value, Report& report);
bool judgeCount(const Field& field, std::int64_t value, Report& report);
bool judgeText(const Field& field, std::string_view value, Report& report);
bool judgeItems(const Field& field, std::size_t count, Report& report);

} // namespace siphonwright
