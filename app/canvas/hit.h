#pragma once

#include "app/canvas/canvas.h"

#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace siphonwright {

enum class HandleShape { square, round, diamond, ring };

/// A place on the drawing that a part can be taken by.
struct Handle {
    Handle(PartRef handled, Vec2 place, HandleShape drawn_as, bool is_turning)
        : part(std::move(handled)), at(place), shape(drawn_as), turns(is_turning)
    {}

    PartRef part;
    Vec2 at;
    HandleShape shape;
    bool turns; ///< the handle turns the part instead of moving it
};

/// What is under the pointer.
struct Hit {
    PartRef part;
    bool turns = false;
    int finding = -1;
    std::optional<double> along_mm; ///< on a hose: along its path, stub included
};

/// Which handles of hoses are asked for, where not all of them are: a large drawing has some hundred
/// thousand.
struct HandleWish {
    std::function<bool(const Hose&)> hose; ///< null: of every hose
    std::function<bool(Vec2)> place;       ///< null: everywhere
};
/// The handles there are now: hose points and small parts always, an outline's corners and the turning ring
/// only for what is selected.
std::vector<Handle> handlesOf(const Canvas& canvas, const HandleWish& wish = {});
/// Whether two parts are shown together: a hose and its points, the engine and its outlines, an area and its
/// corners.
bool belongTogether(const PartRef& a, const PartRef& b);
/// The whole that a corner, point or end is part of; itself for everything else.
PartRef ownerOf(const PartRef& part);
/// Whether it is an outline with corners to go into.
bool hasCorners(PartKind kind);

Hit hitTest(const Canvas& canvas, QPointF screen);

/// Where a part is on the drawing: its handle, or a place on it.
std::optional<Vec2> placeOf(const Canvas& canvas, const PartRef& part);

/// Parts in the order that Tab goes through them; corners only among the corners of one outline.
std::vector<PartRef> walkOrder(const Sketch& sketch, const PartRef& selected);
/// How many they are with nothing selected, without naming them: a large drawing has some hundred thousand.
std::size_t walkLength(const Sketch& sketch);

/// The outline that a corner belongs to, or that the part itself is; null for others.
const std::vector<Vec2>* outlineOf(const Sketch& sketch, const PartRef& part);
/// The outline of engine, jacket or area (or of the one a corner belongs to) as the canvas's view shows it;
/// empty for others and where the depth of an area is not known.
std::vector<Vec2> outlineSeen(const Canvas& canvas, const PartRef& part);
/// A heater's body and a tank as they stand in a view.
std::vector<Vec2> bodyOf(const Heater& heater, const Projection& view = {});
std::vector<Vec2> bodyOf(const SurgeTank& tank, const Projection& view = {});

} // namespace siphonwright
