#pragma once

#include "app/canvas/hose_places.h"
#include "app/canvas/snap_scene.h"
#include "app/canvas/viewport.h"
#include "app/document/document.h"
#include "app/drawing/balloon_places.h"
#include "app/drawing/elevation.h"
#include "app/photo/picture_cache.h"

#include <QStringList>

#include <functional>
#include <memory>
#include <string>

namespace siphonwright {

/// Where the pointer is, or the cross-hair when the keyboard places.
struct Pointer {
    Vec2 at;
    QPointF screen;
    Qt::KeyboardModifiers modifiers;
    bool button = false;   ///< the left button is held
    bool keyboard = false; ///< the cross-hair: it goes exactly where it is told
};

/// What the view lends to its tools.
struct Canvas {
    Canvas(Document& document_lent, Selection& selection_lent)
        : document(document_lent), selection(selection_lent)
    {}

    static constexpr double snap_reach_px = 7;

    Document& document;
    Selection& selection;
    Viewport viewport;
    QRectF area; ///< of the drawing on the widget, beside the rulers
    drawing::Palette palette = drawing::Palette::light();
    std::shared_ptr<const drawing::Contents> contents; ///< of a demonstration; null otherwise
    bool findings_shown = true;
    double lettering = 1; ///< times the usual size
    double reach = 1;     ///< how far a pointer takes hold, times the mouse's
    bool snapping = true;
    SnapSettings snap_settings;
    bool running = true;         ///< how the loops run is shown
    bool tinted = false;         ///< hoses by temperature
    bool applying = false;       ///< the running change of the document is a tool's own
    bool done = false;           ///< the tool has put down its part: back to selecting
    std::string heater_template; ///< empty: the first
    double text_scale = 1;       ///< of all text on the screen, times the usual size
    /// Points of the photograph were pointed at, for what a tool of the photograph needs a figure for.
    std::function<void(const std::vector<Vec2>& points)> photo_points;
    mutable photo::PictureCache pictures;
    mutable drawing::KeptBalloons kept_balloons;
    mutable HosePlaces hose_places;
    BoxesOfHoses hose_boxes; ///< of the drag before, or what is pressed

    const Sketch& sketch() const { return document.sketch(); }
    const Projection& view() const { return viewport.view(); }
    const Layout& layout() const { return document.analysis().layout; }
    UnitSystem units() const;
    QString length(double mm) const; ///< as text in the user's units

    bool apply(const QString& text, const std::function<void(Sketch&)>& edit, int gesture = 0);
    /// Snap, unless switched off, held off with Alt, or told exactly by keys.
    Snapped snap(Vec2 raw, const SnapScene& scene, const Pointer& pointer) const;
    /// One nudge: coarse or fine, mm.
    double nudgeStep(bool fine) const;
    drawing::Style style() const;
    /// Where the findings' balloons stand now.
    const drawing::Balloons& balloons() const;
    /// The photograph, decoded; null without one.
    const drawing::Picture* picture() const { return pictures.of(sketch()); }
};

} // namespace siphonwright
