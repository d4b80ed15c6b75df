#include "core/sketch/draw_survey.h"
#include "core/sketch/survey_letters.h"

#include <algorithm>
#include <cmath>

/// What a survey leaves open, in plain sentences.
namespace siphonwright {
namespace {

std::string named(const SurveyLetter& letter)
{
    return std::string(1, letter.letter) + ", " + std::string(letter.what);
}

std::string listed(const std::vector<std::string>& words)
{
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
    return text;
}

void reportPlace(const Survey& survey, const SurveyLetter& letter, SurveyReport& report)
{
    const SurveyPoint point = surveyPoint(survey, letter.letter).value_or(SurveyPoint{});
    std::vector<std::string> missing;
    if (!point.height_mm)
        missing.emplace_back("height");
    if (letter.along && !point.along_mm)
        missing.emplace_back("station");
    if (letter.across && !point.across_mm)
        missing.emplace_back("across");
    if (!missing.empty())
        report.not_measured.push_back({"{a}: {b} not measured.", {}, {named(letter), listed(missing)}});
}

void reportPort(const std::optional<SurveyPort>& measured, const char* name, SurveyReport& report)
{
    const SurveyPort port = measured.value_or(SurveyPort{});
    std::vector<std::string> missing;
    if (!port.kind)
        missing.emplace_back("kind");
    if (port.thread.empty())
        missing.emplace_back("thread");
    if (!port.bore_mm)
        missing.emplace_back("bore");
    if (!port.facing)
        missing.emplace_back("direction");
    if (!missing.empty())
        report.not_measured.push_back({"{a}: {b} not noted.", {}, {name, listed(missing)}});
}

void reportRest(const Survey& survey, SurveyReport& report)
{
    const auto lacks = [&report](bool missing, const char* what) {
        if (missing)
            report.not_measured.push_back({"{a} not noted.", {}, {what}});
    };
    lacks(!survey.thermostat_side, "Place of the engine's thermostat, outlet or inlet:");
    lacks(!survey.supply_V, "Supply voltage:");
    lacks(!survey.glycol || (*survey.glycol != Glycol::none && !survey.glycol_percent),
          "Antifreeze in it now:");
}

struct Origins {
    bool rail = false;
    bool floor = false;
};

Origins originsOf(const Survey& survey)
{
    Origins from;
    for (const SurveyLetter& letter : surveyLetters()) {
        const std::optional<SurveyPoint> point = surveyPoint(survey, letter.letter);
        if (point && point->height_mm)
            (point->from == SurveyFrom::floor ? from.floor : from.rail) = true;
    }
    return from;
}

void reportTaken(const Sketch& sketch, const Survey& survey, SurveyReport& report)
{
    const Origins from = originsOf(survey);
    if (!from.rail && !from.floor)
        return;
    if (!survey.floor_slope_deg)
        report.taken.push_back({"P was not measured: the floor is taken as level.", {}, {}});
    if (!survey.rail_slope_deg)
        report.taken.push_back(
            {"R was not measured: the frame rail is taken to run along the floor.", {}, {}});
    const double mount_deg = sketch.engine ? sketch.engine->mount_angle_deg : 0;
    if (!survey.engine_slope_deg)
        report.taken.push_back(
            {"S was not measured: the engine is taken to stand as drawn, {0} to the floor.",
             {{mount_deg, Unit::degree}},
             {}});
    else if (!survey.floor_slope_deg)
        report.taken.push_back(
            {"The mount angle stays as drawn, {0}: it is S less P.", {{mount_deg, Unit::degree}}, {}});
    if (!from.rail && !survey.rail_over_floor_mm)
        report.taken.push_back(
            {"The drawing's datum is the floor: nothing was measured from the frame rail.", {}, {}});
    if (from.rail && from.floor && !survey.rail_over_floor_mm)
        report.not_measured.push_back(
            {"What was measured from the floor cannot be drawn without L.", {}, {}});
    if (!survey.ride_drop_mm)
        report.not_measured.push_back(
            {"The ground is not drawn: where it lies at lowest ride height needs M.", {}, {}});
}

bool isWhole(const std::optional<SurveyPoint>& point)
{
    return point && point->height_mm && point->along_mm && point->across_mm;
}

void reportPortsApart(const Sketch& sketch, const Survey& survey, SurveyReport& report)
{
    const std::optional<SurveyPoint> c = surveyPoint(survey, 'C');
    const std::optional<SurveyPoint> d = surveyPoint(survey, 'D');
    if (!survey.ports_apart_mm || !isWhole(c) || !isWhole(d))
        return;
    const SurveyAxes axes(survey, sketch);
    const std::optional<Vec3> from = axes.drawn(*c, {});
    const std::optional<Vec3> to = axes.drawn(*d, {});
    if (!from || !to)
        return;
    // What two people with a tape agree on over such a distance: own choice.
    constexpr double agrees_mm = 10;
    const double apart_mm = distance(*from, *to);
    if (std::abs(apart_mm - *survey.ports_apart_mm) > agrees_mm)
        report.disagree.push_back({"By C and D the ports are {0} apart, by N {1}: measure again.",
                                   {{apart_mm, Unit::mm}, {*survey.ports_apart_mm, Unit::mm}},
                                   {}});
}

/// What has to lie over what, measured from the same.
void reportOrder(const Survey& survey, SurveyReport& report)
{
    constexpr std::pair<char, char> order[] = {{'A', 'B'}, {'G', 'H'}, {'H', 'J'}};
    for (const auto& [lower, upper] : order) {
        const std::optional<SurveyPoint> low = surveyPoint(survey, lower);
        const std::optional<SurveyPoint> high = surveyPoint(survey, upper);
        if (!low || !high || !low->height_mm || !high->height_mm || low->from != high->from ||
            *low->height_mm < *high->height_mm)
            continue;
        report.disagree.push_back(
            {"{a} is not under {b}: measure again.", {}, {std::string(1, lower), std::string(1, upper)}});
    }
}

} // namespace

SurveyReport reportOn(const Sketch& sketch)
{
    SurveyReport report;
    const Survey survey = sketch.survey.value_or(Survey{});
    for (const SurveyLetter& letter : surveyLetters()) {
        if (letter.isPoint())
            reportPlace(survey, letter, report);
        else if (letter.letter == 'K' && !survey.block_length_mm)
            report.not_measured.push_back({"{a} not measured.", {}, {named(letter)}});
    }
    reportPort(survey.supply_port, "Supply port", report);
    reportPort(survey.return_port, "Return port", report);
    reportRest(survey, report);
    reportTaken(sketch, survey, report);
    reportPortsApart(sketch, survey, report);
    reportOrder(survey, report);
    return report;
}

} // namespace siphonwright
