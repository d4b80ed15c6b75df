#include "core/air/fill.h"

#include "core/air/frames.h"
#include "core/air/open_valve.h"
#include "core/air/prefill.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

std::string problemIn(const FillRequest& request, const FillNetwork& network)
{
    if (!network.problem.empty())
        return network.problem;
    if (!std::isfinite(request.target_level_mm) || !std::isfinite(request.drained_to_mm.value_or(0)))
        return "the target level is no number";
    for (const double positive : {request.density_kg_per_m3, request.atmosphere_Pa, request.vacuum_Pa}) {
        if (!(std::isfinite(positive) && positive > 0))
            return "density and pressures must be over zero";
    }
    if (!(std::isfinite(request.prefilled_air_ml) && request.prefilled_air_ml >= 0))
        return "the air in pre-filled hoses must not be under zero";
    if (request.method == FillMethod::under_vacuum && !(request.vacuum_Pa < request.atmosphere_Pa))
        return "the vacuum must lie under the atmosphere";
    if (request.method == FillMethod::from_below && request.feed_loop >= request.loops.size())
        return "there is no loop to feed";
    for (const ValvePlace& place : request.then_open) {
        if (place.loop >= request.loops.size() || place.valve >= request.loops[place.loop].valves.size())
            return "there is no such valve";
    }
    return {};
}

/// Everything empty, the jacket's level just under its lowest port.
FillState emptyState(const FillRequest& request, const FillNetwork& network)
{
    const double mm_per_Pa = 1000 / (request.density_kg_per_m3 * standard_gravity_m_per_s2);
    const bool vacuum = request.method == FillMethod::under_vacuum && !request.prefilled;
    FillState state;
    state.atmosphere_mm = request.atmosphere_Pa * mm_per_Pa;
    state.open_pressure_mm = vacuum ? (request.vacuum_Pa - request.atmosphere_Pa) * mm_per_Pa : 0;
    for (const Cell& cell : network.cells) {
        CellState empty;
        empty.level_mm = cell.floor_mm;
        empty.pressure_mm = state.open_pressure_mm;
        empty.head_mm = empty.level_mm + empty.pressure_mm;
        empty.gas = (state.atmosphere_mm + empty.pressure_mm) * cell.capacity_ml;
        state.cells.push_back(empty);
    }
    double lowest = std::min(request.target_level_mm, network.cells[0].volume.floor());
    for (const Throat& throat : network.throats) {
        if (throat.left == 0 || throat.right == 0)
            lowest = std::min(lowest, throat.floor_mm - 1);
        state.throats.push_back({throat.starts_shut ? Mode::shut : Mode::dry, true});
    }
    lowest = std::min(lowest, request.drained_to_mm.value_or(lowest));
    CellState& jacket = state.cells[0];
    jacket.level_mm = lowest;
    jacket.liquid_ml = network.cells[0].volume.under(lowest).liquid_ml;
    jacket.head_mm = lowest + state.open_pressure_mm;
    jacket.gas = 0;
    for (const BleedPlace& bleed : network.bleeds)
        state.bleed_open.push_back(bleed.open && !vacuum);
    return state;
}

FillState stateAtStart(const FillRequest& request, const FillNetwork& network)
{
    FillState empty = emptyState(request, network);
    return request.prefilled ? prefilledState(request, network, std::move(empty)) : empty;
}

/// One filling from first to last.
class Filling {
public:
    Filling(const FillRequest& request, const FillNetwork& network)
        : request_(request), network_(network), run_(network, stateAtStart(request, network))
    {}

    FillStatus all()
    {
        if (request_.prefilled)
            return connectPrefilled(request_, network_, run_) ? pour(0) : FillStatus::does_not_settle;
        FillStatus status = request_.drained_to_mm ? pourWhatIsLeft() : pour(feed());
        for (const ValvePlace& place : request_.then_open) {
            if (status == FillStatus::filled)
                status = open(place);
            if (status == FillStatus::filled && !request_.drained_to_mm)
                status = pour(0);
        }
        if (status == FillStatus::filled && request_.drained_to_mm)
            status = pour(feed());
        if (status == FillStatus::filled && request_.method == FillMethod::under_vacuum)
            status = releaseVacuum();
        return status;
    }

    FillRun& run() { return run_; }
    double left_ml() const { return left_ml_; }
    std::size_t pours() const { return pours_; }

private:
    /// What a drained block still holds runs into what is open to it.
    FillStatus pourWhatIsLeft()
    {
        const double start_ml = run_.state().cells[0].liquid_ml;
        const double left_ml = network_.cells[0].volume.under(*request_.drained_to_mm).liquid_ml - start_ml;
        if (left_ml > 0 && pourSome(network_, run_, request_.target_level_mm, 0, left_ml) == RunEnd::failed)
            return FillStatus::does_not_settle;
        left_ml_ = run_.state().poured_ml;
        return FillStatus::filled;
    }

    std::size_t feed() const
    {
        for (std::size_t i = 0; i < network_.cells.size(); ++i) {
            const Cell& cell = network_.cells[i];
            if (request_.method == FillMethod::from_below && cell.part == LoopPart::chamber &&
                cell.loop == request_.feed_loop)
                return i;
        }
        return 0;
    }

    FillStatus pour(std::size_t into)
    {
        const RunEnd end = request_.most_step_ml > 0 ? pourInSteps(into)
                                                     : pourTo(network_, run_, request_.target_level_mm, into);
        return end == RunEnd::goal     ? FillStatus::filled
               : end == RunEnd::failed ? FillStatus::does_not_settle
                                       : FillStatus::level_not_reached;
    }

    RunEnd pourInSteps(std::size_t into)
    {
        constexpr int most_steps = 100'000;
        RunEnd end = RunEnd::limit;
        for (int i = 0; i < most_steps && end == RunEnd::limit; ++i, ++pours_)
            end = pourSome(network_, run_, request_.target_level_mm, into, request_.most_step_ml);
        return end;
    }

    FillStatus open(const ValvePlace& place)
    {
        for (std::size_t j = 0; j < network_.throats.size(); ++j) {
            const Throat& throat = network_.throats[j];
            if (throat.kind != ThroatKind::valve || throat.loop != place.loop ||
                throat.valve != place.valve || run_.state().throats[j].mode != Mode::shut)
                continue;
            return openValve(network_, run_, j) ? FillStatus::filled : FillStatus::does_not_settle;
        }
        return FillStatus::filled;
    }

    FillStatus releaseVacuum()
    {
        Push push;
        push.open_mm = -run_.state().open_pressure_mm;
        if (run_.run(push, 1, 1) != RunEnd::limit)
            return FillStatus::does_not_settle;
        run_.state().open_pressure_mm = 0;
        run_.record(FillEventKind::vacuum_released, 0);
        return pour(0);
    }

    const FillRequest& request_;
    const FillNetwork& network_;
    FillRun run_;
    double left_ml_ = 0;
    std::size_t pours_ = 0;
};

/// What a person would not see: that something starts and stops again, or stops and starts, at one place.
std::vector<FillEvent> withoutFlutter(const std::vector<FillEvent>& events)
{
    constexpr double same_ml = 1e-2;
    constexpr double same_mm = 1e-2;
    const auto undoes = [](FillEventKind later, FillEventKind earlier) {
        using Kind = FillEventKind;
        const auto pair = [&](Kind a, Kind b) {
            return (later == a && earlier == b) || (later == b && earlier == a);
        };
        return pair(Kind::spills, Kind::stops_spilling) || pair(Kind::bubbles, Kind::stops_bubbling) ||
               pair(Kind::seals, Kind::opens) || (later == earlier && later == Kind::bubbles);
    };
    std::vector<FillEvent> seen;
    for (const FillEvent& event : events) {
        bool undone = false;
        for (std::size_t i = seen.size(); i-- > 0 && event.poured_ml - seen[i].poured_ml < same_ml &&
                                          std::abs(event.level_mm - seen[i].level_mm) < same_mm;) {
            if (seen[i].throat != event.throat || !undoes(event.kind, seen[i].kind))
                continue;
            const bool same = seen[i].kind == event.kind;
            if (!same)
                seen.erase(seen.begin() + static_cast<std::ptrdiff_t>(i));
            undone = true;
            break;
        }
        if (!undone)
            seen.push_back(event);
    }
    return seen;
}

std::string messageOf(FillStatus status)
{
    switch (status) {
    case FillStatus::filled:
        return {};
    case FillStatus::level_not_reached:
        return "the level is not reached from where coolant is fed";
    default:
        return "no state of rest was found";
    }
}

void report(const FillNetwork& network, Filling& filling, FillResult& result)
{
    const FillState& state = filling.run().state();
    result.message = messageOf(result.status);
    result.events = withoutFlutter(filling.run().events());
    result.jacket_level_mm = state.cells[0].level_mm;
    result.poured_ml = state.poured_ml;
    result.left_ml = filling.left_ml();
    result.pours = filling.pours();
    for (std::size_t i = 1; i < state.cells.size(); ++i)
        result.coolant_ml += state.cells[i].liquid_ml;
    result.covered_at_mm.resize(network.elements.size());
    for (const FillEvent& event : result.events) {
        if (event.kind == FillEventKind::element_covered)
            result.covered_at_mm[event.throat] = event.level_mm;
    }
    result.end.state = state;
}

} // namespace

RunEnd pourSome(const FillNetwork& network, FillRun& run, double level_mm, std::size_t feed, double most_ml)
{
    Push push;
    push.pour_ml = 1;
    push.feed = feed;
    const double scale = std::max(1.0, network.hoses_and_chambers_ml);
    return run.run(push, most_ml, scale,
                   [level_mm](const FillState& state) { return level_mm - state.cells[0].level_mm; },
                   {Mark::level(0, level_mm, true)});
}

RunEnd pourTo(const FillNetwork& network, FillRun& run, double level_mm, std::size_t feed)
{
    if (run.state().cells[0].level_mm >= level_mm)
        return RunEnd::goal;
    const double jacket_ml = network.cells[0].volume.under(level_mm).liquid_ml -
                             network.cells[0].volume.under(run.state().cells[0].level_mm).liquid_ml;
    return pourSome(network, run, level_mm, feed, 1.01 * (jacket_ml + network.hoses_and_chambers_ml) + 1);
}

FillResult fill(const FillRequest& request, LevelTables* kept)
{
    FillResult result;
    auto network =
        std::make_shared<const FillNetwork>(cutIntoCells(request.loops, request.jacket, request.plumb, kept));
    result.end.network = network;
    result.message = problemIn(request, *network);
    if (!result.message.empty())
        return result;

    Filling filling(request, *network);
    std::vector<FillRun::Step> steps;
    if (request.frames > 0)
        filling.run().keepSteps(&steps);
    result.status = filling.all();
    report(*network, filling, result);
    if (request.frames > 0 && result.status == FillStatus::filled)
        result.frames = framesAlong(*network, steps, result.end.state, request.frames);
    return result;
}

} // namespace siphonwright
