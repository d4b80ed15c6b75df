#include "app/window/checklist_commands.h"

#include "app/commissioning/page.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/print_dialogs.h"
#include "app/window/settings.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QPainter>
#include <QPrinter>

namespace siphonwright {

ChecklistCommands::ChecklistCommands(Document& document, const SheetCommands& sheet, FileCommands& files,
                                     QWidget& window)
    : QObject(&window), document_(document), sheet_(sheet), files_(files), window_(window)
{}

sheet::Options ChecklistCommands::options() const
{
    return commissioning::pageOptions(sheet_.options().paper);
}

void ChecklistCommands::print()
{
    printing::print(window_, sheet::pageLayout(options()), *this, files_, [this](QPrinter& printer) {
        const Analysis analysis = sheet_.judged();
        QPainter painter(&printer);
        painter.scale(printer.logicalDpiX() / 25.4, printer.logicalDpiY() / 25.4);
        const int count = commissioning::pageCount(document_.sketch(), analysis, options());
        for (int page = 0; page < count; ++page) {
            if (page > 0)
                printer.newPage();
            commissioning::paintPage(painter, document_.sketch(), analysis, options(), page);
        }
    });
}

void ChecklistCommands::exportPages()
{
    QFileDialog* dialog = newFileDialog(&window_, tr("Save the checklist"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({tr("PDF (*.pdf)")});
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    dialog->selectFile(tr("%1 checklist").arg(QFileInfo(displayName(document_)).completeBaseName()));
    connect(dialog, &QFileDialog::fileSelected, this, &ChecklistCommands::exportTo);
    dialog->open();
}

void ChecklistCommands::exportTo(const QString& path)
{
    const QStringList problems =
        commissioning::exportTo(path, document_.sketch(), sheet_.judged(), options(), files_.put());
    if (!problems.isEmpty())
        files_.tell(tr("The checklist could not be written."), problems);
}

} // namespace siphonwright
