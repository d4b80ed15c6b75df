#pragma once

#include "app/window/sheet_commands.h"

#include <QObject>

namespace siphonwright {

/// The checklist on paper: print dialog and PDF file, on the sheet's paper, upright.
class ChecklistCommands : public QObject {
    Q_OBJECT
public:
    ChecklistCommands(Document& document, const SheetCommands& sheet, FileCommands& files, QWidget& window);

    void print();
    void exportPages();
    void exportTo(const QString& path);

private:
    sheet::Options options() const;

    Document& document_;
    const SheetCommands& sheet_;
    FileCommands& files_;
    QWidget& window_;
};

} // namespace siphonwright
