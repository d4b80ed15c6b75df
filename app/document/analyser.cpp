#include "app/document/analyser.h"

#include "core/analysis/air_verdicts.h"
#include "core/running/assumptions.h"

#include <algorithm>

namespace siphonwright {

std::optional<Analysis> shownOf(const Sketch& sketch, const Analysis& level,
                                const std::optional<Proof>& proof, bool proven, Grade grade,
                                LevelTables& tables)
{
    if (grade != Grade{})
        return analyse(sketch, &level, grade);
    if (!proof)
        return std::nullopt;
    Proof own = *proof;
    // Where air stays is seen while a hose is dragged: some hundred microseconds.
    if (!proven) {
        own.filling = fillOf(sketch, level.layout, &level.running, Assumptions(sketch), &tables);
        own.running = level.running;
        passAir(own.running, sketch, level.layout, own.filling);
    }
    std::erase_if(own.on_grade, [&](const Finding& finding) {
        return (!finding.hose.empty() && !sketch.hose(finding.hose)) ||
               (finding.part.kind == PartKind::heater && !sketch.heater(finding.part.id));
    });
    return withProof(level, std::move(own));
}

bool isLarge(const Sketch& sketch)
{
    constexpr std::size_t many = 20'000;
    std::size_t points = 0;
    for (const Shared<Hose>& hose : sketch.hoses)
        points += hose->points.size();
    return points >= many;
}

bool sameParts(const Sketch& a, const Sketch& b)
{
    const auto same_hose = [](const Shared<Hose>& one, const Shared<Hose>& other) {
        return one.same(other) ||
               (one->id == other->id && one->points.size() == other->points.size() &&
                one->parts.size() == other->parts.size() && one->clips_mm.size() == other->clips_mm.size());
    };
    return a.ports.size() == b.ports.size() && a.heaters.size() == b.heaters.size() &&
           a.areas.size() == b.areas.size() &&
           std::equal(a.hoses.begin(), a.hoses.end(), b.hoses.begin(), b.hoses.end(), same_hose);
}

Analyser::Analyser(QObject* parent)
    : QObject(parent),
      worker_(
          [tables = LevelTables()](Job job, const Worker<Job, Answer>::Tell& tell,
                                   const std::stop_token&) mutable {
              job.done_with.clear();
              Answer answer;
              answer.revision = job.revision;
              answer.level = analyse(job.sketch, &job.before);
              answer.shown = shownOf(job.sketch, answer.level, *job.proof, job.proven, job.grade, tables);
              answer.proof = std::move(job.proof);
              answer.grade = job.grade;
              tell(std::move(answer));
          },
          [this] { Q_EMIT ready(); })
{}

void Analyser::ask(Job job)
{
    asked_ = true;
    worker_.ask(std::move(job));
}

std::optional<Analyser::Answer> Analyser::take()
{
    std::optional<Answer> answer = worker_.take();
    if (answer)
        asked_ = false;
    return answer;
}

} // namespace siphonwright
