#pragma once

#include "core/sketch/sketch.h"

#include <cstdint>
#include <string>
#include <vector>

namespace siphonwright {

/// A task of the job with its hours, usual or entered.
struct JobTask {
    std::string id;
    std::string name;
    std::int64_t hours_hundredths = 0;  ///< on the first vehicle
    std::int64_t repeat_hundredths = 0; ///< on every further one
    bool usual = true;                  ///< our own estimate, which nobody has looked at
    bool own = false;                   ///< the estimator's own task, not one of the usual
    friend bool operator==(const JobTask&, const JobTask&) = default;
};

/// The usual tasks of a drawn job in the order of the work, those without anything to do left out; hours that
/// were entered in their place; then the estimator's own tasks. Usual hours are our own estimate (no
/// published source): a figure for the job and one for each heater, port, hose or in-line part.
std::vector<JobTask> tasksOf(const Sketch& sketch);

/// Put hours in for a task, usual or own; false when there is no such task.
bool setHours(Sketch& sketch, const std::string& task, std::int64_t hours_hundredths,
              std::int64_t repeat_hundredths);
/// Back to the usual hours; an own task is removed.
bool forgetHours(Sketch& sketch, const std::string& task);
/// Returns its id.
std::string addOwnTask(Sketch& sketch, std::string name);

} // namespace siphonwright
