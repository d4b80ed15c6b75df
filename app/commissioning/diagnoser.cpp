#include "app/commissioning/diagnoser.h"

#include "app/document/vector_state.h"

#include <algorithm>
#include <utility>

namespace siphonwright::commissioning {
namespace {

/// The job as drawn over the hours that were read, and a little longer.
void addCurves(Outcome& out)
{
    const Evidence& evidence = out.judged.evidence;
    constexpr int points = 60;
    constexpr double least_s = 3600;
    constexpr double longest_s = 240 * 3600.0; // later readings are off the chart
    const double last_s = std::clamp(evidence.times_s.back() * 1.15, least_s, longest_s);
    CourseRequest request = evidence.request();
    request.times_s.clear();
    for (int i = 0; i <= points; ++i) {
        request.times_s.push_back(last_s * i / points);
        out.hours.push_back(last_s * i / points / 3600);
    }
    out.as_drawn = SimulatedJob(out.sketch, request).run({});
}

} // namespace

Diagnoser::Diagnoser(QObject* parent)
    : QObject(parent), thread_([this](const std::stop_token& end) { work(end); })
{}

Diagnoser::~Diagnoser()
{
    thread_.request_stop();
    const std::lock_guard lock(mutex_);
    running_.request_stop();
}

void Diagnoser::ask(Sketch sketch, Id heater)
{
    {
        const std::lock_guard lock(mutex_);
        waiting_ = Job{std::move(sketch), std::move(heater)};
        running_.request_stop();
    }
    wake_.notify_one();
}

std::optional<Outcome> Diagnoser::take()
{
    const std::lock_guard lock(mutex_);
    return std::exchange(answer_, std::nullopt);
}

void Diagnoser::answer(Outcome outcome)
{
    {
        const std::lock_guard lock(mutex_);
        answer_ = std::move(outcome);
    }
    Q_EMIT ready();
}

void Diagnoser::work(const std::stop_token& end)
{
    leaveVectorState();
    while (true) {
        Job job;
        std::stop_source running;
        {
            std::unique_lock lock(mutex_);
            if (!wake_.wait(lock, end, [this] { return waiting_.has_value(); }) || end.stop_requested())
                return;
            job = std::move(*waiting_);
            waiting_.reset();
            running_ = running;
        }
        Outcome out;
        out.sketch = std::move(job.sketch);
        out.heater = job.heater;
        out.judged = judgeReadings(out.sketch, out.heater);
        if (!out.judged.evidence.readings.empty())
            addCurves(out);
        if (running.stop_requested())
            continue;
        answer(out); // the verdicts need not wait for the faults
        out.diagnosis = diagnose(out.sketch, out.heater, running.get_token());
        out.diagnosed = true;
        if (!running.stop_requested())
            answer(std::move(out));
    }
}

} // namespace siphonwright::commissioning
