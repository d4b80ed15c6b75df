#include "app/assumptions/assumption_choices.h"
#include "app/drawing/running_words.h"
#include "app/language/in_words.h"
#include "app/language/language.h"
#include "app/language/tr.h"
#include "app/sheet/words.h"

#include "core/analysis/running_text.h"
#include "core/quantity/constants.h"
#include "core/running/loop_figures.h"

#include <algorithm>
#include <cmath>

/// What the sheet says of how the job runs: results with their bands, and what was assumed for them.
namespace siphonwright::sheet {

namespace {

constexpr std::size_t assumptions_named = 4;

const ResultBand* bandOf(const Analysis& analysis, const Id& heater, Banded which)
{
    for (const HeaterBands& bands : analysis.proof->bands)
        if (bands.heater == heater && bands[which])
            return &*bands[which];
    return nullptr;
}

/// To what a band can tell: whole degrees as they are read, a tenth of an hour or of a cycle, a hundredth of
/// a litre a minute.
double rounded(double value, Unit unit, UnitSystem units)
{
    if (unit == Unit::degC && units == UnitSystem::inch) {
        constexpr double per_degC = 1.8;
        return std::round(value * per_degC) / per_degC; // 32 is a whole number, too
    }
    const double parts = unit == Unit::degC ? 1 : unit == Unit::l_per_min ? 100 : 10;
    return std::round(value * parts) / parts;
}

/// "71 °C (68 to 75 °C)"; the figure alone where its band is as good as it.
QString withBand(double value, const ResultBand* band, Unit unit, UnitSystem units)
{
    const QString text = inWords(rounded(value, unit, units), unit, units);
    if (!band)
        return text;
    const QString range = inWords(
        Message{
            "{0-1}", {{rounded(band->low, unit, units), unit}, {rounded(band->high, unit, units), unit}}, {}},
        units);
    return range == text ? text : tr("%1 (%2)").arg(text, range);
}

/// The loop as it circulates with a warm block.
QString steadyRow(const Analysis& analysis, const LoopRun& run, UnitSystem units)
{
    QStringList lines = drawing::runningLines(run, analysis.running.block_degC, units);
    if (lines.isEmpty())
        return {};
    if (run.circulation.status == CirculationStatus::circulates) {
        const double l_per_min = flowByVolume_l_per_min(run.circulation);
        const ResultBand* of_mass =
            analysis.proof ? bandOf(analysis, run.heater, Banded::flow_kg_per_s) : nullptr;
        ResultBand by_volume;
        if (of_mass) {
            const double l_per_kg = l_per_min / run.circulation.flow_kg_per_s;
            by_volume.low = of_mass->low * l_per_kg;
            by_volume.high = of_mass->high * l_per_kg;
        }
        lines.first() =
            tr("flow %1").arg(withBand(l_per_min, of_mass ? &by_volume : nullptr, Unit::l_per_min, units));
    }
    return lines.join(QStringLiteral(", "));
}

QString peakRow(const Analysis& analysis, const Id& heater, const LoopOutcome& outcome, UnitSystem units)
{
    if (!outcome.peak_outlet_degC)
        return {};
    const QString peak = withBand(*outcome.peak_outlet_degC,
                                  bandOf(analysis, heater, Banded::peak_outlet_degC), Unit::degC, units);
    const QString cycles = withBand(outcome.cycles_per_hour,
                                    bandOf(analysis, heater, Banded::cycles_per_hour), Unit::none, units);
    return tr("peak outlet %1, cycles in the worst hour %2").arg(peak, cycles);
}

QString targetRow(const Sketch& sketch, const Analysis& analysis, UnitSystem units)
{
    const EngineWarmUp& warm = analysis.proof->warm_up;
    if (!warm.inputs || warm.result.loops.empty())
        return {};
    const QString target = inWords(warm.inputs->target_degC, Unit::degC, units);
    const QString hours = inWords(warm.inputs->duration_s / s_per_h, Unit::hour, units);
    const ResultBand* band = bandOf(analysis, warm.heaters.front(), Banded::target_h);
    constexpr double nearly_all = 0.995;
    QString row = warm.result.target_s
                      ? tr("Engine at %1 after %2")
                            .arg(target, withBand(*warm.result.target_s / s_per_h, band, Unit::hour, units))
                      : tr("Engine does not get to %1 in %2").arg(target, hours);
    if (warm.result.target_s && band && band->share < nearly_all)
        row += tr(", where it gets there");
    row += tr("; %1 in %2").arg(inWords(warm.result.energy_J / J_per_kWh, Unit::kWh, units), hours);
    if (sketch.site.ambient_degC.known())
        row += tr(", from %1 ambient").arg(inWords(*sketch.site.ambient_degC.value, Unit::degC, units));
    return row + QLatin1Char('.');
}

/// What drives the bands most, the results in turn: each first driver before any second one.
std::vector<Assumed> mainAssumptions(const Analysis& analysis)
{
    std::vector<Assumed> out;
    if (!analysis.proof)
        return out;
    for (std::size_t rank = 0; rank < assumed_count; ++rank)
        for (const HeaterBands& bands : analysis.proof->bands)
            for (const std::optional<ResultBand>& result : bands.results)
                if (result && rank < result->drivers.size() && out.size() < assumptions_named &&
                    std::find(out.begin(), out.end(), result->drivers[rank]) == out.end())
                    out.push_back(result->drivers[rank]);
    return out;
}

/// "loss of hose ends"; with its figure, unless that is the formula as it stands.
QString shortText(const Assumption& one, double value, UnitSystem units)
{
    const QString name = language::withinSentence(inWords(one.title).section(QLatin1Char(','), 0, 0));
    const bool factor = one.unit == Unit::none && one.unit_text.empty();
    if (factor && value == 1)
        return name;
    const QString text = withDecimalSign(inWords(valueText(one, value, units)));
    return factor ? QStringLiteral("%1 (× %2)").arg(name, text) : QStringLiteral("%1 (%2)").arg(name, text);
}

QString assumedRow(const Sketch& sketch, const Analysis& analysis, UnitSystem units)
{
    const Assumptions now(sketch);
    QStringList parts;
    for (const Assumed which : mainAssumptions(analysis))
        parts << shortText(assumptionOf(which), now[which], units);
    return parts.isEmpty() ? QString()
                           : tr("Assumed, and what the figures depend on most: %1.")
                                 .arg(parts.join(QStringLiteral(", ")));
}

} // namespace

Section resultsSection(const Sketch& sketch, const Analysis& analysis)
{
    const UnitSystem units = unitsOf(sketch);
    Section section{tr("Results"), {}, 4};
    const bool several = sketch.heaters.size() > 1;
    const auto add = [&section](const QString& text) {
        if (!text.isEmpty())
            section.items.push_back({text, std::nullopt, 0});
    };
    // What is last is left out first where room is short.
    if (analysis.proof) {
        add(targetRow(sketch, analysis, units));
        if (const std::optional<Message> on_grades = textOf(analysis.proof->at_ends))
            add(inWords(*on_grades, units) + QLatin1Char('.'));
        add(assumedRow(sketch, analysis, units));
    }
    for (const LoopRun& run : analysis.running.loops) {
        const Heater* heater = sketch.heater(run.heater);
        const auto sentence = [&](QString row) {
            if (row.isEmpty())
                return row;
            if (several && heater)
                return QStringLiteral("%1: %2.").arg(inWords(heater->name), row);
            row[0] = row[0].toUpper();
            return row + QLatin1Char('.');
        };
        add(sentence(steadyRow(analysis, run, units)));
        const LoopOutcome* outcome = analysis.proof ? analysis.proof->warm_up.loopOf(run.heater) : nullptr;
        if (outcome)
            add(sentence(peakRow(analysis, run.heater, *outcome, units)));
    }
    return section;
}

Section assumptionsSection(const Sketch& sketch)
{
    const UnitSystem units = unitsOf(sketch);
    Section section{tr("Assumed otherwise than the book"), {}, 3};
    for (const AssumptionChange& change : sketch.assumptions) {
        const Assumption* one = assumptionById(change.assumption);
        if (!one)
            continue;
        const QString reason =
            change.reason.empty() ? tr("no reason given") : QString::fromStdString(change.reason);
        section.items.push_back(
            {tr("%1: %2 instead of %3 (%4).")
                 .arg(assumptions::words(one->title),
                      withDecimalSign(inWords(valueText(*one, change.value, units))),
                      withDecimalSign(inWords(valueText(*one, one->value, units))), reason),
             std::nullopt, 0});
    }
    return section;
}

} // namespace siphonwright::sheet
