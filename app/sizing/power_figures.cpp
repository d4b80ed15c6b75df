#include "app/sizing/figure_words.h"
#include "app/sizing/figures.h"
#include "app/warming/words.h"

#include "core/paperwork/sizing.h"

namespace siphonwright::sizing {

namespace {

/// "12.4 kWh, 3.72", or without a tariff the energy alone.
QString energyText(const Energy& energy, const Sketch& sketch)
{
    const QString kWh = text(energy.kWh, Unit::kWh, sketch);
    return energy.cost ? FigureText::tr("%1, %2").arg(kWh, QString::number(*energy.cost, 'f', 2)) : kWh;
}

QString peakText(const PowerRow& row, const Sketch& sketch)
{
    if (!row.peak_outlet_degC)
        return FigureText::tr("–");
    const QString peak = text(*row.peak_outlet_degC, Unit::degC, sketch);
    if (row.boils)
        return FigureText::tr("▲ %1, boils").arg(peak);
    if (row.trips)
        return FigureText::tr("▲ %1, cut-out trips").arg(peak);
    const Rule* rule = ruleById("outlet-over-limit");
    if (rule && !switchedOff(rule->id, sketch))
        if (const auto over = verdict(*row.peak_outlet_degC, rule->sense, limitsOf(*rule, sketch)))
            return FigureText::tr("▲ %1, over %2").arg(peak, text(over->limit, Unit::degC, sketch));
    return peak;
}

Figure rowOf(const PowerRow& row, const Sketch& sketch)
{
    Figure out;
    const bool several = sketch.heaters.size() > 1;
    QString size =
        several
            ? FigureText::tr("%1 × %2").arg(sketch.heaters.size()).arg(text(row.each_W, Unit::watt, sketch))
            : text(row.each_W, Unit::watt, sketch);
    if (several && row.drawn)
        size = FigureText::tr("%1 in all").arg(text(row.power_W, Unit::watt, sketch));
    out.label = row.drawn ? FigureText::tr("● %1, as drawn").arg(size) : size;
    out.values << (row.target_h ? FigureText::tr("after %1").arg(warming::timeText(*row.target_h))
                                : FigureText::tr("▲ not in %1").arg(warming::timeText(row.followed_h)));
    out.values << text(row.final_degC, Unit::degC, sketch);
    out.values << text(std::round(100 * row.duty), Unit::percent, sketch);
    out.values << peakText(row, sketch);
    out.values << (row.night ? energyText(*row.night, sketch) : FigureText::tr("–"));
    out.values << (row.season ? energyText(*row.season, sketch) : FigureText::tr("–"));
    if (row.drawn && !sketch.heaters.empty())
        out.part = {PartKind::heater, sketch.heaters.front().id, 0};
    out.wrong = row.drawn;
    if (row.wants_pump)
        out.tip = FigureText::tr("Over %1 in all a heater with a pump wants considering (our own limit).")
                      .arg(text(most_without_pump_W, Unit::watt, sketch));
    return out;
}

} // namespace

Figures powerFigures(const Sketch& sketch, const std::vector<PowerRow>& rows)
{
    Figures out;
    if (rows.empty())
        return out;
    out.columns << FigureText::tr("Heater")
                << FigureText::tr("%1 reached").arg(text(sketch.plan.target_degC, Unit::degC, sketch))
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
    if (!rows.front().night)
        out.notes << FigureText::tr("Cost of a night: hours plugged in are not entered.");
    else if (!rows.front().night->cost)
        out.notes << FigureText::tr("Price of a kWh: not entered.");
    if (rows.front().night && !rows.front().season)
        out.notes << FigureText::tr("Season: no nights are entered.");
    if (rows.front().season)
        out.notes
            << FigureText::tr("Season: %1 nights.").arg(text(nightsIn(sketch.supply), Unit::none, sketch));
    if (wants_pump)
        out.notes << FigureText::tr("Over %1 in all a heater with a pump wants considering (our own limit).")
                         .arg(text(most_without_pump_W, Unit::watt, sketch));
    return out;
}

} // namespace siphonwright::sizing
