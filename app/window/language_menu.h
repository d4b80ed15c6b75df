#pragma once

class QMenu;
class QWidget;

namespace siphonwright {

class Actions;

/// The choice of the program's language, kept for the next start; a choice that changes it says so over
/// `window`.
void fillLanguageMenu(QMenu& menu, Actions& actions, QWidget& window);

} // namespace siphonwright
