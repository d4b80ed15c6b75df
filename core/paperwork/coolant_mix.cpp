#include "core/paperwork/coolant_mix.h"

#include "core/physics/coolant.h"
#include "core/running/filling.h"
#include "core/running/running.h"

#include <algorithm>

namespace siphonwright {
namespace {

std::optional<CoolantBase> baseOf(Glycol glycol)
{
    if (glycol == Glycol::ethylene)
        return CoolantBase::ethylene_glycol;
    if (glycol == Glycol::propylene)
        return CoolantBase::propylene_glycol;
    return std::nullopt;
}

Freezing freezingOf(const Sketch& sketch, Glycol glycol, double percent)
{
    Freezing out;
    out.percent = percent;
    const std::optional<CoolantBase> base = baseOf(glycol);
    // Plain water freezes at 0 degC whatever would be added.
    if (base || percent == 0)
        out.freezes_degC = freezingPoint(base.value_or(CoolantBase::ethylene_glycol), percent);
    if (out.freezes_degC && sketch.site.coldest_ambient_degC.known())
        out.margin_K = *sketch.site.coldest_ambient_degC.value - *out.freezes_degC;
    return out;
}

/// In steps of 1 %: finer is not mixed.
void findLeastPercent(CoolantMix& out, const Sketch& sketch)
{
    const std::optional<CoolantBase> base = baseOf(wantedGlycol(sketch));
    if (!base || !sketch.site.coldest_ambient_degC.known())
        return;
    const double wanted_degC = *sketch.site.coldest_ambient_degC.value - margin_wanted_K;
    for (int percent = 0; percent <= int(most_glycol_percent); ++percent)
        if (const std::optional<double> freezes = freezingPoint(*base, percent);
            freezes && *freezes <= wanted_degC) {
            out.least_percent = percent;
            return;
        }
    out.colder_than_60_percent = true;
}

void addVolumes(CoolantMix& out, const Sketch& sketch, const Layout& layout)
{
    for (const ResolvedHose& hose : layout.hoses)
        out.hoses_l += hose->volume_ml / 1000;
    for (const Heater& heater : sketch.heaters)
        out.chambers_l += chamberLitres(heater);
}

void addPresent(CoolantMix& out, const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    const std::optional<double> engine_l = litresInEngine(sketch, assumed);
    out.whole_system = sketch.coolant_plan.system_l.has_value();
    out.all_empty = sketch.fill.start == FillStart::all_empty;
    if (!out.whole_system && !engine_l) {
        out.missing = "neither the coolant of the whole system nor that of the engine is entered";
        out.missing_of = {PartKind::engine, {}, 0};
        return;
    }
    out.present_l = out.whole_system ? *sketch.coolant_plan.system_l : *engine_l;
    if (const std::optional<Drained> drained = drainedBlock(sketch, layout, assumed))
        out.drained_l = std::min(out.present_l, drained->drained_ml / 1000);
    else if (sketch.fill.start == FillStart::block_drained)
        out.drained_l = std::min(out.present_l, sketch.fill.drained_l.value_or(0));
    const bool water = sketch.coolant.glycol == Glycol::none;
    if (!water && !sketch.coolant.volume_percent.known())
        out.missing = "the share of antifreeze in the coolant is not entered";
    else
        out.present =
            freezingOf(sketch, sketch.coolant.glycol, water ? 0 : *sketch.coolant.volume_percent.value);
}

/// Why none of the wanted kind may be poured in; nothing where it may.
std::optional<Message> againstAdding(const CoolantMix& mix, const Sketch& sketch)
{
    const Glycol now = sketch.coolant.glycol;
    const Glycol wanted = wantedGlycol(sketch);
    if (*sketch.coolant_plan.wanted_percent == 0)
        return std::nullopt;
    if (!baseOf(wanted))
        return Message{"The kind of antifreeze to add is not entered.", {}, {}};
    const bool none_in = mix.all_empty || now == Glycol::none || mix.present.percent == 0;
    if (none_in || now == wanted)
        return std::nullopt;
    if (now == Glycol::unknown)
        return Message{"The kind of antifreeze in it now is not known, and kinds must not be mixed: find it "
                       "out, or drain and flush all of it and choose a fill from empty.",
                       {},
                       {}};
    return Message{
        "In it now is another kind of antifreeze, and kinds must not be mixed: drain and flush all "
        "of it and choose a fill from empty.",
        {},
        {}};
}

WaterRow judged(std::string_view name, std::optional<double> measured, double least, double most, Unit unit)
{
    WaterRow row{name, unit, measured, least, most, WaterVerdict::not_entered};
    if (measured)
        row.verdict = *measured >= least && *measured <= most ? WaterVerdict::within : WaterVerdict::outside;
    return row;
}

} // namespace

Glycol wantedGlycol(const Sketch& sketch)
{
    return sketch.coolant_plan.wanted_glycol.value_or(sketch.coolant.glycol);
}

std::array<WaterRow, 5> waterRows(const WaterQuality& water)
{
    return {judged("chloride", water.chloride_ppm, 0, 40, Unit::ppm),
            judged("sulphate", water.sulphate_ppm, 0, 100, Unit::ppm),
            judged("hardness as CaCO3", water.hardness_ppm, 0, 170, Unit::ppm),
            judged("total solids", water.solids_ppm, 0, 340, Unit::ppm),
            judged("pH", water.pH, 5.5, 9.0, Unit::none)};
}

CoolantMix coolantMixOf(const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    CoolantMix out;
    out.water = waterRows(sketch.coolant_plan.water);
    addVolumes(out, sketch, layout);
    addPresent(out, sketch, layout, assumed);
    findLeastPercent(out, sketch);
    const std::optional<double>& wanted = sketch.coolant_plan.wanted_percent;
    const Glycol glycol = wantedGlycol(sketch);
    if (wanted)
        out.wanted = freezingOf(sketch, glycol, *wanted);
    if (!wanted || !out.missing.empty())
        return out;
    if (const std::optional<Message> against = againstAdding(out, sketch)) {
        out.plan = MixPlan{};
        out.plan->outcome = MixOutcome::unreachable;
        out.plan->message = *against;
        return out;
    }
    MixRequest request;
    request.present_l = out.all_empty ? 0 : out.present_l - out.drained_l;
    request.present_percent = out.all_empty ? 0 : out.present.percent;
    request.empty_l = out.new_l() + (out.all_empty ? out.present_l : out.drained_l);
    request.wanted_percent = *wanted;
    request.drainable_l = sketch.coolant_plan.drainable_l;
    out.plan = planMix(request);
    if (out.plan->outcome != MixOutcome::invalid)
        out.reached = freezingOf(sketch, glycol, out.plan->percent);
    return out;
}

} // namespace siphonwright
