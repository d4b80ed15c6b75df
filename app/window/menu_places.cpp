#include "app/window/menu_places.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

namespace siphonwright {

namespace {

void walk(const QList<QAction*>& actions, const QString& place, QHash<const QAction*, QString>& places)
{
    for (const QAction* action : actions) {
        if (const QMenu* menu = action->menu()) {
            const QString name = wordsOf(*action);
            walk(menu->actions(), place.isEmpty() ? name : place + QStringLiteral(" › ") + name, places);
        } else if (!action->isSeparator()) {
            places.insert(action, place);
        }
    }
}

} // namespace

QHash<const QAction*, QString> menuPlaces(const QMenuBar& bar)
{
    QHash<const QAction*, QString> places;
    walk(bar.actions(), {}, places);
    return places;
}

QString wordsOf(const QAction& action)
{
    QString words = action.text();
    words.remove(QLatin1Char('&'));
    words.remove(QStringLiteral("…"));
    return words;
}

} // namespace siphonwright
