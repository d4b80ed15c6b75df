#include "core/running/by_bore.h"

#include "core/running/loop_figures.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

BoreRow rowOf(const Sketch& sketch, double bore_mm, const Assumptions& assumed)
{
    BoreRow row;
    row.bore_mm = bore_mm;
    const Sketch changed = onBore(sketch, bore_mm);
    const Layout layout = resolve(changed, plumbOf(changed));
    Running running = runSteady(changed, layout, assumed);
    passAir(running, changed, layout, fillOf(changed, layout, &running, assumed));
    bool first = true;
    row.runs = true;
    for (const LoopRun& run : running.loops) {
        if (!run.missing.empty())
            continue;
        const double flow = run.circulation.flow_kg_per_s;
        row.runs = row.runs && run.circulation.status == CirculationStatus::circulates;
        if (first || flow < row.flow_kg_per_s) {
            row.flow_kg_per_s = flow;
            row.flow_l_per_min = flowByVolume_l_per_min(run.circulation);
        }
        row.steady_outlet_degC = first ? run.circulation.heater_outlet_degC
                                       : std::max(row.steady_outlet_degC, run.circulation.heater_outlet_degC);
        first = false;
    }
    WarmUpOptions options;
    options.sample_every_s = 0;
    const EngineWarmUp warm = runWarmUp(changed, layout, running, assumed, options);
    for (const LoopOutcome& outcome : warm.result.loops) {
        if (outcome.peak_outlet_degC)
            row.peak_outlet_degC = std::max(row.peak_outlet_degC.value_or(-273), *outcome.peak_outlet_degC);
        row.cycles_per_hour = std::max(row.cycles_per_hour, outcome.cycles_per_hour);
    }
    if (warm.result.target_s)
        row.target_h = *warm.result.target_s / 3600;
    return row;
}

} // namespace

Sketch onBore(Sketch sketch, double bore_mm)
{
    for (Shared<Hose>& hose : sketch.hoses) {
        if (!hose->bore_mm.known())
            continue;
        const double scale = bore_mm / *hose->bore_mm.value;
        hose.edit([&](Hose& h) {
            h.bore_mm.value = bore_mm;
            h.from.bore_mm *= scale;
            h.to.bore_mm *= scale;
            for (InlinePart& part : h.parts)
                part.bore_mm *= scale;
        });
    }
    return sketch;
}

std::vector<BoreRow> byBore(const Sketch& sketch, const std::stop_token& stop)
{
    const Assumptions assumed(sketch);
    const Running now = runSteady(sketch, resolve(sketch, plumbOf(sketch)), assumed);
    if (std::none_of(now.loops.begin(), now.loops.end(),
                     [](const LoopRun& run) { return run.missing.empty(); }))
        return {};
    double drawn_mm = 0;
    for (const Shared<Hose>& hose : sketch.hoses)
        if (hose->bore_mm.known() && (drawn_mm == 0 || *hose->bore_mm.value < drawn_mm))
            drawn_mm = *hose->bore_mm.value;
    std::vector<BoreRow> rows;
    for (const HoseSize& size : hoseSizes()) {
        constexpr double smallest_mm = 12.6;
        constexpr double largest_mm = 38.2;
        if (size.bore_mm < smallest_mm || size.bore_mm > largest_mm)
            continue;
        if (stop.stop_requested())
            return {};
        rows.push_back(rowOf(sketch, size.bore_mm, assumed));
        constexpr double same_mm = 0.3; // 3/4 in and 19 mm are one hose
        rows.back().drawn = std::abs(size.bore_mm - drawn_mm) < same_mm;
    }
    return rows;
}

} // namespace siphonwright
