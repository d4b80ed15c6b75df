#pragma once

#include "app/document/disk.h"
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
    QString load(const QString& path) { return take(path, read(path)); }
    /// load() in two parts, of which the first may take long and touches nothing of the page.
    static FileBytes read(const QString& path);
    QString take(const QString& path, const FileBytes& file);
    QString writeWanted(const QString& path, const PutFile& put = putFile) const;
    /// Over the table; nothing: what was said goes.
    void tell(const QString& problem);

Q_SIGNALS:
    void listChosen(const QString& path);   ///< to be loaded
    void wantedChosen(const QString& path); ///< to be written

private:
    void chooseList();
    void chooseWanted();
    QString takePrice(int row, const QString& typed);

    Document& document_;
    EditTable* table_;
    QLabel* list_;
    QLabel* problem_;
    std::vector<EstimateLine> lines_;
    PartsList parts_;
};

} // namespace siphonwright::paper
