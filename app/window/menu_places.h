#pragma once

#include <QHash>
#include <QString>

class QAction;
class QMenuBar;

namespace siphonwright {

/// Where each action of the menus is found: "View › Look". An action that is in no menu is not in it.
QHash<const QAction*, QString> menuPlaces(const QMenuBar& bar);

/// An action's words without the marks of menus: "Save as", not "Save &as…".
QString wordsOf(const QAction& action);

} // namespace siphonwright
