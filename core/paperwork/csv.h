#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Tables of text after RFC 4180: fields between commas, in quotes where they hold a comma, a quote or a line
/// break, a quote within quotes doubled; lines end in CRLF.
namespace siphonwright {

constexpr std::size_t largest_csv_bytes = std::size_t{4} << 20U;
constexpr std::size_t most_csv_lines = 20'000;
constexpr std::size_t most_csv_columns = 100;
constexpr std::size_t longest_csv_field = 10'000; ///< bytes

struct CsvField {
    std::string text;
    std::size_t line = 1;   ///< where it begins, counted from 1
    std::size_t column = 1; ///< in characters, counted from 1
};
using CsvRow = std::vector<CsvField>;

struct CsvProblem {
    std::size_t line = 1;
    std::size_t column = 1;
    std::string what;
    std::string text() const; ///< "Line 3, column 7: ..."
};

/// Read a whole table, or say what is wrong and give nothing. A byte order mark is passed over, a line may
/// end in LF alone, empty lines at the end are passed over; every row has as many fields as the first.
std::variant<std::vector<CsvRow>, CsvProblem> readCsv(std::string_view text);

/// One line with its CRLF.
std::string csvLine(const std::vector<std::string>& fields);

} // namespace siphonwright
