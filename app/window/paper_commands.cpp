#include "app/window/paper_commands.h"

#include "app/language/language.h"
#include "app/paper/prices_page.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/print_dialogs.h"
#include "app/window/settings.h"
#include "app/window/sheet_commands.h"

#include "core/paperwork/parts_csv.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QPainter>
#include <QPrinter>

#include <algorithm>
#include <memory>

namespace siphonwright {

PaperCommands::PaperCommands(Document& document, Selection& selection, FileCommands& files,
                             SheetCommands& sheet, QWidget& window)
    : QObject(&window),
      document_(document),
      selection_(selection),
      files_(files),
      sheet_(sheet),
      window_(window)
{}

/// While the document is still there: a cell that is being typed in is taken when its table goes.
PaperCommands::~PaperCommands()
{
    delete paper_.data();
}

void PaperCommands::make()
{
    paper_ = new paper::PaperWindow(document_, selection_, &window_);
    for (const char* id : {"undo", "redo"})
        if (auto* action = window_.findChild<QAction*>(QString::fromLatin1(id)))
            paper_->addAction(action);
    connect(paper_, &paper::PaperWindow::previewWanted, this, &PaperCommands::preview);
    connect(paper_, &paper::PaperWindow::printWanted, this, &PaperCommands::print);
    connect(paper_, &paper::PaperWindow::pdfWanted, this, &PaperCommands::choosePdf);
    connect(paper_, &paper::PaperWindow::csvWanted, this, &PaperCommands::chooseCsv);
    paper::PricesPage* prices = &paper_->prices();
    connect(prices, &paper::PricesPage::listChosen, this, [this, prices](const QString& path) {
        if (const auto file = files_.read<FileBytes>(path, [path] { return paper::PricesPage::read(path); }))
            prices->tell(prices->take(path, *file));
    });
    connect(prices, &paper::PricesPage::wantedChosen, this,
            [this, prices](const QString& path) { prices->tell(prices->writeWanted(path, files_.put())); });
}

void PaperCommands::show(paper::PaperWindow::Tab tab)
{
    if (!paper_)
        make();
    paper_->turnTo(tab);
    paper_->show();
    paper_->raise();
    paper_->activateWindow();
}

paper::Pages PaperCommands::pagesOf(paper::Kind kind) const
{
    return paper::Pages(document_.sketch(), kind, sheet_.options().paper);
}

void PaperCommands::paint(QPrinter& printer, paper::Kind kind) const
{
    const paper::Pages pages = pagesOf(kind);
    QPainter painter(&printer);
    painter.scale(printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
    const int from = std::max(printer.fromPage(), 1);
    const int to = printer.toPage() > 0 ? std::min(printer.toPage(), pages.count()) : pages.count();
    for (int page = from; page <= to; ++page) {
        if (page > from)
            printer.newPage();
        pages.paint(painter, page - 1);
    }
}

void PaperCommands::preview()
{
    const paper::Kind kind = paper_->chosen();
    printing::preview(*paper_, pagesOf(kind).layout(), *this,
                      [this, kind](QPrinter& on) { paint(on, kind); });
}

void PaperCommands::print()
{
    const paper::Kind kind = paper_->chosen();
    printing::print(*paper_, pagesOf(kind).layout(), *this, files_,
                    [this, kind](QPrinter& on) { paint(on, kind); });
}

void PaperCommands::choosePdf()
{
    const paper::Kind kind = paper_->chosen();
    QFileDialog* dialog = newFileDialog(paper_, tr("Write as PDF"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("PDF (*.pdf)"));
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(QStringLiteral("%1 %2").arg(QFileInfo(displayName(document_)).completeBaseName(),
                                                   language::withinSentence(paper::titleOf(kind))));
    connect(dialog, &QFileDialog::fileSelected, this,
            [this, kind](const QString& path) { writePdf(kind, path); });
    dialog->open();
}

void PaperCommands::chooseCsv()
{
    QFileDialog* dialog = newFileDialog(paper_, tr("Write the parts as CSV"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("CSV (*.csv)"));
    dialog->setDefaultSuffix(QStringLiteral("csv"));
    dialog->selectFile(tr("%1 parts").arg(QFileInfo(displayName(document_)).completeBaseName()));
    connect(dialog, &QFileDialog::fileSelected, this, &PaperCommands::writeCsv);
    dialog->open();
}

void PaperCommands::writePdf(paper::Kind kind, const QString& path)
{
    const QStringList problems = paper::exportTo(path, pagesOf(kind), files_.put());
    if (!problems.isEmpty())
        files_.tell(tr("The pages could not be written."), problems);
}

void PaperCommands::writeCsv(const QString& path)
{
    const Sketch& sketch = document_.sketch();
    const std::string text = csvOf(paper::paperworkOf(sketch).parts, sketch, paper::unitsOf(sketch));
    const QStringList problems = files_.put()(path, QByteArray::fromStdString(text));
    if (!problems.isEmpty())
        files_.tell(tr("The parts could not be written."), problems);
}

} // namespace siphonwright
