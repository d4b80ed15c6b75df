#include "app/demonstration/phases.h"

#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

Job::Job(const Sketch& drawn, const Layout& resolved)
    : sketch(drawn), layout(resolved), assumed(drawn), running(runSteady(drawn, resolved, assumed))
{}

void Job::begin(PhaseKind phase, double hold_s)
{
    Phase next;
    next.kind = phase;
    next.first = out.moments.size();
    next.hold_s = hold_s;
    out.phases.push_back(next);
}

Moment& Job::add(PhaseKind phase, std::shared_ptr<const FillFrame> frame, std::optional<Message> words)
{
    Moment moment;
    moment.phase = phase;
    Phase& current = out.phases.back();
    moment.clock_s = current.hold_s * double(current.count);
    moment.contents.network = filled.network;
    moment.poured_ml = frame->poured_ml;
    moment.contents.frame = std::move(frame);
    for (const HeaterLoop& loop : loops) {
        drawing::LoopContents one;
        one.heater = loop.heater->id;
        one.supply = loop.supply->id();
        one.return_ = loop.return_->id();
        moment.contents.loops.push_back(std::move(one));
    }
    if (words) {
        moment.words = std::move(*words);
        moment.event = true;
    } else if (current.count > 0) {
        moment.words = out.moments.back().words;
    }
    ++current.count;
    out.moments.push_back(std::move(moment));
    return out.moments.back();
}

std::string Job::hoseName(std::size_t loop, LoopPart part) const
{
    if (part == LoopPart::chamber)
        return heaterName(loop);
    const ResolvedHose* hose = part == LoopPart::return_hose ? loops[loop].return_ : loops[loop].supply;
    return nameOfHose(*(*hose)->hose);
}

std::string Job::heaterName(std::size_t loop) const
{
    return nameOfHeater(*loops[loop].heater);
}

std::size_t Demonstration::phaseAt(std::size_t moment) const
{
    std::size_t phase = 0;
    while (phase + 1 < phases.size() && phases[phase + 1].first <= moment)
        ++phase;
    return phase;
}

Place Demonstration::placeOf(std::size_t moment) const
{
    Place place;
    if (moments.empty())
        return place;
    const Phase& phase = phases[phaseAt(moment)];
    place.phase = phase.kind;
    place.clock_s = moments[moment].clock_s;
    place.share = phase.count > 1 ? double(moment - phase.first) / double(phase.count - 1) : 1;
    return place;
}

std::size_t Demonstration::momentAt(const Place& place) const
{
    for (const Phase& phase : phases) {
        if (phase.kind != place.phase)
            continue;
        const double last = double(phase.count - 1);
        const double step = place.phase == PhaseKind::energised && phase.hold_s > 0
                                ? place.clock_s / phase.hold_s
                                : place.share * last;
        return phase.first + std::size_t(std::lround(std::clamp(step, 0.0, last)));
    }
    return moments.empty() ? 0 : moments.size() - 1;
}

std::size_t Demonstration::nextEvent(std::size_t moment) const
{
    for (std::size_t i = moment + 1; i < moments.size(); ++i)
        if (moments[i].event || moments[i].phase != moments[i - 1].phase)
            return i;
    return moments.empty() ? 0 : moments.size() - 1;
}

std::size_t Demonstration::previousEvent(std::size_t moment) const
{
    for (std::size_t i = std::min(moment, moments.size()); i-- > 1;)
        if (moments[i].event || moments[i].phase != moments[i - 1].phase)
            return i;
    return 0;
}

Demonstration demonstrate(const Sketch& sketch, const Layout& layout, bool engine_runs)
{
    Job job(sketch, layout);
    if (!showFilling(job))
        return std::move(job.out);
    if (engine_runs) {
        job.filled_first = job.filled;
        showEngineRunning(job);
        showToppingUp(job);
    }
    showEnergised(job);
    return std::move(job.out);
}

} // namespace siphonwright::demonstration
