#pragma once

#include "core/proposing/hose_rules.h"
#include "core/proposing/propose.h"

#include <optional>
#include <vector>

/// Where the heater may hang, with which ports and bore: what a layout is built on.
namespace siphonwright {

/// Everything but the routes.
struct HeaterSite {
    Sketch sketch; ///< the heater in its place, ports with their roles, the heater's own hoses left out
    Hose supply;   ///< role, ends, bore, name; without route
    Hose return_;
    double turned_deg = 0;
    double bore_mm = 0;
    double straight_mm = 0;      ///< of both hoses if they were straight: none here is shorter
    bool holds_on_grades = true; ///< the heater's place, on the corners of the grade envelope
    double promise = 0;          ///< what it is laid by, the least first
};

struct PortPair {
    Id supply;
    Id return_;
    std::optional<Direction> supply_elbow; ///< where its elbow is turned to, if it has to be
    std::optional<Direction> return_elbow;
};

/// Ways to turn a port's elbow about its stub so that the hose leaves it level or downwards, by 45 degrees at
/// a time; the one nothing stands for is as it is. An elbow that leads so already is left alone.
std::vector<std::optional<Direction>> elbowTurns(const Port& port, Vec3 up);

/// Pairs of ports that keep the rules on ports: those with roles, else spare ones too; with their elbows
/// turned where that is needed. \param removed what the others fell to
std::vector<PortPair> portPairs(const Sketch& sketch, const Id& heater, std::vector<RemovedBy>& removed);

/// Bores to try, mm, ascending: those at least as large as the heater's manual asks and within what the
/// narrowest opening allows.
std::vector<double> boresFor(const Sketch& sketch, const ProposeOptions& options, const Heater& heater);

/// Places in the space: a coarse grid of at most 6 x 3 in plan, and at most 4 heights between what the rules
/// on the ground and on the jacket leave there on every grade of the envelope (else on the level; all of the
/// space's height where they leave none); and the
/// drawn place where it lies inside. The drawn place alone without a space.
std::vector<Vec3> placesIn(const Sketch& sketch, const ProposeOptions& options, const Heater& heater);
/// Places round one, half a step of the coarse grid away, inside the space.
std::vector<Vec3> placesRound(const ProposeOptions& options, Vec3 place);

/// The sketch as it is before any place is chosen: the heater's hoses gone, roles of ports that nothing is on
/// any more spare.
Sketch cleared(const Sketch& sketch, const Id& heater);

/// A site in a cleared sketch.
HeaterSite siteAt(const Sketch& cleared, const Sketch& drawn, const Id& heater, Vec3 place, double turned_deg,
                  const PortPair& ports, double bore_mm, const ProposeOptions& options);

double priceWeight(const ProposeOptions& options, double bore_mm);

/// What straight hoses at a site promise for a ranking: their length; the price of their length; for the
/// flow, own choice, their length by the height of the return port over the heater and the fourth power of
/// the bore (after the friction of a slow flow in a straight tube).
double promiseOf(const Sketch& drawn, const HeaterSite& site, const ProposeOptions& options);

} // namespace siphonwright
