#pragma once

#include "app/document/long_call.h"
#include "app/document/saving.h"

#include <QByteArray>
#include <QFileSystemWatcher>
#include <QFrame>
#include <QString>
#include <QTimer>

#include <optional>

class QLabel;
class QPushButton;

namespace siphonwright {

class Document;
class FileCommands;

/// A strip over the drawing that says when the drawing's file was changed, moved or removed by another
/// program, or when unsaved work cannot be kept. It changes nothing until somebody chooses.
class FileStrip : public QFrame {
    Q_OBJECT
public:
    FileStrip(Document& document, FileCommands& files, QWidget* parent);

    /// Look at the disk now; where it does not answer, again and again beside the window.
    void look();
    /// Unsaved work is not kept, with the reason; empty: it is again.
    void warn(const QString& reason);

private:
    /// What the document's file is now; nothing while the disk does not answer.
    std::optional<OnDisk> ask();
    void watch(bool is_there);
    void say(const QString& sentence, bool theirs);

    Document& document_;
    FileCommands& files_;
    QLabel* sentence_;
    QPushButton* theirs_;
    QPushButton* mine_;
    QFileSystemWatcher watcher_;
    QTimer settled_; ///< a program that writes in pieces is given time to end
    std::optional<LongCall<OnDisk>> asked_;
    FileMark asked_for_;
    QString path_;
    QByteArray fingerprint_; ///< of the file that was looked at last
    QString warning_;
    bool left_ = false; ///< somebody chose to go on with what is on the table
};

} // namespace siphonwright
