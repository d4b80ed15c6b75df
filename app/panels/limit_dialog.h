#pragma once

#include "app/document/document.h"

#include <QDialog>

#include <string>

class QLineEdit;
class QPushButton;

namespace siphonwright::panels {

class QuantityEdit;

/// Whether the finding of this index comes from a rule whose limits are numbers.
bool hasLimits(const Document& document, int finding);

/// Put other limits in a rule's place for this job, with the reason that the sheet will state.
class LimitDialog : public QDialog {
    Q_OBJECT
public:
    LimitDialog(Document& document, std::string rule, QWidget* parent = nullptr);

    void accept() override;

private:
    QuantityEdit* addLimit(const QString& label, std::optional<double> own, std::optional<double> now);
    void restoreOwn();

    Document& document_;
    std::string rule_;
    QuantityEdit* advice_;
    QuantityEdit* caution_;
    QuantityEdit* stop_;
    QLineEdit* reason_;
};

} // namespace siphonwright::panels
