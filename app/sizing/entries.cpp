#include "app/sizing/entries.h"

#include "app/language/in_words.h"
#include "app/panels/access.h"

#include "core/physics/electrical.h"

#include <algorithm>

namespace siphonwright::sizing {

using panels::Field;
using panels::Fields;
using panels::Form;

namespace {

struct Entries {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::sizing::Entries)
};

void within(Field& field, double least, double most, const QString& tip = {})
{
    field.least = least;
    field.most = most;
    field.tip = tip;
}

/// 1 or 3, by its place among the choices.
Field phasesField()
{
    Field row;
    row.kind = Field::Kind::choice;
    row.label = Entries::tr("Phases");
    row.choices = {Entries::tr("one"), Entries::tr("three")};
    row.may_be_empty = true;
    row.choice = [](const Sketch& sketch) {
        return !sketch.supply.phases ? -1 : *sketch.supply.phases == 3 ? 1 : 0;
    };
    row.set_choice = [](Sketch& sketch, int index) {
        sketch.supply.phases.reset();
        if (index >= 0)
            sketch.supply.phases = index == 1 ? 3 : 1;
    };
    return row;
}

QString sizeText(const Conductor& conductor)
{
    return inWords(conductor.size).replace(QStringLiteral("mm2"), QStringLiteral("mm²"));
}

/// Every size of the tables, and what a file has that is none of them.
Field conductorField(const Sketch& sketch)
{
    Field row;
    row.kind = Field::Kind::choice;
    row.label = Entries::tr("Conductor");
    row.tip = Entries::tr("Size of the conductors to the bay");
    row.may_be_empty = true;
    for (const Conductor& conductor : conductors())
        row.choices << sizeText(conductor);
    if (!sketch.supply.conductor.empty() && !findConductor(sketch.supply.conductor))
        row.choices
            << Entries::tr("%1 – not in the tables").arg(QString::fromStdString(sketch.supply.conductor));
    row.choice = [](const Sketch& now) {
        if (now.supply.conductor.empty())
            return -1;
        const Conductor* found = findConductor(now.supply.conductor);
        return static_cast<int>(found ? found - conductors().data() : std::ptrdiff_t(conductors().size()));
    };
    row.set_choice = [](Sketch& now, int index) {
        if (index < 0)
            now.supply.conductor.clear();
        else if (static_cast<std::size_t>(index) < conductors().size())
            now.supply.conductor = std::string(conductors()[static_cast<std::size_t>(index)].size);
    };
    return row;
}

} // namespace

Form sizeEntries()
{
    constexpr double coldest_degC = -80, hottest_degC = 150; // as the warm-up's plan takes them
    Fields<Sketch> fields(panels::sketchAccess());
    within(fields.quantity(
               Entries::tr("Target"), Unit::degC, [](auto& s) -> auto& { return s.plan.target_degC; }),
           coldest_degC, hottest_degC, Entries::tr("Wanted temperature of the engine block"));
    within(
        fields.quantity(
            Entries::tr("Usual ambient"), Unit::degC, [](auto& s) -> auto& { return s.site.ambient_degC; }),
        coldest_degC, hottest_degC);
    within(fields.quantity(
               Entries::tr("Coldest ambient"), Unit::degC,
               [](auto& s) -> auto& { return s.site.coldest_ambient_degC; }),
           coldest_degC, hottest_degC);
    within(fields.quantity(
               Entries::tr("Wind"), Unit::m_per_s, [](auto& s) -> auto& { return s.site.wind_m_per_s; }),
           0, 100, Entries::tr("Nothing entered counts as still air"));
    within(fields.quantity(
               Entries::tr("Time allowed"), Unit::hour, [](auto& s) -> auto& { return s.supply.reach_h; }),
           0.1, 240, Entries::tr("From the start to the target"));
    within(fields.quantity(
               Entries::tr("Plugged in a night"), Unit::hour,
               [](auto& s) -> auto& { return s.supply.hours_per_night; }),
           0.1, 24);
    within(fields.quantity(
               Entries::tr("Price of a kWh"), Unit::none,
               [](auto& s) -> auto& { return s.supply.tariff_per_kWh; }),
           0, 1e6, Entries::tr("In the currency of the quote"));
    return fields.take();
}

Form supplyEntries(const Sketch& sketch)
{
    Fields<Sketch> fields(panels::sketchAccess());
    within(
        fields.quantity(
            Entries::tr("Voltage at the bay"), Unit::volt, [](auto& s) -> auto& { return s.supply.volts_V; }),
        1, most_supply_V, Entries::tr("Between conductors"));
    fields.add(phasesField());
    fields.add(conductorField(sketch));
    fields.choice(
        Entries::tr("Metal"), {Entries::tr("copper"), Entries::tr("aluminium")},
        [](auto& s) -> auto& { return s.supply.material; });
    within(
        fields.quantity(
            Entries::tr("Length, one way"), Unit::metre, [](auto& s) -> auto& { return s.supply.one_way_m; }),
        0.1, most_one_way_m, Entries::tr("Of the run, from its start to the heater"));
    return fields.take();
}

Form coolantEntries()
{
    Fields<Sketch> fields(panels::sketchAccess());
    fields.choice(
        Entries::tr("Antifreeze in it now"),
        {Entries::tr("none, plain water"), Entries::tr("ethylene glycol"), Entries::tr("propylene glycol"),
         Entries::tr("not known")},
        [](auto& s) -> auto& { return s.coolant.glycol; });
    within(fields.quantity(
               Entries::tr("Its share now"), Unit::percent,
               [](auto& s) -> auto& { return s.coolant.volume_percent; }),
           0, 100, Entries::tr("By volume, as a refractometer shows it"));
    fields
        .choice(
            Entries::tr("Antifreeze to add"),
            {Entries::tr("none, plain water"), Entries::tr("ethylene glycol"),
             Entries::tr("propylene glycol")},
            [](auto& s) -> auto& { return s.coolant_plan.wanted_glycol; })
        .tip = Entries::tr("Empty: the kind that is in it now; kinds are never mixed");
    within(fields.quantity(
               Entries::tr("Share wanted"), Unit::percent,
               [](auto& s) -> auto& { return s.coolant_plan.wanted_percent; }),
           0, 100, Entries::tr("By volume, 60 % at most"));
    within(fields.quantity(
               Entries::tr("Whole system holds"), Unit::litre,
               [](auto& s) -> auto& { return s.coolant_plan.system_l; }),
           0.1, 10'000,
           Entries::tr("Radiator and cabin heater included; without it the engine alone counts"));
    within(fields.quantity(
               Entries::tr("Runs out at once"), Unit::litre,
               [](auto& s) -> auto& { return s.coolant_plan.drainable_l; }),
           0, 10'000, Entries::tr("What comes out at the drains"));
    fields.heading(Entries::tr("Water to mix with"));
    within(fields.quantity(
               Entries::tr("Chloride"), Unit::ppm,
               [](auto& s) -> auto& { return s.coolant_plan.water.chloride_ppm; }),
           0, 100'000);
    within(fields.quantity(
               Entries::tr("Sulphate"), Unit::ppm,
               [](auto& s) -> auto& { return s.coolant_plan.water.sulphate_ppm; }),
           0, 100'000);
    within(fields.quantity(
               Entries::tr("Hardness"), Unit::ppm,
               [](auto& s) -> auto& { return s.coolant_plan.water.hardness_ppm; }),
           0, 100'000, Entries::tr("As calcium carbonate, CaCO3"));
    within(fields.quantity(
               Entries::tr("Total solids"), Unit::ppm,
               [](auto& s) -> auto& { return s.coolant_plan.water.solids_ppm; }),
           0, 1e6);
    within(fields.quantity(
               Entries::tr("pH"), Unit::none, [](auto& s) -> auto& { return s.coolant_plan.water.pH; }),
           0, 14);
    return fields.take();
}

} // namespace siphonwright::sizing
