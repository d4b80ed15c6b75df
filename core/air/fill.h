#pragma once

#include "core/air/cells.h"
#include "core/air/run.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Filling an engine and its heater loops, and what air stays.
///
/// Quasi-static: liquid lies level, spills over crests and floors like over a weir, seals a throat when it
/// reaches its crown; sealed air is compressed at constant temperature, and bubbles past a throat when its
/// liquid has sunk to the throat's crown; what is sealed stays.
///
/// Assumed: gas leaves only when displaced from what is open, by bubbling into the next region or the jacket,
/// or by a bleed; spilling coolant carries none with it; nothing dissolves or drifts. Spilling is never a
/// siphon, and a running film seals nothing. Coolant over the floor of a port runs down while gas passes
/// above it. The filler is open to the air, except under vacuum.
namespace siphonwright {

enum class FillMethod {
    from_filler,  ///< poured into the jacket's filler
    under_vacuum, ///< likewise, after everything has been evacuated; then air is let in and it is topped up
    from_below    ///< pumped into a heater chamber; the jacket fills from the loop
};

struct ValvePlace {
    std::size_t loop = 0;
    std::size_t valve = 0;
};

struct FillRequest {
    std::vector<FillLoop> loops; ///< none: the jacket alone
    std::vector<JacketVolume> jacket;
    Plumb plumb;
    FillMethod method = FillMethod::from_filler;
    double target_level_mm = 0; ///< in the jacket, along plumb
    /// Valves shut at the start, opened in this order once the jacket is full to the target level, which is
    /// topped up after each. The usual retrofit: a full block and empty new hoses.
    std::vector<ValvePlace> then_open;
    /// A partly drained block: level of what is left in the jacket when the empty hoses are connected. Valves
    /// of `then_open` are then opened at once, nothing being poured between them, and only then is it filled
    /// to the target level. Nothing: not drained.
    std::optional<double> drained_to_mm;
    /// Hoses and chambers are full of coolant when they are connected to a jacket full to the target level;
    /// `method` then counts no more. See prefill.h.
    bool prefilled = false;
    double prefilled_air_ml = 0;     ///< that gets into each hose where it is pushed on
    std::size_t feed_loop = 0;       ///< for from_below: whose chamber is fed
    double density_kg_per_m3 = 1068; ///< of the coolant while filling
    double atmosphere_Pa = 101325;
    double vacuum_Pa = 10000; ///< absolute, for under_vacuum
    std::size_t frames = 0;   ///< how many states on the way to keep; 0: none
    /// No more is poured at one go, ml; 0: as much as leads to the next change. It ends the same.
    double most_step_ml = 0;
};

enum class FillStatus {
    filled,
    bad_input,        ///< message says what is wrong
    does_not_settle,  ///< no state of rest found; what was reached is in the result
    level_not_reached ///< the target cannot be reached from where coolant is fed
};

/// A cell as the canvas draws it.
struct CellView {
    double level_mm = 0; ///< of its liquid; its floor when empty, its top when full
    double liquid_ml = 0;
    double gas_ml = 0;
    double pressure_mm = 0; ///< of its gas over the atmosphere, mm of coolant
    bool sealed = false;    ///< its gas is shut in
};

struct FillFrame {
    double jacket_level_mm = 0;
    double poured_ml = 0;
    std::vector<CellView> cells; ///< as network->cells
    std::size_t events = 0;      ///< how many had happened, by FillEvent::order
};

/// A loop at rest, from which air can be purged or coolant shrink.
struct Filled {
    std::shared_ptr<const FillNetwork> network;
    FillState state;
};

struct FillResult {
    FillStatus status = FillStatus::bad_input;
    std::string message;
    Filled end;
    std::vector<FillFrame> frames;
    std::vector<FillEvent> events;
    double jacket_level_mm = 0;
    double poured_ml = 0;  ///< into jacket, hoses and chambers
    std::size_t pours = 0; ///< in how many goes, where most_step_ml says how much at one
    double left_ml = 0;    ///< of that, what a drained block still held; the rest is poured back
    double coolant_ml = 0; ///< in hoses and chambers at the end
    /// For each element given, in the loops' order: the jacket's level when coolant first reached its top.
    std::vector<std::optional<double>> covered_at_mm;
};

/// Errors: status and message; never throws, never endless. `kept` only saves time (cells.h).
FillResult fill(const FillRequest& request, LevelTables* kept = nullptr);

/// The state as it can be drawn.
FillFrame frameOf(const FillNetwork& network, const FillState& state);

/// Pours until the jacket stands at a level.
RunEnd pourTo(const FillNetwork& network, FillRun& run, double level_mm, std::size_t feed = 0);

/// Likewise, but no more than so much.
RunEnd pourSome(const FillNetwork& network, FillRun& run, double level_mm, std::size_t feed, double most_ml);

} // namespace siphonwright
