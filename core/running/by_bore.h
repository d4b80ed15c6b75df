#pragma once

#include "core/running/running.h"

#include <stop_token>
#include <vector>

namespace siphonwright {

/// What a job would do with every hose of one stock bore.
struct BoreRow {
    double bore_mm = 0;
    bool drawn = false;            ///< the smallest bore among the hoses as they are
    double flow_kg_per_s = 0;      ///< of the loop that flows least, at the shown block temperature
    double steady_outlet_degC = 0; ///< of the loop that is hottest there
    std::optional<double> peak_outlet_degC;
    double cycles_per_hour = 0; ///< of the loop that cycles most
    std::optional<double> target_h;
    bool runs = false;         ///< every loop circulates forward
    double flow_l_per_min = 0; ///< the flow by volume
};

/// A sketch with every hose of a known bore on another one, hose ends and in-line parts in proportion. Hoses
/// whose bore is not known stay as they are.
Sketch onBore(Sketch sketch, double bore_mm);

/// The table by stock bore: hoses, hose ends and in-line parts of each hose are scaled together, since a
/// larger hose goes on larger ends. Stock sizes from 12.7 to 38.1 mm. Empty when stopped or when nothing can
/// be computed.
std::vector<BoreRow> byBore(const Sketch& sketch, const std::stop_token& stop = {});

} // namespace siphonwright
