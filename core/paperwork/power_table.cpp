#include "core/paperwork/power_table.h"

#include "core/paperwork/sizing.h"
#include "core/quantity/constants.h"
#include "core/running/running.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double day_h = 24;
constexpr double same_W = 0.5;

/// A sketch with its heaters as one row wants them.
Sketch withEach(Sketch sketch, double each_W)
{
    for (Heater& heater : sketch.heaters) {
        heater.power_W.value = each_W;
        heater.rated_V.value.reset();
        heater.actual_V.value.reset();
    }
    return sketch;
}

/// Follows a sketch's warm-up for some hours; nothing where no loop can be computed.
std::optional<EngineWarmUp> follow(Sketch sketch, const Layout& layout, const Filling& filling,
                                   const Assumptions& assumed, double hours)
{
    sketch.plan.hours = hours;
    Running running = runSteady(sketch, layout, assumed);
    passAir(running, sketch, layout, filling);
    EngineWarmUp warm = runWarmUp(sketch, layout, running, assumed);
    const bool ran = warm.result.status == WarmUpStatus::done || warm.result.status == WarmUpStatus::boiling;
    return warm.inputs && ran ? std::optional(std::move(warm)) : std::nullopt;
}

/// Energy taken by a time, J.
double energyAt_J(const WarmUp& result, double time_s)
{
    const std::vector<WarmUpSample>& series = result.series;
    const auto after = std::find_if(series.begin(), series.end(),
                                    [&](const WarmUpSample& sample) { return sample.time_s >= time_s; });
    if (after == series.begin() || after == series.end())
        return after == series.end() ? result.energy_J : 0;
    const WarmUpSample& before = *(after - 1);
    const double share = (time_s - before.time_s) / (after->time_s - before.time_s);
    return before.energy_J + share * (after->energy_J - before.energy_J);
}

double blockOverLast_degC(const WarmUp& result, double hours)
{
    double sum = 0;
    int count = 0;
    for (const WarmUpSample& sample : result.series)
        if (sample.time_s >= result.end_s - hours * s_per_h) {
            sum += sample.block_degC;
            ++count;
        }
    return count > 0 ? sum / count : result.block_at_end_degC;
}

Energy priced(double kWh, const Supply& supply)
{
    Energy out{kWh, std::nullopt};
    if (supply.tariff_per_kWh)
        out.cost = kWh * *supply.tariff_per_kWh;
    return out;
}

/// One row's job: where the energy of a night comes from.
class RowJob {
public:
    RowJob(const Sketch& sketch, const Layout& layout, const Filling& filling, const Assumptions& assumed)
        : sketch_(sketch), layout_(layout), filling_(filling), assumed_(assumed)
    {}

    void fill(PowerRow& row) const
    {
        const std::optional<double>& night_h = sketch_.supply.hours_per_night;
        row.followed_h = std::max({day_h, sketch_.plan.hours, night_h.value_or(0)});
        if (const auto warm = follow(sketch_, layout_, filling_, assumed_, row.followed_h))
            byWarmUp(row, *warm);
        else
            byOneLump(row);
    }

    /// kWh of a night in air of this temperature.
    double nightIn_kWh(const PowerRow& row, double air_degC) const
    {
        const Sketch cold = inAir(sketch_, air_degC);
        const double hours = *sketch_.supply.hours_per_night;
        if (row.by_warm_up) {
            if (const auto warm = follow(cold, layout_, filling_, assumed_, hours))
                return warm->result.energy_J / J_per_kWh;
        }
        return lumpNight_J(lumpOf(cold), row.power_W, hours) / J_per_kWh;
    }

private:
    struct LumpJob {
        OneLump lump;
        Warming warming;
    };
    LumpJob lumpOf(const Sketch& sketch) const
    {
        const Sizing sizing = sizingOf(sketch, layout_, assumed_);
        return {sizing.lump, {sizing.usual.air_degC, sizing.usual.start_degC, sizing.target_degC}};
    }
    /// Where a usual thermostat holds the block: midway between its two points.
    double held_degC() const
    {
        return (assumed_[Assumed::thermostat_on] + assumed_[Assumed::thermostat_off]) / 2;
    }
    double lumpNight_J(const LumpJob& job, double power_W, double hours) const
    {
        const double end_s = hours * s_per_h;
        Warming to_held = job.warming;
        to_held.target_degC = held_degC();
        const double full_s = std::min(end_s, timeTo_s(job.lump, power_W, to_held).value_or(end_s));
        const double hold_W =
            std::clamp(job.lump.loss_W_per_K * (held_degC() - job.warming.air_degC), 0.0, power_W);
        return power_W * full_s + hold_W * (end_s - full_s);
    }

    void byWarmUp(PowerRow& row, const EngineWarmUp& warm) const
    {
        const WarmUp& result = warm.result;
        double running_W = 0; // of the loops that can be computed
        for (const WarmUpLoop& loop : warm.inputs->loops)
            running_W += loop.heater.power_W();
        row.by_warm_up = true;
        if (result.target_s)
            row.target_h = *result.target_s / s_per_h;
        row.final_degC = blockOverLast_degC(result, 2);
        constexpr double last_s = 6 * s_per_h;
        row.duty = std::clamp(
            (result.energy_J - energyAt_J(result, result.end_s - last_s)) / (running_W * last_s), 0.0, 1.0);
        row.boils = result.status == WarmUpStatus::boiling;
        for (const LoopOutcome& outcome : result.loops) {
            if (outcome.peak_outlet_degC)
                row.peak_outlet_degC =
                    std::max(row.peak_outlet_degC.value_or(-273), *outcome.peak_outlet_degC);
            row.trips = row.trips || outcome.tripped_s;
        }
        if (sketch_.supply.hours_per_night)
            row.night = priced(energyAt_J(result, *sketch_.supply.hours_per_night * s_per_h) / J_per_kWh,
                               sketch_.supply);
    }

    void byOneLump(PowerRow& row) const
    {
        const LumpJob job = lumpOf(sketch_);
        if (const auto time_s = timeTo_s(job.lump, row.power_W, job.warming);
            time_s && job.warming.target_degC <= held_degC())
            row.target_h = *time_s / s_per_h;
        const double unheld_degC = after_degC(job.lump, row.power_W, job.warming.air_degC,
                                              job.warming.start_degC, row.followed_h * s_per_h);
        row.final_degC = std::min(unheld_degC, std::max(held_degC(), job.warming.air_degC));
        row.duty =
            unheld_degC > held_degC()
                ? std::clamp(job.lump.loss_W_per_K * (held_degC() - job.warming.air_degC) / row.power_W, 0.0,
                             1.0)
                : 1;
        if (sketch_.supply.hours_per_night)
            row.night = priced(lumpNight_J(job, row.power_W, *sketch_.supply.hours_per_night) / J_per_kWh,
                               sketch_.supply);
    }

    const Sketch& sketch_;
    const Layout& layout_;
    const Filling& filling_;
    const Assumptions& assumed_;
};

/// Temperatures at which a season's nights are computed, ascending.
std::vector<double> nodesOf(const std::vector<ColdNights>& season)
{
    constexpr std::size_t most = 4;
    std::vector<double> all;
    for (const ColdNights& row : season)
        if (row.nights > 0)
            all.push_back(row.ambient_degC);
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    if (all.size() <= most)
        return all;
    std::vector<double> nodes;
    for (std::size_t i = 0; i < most; ++i)
        nodes.push_back(all.front() + (all.back() - all.front()) * double(i) / double(most - 1));
    return nodes;
}

double between(const std::vector<double>& x, const std::vector<double>& y, double at)
{
    if (x.size() == 1)
        return y.front();
    const auto above = std::lower_bound(x.begin() + 1, x.end() - 1, at);
    const auto i = static_cast<std::size_t>(above - x.begin());
    return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
}

void addSeason(PowerRow& row, const RowJob& job, const Supply& supply, const std::stop_token& stop)
{
    const std::vector<double> nodes = nodesOf(supply.season);
    if (!supply.hours_per_night || nodes.empty())
        return;
    std::vector<double> kWh;
    for (const double air_degC : nodes) {
        if (stop.stop_requested())
            return;
        kWh.push_back(job.nightIn_kWh(row, air_degC));
    }
    double sum_kWh = 0;
    for (const ColdNights& night : supply.season)
        if (night.nights > 0)
            sum_kWh += night.nights * between(nodes, kWh, night.ambient_degC);
    row.season = priced(sum_kWh, supply);
}

/// The rows to compute, in order of power; the drawn heaters have a row of their own unless a stock power is
/// theirs.
std::vector<PowerRow> rowsFor(const Sketch& sketch)
{
    const double count = std::max<double>(1, double(sketch.heaters.size()));
    std::vector<PowerRow> rows;
    for (const double each_W : stock_powers_W) {
        PowerRow row;
        row.each_W = each_W;
        row.power_W = each_W * count;
        rows.push_back(row);
    }
    double drawn_W = 0;
    bool alike = !sketch.heaters.empty();
    for (const Heater& heater : sketch.heaters) {
        const std::optional<double> power_W = actualPower_W(heater);
        if (!power_W || !(*power_W > 0))
            return rows;
        drawn_W += *power_W;
        alike = alike && std::abs(*power_W - *actualPower_W(sketch.heaters.front())) < same_W;
    }
    if (sketch.heaters.empty())
        return rows;
    const auto same = std::find_if(rows.begin(), rows.end(), [&](const PowerRow& row) {
        return alike && std::abs(row.power_W - drawn_W) < same_W;
    });
    if (same != rows.end()) {
        same->drawn = true;
        return rows;
    }
    PowerRow row;
    row.each_W = drawn_W / count;
    row.power_W = drawn_W;
    row.drawn = true;
    rows.insert(std::find_if(rows.begin(), rows.end(),
                             [&](const PowerRow& other) { return other.power_W > drawn_W; }),
                row);
    return rows;
}

} // namespace

double nightsIn(const Supply& supply)
{
    double sum = 0;
    for (const ColdNights& row : supply.season)
        sum += row.nights;
    return sum;
}

std::vector<ColdNights> inventedSeason()
{
    return {{-30, 4}, {-25, 9}, {-20, 17}, {-15, 26}, {-10, 32}, {-5, 34}, {0, 28}};
}

std::vector<PowerRow> powerTable(const Sketch& sketch, const Layout& layout, const Filling& filling,
                                 const Assumptions& assumed, const std::stop_token& stop)
{
    if (!sizingOf(sketch, layout, assumed).missing.empty())
        return {};
    std::vector<PowerRow> rows = rowsFor(sketch);
    for (PowerRow& row : rows) {
        if (stop.stop_requested())
            return {};
        const Sketch heated = row.drawn ? sketch : withEach(sketch, row.each_W);
        const RowJob job(heated, layout, filling, assumed);
        job.fill(row);
        row.wants_pump = row.power_W > most_without_pump_W;
        addSeason(row, job, sketch.supply, stop);
    }
    return stop.stop_requested() ? std::vector<PowerRow>() : rows;
}

} // namespace siphonwright
