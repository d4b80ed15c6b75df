#pragma once

#include "core/paperwork/estimate.h"

#include <string>

namespace siphonwright {

/// A parts list as CSV after RFC 4180, for all vehicles. Columns: number, item (price key), name, size,
/// quantity and unit (as priced, else pieces, m or l), price and amount at list price (empty: not priced),
/// currency, missing, used (where, one after the other), notes. Sizes read in the given unit system.
std::string csvOf(const PartsList& parts, const Sketch& sketch, UnitSystem units);

/// A row for each item of a parts list that can be priced and is not: to be filled in.
PriceList pricesWanted(const PartsList& parts, const PriceList& known);

} // namespace siphonwright
