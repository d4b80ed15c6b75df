#include "app/window/sheet_commands.h"

#include "app/paper/pages.h"
#include "app/window/file_commands.h"
#include "app/window/settings.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>

#include <memory>

namespace siphonwright {

SheetCommands::SheetCommands(Document& document, FileCommands& files, QWidget& window)
    : QObject(&window), document_(document), files_(files), window_(window)
{}

sheet::Options SheetCommands::options() const
{
    sheet::Options options;
    const int chosen = settings::paper.get();
    if (chosen >= static_cast<int>(sheet::Paper::a4) && chosen <= static_cast<int>(sheet::Paper::tabloid))
        options.paper = static_cast<sheet::Paper>(chosen);
    else if (document_.sketch().units == UnitChoice::inch)
        options.paper = sheet::Paper::letter;
    options.colour = settings::colour.get();
    options.running = settings::running.get();
    options.tint = settings::tint.get();
    options.third_angle = settings::third_angle.get();
    options.student = for_students_;
    return options;
}

/// With bands, which the sheet states: those at hand, or computed now.
Analysis SheetCommands::judged() const
{
    if (document_.proofIsCurrent() && !document_.proof()->bands.empty())
        return withProof(analyse(document_.sketch()), *document_.proof());
    ProofOptions with_bands;
    with_bands.bands = true;
    return proved(document_.sketch(), with_bands);
}

/// The parts list, where it is wanted and there are parts.
std::vector<sheet::FurtherPage> SheetCommands::further() const
{
    const Sketch& sketch = document_.sketch();
    const bool parts = !sketch.hoses.empty() || !sketch.heaters.empty();
    if (!settings::parts_behind.get() || for_students_ || !parts)
        return {};
    return paper::partsPages(sketch, options().paper);
}

void SheetCommands::exportSheet()
{
    auto* dialog = new QFileDialog(&window_, tr("Export the sheet"), settings::folder.get());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({tr("PDF (*.pdf)"), tr("SVG (*.svg)"), tr("PNG (*.png)")});
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(QFileInfo(displayName(document_)).completeBaseName());
    connect(dialog, &QFileDialog::filterSelected, dialog, [dialog](const QString& filter) {
        const auto from = filter.indexOf(QLatin1String("*.")) + 2;
        dialog->setDefaultSuffix(filter.mid(from, 3));
    });
    connect(dialog, &QFileDialog::fileSelected, this, &SheetCommands::exportTo);
    dialog->open();
}

void SheetCommands::exportTo(const QString& path)
{
    const QStringList problems = sheet::exportTo(path, document_.sketch(), judged(), options(), further());
    if (!problems.isEmpty())
        files_.tell(tr("The sheet could not be written."), problems);
}

void SheetCommands::paint(QPrinter& printer) const
{
    QPainter painter(&printer);
    // The logical resolution is the one that the painter's coordinates count in.
    painter.scale(printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
    sheet::paintPage(painter, document_.sketch(), judged(), options());
    for (const sheet::FurtherPage& page : further()) {
        printer.setPageLayout(page.layout);
        printer.newPage();
        page.paint(painter);
    }
    // For the next time: a preview paints anew on the same printer.
    printer.setPageLayout(sheet::pageLayout(options()));
}

void SheetCommands::preview()
{
    auto* printer = new QPrinter(QPrinter::HighResolution);
    printer->setPageLayout(sheet::pageLayout(options()));
    printer->setFullPage(true);
    auto* dialog = new QPrintPreviewDialog(printer, &window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QPrintPreviewDialog::paintRequested, this, [this](QPrinter* on) { paint(*on); });
    connect(dialog, &QObject::destroyed, this, [printer] { delete printer; });
    dialog->open();
}

void SheetCommands::print()
{
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageLayout(sheet::pageLayout(options()));
    printer->setFullPage(true);
    auto* dialog = new QPrintDialog(printer.get(), &window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, qOverload<>(&QDialog::accepted), this, [this, printer] { paint(*printer); });
    dialog->open();
}

} // namespace siphonwright
