#include "app/window/settings.h"

#include <QFileInfo>

#include <algorithm>

namespace siphonwright {

namespace {
constexpr qsizetype most_recent_files = 10;
}

QStringList recentFiles()
{
    QStringList files = settings::recent.get();
    files.erase(std::remove_if(files.begin(), files.end(),
                               [](const QString& path) { return !QFileInfo::exists(path); }),
                files.end());
    return files;
}

void rememberFile(const QString& path)
{
    QStringList files = recentFiles();
    files.removeAll(path);
    files.prepend(path);
    while (files.size() > most_recent_files)
        files.removeLast();
    settings::recent.set(files);
}

} // namespace siphonwright
