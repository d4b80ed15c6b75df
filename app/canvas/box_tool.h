#pragma once

#include "app/canvas/tool.h"

#include <functional>

namespace siphonwright {

/// Draw a rectangle for somebody else: two opposite corners, by dragging, by two clicks, or by the
/// cross-hair.
class BoxTool : public Tool {
public:
    /// Lowest left and highest right corner.
    using Take = std::function<void(Vec2, Vec2)>;
    BoxTool(Canvas& canvas, QString hint, Take take);

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    void released(const Pointer& pointer) override;
    bool walk(bool) override { return false; }
    bool cancel() override;
    void documentChanged() override {}
    void paint(QPainter& painter) const override;
    QString hint() const override { return hint_; }
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    bool hasCrosshair() const override { return true; }

private:
    void finish();

    QString hint_;
    Take take_;
    std::optional<Vec2> first_;
    QPointF first_screen_;
    std::optional<Pointer> at_;
    Vec2 next_;
    std::vector<Guide> guides_;
};

} // namespace siphonwright
