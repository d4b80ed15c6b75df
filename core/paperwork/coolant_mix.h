#pragma once

#include "core/layout/layout.h"
#include "core/paperwork/dilution.h"
#include "core/running/assumptions.h"
#include "core/sketch/sketch.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The coolant of a job: how much the new hoses and chambers take, how to come to the wanted mixture, whether
/// it freezes, and whether the water is good enough.
namespace siphonwright {

enum class WaterVerdict { not_entered, within, outside };

/// One thing in the water against its limit.
struct WaterRow {
    std::string_view name;
    Unit unit = Unit::ppm;
    std::optional<double> measured;
    double least = 0; ///< only of the pH
    double most = 0;
    WaterVerdict verdict = WaterVerdict::not_entered;
};

/// Limits for water to mix with antifreeze: chloride 40, sulphate 100, hardness 170 (as CaCO3), total solids
/// 340 ppm, pH 5.5 to 9.0. ASTM D6210, appendix X1 (from memory); the same figures stand in table 15 of the
/// manual TM 5-3895-383-24 (US Army). ASTM D3306 for light duty has
/// a table of its own, which was not at hand. Distilled or deionised water is within all of them.
constexpr std::string_view water_basis =
    "ASTM D6210, appendix X1 (from memory); same figures in TM 5-3895-383-24, table 15 (US Army)";
std::array<WaterRow, 5> waterRows(const WaterQuality& water);

/// A mixture and its margin to the coldest ambient.
struct Freezing {
    double percent = 0;
    std::optional<double> freezes_degC; ///< nothing: kind not known, or over 60 %
    std::optional<double> margin_K;     ///< coldest ambient less that; nothing: one of them is not known
};

struct CoolantMix {
    double hoses_l = 0;
    double chambers_l = 0;
    double new_l() const { return hoses_l + chambers_l; }

    PartRef missing_of;
    std::string missing;  ///< empty: the volumes below are known
    double present_l = 0; ///< in the engine, or in the whole system where that is entered
    bool whole_system =
        false; ///< entered; otherwise the engine alone is counted, and radiator and cabin are not
    bool all_empty = false; ///< the fill plan starts with nothing in
    double drained_l = 0;   ///< let out before the hoses are connected: to be filled, too

    Freezing present;
    std::optional<Freezing> wanted;
    std::optional<MixPlan> plan;     ///< nothing: no mixture is wanted, or the present one is not known
    std::optional<Freezing> reached; ///< by the plan
    /// Least antifreeze that freezes margin_wanted_K under the coldest ambient.
    std::optional<double> least_percent;
    bool colder_than_60_percent = false; ///< not even most_glycol_percent does
    std::array<WaterRow, 5> water;
};

/// Freezing points are known to some 2 K (core/physics/coolant.h); with as much for the mixture, 5 K is
/// wanted between them and the coldest ambient (own choice).
constexpr double margin_wanted_K = 5;

/// The kind to add: the one entered, otherwise the one that is in.
Glycol wantedGlycol(const Sketch& sketch);

/// Kinds of antifreeze are never mixed: where another one is in than is wanted, the plan is unreachable and
/// says what to do.
CoolantMix coolantMixOf(const Sketch& sketch, const Layout& layout, const Assumptions& assumed);

} // namespace siphonwright
