#include "app/window/settings.h"

#include "app/document/long_call.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <chrono>

namespace siphonwright {

namespace {
constexpr qsizetype most_recent_files = 10;
}

QStringList recentFiles()
{
    const QStringList all = settings::recent.get();
    LongCall<QStringList> existing([all] {
        QStringList files = all;
        files.erase(std::remove_if(files.begin(), files.end(),
                                   [](const QString& path) { return !QFileInfo::exists(path); }),
                    files.end());
        return files;
    });
    // One of them may be on a drive that is gone and does not answer.
    constexpr std::chrono::milliseconds patience{500};
    return existing.isDone(patience) ? existing.take() : all;
}

QString usualFolder()
{
    return orHome(settings::folder.get());
}

QString orHome(const QString& folder)
{
    const LongCall<bool> there([folder] { return QFileInfo(folder).isDir(); });
    constexpr std::chrono::milliseconds patience{500};
    return there.isDone(patience) ? folder : QDir::homePath();
}

void rememberFile(const QString& path)
{
    QStringList files = settings::recent.get();
    files.removeAll(path);
    files.prepend(path);
    while (files.size() > most_recent_files)
        files.removeLast();
    settings::recent.set(files);
}

} // namespace siphonwright
