#pragma once

#include "app/paper/paperwork.h"

#include <QWidget>

class QLabel;

namespace siphonwright::paper {

class EditTable;

/// Materials with their list prices, which can be typed over, or loaded from a file.
class PricesPage : public QWidget {
    Q_OBJECT
public:
    explicit PricesPage(Document& document, QWidget* parent = nullptr);
    void show(const Paperwork& paperwork);

    /// \return why the list was not taken; empty: done
    QString load(const QString& path);
    QString writeWanted(const QString& path) const;

private:
    void chooseList();
    void chooseWanted();
    void tell(const QString& problem);
    QString takePrice(int row, const QString& typed);

    Document& document_;
    EditTable* table_;
    QLabel* list_;
    QLabel* problem_;
    std::vector<EstimateLine> lines_;
    PartsList parts_;
};

} // namespace siphonwright::paper
