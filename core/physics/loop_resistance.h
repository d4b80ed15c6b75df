#pragma once

#include "core/physics/fluid.h"
#include "core/physics/loss_tables.h"
#include "core/physics/losses.h"
#include "core/quantity/constants.h"

#include <array>
#include <optional>
#include <vector>

/// The pressure a whole loop loses at a flow, and the flow that a drive overcomes.
namespace siphonwright {

/// Standard acceleration of free fall (CGPM 1901).

/// Heat that an element gives its coolant: power, exchange with surroundings, or both.
struct Heat {
    double power_W = 0;            ///< given to the coolant; negative: a fixed heat taken out
    double exchange_W_per_K = 0;   ///< UA to the surroundings, over the whole element
    double surroundings_degC = 20; ///< air round a hose or chamber, metal round a jacket

    static Heat none() { return {}; }
    static Heat heater(double power_W) { return {power_W, 0, 20}; }
    static Heat toAir(double loss_W_per_K_m, double length_m, double air_degC)
    {
        return {0, loss_W_per_K_m * length_m, air_degC};
    }
    static Heat toAir(double loss_W_per_K, double air_degC) { return {0, loss_W_per_K, air_degC}; }
    /// A jacket giving heat to its block, along an exponential in NTU = UA/(m cp). A very large UA is a
    /// jacket that is well mixed at the block's temperature.
    static Heat toBlock(double exchange_W_per_K, double block_degC)
    {
        return {0, exchange_W_per_K, block_degC};
    }
    friend bool operator==(const Heat&, const Heat&) = default;
};

/// Share of a heater chamber's height that is at its outlet temperature; the rest is at its inlet's. Half
/// drives about what a temperature rising evenly with height does; 0 and 1 are the bounds, and belong to the
/// band: the flow differs by 8 to 11 %. Own choice, no published source.
constexpr double default_share_at_outlet = 0.5;

/// A stretch of the loop, in the direction that counts as forward. Metres.
struct LoopElement {
    double length_m = 0;
    double rise_m = 0;  ///< end less start, along plumb
    double bore_m = 0;  ///< hydraulic diameter, for the Reynolds number
    double area_m2 = 0; ///< of the stream; 0: that of the round bore
    /// Wall friction is one of them (Loss::wall). All are taken at the element's mean temperature: what
    /// stands at the end of a jacket or chamber belongs to an element of its own, which may have no length.
    std::vector<Loss> losses;
    Heat heat;
    /// Set for a heater chamber, see default_share_at_outlet. Unset: temperature follows the heat.
    std::optional<double> share_at_outlet;
    double pocket_forward_m = 0;  ///< static head that forward flow has to overcome at an air pocket
    double pocket_backward_m = 0; ///< the same for backward flow
    bool shut = false;            ///< a closed valve
};

/// A flow found for a drive.
struct DrivenFlow {
    double flow_kg_per_s = 0; ///< signed as the drive; 0 where pockets or a shut valve withstand it
    int iterations = 0;
    bool converged = true;
};

/// A loop's losses as tables: one per element of ln(K Re^2) over ln Re, K summed over its losses on the
/// element's own bore, Re = |m| bore/(area viscosity); the pressure lost is K Re^2 viscosity^2 /
/// (2 density bore^2). Monotone cubics (Fritsch and Carlson 1980) between nodes, straight beyond them, so
/// that loss rises strictly with flow wherever each loss's own does, and a flow for a given drive is unique.
///
/// Range: Re 0.1 to 1e6 by nodes; further by the slope at the end. Error: 1e-5 of the loss in the mean; up to
/// 4e-3 beside a Reynolds number where a loss's law changes.
///
/// Fixed after construction; all functions may be called from several threads. A state's properties have to
/// be finite and over 0. `states` has one state per element, at its mean temperature.
class LoopResistance {
public:
    /// \param elements ones in which problemIn(Loop) finds nothing
    explicit LoopResistance(const std::vector<LoopElement>& elements);
    /// The same to the last bit, with losses that were evaluated before taken from `tables`, and others
    /// added.
    LoopResistance(const std::vector<LoopElement>& elements, LossTables& tables);

    std::size_t size() const { return elements_.size(); }
    bool shut() const { return any_shut_; }

    /// Pressure lost by friction and fittings, signed as the flow; pockets and shut valves not counted.
    double pressureLoss_Pa(double flow_kg_per_s, const std::vector<FluidState>& states) const;
    /// What pockets withstand in one direction (forward: flow over 0).
    double pockets_Pa(bool forward, const std::vector<FluidState>& states) const;

    /// The flow whose loss, with the pockets in its direction, equals the drive. \param start_kg_per_s where
    /// to begin, such as the flow a moment ago; 0: no idea
    DrivenFlow flowFor(double drive_Pa, const std::vector<FluidState>& states,
                       double start_kg_per_s = 0) const;

    /// The flow that loses this pressure by friction and fittings alone, over 0 as the pressure is. Newton's
    /// method in ln m with a bracket as its safeguard.
    DrivenFlow flowLosing(double loss_Pa, bool forward, const std::vector<FluidState>& states,
                          double start_kg_per_s = 0) const;

    double elementLoss_Pa(std::size_t element, double flow_kg_per_s, const FluidState& state) const;
    double reynolds(std::size_t element, double flow_kg_per_s, const FluidState& state) const;

    /// Loss of one element and its derivative by ln(flow), for solvers. \param flow_kg_per_s over 0
    struct Slope {
        double loss_Pa = 0;
        double per_ln_flow_Pa = 0;
    };
    Slope slopeOf(std::size_t element, bool forward, double ln_flow, const FluidState& state) const;
    /// \param ln_viscosity of the dynamic viscosity in Pa s, as FluidTable has it
    Slope slopeOf(std::size_t element, bool forward, double ln_flow, double density_kg_per_m3,
                  double ln_viscosity) const;

private:
    void build(const std::vector<LoopElement>& elements, LossTables& tables);

    struct Node {
        double value = 0; ///< ln(K Re^2)
        double slope = 0; ///< by ln Re
    };
    struct Entry {
        double ln_reynolds_per_flow = 0; ///< ln(bore / area)
        double bore_m = 0;
        double pocket_forward_m = 0;
        double pocket_backward_m = 0;
        std::array<int, 2> table = {-1, -1}; ///< forward and backward: first node; -1 has no loss
    };
    std::vector<Entry> elements_;
    std::vector<Node> nodes_;
    bool any_shut_ = false;
};

} // namespace siphonwright
