#include "core/running/circuit.h"

#include "core/layout/wording.h"
#include "core/physics/heat_loss.h"
#include "core/physics/warm_up.h"
#include "core/quantity/constants.h"
#include "core/running/path_elements.h"
#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// Temperatures for which a hose's heat loss per kelvin is taken: it changes by some 10 % over the range.
constexpr double usual_coolant_degC = 45;
constexpr double usual_air_degC = 0;
constexpr double usual_inside_film_W_per_m2_K = 70; ///< slow laminar flow in 3/4 in hose
/// A jacket's passages: wide beside any hose, so that they lose nothing; only their Reynolds number shows.
constexpr double jacket_passage_m = 0.03;

Surroundings aroundHose(const Sketch& sketch, const Assumptions& assumed)
{
    Surroundings around;
    around.air_degC = sketch.site.ambient_degC.value.value_or(usual_air_degC);
    around.wind_m_per_s =
        std::max(0.0, sketch.site.wind_m_per_s.value.value_or(0) * assumed[Assumed::hose_wind_share]);
    return around;
}

HoseWall wallOf(const Route& route)
{
    HoseWall wall;
    wall.bore_mm = route.bore_mm;
    wall.wall_mm = route.hose->wall_mm;
    wall.insulation_mm = route.hose->insulation_mm;
    return wall;
}

/// Let a hose's elements lose heat to the air over their lengths.
void loseHeat(std::vector<LoopElement>& elements, const std::optional<HoseLoss>& loss, double air_degC)
{
    if (!loss)
        return;
    for (LoopElement& element : elements)
        element.heat = Heat::toAir(std::max(0.0, loss->conductance_W_per_m_K), element.length_m, air_degC);
}

LoopElement chamberOf(const Sketch& sketch, const HeaterLoop& loop, const Plumb& plumb,
                      const Assumptions& assumed)
{
    const Heater& heater = *loop.heater;
    const Vec3 inlet = nozzleOpening(heater, NozzleKind::inlet).at;
    const Vec3 outlet = nozzleOpening(heater, NozzleKind::outlet).at;
    const Surroundings around = aroundHose(sketch, assumed);
    LoopElement chamber;
    chamber.length_m = distance(inlet, outlet) * m_per_mm;
    chamber.rise_m = (plumb.height(outlet) - plumb.height(inlet)) * m_per_mm;
    chamber.bore_m = heater.chamber_bore_mm * m_per_mm;
    chamber.share_at_outlet = assumed[Assumed::share_at_outlet];
    const double area_m2 = std::numbers::pi * heater.diameter_mm * heater.length_mm * 1e-6;
    chamber.heat = Heat::toAir(blockFilm_W_per_m2_K(around.wind_m_per_s) * area_m2, around.air_degC);
    return chamber;
}

/// The first thing that a circuit cannot do without.
CircuitOf missingOf(const HeaterLoop& loop)
{
    CircuitOf out;
    const auto lacks = [&out](PartRef part, std::string what) {
        if (out.missing.empty()) {
            out.missing_of = std::move(part);
            out.missing = std::move(what);
        }
    };
    const std::string name = nameOfHeater(*loop.heater);
    if (!loop.supply || !loop.return_ || !loop.supply_port || !loop.return_port)
        lacks(refOf(*loop.heater), "the loop of " + name + " is not closed");
    for (const ResolvedHose* hose : {loop.supply, loop.return_})
        if (hose && !(*hose)->bore_known)
            lacks(refOf(*(*hose)->hose), "the bore of " + nameOfHose(*(*hose)->hose) + " is not entered");
        else if (hose && (*hose)->path.line.empty())
            lacks(refOf(*(*hose)->hose), nameOfHose(*(*hose)->hose) + " has no length");
    if (!loop.heater->power_W.known())
        lacks(refOf(*loop.heater), "the power of " + name + " is not entered");
    return out;
}

} // namespace

double reachedShare(const Layout& layout, const HeaterLoop& loop, const Assumptions& assumed)
{
    const double apart_mm = distance(loop.supply_port->position, loop.return_port->position);
    const double length_mm = layout.jacket ? layout.jacket->diagonal_mm : apart_mm;
    return std::clamp(sweptShare(apart_mm, length_mm) * assumed[Assumed::swept_share], 0.02, 0.98);
}

std::optional<double> litresInEngine(const Sketch& sketch, const Assumptions& assumed)
{
    if (!sketch.engine)
        return std::nullopt;
    if (sketch.engine->coolant_volume_l.known())
        return sketch.engine->coolant_volume_l.value;
    if (sketch.engine->displacement_l.known())
        return *sketch.engine->displacement_l.value * assumed[Assumed::coolant_per_litre];
    return std::nullopt;
}

Loop Circuit::loop(double power_W, double block_degC) const
{
    Loop out;
    for (const auto* stretch : {&chamber, &return_hose, &jacket, &supply_hose})
        out.elements.insert(out.elements.end(), stretch->begin(), stretch->end());
    for (std::size_t i = 0; i < chamber.size(); ++i)
        out.elements[i].heat.power_W = power_W / double(chamber.size());
    const std::size_t first_of_jacket = chamber.size() + return_hose.size();
    for (std::size_t i = 0; i < jacket.size(); ++i)
        out.elements[first_of_jacket + i].heat.surroundings_degC = block_degC;
    return out;
}

CircuitOf circuitOf(const Sketch& sketch, const Layout& layout, const HeaterLoop& loop,
                    const Assumptions& assumed)
{
    CircuitOf out = missingOf(loop);
    if (!out.missing.empty())
        return out;
    const std::optional<double> coolant_l = litresInEngine(sketch, assumed);
    if (!coolant_l) {
        out.missing_of = {PartKind::engine, {}, 0};
        out.missing = "neither the engine's coolant volume nor its displacement is entered";
        return out;
    }
    Circuit circuit;
    circuit.heater = loop.heater->id;
    const Surroundings around = aroundHose(sketch, assumed);
    PathElements paths(sketch, layout, assumed, circuit.parts);
    circuit.return_hose = paths.of(*loop.return_);
    circuit.supply_hose = paths.of(*loop.supply);
    circuit.chamber = {chamberOf(sketch, loop, layout.plumb, assumed)};
    const auto loss_of = [&](const ResolvedHose& hose) {
        return hoseLoss(wallOf(*hose), usual_coolant_degC, usual_inside_film_W_per_m2_K, around);
    };
    const std::optional<HoseLoss> return_loss = loss_of(*loop.return_);
    loseHeat(circuit.return_hose, return_loss, around.air_degC);
    loseHeat(circuit.supply_hose, loss_of(*loop.supply), around.air_degC);
    circuit.return_surface_share = return_loss ? return_loss->surface_share : 0;
    circuit.return_wall_J_per_K =
        wallHeatCapacity_J_per_m_K(wallOf(**loop.return_)) * (*loop.return_)->length_mm * m_per_mm;
    circuit.supply_wall_J_per_K =
        wallHeatCapacity_J_per_m_K(wallOf(**loop.supply)) * (*loop.supply)->length_mm * m_per_mm;
    circuit.swept_share = reachedShare(layout, loop, assumed);

    LoopElement jacket;
    jacket.length_m = distance(loop.supply_port->position, loop.return_port->position) * m_per_mm;
    for (const auto* stretch : {&circuit.chamber, &circuit.return_hose, &circuit.supply_hose})
        for (const LoopElement& element : *stretch)
            jacket.rise_m -= element.rise_m; // so that the loop closes to the last bit
    jacket.bore_m = jacket_passage_m;
    jacket.heat = Heat::toBlock(jacketExchange_W_per_K(*coolant_l, circuit.swept_share) *
                                    assumed[Assumed::jacket_exchange],
                                assumed[Assumed::shown_block]);
    circuit.jacket = {jacket};
    out.circuit = std::move(circuit);
    return out;
}

} // namespace siphonwright
