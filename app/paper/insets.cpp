#include "app/paper/insets.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/fitting_words.h"
#include "app/paper/set_lines.h"

#include "core/layout/wording.h"

#include <algorithm>
#include <functional>
#include <map>
#include <memory>
#include <utility>

namespace siphonwright::paper {

namespace {

constexpr int hoses_group = 100; // numbers under it are taken by insets that stand alone

/// A hose of a run profile.
struct Run {
    QString name;
    HoseStrip strip;
};

/// Under its profile: the hose's name, and how each straight falls or rises, in order.
QStringList wordsUnder(const Run& run, double width_mm)
{
    QStringList slopes;
    for (const StripSlope& slope : run.strip.slopes)
        slopes << slope.text;
    QStringList lines = drawing::wrapped(run.name, width_mm, small_mm);
    if (!slopes.isEmpty())
        lines += drawing::wrapped(slopes.join(QStringLiteral(", ")), width_mm, small_mm);
    return lines;
}

constexpr double runs_apart_mm = 4;
constexpr double run_line_mm = 1.8 * small_mm; // of the words under a profile

double widthOfEach(const std::vector<Run>& runs, double width_mm)
{
    return (width_mm + runs_apart_mm) / double(runs.size()) - runs_apart_mm;
}

qsizetype linesUnder(const std::vector<Run>& runs, double width_mm)
{
    qsizetype most = 1;
    for (const Run& run : runs)
        most = std::max(most, wordsUnder(run, widthOfEach(runs, width_mm)).size());
    return most;
}

std::pair<double, double> heightsOf(const std::vector<Run>& runs)
{
    double low = 1e12;
    double high = -1e12;
    for (const Run& run : runs)
        for (std::size_t i = 0; i < run.strip.crown_mm.size(); ++i) {
            low = std::min(low, run.strip.invert_mm[i]);
            high = std::max(high, run.strip.crown_mm[i]);
        }
    return {low, high};
}

/// The hoses side by side, to one scale of heights.
void paintRuns(QPainter& painter, const std::vector<Run>& runs, const QRectF& box, UnitSystem units)
{
    const QColor ink = drawing::Palette::paper().ink;
    const double width = widthOfEach(runs, box.width());
    const qsizetype most_lines = linesUnder(runs, box.width());
    const double name_mm = run_line_mm * double(most_lines);
    for (std::size_t i = 0; i < runs.size(); ++i) {
        const double left = box.left() + double(i) * (width + runs_apart_mm);
        StripInk own{left, width, box.top(), small_mm, units};
        own.profile_mm = box.height() - name_mm;
        own.heights_mm = heightsOf(runs);
        paintRunProfile(painter, runs[i].strip, own);
        painter.setPen(QPen(ink, drawing::hairline_mm));
        const double floor = box.bottom() - name_mm + 0.4;
        painter.drawLine(QPointF(left, floor), QPointF(left + width, floor));
        const QStringList words = wordsUnder(runs[i], width);
        for (qsizetype line = 0; line < words.size(); ++line) {
            const double baseline = box.bottom() - 0.5 - run_line_mm * double(most_lines - 1 - line);
            drawing::paintWeightedText(painter, {left, baseline}, words[line], Anchor::left, ink, small_mm,
                                       Weight::regular);
        }
    }
}

/// A hose laid flat: what is said of it, its bar, its marks.
struct FlatHose {
    HoseWords said;
    HoseStrip strip;
    UnitSystem units = UnitSystem::metric;
};

constexpr double letters_mm = 4.5; // A and B beside the bar

SetLines wordsFor(const FlatHose& hose, double width_mm, double lettering_mm)
{
    SetLines lines(width_mm);
    lines.add(hose.said.title, lettering_mm, Weight::strong);
    lines.add(hose.said.cut, lettering_mm, Weight::regular);
    lines.add(hose.said.ends + QLatin1Char(' ') + hose.said.rise, small_mm, Weight::regular);
    return lines;
}

double heightOf(const FlatHose& hose, double width_mm, double lettering_mm)
{
    const double bar = width_mm - 2 * letters_mm;
    return wordsFor(hose, width_mm, lettering_mm).height_mm() + 1.5 + strip_slopes_mm + strip_bar_mm +
           heightOf(labelsUnder(hose.strip, 0, bar, small_mm), small_mm);
}

void paintFlat(QPainter& painter, const FlatHose& hose, const QRectF& box, double lettering_mm)
{
    const SetLines lines = wordsFor(hose, box.width(), lettering_mm);
    lines.paint(painter, box.topLeft());
    const StripInk ink{box.left() + letters_mm, box.width() - 2 * letters_mm,
                       box.top() + lines.height_mm() + 1.5 + strip_slopes_mm, small_mm, hose.units};
    paintStrip(painter, hose.strip, labelsUnder(hose.strip, ink.left, ink.width, small_mm), ink);
}

Inset insetOfHose(FlatHose of)
{
    constexpr double per_label_mm = 1.81 * small_mm;
    Inset inset;
    inset.group = hoses_group;
    inset.least_width_mm = std::max(68.0, per_label_mm * double(of.strip.marks.size()) + 2 * letters_mm);
    const auto hose = std::make_shared<const FlatHose>(std::move(of));
    inset.height_mm = [hose](double width, double lettering) { return heightOf(*hose, width, lettering); };
    inset.paint = [hose](QPainter& painter, const QRectF& box, double lettering) {
        paintFlat(painter, *hose, box, lettering);
    };
    return inset;
}

/// Text takes time to set, and an inset is tried in many places.
std::function<double(double, double)> remembered(std::function<double(double, double)> height_mm)
{
    auto known = std::make_shared<std::map<std::pair<double, double>, double>>();
    return [height_mm, known](double width, double lettering) {
        const auto [at, is_new] = known->try_emplace(std::pair{width, lettering}, 0);
        if (is_new)
            at->second = height_mm(width, lettering);
        return at->second;
    };
}

} // namespace

Inset insetOfRuns(const Job& job, const Layout& layout)
{
    auto runs = std::make_shared<std::vector<Run>>();
    for (const ResolvedHose& hose : layout.hoses)
        runs->push_back({inWords(nameOfHose(*hose->hose)), stripOf(hose, layout.plumb, job.units)});
    constexpr double each_mm = 24;
    constexpr double profile_mm = 18;
    Inset inset;
    inset.heading = tr("Run profile: hose's bore over the datum");
    inset.needed = true;
    inset.least_width_mm = std::max(58.0, each_mm * double(runs->size()));
    inset.height_mm = [runs](double width, double) {
        return profile_mm + run_line_mm * double(linesUnder(*runs, width));
    };
    inset.paint = [runs, units = job.units](QPainter& painter, const QRectF& box, double) {
        paintRuns(painter, *runs, box, units);
    };
    return inset;
}

std::vector<Inset> insetsOfHoses(const Job& job, const Layout& layout)
{
    const QString unit = job.units == UnitSystem::metric ? tr("mm") : tr("inches");
    Inset legend = insetOfLines(
        tr("Hoses laid flat"),
        {tr("Distances are from the cut end at A, in %1; R is the radius of a bend's middle; over a straight "
            "its slope from A to B. Pieces reach to the stops of the parts between them, by the lengths "
            "entered for these. In the run profile the line is the top of the bore, the dashes its bottom. "
            "[3] is item 3 of the parts list. Measure on the vehicle, parts in hand, before you cut.")
             .arg(unit)});
    legend.group = hoses_group;
    std::vector<Inset> insets = {legend};
    for (const ResolvedHose& hose : layout.hoses) {
        HoseStrip strip = stripOf(hose, layout.plumb, job.units);
        HoseWords said = wordsOf(job, hose, strip);
        insets.push_back(insetOfHose({std::move(said), std::move(strip), job.units}));
    }
    return insets;
}

Inset insetOfHeaters(const Job& job, const Layout& layout)
{
    QStringList said;
    const std::size_t count = std::min(job.sketch.heaters.size(), layout.heaters.size());
    for (std::size_t i = 0; i < count; ++i) {
        const HeaterWords heater = wordsOf(job, layout, i);
        said << heater.title + QStringLiteral(". ") + heater.lines.join(QLatin1Char(' '));
    }
    return insetOfLines(tr("Hang the heater"), said + missingOfLoad(job));
}

std::vector<Inset> insetsOf(const Sketch& sketch, const Layout& layout)
{
    if (sketch.hoses.empty() && sketch.heaters.empty())
        return {};
    Job job{sketch, quoteOf(sketch), {}, unitsOf(sketch), Kind::fitting};
    job.work.parts = partsOf(sketch, layout);
    std::vector<Inset> insets = {insetToSign(job)};
    if (!layout.hoses.empty()) {
        insets.push_back(insetOfRuns(job, layout));
        for (Inset& one : insetsOfHoses(job, layout))
            insets.push_back(std::move(one));
        insets.push_back(insetOfEnds(job));
    }
    if (!sketch.heaters.empty()) {
        insets.push_back(insetOfHeaters(job, layout));
        insets.push_back(insetTag(job));
    }
    for (Inset& one : insets)
        one.height_mm = remembered(std::move(one.height_mm));
    for (std::size_t i = 0; i < insets.size(); ++i)
        if (insets[i].group != hoses_group)
            insets[i].group = int(i) < hoses_group ? int(i) : int(i) + hoses_group;
    return insets;
}

} // namespace siphonwright::paper
