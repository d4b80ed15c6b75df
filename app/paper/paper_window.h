#pragma once

#include "app/paper/pages.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QTabWidget;
class QVBoxLayout;

namespace siphonwright::paper {

class EstimatePage;
class PartsPage;
class PricesPage;
class WorkPage;

/// A window of its own: parts and cuts, prices, work, estimate; and the documents made of them.
class PaperWindow : public QWidget {
    Q_OBJECT
public:
    PaperWindow(Document& document, Selection& selection, QWidget* parent = nullptr);
    ~PaperWindow() override;

    enum class Tab { parts, prices, work, estimate };
    void turnTo(Tab tab);
    PricesPage& prices() { return *prices_; }
    /// The document that is chosen to be printed.
    Kind chosen() const;

Q_SIGNALS:
    void previewWanted();
    void printWanted();
    void pdfWanted();
    void csvWanted();

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void refresh();
    void layButtons(QVBoxLayout& column);

    Document& document_;
    QTabWidget* tabs_;
    PartsPage* parts_;
    PricesPage* prices_;
    WorkPage* work_;
    EstimatePage* estimate_;
    QComboBox* document_kind_;
    bool fresh_ = false; ///< what is shown is of the sketch as it is
};

} // namespace siphonwright::paper
