#pragma once

#include "app/document/document.h"
#include "app/panels/quantity_edit.h"

#include <QWidget>

#include <functional>
#include <vector>

class QLabel;

namespace siphonwright::warming {

/// What the warm-up is computed for: air, wind, start, target, duration. Each entry is one undo step.
class PlanForm : public QWidget {
    Q_OBJECT
public:
    explicit PlanForm(Document& document, QWidget* parent = nullptr);

    /// Put the typing where the air's temperature is entered.
    void askForAmbient();

private:
    struct Row {
        panels::QuantityEdit* edit;
        std::function<std::optional<double>(const Sketch&)> get;
    };
    /// @return the row's editor
    panels::QuantityEdit* add(const QString& label, const char* name, const QString& tip, Unit unit,
                              std::function<std::optional<double>(const Sketch&)> get,
                              std::function<void(Sketch&, std::optional<double>)> set);
    void refresh();

    Document& document_;
    std::vector<Row> rows_;
    QLabel* problem_;
};

} // namespace siphonwright::warming
