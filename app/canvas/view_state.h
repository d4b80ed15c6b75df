#pragma once

#include "app/canvas/canvas.h"
#include "app/canvas/elevation_view.h"
#include "app/canvas/tool.h"

#include <QMouseEvent>
#include <QPointer>

namespace siphonwright {

/// Pan, zoom, tool and pointer.
struct ElevationView::State {
    State(Document& document, Selection& selection) : canvas(document, selection) {}

    static constexpr double zoom_step = 1.25; ///< by one press or one notch of the wheel

    Canvas canvas;
    ToolKind kind = ToolKind::select;
    std::unique_ptr<Tool> tool;
    bool grid_shown = true;
    QPointer<ElevationView> partner; ///< the other view of the same drawing
    bool follows = false;            ///< is told by the partner what to show
    bool levelled = false;
    QTransform shown;                ///< where the paper was when it was painted last
    std::optional<QTransform> fit;   ///< what bringing the whole drawing into view came to, the last time
    std::optional<QPointF> pointer;  ///< of the mouse, while it is over the widget
    std::optional<Vec2> crosshair;   ///< while the keyboard places
    std::optional<QPointF> pan_from; ///< while the middle button or Space drags the paper
    bool space_held = false;
    bool space_panned = false;
    QString hint;

    Pointer mouse(const QMouseEvent& event) const
    {
        return {canvas.viewport.toDrawing(event.position()), event.position(), event.modifiers(),
                event.buttons().testFlag(Qt::LeftButton), false};
    }
    Pointer keys() const
    {
        const Vec2 at = crosshair.value_or(Vec2{});
        return {at, canvas.viewport.toScreen(at), Qt::NoModifier, false, true};
    }
};

} // namespace siphonwright
