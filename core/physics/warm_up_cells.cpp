#include "core/physics/warm_up_cells.h"

#include <algorithm>
#include <functional>
#include <numbers>
#include <numeric>
#include <variant>

namespace siphonwright {
namespace {

double volumeOf(const LoopElement& element)
{
    const double area_m2 =
        element.area_m2 > 0 ? element.area_m2 : std::numbers::pi / 4 * element.bore_m * element.bore_m;
    return area_m2 * element.length_m;
}

/// How much of a run each element counts for.
std::vector<double> weightsOf(const std::vector<LoopElement>& run)
{
    std::vector<double> weights(run.size());
    std::transform(run.begin(), run.end(), weights.begin(), volumeOf);
    if (std::accumulate(weights.begin(), weights.end(), 0.0) > 0)
        return weights;
    std::fill(weights.begin(), weights.end(), 1.0);
    return weights;
}

/// Adds to a cell the part of an element from `from` to `to` of its length, each 0 to 1.
void addPart(LoopElement& cell, const LoopElement& element, double from, double to)
{
    const double share = to - from;
    const bool has_middle = from <= 0.5 && (to > 0.5 || (from == 0.5 && to == 0.5));
    cell.length_m += share * element.length_m;
    cell.rise_m += share * element.rise_m;
    cell.heat.exchange_W_per_K += share * element.heat.exchange_W_per_K;
    for (Loss loss : element.losses) {
        if (auto* wall = std::get_if<loss_form::Wall>(&loss.form)) {
            wall->length_m *= share;
            if (wall->length_m > 0)
                cell.losses.push_back(loss);
        } else if (has_middle) {
            cell.losses.push_back(loss);
        }
    }
    if (!has_middle)
        return;
    cell.pocket_forward_m += element.pocket_forward_m;
    cell.pocket_backward_m += element.pocket_backward_m;
    cell.shut = cell.shut || element.shut;
    if (element.share_at_outlet)
        cell.share_at_outlet = element.share_at_outlet;
}

} // namespace

double volume_m3(const std::vector<LoopElement>& run)
{
    return std::accumulate(run.begin(), run.end(), 0.0,
                           [](double sum, const LoopElement& element) { return sum + volumeOf(element); });
}

std::vector<LoopElement> cellsOf(const std::vector<LoopElement>& run, std::size_t count)
{
    const std::vector<double> weights = weightsOf(run);
    const double whole = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::vector<LoopElement> cells(count);
    // One expression for both cells that meet at a border, so that nothing falls between them.
    const auto border = [&](std::size_t cell) {
        return whole * static_cast<double>(cell) / static_cast<double>(count);
    };
    double start = 0;
    for (std::size_t i = 0; i < run.size(); ++i) {
        const double end = start + weights[i];
        const auto share = [&](double place) { return std::clamp((place - start) / weights[i], 0.0, 1.0); };
        for (std::size_t c = 0; c < count; ++c) {
            const bool last = c + 1 == count;
            const double low = border(c);
            const double high = last ? std::max(border(count), end) : border(c + 1);
            if (weights[i] > 0 && end > low && start < high)
                addPart(cells[c], run[i], share(low), share(high));
            else if (!(weights[i] > 0) && start >= low && (start < high || last))
                addPart(cells[c], run[i], 0, 1);
        }
        start = end;
    }
    // The bore is only what the Reynolds number of the table is made with; any of the run's serves.
    const auto widest = std::max_element(run.begin(), run.end(),
                                         [](const auto& a, const auto& b) { return a.bore_m < b.bore_m; });
    for (LoopElement& cell : cells)
        cell.bore_m = widest->bore_m;
    return cells;
}

} // namespace siphonwright
