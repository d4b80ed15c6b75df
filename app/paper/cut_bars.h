#pragma once

#include "app/paper/cut_ink.h"

#include <QWidget>

namespace siphonwright::paper {

/// The cut plans of every bore, as bars under each other.
class CutBars : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    void show(const std::vector<BorePlan>& plans, UnitSystem units);
    QSize sizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    double textHeight(const QString& text, double width) const;
    CutInk ink(double width) const;

    std::vector<BorePlan> plans_;
    UnitSystem units_ = UnitSystem::metric;
};

} // namespace siphonwright::paper
