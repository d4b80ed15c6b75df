#pragma once

#include "app/document/document.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace siphonwright::panels {
class QuantityEdit;
}

namespace siphonwright::assumptions {

/// One assumption with its basis: its value for this drawing, the reason for it, and the way back.
class AssumptionForm : public QWidget {
    Q_OBJECT
public:
    AssumptionForm(Document& document, const Assumption& assumption, QWidget* parent = nullptr);

    const Assumption& assumption() const { return assumption_; }

private:
    void lay();
    void addEditor(QGridLayout& grid);
    AssumptionChange stored() const;
    void refresh();
    void showChange();
    void followTyping();
    void keep();

    Document& document_;
    const Assumption& assumption_;
    panels::QuantityEdit* value_;
    QLabel* book_;
    QLineEdit* reason_;
    QLabel* remark_;
    QPushButton* keep_;
    QPushButton* back_;
    AssumptionChange shown_;
    UnitChoice units_ = UnitChoice::metric;
};

} // namespace siphonwright::assumptions
