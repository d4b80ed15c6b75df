#include "core/air/pocket.h"

#include "core/geometry/relief.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace siphonwright {
namespace {

/// A head under this is rounding.
constexpr double no_head_mm = 1e-3;
constexpr double at_top_mm = 1e-6;

/// A pocket as a flow meets it: cells before and behind its highest throat.
class InFlow {
public:
    InFlow(const FillNetwork& network, const AirPocket& pocket, FlowSense sense)
        : network_(network), pocket_(pocket), forward_(sense == FlowSense::forward)
    {
        for (const Throat& throat : network.throats) {
            if ((has(throat.left) || has(throat.right)) &&
                (crest_ == nullptr || throat.floor_mm > crest_->floor_mm))
                crest_ = &throat;
        }
        if (crest_ == nullptr)
            return;
        const std::size_t crest_left = crest_->left;
        for (const std::size_t cell : pocket.cells)
            (isLeft(cell, crest_left) == forward_ ? before_ : behind_).push_back(cell);
        addLimb(forward_ ? crest_->left : crest_->right, before_);
        addLimb(forward_ ? crest_->right : crest_->left, behind_);
        // In the order of the flow.
        for (std::vector<std::size_t>* cells : {&before_, &behind_}) {
            std::sort(cells->begin(), cells->end());
            if (!forward_)
                std::reverse(cells->begin(), cells->end());
        }
    }

    const Throat* crest() const { return crest_; }
    const std::vector<std::size_t>& before() const { return before_; }
    const std::vector<std::size_t>& behind() const { return behind_; }

    /// The throat that liquid leaves the last cell behind the crest through.
    const Throat* next() const
    {
        for (const Throat& throat : network_.throats) {
            if (!behind_.empty() && &throat != crest_ &&
                (forward_ ? throat.left : throat.right) == behind_.back())
                return &throat;
        }
        return nullptr;
    }

private:
    bool has(std::size_t cell) const
    {
        return std::find(pocket_.cells.begin(), pocket_.cells.end(), cell) != pocket_.cells.end();
    }
    /// On the supply port's side of the crest. The jacket is on the left of a first throat alone.
    bool isLeft(std::size_t cell, std::size_t crest_left) const
    {
        return crest_left != 0 && cell <= crest_left;
    }
    /// A limb that rises to the crest holds pushed gas, too, whether some lies there now or not.
    void addLimb(std::size_t cell, std::vector<std::size_t>& cells) const
    {
        if (cell != 0 && !has(cell) && network_.cells[cell].part != LoopPart::chamber &&
            network_.cells[cell].top_mm <= crest_->crown_mm + crest_->bore_mm / 2 + at_top_mm)
            cells.push_back(cell);
    }

    const FillNetwork& network_;
    const AirPocket& pocket_;
    bool forward_;
    const Throat* crest_ = nullptr;
    std::vector<std::size_t> before_;
    std::vector<std::size_t> behind_;
};

double volumeOver(const FillNetwork& network, const std::vector<std::size_t>& cells, double level_mm)
{
    double sum = 0;
    for (const std::size_t i : cells) {
        const Cell& cell = network.cells[i];
        const double under = cell.volume.under(std::clamp(level_mm, cell.floor_mm, cell.top_mm)).liquid_ml;
        sum += cell.capacity_ml - under;
    }
    return sum;
}

/// The level over which cells hold so much.
double levelUnder(const FillNetwork& network, const std::vector<std::size_t>& cells, double gas_ml)
{
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const std::size_t i : cells) {
        low = std::min(low, network.cells[i].floor_mm);
        high = std::max(high, network.cells[i].top_mm);
    }
    if (gas_ml >= volumeOver(network, cells, low))
        return low;
    return rootBetween(low, high, [&](double z) { return volumeOver(network, cells, z) - gas_ml; });
}

AirPocket pocketOf(const Filled& filled, const Joined& joined, std::size_t region)
{
    const FillNetwork& network = *filled.network;
    AirPocket pocket;
    double highest = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < network.cells.size(); ++i) {
        if (joined.cells[i].region != region)
            continue;
        const Cell& cell = network.cells[i];
        const CellState& state = filled.state.cells[i];
        const bool first = pocket.cells.empty();
        pocket.cells.push_back(i);
        pocket.loop = cell.loop;
        pocket.gas_ml += cell.capacity_ml - state.liquid_ml;
        pocket.pressure_mm = state.pressure_mm;
        if (first)
            pocket.supply_side_mm = state.level_mm;
        pocket.return_side_mm = state.level_mm;
        if (cell.top_mm > highest) {
            highest = cell.top_mm;
            pocket.part = cell.part;
            pocket.along_mm = (cell.from_mm + cell.to_mm) / 2;
        }
    }
    // Its highest place is at the end of a limb that leads to its highest throat.
    double crest = -std::numeric_limits<double>::infinity();
    for (const Throat& throat : network.throats) {
        if (pocket.part == LoopPart::chamber || throat.part != pocket.part ||
            (joined.cells[throat.left].region != region && joined.cells[throat.right].region != region) ||
            throat.floor_mm <= crest)
            continue;
        crest = throat.floor_mm;
        pocket.along_mm = throat.along_mm;
    }
    return pocket;
}

} // namespace

double criticalHead(double bore_mm, double flow_m3_per_s)
{
    if (!(flow_m3_per_s > 0) || !(bore_mm > 0))
        return 0;
    const double r = bore_mm / mm_per_m / 2;
    const double wanted = flow_m3_per_s * flow_m3_per_s / standard_gravity_m_per_s2;
    const auto width = [r](double y) { return 2 * std::sqrt(std::max(0.0, y * (2 * r - y))); };
    const auto area = [r](double y) { return discAreaOver(2 * r, r - y); };
    // A^3/T has no bound towards the crown: the depth is found between nothing and 0.999 of the bore.
    double low = 0;
    double high = 0.999 * 2 * r;
    for (int halving = 0; halving < 60; ++halving) {
        const double y = (low + high) / 2;
        const double a = area(y);
        (a * a * a < wanted * width(y) ? low : high) = y;
    }
    return std::min(bore_mm, (high + area(high) / (2 * width(high))) * mm_per_m);
}

double pocketHead(const Filled& filled, const AirPocket& pocket, FlowSense sense, double flow_m3_per_s)
{
    const FillNetwork& network = *filled.network;
    const InFlow flow(network, pocket, sense);
    if (flow.crest() == nullptr || flow.behind().empty())
        return 0;
    const double upper_mm = flow.crest()->floor_mm + criticalHead(flow.crest()->bore_mm, flow_m3_per_s);
    const std::size_t first = flow.before().empty() ? flow.behind().front() : flow.before().front();
    const double pressure_mm = filled.state.cells[first].head_mm - upper_mm + filled.state.atmosphere_mm;
    double gas = 0;
    for (const std::size_t i : pocket.cells)
        gas += filled.state.cells[i].gas;
    const double gas_ml = pressure_mm > 0 ? gas / pressure_mm : pocket.gas_ml;
    const double behind_ml = gas_ml - volumeOver(network, flow.before(), upper_mm);
    if (behind_ml <= 0)
        return 0;
    const double lower_mm = levelUnder(network, flow.behind(), behind_ml);
    const Throat* next = flow.next();
    const double most = next != nullptr ? std::max(0.0, flow.crest()->floor_mm - next->crown_mm)
                                        : std::numeric_limits<double>::infinity();
    const double head = std::clamp(upper_mm - lower_mm, 0.0, most);
    return head > no_head_mm ? head : 0;
}

PocketOutlet outletOf(const Filled& filled, const AirPocket& pocket, FlowSense sense)
{
    const FillNetwork& network = *filled.network;
    const InFlow flow(network, pocket, sense);
    PocketOutlet outlet;
    outlet.in_chamber = std::all_of(pocket.cells.begin(), pocket.cells.end(), [&](std::size_t i) {
        return network.cells[i].part == LoopPart::chamber;
    });
    outlet.bore_mm = flow.crest() != nullptr ? flow.crest()->bore_mm : 0;
    for (const std::size_t i : flow.behind()) {
        const Cell& cell = network.cells[i];
        if (cell.part == LoopPart::chamber)
            continue;
        outlet.bore_mm = std::max(outlet.bore_mm, cell.widest_bore_mm);
        outlet.sine = std::max(outlet.sine, cell.steepest);
    }
    return outlet;
}

std::vector<AirPocket> airPockets(const Filled& filled)
{
    std::vector<AirPocket> pockets;
    if (filled.network == nullptr)
        return pockets;
    Joined joined;
    FillState state = filled.state;
    join(*filled.network, state, {}, Joined::none, joined);
    for (std::size_t region = 1; region < joined.cells.size(); ++region) {
        if (joined.cells[region].region != region || !joined.cells[region].has_gas)
            continue;
        AirPocket pocket = pocketOf(filled, joined, region);
        if (pocket.gas_ml < least_pocket_ml)
            continue;
        pocket.forward_mm = pocketHead(filled, pocket, FlowSense::forward, 0);
        pocket.reverse_mm = pocketHead(filled, pocket, FlowSense::reverse, 0);
        pocket.closes_forward = pocket.forward_mm > 0;
        pocket.closes_reverse = pocket.reverse_mm > 0;
        pockets.push_back(std::move(pocket));
    }
    return pockets;
}

} // namespace siphonwright
