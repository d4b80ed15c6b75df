#pragma once

#include "app/canvas/drag.h"
#include "app/canvas/hit.h"
#include "app/canvas/tool.h"

#include <QElapsedTimer>

namespace siphonwright {

/// Select, drag, nudge, turn, connect: what the pointer does when nothing is being placed.
class SelectTool : public Tool {
public:
    explicit SelectTool(Canvas& canvas) : Tool(canvas) {}

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    void released(const Pointer& pointer) override;
    void doubleClicked(const Pointer& pointer) override;
    void left() override;
    bool key(const QKeyEvent& event) override;
    bool walk(bool forward) override;
    bool cancel() override;
    void putAway() override; ///< what is selected stays selected
    void documentChanged() override;
    void paint(QPainter& painter) const override;
    QString hint() const override;
    Qt::CursorShape cursor() const override;

    void deleteSelected();

private:
    bool nudge(const QKeyEvent& event);
    void connectToNext();
    void insertPointByKey();
    void enterOutline();
    void stopDrag();

    Hit hovered_;
    std::optional<Pointer> press_; ///< held down, not yet far enough to be a drag
    Hit pressed_on_;
    std::optional<Drag> drag_;
    QPointF at_;
    std::vector<Guide> guides_;
    PartRef nudged_;
    int nudge_gesture_ = 0;
    QElapsedTimer since_nudge_;
};

} // namespace siphonwright
