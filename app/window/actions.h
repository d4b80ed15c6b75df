#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QAction>
#include <QHash>

namespace siphonwright {

/// What decides which actions can be done now.
struct Situation {
    bool selected = false;
    bool several = false;    ///< two or more selected
    bool spreadable = false; ///< three or more
    bool hose_selected = false;
    bool point_fits = false; ///< a hose, an outline, or a corner of one is selected
    bool turnable = false;
    bool outlined = false; ///< it has corners to go into
    bool end_selected = false;
    bool can_open = false; ///< a valve, bleed or drain
    bool engine = false;
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
    /// In the order of the table, then those taken in.
    const QStringList& ids() const { return ids_; }
    /// Take an action made elsewhere in among the others; its object name is its id.
    void takeIn(QAction& action);
    /// Put keys on an action, and into its tooltip.
    void setKeys(const QString& id, const QList<QKeySequence>& keys);
    /// What is missing for an action that cannot be done now; empty where it can or where nobody knows.
    QString whyNot(const QString& id) const;
    void setLook(drawing::Look look);
    void update(const Situation& situation);

private:
    QHash<QString, QAction*> by_id_;
    QStringList ids_;
};

} // namespace siphonwright
