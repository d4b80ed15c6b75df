#pragma once

#include "core/layout/layout.h"
#include "core/sketch/sketch.h"

#include <vector>

/// How a proposed hose is made up: bend radius, ends, valve and clips, as one would build it.
namespace siphonwright {

/// Proposals keep off limits by so much, own choice: nobody builds within 5 mm.
constexpr double building_margin_mm = 5;
/// Own choice, after common practice (no published source): ends and valves leave five sixths of a hose's
/// bore.
constexpr double end_bore_share = 5.0 / 6;
/// Between two clips, own choice: what is left of the rule's 300 mm lets a clip step aside of a valve.
constexpr double clip_spacing_mm = 260;
/// From a port's end of the hose to the middle of its isolation valve, own choice.
constexpr double valve_from_port_mm = 100;

/// Centreline radius of a bend that keeps to the rule on tight bends in this sketch, mm: the hose's own least
/// radius or the rule's in bores, to the inside, rounded up to the next 5 mm.
double leastRadius(const Sketch& sketch, const Hose& hose);

/// Put a hose on another bore (mm): its ends in proportion, or by end_bore_share where it had none. Another
/// bore is another hose, whose own least bend radius is not known.
void putOnBore(Hose& hose, double bore_mm);

/// Clips from end to end, no two farther apart than clip_spacing_mm, none on an in-line part. The hose's own
/// clips go.
void clipEvenly(Hose& hose, double length_mm);

/// An isolation valve near the port end, in the middle of the hose's first straight there where that is
/// shorter than twice valve_from_port_mm.
void valveAtPort(Hose& hose, const Route& route);

/// A hose led through points, with its one isolation valve and its clips.
/// \param hose its role, ends and bore; its points, parts and clips are replaced
Hose laidThrough(const Sketch& sketch, Hose hose, const std::vector<RoutePoint>& points);

} // namespace siphonwright
