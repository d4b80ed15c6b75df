#pragma once

#include "app/drawing/look.h"
#include "app/rules/rule_drawings.h"

#include <QWidget>

namespace siphonwright::rules {

/// One of a rule's two drawings, as large as its place allows.
class CaseView : public QWidget {
    Q_OBJECT
public:
    CaseView(const RuleDrawing& drawing, bool right, drawing::Look look, QWidget* parent = nullptr);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const RuleDrawing& drawing_;
    bool right_;
    drawing::Look look_;
};

} // namespace siphonwright::rules
