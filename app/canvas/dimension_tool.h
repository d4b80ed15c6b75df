#pragma once

#include "app/canvas/dimension_ends.h"
#include "app/canvas/tool.h"

#include <QCoreApplication>

namespace siphonwright {

/// Draw a dimension: click one thing, click another, click where its line shall be.
class DimensionTool : public Tool {
    Q_DECLARE_TR_FUNCTIONS(siphonwright)

public:
    explicit DimensionTool(Canvas& canvas) : Tool(canvas) {}

    void pressed(const Pointer& pointer) override;
    void moved(const Pointer& pointer) override;
    bool key(const QKeyEvent& event) override;
    bool claims(int key) const override;
    bool walk(bool forward) override;
    bool cancel() override;
    void documentChanged() override { cancel(); }
    void paint(QPainter& painter) const override;
    QString hint() const override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    bool hasCrosshair() const override { return true; }
    std::optional<Vec2> nextStop(Vec2 from, bool forward) const override;

private:
    Dimension draft() const;
    void finish();

    std::optional<NamedEnd> from_;
    std::optional<NamedEnd> to_;
    std::optional<DimensionKind> forced_; ///< by a key; otherwise the pointer decides
    std::optional<Pointer> at_;
    NamedEnd under_; ///< what a click would take
};

} // namespace siphonwright
