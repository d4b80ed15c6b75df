#include "app/window/keys.h"

#include "app/window/actions.h"

#include <QSettings>

namespace siphonwright {

namespace {

QString settingOf(const QString& id)
{
    return QStringLiteral("keys/%1").arg(id);
}

} // namespace

Keys::Keys(Actions& actions, QObject* parent) : QObject(parent), actions_(actions)
{
    const QSettings kept;
    for (const QString& id : actions_.ids())
        standard_.insert(id, actions_[id]->shortcuts());
    for (const QString& id : actions_.ids()) {
        if (!kept.contains(settingOf(id)))
            continue;
        const auto key = QKeySequence::fromString(kept.value(settingOf(id)).toString());
        const QString holder = key.isEmpty() ? QString() : holderOf(key);
        if (!holder.isEmpty() && holder != id) {
            QList<QKeySequence> rest = actions_[holder]->shortcuts();
            rest.removeAll(key);
            actions_.setKeys(holder, rest);
        }
        actions_.setKeys(id, key.isEmpty() ? QList<QKeySequence>() : QList<QKeySequence>{key});
    }
}

bool Keys::isStandard(const QString& id) const
{
    return actions_[id]->shortcuts() == standard(id);
}

QString Keys::holderOf(const QKeySequence& key) const
{
    for (const QString& id : actions_.ids())
        if (actions_[id]->shortcuts().contains(key))
            return id;
    return {};
}

bool Keys::isOfDrawing(const QKeySequence& key)
{
    if (key.isEmpty() || key[0].keyboardModifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier))
        return false;
    switch (key[0].key()) {
    case Qt::Key_Escape:
    case Qt::Key_Backspace:
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
        return true;
    default:
        return false;
    }
}

bool Keys::give(const QString& id, const QKeySequence& key)
{
    const QString holder = key.isEmpty() ? QString() : holderOf(key);
    if (isOfDrawing(key) || (!holder.isEmpty() && holder != id))
        return false;
    put(id, key.isEmpty() ? QList<QKeySequence>() : QList<QKeySequence>{key});
    Q_EMIT changed();
    return true;
}

void Keys::take(const QString& id, const QKeySequence& key)
{
    if (key.isEmpty() || isOfDrawing(key))
        return;
    if (const QString holder = holderOf(key); !holder.isEmpty() && holder != id) {
        QList<QKeySequence> rest = actions_[holder]->shortcuts();
        rest.removeAll(key);
        put(holder, rest);
    }
    put(id, {key});
    Q_EMIT changed();
}

void Keys::reset(const QString& id)
{
    QList<QKeySequence> free;
    for (const QKeySequence& key : standard(id))
        if (const QString holder = holderOf(key); holder.isEmpty() || holder == id)
            free.append(key);
    put(id, free);
    Q_EMIT changed();
}

void Keys::resetAll()
{
    QSettings().remove(QStringLiteral("keys"));
    for (const QString& id : actions_.ids())
        actions_.setKeys(id, standard(id));
    Q_EMIT changed();
}

void Keys::put(const QString& id, const QList<QKeySequence>& keys)
{
    actions_.setKeys(id, keys);
    if (keys == standard(id))
        QSettings().remove(settingOf(id));
    else
        QSettings().setValue(settingOf(id), keys.isEmpty() ? QString() : keys.first().toString());
}

} // namespace siphonwright
