#include "app/language/in_words.h"
#include "app/sizing/figure_words.h"
#include "app/sizing/figures.h"

#include "core/layout/wording.h"
#include "core/paperwork/electrical_load.h"

namespace siphonwright::sizing {

namespace {

void addHeaters(Figures& out, const ElectricalLoad& load, const Sketch& sketch)
{
    for (const HeaterLoad& one : load.heaters) {
        const Heater& heater = *sketch.heater(one.heater);
        Figure row;
        row.label = inWords(nameOfHeater(heater));
        row.part = refOf(heater);
        row.wrong = !one.missing.empty() || one.over_rated;
        row.values << (one.missing.empty()
                           ? FigureText::tr("%1, %2").arg(text(one.power_W, Unit::watt, sketch),
                                                          text(one.current_A, Unit::ampere, sketch))
                           : warning(inWords(one.missing)));
        out.rows.push_back(row);
    }
}

void addDrop(Figures& out, const ElectricalLoad& load, const Sketch& sketch)
{
    if (load.conductor && load.ohm_per_km)
        out.rows.push_back({FigureText::tr("Conductor at %1").arg(text(conductor_degC, Unit::degC, sketch)),
                            {text(*load.ohm_per_km, Unit::ohm_per_km, sketch)},
                            load.conductor->by_gauge ? FigureText::tr("NEC chapter 9, table 8")
                                                     : FigureText::tr("IEC 60228, classes 1 and 2; flexible "
                                                                      "cord has up to 10 % more"),
                            {},
                            false});
    if (!load.drop) {
        out.rows.push_back({FigureText::tr("Voltage drop"), {FigureText::tr("not computed")}, {}, {}, false});
        return;
    }
    out.rows.push_back({FigureText::tr("Voltage drop"),
                        {FigureText::tr("%1, %2").arg(text(load.drop->drop_V, Unit::volt, sketch),
                                                      text(load.drop->percent, Unit::percent, sketch))},
                        {},
                        {},
                        load.drop->percent > advised_drop_percent});
    out.rows.push_back({FigureText::tr("Left at the heater"),
                        {text(load.drop->at_load_V, Unit::volt, sketch)},
                        {},
                        {},
                        false});
}

} // namespace

Figures supplyFigures(const Sketch& sketch)
{
    Figures out;
    const ElectricalLoad load = electricalLoadOf(sketch);
    if (sketch.heaters.empty())
        out.warnings << warning(FigureText::tr("No heater is drawn."));
    out.columns << FigureText::tr("Electrical load") << FigureText::tr("figure");
    addHeaters(out, load, sketch);
    const auto add = [&](const QString& label, const std::optional<double>& value, Unit unit,
                         const QString& tip = {}) {
        out.rows.push_back(
            {label, {value ? text(*value, unit, sketch) : FigureText::tr("not computed")}, tip, {}, false});
    };
    add(FigureText::tr("All heaters"), load.power_W, Unit::watt);
    add(FigureText::tr("Current"), load.current_A, Unit::ampere,
        load.phases == 3 ? FigureText::tr("Power over √3 times the voltage")
                         : FigureText::tr("Power over voltage"));
    add(FigureText::tr("Continuous load, 125 %"), load.continuous_A, Unit::ampere,
        FigureText::tr("A load figure after NEC 210.20(A) and 215.3"));
    addDrop(out, load, sketch);
    for (const Message& one : load.missing)
        out.warnings << warning(text(one, sketch));
    for (const Message& one : load.remarks)
        out.warnings << warning(text(one, sketch));
    return out;
}

} // namespace siphonwright::sizing
