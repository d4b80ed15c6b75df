#include "app/paper/paper_window.h"

#include "app/panels/wrapped_row.h"
#include "app/paper/estimate_page.h"
#include "app/paper/parts_page.h"
#include "app/paper/prices_page.h"
#include "app/paper/work_page.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTabWidget>
#include <QVBoxLayout>

namespace siphonwright::paper {

PaperWindow::PaperWindow(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent, Qt::Window),
      document_(document),
      tabs_(new QTabWidget(this)),
      parts_(new PartsPage(document, selection, this)),
      prices_(new PricesPage(document, this)),
      work_(new WorkPage(document, this)),
      estimate_(new EstimatePage(document, this)),
      document_kind_(new QComboBox(this))
{
    setWindowTitle(tr("Parts and estimate"));
    resize(1120, 680);
    tabs_->setObjectName(QStringLiteral("paper-tabs"));
    tabs_->addTab(parts_, tr("Parts and &cuts"));
    tabs_->addTab(prices_, tr("P&rices"));
    tabs_->addTab(work_, tr("Wor&k"));
    tabs_->addTab(estimate_, tr("&Estimate"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(tabs_, 1);
    layButtons(*column);
    auto* close_key = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    connect(close_key, &QShortcut::activated, this, &QWidget::close);
    connect(&document_, &Document::changed, this, [this] {
        fresh_ = false;
        if (isVisible())
            refresh();
    });
}

PaperWindow::~PaperWindow()
{
    // A cell that is typed in is written down when it goes, which is after this window's own part has gone.
    disconnect(&document_, nullptr, this, nullptr);
}

void PaperWindow::layButtons(QVBoxLayout& column)
{
    document_kind_->setObjectName(QStringLiteral("paper-document"));
    document_kind_->setAccessibleName(tr("Document"));
    for (const Kind kind : {Kind::parts_list, Kind::for_customer, Kind::internal})
        document_kind_->addItem(kind == Kind::for_customer ? tr("Estimate for the customer") : titleOf(kind));
    connect(tabs_, &QTabWidget::currentChanged, this, [this](int tab) {
        const bool parts = tab == static_cast<int>(Tab::parts);
        const bool shows_parts = chosen() == Kind::parts_list;
        if (parts != shows_parts)
            document_kind_->setCurrentIndex(static_cast<int>(parts ? Kind::parts_list : Kind::for_customer));
    });
    auto* row = new panels::WrappedRow;
    row->addWidget(new QLabel(tr("Document"), this));
    row->addWidget(document_kind_);
    const auto add = [&](const QString& text, const char* name, void (PaperWindow::*wanted)()) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(QString::fromLatin1(name));
        connect(button, &QPushButton::clicked, this, wanted);
        row->addWidget(button);
    };
    add(tr("Print pre&view…"), "paper-preview", &PaperWindow::previewWanted);
    add(tr("&Print…"), "paper-print", &PaperWindow::printWanted);
    add(tr("P&DF…"), "paper-pdf", &PaperWindow::pdfWanted);
    row->addStretch();
    add(tr("Parts as C&SV…"), "paper-csv", &PaperWindow::csvWanted);
    column.addLayout(row);
}

Kind PaperWindow::chosen() const
{
    return static_cast<Kind>(document_kind_->currentIndex());
}

void PaperWindow::turnTo(Tab tab)
{
    tabs_->setCurrentIndex(static_cast<int>(tab));
}

void PaperWindow::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!fresh_)
        refresh();
}

/// Cells that are typed into have a ground of their own, which follows light and dark.
void PaperWindow::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() != QEvent::PaletteChange)
        return;
    fresh_ = false;
    // Once every table has the new colours.
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (isVisible() && !fresh_)
                refresh();
        },
        Qt::QueuedConnection);
}

void PaperWindow::refresh()
{
    const Paperwork paperwork = paperworkOf(document_.sketch());
    parts_->show(paperwork);
    prices_->show(paperwork);
    work_->show(paperwork);
    estimate_->show(paperwork);
    fresh_ = true;
}

} // namespace siphonwright::paper
