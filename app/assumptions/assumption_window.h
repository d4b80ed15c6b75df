#pragma once

#include "app/document/document.h"

#include <QWidget>

class QLineEdit;
class QTreeView;
class QVBoxLayout;

namespace siphonwright::assumptions {

class AssumptionForm;
class AssumptionList;
class AssumptionSearch;

/// A window of its own: every assumed figure in a table, the chosen one with its basis under it.
class AssumptionWindow : public QWidget {
    Q_OBJECT
public:
    explicit AssumptionWindow(Document& document, QWidget* parent = nullptr);

    /// Turn to an assumption by its id; an unknown id leaves the window as it is.
    void showAssumption(const QString& id);

private:
    void layTable();
    void turnTo(int row);

    Document& document_;
    AssumptionList* list_;
    AssumptionSearch* search_;
    QLineEdit* sought_;
    QTreeView* table_;
    QVBoxLayout* column_;
    AssumptionForm* form_ = nullptr;
};

} // namespace siphonwright::assumptions
