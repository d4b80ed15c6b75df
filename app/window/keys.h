#pragma once

#include <QHash>
#include <QKeySequence>
#include <QObject>

namespace siphonwright {

class Actions;

/// The keys of all actions as the user has chosen them, kept from one start to the next.
///
/// Two actions never share a key: Qt would run neither. What the user chose goes before what an action has as
/// its standard, so that a command added later cannot take a key away.
class Keys : public QObject {
    Q_OBJECT
public:
    /// Takes the keys that the actions have now as their standard, then puts on those that were chosen.
    explicit Keys(Actions& actions, QObject* parent = nullptr);

    QList<QKeySequence> standard(const QString& id) const { return standard_.value(id); }
    bool isStandard(const QString& id) const;
    /// The action that has a key; empty: it is free.
    QString holderOf(const QKeySequence& key) const;
    /// Give an action a key, or none. Nothing is taken from another action by this.
    /// @return false where another action has the key, or the drawing needs it: nothing is changed then.
    bool give(const QString& id, const QKeySequence& key);
    /// Take a key away from the action that has it and give it to this one.
    void take(const QString& id, const QKeySequence& key);
    /// Back to the standard. A standard key that another action was given since stays there.
    void reset(const QString& id);
    void resetAll();

    /// Keys that mean the drawing while it has the focus, whatever the window has them for.
    static bool isOfDrawing(const QKeySequence& key);

Q_SIGNALS:
    void changed();

private:
    void put(const QString& id, const QList<QKeySequence>& keys);

    Actions& actions_;
    QHash<QString, QList<QKeySequence>> standard_;
};

} // namespace siphonwright
