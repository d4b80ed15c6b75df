#pragma once

#include "app/canvas/canvas.h"

class QKeyEvent;
class QPainter;

namespace siphonwright {

/// What the pointer and the keys do now. A tool changes the document only through Canvas::apply().
class Tool {
public:
    explicit Tool(Canvas& canvas) : canvas_(canvas) {}
    virtual ~Tool() = default;
    Tool(const Tool&) = delete;
    Tool& operator=(const Tool&) = delete;

    virtual void pressed(const Pointer& pointer) = 0;
    virtual void moved(const Pointer& pointer) = 0;
    virtual void released(const Pointer&) {}
    virtual void doubleClicked(const Pointer&) {}
    virtual void left() {} ///< the pointer is no longer over the drawing
    /// @return whether the key meant something to the tool.
    virtual bool key(const QKeyEvent&) { return false; }
    /// Whether a plain key is this tool's, although the window has a shortcut on it.
    virtual bool claims(int) const { return false; }
    /// Tab and Shift+Tab. @return false when there is nothing further to go to.
    virtual bool walk(bool forward) = 0;
    /// Stop what is in progress. @return false if nothing was.
    virtual bool cancel() = 0;
    /// Whether the pointer is moving something now.
    virtual bool dragging() const { return false; }
    /// Another tool is taken up: leave nothing half done.
    virtual void putAway() { cancel(); }
    /// The document changed by another hand, undo included.
    virtual void documentChanged() = 0;
    virtual void paint(QPainter& painter) const = 0; ///< on top of the drawing, in widget pixels
    virtual QString hint() const = 0;
    virtual Qt::CursorShape cursor() const = 0;
    /// Whether arrow keys move a cross-hair that Enter clicks with.
    virtual bool hasCrosshair() const { return false; }
    /// Whether the cross-hair is on a part that the hint names.
    virtual bool onTarget() const { return false; }
    /// Where Tab sends the cross-hair, if this tool has places to send it to.
    virtual std::optional<Vec2> nextStop(Vec2, bool) const { return std::nullopt; }

protected:
    Canvas& canvas_;
};

} // namespace siphonwright
