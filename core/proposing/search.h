#pragma once

#include "core/proposing/conflict.h"
#include "core/proposing/sites.h"

#include <stop_token>
#include <vector>

/// The search behind propose(): from sites to laid loops.
namespace siphonwright {

/// A loop whose rules hold on the level, not yet proved.
struct LaidLoop {
    std::size_t site = 0; ///< index of its site
    bool first_of_site = true;
    Sketch sketch;
    Analysis level;
    double price = 0; ///< metres of hose x price weight
    double length_mm = 0;
    double supply_mm = 0;
    double return_mm = 0;
    double flow_kg_per_s = 0;
    double flow_l_per_min = 0;
    double key = 0;
    Rank rank;
};

class LayoutSearch {
public:
    LayoutSearch(const Sketch& sketch, const ProposeOptions& options, Id heater, std::stop_token stop);

    /// All sites, the most promising first; nothing left where ports or heater find no place.
    void spread();
    /// Is there a place of the heater that holds on every grade of the envelope? Once spread.
    bool mayHoldOnGrades() const;
    /// Lay hoses at sites from `next` on until so many sites have a loop, or all are tried.
    /// \return the first site not tried
    std::size_t lay(std::size_t next, std::size_t enough, bool fine);
    /// Sites half a step round the places of the best loops, laid at once.
    void refine(std::size_t best);
    /// Ask rule by rule what left no hose at the first few sites that failed.
    void diagnose();

    std::vector<HeaterSite> sites;
    std::vector<LaidLoop> laid;
    RuleConflict conflict;
    std::size_t places = 0;
    ProposeProgress progress;
    bool unpaired = false; ///< there are no two ports to ask about

private:
    void addSites(const std::vector<Vec3>& places);
    bool layAt(std::size_t site, bool fine);
    Rank rankOf(const LaidLoop& loop) const;

    const Sketch& sketch_;
    const ProposeOptions& options_;
    Id heater_;
    std::stop_token stop_;
    Sketch cleared_;
    std::vector<PortPair> pairs_;
    std::vector<double> bores_;
    std::vector<std::size_t> without_supply_;
    std::vector<std::size_t> without_return_;
};

/// The two hoses in a sketch, in the places of those they take after.
Sketch withHoses(const HeaterSite& site, const Sketch& drawn, const Hose& supply, const Hose& back);

} // namespace siphonwright
