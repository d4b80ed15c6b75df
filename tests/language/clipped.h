#pragma once

#include <QStringList>

class QWidget;

/// What of a window's words cannot be read: "button: Load a price list" each, with how much room it lacks.
/// Words that give way and have the whole in a tooltip count as read, and what is scrolled out of sight.
QStringList clippedIn(const QWidget& window);

/// Every word that a window shows: of labels, buttons, tabs, heads, lists, boxes.
QStringList wordsIn(const QWidget& window);
