#include "app/document/open_lock.h"

#include <QFileInfo>

#include <utility>

namespace siphonwright {

OpenLock::Taken OpenLock::take(const QString& path)
{
    if (path == path_ && lock_)
        return Taken::yes;
    if (path.isEmpty()) {
        lock_.reset();
        path_.clear();
        return Taken::yes;
    }
    const QFileInfo named(path);
    const QFileInfo target(named.exists() ? named.canonicalFilePath() : named.absoluteFilePath());
    auto lock = std::make_unique<QLockFile>(
        QStringLiteral("%1/.%2.lock").arg(target.absolutePath(), target.fileName()));
    lock->setStaleLockTime(0); // a drawing may stay open for days; a dead program's lock is seen as such
    if (lock->tryLock(0)) {
        lock_ = std::move(lock);
        path_ = path;
        return Taken::yes;
    }
    if (lock->error() != QLockFile::LockFailedError) {
        lock_.reset();
        path_.clear();
        return Taken::impossible;
    }
    qint64 number = 0;
    QString machine;
    QString program;
    lock->getLockInfo(&number, &machine, &program);
    holder_ = QStringLiteral("%1, %2").arg(program, machine);
    return Taken::by_another;
}

} // namespace siphonwright
