#pragma once

#include "core/quantity/quantity.h"

#include <QAction>
#include <QLineEdit>

#include <optional>
#include <utility>
#include <vector>

namespace siphonwright::panels {

/// A line to type a quantity into, with its unit: "3/4 in", "19 mm", "180 F" all work.
///
/// Shows a rounded text but holds the exact value: the value changes only when somebody types and commits
/// (Enter or leaving the line). What is not understood stays in the line with a sentence why, and changes
/// nothing; Escape brings the value back.
class QuantityEdit : public QLineEdit {
    Q_OBJECT
public:
    explicit QuantityEdit(Unit unit, QWidget* parent = nullptr);

    void setUnits(UnitSystem system);
    void setValue(std::optional<double> value);
    std::optional<double> value() const { return value_; }

    /// Whether an empty line means "not entered"; otherwise it is not understood.
    void setMayBeEmpty(bool may_be_empty);
    /// Values out of this range are refused with a sentence.
    void setRange(double least, double most);
    /// Usual values to pick from in a drop-down at the line's end.
    void setStock(const std::vector<std::pair<QString, double>>& stock);

    QString problem() const { return problem_; }
    /// Take what is typed now. @return false when it is not understood.
    bool commit();

Q_SIGNALS:
    void committed(); ///< the value is a new one, typed by the user
    void problemChanged(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void showValue();
    void setProblem(const QString& sentence);
    std::optional<QString> refusal(double value) const;
    void inkPick();

    Unit unit_;
    UnitSystem system_ = UnitSystem::metric;
    std::optional<double> value_;
    bool may_be_empty_ = false;
    double least_;
    double most_;
    bool typed_ = false;
    QString problem_;
    QAction* pick_ = nullptr; ///< of usual values; null: there are none
};

} // namespace siphonwright::panels
