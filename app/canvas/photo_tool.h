#pragma once

#include "app/canvas/elevation_view.h"
#include "app/canvas/tool.h"

#include <QCoreApplication>

namespace siphonwright {

/// Point at the photograph: two points to scale or level it by, or the four corners of a rectangle to
/// straighten it by. Levels it by itself; for the others Canvas::photo_points is told, since a figure has to
/// be typed.
class PhotoTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(siphonwright)

public:
    PhotoTool(Canvas& canvas, ToolKind kind) : Tool(canvas), kind_(kind) {}

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    void left() override { at_.reset(); }
    bool key(const QKeyEvent& event) override;
    bool walk(bool) override;
    bool cancel() override;
    void documentChanged() override;
    void paint(QPainter& painter) const override;
    QString hint() const override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    bool hasCrosshair() const override { return true; }
    std::optional<Vec2> nextStop(Vec2 from, bool forward) const override;

private:
    std::size_t wanted() const { return kind_ == ToolKind::photo_straighten ? 4 : 2; }
    void finish();
    void level();
    QStringList sizes(Vec2 to) const;

    ToolKind kind_;
    std::vector<Vec2> points_;
    std::optional<Pointer> at_;
};

} // namespace siphonwright
