#pragma once

#include "app/document/document.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;

namespace siphonwright::panels {
class QuantityEdit;
}

namespace siphonwright::sizing {

/// The season's temperatures, a row each with its nights. Each entry, each new or removed row is one undo
/// step.
class SeasonEdit : public QWidget {
    Q_OBJECT
public:
    explicit SeasonEdit(Document& document, QWidget* parent = nullptr);

private:
    struct Row {
        panels::QuantityEdit* ambient = nullptr;
        panels::QuantityEdit* nights = nullptr;
        QPushButton* remove = nullptr;
    };
    void refresh();
    void addRow();
    void dropRow();

    Document& document_;
    QGridLayout* grid_;
    QLabel* total_;
    QLabel* problem_;
    std::vector<Row> rows_;
};

} // namespace siphonwright::sizing
