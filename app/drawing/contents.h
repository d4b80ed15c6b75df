#pragma once

#include "core/air/fill.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <memory>
#include <optional>
#include <vector>

/// What is in hoses, chambers, jacket and tank at one moment, for the painter.
namespace siphonwright::drawing {

/// Temperatures at the four ends of a loop's hoses, degC.
struct LoopTemperatures {
    double supply_port = 0; ///< what the jacket gives
    double inlet = 0;
    double outlet = 0;
    double return_port = 0;
};

/// One loop; its index is Cell::loop.
struct LoopContents {
    Id heater;
    Id supply;
    Id return_;
    double flow = 0;  ///< which way coolant goes: positive forward, negative backward, 0 not at all
    double drift = 0; ///< how far the arrows have moved on, in their own spacing
    std::optional<LoopTemperatures> temperatures;
    bool energised = false; ///< the element has power
};

struct Contents {
    std::shared_ptr<const FillNetwork> network; ///< neither of the two is null
    std::shared_ptr<const FillFrame> frame;
    std::vector<LoopContents> loops;
    std::optional<double> jacket_degC;
    double cold_degC = 0; ///< shown as cold
    double hot_degC = 60; ///< shown as hot

    /// The loop that a hose belongs to; null for none.
    const LoopContents* loopOfHose(const Id& hose) const;
};

} // namespace siphonwright::drawing
