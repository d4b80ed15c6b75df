#pragma once

#include "app/document/document.h"
#include "app/sizing/figures.h"

#include <QTableWidget>

class QLabel;

namespace siphonwright::sizing {

/// Figures as a table as high as its rows, so that what it lies in scrolls. A row that comes from a part is
/// underlined, and a click or Enter on it selects the part.
class FigureTable : public QTableWidget {
    Q_OBJECT
public:
    FigureTable(Selection& selection, const QString& name, const QString& object_name,
                QWidget* parent = nullptr);

    void show(const Figures& figures);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void inkLinks();
    void choose(int row);
    void fitColumns();

    Selection& selection_;
    std::vector<PartRef> parts_;
};

/// A table with what has to be said of it: warnings over it, notes under it.
class FigureBlock : public QWidget {
    Q_OBJECT
public:
    FigureBlock(Selection& selection, const QString& name, const QString& object_name,
                QWidget* parent = nullptr);

    void show(const Figures& figures);

private:
    FigureTable* table_;
    QLabel* warnings_;
    QLabel* notes_;
};

} // namespace siphonwright::sizing
