#include "app/window/sheet_commands.h"

#include "app/paper/sheet_set.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/print_dialogs.h"
#include "app/window/settings.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QPainter>
#include <QPrinter>

#include <memory>

namespace siphonwright {

namespace {
constexpr qint64 largest_logo_bytes = qint64(64) << 20;
}

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
    if (settings::upright.get())
        options.orientation = QPageLayout::Portrait;
    if (const int scale = settings::scale.get(); scale > 0)
        options.scale = scale;
    options.colour = settings::colour.get();
    options.running = settings::running.get();
    options.tint = settings::tint.get();
    options.third_angle = settings::third_angle.get();
    options.photo = settings::photo_on_sheet.get();
    options.student = for_students_;
    return options;
}

/// The picture for the title block; null where there is none, or nobody waits for it.
QImage SheetCommands::logo() const
{
    const QString path = settings::logo.get();
    if (path.isEmpty())
        return {};
    const auto file = files_.read<FileBytes>(
        path, [path] { return readFile(path, largest_logo_bytes); }, SlowCall::What::opening_logo);
    return file ? QImage::fromData(file->bytes) : QImage();
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

/// What is chosen to be printed; nothing behind a student's drawing.
paper::SheetSet SheetCommands::chosen() const
{
    paper::SheetSet set;
    if (for_students_)
        return set;
    set.checklist = settings::checklist_behind.get();
    set.parts = settings::parts_behind.get();
    set.estimate = settings::estimate_behind.get();
    set.assumptions = settings::assumptions_behind.get();
    return set;
}

/// All that is printed, for the paper chosen. Drawing pages refer to `analysis`.
std::vector<sheet::FurtherPage> SheetCommands::pages(const Analysis& analysis, const QImage& logo) const
{
    sheet::Options drawn = options();
    drawn.logo = logo;
    return paper::pagesOf(document_.sketch(), analysis, chosen(), drawn);
}

void SheetCommands::exportSheet()
{
    QFileDialog* dialog = newFileDialog(&window_, tr("Export the sheet"));
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
    const QImage logo_read = logo();
    const Analysis analysis = judged();
    const QStringList problems =
        sheet::write(path, pages(analysis, logo_read), document_.sketch(), options().png_dpi, files_.put());
    if (!problems.isEmpty())
        files_.tell(tr("The sheet could not be written."), problems);
}

void SheetCommands::chooseLogo()
{
    const QString old = settings::logo.get();
    if (!old.isEmpty()) { // once more takes it off
        settings::logo.set({});
        return;
    }
    QFileDialog* dialog = newFileDialog(&window_, tr("Logo for the sheet"));
    dialog->setNameFilter(tr("Pictures (*.png *.jpg *.jpeg *.svg)"));
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
        const auto file = files_.read<FileBytes>(path, [path] { return readFile(path, largest_logo_bytes); });
        if (!file)
            return;
        if (QImage::fromData(file->bytes).isNull())
            files_.tell(tr("The logo could not be read."), {path});
        else
            settings::logo.set(path);
    });
    dialog->open();
}

void SheetCommands::paint(QPrinter& printer, const QImage& logo) const
{
    QPainter painter(&printer);
    // The logical resolution is the one that the painter's coordinates count in.
    painter.scale(printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
    const Analysis analysis = judged();
    const std::vector<sheet::FurtherPage> all = pages(analysis, logo);
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i > 0) {
            printer.setPageLayout(all[i].layout);
            printer.newPage();
        }
        all[i].paint(painter);
    }
    // For the next time: a preview paints anew on the same printer.
    printer.setPageLayout(sheet::pageLayout(options()));
}

void SheetCommands::preview()
{
    printing::preview(window_, sheet::pageLayout(options()), *this,
                      [this, picture = logo()](QPrinter& on) { paint(on, picture); });
}

void SheetCommands::print()
{
    printing::print(window_, sheet::pageLayout(options()), *this, files_,
                    [this, picture = logo()](QPrinter& on) { paint(on, picture); });
}

} // namespace siphonwright
