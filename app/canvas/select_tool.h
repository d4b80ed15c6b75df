#pragma once

#include "app/canvas/drag.h"
#include "app/canvas/hit.h"
#include "app/canvas/tool.h"

#include <QCoreApplication>
#include <QElapsedTimer>

namespace siphonwright {

/// Select, drag, nudge, turn, connect: what the pointer does when nothing is being placed.
class SelectTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(siphonwright)

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
    void turnSelected(double clockwise_deg);
    void connectToNext();    ///< the selected end, to one opening after the other
    void insertPointByKey(); ///< half-way to the next
    void enterOutline();     ///< to the first corner of what is selected
    int keepSelected();      ///< while Tab goes on; again: no longer. @return how many are kept
    bool dragging() const override { return drag_ || band_; }

private:
    bool nudge(const QKeyEvent& event);
    void beginPull(const Pointer& pointer);
    Vec3 nudgeBy(Vec2 arrow, double step_mm) const;
    void selectNext(const PartRef& part);
    void stopDrag();

    Hit hovered_;
    std::optional<Pointer> press_; ///< held down, not yet far enough to be a drag
    Hit pressed_on_;
    bool adds_ = false; ///< Shift or Ctrl was held: a click adds, a drag draws a band anywhere
    std::optional<Drag> drag_;
    std::optional<Vec2> band_;    ///< where the band begins
    std::vector<PartRef> banded_; ///< what it holds
    std::vector<PartRef> kept_;   ///< by the keyboard, while it goes on
    QPointF at_;
    std::vector<Guide> guides_;
    std::vector<PartRef> nudged_;
    int nudge_gesture_ = 0;
    QElapsedTimer since_nudge_;
};

} // namespace siphonwright
