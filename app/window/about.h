#pragma once

#include <QStringList>

class QWidget;

namespace siphonwright {

/// What to heed, a sentence each.
QStringList cautions();

void showCautions(QWidget& window);
void showAbout(QWidget& window);
/// Why an engine without coolant has no place in a drawing.
void refuseAirCooled(QWidget& window);

} // namespace siphonwright
