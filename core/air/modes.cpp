#include "core/air/modes.h"

#include <algorithm>
#include <limits>

namespace siphonwright {
namespace {

constexpr double unlimited = std::numeric_limits<double>::infinity();
/// A level this near a floor or crown has reached it together with another.
constexpr double together_mm = 1e-5;
/// Less liquid than this does not run.
constexpr double moist_ml = 1e-12;

double overCrown(const Throat& throat, const CellState& cell)
{
    return cell.full ? unlimited : cell.level_mm - throat.crown_mm;
}

/// A wet side only: what is empty stands at its own floor, which may be the throat's.
double underFloor(const FillNetwork& network, const Throat& throat, std::size_t i, const CellState& cell)
{
    const bool wet = cell.liquid_ml > moist_ml && cell.level_mm > network.cells[i].floor_mm;
    const double margin = throat.floor_mm - cell.level_mm;
    return wet || margin > 0 ? margin : 0;
}

} // namespace

void findMargins(const FillNetwork& network, const FillState& state, const std::vector<char>& covered,
                 std::vector<double>& margins)
{
    margins.assign(2 * network.throats.size(), unlimited);
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        const Throat& throat = network.throats[j];
        const CellState& left = state.cells[throat.left];
        const CellState& right = state.cells[throat.right];
        const bool to_right = state.throats[j].to_right;
        double& first = margins[2 * j];
        double& second = margins[2 * j + 1];
        switch (state.throats[j].mode) {
        case Mode::dry:
            first = underFloor(network, throat, throat.left, left);
            second = underFloor(network, throat, throat.right, right);
            break;
        case Mode::weir:
            first = throat.floor_mm - (to_right ? right : left).level_mm;
            break;
        case Mode::pool:
            first = throat.crown_mm - (left.level_mm + right.level_mm) / 2;
            second = (left.level_mm + right.level_mm) / 2 - throat.floor_mm;
            break;
        case Mode::sealed:
            first = overCrown(throat, left);
            second = overCrown(throat, right);
            break;
        case Mode::bubbling:
            first = overCrown(throat, to_right ? right : left);
            break;
        default:
            break;
        }
    }
    for (std::size_t i = 0; i < network.bleeds.size(); ++i) {
        const BleedPlace& bleed = network.bleeds[i];
        margins.push_back(state.bleed_open[i] ? bleed.height_mm - state.cells[bleed.cell].level_mm
                                              : unlimited);
    }
    for (std::size_t i = 0; i < network.elements.size(); ++i) {
        const ElementTop& element = network.elements[i];
        margins.push_back(covered[i] ? unlimited : element.height_mm - state.cells[element.cell].level_mm);
    }
}

void findMarks(const FillNetwork& network, const FillState& state, const std::vector<char>& covered,
               std::vector<Mark>& marks)
{
    marks.assign(2 * network.throats.size(), {});
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        const Throat& throat = network.throats[j];
        const bool to_right = state.throats[j].to_right;
        Mark& first = marks[2 * j];
        Mark& second = marks[2 * j + 1];
        const std::size_t pooled = state.cells[throat.left].full ? throat.right : throat.left;
        switch (state.throats[j].mode) {
        case Mode::dry:
            first = Mark::level(throat.left, throat.floor_mm, true);
            second = Mark::level(throat.right, throat.floor_mm, true);
            break;
        case Mode::weir:
            first = Mark::level(to_right ? throat.right : throat.left, throat.floor_mm, true);
            break;
        case Mode::pool:
            first = Mark::level(pooled, throat.crown_mm, true);
            second = Mark::level(pooled, throat.floor_mm, false);
            break;
        case Mode::sealed:
            first = Mark::level(throat.left, throat.crown_mm, false);
            second = Mark::level(throat.right, throat.crown_mm, false);
            break;
        case Mode::bubbling:
            first = Mark::level(to_right ? throat.right : throat.left, throat.crown_mm, false);
            break;
        default:
            break;
        }
    }
    for (std::size_t i = 0; i < network.bleeds.size(); ++i) {
        const BleedPlace& bleed = network.bleeds[i];
        marks.push_back(state.bleed_open[i] ? Mark::level(bleed.cell, bleed.height_mm, true) : Mark{});
    }
    for (std::size_t i = 0; i < network.elements.size(); ++i) {
        const ElementTop& element = network.elements[i];
        marks.push_back(covered[i] ? Mark{} : Mark::level(element.cell, element.height_mm, true));
    }
}

double headAt(const Throat& throat, const CellState& cell)
{
    return cell.full ? cell.head_mm : std::max(cell.level_mm, throat.floor_mm) + cell.pressure_mm;
}

ThroatState nextMode(const FillNetwork& network, const FillState& state, std::size_t j, std::size_t which)
{
    const Throat& throat = network.throats[j];
    const ThroatState now = state.throats[j];
    const CellState& left = state.cells[throat.left];
    const CellState& right = state.cells[throat.right];
    switch (now.mode) {
    case Mode::dry: {
        const CellState& other = which == 0 ? right : left;
        if (other.level_mm >= throat.floor_mm - together_mm)
            return {Mode::pool, true};
        return {Mode::weir, which == 0};
    }
    case Mode::weir:
        return {Mode::pool, true};
    case Mode::pool:
        return {which == 0 ? Mode::sealed : Mode::dry, true};
    case Mode::sealed: {
        const CellState& other = which == 0 ? right : left;
        // What is full to a top at the crown stands at it, too, as soon as gas comes in.
        if (other.level_mm <= throat.crown_mm + together_mm)
            return {Mode::pool, true};
        return {Mode::bubbling, which == 0};
    }
    case Mode::bubbling:
        return {Mode::pool, true};
    default:
        return now;
    }
}

ThroatState turnedMode(const ThroatState& throat)
{
    if (throat.mode == Mode::weir)
        return {Mode::dry, true};
    if (throat.mode == Mode::bubbling)
        return {Mode::sealed, true};
    if (throat.mode == Mode::blowing)
        return {Mode::drowned, throat.to_right};
    return throat;
}

} // namespace siphonwright
