#pragma once

#include "app/document/document.h"

#include <QAction>
#include <QHash>

namespace siphonwright {

/// What decides which actions can be done now.
struct Situation {
    bool selected = false;
    bool hose_selected = false;
    bool engine = false;
    bool photo = false;
    bool loop_ends = false; ///< a port and a heater, so that a hose can go from one to the other
    bool findings = false;
    bool finding_selected = false;
    bool warm_up = false; ///< there is one to keep or write
    bool may_keep_curve = false;
    bool kept_curves = false;
    bool demonstrating = false; ///< set by the window
};
Situation situationOf(const Document& document, const Selection& selection);

/// Every action of the window, by id, with its words, shortcut, tooltip and when it can be done, in one
/// table.
class Actions : public QObject {
    Q_OBJECT
public:
    explicit Actions(QObject* parent = nullptr);

    /// The action of an id of the table.
    QAction* operator[](const QString& id) const;
    QList<QAction*> all() const { return by_id_.values(); }
    void setDark(bool dark);
    void update(const Situation& situation);

private:
    QHash<QString, QAction*> by_id_;
};

} // namespace siphonwright
