#pragma once

#include "core/physics/circulation_balance.h"

#include <limits>
#include <vector>

/// Finding the flows at which a loop balances: the inside of steadyCirculation().
namespace siphonwright {

/// Temperatures that a state may have.
struct TemperatureLimits {
    double lowest_degC = 0;
    double highest_degC = 0;

    bool tooCold(const Balance& b) const { return !(b.coldest_degC >= lowest_degC); }
    bool tooHot(const Balance& b) const { return !(b.hottest_degC < highest_degC); }
};

/// A stable balance.
struct Root {
    double ln_flow = 0;
    bool forward = true;
    Balance balance;
    bool converged = false;
    bool settled = false; ///< it was the last that was evaluated
};

/// What a search through the flows of one direction found.
struct FlowSurvey {
    std::vector<Root> roots; ///< stable, in range, largest flow first
    bool too_hot = false;    ///< there is a state at boiling or past the fluid's data
    bool too_cold = false;   ///< there is a state under the freezing point
    bool any_in_range = false;
    double most_drive_Pa = -std::numeric_limits<double>::infinity(); ///< in range
    double pocket_Pa = 0;                                            ///< at that drive
    double density_kg_per_m3 = 1000;                                 ///< there, entering the loop
    bool hot_at_slowest = false; ///< slower flows than those in range are too hot, not too cold
};

class CirculationSearch {
public:
    CirculationSearch(const Loop& loop, const LoopResistance& resistance, const FluidTable& fluid,
                      const CirculationOptions& options);

    /// All stable states of a direction.
    FlowSurvey survey(bool forward);
    /// The state next to a flow; not converged where it is not plainly a stable one in range.
    Root follow(double flow_kg_per_s);
    /// Leaves temperatures as they are in this state.
    Balance settle(const Root& root)
    {
        return root.settled ? root.balance : evaluate(root.ln_flow, root.forward);
    }

    const LoopBalance& balance() const { return balance_; }
    const TemperatureLimits& limits() const { return range_; }
    bool shut() const { return shut_; } ///< a closed valve stands in the loop
    int evaluations() const { return count_; }

private:
    struct Point {
        double x = 0; ///< ln flow
        Balance balance;
    };
    struct Span {
        double lowest = 0; ///< ln flow
        double highest = 0;
    };
    const Loop& loop_;
    const LoopResistance& resistance_;
    const FluidTable& fluid_;
    const CirculationOptions& options_;
    LoopBalance balance_;
    TemperatureLimits range_;
    int count_ = 0;
    bool shut_ = false;

    Balance evaluate(double ln_flow, bool forward, double tolerance_K = 1e-8);
    Span span() const;
    double largestDrive_Pa() const;
    void note(const Balance& balance, FlowSurvey& survey) const;
    void sort(const Root& root, FlowSurvey& survey) const;
    void narrowHotEdge(double hot, double in_range, bool forward, FlowSurvey& survey);
    Root refine(Point runs, Point stops, bool forward);
};

} // namespace siphonwright
