#include "app/language/in_words.h"
#include "app/sizing/figure_words.h"
#include "app/sizing/figures.h"
#include "app/warming/words.h"

#include "core/layout/wording.h"
#include "core/paperwork/sizing.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::sizing {

namespace {

/// "12.4 kWh, 3.72", or without a tariff the energy alone; large figures are round, since they are estimates.
QString energyText(const Energy& energy, const Sketch& sketch)
{
    constexpr double large = 100;
    const auto rounded = [](double value) { return value < large ? value : std::round(value); };
    const QString kWh = text(rounded(energy.kWh), Unit::kWh, sketch);
    if (!energy.cost)
        return kWh;
    const double cost = *energy.cost;
    return FigureText::tr("%1, %2").arg(kWh, numberInWords(rounded(cost), cost < large ? 2 : 0));
}

/// As the quote has it; empty where there is none.
QString currencyOf(const Sketch& sketch)
{
    if (!sketch.quote)
        return {};
    const Currency& currency = (*sketch.quote)->currency;
    return QString::fromStdString(currency.code.empty() ? currency.symbol : currency.code);
}

/// Heaters that all take the same power.
bool alike(const Sketch& sketch)
{
    constexpr double same_W = 0.5;
    const auto power_W = [](const Heater& heater) { return actualPower_W(heater).value_or(0); };
    return std::all_of(sketch.heaters.begin(), sketch.heaters.end(), [&](const Heater& heater) {
        return std::abs(power_W(heater) - power_W(sketch.heaters.front())) < same_W;
    });
}

QString peakText(const PowerRow& row, const Sketch& sketch)
{
    if (!row.peak_outlet_degC)
        return FigureText::tr("–");
    const QString peak = text(*row.peak_outlet_degC, Unit::degC, sketch);
    if (row.boils)
        return FigureText::tr("▲ %1 boils").arg(peak);
    if (row.trips)
        return FigureText::tr("▲ %1 trips").arg(peak);
    const Rule* rule = ruleById("outlet-over-limit");
    if (rule && !switchedOff(rule->id, sketch))
        if (const auto over = verdict(*row.peak_outlet_degC, rule->sense, limitsOf(*rule, sketch)))
            return warning(peak);
    return peak;
}

/// What a marked peak means, said once under the table: the columns are narrow.
void explainPeaks(Figures& out, const std::vector<PowerRow>& rows, const Sketch& sketch)
{
    const Rule* rule = ruleById("outlet-over-limit");
    const auto any = [&](auto fits) { return std::any_of(rows.begin(), rows.end(), fits); };
    if (rule && !switchedOff(rule->id, sketch)) {
        std::optional<double> limit;
        for (const PowerRow& row : rows)
            if (const auto over = row.peak_outlet_degC
                                      ? verdict(*row.peak_outlet_degC, rule->sense, limitsOf(*rule, sketch))
                                      : std::nullopt)
                limit = over->limit;
        if (limit)
            out.notes << FigureText::tr("▲ outlet over %1: too much for these hoses.")
                             .arg(text(*limit, Unit::degC, sketch));
    }
    if (any([](const PowerRow& row) { return row.boils; }))
        out.notes << FigureText::tr("Boils: the heater's chamber reaches the boiling point.");
    if (any([](const PowerRow& row) { return row.trips; }))
        out.notes << FigureText::tr("Trips: the cut-out opens.");
}

Figure rowOf(const PowerRow& row, const Sketch& sketch)
{
    Figure out;
    const bool several = sketch.heaters.size() > 1;
    QString size =
        several
            ? FigureText::tr("%1 × %2").arg(sketch.heaters.size()).arg(text(row.each_W, Unit::watt, sketch))
            : text(row.each_W, Unit::watt, sketch);
    if (several && row.drawn && !alike(sketch))
        size = FigureText::tr("%1 in all").arg(text(row.power_W, Unit::watt, sketch));
    out.label = row.drawn ? FigureText::tr("● %1").arg(size) : size;
    out.values << (row.target_h ? warming::timeText(*row.target_h)
                                : FigureText::tr("▲ over %1").arg(warming::timeText(row.followed_h)));
    out.values << text(row.final_degC, Unit::degC, sketch);
    out.values << text(std::round(100 * row.duty), Unit::percent, sketch);
    out.values << peakText(row, sketch);
    out.values << (row.night ? energyText(*row.night, sketch) : FigureText::tr("–"));
    out.values << (row.season ? energyText(*row.season, sketch) : FigureText::tr("–"));
    if (row.drawn && !sketch.heaters.empty())
        out.part = {PartKind::heater, sketch.heaters.front().id, 0};
    out.wrong = row.drawn;
    if (row.wants_pump)
        out.tip = FigureText::tr("Over %1 in all, consider a heater with a pump (our own limit).")
                      .arg(text(most_without_pump_W, Unit::watt, sketch));
    return out;
}

} // namespace

Figures powerFigures(const Sketch& sketch, const Running& running, const std::vector<PowerRow>& rows)
{
    Figures out;
    if (rows.empty())
        return out;
    out.columns << FigureText::tr("Heater")
                << FigureText::tr("To %1").arg(text(sketch.plan.target_degC, Unit::degC, sketch))
                << FigureText::tr("Block, %1").arg(warming::timeText(rows.front().followed_h))
                << FigureText::tr("On for") << FigureText::tr("Peak outlet") << FigureText::tr("A night")
                << FigureText::tr("Season");
    bool wants_pump = false;
    for (const PowerRow& row : rows) {
        out.rows.push_back(rowOf(row, sketch));
        wants_pump = wants_pump || row.wants_pump;
    }
    out.notes << (rows.front().by_warm_up
                      ? FigureText::tr(
                            "In the usual ambient, on the loops as drawn, thermostats and all; sizes "
                            "are our own choice.")
                      : FigureText::tr("No loop is closed yet: the engine as one lump, held where a usual "
                                       "thermostat would. Sizes are our own choice."));
    if (rows.front().by_warm_up)
        for (const LoopRun& loop : running.loops)
            if (const Heater* heater = sketch.heater(loop.heater); heater && !loop.missing.empty())
                out.warnings << warning(FigureText::tr("%1 is left out of the table: %2")
                                            .arg(inWords(nameOfHeater(*heater)), inWords(loop.missing)));
    if (std::any_of(rows.begin(), rows.end(), [](const PowerRow& row) { return row.drawn; }))
        out.notes << FigureText::tr("● is what is drawn.");
    explainPeaks(out, rows, sketch);
    if (!rows.front().night)
        out.notes << FigureText::tr("Cost of a night: hours plugged in are not entered.");
    else if (!rows.front().night->cost)
        out.notes << FigureText::tr("Price of a kWh: not entered.");
    else if (const QString currency = currencyOf(sketch); !currency.isEmpty())
        out.notes << FigureText::tr("Costs in %1.").arg(currency);
    if (rows.front().night && !rows.front().season)
        out.notes << FigureText::tr("Season: no nights are entered.");
    if (rows.front().season)
        out.notes
            << FigureText::tr("Season: %1 nights.").arg(text(nightsIn(sketch.supply), Unit::none, sketch));
    if (wants_pump)
        out.notes << FigureText::tr("Over %1 in all, consider a heater with a pump (our own limit).")
                         .arg(text(most_without_pump_W, Unit::watt, sketch));
    return out;
}

} // namespace siphonwright::sizing
