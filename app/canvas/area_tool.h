#pragma once

#include "app/canvas/tool.h"

#include <QCoreApplication>

namespace siphonwright {

/// Draw an area to keep clear of, corner by corner.
class AreaTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(siphonwright)

public:
    explicit AreaTool(Canvas& canvas) : Tool(canvas) {}

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    void doubleClicked(const Pointer& pointer) override;
    bool key(const QKeyEvent& event) override;
    bool walk(bool) override { return false; }
    bool cancel() override;
    void documentChanged() override {}
    void paint(QPainter& painter) const override;
    QString hint() const override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    bool hasCrosshair() const override { return true; }

private:
    bool closes(const Pointer& pointer) const;
    void finish();

    std::vector<Vec2> corners_;
    std::optional<Pointer> at_;
    Vec2 next_;
    std::vector<Guide> guides_;
};

} // namespace siphonwright
