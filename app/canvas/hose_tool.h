#pragma once

#include "app/canvas/hose_draft.h"
#include "app/canvas/tool.h"

#include <QCoreApplication>

namespace siphonwright {

/// Draw a hose: click a port, a nozzle or an empty place, then point after point.
class HoseTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(siphonwright)

public:
    HoseTool(Canvas& canvas, HoseRole role);

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    void doubleClicked(const Pointer& pointer) override;
    bool key(const QKeyEvent& event) override;
    bool walk(bool forward) override;
    bool cancel() override;
    void documentChanged() override;
    void paint(QPainter& painter) const override;
    QString hint() const override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    bool hasCrosshair() const override { return true; }
    bool onTarget() const override { return target_.has_value(); }
    std::optional<Vec2> nextStop(Vec2 from, bool forward) const override;

private:
    std::vector<Socket> likelyFirst() const;
    Vec3 placeFor(const Pointer& pointer);
    double depthOfLast() const;
    void finish(const std::optional<Socket>& last);
    void takeBack();
    std::optional<ResolvedHose> preview() const;

    HoseDraft draft_;
    Pointer at_;
    bool pointed_ = false; ///< at_ is somewhere
    std::optional<Socket> target_;
    std::vector<Guide> guides_;
    Vec3 next_; ///< where a click would put a point
};

} // namespace siphonwright
