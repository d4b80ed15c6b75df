#include "app/language/in_words.h"
#include "app/sizing/figure_words.h"
#include "app/sizing/figures.h"
#include "app/warming/words.h"

#include "core/paperwork/sizing.h"

#include <cmath>

namespace siphonwright::sizing {

namespace {

const PartRef the_engine{PartKind::engine, {}, 0};

QString watts(double power_W, const Sketch& sketch)
{
    return text(power_W, Unit::watt, sketch);
}

/// A row under another.
QString inner(const QString& label)
{
    return FigureText::tr("– %1").arg(label);
}

/// "350 W over, 30 %", or what is lacking.
QString marginText(double drawn_W, double needed_W, const Sketch& sketch)
{
    const double left_W = drawn_W - needed_W;
    if (left_W < 0)
        return FigureText::tr("▲ %1 too little").arg(watts(-left_W, sketch));
    if (!(needed_W > 0))
        return FigureText::tr("nothing is needed");
    return FigureText::tr("%1 over, %2")
        .arg(watts(left_W, sketch), text(100 * left_W / needed_W, Unit::percent, sketch));
}

/// A row with a figure for the usual and, where it is entered, the coldest ambient.
template <class Say>
Figure both(const QString& label, const Sizing& sizing, Say say)
{
    Figure row{label, {say(sizing.usual)}, {}, {}, false};
    if (sizing.coldest)
        row.values << say(*sizing.coldest);
    for (const QString& value : row.values)
        row.wrong = row.wrong || value.startsWith(QStringLiteral("▲"));
    return row;
}

void addNeeds(Figures& out, const Sizing& sizing, const Sketch& sketch)
{
    const QString target = text(sizing.target_degC, Unit::degC, sketch);
    const auto in_W = [&sketch](double power_W) { return watts(power_W, sketch); };
    out.rows.push_back(both(FigureText::tr("To hold %1").arg(target), sizing, [&](const PowerNeed& need) {
        return need.hold_W > 0 ? in_W(need.hold_W) : FigureText::tr("nothing: the air is as warm");
    }));
    out.rows.push_back(
        both(inner(FigureText::tr("as the heat loss may be")), sizing, [&](const PowerNeed& need) {
            return FigureText::tr("%1 to %2").arg(in_W(need.hold_low_W), in_W(need.hold_high_W));
        }));
    out.rows.back().tip =
        FigureText::tr("With the engine's heat loss at either end of what is assumed of it");
    out.rows.push_back(both(inner(FigureText::tr("of it the engine")), sizing,
                            [&](const PowerNeed& need) { return in_W(need.block_W); }));
    out.rows.back().part = the_engine;
    out.rows.push_back(
        both(inner(FigureText::tr("of it hoses and chambers")), sizing, [&](const PowerNeed& need) {
            return sizing.hoses_counted ? in_W(need.hoses_W) : FigureText::tr("not drawn");
        }));
    const std::optional<double>& hours = sketch.supply.reach_h;
    out.rows.push_back(both(hours ? FigureText::tr("To reach it in %1").arg(warming::timeText(*hours))
                                  : FigureText::tr("To reach it"),
                            sizing, [&](const PowerNeed& need) {
                                return need.reach_W ? in_W(*need.reach_W)
                                                    : FigureText::tr("time allowed: not entered");
                            }));
}

void addDrawn(Figures& out, const Sizing& sizing, const Sketch& sketch)
{
    const PartRef heater =
        sketch.heaters.empty() ? PartRef{} : PartRef{PartKind::heater, sketch.heaters.front().id, 0};
    const QString drawn = sketch.heaters.empty() ? FigureText::tr("no heater drawn")
                          : sizing.drawn_W       ? watts(*sizing.drawn_W, sketch)
                                                 : FigureText::tr("power: not entered");
    out.rows.push_back(
        both(FigureText::tr("Heaters as drawn"), sizing, [&](const PowerNeed&) { return drawn; }));
    out.rows.back().part = heater;
    if (!sizing.drawn_W)
        return;
    out.rows.push_back(both(inner(FigureText::tr("margin to hold")), sizing, [&](const PowerNeed& need) {
        return marginText(*sizing.drawn_W, need.hold_W, sketch);
    }));
    if (sizing.usual.reach_W)
        out.rows.push_back(
            both(inner(FigureText::tr("margin to reach in time")), sizing, [&](const PowerNeed& need) {
                return marginText(*sizing.drawn_W, need.reach_W.value_or(0), sketch);
            }));
}

void addRemarks(Figures& out, const Sizing& sizing, const Sketch& sketch)
{
    if (sizing.W_per_litre)
        out.notes << FigureText::tr("%1 for %2 of displacement is %3 W a litre; %4 to %5 W a litre is common "
                                    "practice for diesel engines (no published source, from memory).")
                         .arg(watts(*sizing.drawn_W, sketch),
                              // Engines are named by litres in either system.
                              inWords(*sketch.engine->displacement_l.value, Unit::litre, UnitSystem::metric),
                              text(std::round(*sizing.W_per_litre), Unit::none, sketch),
                              text(practice_low_W_per_l, Unit::none, sketch),
                              text(practice_high_W_per_l, Unit::none, sketch));
    out.notes << FigureText::tr("Estimated from the engine's mass, coolant and outline as one lump of heat, "
                                "thermostats left out.");
    if (!sizing.hoses_counted)
        out.warnings << warning(FigureText::tr("No loop is closed yet: hoses and chambers are not counted."));
    else if (!sizing.circulates)
        out.warnings << warning(FigureText::tr("As drawn a loop does not circulate: the figures suppose that "
                                               "it will."));
    if (sizing.wants_pump)
        out.warnings << warning(
            FigureText::tr("Over %1 in all, consider a heater with a pump (our own limit).")
                .arg(watts(most_without_pump_W, sketch)));
    if (!sketch.site.wind_m_per_s.known())
        out.notes << FigureText::tr("Wind is not entered: still air.");
}

} // namespace

Figures sizeFigures(const Sketch& sketch, const Layout& layout)
{
    Figures out;
    const Sizing sizing = sizingOf(sketch, layout, Assumptions(sketch));
    if (!sizing.missing.empty()) {
        out.warnings << warning(sentence(sizing.missing));
        return out;
    }
    out.columns << FigureText::tr("Power needed")
                << FigureText::tr("usual, %1").arg(text(sizing.usual.air_degC, Unit::degC, sketch));
    if (sizing.coldest)
        out.columns << FigureText::tr("coldest, %1").arg(text(sizing.coldest->air_degC, Unit::degC, sketch));
    else
        out.notes << FigureText::tr("The coldest ambient is not entered.");
    addNeeds(out, sizing, sketch);
    addDrawn(out, sizing, sketch);
    addRemarks(out, sizing, sketch);
    return out;
}

} // namespace siphonwright::sizing
