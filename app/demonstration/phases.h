#pragma once

#include "app/demonstration/demonstration.h"

#include "core/layout/heater_loop.h"
#include "core/running/filling.h"
#include "core/running/running.h"

#include <memory>

/// How the phases are computed, one after the other; each hands its end on to the next.
namespace siphonwright::demonstration {

/// What the phases share, and the state that the last one left.
struct Job {
    Job(const Sketch& drawn, const Layout& resolved);

    const Sketch& sketch;
    const Layout& layout;
    Assumptions assumed;
    FillPlanOf plan;
    std::vector<HeaterLoop> loops; ///< by Cell::loop
    Running running;               ///< without air
    Filled filled;
    Filled filled_first; ///< before the engine ran; nothing unless it did
    double level_mm = 0;
    Demonstration out;

    /// A moment in the phase that is being made; the words of the one before go on if none are given.
    Moment& add(PhaseKind phase, std::shared_ptr<const FillFrame> frame, std::optional<Message> words = {});
    void begin(PhaseKind phase, double hold_s);
    std::string hoseName(std::size_t loop, LoopPart part) const;
    std::string heaterName(std::size_t loop) const;
};

constexpr double shown_moment_s = 1.0 / 15;

/// False if filling cannot be computed; out.missing says why.
bool showFilling(Job& job);
void showEngineRunning(Job& job);
void showToppingUp(Job& job);
void showEnergised(Job& job);

} // namespace siphonwright::demonstration
