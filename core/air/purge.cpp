#include "core/air/purge.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// What is left of cleared gas before it counts as none, as a share.
constexpr double gone = 1e-12;
/// Steps over what flutters are parts of the scale. In some one of a thousand loops changes lie so close that
/// one width gets caught in them and another does not; each try has its own effort.
constexpr std::array<double, 2> widths = {1, 8};

double scaleVelocity(double bore_mm)
{
    return std::sqrt(standard_gravity_m_per_s2 * std::max(0.0, bore_mm) / mm_per_m);
}
double rootOf(double sine)
{
    return std::sqrt(std::clamp(sine, 0.0, 1.0));
}
double discArea(double bore_mm)
{
    const double bore_m = bore_mm / mm_per_m;
    return std::numbers::pi / 4 * bore_m * bore_m;
}

Clearing verdictOn(const PurgedPocket& pocket, const PocketOutlet& outlet)
{
    if (outlet.in_chamber || pocket.velocity_m_per_s < pocket.clears.least_m_per_s)
        return Clearing::stays;
    return pocket.velocity_m_per_s >= pocket.clears.greatest_m_per_s ? Clearing::cleared
                                                                     : Clearing::may_clear;
}

PurgedPocket judged(const Filled& filled, const AirPocket& pocket, const PumpFlow& flow)
{
    PurgedPocket result;
    result.pocket = pocket;
    const PocketOutlet outlet = outletOf(filled, pocket, flow.sense);
    const double flow_m3_per_s = flow.flow_l_per_min / 60000;
    if (outlet.bore_mm > 0)
        result.velocity_m_per_s = flow_m3_per_s / discArea(outlet.bore_mm);
    result.clears = clearingRange(outlet.bore_mm, outlet.sine, pocket.gas_ml);
    result.verdict = verdictOn(result, outlet);
    return result;
}

std::string problemIn(const Filled& filled, const PurgeRequest& request)
{
    if (filled.network == nullptr || filled.state.cells.empty())
        return "nothing has been filled";
    if (!std::isfinite(request.top_up_level_mm))
        return "the level is no number";
    if (!(request.shrinks_to > 0.5 && request.shrinks_to <= 1))
        return "coolant shrinks to between half and all of its volume";
    for (const PumpFlow& flow : request.flows) {
        if (!(std::isfinite(flow.flow_l_per_min) && flow.flow_l_per_min >= 0))
            return "a pump's flow must not be under zero";
    }
    return {};
}

RunEnd shrink(FillRun& run, double shrinks_to)
{
    Push push;
    push.shrink = 1;
    return shrinks_to < 1 ? run.run(push, -std::log(shrinks_to), 0.05) : RunEnd::limit;
}

RunEnd letGo(FillRun& run, const std::vector<char>& cleared, double scale)
{
    Push push;
    push.gas_leaves = &cleared;
    const bool any = std::find(cleared.begin(), cleared.end(), 1) != cleared.end();
    return any ? run.run(push, 1 - gone, scale) : RunEnd::limit;
}

/// Gas let go, the coolant cooled down and topped up; false if that does not settle. Fills the result.
bool letGoAndTopUp(const Filled& filled, const PurgeRequest& request, const std::vector<char>& cleared,
                   double scale, PurgeResult& result)
{
    FillRun run(*filled.network, filled.state);
    RunEnd end = letGo(run, cleared, scale);
    if (end != RunEnd::failed)
        end = shrink(run, request.shrinks_to);
    result.lowest_level_mm = run.state().cells[0].level_mm;
    if (end != RunEnd::failed)
        end = pourTo(*filled.network, run, request.top_up_level_mm);
    result.topped_up_ml = run.state().poured_ml - filled.state.poured_ml;
    result.events = run.events();
    result.end = {filled.network, run.state()};
    return end != RunEnd::failed;
}

} // namespace

double clearingFlowKalinskeBliss(double bore_mm, double sine)
{
    const double bore_m = bore_mm / mm_per_m;
    return std::sqrt(0.707 * standard_gravity_m_per_s2 * std::pow(bore_m, 5)) * rootOf(sine);
}

double clearingKalinskeBliss(double bore_mm, double sine)
{
    return bore_mm > 0 ? clearingFlowKalinskeBliss(bore_mm, sine) / discArea(bore_mm) : 0;
}

double clearingEscarameia(double bore_mm, double sine, double gas_ml)
{
    const double n = bore_mm > 0 ? 4 * gas_ml * mm3_per_ml / (std::numbers::pi * std::pow(bore_mm, 3)) : 0;
    const double a = n < 0.06 ? 0.45 : n < 0.12 ? 0.50 : n < 0.30 ? 0.57 : 0.61;
    return (a + 0.56 * rootOf(sine)) * scaleVelocity(bore_mm);
}

double clearingWisner(double bore_mm, double sine)
{
    return (0.825 + 0.25 * rootOf(sine)) * scaleVelocity(bore_mm);
}

double clearingKent(double bore_mm, double sine)
{
    return (0.55 + 0.5 * rootOf(sine)) * scaleVelocity(bore_mm);
}

ClearingRange clearingRange(double bore_mm, double sine, double gas_ml)
{
    const auto [least, greatest] =
        std::minmax({clearingKalinskeBliss(bore_mm, sine), clearingEscarameia(bore_mm, sine, gas_ml),
                     clearingWisner(bore_mm, sine), clearingKent(bore_mm, sine)});
    return {least, greatest};
}

PurgeResult purge(const Filled& filled, const PurgeRequest& request)
{
    PurgeResult result;
    result.message = problemIn(filled, request);
    if (!result.message.empty())
        return result;
    const FillNetwork& network = *filled.network;
    std::vector<char> cleared(network.cells.size(), 0);
    for (const AirPocket& pocket : airPockets(filled)) {
        const PumpFlow flow = pocket.loop < request.flows.size() ? request.flows[pocket.loop] : PumpFlow{};
        result.pockets.push_back(judged(filled, pocket, flow));
        const Clearing verdict = result.pockets.back().verdict;
        if (verdict == Clearing::stays || (verdict == Clearing::may_clear && !request.take_what_may_clear))
            continue;
        for (const std::size_t cell : pocket.cells)
            cleared[cell] = 1;
    }

    const bool settled = std::any_of(widths.begin(), widths.end(), [&](double scale) {
        return letGoAndTopUp(filled, request, cleared, scale, result);
    });
    result.status = settled ? FillStatus::filled : FillStatus::does_not_settle;
    if (!settled)
        result.message = "no state of rest was found";
    return result;
}

CooledDown coolDown(const Filled& filled, double shrinks_to)
{
    CooledDown result;
    PurgeRequest request;
    request.shrinks_to = shrinks_to;
    result.message = problemIn(filled, request);
    if (!result.message.empty())
        return result;
    FillRun run(*filled.network, filled.state);
    const bool settled = shrink(run, shrinks_to) != RunEnd::failed;
    result.status = settled ? FillStatus::filled : FillStatus::does_not_settle;
    if (!settled)
        result.message = "no state of rest was found";
    result.jacket_level_mm = run.state().cells[0].level_mm;
    result.end = {filled.network, run.state()};
    return result;
}

} // namespace siphonwright
