#include "core/running/by_grade.h"

namespace siphonwright {

std::vector<Grade> endsOfEnvelope(const Site& site)
{
    const double along = site.envelope_along_percent;
    const double across = site.envelope_across_percent;
    std::vector<Grade> out;
    for (const Grade grade : {Grade{-along, 0}, Grade{along, 0}, Grade{0, -across}, Grade{0, across}})
        if (grade != Grade{})
            out.push_back(grade);
    return out;
}

std::vector<GradeRun> runAtEnds(const Sketch& sketch, const Layout& level, const Running& on_level,
                                const Assumptions& assumed, const std::stop_token& stop, LevelTables* kept)
{
    WarmUpOptions options;
    options.sample_every_s = 0;
    std::vector<GradeRun> out;
    for (const Grade grade : endsOfEnvelope(sketch.site)) {
        if (stop.stop_requested())
            return {};
        const Layout layout = resolve(sketch, plumbOf(sketch, grade), &level);
        GradeRun run;
        run.grade = grade;
        run.running = runSteady(sketch, layout, assumed, &on_level);
        run.filling = fillOf(sketch, layout, &run.running, assumed, kept);
        passAir(run.running, sketch, layout, run.filling);
        run.warm_up = runWarmUp(sketch, layout, run.running, assumed, options);
        out.push_back(std::move(run));
    }
    return out;
}

} // namespace siphonwright
