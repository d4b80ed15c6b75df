#pragma once

#include "core/analysis/analysis.h"

#include <QString>

#include <array>
#include <optional>
#include <vector>

/// The warm-up as people see it: chart, words, files, and the table by bore.
namespace siphonwright::warming {

/// What the chart shows over time.
enum class Curve {
    outlet,       ///< of the heater, degC
    inlet,        ///< of the heater, degC
    return_port,  ///< coolant at the return hose's end on the engine, degC
    hose_outside, ///< what an infrared thermometer reads there, degC
    block,        ///< mean, degC
    flow,         ///< l/min, at the coolant's density at the heater's inlet; negative is backward
    power,        ///< W
    count
};
constexpr std::size_t curve_count = static_cast<std::size_t>(Curve::count);
constexpr std::array<Curve, curve_count> all_curves = {Curve::outlet,       Curve::inlet, Curve::return_port,
                                                       Curve::hose_outside, Curve::block, Curve::flow,
                                                       Curve::power};
Unit unitOf(Curve curve);
QString nameOf(Curve curve);

/// One heater's warm-up: all that chart, words and files are made of. A plain value, so that it can be kept
/// when the sketch goes on.
struct Result {
    Id heater;
    QString heater_name;
    QString name; ///< of the sketch: its title, or nothing
    std::vector<double> time_h;
    std::array<std::vector<double>, curve_count> values; ///< as long as time_h
    std::vector<double> flow_kg_per_s;                   ///< as long as time_h
    std::vector<double> energy_kWh;                      ///< of all heaters, as long as time_h
    LoopOutcome outcome;
    std::optional<double> reached_h; ///< when the block's mean reached the target
    double block_at_end_degC = 0;
    double target_degC = 0;
    double hours = 0; ///< asked for
    double end_h = 0; ///< computed: less where the run ended early
    std::optional<double> outlet_limit_degC;
    std::optional<double> cycles_limit; ///< an hour
    bool bands_follow = false;          ///< bands are still being computed
    std::optional<ResultBand> peak_band;
    std::optional<ResultBand> cycles_band;
    std::optional<ResultBand> target_band; ///< h
    Message remark;                        ///< why the run ended early or without a heater

    const std::vector<double>& operator[](Curve curve) const
    {
        return values[static_cast<std::size_t>(curve)];
    }
    /// Index of the moment nearest to a time; time_h must not be empty.
    std::size_t nearest(double hour) const;
};

/// A heater's result, or nothing where the proof has none for it.
std::optional<Result> resultOf(const Sketch& sketch, const Proof& proof, const Id& heater);

/// What keeps a heater's warm-up from being computed, and the part that it is of.
struct Missing {
    PartRef part;
    QString sentence;
};
Missing missingFor(const Running& running, const Proof& proof, const Id& heater, UnitSystem units);

} // namespace siphonwright::warming
