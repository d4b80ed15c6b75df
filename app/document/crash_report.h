#pragma once

#include "core/sketch/sketch.h"

#include <QObject>
#include <QString>

namespace siphonwright {

class Document;

/// What an unexpected end needs to be found: version and system, the signal, the stack where the system tells
/// it, and what the last edits changed, as kinds and numbers of parts. No text of the drawing, no name, no
/// path. It is written by the dying program to a file that was named before; where it is, is said on standard
/// error. Nothing where there are no POSIX signals.
class CrashReport : public QObject {
    Q_OBJECT
public:
    /// Note a document's edits from now on. Reports go nowhere until writeTo().
    explicit CrashReport(Document& document);
    ~CrashReport() override;
    /// Where a report goes; empty: nowhere.
    static void writeTo(const QString& file);

private:
    void note();

    Document& document_;
    Sketch before_;
};

/// What an edit changed: "heaters 1 > 2; hoses 2 changed". Nothing that a user typed.
QString changeInFigures(const Sketch& before, const Sketch& after);

} // namespace siphonwright
