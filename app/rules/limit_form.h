#pragma once

#include "app/document/document.h"

#include <QWidget>

#include <array>

class QCheckBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace siphonwright::panels {
class QuantityEdit;
}

namespace siphonwright::rules {

/// A rule's limits for this drawing, and whether it is judged here at all. What departs from the rule book
/// needs a reason, which the sheet states. What is being typed outlives changes made elsewhere.
class LimitForm : public QWidget {
    Q_OBJECT
public:
    LimitForm(Document& document, const Rule& rule, QWidget* parent = nullptr);

private:
    struct Row {
        panels::QuantityEdit* edit = nullptr; ///< nothing where the rule has no such limit
        QLabel* own = nullptr;                ///< what the rule book says
        std::optional<double> Limits::*limit = nullptr;
        std::optional<double> LimitChange::*change = nullptr;
    };

    void addRow(Row& row, const QString& label, QGridLayout& grid);
    void addSwitchAndReason(QGridLayout& grid);
    void refresh();
    void showChange();
    void followTyping();
    void keepLimits();
    void takeBack();
    void setJudged(bool judged);
    LimitChange stored() const;
    QString reason() const;

    Document& document_;
    const Rule& rule_;
    std::array<Row, 3> rows_;
    QCheckBox* judged_;
    QLineEdit* reason_;
    QLabel* remark_;
    QPushButton* keep_;
    QPushButton* own_;
    LimitChange shown_;
    UnitChoice units_ = UnitChoice::metric;
    bool typed_ = false;
};

} // namespace siphonwright::rules
