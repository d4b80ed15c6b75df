#include "core/sketch/format/json_tree.h"

#include "core/sketch/format/json_text.h"
#include "core/sketch/format/utf8.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <deque>

namespace siphonwright {

namespace {

std::string counted(std::size_t count)
{
    return jsonNumber(static_cast<double>(count));
}

/// The whole character that a byte belongs to.
std::string_view characterAt(std::string_view text, std::size_t byte)
{
    const auto is_tail = [text](std::size_t at) {
        return (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
    };
    std::size_t end = byte + 1;
    while (end < text.size() && is_tail(end))
        ++end;
    while (byte > 0 && is_tail(byte))
        --byte;
    return text.substr(byte, end - byte);
}

/// The word, number or string that a byte stands in or ends: "NaN", "-Infinity", "1e999"; else its character.
std::string_view wordAt(std::string_view text, std::size_t byte)
{
    const auto belongs = [](char c) {
        return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == '+' || c == '.';
    };
    if (byte >= text.size())
        byte = text.size();
    else if (text[byte] == '"' && byte > 0 && text.rfind('"', byte - 1) != std::string_view::npos)
        return text.substr(text.rfind('"', byte - 1), byte + 1 - text.rfind('"', byte - 1));
    else if (!belongs(text[byte]))
        return characterAt(text, byte);
    std::size_t from = byte;
    while (from > 0 && belongs(text[from - 1]))
        --from;
    std::size_t to = byte;
    while (to < text.size() && belongs(text[to]))
        ++to;
    return text.substr(from, to - from);
}

bool isNotFinite(std::string word)
{
    std::transform(word.begin(), word.end(), word.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    word.erase(0, word.find_first_not_of("+-"));
    return word == "nan" || word == "inf" || word == "infinity";
}

/// What the parser says it expected, without its own error numbers.
std::string expectedBy(std::string_view message)
{
    constexpr std::string_view mark = "expected ";
    const std::size_t at = message.rfind("; expected ");
    return at == std::string_view::npos ? "well-formed JSON"
                                        : std::string(message.substr(at + 2 + mark.size()));
}

/// Takes the parser's events and builds the tree, so that keys given twice are still seen.
class Builder : public nlohmann::json_sax<nlohmann::json> {
public:
    Builder(std::string_view text, JsonNode& root, Report& report) : text_(text), root_(root), report_(report)
    {}

    bool null() override { return put(JsonNode{}) != nullptr; }
    bool boolean(bool value) override { return put(JsonNode{value}) != nullptr; }
    bool number_integer(number_integer_t value) override { return number(static_cast<double>(value)); }
    bool number_unsigned(number_unsigned_t value) override { return number(static_cast<double>(value)); }
    bool number_float(number_float_t value, const string_t& /*as_written*/) override { return number(value); }
    bool string(string_t& value) override { return put(JsonNode{std::move(value)}) != nullptr; }
    bool binary(binary_t& /*value*/) override { return false; }
    bool start_object(std::size_t /*size*/) override { return open(JsonNode{JsonObject{}}); }
    bool start_array(std::size_t /*size*/) override { return open(JsonNode{JsonList{}}); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override;
    bool parse_error(std::size_t position, const std::string& last_token,
                     const nlohmann::detail::exception& error) override;

private:
    struct Level {
        JsonNode* node;
        std::string key;           ///< of the value that comes next, in an object
        bool given_before = false; ///< that key has a value already
    };

    bool number(double value) { return put(JsonNode{value}) != nullptr; }
    JsonNode* put(JsonNode node);
    bool open(JsonNode node);
    bool close();
    std::string path() const;
    bool refuse(std::string found, std::string allowed);

    std::string_view text_;
    JsonNode& root_;
    Report& report_;
    std::vector<Level> levels_;
    std::deque<JsonNode> dropped_; ///< take the values of keys that were given before; they may be deep
    std::size_t values_ = 0;
};

/// Pointer to the value that comes next.
std::string Builder::path() const
{
    std::string path;
    for (std::size_t i = 0; i < levels_.size(); ++i) {
        const auto* list = std::get_if<JsonList>(&levels_[i].node->value);
        if (list == nullptr)
            path += pointerStep(levels_[i].key);
        else
            path += pointerStep(i + 1 == levels_.size() ? list->size() : list->size() - 1);
    }
    return path;
}

bool Builder::refuse(std::string found, std::string allowed)
{
    report_.addAt(path(), std::move(found), std::move(allowed));
    return false;
}

JsonNode* Builder::put(JsonNode node)
{
    if (++values_ > most_values) {
        refuse("more than " + counted(most_values) + " values in one file", "a sketch of fewer");
        return nullptr;
    }
    if (levels_.empty()) {
        root_ = std::move(node);
        return &root_;
    }
    Level& level = levels_.back();
    if (auto* list = std::get_if<JsonList>(&level.node->value)) {
        if (list->size() == longest_list) {
            refuse("a list of more than " + counted(longest_list) + " items",
                   "a list of at most " + counted(longest_list));
            return nullptr;
        }
        list->push_back(std::move(node));
        return &list->back();
    }
    if (level.given_before) {
        dropped_.push_back(std::move(node));
        return &dropped_.back();
    }
    auto& object = std::get<JsonObject>(level.node->value);
    object.push_back(JsonMember{level.key, std::move(node)});
    return &object.back().node;
}

bool Builder::open(JsonNode node)
{
    if (levels_.size() == deepest_nesting)
        return refuse("more than " + counted(deepest_nesting) + " levels of nesting",
                      "at most " + counted(deepest_nesting));
    JsonNode* const placed = put(std::move(node));
    if (placed == nullptr)
        return false;
    levels_.push_back(Level{placed, {}, false});
    return true;
}

bool Builder::close()
{
    levels_.pop_back();
    return true;
}

bool Builder::key(string_t& name)
{
    Level& level = levels_.back();
    const auto& object = std::get<JsonObject>(level.node->value);
    level.key = std::move(name);
    level.given_before = std::any_of(object.begin(), object.end(),
                                     [&level](const JsonMember& member) { return member.key == level.key; });
    if (level.given_before)
        report_.addAt(path(), "a key that stands here twice", "each key once");
    else if (object.size() == most_keys)
        return refuse("more than " + counted(most_keys) + " keys in one object",
                      "at most " + counted(most_keys));
    return true;
}

bool Builder::parse_error(std::size_t position, const std::string& /*last_token*/,
                          const nlohmann::detail::exception& error)
{
    const bool at_end = position > text_.size();
    const std::string_view word = wordAt(text_, position == 0 ? 0 : position - 1);
    const std::string place =
        lineAndColumn(text_, static_cast<std::size_t>(std::distance(text_.data(), word.data())));
    constexpr int number_overflow = 406; // the parser's own number for a literal past the largest double
    if (isNotFinite(std::string(word)) || error.id == number_overflow)
        return refuse(std::string(word.substr(0, 40)) + " (" + place + ")", "a finite number");
    if (at_end)
        report_.addAt(lineAndColumn(text_, text_.size()), "the end of the file",
                      "the rest of the sketch: the file is cut short");
    else
        report_.addAt(place, inQuotes(word), expectedBy(error.what()));
    return false;
}

} // namespace

std::string lineAndColumn(std::string_view text, std::size_t byte)
{
    const std::string_view before = text.substr(0, byte);
    const auto lines = static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
    const std::size_t line_start = lines == 0 ? 0 : before.rfind('\n') + 1;
    return "line " + counted(lines + 1) + ", column " +
           counted(characterCount(before.substr(line_start)) + 1);
}

bool parseJson(std::string_view text, JsonNode& root, Report& report)
{
    Builder builder(text, root, report);
    return nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
}

} // namespace siphonwright
