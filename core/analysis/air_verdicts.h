#pragma once

#include "core/checks/finding.h"
#include "core/running/running.h"
#include "core/sketch/sketch.h"

#include <stop_token>
#include <string>
#include <vector>

/// Where computed air says more than geometry: traps that the planned fill empties, and bleeds that would
/// cure.
namespace siphonwright {

/// A bleed that, put where a pocket lies, leaves no pocket that closes the bore in its loop.
struct BleedCure {
    Id hose;
    std::string hose_name;    ///< as sentences call it
    double along_mm = 0;      ///< along the path, as findings are placed
    double along_hose_mm = 0; ///< along the hose itself, as parts are placed
};

/// Hoses whose humps stop the job by geometry, and in which the planned fill leaves no air that closes the
/// bore, either way: on the level and on every one of 5 x 3 grades of the envelope. What running the engine
/// clears does not count. `kept` (level_tables.h) only saves time.
std::vector<Id> hosesFilledClean(const Sketch& sketch, const Layout& level,
                                 const std::vector<Finding>& findings, const Filling& filling,
                                 const std::stop_token& stop, LevelTables* kept = nullptr);

/// For each pocket of a hose that closes its bore: filled again at the filler with an open bleed
/// there and the valves open, on the level.
std::vector<BleedCure> bleedCures(const Sketch& sketch, const Layout& level, const Filling& filling,
                                  const std::stop_token& stop, LevelTables* kept = nullptr);

/// A geometric stop on a hose that is filled clean becomes a caution.
void outrank(std::vector<Finding>& findings, const std::vector<Id>& clean);

/// Say of each finding on a pocket where a bleed would let it out.
void adviseBleeds(std::vector<Finding>& findings, const std::vector<BleedCure>& cures);

} // namespace siphonwright
