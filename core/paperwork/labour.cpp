#include "core/paperwork/labour.h"

#include "core/paperwork/parts.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace siphonwright {
namespace {

enum class Per { job, heater, port, hose, inline_part };

/// Hours in hundredths, all our own estimate.
struct UsualTask {
    std::string_view id;
    std::string_view name;
    Per per;
    std::int64_t hours;
    std::int64_t repeat;
};
constexpr std::array<UsualTask, 9> usual_tasks{{
    {"make-safe", "Make safe, drain and catch the coolant", Per::job, 100, 75},
    {"mount-heater", "Mount the heater on the frame", Per::heater, 125, 75},
    {"fit-ports", "Clean ports, fit adapters and hose ends", Per::port, 50, 35},
    {"fit-hoses", "Cut, route and clamp the hoses", Per::hose, 75, 50},
    {"fit-inline", "Fit valves and other in-line parts", Per::inline_part, 15, 10},
    {"electrical", "Run and connect the supply, by a licensed electrician", Per::heater, 150, 100},
    {"fill", "Flush, fill, purge and top up", Per::job, 125, 100},
    {"commission", "Energise, take readings, check for leaks", Per::job, 100, 75},
    {"hand-over", "Hand over with sheet and checklist", Per::job, 25, 10},
}};

std::size_t portsUsed(const Sketch& sketch)
{
    return static_cast<std::size_t>(
        std::count_if(sketch.ports.begin(), sketch.ports.end(), [&](const Port& port) {
            return std::any_of(sketch.hoses.begin(), sketch.hoses.end(), [&](const Shared<Hose>& hose) {
                return hose->from.port == port.id || hose->to.port == port.id;
            });
        }));
}

std::int64_t timesOf(const Sketch& sketch, Per per)
{
    std::size_t times = 0;
    switch (per) {
    case Per::job:
        return sketch.heaters.empty() && sketch.hoses.empty() ? 0 : 1;
    case Per::heater:
        times = sketch.heaters.size();
        break;
    case Per::port:
        times = portsUsed(sketch);
        break;
    case Per::hose:
        times = sketch.hoses.size();
        break;
    case Per::inline_part:
        for (const Shared<Hose>& hose : sketch.hoses)
            times += hose->parts.size();
        break;
    }
    return static_cast<std::int64_t>(times);
}

const UsualTask* usualTask(const std::string& id)
{
    const auto found = std::find_if(usual_tasks.begin(), usual_tasks.end(),
                                    [&](const UsualTask& task) { return task.id == id; });
    return found == usual_tasks.end() ? nullptr : &*found;
}

const LabourTask* entered(const Quote& quote, std::string_view id)
{
    const auto found = std::find_if(quote.labour.begin(), quote.labour.end(),
                                    [&](const LabourTask& task) { return task.id == id; });
    return found == quote.labour.end() ? nullptr : &*found;
}

JobTask asEntered(const LabourTask& task, std::string name)
{
    return {task.id, std::move(name), task.hours_hundredths, task.repeat_hundredths, !task.edited, false};
}

} // namespace

std::vector<JobTask> tasksOf(const Sketch& sketch)
{
    const Quote& quote = quoteOf(sketch);
    std::vector<JobTask> tasks;
    for (const UsualTask& usual : usual_tasks) {
        const std::int64_t times = timesOf(sketch, usual.per);
        const LabourTask* own_hours = entered(quote, usual.id);
        if (own_hours)
            tasks.push_back(asEntered(*own_hours, std::string(usual.name)));
        else if (times > 0)
            tasks.push_back({std::string(usual.id), std::string(usual.name), usual.hours * times,
                             usual.repeat * times, true, false});
    }
    for (const LabourTask& task : quote.labour) {
        if (usualTask(task.id))
            continue;
        tasks.push_back(asEntered(task, task.name));
        tasks.back().own = true;
    }
    return tasks;
}

bool setHours(Sketch& sketch, const std::string& task, std::int64_t hours_hundredths,
              std::int64_t repeat_hundredths)
{
    Quote quote = quoteOf(sketch);
    const auto is_it = [&](const LabourTask& other) { return other.id == task; };
    auto found = std::find_if(quote.labour.begin(), quote.labour.end(), is_it);
    if (found == quote.labour.end()) {
        if (!usualTask(task))
            return false;
        LabourTask fresh;
        fresh.id = task;
        found = quote.labour.insert(quote.labour.end(), std::move(fresh));
    }
    found->hours_hundredths = hours_hundredths;
    found->repeat_hundredths = repeat_hundredths;
    found->edited = true;
    sketch.quote = Shared<Quote>(std::move(quote));
    return true;
}

bool forgetHours(Sketch& sketch, const std::string& task)
{
    Quote quote = quoteOf(sketch);
    const std::size_t before = quote.labour.size();
    std::erase_if(quote.labour, [&](const LabourTask& other) { return other.id == task; });
    if (quote.labour.size() == before)
        return false;
    sketch.quote = Shared<Quote>(std::move(quote));
    return true;
}

std::string addOwnTask(Sketch& sketch, std::string name)
{
    Quote quote = quoteOf(sketch);
    LabourTask task;
    for (int i = 1; task.id.empty() || entered(quote, task.id); ++i)
        task.id = "own-" + std::to_string(i);
    task.name = std::move(name);
    task.edited = true;
    quote.labour.push_back(task);
    sketch.quote = Shared<Quote>(std::move(quote));
    return task.id;
}

} // namespace siphonwright
