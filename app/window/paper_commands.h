#pragma once

#include "app/paper/paper_window.h"

#include <QObject>
#include <QPointer>

class QPrinter;

namespace siphonwright {

class FileCommands;
class SheetCommands;

/// The window of parts and estimate, and its documents on paper and as files.
class PaperCommands : public QObject {
    Q_OBJECT
public:
    PaperCommands(Document& document, Selection& selection, FileCommands& files, SheetCommands& sheet,
                  QWidget& window);

    ~PaperCommands() override;

    void show(paper::PaperWindow::Tab tab);
    void writePdf(paper::Kind kind, const QString& path);
    void writeCsv(const QString& path);
    paper::PaperWindow* paperWindow() { return paper_; }

private:
    void make();
    void preview();
    void print();
    void choosePdf();
    void chooseCsv();
    paper::Pages pagesOf(paper::Kind kind) const;
    void paint(QPrinter& printer, paper::Kind kind) const;

    Document& document_;
    Selection& selection_;
    FileCommands& files_;
    SheetCommands& sheet_;
    QWidget& window_;
    QPointer<paper::PaperWindow> paper_; ///< made when it is first wanted
};

} // namespace siphonwright
