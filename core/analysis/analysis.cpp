#include "core/analysis/analysis.h"

#include "core/checks/faults.h"
#include "core/checks/judged_hoses.h"
#include "core/layout/route.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace siphonwright {
namespace {

/// Single findings again, as they were before they were put under headings.
std::vector<Finding> apart(std::vector<Finding> faults)
{
    std::vector<Finding> out;
    for (Finding& fault : faults) {
        std::vector<Finding> details = std::move(fault.details);
        fault.details.clear();
        out.push_back(std::move(fault));
        std::move(details.begin(), details.end(), std::back_inserter(out));
    }
    return out;
}

/// Put a list behind another.
template <class T>
void append(std::vector<T>& to, std::vector<T> more)
{
    std::move(more.begin(), more.end(), std::back_inserter(to));
}

/// Judge what needs the warm-up, with bands and table as far as they are.
void judgeRunning(Proof& proof, const Sketch& sketch, const Analysis& level)
{
    Results results;
    results.running = &proof.running;
    results.filling = &proof.filling;
    results.warm_up = &proof.warm_up;
    results.by_bore = proof.by_bore.empty() ? nullptr : &proof.by_bore;
    results.bands = proof.bands.empty() ? nullptr : &proof.bands;
    Judgement judgement = judge(sketch, level.layout, results, RuleSet::proven);
    proof.found = std::move(judgement.findings);
    proof.not_judged = std::move(judgement.not_judged);
    proof.margins = std::move(judgement.margins);
    proof.unconfirmed = std::move(judgement.unconfirmed);
}

} // namespace

const Droop* Proof::sagOf(const Id& hose) const
{
    const auto one =
        std::find_if(sag.begin(), sag.end(), [&](const SagMargin& margin) { return margin.hose == hose; });
    return one == sag.end() ? nullptr : &one->droop;
}

bool Analysis::connected() const
{
    return std::none_of(findings.begin(), findings.end(),
                        [](const Finding& finding) { return finding.rule == "hose-not-connected"; });
}

bool Analysis::stopped() const
{
    return count(Severity::stop) > 0;
}

std::size_t Analysis::count(Severity severity) const
{
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(),
                      [&](const Finding& finding) { return finding.severity == severity; }));
}

Analysis analyse(const Sketch& sketch, const Analysis* previous, Grade grade)
{
    Analysis out;
    out.grade = grade;
    out.layout = resolve(sketch, plumbOf(sketch, grade), previous ? &previous->layout : nullptr);
    const Assumptions assumed(sketch);
    out.running = runSteady(sketch, out.layout, assumed, previous ? &previous->running : nullptr);
    Judgement judgement;
    Results results;
    const auto remembering = [&](const Layout& layout) {
        // A drawing that is judged once need not be remembered.
        if (!previous)
            return std::shared_ptr<JudgedHoses>();
        return std::make_shared<JudgedHoses>(sketch, layout, previous->judged.get());
    };
    if (grade == Grade{}) {
        results.running = &out.running;
        const std::shared_ptr<JudgedHoses> judged = remembering(out.layout);
        judgement = judge(sketch, out.layout, results, RuleSet::live, judged.get());
        out.judged = judged;
    } else {
        const Layout level = resolve(sketch, plumbOf(sketch), &out.layout);
        const Running on_level = runSteady(sketch, level, assumed, &out.running);
        results.running = &on_level;
        const std::shared_ptr<JudgedHoses> judged = remembering(level);
        judgement = judge(sketch, level, results, RuleSet::live, judged.get());
        out.judged = judged;
        append(judgement.findings, findingsOn(sketch, grade, level, &on_level));
    }
    out.findings = faultsOf(std::move(judgement.findings));
    out.not_judged = std::move(judgement.not_judged);
    out.margins = std::move(judgement.margins);
    out.unconfirmed = std::move(judgement.unconfirmed);
    return out;
}

std::optional<Proof> prove(const Sketch& sketch, const Analysis& level, const ProofOptions& options,
                           const std::stop_token& stop)
{
    Proof out;
    const auto done_so_far = [&] {
        judgeRunning(out, sketch, level);
        if (options.so_far && !stop.stop_requested())
            options.so_far(out);
    };
    const Assumptions assumed(sketch);
    LevelTables kept;
    out.running = level.running;
    out.filling = fillOf(sketch, level.layout, &out.running, assumed, &kept);
    passAir(out.running, sketch, level.layout, out.filling);
    out.bleeds = bleedCures(sketch, level.layout, out.filling, stop, &kept);
    out.filled_clean = hosesFilledClean(sketch, level.layout, level.findings, out.filling, stop, &kept);
    out.warm_up = runWarmUp(sketch, level.layout, out.running, assumed);
    done_so_far();
    out.on_grade = findingsOnEnvelope(sketch, level.layout, stop, &level.running, &kept);
    out.at_ends = runAtEnds(sketch, level.layout, level.running, assumed, stop, &kept);
    append(out.on_grade, warmingAtEnds(sketch, level.layout, out.at_ends, out.found));
    // Hoses that make no loop yet hold up no coolant, on any grade.
    if (level.connected())
        out.sound = soundGrades(sketch, level.layout, stop);
    for (const ResolvedHose& hose : level.layout.hoses) {
        if (stop.stop_requested())
            return std::nullopt;
        if (const std::optional<Droop> droop = sagMargin(*hose, level.layout.plumb))
            out.sag.push_back({hose.id(), *droop});
    }
    out.by_bore = byBore(sketch, stop);
    out.graded = true;
    const bool bands_follow = options.bands && out.warm_up.inputs;
    out.complete = !bands_follow;
    done_so_far();
    if (options.powers) {
        out.by_power = powerTable(sketch, level.layout, out.filling, assumed, stop);
        out.powers_in = !stop.stop_requested();
        done_so_far();
    }
    if (bands_follow) {
        out.bands = runningBands(sketch, level.layout, out.filling, stop);
        out.complete = true;
        done_so_far();
    }
    if (stop.stop_requested())
        return std::nullopt;
    return out;
}

Analysis proved(const Sketch& sketch, const ProofOptions& options)
{
    Analysis level = analyse(sketch);
    std::optional<Proof> proof = prove(sketch, level, options);
    return proof ? withProof(std::move(level), std::move(*proof)) : level;
}

Analysis withProof(Analysis level, Proof proof)
{
    std::vector<Finding> all = apart(std::move(level.findings));
    append(all, proof.found);
    append(all, proof.on_grade);
    outrank(all, proof.filled_clean);
    adviseBleeds(all, proof.bleeds);
    level.findings = faultsOf(std::move(all));
    // Where air stays, the flow past it is what there is.
    for (LoopRun& run : level.running.loops) {
        const LoopRun* past_air = proof.running.loopOf(run.heater);
        if (past_air && past_air->without_air)
            run = *past_air;
    }
    append(level.not_judged, proof.not_judged);
    append(level.margins, proof.margins);
    for (const Unconfirmed& fact : proof.unconfirmed)
        if (std::find(level.unconfirmed.begin(), level.unconfirmed.end(), fact) == level.unconfirmed.end())
            level.unconfirmed.push_back(fact);
    level.proof = std::move(proof);
    return level;
}

} // namespace siphonwright
