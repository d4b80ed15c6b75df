#include "app/window/print_dialogs.h"

#include <QDialog>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>

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

void print(QWidget& over, const QPageLayout& layout, const QObject& context, const Paint& paint)
{
    const std::shared_ptr<QPrinter> printer = printerOf(layout);
    auto* dialog = new QPrintDialog(printer.get(), &over);
    QObject::connect(dialog, qOverload<>(&QDialog::accepted), &context,
                     [paint, on = printer.get()] { paint(*on); });
    open(*dialog, printer);
}

} // namespace siphonwright::printing
