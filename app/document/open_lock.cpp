#include "app/document/open_lock.h"

#include "app/document/long_call.h"

#include <QFileInfo>

#include <memory>
#include <utility>

namespace siphonwright {
OpenLock::~OpenLock()
{
    letGo();
}

/// A lock left on a drive that is gone is stale as soon as this program has ended.
void OpenLock::letGo()
{
    if (!lock_)
        return;
    const std::shared_ptr<QLockFile> lock = std::move(lock_);
    const LongCall<bool> call([lock] {
        lock->unlock();
        return true;
    });
    static_cast<void>(call.isDone(usual_patience));
}

OpenLock::Taken OpenLock::take(const QString& path, std::chrono::milliseconds patience)
{
    if (path == path_ && lock_)
        return Taken::yes;
    if (path.isEmpty()) {
        letGo();
        path_.clear();
        return Taken::yes;
    }
    // A lock that is got after nobody waits for it any more is let go at once.
    LongCall<Tried> call([path] { return tryFor(path); });
    Tried tried = call.isDone(patience) ? call.take() : Tried{};
    switch (tried.taken) {
    case Taken::yes:
        letGo();
        lock_ = std::move(tried.lock);
        path_ = path;
        break;
    case Taken::impossible:
        letGo();
        path_.clear();
        break;
    case Taken::by_another:
        holder_ = tried.holder;
        break;
    }
    return tried.taken;
}

OpenLock::Tried OpenLock::tryFor(const QString& path)
{
    const QFileInfo named(path);
    const QFileInfo target(named.exists() ? named.canonicalFilePath() : named.absoluteFilePath());
    auto lock = std::make_unique<QLockFile>(
        QStringLiteral("%1/.%2.lock").arg(target.absolutePath(), target.fileName()));
    lock->setStaleLockTime(0); // a drawing may stay open for days; a dead program's lock is seen as such
    if (lock->tryLock(0))
        return {Taken::yes, std::move(lock), {}};
    if (lock->error() != QLockFile::LockFailedError)
        return {};
    qint64 number = 0;
    QString machine;
    QString program;
    lock->getLockInfo(&number, &machine, &program);
    return {Taken::by_another, nullptr, QStringLiteral("%1, %2").arg(program, machine)};
}

} // namespace siphonwright
