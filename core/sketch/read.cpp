#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"
#include "core/sketch/format/json_text.h"
#include "core/sketch/format/json_tree.h"
#include "core/sketch/format/utf8.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <new>

namespace siphonwright {

namespace {

std::string counted(std::size_t count)
{
    return jsonNumber(static_cast<double>(count));
}

/// A value of the wrong type, as a message shows it.
std::string shown(const JsonNode& node)
{
    if (const auto* number = std::get_if<double>(&node.value))
        return jsonNumber(*number);
    if (const auto* text = std::get_if<std::string>(&node.value))
        return inQuotes(*text);
    if (const auto* truth = std::get_if<bool>(&node.value))
        return *truth ? "true" : "false";
    if (const auto* list = std::get_if<JsonList>(&node.value))
        return "a list of " + counted(list->size());
    return std::holds_alternative<JsonObject>(node.value) ? "an object" : "null";
}

const JsonNode* find(const JsonObject& object, std::string_view key)
{
    const auto at = std::find_if(object.begin(), object.end(),
                                 [key](const JsonMember& member) { return member.key == key; });
    return at == object.end() ? nullptr : &at->node;
}

bool isAirCooled(std::string word)
{
    std::replace(word.begin(), word.end(), '-', '_');
    std::replace(word.begin(), word.end(), ' ', '_');
    return word == "air_cooled";
}

/// Reads one value of any type the document has; what does not fit is reported and left as it was.
class Reader {
public:
    explicit Reader(Report& report) : report_(report) {}

    void value(const JsonNode& node, const Field& field, bool& into);
    void value(const JsonNode& node, const Field& field, int& into);
    void value(const JsonNode& node, const Field& field, std::int64_t& into);
    void value(const JsonNode& node, const Field& field, double& into);
    void value(const JsonNode& node, const Field& field, std::string& into);
    void value(const JsonNode& node, const Field& field, Arrangement& into);

    template <Word E>
    void value(const JsonNode& node, const Field& field, E& into)
    {
        static_cast<void>(field);
        word(node, into);
    }

    template <class T>
    void value(const JsonNode& node, const Field& field, std::optional<T>& into)
    {
        T fresh{};
        value(node, field, fresh);
        into = std::move(fresh);
    }

    template <class T>
    void value(const JsonNode& node, const Field& field, Shared<T>& into)
    {
        T fresh{};
        value(node, field, fresh);
        into = Shared<T>(std::move(fresh));
    }

    template <class T>
    void value(const JsonNode& node, const Field& field, std::vector<T>& into)
    {
        const auto* list = std::get_if<JsonList>(&node.value);
        if (list == nullptr)
            return report_.add(shown(node), allowedItems(field));
        if (!judgeItems(field, list->size(), report_))
            return;
        into.resize(list->size());
        for (std::size_t i = 0; i < list->size(); ++i) {
            const Report::Step step(report_, i);
            value((*list)[i], field, into[i]);
        }
    }

    template <class T>
    void value(const JsonNode& node, const Field& field, Fact<T>& into)
    {
        members(node, {}, [&field, &into](auto& visit) { describeFact(visit, field, into); });
    }

    template <class T>
    void value(const JsonNode& node, const Field& field, T& into)
    {
        static_cast<void>(field);
        members(node, {}, [&into](auto& visit) { describe(visit, into); });
    }

    void wholeSketch(const JsonNode& node, Sketch& into)
    {
        members(node, {"format", "version"}, [&into](auto& visit) { describe(visit, into); });
    }

private:
    /// Visits the members of an object and remembers which keys were looked for.
    class Members {
    public:
        Members(Reader& reader, const JsonObject& object, std::vector<std::string_view> known)
            : reader_(reader), object_(object), known_(std::move(known))
        {}
        void object(std::string_view /*name*/, std::string_view /*meaning*/) {}

        template <class M>
        void operator()(const Field& field, M& member)
        {
            known_.push_back(field.name);
            const Report::Step step(reader_.report_, field.name);
            if (const JsonNode* node = find(object_, field.name))
                reader_.value(*node, field, member);
            else if (field.is_needed)
                reader_.report_.add("nothing",
                                    "a value, as this key is required (" + std::string(field.meaning) + ")");
        }

        /// Nothing of the file is lost silently: what the format does not know is refused.
        void refuseUnknown() const
        {
            for (const JsonMember& member : object_) {
                if (std::find(known_.begin(), known_.end(), member.key) != known_.end())
                    continue;
                const Report::Step step(reader_.report_, member.key);
                reader_.report_.add("an unknown key", "the keys of the format only");
            }
        }

    private:
        Reader& reader_;
        const JsonObject& object_;
        std::vector<std::string_view> known_;
    };

    template <class Describe>
    void members(const JsonNode& node, std::vector<std::string_view> known, Describe&& describe_into)
    {
        const auto* object = std::get_if<JsonObject>(&node.value);
        if (object == nullptr)
            return report_.add(shown(node), "an object");
        Members visit(*this, *object, std::move(known));
        describe_into(visit);
        visit.refuseUnknown();
    }

    template <class E>
    void word(const JsonNode& node, E& into)
    {
        const auto* text = std::get_if<std::string>(&node.value);
        const auto value = text == nullptr ? std::nullopt : fromWord<E>(*text);
        if (value)
            into = *value;
        else
            report_.add(shown(node), allowedWords(Words<E>::list));
    }

    Report& report_;
};

void Reader::value(const JsonNode& node, const Field& /*field*/, bool& into)
{
    if (const auto* truth = std::get_if<bool>(&node.value))
        into = *truth;
    else
        report_.add(shown(node), "true or false");
}

void Reader::value(const JsonNode& node, const Field& field, int& into)
{
    constexpr double largest_int = 2'147'483'647;
    const auto* number = std::get_if<double>(&node.value);
    if (number == nullptr || std::trunc(*number) != *number || std::abs(*number) > largest_int)
        return report_.add(shown(node), allowedWhole(field));
    if (judgeWhole(field, static_cast<int>(*number), report_))
        into = static_cast<int>(*number);
}

void Reader::value(const JsonNode& node, const Field& field, std::int64_t& into)
{
    constexpr double largest_exact = 9'007'199'254'740'992; // 2^53
    const auto* number = std::get_if<double>(&node.value);
    if (number == nullptr || std::trunc(*number) != *number || std::abs(*number) > largest_exact)
        return report_.add(shown(node), allowedCount(field));
    if (judgeCount(field, static_cast<std::int64_t>(*number), report_))
        into = static_cast<std::int64_t>(*number);
}

void Reader::value(const JsonNode& node, const Field& field, double& into)
{
    const auto* number = std::get_if<double>(&node.value);
    if (number == nullptr)
        return report_.add(shown(node), allowedNumber(field));
    if (judgeNumber(field, *number, report_))
        into = *number;
}

void Reader::value(const JsonNode& node, const Field& field, std::string& into)
{
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr)
        return report_.add(shown(node), allowedText(field));
    if (judgeText(field, *text, report_))
        into = *text;
}

void Reader::value(const JsonNode& node, const Field& /*field*/, Arrangement& into)
{
    const auto* text = std::get_if<std::string>(&node.value);
    if (text != nullptr && isAirCooled(*text))
        report_.add(inQuotes(*text),
                    "a liquid-cooled engine only: an air-cooled engine has no water jacket, so "
                    "a coolant heater cannot be fitted");
    else
        word(node, into);
}

/// Is this a sketch of a version that can be read? If not, nothing else about it is worth saying.
bool checkFormat(const JsonNode& root, Report& report)
{
    const auto* object = std::get_if<JsonObject>(&root.value);
    if (object == nullptr) {
        report.add(shown(root), "a sketch, which is a JSON object");
        return false;
    }
    const JsonNode* format = find(*object, "format");
    const auto* name = format == nullptr ? nullptr : std::get_if<std::string>(&format->value);
    const bool is_ours = name != nullptr && *name == format_name;
    if (!is_ours)
        report.addAt("/format", format == nullptr ? "nothing" : shown(*format),
                     inQuotes(format_name) + ", the mark of a Siphonwright sketch");
    const JsonNode* version = find(*object, "version");
    const auto* number = version == nullptr ? nullptr : std::get_if<double>(&version->value);
    const bool is_read = number != nullptr && *number == format_version;
    if (number != nullptr && *number > format_version)
        report.addAt("/version", "version " + jsonNumber(*number),
                     "up to version " + jsonNumber(format_version) +
                         ": this file comes from a newer Siphonwright than this one");
    else if (!is_read)
        report.addAt("/version", version == nullptr ? "nothing" : shown(*version),
                     "the whole number " + jsonNumber(format_version));
    return is_ours && is_read;
}

/// What can be said about the text before it is taken for JSON.
bool checkText(std::string_view text, Report& report)
{
    if (text.size() > largest_file_bytes)
        report.add("a file of " + counted(text.size() >> 20U) + " MiB",
                   "at most " + counted(largest_file_bytes >> 20U) + " MiB");
    else if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        report.add("nothing: the file is empty", "a sketch");
    else if (const std::size_t bad = firstNotUtf8(text); bad != text.size())
        report.addAt(lineAndColumn(text, bad), "a byte that is not UTF-8 text", "JSON in UTF-8");
    return report.empty();
}

} // namespace

std::variant<Sketch, Problems> readSketch(std::string_view text)
try {
    Report report;
    JsonNode root;
    if (!checkText(text, report) || !parseJson(text, root, report) || !checkFormat(root, report))
        return report.take();
    Sketch sketch;
    Reader(report).wholeSketch(root, sketch);
    Problems problems = report.empty() ? problemsIn(sketch) : report.take();
    if (!problems.empty())
        return problems;
    return sketch;
} catch (const std::bad_alloc&) {
    return Problems{Problem{{}, "more than fits into this computer's memory", "a smaller sketch"}};
}

} // namespace siphonwright
