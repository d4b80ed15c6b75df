#pragma once

#include "app/document/document.h"
#include "app/paper/sheet_set.h"
#include "app/sheet/sheet.h"

#include <QObject>

class QPrinter;
class QWidget;

namespace siphonwright {

class FileCommands;

/// The sheet on paper, on the screen before printing, and as a file.
class SheetCommands : public QObject {
    Q_OBJECT
public:
    SheetCommands(Document& document, FileCommands& files, QWidget& window);

    void exportSheet();
    void exportTo(const QString& path);
    void preview();
    void print();
    /// Without findings, for a class that is to find the fault; never remembered, so that no customer gets
    /// it.
    void setForStudents(bool on) { for_students_ = on; }

    /// Paper as chosen, or after the drawing's units: A4 with mm, Letter with inches. Without the logo, which
    /// has to be read.
    sheet::Options options() const;
    paper::SheetSet chosen() const;
    /// A picture for the title block; asked again, none.
    void chooseLogo();
    Analysis judged() const;

private:
    QImage logo() const;
    void paint(QPrinter& printer, const QImage& logo) const;
    std::vector<sheet::FurtherPage> pages(const Analysis& analysis, const QImage& logo) const;

    Document& document_;
    FileCommands& files_;
    QWidget& window_;
    bool for_students_ = false;
};

} // namespace siphonwright
