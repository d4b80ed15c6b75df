#pragma once

#include "app/drawing/look.h"

#include "core/analysis/analysis.h"

#include <QAbstractSlider>

#include <optional>

namespace siphonwright::panels {

/// A grade on a scale with its zero in the middle, in tenths of a percent. Over the scale lies the range of
/// grades in which the job is sound, under it the range over which it is judged.
class GradeSlider : public QAbstractSlider {
    Q_OBJECT
public:
    explicit GradeSlider(double most_percent, QWidget* parent = nullptr);

    double percent() const { return value() / 10.0; }
    void setSound(const std::optional<SoundGrades>& sound);
    void setJudged(double percent);
    void setLook(drawing::Look look);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    double placeOf(double percent) const;
    void follow(double x);
    void paintScale(QPainter& painter, const drawing::Palette& ink) const;
    void paintHandle(QPainter& painter, const drawing::Palette& ink) const;

    std::optional<SoundGrades> sound_;
    double judged_percent_ = 0;
    drawing::Look look_ = drawing::Look::light;
};

} // namespace siphonwright::panels
