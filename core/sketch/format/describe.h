#pragma once

#include "core/sketch/format/field.h"
#include "core/sketch/sketch.h"
#include "core/sketch/words.h"

#include <concepts>
#include <type_traits>

/// One description of every struct of the document, from which the reader, the writer, the check and the
/// schema are made, so that they cannot disagree. A visitor has
///     void object(std::string_view name, std::string_view meaning);  called once, first
///     template <class M> void operator()(const Field& field, M& member);  called per member, in file order
namespace siphonwright {

template <class T, class Of>
concept Is = std::same_as<std::remove_const_t<T>, Of>; ///< Of, or a const one

/// An enum of the document.
template <class T>
concept Word = std::is_enum_v<T> && requires
{
    Words<T>::list;
};

template <class T>
struct IsFact : std::false_type {};
template <class T>
struct IsFact<Fact<T>> : std::true_type {};

constexpr double farthest_mm = 100'000;

constexpr Field coordinate(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(-farthest_mm, farthest_mm, "mm");
}
constexpr Field extent(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(0, farthest_mm, "mm");
}
constexpr Field bore(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(0.5, 300, "mm");
}
constexpr Field angle(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(-360, 360, "deg");
}
constexpr Field temperature(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(-100, 1000, "degC");
}
constexpr Field outline(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.items(3, 2000).needed();
}
constexpr Field identity(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.text(1, 200).needed();
}

/// A fact is an object of its value, with the member's own limits, and where it comes from.
template <class V, class F>
requires IsFact<std::remove_const_t<F>>::value void describeFact(V& v, const Field& field, F& fact)
{
    v(field.as("value"), fact.value);
    v(Field{"source", "Where the value comes from"}, fact.source);
}

template <class V, Is<Vec2> T>
void describe(V& v, T& at)
{
    v.object("point_2d", "A point in the side elevation");
    v(coordinate("x", "Along the engine, to the right on the drawing").needed(), at.x);
    v(coordinate("z", "Up from the datum").needed(), at.z);
}

template <class V, Is<Vec3> T>
void describe(V& v, T& at)
{
    v.object("point_3d", "A point in space");
    v(coordinate("x", "Along the engine, to the right on the drawing").needed(), at.x);
    v(coordinate("y", "Across the engine, away from the viewer").needed(), at.y);
    v(coordinate("z", "Up from the datum").needed(), at.z);
}

template <class V, Is<Direction> T>
void describe(V& v, T& towards)
{
    v.object("direction", "A direction by two angles");
    v(angle("azimuth_deg", "In plan, from right towards away from the viewer"), towards.azimuth_deg);
    v(angle("elevation_deg", "Above level"), towards.elevation_deg);
}

template <class V, Is<StubElbow> T>
void describe(V& v, T& elbow)
{
    v.object("stub_elbow", "An elbow or angled adapter after the straight part of a stub");
    v(Field{"direction", "Where the hose leaves"}.needed(), elbow.direction);
    v(extent("radius_mm", "Radius of its centreline"), elbow.radius_mm);
    v(extent("leg_mm", "From the corner to the hose end's stop"), elbow.leg_mm);
}

template <class V, Is<Stub> T>
void describe(V& v, T& stub)
{
    v.object("stub", "The metal part between an opening and the hose");
    v(extent("length_mm", "Straight along the opening's axis"), stub.length_mm);
    v(Field{"elbow", "Left out: a straight stub"}, stub.elbow);
}

} // namespace siphonwright
