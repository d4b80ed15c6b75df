#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"
#include "core/sketch/format/json_text.h"

#include <map>
#include <string>
#include <string_view>

namespace siphonwright {

namespace {

/// Holds every value against its description.
class Checker {
public:
    explicit Checker(Report& report) : report_(report) {}
    void object(std::string_view /*name*/, std::string_view /*meaning*/) {}

    template <class M>
    void operator()(const Field& field, const M& member)
    {
        const Report::Step step(report_, field.name);
        value(field, member);
    }

private:
    void value(const Field& /*field*/, bool /*truth*/) {}
    void value(const Field& field, int number) { judgeWhole(field, number, report_); }
    void value(const Field& field, std::int64_t number) { judgeCount(field, number, report_); }
    void value(const Field& field, double number) { judgeNumber(field, number, report_); }
    void value(const Field& field, const std::string& text) { judgeText(field, text, report_); }

    template <Word E>
    void value(const Field& /*field*/, E word)
    {
        if (wordFor(word).empty())
            report_.add("a choice that does not exist", allowedWords(Words<E>::list));
    }

    template <class T>
    void value(const Field& field, const std::optional<T>& present)
    {
        if (present)
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
        if (!judgeItems(field, list.size(), report_))
            return;
        for (std::size_t i = 0; i < list.size(); ++i) {
            const Report::Step step(report_, i);
            value(field, list[i]);
        }
    }

    template <class T>
    void value(const Field& field, const Fact<T>& fact)
    {
        describeFact(*this, field, fact);
    }

    template <class T>
    requires std::is_class_v<T>
    void value(const Field& /*field*/, const T& part) { describe(*this, part); }

    Report& report_;
};

/// An id names one thing in the whole sketch, whatever its kind.
class Ids {
public:
    explicit Ids(Report& report) : report_(report) {}

    void add(const Id& id, std::string_view list, std::size_t index)
    {
        const std::string path = pointerStep(list) + pointerStep(index) + "/id";
        const auto [at, fresh] = first_.emplace(id, path);
        if (!fresh)
            report_.addAt(path, inQuotes(id) + ", which " + at->second + " has too", "an id of its own");
    }

private:
    Report& report_;
    std::map<Id, std::string> first_;
};

void checkIds(const Sketch& sketch, Report& report)
{
    Ids ids(report);
    for (std::size_t i = 0; i < sketch.ports.size(); ++i)
        ids.add(sketch.ports[i].id, "ports", i);
    for (std::size_t i = 0; i < sketch.heaters.size(); ++i)
        ids.add(sketch.heaters[i].id, "heaters", i);
    for (std::size_t i = 0; i < sketch.hoses.size(); ++i)
        ids.add(sketch.hoses[i]->id, "hoses", i);
    for (std::size_t i = 0; i < sketch.areas.size(); ++i)
        ids.add(sketch.areas[i]->id, "areas", i);
    for (std::size_t i = 0; i < sketch.dimensions.size(); ++i)
        ids.add(sketch.dimensions[i].id, "dimensions", i);
}

void checkEnd(const Sketch& sketch, const HoseEnd& end, const std::string& path, Report& report)
{
    if (!end.port.empty() && !end.heater.empty())
        report.addAt(path, "an end that is on a port and on a heater", "a port, a heater, or neither");
    if (!end.port.empty() && sketch.port(end.port) == nullptr)
        report.addAt(path + "/port", inQuotes(end.port), "the id of a port of this sketch");
    if (!end.heater.empty() && sketch.heater(end.heater) == nullptr)
        report.addAt(path + "/heater", inQuotes(end.heater), "the id of a heater of this sketch");
}

void checkTotal(std::size_t count, std::size_t most, std::string_view list, std::string_view of,
                Report& report)
{
    if (count <= most)
        return;
    report.addAt(pointerStep(list), jsonNumber(static_cast<double>(count)) + " " + std::string(of),
                 "at most " + jsonNumber(static_cast<double>(most)));
}

void checkTotals(const Sketch& sketch, Report& report)
{
    std::size_t points = 0;
    for (const Shared<Hose>& hose : sketch.hoses)
        points += hose->points.size();
    std::size_t corners = 0;
    for (const Shared<Area>& area : sketch.areas)
        corners += area->outline.size();
    checkTotal(points, most_route_points, "hoses", "corners in all hoses together", report);
    checkTotal(corners, most_area_corners, "areas", "corners in all outlines together", report);
}

} // namespace

Problems problemsIn(const Sketch& sketch)
{
    Report report;
    Checker checker(report);
    describe(checker, sketch);
    checkIds(sketch, report);
    for (std::size_t i = 0; i < sketch.hoses.size(); ++i) {
        const std::string path = pointerStep("hoses") + pointerStep(i);
        checkEnd(sketch, sketch.hoses[i]->from, path + "/from", report);
        checkEnd(sketch, sketch.hoses[i]->to, path + "/to", report);
    }
    checkTotals(sketch, report);
    return report.take();
}

} // namespace siphonwright
