#pragma once

#include <QLabel>

namespace siphonwright {

/// A line of words that gives way: what does not fit ends in dots, and the whole is in the tooltip.
class ElidedLabel : public QLabel {
    Q_OBJECT
public:
    using QLabel::QLabel;

    QSize minimumSizeHint() const override { return {0, QLabel::minimumSizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace siphonwright
