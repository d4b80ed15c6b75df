#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

constexpr double window_mm = 150;
constexpr double left_out_mm = 75; ///< of the hose at each end: stubs and hose ends are often level
constexpr double step_mm = 5;      ///< between windows inside arcs; on straights the ends of pieces suffice

struct Window {
    double from_mm = 0;
    double to_mm = 0;
    double slope = 0; ///< rise over developed length
};

Window windowAt(const Judge& judge, const Route& route, double from_mm, double to_mm)
{
    const Plumb& plumb = judge.layout.plumb;
    const double rise_mm =
        plumb.height(route.path.line.at(to_mm)) - plumb.height(route.path.line.at(from_mm));
    return {from_mm, to_mm, rise_mm / (to_mm - from_mm)};
}

/// Does a hump or dip that is reported by itself reach into the window?
bool judgedAlready(const Profile& profile, const Window& window)
{
    constexpr double touch_mm = 1e-6;
    const auto reaches = [&](const auto& trap) {
        return trap.from_mm < window.to_mm - touch_mm && trap.to_mm > window.from_mm + touch_mm;
    };
    return std::any_of(profile.high_points.begin(), profile.high_points.end(), reaches) ||
           std::any_of(profile.dips.begin(), profile.dips.end(), reaches);
}

/// Where windows start: the slope of a window turns only where one of its ends passes from piece to piece,
/// but for arcs, where steps of 5 mm stand in.
std::vector<double> windowStarts(const Route& route, double first_mm, double last_mm)
{
    std::vector<double> starts = {first_mm, last_mm};
    const auto add = [&](double s) {
        if (s > first_mm && s < last_mm)
            starts.push_back(s);
    };
    for (const Piece& piece : route.path.line.pieces()) {
        add(piece.s);
        add(piece.s - window_mm);
        if (piece.radius_mm <= 0)
            continue;
        // However long an arc is drawn, it is not looked at in more than a thousand places.
        const int steps = static_cast<int>(std::min(piece.length_mm / step_mm, 1000.0)) + 1;
        for (int i = 1; i < steps; ++i) {
            const double s = piece.s + piece.length_mm * i / steps;
            add(s);
            add(s - window_mm);
        }
    }
    std::sort(starts.begin(), starts.end());
    return starts;
}

void reportSlope(Judge& judge, const ResolvedHose& hose, const Window& worst, double from_mm, double to_mm)
{
    const std::optional<Verdict> found = judge.verdictOn(worst.slope);
    if (!found)
        return;
    const Route& route = *hose;
    const double short_mm =
        (judge.limits.advice.value_or(found->limit) - worst.slope) * (worst.to_mm - worst.from_mm);
    Message text{"{a} rises only {0} over {1}.", {}, {nameOfHose(*route.hose)}};
    const double rise_mm = worst.slope * (worst.to_mm - worst.from_mm);
    const double level = judge.limits.caution.value_or(0);
    text.quantities = {{std::abs(rise_mm), Unit::mm}, {worst.to_mm - worst.from_mm, Unit::mm}};
    if (worst.slope < -level)
        text.pattern = "{a} falls {0} over {1}, where it should rise.";
    else if (worst.slope < level)
        text = {"{a} is level over {0}, where it should rise.",
                {{worst.to_mm - worst.from_mm, Unit::mm}},
                {nameOfHose(*route.hose)}};
    Finding& finding = judge.report(found->severity, refOf(*route.hose), text);
    finding.hose = hose.id();
    finding.along_mm = (worst.from_mm + worst.to_mm) / 2;
    finding.from_mm = from_mm;
    finding.to_mm = to_mm;
    finding.at = route.path.line.at(*finding.along_mm);
    finding.measured = worst.slope;
    finding.limit = found->limit;
    finding.fix = {"Give it at least {0} more rise over {1}.",
                   {{enough(short_mm), Unit::mm}, {worst.to_mm - worst.from_mm, Unit::mm}},
                   {}};
}

/// One finding for each run of windows that follow each other and are all too flat.
void slideWindow(Judge& judge, const ResolvedHose& hose, double first_mm, double last_mm)
{
    std::optional<Window> worst;
    double from_mm = 0;
    double to_mm = 0;
    const auto close = [&] {
        if (worst)
            reportSlope(judge, hose, *worst, from_mm, to_mm);
        worst.reset();
    };
    for (const double start : windowStarts(*hose, first_mm, last_mm)) {
        const Window window = windowAt(judge, *hose, start, start + window_mm);
        if (!judge.verdictOn(window.slope) || judgedAlready(hose.profile, window)) {
            close();
            continue;
        }
        if (!worst)
            from_mm = start;
        to_mm = start + window_mm;
        if (!worst || window.slope < worst->slope)
            worst = window;
    }
    close();
}

/// A stub and the hose next to it may be level, but not fall.
void judgeEnd(Judge& judge, const ResolvedHose& hose, double from_mm, double to_mm)
{
    const Window window = windowAt(judge, *hose, from_mm, to_mm);
    if (window.slope < -judge.limits.caution.value_or(0) && !judgedAlready(hose.profile, window))
        reportSlope(judge, hose, window, from_mm, to_mm);
}

void judgeHose(Judge& judge, const ResolvedHose& hose)
{
    const Route& route = *hose;
    if (route.path.line.empty() || route.length_mm <= 0)
        return;
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    const double first_mm = route.hose_from_mm + left_out_mm;
    const double last_mm = route.hose_to_mm - left_out_mm - window_mm;
    if (last_mm < first_mm) {
        const Window whole = windowAt(judge, route, route.hose_from_mm, route.hose_to_mm);
        const auto covers = [&](const auto& trap) {
            return trap.from_mm <= whole.from_mm && trap.to_mm >= whole.to_mm;
        };
        const Profile& profile = hose.profile;
        if (std::none_of(profile.high_points.begin(), profile.high_points.end(), covers) &&
            std::none_of(profile.dips.begin(), profile.dips.end(), covers))
            reportSlope(judge, hose, whole, whole.from_mm, whole.to_mm);
        return;
    }
    judgeEnd(judge, hose, 0, first_mm);
    slideWindow(judge, hose, first_mm, last_mm);
    judgeEnd(judge, hose, route.hose_to_mm - left_out_mm, route.path.line.length());
}

} // namespace

void returnSlope(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        if (hose.role() == HoseRole::return_)
            judgeHose(judge, hose);
    });
}

} // namespace siphonwright::judges
