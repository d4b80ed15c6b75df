#pragma once

#include "app/document/document.h"

class QMenu;
class QWidget;

namespace siphonwright {

class Actions;

/// The menu of what is selected, or of empty ground: the window's own actions, those that make sense there.
QMenu* partMenu(const Actions& actions, const Document& document, const Selection& selection,
                QWidget* parent);

/// The same for the menu bar: what is done to parts, whether it can be done now or not.
void addEditing(QMenu& menu, const Actions& actions);

} // namespace siphonwright
