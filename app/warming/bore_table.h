#pragma once

#include "app/document/document.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableWidget;

namespace siphonwright::warming {

/// What the job would do with each stock bore of hose. The drawn one is marked; a figure over its limit says
/// so by sign and word. Double-click or the button puts every hose on a bore, hose ends and in-line parts in
/// proportion, as one undo step.
class BoreTable : public QWidget {
    Q_OBJECT
public:
    explicit BoreTable(Document& document, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override { return {240, 84}; }
    QSize sizeHint() const override { return {600, 200}; }

private:
    void refresh();
    void fill(int row, const BoreRow& bore);
    void useRow(int row);
    void follow();

    Document& document_;
    QLabel* remark_;
    QTableWidget* table_;
    QPushButton* use_;
};

} // namespace siphonwright::warming
