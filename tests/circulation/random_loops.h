#pragma once

#include "tests/circulation/loops.h"

#include <cstdint>

/// Loops at random, the same on every machine.
namespace siphonwright::test {

/// splitmix64: Steele, Lea and Flood (2014).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state(seed) {}
    /// Evenly from least to most.
    double between(double least, double most)
    {
        state += 0x9E3779B97F4A7C15U;
        std::uint64_t z = state;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        z ^= z >> 31U;
        return least + (most - least) * static_cast<double>(z >> 11U) * 0x1p-53;
    }
    int upTo(int most) { return static_cast<int>(between(0, most + 0.999999)); }

private:
    std::uint64_t state;
};

/// A heater in a sound loop: its return hose rises all the way to the high port, its supply hose falls all
/// the way from the low one.
struct SoundLoop {
    double power_W = 1500;
    double block_degC = 20;
    double block_W_per_K = 200;
    double air_degC = -20;
    double hose_bore_m = 0.019;
    double end_share = 0.75; ///< bore of the hose ends over that of the hose
    double supply_m = 1.2;
    double return_m = 1.0;
    double return_rise_m = 0.4;
    double supply_fall_m = 0.2;
    double chamber_m = 0.25;
    double hose_W_per_K = 0.4; ///< of each hose, to air
    double share_at_outlet = default_share_at_outlet;
    double bend_rad = 1.5;
    int pieces = 3; ///< of each hose
    bool valves = true;

    static SoundLoop random(Dice& dice)
    {
        SoundLoop s;
        s.power_W = dice.between(500, 2500);
        s.block_degC = dice.between(-20, 50);
        s.air_degC = dice.between(-25, s.block_degC);
        s.block_W_per_K = dice.between(60, 600);
        s.hose_bore_m = dice.between(0.0155, 0.0320);
        s.end_share = dice.between(0.70, 0.85);
        s.return_rise_m = dice.between(0.15, 0.8);
        s.supply_fall_m = dice.between(0.05, 0.5);
        s.return_m = s.return_rise_m * dice.between(1.05, 3);
        s.supply_m = s.supply_fall_m * dice.between(1.05, 4);
        s.chamber_m = dice.between(0.15, 0.35);
        s.hose_W_per_K = dice.between(0, 1.0);
        s.share_at_outlet = dice.between(0, 1);
        s.bend_rad = dice.between(0, 3);
        s.pieces = 1 + dice.upTo(3);
        s.valves = dice.upTo(1) == 1;
        return s;
    }

    std::vector<LoopElement> hose(double length_m, double rise_m) const
    {
        std::vector<LoopElement> hose;
        for (int i = 0; i < pieces; ++i) {
            LoopElement piece = pipe(length_m / pieces, rise_m / pieces, hose_bore_m,
                                     Heat::toAir(hose_W_per_K / pieces, air_degC));
            piece.losses.push_back(Loss::hoseBend(bend_rad / pieces, 5 * hose_bore_m, hose_bore_m));
            hose.push_back(piece);
        }
        const Loss end = Loss::hoseEnd(hose_bore_m, end_share * hose_bore_m, 0.04);
        hose.front().losses.push_back(Loss::entrance(hose_bore_m));
        hose.front().losses.push_back(end);
        hose.back().losses.push_back(end);
        hose.back().losses.push_back(Loss::elbow90(hose_bore_m));
        if (valves)
            hose.back().losses.push_back(Loss::ballValve(hose_bore_m));
        hose.back().losses.push_back(Loss::exit(hose_bore_m));
        return hose;
    }

    Loop loop() const
    {
        Loop loop;
        loop.elements = hose(supply_m, -supply_fall_m);
        LoopElement chamber = pipe(chamber_m, chamber_m, 0.050, Heat::heater(power_W));
        chamber.share_at_outlet = share_at_outlet;
        loop.elements.push_back(chamber);
        for (const LoopElement& piece : hose(return_m, return_rise_m))
            loop.elements.push_back(piece);
        LoopElement jacket;
        jacket.length_m = 0.5;
        jacket.rise_m = supply_fall_m - chamber_m - return_rise_m;
        jacket.bore_m = 0.050;
        jacket.heat = Heat::toBlock(block_W_per_K, block_degC);
        loop.elements.push_back(jacket);
        return loop;
    }
};

} // namespace siphonwright::test
