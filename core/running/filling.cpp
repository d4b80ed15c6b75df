#include "core/running/filling.h"

#include "core/layout/wording.h"
#include "core/running/narrowing.h"
#include "core/running/running.h"
#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

LoopOpening openingOf(const Port& port, double bore_mm)
{
    return {bore_mm, direction(port.axis.azimuth_deg, port.axis.elevation_deg)};
}

LoopOpening openingOf(const Heater& heater, NozzleKind kind, double bore_mm)
{
    return {bore_mm, nozzleOpening(heater, kind).axis};
}

void addParts(FillLoop& loop, const ResolvedHose& hose, LoopPart on)
{
    for (const InlinePart& part : hose->hose->parts) {
        const double along_mm =
            std::clamp(hose->hose_from_mm + part.along_mm, hose->hose_from_mm, hose->hose_to_mm);
        if (part.kind == InlineKind::isolation_valve)
            loop.valves.push_back({on, along_mm, part.open});
        if (part.kind == InlineKind::bleed && part.open)
            loop.bleeds.push_back({on, along_mm, true});
    }
}

FillLoop fillLoopOf(const HeaterLoop& loop)
{
    const Heater& heater = *loop.heater;
    FillLoop out;
    out.supply = (*loop.supply)->path;
    out.return_hose = (*loop.return_)->path;
    out.chamber = {heaterPoint(heater, {0, 0, heater.chamber_bottom_mm}),
                   heaterPoint(heater, {0, 0, heater.chamber_top_mm}), heater.chamber_bore_mm};
    out.supply_port = openingOf(*loop.supply_port, (*loop.supply)->from.bore_mm);
    out.inlet = openingOf(heater, NozzleKind::inlet, (*loop.supply)->to.bore_mm);
    out.outlet = openingOf(heater, NozzleKind::outlet, (*loop.return_)->from.bore_mm);
    out.return_port = openingOf(*loop.return_port, (*loop.return_)->to.bore_mm);
    addParts(out, *loop.supply, LoopPart::supply);
    addParts(out, *loop.return_, LoopPart::return_hose);
    out.element_top_mm = loop.heights->element_top_mm;
    return out;
}

/// Block full and hoses empty: the open valves start shut and are opened one after the other, supply first.
void shutForStart(FillRequest& request)
{
    for (std::size_t i = 0; i < request.loops.size(); ++i)
        for (std::size_t k = 0; k < request.loops[i].valves.size(); ++k)
            if (request.loops[i].valves[k].open) {
                request.loops[i].valves[k].open = false;
                request.then_open.push_back({i, k});
            }
}

FillMethod methodOf(FillBy by)
{
    switch (by) {
    case FillBy::vacuum:
        return FillMethod::under_vacuum;
    case FillBy::below:
        return FillMethod::from_below;
    case FillBy::filler:
        break;
    }
    return FillMethod::from_filler;
}

/// The jacket between its lowest and its highest place, and the tank over it.
std::vector<JacketVolume> jacketOf(const JacketHeights& heights, double coolant_l, const Assumptions& assumed)
{
    constexpr double over_mm = 1000;
    const double over_ml = std::max(1.0, assumed[Assumed::tank_per_metre] * coolant_l) * 1000;
    return {{heights.lowest_mm, 0},
            {heights.highest_mm, coolant_l * 1000},
            {heights.highest_mm + over_mm, coolant_l * 1000 + over_ml}};
}

/// The level that so much less coolant leaves, by the jacket's own volumes.
double levelWithout(const std::vector<JacketVolume>& jacket, double level_mm, double short_ml)
{
    if (short_ml <= 0)
        return level_mm;
    double left_ml = short_ml;
    for (std::size_t i = jacket.size() - 1; i > 0 && left_ml > 0; --i) {
        const JacketVolume& low = jacket[i - 1];
        const JacketVolume& high = jacket[i];
        const bool last = i + 1 == jacket.size();
        if (!last && level_mm <= low.level_mm)
            continue;
        const double per_mm = (high.volume_ml - low.volume_ml) / (high.level_mm - low.level_mm);
        const double fall_mm = std::min(left_ml / per_mm, std::max(0.0, level_mm - low.level_mm));
        level_mm -= fall_mm;
        left_ml -= fall_mm * per_mm;
    }
    return level_mm;
}

double volumeAt(const std::vector<JacketVolume>& jacket, double level_mm)
{
    std::size_t i = 1;
    while (i + 1 < jacket.size() && level_mm > jacket[i].level_mm)
        ++i;
    const JacketVolume& low = jacket[i - 1];
    const JacketVolume& high = jacket[i];
    const double per_mm = (high.volume_ml - low.volume_ml) / (high.level_mm - low.level_mm);
    return std::max(0.0, low.volume_ml + per_mm * (level_mm - low.level_mm));
}

/// What is filled to.
const std::optional<double>& fillLevel(const Layout& layout)
{
    return layout.levels.cold_full_mm ? layout.levels.cold_full_mm : layout.levels.cold_min_mm;
}

/// Highest place of a port's bore where it opens into the jacket. Its own bore, whatever hose end sits in it:
/// coolant that is let out runs out of the port before a hose is on it.
double crownOf(const Port& port, const PathEnd& end, const Plumb& plumb)
{
    const double bore_mm = end.attached ? end.attached->bore_mm : end.bore_mm;
    const LoopOpening opening = openingOf(port, bore_mm);
    return dot(end.opening, plumb.up()) + bore_mm / 2 * length(cross(plumb.up(), unit(opening.axis)));
}

/// What a pocket that does not close its bore leaves open at its crest.
void findOpening(PocketFound& found, const AirPocket& pocket, const Filled& end)
{
    constexpr double worth_counting_ml = 0.5; // what lies in a corner bothers no flow
    for (const Throat& throat : end.network->throats) {
        if (throat.kind != ThroatKind::crest || throat.loop != pocket.loop || throat.part != pocket.part ||
            throat.along_mm != pocket.along_mm)
            continue;
        found.bore_mm = throat.bore_mm;
        const double level_mm =
            std::min(end.state.cells[throat.left].level_mm, end.state.cells[throat.right].level_mm);
        if (!found.closes_bore && found.volume_ml >= worth_counting_ml && level_mm > throat.floor_mm)
            found.open_share = openShare(throat.bore_mm, level_mm - throat.floor_mm);
    }
}

/// Where a pocket lies on the drawing.
PocketFound placed(const AirPocket& pocket, const HeaterLoop& loop, const Filled& filled)
{
    PocketFound out;
    out.heater = loop.heater->id;
    out.volume_ml = pocket.gas_ml;
    out.height_mm = pocket.forward_mm;
    out.reverse_mm = pocket.reverse_mm;
    out.closes_bore = pocket.closes_forward;
    out.along_mm = pocket.along_mm;
    const ResolvedHose* hose = pocket.part == LoopPart::supply        ? loop.supply
                               : pocket.part == LoopPart::return_hose ? loop.return_
                                                                      : nullptr;
    if (hose) {
        out.hose = hose->id();
        out.at = (*hose)->path.line.at(pocket.along_mm);
        for (const std::size_t i : pocket.cells) {
            const Cell& cell = filled.network->cells[i];
            if (cell.part == pocket.part)
                out.stretches.push_back({cell.from_mm, cell.to_mm, filled.state.cells[i].level_mm});
        }
    } else {
        out.at = heaterPoint(*loop.heater, {0, 0, loop.heater->chamber_top_mm});
    }
    return out;
}

/// Pockets of the end state, with what running the engine does to each.
void findPockets(Filling& out, const FillPlanOf& plan, const Filled& filled, const PurgeResult& purged)
{
    for (const PurgedPocket& one : purged.pockets) {
        PocketFound found = placed(one.pocket, plan.loops[one.pocket.loop], filled);
        findOpening(found, one.pocket, filled);
        found.velocity_m_per_s = one.velocity_m_per_s;
        found.clears = one.clears;
        found.cleared_by_running = one.verdict;
        out.pockets.push_back(std::move(found));
    }
}

void coverElements(Filling& out, const FillPlanOf& plan, const FillResult& filled)
{
    std::size_t element = 0;
    for (std::size_t i = 0; i < plan.loops.size(); ++i) {
        LoopAir& air = out.loops[i];
        if (plan.loops[i].heights->element_top_mm && element < filled.covered_at_mm.size()) {
            air.element_known = true;
            air.element_covered_at_mm = filled.covered_at_mm[element++];
            air.element_covered = air.element_covered_at_mm.has_value();
        }
        const std::vector<Cell>& cells = filled.end.network->cells;
        for (std::size_t c = 0; c < cells.size(); ++c)
            if (cells[c].loop == i && cells[c].part == LoopPart::chamber)
                air.chamber_gas_ml +=
                    std::max(0.0, cells[c].capacity_ml - filled.end.state.cells[c].liquid_ml);
    }
}

} // namespace

bool Filling::closedBore(const Id& heater) const
{
    return std::any_of(pockets.begin(), pockets.end(), [&](const PocketFound& pocket) {
        return pocket.heater == heater && pocket.closes_bore;
    });
}

PumpFlow pumpFlow(const Sketch& sketch, const HeaterLoop& loop, const LoopRun& run, const FluidTable& coolant,
                  const Assumptions& assumed)
{
    const bool suction = loop.supply_port->kind == PortKind::lower_hose_tee;
    const double head_kPa = sketch.fill.pump_head_kPa.value.value_or(
        assumed[suction ? Assumed::pump_suction : Assumed::pump_head]);
    PumpFlow out;
    out.sense = suction ? FlowSense::reverse : FlowSense::forward;
    if (!run.resistance || run.resistance->shut() || head_kPa <= 0)
        return out;
    FluidState state;
    const double running_degC = assumed[Assumed::running_coolant];
    state.density_kg_per_m3 = coolant.density(running_degC);
    state.viscosity_Pa_s = std::exp(coolant.lnViscosity(running_degC));
    state.specific_heat_J_per_kg_K = coolant.specificHeat(running_degC);
    const std::vector<FluidState> states(run.resistance->size(), state);
    const DrivenFlow flow = run.resistance->flowLosing(head_kPa * 1000, !suction, states);
    out.flow_l_per_min = std::abs(flow.flow_kg_per_s) / state.density_kg_per_m3 * 1000 * 60;
    return out;
}

std::optional<Drained> drainedBlock(const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    const std::optional<double> coolant_l = litresInEngine(sketch, assumed);
    const std::optional<double>& full_mm = fillLevel(layout);
    if (sketch.fill.start != FillStart::block_drained || !layout.jacket || !coolant_l || *coolant_l <= 0 ||
        !full_mm)
        return std::nullopt;
    const std::vector<JacketVolume> jacket = jacketOf(*layout.jacket, *coolant_l, assumed);
    if (sketch.fill.drained_l) {
        const double drained_ml = std::min(*sketch.fill.drained_l * 1000, volumeAt(jacket, *full_mm));
        return Drained{levelWithout(jacket, *full_mm, drained_ml), drained_ml};
    }
    double level_mm = *full_mm;
    for (const HeaterLoop& loop : loopsOf(sketch, layout)) {
        if (loop.supply && loop.supply_port && !(*loop.supply)->path.line.empty())
            level_mm = std::min(level_mm, crownOf(*loop.supply_port, (*loop.supply)->from, layout.plumb));
        if (loop.return_ && loop.return_port && !(*loop.return_)->path.line.empty())
            level_mm = std::min(level_mm, crownOf(*loop.return_port, (*loop.return_)->to, layout.plumb));
    }
    return Drained{level_mm, volumeAt(jacket, *full_mm) - volumeAt(jacket, level_mm)};
}

FillPlanOf fillRequestOf(const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    FillPlanOf out;
    const auto lacks = [&out](PartRef part, const char* what) {
        out.missing_of = std::move(part);
        out.missing = what;
        return out;
    };
    for (const HeaterLoop& loop : loopsOf(sketch, layout))
        if (loop.supply && loop.return_ && loop.supply_port && loop.return_port &&
            !(*loop.supply)->path.line.empty() && !(*loop.return_)->path.line.empty())
            out.loops.push_back(loop);
    if (out.loops.empty())
        return lacks({}, "there is no loop with a heater yet");
    const std::optional<double> coolant_l = litresInEngine(sketch, assumed);
    if (!layout.jacket || !coolant_l || *coolant_l <= 0)
        return lacks({PartKind::engine, {}, 0},
                     "neither the engine's coolant volume nor its displacement is entered");
    const std::optional<double>& level_mm = fillLevel(layout);
    if (!level_mm)
        return lacks({PartKind::tank, {}, 0}, "the coolant level at cold full is not entered");
    FillRequest request;
    request.plumb = layout.plumb;
    request.method = methodOf(sketch.fill.by);
    request.prefilled = sketch.fill.start == FillStart::hoses_full;
    request.prefilled_air_ml = sketch.fill.hose_air_ml.value_or(0);
    request.jacket = jacketOf(*layout.jacket, *coolant_l, assumed);
    request.target_level_mm = levelWithout(request.jacket, *level_mm, sketch.fill.short_by_ml);
    for (const HeaterLoop& loop : out.loops)
        request.loops.push_back(fillLoopOf(loop));
    out.drained = drainedBlock(sketch, layout, assumed);
    if (out.drained)
        request.drained_to_mm = out.drained->level_mm;
    // What is pumped in from below comes through the valves.
    const bool empty_hoses =
        sketch.fill.start == FillStart::block_full || sketch.fill.start == FillStart::block_drained;
    if (empty_hoses && sketch.fill.by != FillBy::below)
        shutForStart(request);
    const CoolantOf coolant = coolantOf(sketch, assumed);
    constexpr double filling_degC = 20;
    if (coolant.fluid)
        request.density_kg_per_m3 = coolant.fluid->at(filling_degC).density_kg_per_m3;
    out.request = std::move(request);
    return out;
}

FillResult fillAsPlanned(const FillRequest& request, LevelTables* kept)
{
    FillResult filled = fill(request, kept);
    if (filled.status != FillStatus::does_not_settle || request.then_open.empty())
        return filled;
    // A valve that opens between very unequal heads.
    FillRequest open = request;
    for (const ValvePlace& place : open.then_open)
        open.loops[place.loop].valves[place.valve].open = true;
    open.then_open.clear();
    return fill(open, kept);
}

Filling airIn(const Filled& state, const FillPlanOf& plan)
{
    Filling out;
    if (plan.request)
        out.density_kg_per_m3 = plan.request->density_kg_per_m3;
    for (const AirPocket& pocket : airPockets(state)) {
        out.pockets.push_back(placed(pocket, plan.loops[pocket.loop], state));
        findOpening(out.pockets.back(), pocket, state);
    }
    return out;
}

Filling fillOf(const Sketch& sketch, const Layout& layout, const Running* running, const Assumptions& assumed,
               LevelTables* kept)
{
    Filling out;
    const FillPlanOf plan = fillRequestOf(sketch, layout, assumed);
    out.missing = plan.missing;
    out.missing_of = plan.missing_of;
    if (!plan.request)
        return out;
    const FillResult filled = fillAsPlanned(*plan.request, kept);
    out.status = filled.status;
    if (filled.status != FillStatus::filled && filled.status != FillStatus::level_not_reached) {
        out.missing = "filling could not be computed: " + filled.message;
        return out;
    }
    out.density_kg_per_m3 = plan.request->density_kg_per_m3;
    out.level_mm = filled.jacket_level_mm;
    out.coldest_level_mm = out.level_mm;
    out.coolant_ml = filled.coolant_ml;
    if (plan.drained) {
        out.drained_ml = plan.drained->drained_ml;
        out.refill_ml = filled.poured_ml - filled.left_ml;
    }
    PurgeRequest purge_request;
    purge_request.top_up_level_mm = out.level_mm;
    for (const HeaterLoop& loop : plan.loops) {
        LoopAir air;
        air.heater = loop.heater->id;
        air.bypasses_radiator = loop.supply_port->kind == PortKind::lower_hose_tee;
        const LoopRun* run = running ? running->loopOf(air.heater) : nullptr;
        if (run && run->missing.empty() && running->coolant)
            air.running = pumpFlow(sketch, loop, *run, *running->coolant, assumed);
        purge_request.flows.push_back(air.running);
        out.loops.push_back(air);
    }
    coverElements(out, plan, filled);
    const PurgeResult purged = purge(filled.end, purge_request);
    findPockets(out, plan, filled.end, purged);
    out.top_up_ml = std::max(0.0, purged.topped_up_ml);
    const CoolantOf coolant = coolantOf(sketch, assumed);
    if (coolant.fluid && sketch.site.coldest_ambient_degC.known()) {
        const double cold = coolant.fluid->at(*sketch.site.coldest_ambient_degC.value).density_kg_per_m3;
        const CooledDown cooled = coolDown(filled.end, plan.request->density_kg_per_m3 / cold);
        if (cooled.status == FillStatus::filled)
            out.coldest_level_mm = cooled.jacket_level_mm;
    }
    return out;
}

} // namespace siphonwright
