#pragma once

#include "tests/geometry/random_hoses.h"

#include "core/air/fill.h"

#include <algorithm>
#include <vector>

namespace siphonwright::test {

/// A hose as it is thrown: it can be laid from either end.
struct RandomRun {
    std::vector<Corner> corners;
    double bore_mm = 0;
    double second_bore_mm = 0; ///< from a share of its length on
    double share = 1;

    Path path(bool reversed = false) const
    {
        std::vector<Corner> order = corners;
        if (reversed)
            std::reverse(order.begin(), order.end());
        Path result = hose(order, bore_mm);
        const double end = result.line.length();
        if (share < 1 && reversed)
            result.bores = {{0, end * (1 - share), second_bore_mm}, {end * (1 - share), end, bore_mm}};
        else if (share < 1)
            result.bores = {{0, end * share, bore_mm}, {end * share, end, second_bore_mm}};
        return result;
    }
};

/// Through random points between two openings; sharp, tight and wide bends, now and then level.
inline RandomRun randomRun(Dice& dice, Vec3 from, Vec3 to, std::size_t most_points)
{
    RandomRun run;
    run.corners.push_back({from, 0});
    const std::size_t points = dice.upTo(most_points);
    for (std::size_t i = 0; i < points; ++i) {
        Corner corner;
        const double share = static_cast<double>(i + 1) / static_cast<double>(points + 1);
        corner.at.x = from.x + (to.x - from.x) * share + dice.between(-60, 60);
        corner.at.y = dice.between(-50, 50);
        corner.at.z = dice.upTo(7) == 0 ? run.corners.back().at.z : dice.between(60, 860);
        corner.radius_mm = dice.upTo(3) == 0 ? 0 : dice.between(5, 120);
        run.corners.push_back(corner);
    }
    run.corners.push_back({to, 0});
    run.bore_mm = dice.between(12, 28);
    if (dice.upTo(4) == 0) {
        run.share = dice.between(0.2, 0.8);
        run.second_bore_mm = dice.between(12, 28);
    }
    return run;
}

/// A loop as it is thrown: it can be walked either way round.
struct RandomLoop {
    FillLoop loop; ///< without its paths
    RandomRun supply;
    RandomRun back;

    FillLoop built(bool turned_round = false) const
    {
        FillLoop result = loop;
        result.supply = turned_round ? back.path(true) : supply.path();
        result.return_hose = turned_round ? supply.path(true) : back.path();
        if (turned_round) {
            std::swap(result.supply_port, result.return_port);
            std::swap(result.inlet, result.outlet);
        }
        return result;
    }
};

inline RandomLoop randomLoop(Dice& dice)
{
    RandomLoop result;
    FillLoop& loop = result.loop;
    const double bottom = dice.between(40, 200);
    const double height = dice.between(120, 300);
    const double x = dice.between(380, 460);
    const double lean = dice.between(-40, 40);
    loop.chamber = {{x, 0, bottom}, {x + lean, 0, bottom + height}, dice.between(45, 80)};
    const double inlet = bottom + height * dice.between(0.1, 0.4);
    const double outlet = bottom + height * dice.between(0.6, 1);
    const double low_port = dice.between(150, 500);
    const double high_port = dice.between(400, 800);
    result.supply = randomRun(dice, {0, 0, low_port}, {x, 0, inlet}, 4);
    result.back = randomRun(dice, {x, 0, outlet}, {50, 0, high_port}, 4);
    loop.supply_port.bore_mm = dice.between(12, 22);
    loop.return_port.bore_mm = dice.between(12, 22);
    loop.inlet.bore_mm = dice.between(12, 20);
    loop.outlet.bore_mm = dice.between(12, 20);
    loop.element_top_mm = bottom + height * 0.6;
    return result;
}

/// What is filled on a random day: one loop, now and then two on one jacket, upright.
struct RandomFill {
    std::vector<RandomLoop> loops;
    FillRequest request;

    FillRequest built(bool turned_round = false) const
    {
        FillRequest result = request;
        for (const RandomLoop& loop : loops)
            result.loops.push_back(loop.built(turned_round));
        return result;
    }
};

inline RandomFill randomFill(Dice& dice)
{
    RandomFill result;
    result.loops.push_back(randomLoop(dice));
    if (dice.upTo(9) == 0)
        result.loops.push_back(randomLoop(dice));
    const double area = dice.between(3, 25);
    result.request.jacket = {{100, 500}, {400, 500 + 300 * area}, {1000, 500 + 720 * area}};
    result.request.target_level_mm = 900;
    return result;
}

/// The same with valves that are opened one after the other, bleeds, another way of filling, or on a grade.
inline FillRequest randomCampaign(Dice& dice)
{
    FillRequest request = randomFill(dice).built();
    request.plumb = dice.upTo(1) == 0 ? Plumb() : randomPlumb(dice);
    const std::size_t how = dice.upTo(5);
    request.method = how == 0   ? FillMethod::under_vacuum
                     : how == 1 ? FillMethod::from_below
                                : FillMethod::from_filler;
    for (std::size_t i = 0; i < request.loops.size(); ++i) {
        FillLoop& loop = request.loops[i];
        for (const LoopPart part : {LoopPart::supply, LoopPart::return_hose}) {
            const double end = (part == LoopPart::supply ? loop.supply : loop.return_hose).line.length();
            if (dice.upTo(2) > 0 && how > 1) {
                const double along = dice.upTo(1) == 0 ? end * dice.between(0, 1) : dice.between(0, 60);
                loop.valves.push_back({part, along, dice.upTo(3) == 0});
            }
            if (dice.upTo(3) == 0)
                loop.bleeds.push_back({part, end * dice.between(0, 1), true});
        }
        for (std::size_t j = 0; j < loop.valves.size(); ++j)
            request.then_open.push_back({i, j});
    }
    if (dice.upTo(1) == 0)
        std::reverse(request.then_open.begin(), request.then_open.end());
    return request;
}

/// All liquid and all gas of a state against what came in and went out, each as a share of the whole.
struct Ledger {
    double liquid = 0;
    double gas = 0;
};

/// `capacity_gas` is what the empty loops held at the start: absolute pressure, mm, times volume, ml.
inline Ledger ledgerOf(const FillNetwork& network, const FillState& state, double jacket_start_ml,
                       double poured_ml, double capacity_gas)
{
    Ledger ledger;
    double liquid = network.cells[0].volume.under(state.cells[0].level_mm).liquid_ml - jacket_start_ml;
    double gas = state.gas_out;
    for (std::size_t i = 1; i < state.cells.size(); ++i) {
        liquid += state.cells[i].liquid_ml;
        gas += state.cells[i].gas;
    }
    ledger.liquid = (liquid - poured_ml) / poured_ml;
    ledger.gas = (gas - capacity_gas) / capacity_gas;
    return ledger;
}

/// Where pouring starts: the jacket just under its lowest port.
inline double jacketStart(const FillNetwork& network, double target_level_mm)
{
    double lowest = std::min(target_level_mm, network.cells[0].volume.floor());
    for (const Throat& throat : network.throats) {
        if (throat.left == 0 || throat.right == 0)
            lowest = std::min(lowest, throat.floor_mm - 1);
    }
    return network.cells[0].volume.under(lowest).liquid_ml;
}

} // namespace siphonwright::test
