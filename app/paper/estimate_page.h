#pragma once

#include "app/paper/paperwork.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QPushButton;

namespace siphonwright::paper {

class EditTable;
class QuoteForm;

/// Sums of the estimate, as drawn and with other heaters side by side, beside what is entered for it and what
/// is missing.
class EstimatePage : public QWidget {
    Q_OBJECT
public:
    explicit EstimatePage(Document& document, QWidget* parent = nullptr);
    void show(const Paperwork& paperwork);

private:
    void fillColumn(int column, const QString& title, const Estimate& estimate);
    void fillDrawn(const Paperwork& paperwork);
    void showMissing(const Paperwork& paperwork);
    void fillAlternates(const Paperwork& paperwork);
    QString takeAlternate(int row, int column, const QString& typed);
    void addAlternate();
    void removeAlternate();

    Document& document_;
    QuoteForm* form_;
    EditTable* table_;
    QLabel* verdict_;
    QListWidget* missing_;
    QLabel* problem_;
    QPushButton* remove_;
};

} // namespace siphonwright::paper
