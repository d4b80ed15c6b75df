#include "app/commissioning/diagnoser.h"

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

Diagnoser::Diagnoser(QObject* parent) : QObject(parent), worker_(&Diagnoser::work, [this] { Q_EMIT ready(); })
{}

void Diagnoser::work(Job job, const Worker<Job, Outcome>::Tell& tell, const std::stop_token& stop)
{
    Outcome out;
    out.sketch = std::move(job.sketch);
    out.heater = job.heater;
    out.judged = judgeReadings(out.sketch, out.heater);
    if (!out.judged.evidence.readings.empty())
        addCurves(out);
    if (stop.stop_requested())
        return;
    tell(out); // the verdicts need not wait for the faults
    out.diagnosis = diagnose(out.sketch, out.heater, stop);
    out.diagnosed = true;
    tell(std::move(out));
}

} // namespace siphonwright::commissioning
