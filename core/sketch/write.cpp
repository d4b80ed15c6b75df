#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"
#include "core/sketch/format/json_text.h"

#include <type_traits>

namespace siphonwright {

namespace {

/// Short objects stand in one line, so that a hose's points read as a table.
template <class T>
constexpr auto shape_of =
    std::is_same_v<T, Vec2> || std::is_same_v<T, Vec3> || std::is_same_v<T, Direction> || IsFact<T>::value
        ? JsonText::Shape::line
        : JsonText::Shape::block;

/// What reads back the same when its key is left out.
template <class T>
bool leftOut(const T& /*value*/)
{
    return false;
}
bool leftOut(const std::string& text)
{
    return text.empty();
}
template <class T>
bool leftOut(const std::vector<T>& list)
{
    return list.empty();
}
template <class T>
bool leftOut(const std::optional<T>& value)
{
    return !value.has_value();
}
/// A fact not entered; a source already chosen for it is kept.
template <class T>
bool leftOut(const Fact<T>& fact)
{
    return fact == Fact<T>{};
}
/// Plans of which nothing is entered: files made before there were any stay as they are.
bool leftOut(const Supply& supply)
{
    return supply == Supply{};
}
bool leftOut(const WaterQuality& water)
{
    return water == WaterQuality{};
}
bool leftOut(const CoolantPlan& plan)
{
    return plan == CoolantPlan{};
}
/// A checklist nobody has begun.
bool leftOut(const Checklist& checklist)
{
    return checklist == Checklist{};
}

class Writer {
public:
    void object(std::string_view /*name*/, std::string_view /*meaning*/) {}

    template <class M>
    void operator()(const Field& field, const M& member)
    {
        if (leftOut(member))
            return;
        json_.key(field.name);
        value(field, member);
    }

    std::string sketch(const Sketch& sketch)
    {
        json_.beginObject();
        json_.key("format");
        json_.string(format_name);
        json_.key("version");
        json_.number(format_version);
        describe(*this, sketch);
        json_.endObject();
        return json_.take();
    }

private:
    void value(const Field& /*field*/, bool truth) { json_.boolean(truth); }
    void value(const Field& /*field*/, int number) { json_.number(number); }
    void value(const Field& /*field*/, std::int64_t number) { json_.number(static_cast<double>(number)); }
    void value(const Field& /*field*/, double number) { json_.number(number); }
    void value(const Field& /*field*/, const std::string& text) { json_.string(text); }

    template <Word E>
    void value(const Field& /*field*/, E word)
    {
        json_.string(wordFor(word));
    }

    template <class T>
    void value(const Field& field, const std::optional<T>& present)
    {
        value(field, *present);
    }

    template <class T>
    void value(const Field& field, const Shared<T>& shared)
    {
        value(field, *shared);
    }

    template <class T>
    void value(const Field& field, const std::vector<T>& list)
    {
        json_.beginList(std::is_arithmetic_v<T> ? JsonText::Shape::line : JsonText::Shape::block);
        for (const T& item : list)
            value(field, item);
        json_.endList();
    }

    template <class T>
    void value(const Field& field, const Fact<T>& fact)
    {
        json_.beginObject(shape_of<Fact<T>>);
        describeFact(*this, field, fact);
        json_.endObject();
    }

    template <class T>
    requires std::is_class_v<T>
    void value(const Field& /*field*/, const T& part)
    {
        json_.beginObject(shape_of<T>);
        describe(*this, part);
        json_.endObject();
    }

    JsonText json_;
};

} // namespace

std::variant<std::string, Problems> writeSketch(const Sketch& sketch)
{
    Problems problems = problemsIn(sketch);
    if (!problems.empty())
        return problems;
    std::string text = Writer().sketch(sketch);
    if (text.size() > largest_file_bytes)
        return Problems{
            Problem{{},
                    "a sketch of " + jsonNumber(static_cast<double>(text.size() >> 20U)) + " MiB",
                    "at most " + jsonNumber(largest_file_bytes >> 20U) + " MiB; a smaller photo may help"}};
    return text;
}

} // namespace siphonwright
