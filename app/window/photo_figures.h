#pragma once

#include "core/quantity/quantity.h"

#include <QDialog>

#include <optional>
#include <vector>

class QLabel;

namespace siphonwright {

namespace panels {
class QuantityEdit;
}

/// One length of a figure to be typed, and what it is as drawn now.
struct LengthAsked {
    QString label;
    std::optional<double> now_mm;
};

/// A small dialog for the lengths that a tool of the photograph needs.
class PhotoFigures : public QDialog {
    Q_OBJECT
public:
    PhotoFigures(const QString& title, const QString& sentence, const std::vector<LengthAsked>& lengths,
                 UnitSystem units, QWidget* parent);

    /// In the order they were asked for, mm; valid once accepted.
    const std::vector<double>& lengths_mm() const { return lengths_mm_; }

    void accept() override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    std::vector<panels::QuantityEdit*> edits_;
    std::vector<double> lengths_mm_;
    QLabel* problem_;
};

} // namespace siphonwright
