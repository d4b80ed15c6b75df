#pragma once

#include "core/air/fill.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// Which way coolant goes round a loop.
enum class FlowSense {
    forward, ///< supply port, heater, return port
    reverse
};

/// Air shut in after filling.
struct AirPocket {
    std::size_t loop = 0;
    std::vector<std::size_t> cells; ///< that it lies in, from the supply port on
    LoopPart part = LoopPart::supply;
    double along_mm = 0; ///< of its highest place, along the part's path
    double gas_ml = 0;
    double pressure_mm = 0;    ///< over the atmosphere, mm of coolant
    double supply_side_mm = 0; ///< its surface nearest the supply port
    double return_side_mm = 0; ///< its surface nearest the return port
    double forward_mm = 0;     ///< head that it takes from the slightest forward flow, see pocketHead
    double reverse_mm = 0;
    /// It closes the bore: it holds back the slightest flow. Otherwise it only narrows it.
    bool closes_forward = false;
    bool closes_reverse = false;
};

/// Smaller pockets are not listed.
constexpr double least_pocket_ml = 0.01;

/// The pockets of a state at rest, loop by loop.
std::vector<AirPocket> airPockets(const Filled& filled);

/// Head over the invert at which a flow passes critically over the lip of a level circular bore, mm: y + A/2T
/// with A^3/T = Q^2/g (A the wetted area, T the width of its surface), the textbook definition of critical
/// flow. 0 without flow; a flow over what the bore carries so is taken with a full bore.
double criticalHead(double bore_mm, double flow_m3_per_s);

/// Head that a pocket takes from a flow, mm of coolant.
///
/// Measured: in essence the pocket's vertical height between its two surfaces (May, Allen and Nelson 2018,
/// Int. J. Hydraulic Eng. 7(3):51-57, 25 and 38 mm pipes). Upstream the surface lies at z_u = b + E_c, b the
/// floor of the pocket's highest throat and E_c the critical head; the gas over z_u lies there, the rest
/// behind the crest down to z_d, at the upstream liquid's pressure. Head = z_u - z_d, not under 0, and not
/// over b - c of the next throat downstream, past which more gas bubbles out by itself. 0 where the gas fits
/// over z_u. Surfaces after filling say nothing of it.
double pocketHead(const Filled& filled, const AirPocket& pocket, FlowSense sense, double flow_m3_per_s);

/// Steepest fall (sine of its angle) of the bore that a flow would push the pocket down through, and its
/// bore; the sine is 0 where nothing falls.
struct PocketOutlet {
    double bore_mm = 0;
    double sine = 0;
    bool in_chamber = false; ///< it lies in the chamber alone, which no flow through a hose clears
};
PocketOutlet outletOf(const Filled& filled, const AirPocket& pocket, FlowSense sense);

} // namespace siphonwright
