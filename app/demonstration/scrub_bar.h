#pragma once

#include "app/demonstration/demonstration.h"

#include <QAbstractSlider>

namespace siphonwright::demonstration {

/// The line along which a demonstration is scrubbed: its phases side by side with their names, each with a
/// width of its own however many moments it has; ticks where something happens. The value is the moment.
class ScrubBar : public QAbstractSlider {
    Q_OBJECT
public:
    explicit ScrubBar(QWidget* parent = nullptr);

    /// Outlives this, or is replaced.
    void show(const Demonstration* demonstration);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int momentAt(double x) const;
    double xOf(int moment) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

private:
    struct Span {
        double from = 0;
        double to = 0;
    };
    Span spanOf(std::size_t phase) const;

    const Demonstration* demonstration_ = nullptr;
};

} // namespace siphonwright::demonstration
