#pragma once

#include "core/layout/layout.h"
#include "core/running/assumptions.h"
#include "core/running/filling.h"
#include "core/sketch/sketch.h"

#include <array>
#include <optional>
#include <stop_token>
#include <vector>

/// What the job would do with heaters of each stock power, and what a night and a season of it cost.
namespace siphonwright {

/// Powers that the table goes through, W: own choice of sizes, all usual.
constexpr std::array<double, 9> stock_powers_W = {500, 750, 1000, 1500, 2000, 2500, 3000, 4000, 5000};

/// Energy of some hours plugged in, with the tariff where one is entered.
struct Energy {
    double kWh = 0;
    std::optional<double> cost; ///< in the currency of the quote
    friend bool operator==(const Energy&, const Energy&) = default;
};

struct PowerRow {
    double each_W = 0;       ///< of each heater, at the voltage it is used at
    double power_W = 0;      ///< of all together
    bool drawn = false;      ///< the heaters as they are
    bool wants_pump = false; ///< over most_without_pump_W in all
    /// By the warm-up of the drawn loops, thermostats and air that stays in. Otherwise no loop is closed yet:
    /// engine and coolant as one lump, held where a usual thermostat would hold it.
    bool by_warm_up = false;
    std::optional<double> target_h;
    double followed_h = 0;                  ///< how long the warm-up was followed
    double final_degC = 0;                  ///< block, mean of the last two hours
    double duty = 0;                        ///< share of full power taken over the last six hours
    std::optional<double> peak_outlet_degC; ///< hottest loop; nothing without a warm-up
    bool boils = false;
    bool trips = false;           ///< a cut-out
    std::optional<Energy> night;  ///< nothing: the hours plugged in are not entered
    std::optional<Energy> season; ///< nothing: these or the season's nights are not entered
};

/// One row per stock power, every heater drawn taken as one of it, and one for the heaters as drawn where
/// they are not among them; by power. Each warm-up is followed for a day at least. Without a heater: one.
///
/// A season's nights are computed at their own temperatures where there are at most four, else at four
/// temperatures between the coldest and the warmest, and linear in between: energy over temperature is nearly
/// straight, so that this is within 3 %.
///
/// Empty when stopped, or when a fact is missing that sizingOf() names. Some 100 ms, three times that with a
/// season.
std::vector<PowerRow> powerTable(const Sketch& sketch, const Layout& layout, const Filling& filling,
                                 const Assumptions& assumed, const std::stop_token& stop = {});

/// Nights of a season in all.
double nightsIn(const Supply& supply);

/// A season to try the program with: invented, no weather record.
std::vector<ColdNights> inventedSeason();

} // namespace siphonwright
