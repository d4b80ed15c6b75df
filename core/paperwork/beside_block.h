#pragma once

#include "core/layout/layout.h"
#include "core/running/assumptions.h"
#include "core/running/running.h"
#include "core/sketch/sketch.h"

#include <cstddef>

namespace siphonwright {

/// What drawn loops lose and hold beside the block, with the block at one temperature and the heaters at a
/// power: hoses, chambers, and the coolant in the jacket as far as it is warmer than the block.
class BesideBlock {
public:
    BesideBlock() = default;
    /// \param sketch with the air it stands in; loops that are not closed are left out
    BesideBlock(const Sketch& sketch, const Layout& layout, const Assumptions& assumed, double block_degC);

    struct Share {
        double lost_W = 0;      ///< to the air, by hoses and chambers
        double stored_J = 0;    ///< over what the same would hold at the block's temperature
        bool circulates = true; ///< every loop, forward
    };
    /// All heaters together, each with its part of the power drawn. A loop that does not circulate counts as
    /// being as warm as the block. \param swept_over_K by how much the part of the block that the loops reach
    /// is warmer than its mean
    Share at(double power_W, double swept_over_K) const;

    double sweptShare() const; ///< of the block, by all loops together; at most 0.95
    std::size_t loops() const { return loops_.size(); }
    double loss_W_per_K() const;                     ///< of hoses and chambers
    double capacity_J_per_K() const;                 ///< of hoses and chambers with their coolant
    double coolantHeat_J_per_K(double litres) const; ///< of so much coolant at the block's temperature

private:
    struct Drawn {
        LoopRun run;
        double share = 1;           ///< of the power
        double jacket_J_per_K = 0;  ///< of the coolant that the loop sweeps in the jacket
        double chamber_J_per_K = 0; ///< metal and coolant
        double return_J_per_K = 0;
        double supply_J_per_K = 0;
        double loss_W_per_K = 0;
    };
    void add(const LoopRun& run, const Heater& heater, double litres, const Assumptions& assumed);
    Share of(const Drawn& loop, double power_W, double swept_degC) const;

    std::vector<Drawn> loops_;
    std::shared_ptr<const FluidTable> coolant_;
    double block_degC_ = 0;
    double air_degC_ = 0;
    double heat_J_per_m3_K_ = 0; ///< of coolant at the block's temperature
};

} // namespace siphonwright
