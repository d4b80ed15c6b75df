#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<HoseEnd> T>
void describe(V& v, T& end)
{
    v.object("hose_end", "What a hose's end is pushed onto: a port, a heater's nozzle, or nothing yet");
    v(Field{"port", "Id of the port it is on"}.text(0, 200), end.port);
    v(Field{"heater", "Id of the heater it is on"}.text(0, 200), end.heater);
    v(Field{"nozzle", "Which nozzle of the heater"}, end.nozzle);
    v(Field{"open_at", "Where an end that is on nothing lies"}, end.open_at);
    v(bore("bore_mm", "Bore of the hose end itself"), end.bore_mm);
    v(extent("engagement_mm", "Length of hose pushed over it"), end.engagement_mm);
}

template <class V, Is<RoutePoint> T>
void describe(V& v, T& point)
{
    v.object("route_point", "A corner of a hose's centreline");
    v(Field{"at", "Where the straights meet"}.needed(), point.at);
    v(extent("radius_mm", "Bend radius of the centreline"), point.radius_mm);
    v(Field{"bend", "What makes the bend"}, point.bend);
}

template <class V, Is<InlinePart> T>
void describe(V& v, T& part)
{
    v.object("inline_part", "A part in a hose");
    v(Field{"kind", "What it is"}.needed(), part.kind);
    v(coordinate("along_mm", "Distance from where the hose starts").needed(), part.along_mm);
    v(extent("length_mm", "Along the hose"), part.length_mm);
    v(bore("bore_mm", "Its own bore; a reducer: the bore from here on"), part.bore_mm);
    v(Field{"open", "Of valves and bleeds"}, part.open);
}

template <class V, Is<Hose> T>
void describe(V& v, T& hose)
{
    v.object("hose", "A hose in the direction of flow: supply from engine to heater, return back");
    v(identity("id", "Unique in the sketch"), hose.id);
    v(Field{"name", "What people call it"}, hose.name);
    v(Field{"role", "Which way it flows"}.needed(), hose.role);
    v(Field{"from", "Where it starts"}.needed(), hose.from);
    v(Field{"to", "Where it ends"}.needed(), hose.to);
    v(Field{"points", "Corners between the ends"}.items(0, 5000), hose.points);
    v(bore("bore_mm", "Inside diameter"), hose.bore_mm);
    v(Field{"wall_mm", "Wall thickness"}.within(0, 300, "mm"), hose.wall_mm);
    v(extent("min_bend_radius_mm", "To the inside of the bend; left out: by bores"), hose.min_bend_radius_mm);
    v(Field{"insulation_mm", "Thickness of insulation"}.within(0, 1000, "mm"), hose.insulation_mm);
    v(coordinate("clips_mm", "Clips, as distances from where the hose starts"), hose.clips_mm);
    v(Field{"parts", "In-line parts"}, hose.parts);
}

} // namespace siphonwright
