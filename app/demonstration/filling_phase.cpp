#include "app/demonstration/phases.h"

#include "core/running/fill_words.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

namespace {

constexpr double hose_moments = 180; ///< that the filling of hoses and chambers is shown in
constexpr int most_between = 60;
constexpr double jacket_moments = 40; ///< likewise of the jacket

double hosesOf(const FillFrame& frame)
{
    double sum_ml = 0;
    for (std::size_t i = 1; i < frame.cells.size(); ++i)
        sum_ml += frame.cells[i].liquid_ml;
    return sum_ml;
}

/// Puts frames and events in order, leaving out frames that differ too little to be seen.
class Telling {
public:
    /// What had happened `before` is not told.
    Telling(Job& job, const FillResult& filled, std::size_t before)
        : job_(job), filled_(filled), lines_(linesOf(filled, job.plan))
    {
        while (next_ < lines_.size() && (lines_[next_].order < before || !lines_[next_].begins))
            ++next_;
        const double hoses_ml = filled.end.network->hoses_and_chambers_ml;
        hose_step_ml_ = hoses_ml / hose_moments;
        jacket_step_ml_ = std::max(1.0, filled.poured_ml - filled.coolant_ml) / jacket_moments;
    }

    void frame(const FillFrame& frame, bool last)
    {
        const bool changed =
            !kept_ || std::abs(hosesOf(frame) - hosesOf(*kept_)) >= hose_step_ml_ ||
            std::abs(frame.cells[0].liquid_ml - kept_->cells[0].liquid_ml) >= jacket_step_ml_;
        if (!changed && !last && !happened(frame))
            return;
        if (kept_)
            goBetween(*kept_, frame);
        kept_ = std::make_shared<const FillFrame>(frame);
        bool told = false;
        while (happened(frame)) {
            const FillLine& line = lines_[next_++];
            if (!line.begins || std::find(said_.begin(), said_.end(), line.text) != said_.end())
                continue;
            said_.push_back(line.text);
            job_.add(PhaseKind::fill, kept_, line.text);
            told = true;
        }
        if (!told)
            job_.add(PhaseKind::fill, kept_);
    }

private:
    /// Where much happens at one stroke, as when a valve opens: in equal parts of what moves, so that as much
    /// is there as before and after.
    void goBetween(const FillFrame& from, const FillFrame& to)
    {
        double moved_ml = 0;
        for (std::size_t i = 1; i < from.cells.size(); ++i)
            moved_ml += std::abs(to.cells[i].liquid_ml - from.cells[i].liquid_ml);
        const int parts = std::min(most_between, int(moved_ml / hose_step_ml_));
        const std::vector<Cell>& cells = filled_.end.network->cells;
        for (int k = 1; k < parts; ++k) {
            const double share = double(k) / parts;
            FillFrame between = from;
            between.poured_ml += (to.poured_ml - from.poured_ml) * share;
            for (std::size_t i = 0; i < from.cells.size(); ++i) {
                CellView& cell = between.cells[i];
                cell.liquid_ml += (to.cells[i].liquid_ml - from.cells[i].liquid_ml) * share;
                cell.level_mm = cells[i].volume.levelOf(cell.liquid_ml);
                if (i > 0)
                    cell.gas_ml = std::max(0.0, cells[i].capacity_ml - cell.liquid_ml);
            }
            between.jacket_level_mm = between.cells[0].level_mm;
            job_.add(PhaseKind::fill, std::make_shared<const FillFrame>(std::move(between)));
        }
    }

    bool happened(const FillFrame& frame) const
    {
        return next_ < lines_.size() && lines_[next_].order < frame.events;
    }

    Job& job_;
    const FillResult& filled_;
    std::vector<FillLine> lines_;
    std::shared_ptr<const FillFrame> kept_;
    std::size_t next_ = 0;
    std::vector<Message> said_; ///< once is enough
    double hose_step_ml_ = 1;
    double jacket_step_ml_ = 1;
};

Message ending(const Job& job, const FillResult& filled)
{
    double air_ml = 0;
    const AirPocket* largest = nullptr;
    const std::vector<AirPocket> pockets = airPockets(filled.end);
    for (const AirPocket& pocket : pockets) {
        air_ml += pocket.gas_ml;
        if (!largest || pocket.gas_ml > largest->gas_ml)
            largest = &pocket;
    }
    constexpr double a_bucket_ml = 3000;
    const Quantity coolant = filled.coolant_ml < a_bucket_ml
                                 ? Quantity{filled.coolant_ml, Unit::ml}
                                 : Quantity{filled.coolant_ml / 1000, Unit::litre};
    constexpr double a_spoon_ml = 1;
    if (!largest || air_ml < a_spoon_ml)
        return {"Done: {0} of coolant in hoses and heater, and no air stays.", {coolant}, {}};
    return {"Done: {0} of coolant in hoses and heater. {1} of air stays, most of it in {a}.",
            {coolant, {air_ml, Unit::ml}},
            {job.hoseName(largest->loop, largest->part)}};
}

/// With the jacket full and the valves shut the interesting part has not begun: that much is taken as done.
std::size_t firstShown(const FillResult& filled)
{
    const auto opened = std::find_if(filled.events.begin(), filled.events.end(), [](const FillEvent& event) {
        return event.kind == FillEventKind::valve_opened;
    });
    std::size_t first = 0;
    while (opened != filled.events.end() && first + 1 < filled.frames.size() &&
           filled.frames[first + 1].events <= opened->order)
        ++first;
    return first;
}

} // namespace

bool showFilling(Job& job)
{
    FillPlanOf plan = fillRequestOf(job.sketch, job.layout, job.assumed);
    job.plan = plan;
    job.loops = plan.loops;
    job.out.missing = plan.missing;
    if (!plan.request)
        return false;
    FillResult filled = fillAsPlanned(*plan.request);
    if (filled.status != FillStatus::filled && filled.status != FillStatus::level_not_reached) {
        job.out.missing = "filling could not be computed: " + filled.message;
        return false;
    }
    constexpr double least_frames = 60;
    constexpr double most_frames = 2500;
    const double hoses_ml = std::max(1.0, filled.end.network->hoses_and_chambers_ml);
    plan.request->frames =
        std::size_t(std::clamp(filled.poured_ml / hoses_ml * hose_moments, least_frames, most_frames));
    if (filled.status == FillStatus::filled)
        filled = fillAsPlanned(*plan.request);
    job.filled = filled.end;
    job.level_mm = filled.jacket_level_mm;
    if (filled.frames.empty())
        filled.frames.push_back(frameOf(*filled.end.network, filled.end.state));
    // The end of the run comes after the last frame at a whole multiple.
    filled.frames.back().events = filled.events.empty() ? 0 : filled.events.back().order + 1;
    job.begin(PhaseKind::fill, shown_moment_s);
    const std::size_t first = firstShown(filled);
    job.add(PhaseKind::fill, std::make_shared<const FillFrame>(filled.frames[first]), beginningOf(plan));
    Telling telling(job, filled, filled.frames[first].events);
    for (std::size_t i = first; i < filled.frames.size(); ++i)
        telling.frame(filled.frames[i], i + 1 == filled.frames.size());
    job.add(PhaseKind::fill, std::make_shared<const FillFrame>(filled.frames.back()), ending(job, filled));
    return true;
}

} // namespace siphonwright::demonstration
