#include "app/language/in_words.h"
#include "app/sizing/figure_words.h"
#include "app/sizing/figures.h"

#include "core/paperwork/coolant_mix.h"

namespace siphonwright::sizing {

namespace {

QString litres(double volume_l, const Sketch& sketch)
{
    return text(volume_l, Unit::litre, sketch);
}

/// "50 %, freezes at -37 °C, 12 K under the coldest ambient".
QString freezingText(const Freezing& mixture, const Sketch& sketch)
{
    QString out = text(mixture.percent, Unit::percent, sketch);
    if (mixture.freezes_degC)
        out = FigureText::tr("%1, freezes at %2").arg(out, text(*mixture.freezes_degC, Unit::degC, sketch));
    else
        out = FigureText::tr("%1, freezing point not known").arg(out);
    if (!mixture.margin_K)
        return out;
    return *mixture.margin_K < 0 ? FigureText::tr("▲ %1, %2 too warm for the coldest ambient")
                                       .arg(out, text(-*mixture.margin_K, Unit::kelvin, sketch))
                                 : FigureText::tr("%1, %2 under the coldest ambient")
                                       .arg(out, text(*mixture.margin_K, Unit::kelvin, sketch));
}

Figure freezingRow(const QString& label, const Freezing& mixture, const Sketch& sketch)
{
    return {label,
            {freezingText(mixture, sketch)},
            FigureText::tr("Freezing points are good to some 2 K"),
            {},
            mixture.margin_K && *mixture.margin_K < margin_wanted_K};
}

void addVolumes(Figures& out, const CoolantMix& mix, const Sketch& sketch)
{
    if (mix.present_l > 0) {
        out.rows.push_back(
            {mix.all_empty ? FigureText::tr("Drained, to be filled") : FigureText::tr("In it now"),
             {mix.whole_system ? litres(mix.present_l, sketch)
                               : FigureText::tr("%1, the engine alone").arg(litres(mix.present_l, sketch))},
             {},
             {},
             false});
        if (!mix.whole_system)
            out.rows.back().part = {PartKind::engine, {}, 0};
    }
    if (mix.drained_l > 0)
        out.rows.push_back(
            {FigureText::tr("Let out, to be filled again"), {litres(mix.drained_l, sketch)}, {}, {}, false});
    Figure fresh{FigureText::tr("New parts take"),
                 {FigureText::tr("%1 in hoses, %2 in chambers")
                      .arg(litres(mix.hoses_l, sketch), litres(mix.chambers_l, sketch))},
                 {},
                 {},
                 false};
    if (!sketch.heaters.empty())
        fresh.part = {PartKind::heater, sketch.heaters.front().id, 0};
    out.rows.push_back(fresh);
}

void addPlan(Figures& out, const MixPlan& plan, const Sketch& sketch)
{
    if (plan.outcome == MixOutcome::invalid || plan.outcome == MixOutcome::unreachable)
        out.warnings << warning(text(plan.message, sketch));
    else
        out.notes << text(plan.message, sketch);
    const bool several = plan.rounds.size() > 1;
    for (std::size_t i = 0; several && i < plan.rounds.size(); ++i) {
        const MixRound& round = plan.rounds[i];
        out.rows.push_back(
            {FigureText::tr("Round %1").arg(i + 1),
             {FigureText::tr("drain %1, add %2 of %3: %4")
                  .arg(litres(round.drain_l, sketch), litres(round.antifreeze_l + round.water_l, sketch),
                       round.antifreeze_l > 0 ? FigureText::tr("antifreeze") : FigureText::tr("water"),
                       text(round.percent_after, Unit::percent, sketch))},
             {},
             {},
             false});
    }
    if (plan.rounds.empty())
        return;
    const auto add = [&](const QString& label, double volume_l) {
        out.rows.push_back({label, {litres(volume_l, sketch)}, {}, {}, false});
    };
    add(several ? FigureText::tr("Drained in all, to be disposed of") : FigureText::tr("Drain"),
        plan.drain_l);
    add(FigureText::tr("Antifreeze to buy"), plan.antifreeze_l);
    add(FigureText::tr("Distilled water to buy"), plan.water_l);
    add(FigureText::tr("System then holds"), plan.filled_l);
}

} // namespace

Figures coolantFigures(const Sketch& sketch, const Layout& layout)
{
    Figures out;
    const CoolantMix mix = coolantMixOf(sketch, layout, Assumptions(sketch));
    out.columns << FigureText::tr("Coolant") << FigureText::tr("figure");
    addVolumes(out, mix, sketch);
    if (!mix.missing.empty())
        out.warnings << warning(sentence(mix.missing));
    else
        out.rows.push_back(freezingRow(FigureText::tr("Mixture now"), mix.present, sketch));
    if (mix.wanted)
        out.rows.push_back(freezingRow(FigureText::tr("Mixture wanted"), *mix.wanted, sketch));
    else
        out.notes << FigureText::tr("No share is wanted yet: nothing is planned.");
    if (mix.plan)
        addPlan(out, *mix.plan, sketch);
    if (mix.plan && mix.plan->outcome == MixOutcome::unreachable && mix.reached)
        out.rows.push_back(freezingRow(FigureText::tr("Mixture reached"), *mix.reached, sketch));
    if (mix.least_percent)
        out.rows.push_back({FigureText::tr("Least for the coldest ambient"),
                            {FigureText::tr("%1, with %2 to spare")
                                 .arg(text(*mix.least_percent, Unit::percent, sketch),
                                      text(margin_wanted_K, Unit::kelvin, sketch))},
                            {},
                            {},
                            false});
    else if (mix.colder_than_60_percent)
        out.warnings << warning(FigureText::tr("Not even %1 holds the coldest ambient with %2 to spare.")
                                    .arg(text(most_glycol_percent, Unit::percent, sketch),
                                         text(margin_wanted_K, Unit::kelvin, sketch)));
    else if (!sketch.site.coldest_ambient_degC.known())
        out.notes << FigureText::tr("The coldest ambient is not entered: no margin to freezing.");
    if (!mix.whole_system)
        out.notes << FigureText::tr(
            "The whole system is not entered: radiator and cabin heater are not counted.");
    out.notes << FigureText::tr(
                     "Never mix kinds of antifreeze; low-silicate antifreeze, deionised or distilled "
                     "water. At most %1 by volume.")
                     .arg(text(most_glycol_percent, Unit::percent, sketch));
    return out;
}

Figures waterFigures(const Sketch& sketch)
{
    Figures out;
    out.columns << FigureText::tr("Water") << FigureText::tr("measured") << FigureText::tr("limit")
                << FigureText::tr("verdict");
    for (const WaterRow& row : waterRows(sketch.coolant_plan.water)) {
        Figure figure;
        figure.label = inWords(row.name);
        figure.values << (row.measured ? text(*row.measured, row.unit, sketch)
                                       : FigureText::tr("not entered"));
        figure.values << (row.least > 0
                              ? FigureText::tr("%1 to %2")
                                    .arg(text(row.least, row.unit, sketch), text(row.most, row.unit, sketch))
                              : FigureText::tr("at most %1").arg(text(row.most, row.unit, sketch)));
        figure.wrong = row.verdict == WaterVerdict::outside;
        figure.values << (row.verdict == WaterVerdict::not_entered ? FigureText::tr("not judged")
                          : figure.wrong                           ? FigureText::tr("▲ do not use it")
                                                                   : FigureText::tr("good"));
        out.rows.push_back(figure);
    }
    out.notes << FigureText::tr("Limits: %1.").arg(inWords(water_basis));
    return out;
}

} // namespace siphonwright::sizing
