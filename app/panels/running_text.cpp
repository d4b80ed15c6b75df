#include "app/panels/running_text.h"

#include "app/drawing/running_words.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/panels/field.h"

#include "core/running/loop_figures.h"

#include <cmath>

namespace siphonwright::panels {

namespace {

constexpr std::size_t losses_named = 4;

QString words(double value, Unit unit, UnitSystem units)
{
    return inWords(value, unit, units);
}

QString capital(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

void addFlow(QStringList& lines, const Circulation& found, UnitSystem units)
{
    lines << tr("Flow %1, in at %2, out at %3.")
                 .arg(words(std::abs(flowByVolume_l_per_min(found)), Unit::l_per_min, units),
                      words(found.heater_inlet_degC, Unit::degC, units),
                      words(found.heater_outlet_degC, Unit::degC, units));
}

void addHeads(QStringList& lines, const Circulation& found, UnitSystem units)
{
    if (!(found.drive_Pa > 0))
        return;
    lines << tr("%1 of head drives (%2), %3 resists (%4).")
                 .arg(words(found.drive_mm, Unit::head, units), words(found.drive_Pa, Unit::Pa, units),
                      words(found.resistance_mm, Unit::head, units),
                      words(found.resistance_Pa, Unit::Pa, units));
    if (found.pocket_mm > 0)
        lines << tr("Air takes %1 of it.").arg(words(found.pocket_mm, Unit::head, units));
    if (found.on_the_edge)
        lines << tr("On the edge: small causes decide whether it runs.");
}

void addLosses(QStringList& lines, const LoopRun& run, UnitSystem units)
{
    QStringList parts;
    for (const NamedLoss& loss : largestLosses(run, losses_named))
        parts << tr("%1 %2").arg(inWords(loss.part->name),
                                 words(std::round(loss.share * 100) / 100, Unit::ratio, units));
    if (!parts.isEmpty())
        lines << tr("Largest losses: %1.").arg(parts.join(QStringLiteral(", ")));
}

/// Of the warm-up over the planned hours.
void addHottest(QStringList& lines, const Analysis& analysis, const Id& heater, UnitSystem units)
{
    const LoopOutcome* outcome = analysis.proof ? analysis.proof->warm_up.loopOf(heater) : nullptr;
    if (!outcome || !outcome->peak_outlet_degC)
        return;
    QString hottest =
        tr("Over the warm-up: hottest outlet %1").arg(words(*outcome->peak_outlet_degC, Unit::degC, units));
    if (outcome->boiling_margin_K)
        hottest += tr(", %1 under boiling").arg(words(*outcome->boiling_margin_K, Unit::kelvin, units));
    if (outcome->element)
        hottest +=
            outcome->element->boils_locally
                ? tr(", element's surface %1 with bubbles on it")
                      .arg(words(outcome->element->surface_degC, Unit::degC, units))
                : tr(", element's surface %1").arg(words(outcome->element->surface_degC, Unit::degC, units));
    lines << hottest + QLatin1Char('.');
}

} // namespace

QStringList runningText(const Sketch& sketch, const Analysis& analysis, const Id& heater)
{
    const LoopRun* run = analysis.running.loopOf(heater);
    if (!run)
        return {};
    if (!run->missing.empty())
        return {tr("How it runs is not computed: %1.").arg(inWords(run->missing))};
    const UnitSystem units = unitsOf(sketch);
    const Circulation& found = run->circulation;
    const QString state = drawing::stateWords(found.status);
    QStringList lines{tr("%1, with the block at %2.")
                          .arg(state.isEmpty() ? tr("Circulates") : capital(state),
                               words(analysis.running.block_degC, Unit::degC, units))};
    if (found.flow_kg_per_s != 0)
        addFlow(lines, found, units);
    else if (!found.message.pattern.empty())
        lines << capital(inWords(found.message, units)) + QLatin1Char('.');
    addHeads(lines, found, units);
    addLosses(lines, *run, units);
    addHottest(lines, analysis, heater, units);
    return lines;
}

} // namespace siphonwright::panels
