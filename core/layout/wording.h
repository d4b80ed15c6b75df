#pragma once

#include "core/layout/layout.h"
#include "core/sketch/sketch.h"

#include <string>

/// Names of parts as a finding's sentence calls them.
namespace siphonwright {

/// "Return hose 2": the hose's own name, led by what it is if the name does not say so.
std::string nameOfHose(const Hose& hose);
std::string nameOfPort(const Port& port);
std::string nameOfHeater(const Heater& heater);
std::string nameOfArea(const Area& area);

/// A length to change something by, mm: up to the next whole millimetre, so that doing it is enough.
double enough(double length_mm);

PartRef refOf(const Hose& hose);
PartRef refOf(const Port& port);
PartRef refOf(const Heater& heater);

} // namespace siphonwright
