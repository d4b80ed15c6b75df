#pragma once

#include "app/document/crash_report.h"
#include "app/document/recovery.h"

#include <QObject>
#include <QString>
#include <QStringList>

class QWidget;

namespace siphonwright {

class Document;
class FileCommands;
class FileStrip;

/// What a window does against loss: unsaved work kept in a folder, crash reports beside it, and both offered
/// at the next start.
class Safekeeping : public QObject {
    Q_OBJECT
public:
    Safekeeping(Document& document, FileCommands& files, FileStrip& strip, QWidget& window,
                const QString& folder);
    ~Safekeeping() override;

    Recovery& recovery() { return recovery_; }
    /// Show what can be recovered, even if that is nothing.
    void offer();
    /// Show it if there is something, or a crash report that nobody was told of.
    void offerAtStart();

private:
    void show(const QStringList& reports);

    FileCommands& files_;
    QWidget& window_;
    const QString folder_;
    Recovery recovery_;
    CrashReport report_;
};

} // namespace siphonwright
