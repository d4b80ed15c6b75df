#pragma once

#include "app/panels/field.h"

/// What is entered for heater size, supply and coolant, as forms.
namespace siphonwright::sizing {

panels::Form sizeEntries();
panels::Form supplyEntries(const Sketch& sketch);
panels::Form coolantEntries();

} // namespace siphonwright::sizing
