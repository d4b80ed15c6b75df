#include "core/analysis/grades.h"

#include "core/checks/faults.h"
#include "core/checks/rules.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <iterator>
#include <map>
#include <string>
#include <tuple>

namespace siphonwright {
namespace {

constexpr double halved_to_percent = 0.01;

/// Filling and circulation take a hundred times as long as the rest, so they are computed only where they are
/// asked for.
enum class Flow { left_out, solved };

/// Findings of the rules that turn, each grade computed once: what is halved for one fault serves the next.
class Turned {
public:
    Turned(const Sketch& sketch, const Layout& level, const Running* on_level, LevelTables* kept = nullptr)
        : sketch_(sketch), level_(level), on_level_(on_level), kept_(kept), assumed_(sketch)
    {}

    const std::vector<Finding>& at(Grade grade, Flow flow)
    {
        const auto [known, is_new] =
            found_.try_emplace({grade.along_percent, grade.across_percent, flow == Flow::solved});
        if (is_new)
            known->second = judged(grade, flow);
        return known->second;
    }

private:
    std::vector<Finding> judged(Grade grade, Flow flow) const
    {
        const Layout tilted = resolve(sketch_, plumbOf(sketch_, grade), &level_);
        if (flow == Flow::left_out)
            return judge(sketch_, tilted, {}, RuleSet::over_grades).findings;
        Running running = runSteady(sketch_, tilted, assumed_, on_level_);
        const Filling filling = fillOf(sketch_, tilted, &running, assumed_, kept_);
        passAir(running, sketch_, tilted, filling);
        Results results;
        results.running = &running;
        results.filling = &filling;
        return judge(sketch_, tilted, results, RuleSet::over_grades).findings;
    }

    const Sketch& sketch_;
    const Layout& level_;
    const Running* on_level_;
    LevelTables* kept_;
    const Assumptions assumed_;
    std::map<std::tuple<double, double, bool>, std::vector<Finding>> found_;
};

/// The severity with which a thing is found in a list; nothing if it is not.
std::optional<Severity> severityIn(const std::vector<Finding>& list, const Finding& thing)
{
    std::optional<Severity> out;
    for (const Finding& finding : list)
        if (sameThing(finding, thing) && (!out || finding.severity > *out))
            out = finding.severity;
    return out;
}

std::optional<Severity> oneLower(Severity severity)
{
    if (severity == Severity::advice)
        return std::nullopt;
    return severity == Severity::stop ? Severity::caution : Severity::advice;
}

/// Put words for a grade before a finding's sentence, and where given the grade its figures are from.
void sayGrade(Finding& finding, Grade from, const std::optional<Grade>& figures)
{
    std::vector<Quantity>& quantities = finding.text.quantities;
    const auto number = [&](double percent) {
        quantities.push_back({std::abs(percent), Unit::percent});
        return "{" + std::to_string(quantities.size() - 1) + "}";
    };
    const auto words = [&](Grade grade) {
        std::string out;
        if (grade.along_percent != 0)
            out = number(grade.along_percent) + (grade.along_percent > 0 ? " nose-up" : " nose-down");
        if (grade.across_percent != 0)
            out += (out.empty() ? "" : " and ") + number(grade.across_percent) +
                   (grade.across_percent > 0 ? " right side up" : " left side up");
        return out;
    };
    std::string lead = (figures ? "Parked from " : "Parked ") + words(from);
    if (figures)
        lead += " on (figures at " + words(*figures) + ")";
    finding.text.pattern = lead + ": " + finding.text.pattern;
    finding.only_on_grade = from;
}

/// A grade and what is found on it.
struct Step {
    Grade grade;
    std::vector<Finding> findings;
};
/// Grades in a straight line outwards from the level.
using Way = std::vector<Step>;

/// Ways out to the envelope, those along one axis first: the words for them are the simplest.
std::vector<Way> waysOut(const Site& site)
{
    const double along = site.envelope_along_percent;
    const double across = site.envelope_across_percent;
    std::vector<Way> ways;
    const auto way = [&ways](std::initializer_list<Grade> grades) {
        Way& added = ways.emplace_back();
        for (const Grade grade : grades)
            if (grade != Grade{})
                added.push_back({grade, {}});
    };
    way({{-along / 2, 0}, {-along, 0}});
    way({{along / 2, 0}, {along, 0}});
    way({{0, -across}});
    way({{0, across}});
    for (const double c : {-across, across})
        for (const double a : {-along, along, -along / 2, along / 2})
            way({{a, c}});
    way({{site.grade_along_percent, site.grade_across_percent}});
    return ways;
}

/// Every thing found on any of the ways, as severe as it gets.
std::vector<Finding> worstOf(const std::vector<Way>& ways)
{
    std::vector<Finding> worst;
    for (const Way& way : ways)
        for (const Step& step : way)
            for (const Finding& finding : step.findings) {
                const auto known = std::find_if(worst.begin(), worst.end(), [&](const Finding& other) {
                    return sameThing(other, finding);
                });
                if (known == worst.end())
                    worst.push_back(finding);
                else if (finding.severity > known->severity)
                    *known = finding;
            }
    return worst;
}

/// Is a thing found so severely in a list?
bool holds(const std::vector<Finding>& list, const Finding& thing)
{
    const std::optional<Severity> found = severityIn(list, thing);
    return found && *found >= thing.severity;
}

/// Lower a finding on a grade by one severity; false if that leaves nothing to say beside those on the level.
bool saysMore(const std::vector<Finding>& on_level, Finding& finding)
{
    const std::optional<Severity> lower = oneLower(finding.severity);
    const std::optional<Severity> before = severityIn(on_level, finding);
    if (!lower || (before && *before >= *lower))
        return false;
    finding.severity = *lower;
    return true;
}

Flow flowFor(const Finding& thing)
{
    return ruleById(thing.rule)->needs == Needs::layout ? Flow::left_out : Flow::solved;
}

/// Where between a grade on which a thing is not found so severely and one on which it is it begins.
Grade firstGrade(Turned& turned, const Finding& thing, Grade without, Grade with, const std::stop_token& stop)
{
    const auto apart = [&] {
        return std::hypot(with.along_percent - without.along_percent,
                          with.across_percent - without.across_percent);
    };
    while (apart() > halved_to_percent && !stop.stop_requested()) {
        const Grade middle{(with.along_percent + without.along_percent) / 2,
                           (with.across_percent + without.across_percent) / 2};
        (holds(turned.at(middle, flowFor(thing)), thing) ? with : without) = middle;
    }
    return with;
}

/// A thing as it is reported: with the figures of the far end of the first way that shows it.
Finding onGrade(Turned& turned, const Finding& thing, const std::vector<Way>& ways,
                const std::stop_token& stop)
{
    const auto shows = [&](const Step& step) { return holds(step.findings, thing); };
    const auto way = std::find_if(ways.begin(), ways.end(),
                                  [&](const Way& one) { return std::any_of(one.begin(), one.end(), shows); });
    const auto first = std::find_if(way->begin(), way->end(), shows);
    const auto last = std::find_if(way->rbegin(), way->rend(), shows);
    Finding out = *std::find_if(last->findings.begin(), last->findings.end(), [&](const Finding& finding) {
        return sameThing(finding, thing) && finding.severity >= thing.severity;
    });
    const Grade without = first == way->begin() ? Grade{} : std::prev(first)->grade;
    sayGrade(out, firstGrade(turned, thing, without, first->grade, stop), last->grade);
    return out;
}

} // namespace

std::vector<Finding> findingsOn(const Sketch& sketch, Grade grade, const Layout& level,
                                const Running* on_level)
{
    Turned turned(sketch, level, on_level);
    std::vector<Finding> out;
    for (Finding finding : turned.at(grade, Flow::solved))
        if (saysMore(turned.at({}, Flow::solved), finding)) {
            sayGrade(finding, grade, std::nullopt);
            out.push_back(std::move(finding));
        }
    return out;
}

std::vector<Finding> findingsOnEnvelope(const Sketch& sketch, const Layout& level,
                                        const std::stop_token& stop, const Running* on_level,
                                        LevelTables* kept)
{
    Turned turned(sketch, level, on_level, kept);
    std::vector<Way> ways = waysOut(sketch.site);
    for (Way& way : ways)
        for (Step& step : way) {
            if (stop.stop_requested())
                return {};
            step.findings = turned.at(step.grade, Flow::solved);
        }
    std::vector<Finding> out;
    for (const Finding& thing : worstOf(ways)) {
        Finding lowered = thing;
        if (!saysMore(turned.at({}, Flow::solved), lowered))
            continue;
        if (stop.stop_requested())
            return {};
        out.push_back(onGrade(turned, thing, ways, stop));
        out.back().severity = lowered.severity;
    }
    return out;
}

std::vector<Finding> warmingAtEnds(const Sketch& sketch, const Layout& level,
                                   const std::vector<GradeRun>& ends, const std::vector<Finding>& on_level)
{
    std::vector<Finding> out;
    for (const GradeRun& end : ends) {
        const Layout tilted = resolve(sketch, plumbOf(sketch, end.grade), &level);
        Results results;
        results.running = &end.running;
        results.filling = &end.filling;
        results.warm_up = &end.warm_up;
        for (Finding& finding : judge(sketch, tilted, results, RuleSet::over_grades).findings) {
            if (ruleById(finding.rule)->needs != Needs::warm_up || !saysMore(on_level, finding) ||
                holds(out, finding))
                continue;
            sayGrade(finding, end.grade, std::nullopt);
            out.push_back(std::move(finding));
        }
    }
    return out;
}

std::optional<SoundGrades> soundGrades(const Sketch& sketch, const Layout& level, const std::stop_token& stop)
{
    Turned turned(sketch, level, nullptr);
    const auto sound = [&](double along_percent) {
        const std::vector<Finding>& found = turned.at({along_percent, 0}, Flow::left_out);
        return std::none_of(found.begin(), found.end(), [](const Finding& finding) {
            return finding.severity > Severity::advice && ruleById(finding.rule)->tilt == Tilt::traps;
        });
    };
    if (!sound(0))
        return std::nullopt;
    constexpr double step_percent = 0.25;
    // Whole steps are counted, so that the grades tried do not depend on how sums round.
    const auto last_sound = [&](double sign, bool& open) {
        constexpr int steps = int(searched_grade_percent / step_percent);
        int step = 1;
        while (step <= steps && !stop.stop_requested() && sound(sign * step * step_percent))
            ++step;
        open = step > steps;
        if (open)
            return sign * searched_grade_percent;
        double with = (step - 1) * step_percent;
        double without = step * step_percent;
        while (without - with > halved_to_percent) {
            const double middle = (with + without) / 2;
            (sound(sign * middle) ? with : without) = middle;
        }
        return sign * with;
    };
    SoundGrades out;
    out.low_percent = last_sound(-1, out.low_open);
    out.high_percent = last_sound(1, out.high_open);
    if (stop.stop_requested())
        return std::nullopt;
    return out;
}

} // namespace siphonwright
