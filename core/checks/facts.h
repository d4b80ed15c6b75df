#pragma once

#include "core/checks/rules.h"

/// The facts that verdicts hang on, by the name in which people are asked to confirm them.
namespace siphonwright {

void restsOnPlace(Judge& judge, const Port& port);
void restsOnPlace(Judge& judge, const Heater& heater);
/// Where a hose's ends lie: the places of its ports and heaters.
void restsOnEnds(Judge& judge, const Route& route);
void restsOnBore(Judge& judge, const Hose& hose);
void restsOnJacket(Judge& judge);
/// The coolant levels that are entered, and the tank's place, about which they turn on a grade.
void restsOnLevels(Judge& judge);

} // namespace siphonwright
