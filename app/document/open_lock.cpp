#include "app/document/open_lock.h"

#include "app/document/long_call.h"

#include <QFileInfo>

#include <chrono>
#include <memory>
#include <utility>

namespace siphonwright {

OpenLock::~OpenLock()
{
    letGo();
}

/// Nobody waits long for a drive that is gone: a lock left there is stale as soon as this program has ended.
void OpenLock::letGo()
{
    if (!lock_)
        return;
    constexpr std::chrono::milliseconds patience{500};
    const std::shared_ptr<QLockFile> lock = std::move(lock_);
    const LongCall<bool> call([lock] {
        lock->unlock();
        return true;
    });
    static_cast<void>(call.isDone(patience));
}

OpenLock::Taken OpenLock::take(const QString& path)
{
    if (path == path_ && lock_)
        return Taken::yes;
    if (path.isEmpty()) {
        letGo();
        path_.clear();
        return Taken::yes;
    }
    const QFileInfo named(path);
    const QFileInfo target(named.exists() ? named.canonicalFilePath() : named.absoluteFilePath());
    auto lock = std::make_unique<QLockFile>(
        QStringLiteral("%1/.%2.lock").arg(target.absolutePath(), target.fileName()));
    lock->setStaleLockTime(0); // a drawing may stay open for days; a dead program's lock is seen as such
    if (lock->tryLock(0)) {
        letGo();
        lock_ = std::move(lock);
        path_ = path;
        return Taken::yes;
    }
    if (lock->error() != QLockFile::LockFailedError) {
        letGo();
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
