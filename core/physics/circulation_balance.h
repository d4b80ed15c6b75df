#pragma once

#include "core/physics/circulation.h"

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
/// next, which saves time and changes results by less than 1e-9 K.
class LoopBalance {
public:
    /// All three have to outlive it.
    LoopBalance(const Loop& loop, const LoopResistance& resistance, const Fluid& fluid);

    Balance at(double ln_flow, bool forward);

    /// The element in the state of the last at(), its ends in the direction of flow.
    struct Ends {
        double in_degC = 0;
        double out_degC = 0;
        double mean_degC = 0;
        double heat_W = 0;
        FluidState mean_state;
    };
    const std::vector<Ends>& ends() const { return stream; }

private:
    const Loop& loop;
    const LoopResistance& resistance;
    const Fluid& fluid;
    std::vector<Ends> stream;                     ///< by the loop's list
    std::vector<double> specific_heat_J_per_kg_K; ///< of each element, as last known
    double entry_degC = 0;                        ///< into the first element in the direction of flow

    std::size_t place(std::size_t k, bool forward) const
    {
        return forward ? k : loop.elements.size() - 1 - k;
    }
    /// What came back from once round the loop.
    struct Round {
        double gain_K = 0;     ///< temperature at the end less that at the entry
        double lost_share = 0; ///< of a change at the entry, what surroundings take
    };
    Round sweep(double flow_kg_per_s, bool forward);
    double renewSpecificHeats(); ///< returns by how much temperatures are about to change
    void findTemperatures(double flow_kg_per_s, bool forward);
    double fill(std::size_t i, double flow_kg_per_s, const FluidState& at_in, const FluidState& at_out);
};

} // namespace siphonwright
