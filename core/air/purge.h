#pragma once

#include "core/air/pocket.h"

#include <string>
#include <vector>

/// What running the engine does to air: its pump drives coolant through the heater's hoses, and a pocket goes
/// when the velocity passes the clearing velocity for the fall behind it. Natural circulation (0.02 to 0.1
/// m/s) never clears one.
namespace siphonwright {

/// Velocity that carries a pocket down a bore falling at an angle of this sine, m/s; D the bore.
///
/// V = 1.07 sqrt(g D sin), from Q^2/(g D^5) = 0.707 sin: Kalinske and Bliss 1943, 100-150 mm pipes; from
/// memory (later reviews quote other constants).
double clearingKalinskeBliss(double bore_mm, double sine);
/// Q^2/(g D^5) = 0.707 sin as a flow, m3/s.
double clearingFlowKalinskeBliss(double bore_mm, double sine);
/// V = (a + 0.56 sqrt(sin)) sqrt(g D), a = 0.45, 0.50, 0.57, 0.61 up to n = 4 V/(pi D^3) of 0.06, 0.12, 0.30
/// and over: Escarameia 2007, Proc. ICE Water Management 160(1):25, 150 mm, up to 22.5 deg. Form second-hand,
/// values of a from memory. Without its safety factor of 1.1.
double clearingEscarameia(double bore_mm, double sine, double gas_ml);
/// V = (0.825 + 0.25 sqrt(sin)) sqrt(g D): Wisner, Mohsen and Kouwen 1975, J. Hyd. Div. 101(HY2), as quoted
/// from a pumping handbook.
double clearingWisner(double bore_mm, double sine);
/// V = (0.55 + 0.5 sqrt(sin)) sqrt(g D): Kent 1952 as corrected by later authors; from memory.
double clearingKent(double bore_mm, double sine);

/// All four are extrapolated to hose bores; between their least and their greatest a pocket may clear.
struct ClearingRange {
    double least_m_per_s = 0;
    double greatest_m_per_s = 0;
};
ClearingRange clearingRange(double bore_mm, double sine, double gas_ml);

enum class Clearing { cleared, may_clear, stays };

struct PumpFlow {
    double flow_l_per_min = 0; ///< through one loop's hoses
    FlowSense sense = FlowSense::forward;
};

struct PurgeRequest {
    std::vector<PumpFlow> flows;      ///< one a loop
    bool take_what_may_clear = false; ///< count it as cleared; otherwise it stays
    double top_up_level_mm = 0;       ///< poured back to this level in the end
    /// Coolant's density at the running temperature over that at the temperature of topping up, for the time
    /// between: 1 leaves it out. The whole coolant shrinks, the jacket's too, so its volumes must be true.
    double shrinks_to = 1;
};

struct PurgedPocket {
    AirPocket pocket;
    double velocity_m_per_s = 0; ///< in the bore behind it
    ClearingRange clears;
    Clearing verdict = Clearing::stays;
};

struct PurgeResult {
    FillStatus status = FillStatus::bad_input;
    std::string message;
    std::vector<PurgedPocket> pockets; ///< as they were before
    Filled end;                        ///< topped up
    double lowest_level_mm = 0;        ///< in the jacket, before topping up
    double topped_up_ml = 0;
    std::vector<FillEvent> events;
};

/// Runs the pump, lets the cleared gas go while nothing is poured, cools down, tops up.
PurgeResult purge(const Filled& filled, const PurgeRequest& request);

struct CooledDown {
    FillStatus status = FillStatus::bad_input;
    std::string message;
    Filled end;
    double jacket_level_mm = 0;
};

/// All coolant shrinks to a share of its volume (density now over density at the coldest ambient): how far
/// the level falls, and what air comes in with it. Liquid shut up without any air is left out.
CooledDown coolDown(const Filled& filled, double shrinks_to);

} // namespace siphonwright
