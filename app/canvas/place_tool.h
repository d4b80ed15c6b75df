#pragma once

#include "app/canvas/elevation_view.h"
#include "app/canvas/tool.h"

#include <QCoreApplication>

namespace siphonwright {

/// Put down a part that takes one click: a port, heater, tank, or a valve, bleed or clip on a hose.
class PlaceTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(siphonwright)

public:
    PlaceTool(Canvas& canvas, ToolKind kind) : Tool(canvas), kind_(kind) {}

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    void left() override { pointed_ = false; }
    bool walk(bool) override;
    bool cancel() override { return false; }
    void documentChanged() override;
    void paint(QPainter& painter) const override;
    QString hint() const override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    bool hasCrosshair() const override { return true; }
    std::optional<Vec2> nextStop(Vec2 from, bool forward) const override;

private:
    bool goesOnHose() const;
    Port portHere() const;
    Heater heaterHere() const;
    SurgeTank tankHere() const;
    PartRef putDown();
    std::vector<Vec2> stops() const;

    ToolKind kind_;
    Pointer at_;
    bool pointed_ = false;
    Vec2 place_;       ///< where the part would go
    Vec2 outward_;     ///< a port's axis there; zero away from the engine
    Id hose_;          ///< under the pointer, for what goes on one
    double along_ = 0; ///< along the hose itself
    std::vector<Guide> guides_;
};

} // namespace siphonwright
