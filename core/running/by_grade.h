#pragma once

#include "core/running/running.h"

#include <stop_token>
#include <vector>

namespace siphonwright {

/// The job with the vehicle at one end of the grades that it is judged over: filled there, started there.
struct GradeRun {
    Grade grade;
    Filling filling;
    Running running;      ///< steady circulation past the air that stays
    EngineWarmUp warm_up; ///< without its series
};

/// The ends of a sketch's envelope: nose-down, nose-up, left side up, right side up; those that are level are
/// left out.
std::vector<Grade> endsOfEnvelope(const Site& site);

/// At every end. Empty when stopped. `level` and `kept` (level_tables.h) only save time.
std::vector<GradeRun> runAtEnds(const Sketch& sketch, const Layout& level, const Running& on_level,
                                const Assumptions& assumed, const std::stop_token& stop = {},
                                LevelTables* kept = nullptr);

} // namespace siphonwright
