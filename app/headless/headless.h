#pragma once

#include <QStringList>

class QTextStream;

namespace siphonwright {

/// What a command line ends with.
enum ExitCode {
    nothing_stops = 0,  ///< done; nothing that stops the job
    job_stopped = 1,    ///< at least one stop
    not_understood = 2, ///< a file could not be read or written, or an argument is wrong; outranks a stop
};

/// Whether this is a command of the command line; everything else is a file to open in the window.
bool isHeadless(const QString& word);

/// The command line without a window: `check FILE... [--json] [--bands]`, `sheet FILE --output OUT
/// [--paper ...]`, and so on as `--help` lists them. `arguments` are those after the program's name. Results
/// go to `out`, problems to `err`. Needs a QGuiApplication for fonts, but no display.
int runHeadless(const QStringList& arguments, QTextStream& out, QTextStream& err);

} // namespace siphonwright
