#pragma once

#include "core/physics/circulation.h"
#include "core/physics/fluid_table.h"

#include <vector>

/// Temperatures and pressures round a loop at a given flow: the inside of steadyCirculation().
namespace siphonwright {

/// The balance of a loop at one flow.
struct Balance {
    double drive_Pa = 0; ///< in the direction of flow
    double loss_Pa = 0;
    double loss_per_ln_flow_Pa = 0;
    double pocket_Pa = 0;
    double hottest_degC = 0;
    double coldest_degC = 0;

    double net_Pa() const { return drive_Pa - pocket_Pa - loss_Pa; }
};

/// Shape of the temperature along an element: T = T1 + (T0 - T1) u(x), u falling from 1 to 0.
struct ProfileMoments {
    double mean = 0.5;            ///< of u over the length
    double mean_square = 1.0 / 3; ///< of u^2
};
/// \param ntu UA/(m cp), 0 or more; 0 is a straight line
ProfileMoments profileMoments(double ntu);

/// Works out a loop's balance at one flow after another. Temperatures of one flow are the first guess at the
/// next, which saves time and changes results by less than the tolerance.
class LoopBalance {
public:
    /// All three have to outlive it.
    LoopBalance(const Loop& loop, const LoopResistance& resistance, const FluidTable& fluid);

    /// \param tolerance_K to which the temperature that comes back round the loop is that which set out
    Balance at(double ln_flow, bool forward, double tolerance_K = 1e-8);

    /// The element in the state of the last at(), its ends in the direction of flow.
    struct Ends {
        double in_degC = 0;
        double out_degC = 0;
        double mean_degC = 0;
        double heat_W = 0;
        double density_kg_per_m3 = 0; ///< averaged over its length
        double ln_viscosity = 0;      ///< at the mean temperature, of Pa s
    };
    const std::vector<Ends>& ends() const { return stream_; }

private:
    const Loop& loop_;
    const LoopResistance& resistance_;
    const FluidTable& fluid_;
    /// T_out = T_in + add - lost_share T_in, for the specific heat halfway.
    struct Line {
        double halfway_degC = 0;
        double specific_heat_J_per_kg_K = 0;
        double lost_share = 0;
        double add_K = 0;
        double error_K = 0; ///< about, for a specific heat that is not yet that of the temperatures
        bool has_heat = false;
        Heat heat;
    };
    std::vector<Ends> stream_; ///< by the loop's list, as lines
    std::vector<Line> lines_;
    double entry_degC_ = 0;          ///< into the first element in the direction of flow
    double known_flow_kg_per_s_ = 0; ///< whose temperatures these are; under 0 for reverse flow, 0 for none

    std::size_t place(std::size_t k, bool forward) const
    {
        return forward ? k : loop_.elements.size() - 1 - k;
    }
    void foresee(double signed_flow_kg_per_s);
    void renewLines(double flow_kg_per_s, double good_enough_K);
    void findEntry(bool forward);
    double run(bool forward);
    void findTemperatures(double flow_kg_per_s, bool forward, double tolerance_K);
    double fill(std::size_t i, double flow_kg_per_s, double density_in, double density_out);
};

} // namespace siphonwright
