#pragma once

#include "app/document/document.h"

#include "core/commissioning/checklist.h"

#include <QWidget>

class QLabel;
class QListWidget;

namespace siphonwright::commissioning {

/// All steps with what is done, by whom, and what was done out of order. A step is opened by a click or
/// Enter.
class StepList : public QWidget {
    Q_OBJECT
public:
    StepList(Document& document, QWidget* parent = nullptr);

Q_SIGNALS:
    void stepWanted(const QString& id);
    void printWanted();
    void exportWanted();

private:
    void refresh();

    Document& document_;
    QLabel* progress_;
    QListWidget* list_;
};

} // namespace siphonwright::commissioning
