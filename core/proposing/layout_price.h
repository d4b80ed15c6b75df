#pragma once

#include "core/layout/layout.h"
#include "core/sketch/sketch.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a layout costs by the sketch's own price list.
namespace siphonwright {

/// Hoses and what is fitted to them, heater and coolant left out: as sold, with the mark-up that is entered,
/// for all vehicles. A part without a price is not a part for nothing.
struct LayoutPrice {
    std::optional<std::int64_t> minor;   ///< of what is priced, minor units; nothing: not one part is
    std::vector<std::string> not_priced; ///< "Hose clamp", each kind once
    bool hose_priced = false;            ///< all hose is, whatever else is not
    bool complete() const { return minor && not_priced.empty(); }
};
/// \param layout the sketch's own, resolved
LayoutPrice priceOfHoses(const Sketch& sketch, const Layout& layout);

/// A metre of hose of a bore (mm) at list price, minor units; nothing: not priced by length.
std::optional<double> priceOfMetre(const Sketch& sketch, double bore_mm);

} // namespace siphonwright
