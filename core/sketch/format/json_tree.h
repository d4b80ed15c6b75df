#pragma once

#include "core/sketch/format/report.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// JSON text as a tree. It lives only inside the reader.
namespace siphonwright {

struct JsonMember;
struct JsonNode;
using JsonList = std::vector<JsonNode>;
using JsonObject = std::vector<JsonMember>;

struct JsonNode {
    std::variant<std::monostate, bool, double, std::string, JsonList, JsonObject> value;
};

struct JsonMember {
    std::string key;
    JsonNode node;
};

constexpr std::size_t deepest_nesting = 64;
constexpr std::size_t longest_list = 5000; ///< no list of the format is longer
constexpr std::size_t most_keys = 200;     ///< no object of the format has more
/// Bounds the memory a hostile file can take. A written sketch spends over 4 bytes on each value, so none
/// below largest_file_bytes comes near it.
constexpr std::size_t most_values = 8'000'000;

/// Build the tree. False, and at least one problem, when the text is not JSON within these bounds. Keys that
/// stand twice in an object are reported too; the first stays.
bool parseJson(std::string_view text, JsonNode& root, Report& report);

/// "line 3, column 7" of a byte, both counted from 1, columns in characters.
std::string lineAndColumn(std::string_view text, std::size_t byte);

} // namespace siphonwright
