#include "app/window/print_dialogs.h"

#include "app/window/file_commands.h"

#include <QDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>
#include <QTemporaryDir>

#include <memory>

namespace siphonwright::printing {

namespace {

std::shared_ptr<QPrinter> printerOf(const QPageLayout& layout)
{
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageLayout(layout);
    printer->setFullPage(true);
    return printer;
}

void open(QDialog& dialog, const std::shared_ptr<QPrinter>& printer)
{
    dialog.setAttribute(Qt::WA_DeleteOnClose);
    // The dialog paints on its printer as long as it has parts: the connection lives longer than they do.
    QObject::connect(&dialog, &QObject::destroyed, &dialog, [printer] {});
    dialog.open();
}

} // namespace

void preview(QWidget& over, const QPageLayout& layout, const QObject& context, const Paint& paint)
{
    const std::shared_ptr<QPrinter> printer = printerOf(layout);
    auto* dialog = new QPrintPreviewDialog(printer.get(), &over);
    QObject::connect(dialog, &QPrintPreviewDialog::paintRequested, &context,
                     [paint](QPrinter* on) { paint(*on); });
    open(*dialog, printer);
}

QStringList paintOn(QPrinter& printer, const Paint& paint, const PutFile& put)
{
    const QString to = printer.outputFileName();
    if (to.isEmpty()) {
        paint(printer);
        return {};
    }
    const QTemporaryDir here;
    const QString made = here.filePath(QStringLiteral("pages.pdf"));
    printer.setOutputFileName(made);
    paint(printer);
    printer.setOutputFileName(to);
    const FileBytes pdf = readFile(made, QFileInfo(made).size());
    return pdf.error.isEmpty() ? put(to, pdf.bytes) : QStringList(pdf.error);
}

void print(QWidget& over, const QPageLayout& layout, const QObject& context, FileCommands& files,
           const Paint& paint)
{
    const std::shared_ptr<QPrinter> printer = printerOf(layout);
    auto* dialog = new QPrintDialog(printer.get(), &over);
    QObject::connect(dialog, qOverload<>(&QDialog::accepted), &context, [paint, &files, on = printer.get()] {
        const QStringList problems = paintOn(*on, paint, files.put());
        if (!problems.isEmpty())
            files.tell(FileCommands::tr("The pages could not be written."), problems);
    });
    open(*dialog, printer);
}

} // namespace siphonwright::printing
