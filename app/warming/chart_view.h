#pragma once

#include "app/drawing/look.h"
#include "app/warming/chart.h"

#include <QWidget>

namespace siphonwright::warming {

/// The chart on the screen, with a cursor that reads every value at one time: the pointer's, or by keys (left
/// and right a sample, Page Up and Page Down an hour, Home and End). Escape takes it away.
class ChartView : public QWidget {
    Q_OBJECT
public:
    explicit ChartView(QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    void setUnits(UnitSystem units);
    /// @param of_before the drawing has changed since; a sentence lies over the faded chart
    void show(std::optional<Result> result, bool of_before);
    /// In place of a chart.
    void showSentence(const QString& sentence, bool leads_somewhere);
    void setKept(std::vector<Result> kept);

    const std::optional<Result>& result() const { return result_; }
    std::optional<double> cursor() const { return cursor_h_; }
    void setCursorHour(std::optional<double> hour);
    /// What the cursor reads; empty without one.
    QString reading() const;
    /// As it lies on the widget now.
    std::optional<Chart> chart() const;

    QSize sizeHint() const override { return {560, 220}; }
    QSize minimumSizeHint() const override { return {200, 58}; }

Q_SIGNALS:
    void sentenceClicked();
    void cursorMoved();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void stepCursor(double hours);

    std::optional<Result> result_;
    std::vector<Result> kept_;
    QString sentence_;
    bool leads_somewhere_ = false;
    bool of_before_ = false;
    drawing::Look look_ = drawing::Look::light;
    bool by_keys_ = false;
    UnitSystem units_ = UnitSystem::metric;
    std::optional<double> cursor_h_;
};

/// The font of charts.
QFont chartFont(double times_usual = 1);

} // namespace siphonwright::warming
