#pragma once

#include "app/canvas/canvas.h"
#include "app/canvas/elevation_view.h"
#include "app/canvas/hit.h"
#include "app/canvas/hose_pictures.h"
#include "app/canvas/kept_ground.h"
#include "app/canvas/shelf_part.h"
#include "app/canvas/tool.h"
#include "app/drawing/ghost.h"
#include "app/drawing/hose_layer.h"

#include <QBasicTimer>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QPointer>

namespace siphonwright {

/// What fingers on the screen are doing.
struct Fingers {
    enum class Doing {
        nothing,
        waiting, ///< one is down and has not moved
        pressing,
        moving_paper, ///< two are or were down
        held          ///< the menu is open
    };
    Doing doing = Doing::nothing;
    QPointF start;
    QPointF middle; ///< between two
    double apart_px = 1;
    QPointF tapped;
    QElapsedTimer since_tap;
    QBasicTimer hold;
};

/// Pan, zoom, tool and pointer.
struct ElevationView::State {
    State(Document& document, Selection& selection) : canvas(document, selection) {}

    static constexpr int rest_ms = 300;       ///< then all is drawn anew, what changed with the rest
    static constexpr double zoom_step = 1.25; ///< by one press or one notch of the wheel

    Canvas canvas;
    ToolKind kind = ToolKind::select;
    std::unique_ptr<Tool> tool;
    std::shared_ptr<const drawing::Ghost> ghost; ///< over the drawing; null: none
    bool grid_shown = true;
    QPointer<ElevationView> partner; ///< the other view of the same drawing
    bool follows = false;            ///< is told by the partner what to show
    bool levelled = false;
    QTransform shown;                       ///< where the paper was when it was painted last
    drawing::HoseLayer hoses;               ///< those that did not change since the last frame
    std::unique_ptr<HosePictures> pictures; ///< of those
    KeptGround ground;                      ///< under them
    QBasicTimer rest;                       ///< since something changed
    std::optional<QTransform> fit;   ///< what bringing the whole drawing into view came to, the last time
    std::optional<QPointF> pointer;  ///< of the mouse, while it is over the widget
    std::optional<Vec2> crosshair;   ///< while the keyboard places
    std::optional<QPointF> pan_from; ///< while the middle button or Space drags the paper
    std::optional<Hit> menu_on;      ///< what the pointer opened a menu on
    Vec2 menu_at;                    ///< and where
    std::size_t announced = 0;       ///< how many parts screen readers were told of
    bool space_held = false;
    bool space_panned = false;
    Fingers fingers;
    std::optional<ShelfPart> dragged; ///< from the shelf, over the drawing
    std::vector<Vec2> outline;        ///< of what is dragged in from elsewhere
    QString hint;

    Pointer mouse(const QMouseEvent& event) const
    {
        return {canvas.viewport.toDrawing(event.position()), event.position(), event.modifiers(),
                event.buttons().testFlag(Qt::LeftButton), false};
    }
    Pointer finger(QPointF at, bool down) const
    {
        return {canvas.viewport.toDrawing(at), at, Qt::NoModifier, down, false};
    }
    Pointer keys() const
    {
        const Vec2 at = crosshair.value_or(Vec2{});
        return {at, canvas.viewport.toScreen(at), Qt::NoModifier, false, true};
    }
};

} // namespace siphonwright
