#pragma once

#include "core/air/purge.h"
#include "core/layout/heater_loop.h"
#include "core/running/assumptions.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

/// The drawn loops filled: what air stays, whether running the engine clears it, what has to be topped up.
namespace siphonwright {

struct LoopRun;
struct Running;
class FluidTable;

/// Where a pocket lies in a hose: over one level, between two places along the hose's path.
struct PocketStretch {
    double from_mm = 0;
    double to_mm = 0;
    double level_mm = 0; ///< along plumb, of the coolant under it; the bore's lowest where there is none
};

/// A pocket that stays after filling, as it lies on the drawing.
struct PocketFound {
    Id heater;
    Id hose;             ///< empty: in the heater's chamber
    double along_mm = 0; ///< along the hose's path, of its highest place
    Vec3 at;
    std::vector<PocketStretch> stretches; ///< of its hose; the chamber's part is left out
    double volume_ml = 0;
    double height_mm = 0;  ///< between its two surfaces as forward flow would press them
    double reverse_mm = 0; ///< the same against reverse flow
    bool closes_bore = false;
    /// Share of the bore that lies under it at its crest, where it narrows the bore but does not close it; 1
    /// otherwise.
    double open_share = 1;
    double bore_mm = 0; ///< at its crest; 0 in a chamber
    Clearing cleared_by_running = Clearing::stays;
    double velocity_m_per_s = 0; ///< that the engine's pump gives where the pocket has to go down
    ClearingRange clears;        ///< velocity that takes it away, by the published forms
};

/// What one heater's loop has of it.
struct LoopAir {
    Id heater;
    std::optional<double> element_covered_at_mm; ///< level of the jacket when coolant reached its top
    bool element_known = false;                  ///< its top is entered
    bool element_covered = false;
    double chamber_gas_ml = 0;
    PumpFlow running;               ///< with the engine running
    bool bypasses_radiator = false; ///< a tee on the pump's suction side
};

struct Filling {
    PartRef missing_of;
    std::string missing; ///< empty: computed
    FillStatus status = FillStatus::filled;
    double density_kg_per_m3 = 0; ///< of the coolant while filling
    double level_mm = 0;          ///< filled to, along plumb
    double coolant_ml = 0;        ///< in hoses and chambers
    /// Of a drained block: let out before, and poured in until it is full again.
    std::optional<double> drained_ml;
    double refill_ml = 0;
    double top_up_ml = 0; ///< after the engine has run and cooled
    double coldest_level_mm =
        0; ///< where coolant shrinks to at the coldest ambient; level_mm if that is not entered
    std::vector<LoopAir> loops;
    std::vector<PocketFound> pockets;

    /// Pockets of one heater's loop that close the bore.
    bool closedBore(const Id& heater) const;
};

/// How far a block is drained before empty hoses are connected to it.
struct Drained {
    double level_mm = 0;   ///< of what is left in the jacket, along plumb
    double drained_ml = 0; ///< let out, from the level it is filled to
};

/// By the litres entered, or down to the top of the lower port's bore. Nothing where the fill does not start
/// so, or where the engine's coolant or its level is not entered.
std::optional<Drained> drainedBlock(const Sketch& sketch, const Layout& layout, const Assumptions& assumed);

/// What a fill is computed from; the loops in the order of `heaters`.
struct FillPlanOf {
    std::optional<FillRequest> request;
    std::optional<Drained> drained;
    std::vector<HeaterLoop> loops;
    PartRef missing_of;
    std::string missing;
};
FillPlanOf fillRequestOf(const Sketch& sketch, const Layout& layout, const Assumptions& assumed);

/// Fills; where opening a valve leaves no state of rest to be found, with the valves open from the start,
/// which ends much the same.
FillResult fillAsPlanned(const FillRequest& request, LevelTables* kept = nullptr);

/// The air shut in by a state, as it lies on the drawing and as passAir() takes it; nothing of what running
/// the engine does to it.
Filling airIn(const Filled& state, const FillPlanOf& plan);

/// The fill of a sketch, the engine run, and what is left. `running` gives the flow that the engine's pump
/// drives through each loop; without it nothing counts as cleared. Some hundred microseconds; less where
/// `kept` has tables of bores that have not changed. Results do not depend on it.
Filling fillOf(const Sketch& sketch, const Layout& layout, const Running* running, const Assumptions& assumed,
               LevelTables* kept = nullptr);

/// What the engine's pump drives through a loop: from the port in the block with the higher pressure, or,
/// with a tee in the pump's suction, backward to it.
PumpFlow pumpFlow(const Sketch& sketch, const HeaterLoop& loop, const LoopRun& run, const FluidTable& coolant,
                  const Assumptions& assumed);

} // namespace siphonwright
