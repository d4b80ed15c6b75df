#include "core/air/open_valve.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace siphonwright {
namespace {

constexpr double same_head_mm = 1e-6;
constexpr double just_sunk_mm = 1e-3;
/// A level this near to where it rises to is there: a cell may end there.
constexpr double reached_mm = 1e-3;
constexpr int most_phases = 400;
/// Own choice: 7 mm of a 3/4 in hose.
constexpr double bubble_ml = 2;

/// A valve with its two sides.
class Opening {
public:
    Opening(const FillNetwork& network, FillRun& run, std::size_t j)
        : network_(network), run_(run), throat_(network.throats[j]), j_(j)
    {}

    bool all()
    {
        run_.record(FillEventKind::valve_opened, j_);
        for (int phase = 0; phase < most_phases; ++phase) {
            if (settled())
                return true;
            if (!next())
                return false;
        }
        return false;
    }

private:
    const CellState& cell(bool right) const { return run_.state().cells[at(right)]; }
    std::size_t at(bool right) const { return right ? throat_.right : throat_.left; }
    bool covers(bool right) const { return coversValve(network_, throat_, at(right), cell(right)); }
    double letsGas(bool right) const { return letsGasUnder(network_, throat_, at(right)); }
    /// A plumb hose over the valve: it lets gas through only when it has as good as run out.
    bool runsOut(bool right) const { return letsGas(right) > throat_.crown_mm - sunkUnder(throat_); }
    /// The level that keeps gas from passing on.
    double closesAt(bool right) const
    {
        return runsOut(right) ? std::max(throat_.crown_mm, 2 * letsGas(right) - floorOf(right))
                              : throat_.crown_mm;
    }
    double floorOf(bool right) const { return network_.cells[at(right)].floor_mm; }
    bool wet(const CellState& cell) const
    {
        return cell.liquid_ml > 0 && cell.level_mm > throat_.floor_mm + same_head_mm;
    }
    /// So near the crown that gas and liquid change sides until both levels are one.
    bool aroundCrown(const CellState& cell) const
    {
        return !cell.full && std::abs(cell.level_mm - throat_.crown_mm) < 1.1 * sunkUnder(throat_);
    }
    /// At the valve: of its liquid, or of its gas where no liquid reaches it.
    double head(const CellState& cell) const { return headAt(throat_, cell); }
    double level(const CellState& cell) const { return std::max(cell.level_mm, throat_.floor_mm); }

    /// Sets the mode that holds, if one does.
    bool settled()
    {
        const CellState& left = cell(false);
        const CellState& right = cell(true);
        if (covers(false) && covers(true)) {
            if (std::abs(head(left) - head(right)) > 2 * same_head_mm)
                return false;
            run_.setMode(j_, {Mode::sealed, true});
            return true;
        }
        if (aroundCrown(left) && aroundCrown(right) &&
            std::abs(head(left) - head(right)) <= 2 * same_head_mm) {
            run_.setMode(j_, {Mode::pool, true});
            return true;
        }
        if (covers(false) || covers(true) || std::abs(left.pressure_mm - right.pressure_mm) > same_head_mm)
            return false;
        if (!wet(left) && !wet(right)) {
            run_.setMode(j_, {Mode::dry, true});
            return true;
        }
        if (std::abs(level(left) - level(right)) > 2 * same_head_mm)
            return false;
        run_.setMode(j_, {Mode::pool, true});
        return true;
    }

    bool next()
    {
        const CellState& left = cell(false);
        const CellState& right = cell(true);
        if (!covers(false) && !covers(true)) {
            const bool from_left = left.level_mm > right.level_mm;
            const CellState& upper = from_left ? left : right;
            const CellState& lower = from_left ? right : left;
            if (wet(upper) && std::abs(upper.level_mm - letsGas(!from_left)) < just_sunk_mm &&
                upper.pressure_mm > lower.pressure_mm + same_head_mm)
                return blow(from_left) || passGas(from_left, true);
            if (std::abs(left.pressure_mm - right.pressure_mm) > same_head_mm)
                return passGas(left.pressure_mm > right.pressure_mm, true);
            return passLiquid(level(left) > level(right));
        }
        const bool to_right = head(left) > head(right);
        if (covers(false) && covers(true))
            return passLiquid(to_right);
        // From the covered side, or from the gas of the other, or both against each other.
        const bool from_left = covers(false);
        if (std::abs(head(left) - head(right)) <= 2 * same_head_mm)
            return gurgle(from_left);
        return to_right == from_left ? passLiquid(to_right) : passGas(to_right, false);
    }

    /// Gas from side to side until the pressures, or the heads, are equal or liquid covers the valve anew.
    bool passGas(bool to_right, bool to_one_pressure)
    {
        run_.setMode(j_, {Mode::shut, to_right});
        Push push;
        push.valve = j_;
        push.valve_gas = run_.state().atmosphere_mm;
        Mark apart;
        apart.what = to_one_pressure ? Mark::What::one_pressure : Mark::What::one_head;
        std::vector<Mark> marks = {apart, Mark::level(at(!to_right), closesAt(!to_right), true)};
        if (to_one_pressure)
            marks.push_back(Mark::level(at(to_right), closesAt(to_right), true));
        const auto left_mm = [this, to_right, to_one_pressure](const FillState& state) {
            const CellState& from = state.cells[at(!to_right)];
            const CellState& to = state.cells[at(to_right)];
            const double left = to_one_pressure ? from.pressure_mm - to.pressure_mm : head(from) - head(to);
            const double closes = closesAt(!to_right) - from.level_mm;
            return std::min(left,
                            to_one_pressure ? std::min(closes, closesAt(to_right) - to.level_mm) : closes);
        };
        return end(push, left_mm, marks);
    }

    bool passLiquid(bool to_right)
    {
        const bool from_covers = covers(!to_right);
        const bool any_covers = from_covers || covers(to_right);
        run_.setMode(j_, {any_covers ? Mode::drowned : Mode::opening, to_right});
        Push push;
        push.valve = j_;
        push.valve_ml = 1;
        Mark one_head;
        one_head.what = Mark::What::one_head;
        std::vector<Mark> marks = {one_head};
        if (from_covers)
            marks.push_back(Mark::level(at(!to_right), letsGas(!to_right), false));
        const auto left_mm = [this, to_right, from_covers, any_covers](const FillState& state) {
            const CellState& from = state.cells[at(!to_right)];
            const CellState& to = state.cells[at(to_right)];
            if (!any_covers)
                return from.level_mm - level(to);
            const double apart = head(from) - head(to);
            return from_covers && !from.full ? std::min(apart, from.level_mm - letsGas(!to_right)) : apart;
        };
        const bool ended = end(push, left_mm, marks);
        if (ended && !any_covers && !wet(cell(!to_right)) && !wet(cell(to_right)))
            run_.setMode(j_, {Mode::dry, true});
        return ended;
    }

    /// Liquid down and gas up. Where liquid stands on both sides gas surges and the liquid follows; otherwise
    /// the liquid is what is let through.
    bool gurgle(bool to_right)
    {
        Push push;
        push.valve = j_;
        const bool wets = cell(to_right).level_mm >= throat_.floor_mm - same_head_mm;
        const double rises_to_mm = wets ? throat_.crown_mm - reached_mm : throat_.floor_mm + reached_mm;
        if (wets) {
            run_.setMode(j_, {Mode::surging, !to_right});
            push.valve_gas = run_.state().atmosphere_mm;
        } else {
            run_.setMode(j_, {Mode::gurgling, to_right});
            push.valve_ml = 1;
        }
        const bool steady =
            end(push,
                [this, to_right, rises_to_mm](const FillState& state) {
                    const CellState& from = state.cells[to_right ? throat_.left : throat_.right];
                    const CellState& to = state.cells[to_right ? throat_.right : throat_.left];
                    return std::min(rises_to_mm - to.level_mm, from.level_mm - letsGas(!to_right));
                },
                {Mark::level(at(to_right), rises_to_mm, true),
                 Mark::level(at(!to_right), letsGas(!to_right), false)});
        return steady || letBubbleUp(to_right);
    }

    /// Where no steady exchange is possible (gas that comes up pushes liquid on, and more follows) it goes
    /// bubble by bubble: one up, and the liquid that then outweighs the gas under it down.
    bool letBubbleUp(bool to_right)
    {
        run_.setMode(j_, {Mode::shut, !to_right});
        const FillState& state = run_.state();
        Push push;
        push.valve = j_;
        push.valve_gas = state.atmosphere_mm;
        const double most_ml = cell(to_right).gas / state.atmosphere_mm / 2;
        return run_.run(push, std::min(bubble_ml, most_ml), std::max(1.0, network_.hoses_and_chambers_ml)) ==
               RunEnd::limit;
    }

    /// Liquid and gas together, from a side whose level stands at the crown, until the pressures are one or
    /// that level would rise.
    bool blow(bool to_right)
    {
        run_.setMode(j_, {Mode::blowing, to_right});
        Push push;
        push.valve = j_;
        push.valve_ml = 1;
        Mark one_pressure;
        one_pressure.what = Mark::What::one_pressure;
        const auto left_mm = [this, to_right](const FillState& state) {
            const CellState& from = state.cells[at(!to_right)];
            const CellState& to = state.cells[at(to_right)];
            if (state.throats[j_].mode != Mode::blowing)
                return -1.0;
            return std::min(from.pressure_mm - to.pressure_mm, closesAt(to_right) - to.level_mm);
        };
        return end(push, left_mm, {one_pressure, Mark::level(at(to_right), closesAt(to_right), true)});
    }

    bool end(const Push& push, const FillRun::Goal& goal, const std::vector<Mark>& goal_marks = {})
    {
        const double scale = std::max(1.0, network_.hoses_and_chambers_ml);
        return run_.run(push, 100 * scale, scale, goal, goal_marks) == RunEnd::goal;
    }

    const FillNetwork& network_;
    FillRun& run_;
    const Throat& throat_;
    std::size_t j_;
};

} // namespace

bool openValve(const FillNetwork& network, FillRun& run, std::size_t throat)
{
    return Opening(network, run, throat).all();
}

} // namespace siphonwright
