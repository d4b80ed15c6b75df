#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"
#include "core/sketch/format/json_text.h"

#include <deque>
#include <functional>
#include <set>

namespace siphonwright {

namespace {

/// Asks a struct for its name and nothing else.
class NameOnly {
public:
    void object(std::string_view name, std::string_view /*meaning*/) { name_ = name; }
    template <class M>
    void operator()(const Field& /*field*/, const M& /*member*/)
    {}
    std::string name() const { return std::string(name_); }

private:
    std::string_view name_;
};

/// Visits a struct's members and writes what each may hold. Structs met on the way are referred to by name
/// and defined once, at the end.
class SchemaMaker {
public:
    std::string make();

    void object(std::string_view /*name*/, std::string_view meaning) { meaning_ = meaning; }

    template <class M>
    void operator()(const Field& field, const M& member)
    {
        if (field.is_needed)
            needed_.push_back(field.name);
        json_.key(field.name);
        json_.beginObject(IsFact<M>::value ? JsonText::Shape::block : JsonText::Shape::line);
        text("description",
             std::string(field.meaning) + (field.unit.empty() ? "" : ", " + std::string(field.unit)));
        rules(field, member);
        json_.endObject();
    }

private:
    void rules(const Field& /*field*/, bool /*example*/) { text("type", "boolean"); }
    void rules(const Field& field, int example);
    void rules(const Field& field, std::int64_t example);
    void rules(const Field& field, double example);
    void rules(const Field& field, const std::string& example);

    template <Word E>
    void rules(const Field& /*field*/, E /*example*/)
    {
        words("enum", Words<E>::list);
    }

    template <class T>
    void rules(const Field& field, const std::optional<T>& /*example*/)
    {
        rules(field, T{});
    }

    template <class T>
    void rules(const Field& field, const Shared<T>& /*example*/)
    {
        rules(field, T{});
    }

    template <class T>
    void rules(const Field& field, const std::vector<T>& /*example*/)
    {
        text("type", "array");
        number("minItems", static_cast<double>(field.fewest_items));
        number("maxItems", static_cast<double>(field.most_items));
        json_.key("items");
        json_.beginObject();
        rules(field, T{});
        json_.endObject();
    }

    template <class T>
    void rules(const Field& field, const Fact<T>& example)
    {
        text("type", "object");
        json_.key("properties");
        json_.beginObject();
        describeFact(*this, field, example);
        json_.endObject();
        json_.key("additionalProperties");
        json_.boolean(false);
    }

    template <class T>
    requires std::is_class_v<T>
    void rules(const Field& /*field*/, const T& part)
    {
        NameOnly asked;
        describe(asked, part);
        text("$ref", "#/$defs/" + asked.name());
        if (defined_.insert(asked.name()).second)
            to_define_.emplace_back(asked.name(), [this] { members(T{}); });
    }

    /// The keywords that make an object of these members, in the object being written.
    template <class T>
    void members(const T& part)
    {
        needed_.clear();
        text("type", "object");
        json_.key("properties");
        json_.beginObject();
        if constexpr (std::is_same_v<T, Sketch>)
            formatMembers();
        describe(*this, part);
        json_.endObject();
        if (!needed_.empty())
            words("required", needed_);
        json_.key("additionalProperties");
        json_.boolean(false);
        text("description", meaning_);
    }

    void formatMembers();
    void define();

    void text(std::string_view key, std::string_view value)
    {
        json_.key(key);
        json_.string(value);
    }
    void number(std::string_view key, double value)
    {
        json_.key(key);
        json_.number(value);
    }
    template <class List>
    void words(std::string_view key, const List& list)
    {
        json_.key(key);
        json_.beginList(JsonText::Shape::line);
        for (const std::string_view word : list)
            json_.string(word);
        json_.endList();
    }

    JsonText json_;
    std::string_view meaning_; ///< of the struct being visited
    std::vector<std::string_view> needed_;
    std::set<std::string> defined_;
    std::deque<std::pair<std::string, std::function<void()>>> to_define_;
};

void SchemaMaker::rules(const Field& field, int /*example*/)
{
    json_.key("enum");
    json_.beginList(JsonText::Shape::line);
    for (std::size_t i = 0; i < field.whole_count; ++i)
        json_.number(field.whole_numbers.at(i));
    json_.endList();
}

void SchemaMaker::rules(const Field& field, std::int64_t /*example*/)
{
    text("type", "integer");
    number("minimum", field.least);
    number("maximum", field.most);
}

void SchemaMaker::rules(const Field& field, double /*example*/)
{
    text("type", "number");
    number("minimum", field.least);
    number("maximum", field.most);
}

void SchemaMaker::rules(const Field& field, const std::string& /*example*/)
{
    text("type", "string");
    number("minLength", static_cast<double>(field.shortest_text));
    number("maxLength", static_cast<double>(field.longest_text));
}

void SchemaMaker::formatMembers()
{
    needed_.insert(needed_.end(), {"format", "version"});
    json_.key("format");
    json_.beginObject(JsonText::Shape::line);
    text("const", format_name);
    json_.endObject();
    json_.key("version");
    json_.beginObject(JsonText::Shape::line);
    number("const", format_version);
    json_.endObject();
}

void SchemaMaker::define()
{
    json_.key("$defs");
    json_.beginObject();
    // Taken from the front: a definition may add others at the back.
    while (!to_define_.empty()) {
        const auto [name, write] = std::move(to_define_.front());
        to_define_.pop_front();
        json_.key(name);
        json_.beginObject();
        write();
        json_.endObject();
    }
    json_.endObject();
}

std::string SchemaMaker::make()
{
    json_.beginObject();
    text("$schema", "https://json-schema.org/draft/2020-12/schema");
    text("title", "Siphonwright sketch");
    members(Sketch{});
    define();
    json_.endObject();
    return json_.take();
}

} // namespace

std::string sketchSchema()
{
    return SchemaMaker().make();
}

} // namespace siphonwright
