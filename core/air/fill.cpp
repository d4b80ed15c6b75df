#include "core/air/fill.h"

#include "core/air/open_valve.h"
#include "core/air/prefill.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double standard_gravity = 9.80665;

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
    const double mm_per_Pa = 1000 / (request.density_kg_per_m3 * standard_gravity);
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

    /// A frame at every `frame_ml` poured; none for 0.
    FillStatus all(double frame_ml, std::vector<FillFrame>& frames)
    {
        frame_ml_ = frame_ml;
        frames_ = &frames;
        keepFrame();
        if (request_.prefilled) {
            const FillStatus status = connect();
            keepFrame();
            return status;
        }
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
        keepFrame();
        return status;
    }

    FillRun& run() { return run_; }
    double left_ml() const { return left_ml_; }

private:
    /// What a drained block still holds runs into what is open to it.
    FillStatus pourWhatIsLeft()
    {
        const double start_ml = run_.state().cells[0].liquid_ml;
        const double left_ml = network_.cells[0].volume.under(*request_.drained_to_mm).liquid_ml - start_ml;
        if (left_ml > 0 && pourSome(network_, run_, request_.target_level_mm, 0, left_ml) == RunEnd::failed)
            return FillStatus::does_not_settle;
        left_ml_ = run_.state().poured_ml;
        keepFrame();
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

    void keepFrame()
    {
        if (frame_ml_ > 0)
            keep(run_.state());
    }

    void keep(const FillState& state)
    {
        frames_->push_back(frameOf(network_, state));
        frames_->back().events = run_.events().size();
    }

    FillStatus pour(std::size_t into)
    {
        const double until = request_.target_level_mm;
        if (frame_ml_ > 0) {
            // Frames stand at whole multiples, whatever was poured between.
            for (RunEnd end = RunEnd::limit; end == RunEnd::limit;) {
                const double poured = run_.state().poured_ml / frame_ml_;
                const double next = (std::floor(poured + 1e-9) + 1 - poured) * frame_ml_;
                end = pourSome(network_, run_, until, into, next);
                if (end == RunEnd::failed)
                    return FillStatus::does_not_settle;
                if (frames_->size() > 4 * request_.frames + 16)
                    return FillStatus::level_not_reached;
                if (end == RunEnd::limit)
                    keepFrame();
            }
            return FillStatus::filled;
        }
        const RunEnd end = pourTo(network_, run_, until, into);
        return end == RunEnd::goal     ? FillStatus::filled
               : end == RunEnd::failed ? FillStatus::does_not_settle
                                       : FillStatus::level_not_reached;
    }

    FillStatus connect()
    {
        if (frame_ml_ > 0)
            watchOpening();
        const bool settled = connectPrefilled(request_, network_, run_);
        run_.watch({});
        if (!settled)
            return FillStatus::does_not_settle;
        keepFrame();
        return pour(0);
    }

    FillStatus open(const ValvePlace& place)
    {
        for (std::size_t j = 0; j < network_.throats.size(); ++j) {
            const Throat& throat = network_.throats[j];
            if (throat.kind != ThroatKind::valve || throat.loop != place.loop ||
                throat.valve != place.valve || run_.state().throats[j].mode != Mode::shut)
                continue;
            if (frame_ml_ > 0)
                watchOpening();
            const bool settled = openValve(network_, run_, j);
            run_.watch({});
            if (!settled)
                return FillStatus::does_not_settle;
            keepFrame();
            return FillStatus::filled;
        }
        return FillStatus::filled;
    }

    /// Nothing is poured while a valve opens: a frame each time that so much has left the jacket.
    void watchOpening()
    {
        keepFrame();
        double kept_ml = run_.state().cells[0].liquid_ml;
        run_.watch([this, kept_ml](const FillState& state) mutable {
            if (std::abs(state.cells[0].liquid_ml - kept_ml) < frame_ml_)
                return;
            kept_ml = state.cells[0].liquid_ml;
            keep(state);
        });
    }

    FillStatus releaseVacuum()
    {
        Push push;
        push.open_mm = -run_.state().open_pressure_mm;
        if (run_.run(push, 1, 1) != RunEnd::limit)
            return FillStatus::does_not_settle;
        run_.state().open_pressure_mm = 0;
        run_.record(FillEventKind::vacuum_released, 0);
        keepFrame();
        return pour(0);
    }

    const FillRequest& request_;
    const FillNetwork& network_;
    FillRun run_;
    double frame_ml_ = 0;
    double left_ml_ = 0;
    std::vector<FillFrame>* frames_ = nullptr;
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
                   [level_mm](const FillState& state) { return level_mm - state.cells[0].level_mm; });
}

RunEnd pourTo(const FillNetwork& network, FillRun& run, double level_mm, std::size_t feed)
{
    if (run.state().cells[0].level_mm >= level_mm)
        return RunEnd::goal;
    const double jacket_ml = network.cells[0].volume.under(level_mm).liquid_ml -
                             network.cells[0].volume.under(run.state().cells[0].level_mm).liquid_ml;
    return pourSome(network, run, level_mm, feed, 1.01 * (jacket_ml + network.hoses_and_chambers_ml) + 1);
}

FillFrame frameOf(const FillNetwork& network, const FillState& state)
{
    Joined joined;
    FillState copy = state;
    join(network, copy, {}, Joined::none, joined);
    FillFrame frame;
    frame.jacket_level_mm = state.cells[0].level_mm;
    frame.poured_ml = state.poured_ml;
    frame.cells.resize(state.cells.size());
    for (std::size_t i = 0; i < state.cells.size(); ++i) {
        const CellState& cell = state.cells[i];
        CellView& view = frame.cells[i];
        view.level_mm = cell.level_mm;
        view.liquid_ml = cell.liquid_ml;
        view.gas_ml = i > 0 && !cell.full ? network.cells[i].capacity_ml - cell.liquid_ml : 0;
        view.pressure_mm = cell.pressure_mm;
        view.sealed = joined.has_gas[joined.region[i]];
    }
    return frame;
}

FillResult fill(const FillRequest& request)
{
    FillResult result;
    auto network =
        std::make_shared<const FillNetwork>(cutIntoCells(request.loops, request.jacket, request.plumb));
    result.end.network = network;
    result.message = problemIn(request, *network);
    if (!result.message.empty())
        return result;

    Filling first(request, *network);
    result.status = first.all(0, result.frames);
    if (request.frames == 0 || result.status != FillStatus::filled) {
        report(*network, first, result);
        return result;
    }
    const double frame_ml = first.run().state().poured_ml / static_cast<double>(request.frames);
    Filling second(request, *network);
    result.status = second.all(std::max(frame_ml, 1e-6), result.frames);
    report(*network, second, result);
    return result;
}

} // namespace siphonwright
