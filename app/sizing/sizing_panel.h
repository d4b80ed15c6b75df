#pragma once

#include "app/document/document.h"
#include "app/panels/field.h"

#include <QWidget>

class QBoxLayout;
class QLabel;
class QScrollArea;
class QTabBar;
class QStackedWidget;
class QVBoxLayout;

namespace siphonwright::panels {
class FormView;
}

namespace siphonwright::sizing {

class FigureBlock;

/// Heater size, electrical supply and coolant: for each what is entered, and beside it (under it where the
/// panel is narrow) what comes of it. Everything entered is kept in the sketch.
class SizingPanel : public QWidget {
    Q_OBJECT
public:
    SizingPanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override { return {300, 84}; }
    QSize sizeHint() const override { return {600, 300}; }
    /// Its tab has been chosen. While another lies over it nothing is computed for it.
    void comeIntoSight();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    /// One subject: its entries in a form, its results under each other.
    struct Page {
        QBoxLayout* sides = nullptr;
        QScrollArea* entries = nullptr;
        QVBoxLayout* entry_column = nullptr;
        QVBoxLayout* results = nullptr;
        panels::FormView* form = nullptr;
    };
    Page addPage(const QString& title, panels::Form form);
    void fitPages();
    bool isSeen() const;
    void refresh();
    void refreshFigures();
    void refreshPowers();
    void showPowers();

    Document& document_;
    Selection& selection_;
    QTabBar* subjects_;
    QStackedWidget* pages_;
    Page size_;
    Page supply_;
    Page coolant_;
    FigureBlock* needs_;
    FigureBlock* powers_;
    QLabel* powers_state_;
    FigureBlock* load_;
    FigureBlock* mix_;
    FigureBlock* water_;
};

} // namespace siphonwright::sizing
