#include "core/commissioning/diagnosis.h"

#include "core/commissioning/likelihood.h"
#include "core/commissioning/next_reading.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

Message aboutPart(std::string_view pattern, const Fault& fault)
{
    Message out{std::string(pattern), {}, {}};
    if (pattern.find("{a}") != std::string_view::npos)
        out.words = fault.title.words;
    return out;
}

/// ln of (exp(a) + exp(b)), where either may be very small.
double logSum(double a, double b)
{
    const double larger = std::max(a, b);
    return larger + std::log(std::exp(a - larger) + std::exp(b - larger));
}

/// Likelihood over all cases; keeps the likeliest one's course.
void weigh(Suspect& suspect, const std::vector<Course>& courses, const Evidence& evidence)
{
    double weights = 0;
    for (const FaultCase& one : suspect.fault.cases)
        weights += one.weight;
    double best = 0;
    std::size_t best_case = 0;
    for (std::size_t i = 0; i < courses.size(); ++i) {
        const double by_case =
            std::log(suspect.fault.cases[i].weight / weights) + logLikelihood(evidence, courses[i]);
        suspect.log_likelihood = i > 0 ? logSum(suspect.log_likelihood, by_case) : by_case;
        if (i == 0 || by_case > best) {
            best = by_case;
            best_case = i;
        }
    }
    suspect.course = courses[best_case];
}

/// Bayes' rule over all suspects.
void shareOut(std::vector<Suspect>& suspects)
{
    double priors = 0;
    for (const Suspect& one : suspects)
        priors += one.fault.prior;
    double sum = 0;
    bool any = false;
    for (Suspect& one : suspects) {
        one.prior = one.fault.prior / priors;
        const double joint = std::log(one.prior) + one.log_likelihood;
        sum = any ? logSum(sum, joint) : joint;
        any = true;
    }
    for (Suspect& one : suspects)
        one.probability = std::exp(std::log(one.prior) + one.log_likelihood - sum);
    std::stable_sort(suspects.begin(), suspects.end(),
                     [](const Suspect& a, const Suspect& b) { return a.probability > b.probability; });
}

/// Each suspect joins the first group whose likeliest member the readings cannot tell it from.
std::vector<SuspectGroup> grouped(std::vector<Suspect> suspects, const Evidence& evidence)
{
    std::vector<SuspectGroup> out;
    for (Suspect& one : suspects) {
        const auto same = std::find_if(out.begin(), out.end(), [&](const SuspectGroup& group) {
            return separation(evidence, group.members.front().course, one.course) < 1;
        });
        if (same == out.end()) {
            out.emplace_back();
            out.back().members.push_back(std::move(one));
        } else {
            same->members.push_back(std::move(one));
        }
    }
    for (SuspectGroup& group : out)
        for (const Suspect& one : group.members)
            group.probability += one.probability;
    std::stable_sort(out.begin(), out.end(), [](const SuspectGroup& a, const SuspectGroup& b) {
        return a.probability > b.probability;
    });
    return out;
}

CourseRequest requestOf(const Evidence& evidence)
{
    CourseRequest request = evidence.request();
    for (const double wait_s : next_waits_s)
        request.times_s.push_back(evidence.times_s.back() + wait_s);
    return request;
}

void explain(std::vector<Suspect>& suspects, const Evidence& evidence)
{
    const auto drawn = std::find_if(suspects.begin(), suspects.end(),
                                    [](const Suspect& one) { return one.fault.kind == FaultKind::none; });
    for (Suspect& one : suspects) {
        const FaultRow& row = faultRow(one.fault.kind);
        one.check = aboutPart(row.check, one.fault);
        one.fix = aboutPart(row.fix, one.fault);
        if (drawn != suspects.end())
            one.why = whyOf(one.fault, one.course, drawn->course, evidence);
    }
}

/// The likeliest other suspect that some reading would tell from the best one; where there is none, what
/// makes sure of the best.
void findNext(Diagnosis& out)
{
    constexpr double worth_telling = 0.02; // own choice
    const Suspect& first = out.groups.front().members.front();
    std::vector<const Suspect*> others;
    for (const SuspectGroup& group : out.groups)
        for (const Suspect& one : group.members)
            if (&one != &first && one.probability >= worth_telling)
                others.push_back(&one);
    std::stable_sort(others.begin(), others.end(),
                     [](const Suspect* a, const Suspect* b) { return a->probability > b->probability; });
    for (const Suspect* other : others) {
        const NextReading next = nextReading(first, *other, out.evidence.readings.size());
        if (!out.next)
            out.next = next;
        if (next.channel) {
            out.next = next;
            return;
        }
    }
}

/// Where nothing fits, "nothing wrong" is no answer, and what tells two that do not fit apart is no help.
void giveUp(Diagnosis& out)
{
    for (SuspectGroup& group : out.groups)
        std::erase_if(group.members, [](const Suspect& one) { return one.fault.kind == FaultKind::none; });
    std::erase_if(out.groups, [](const SuspectGroup& group) { return group.members.empty(); });
    out.next.emplace();
    out.next->words = {
        "Take the same readings again, then compare the drawing with the job: hoses, ports, valves, "
        "voltage.",
        {},
        {}};
}

/// A job that runs as drawn and passes a limit is drawn wrong: there is something to do.
void blameDrawing(std::vector<Suspect>& suspects)
{
    for (Suspect& one : suspects) {
        if (one.fault.kind != FaultKind::none)
            continue;
        one.fault.title = {"It runs as drawn, and as drawn it passes a limit", {}, {}};
        one.check = {"Read what the findings say of this drawing.", {}, {}};
        one.fix = {
            "Heater off. Mend the layout, and prove it on the drawing before it is turned on again.", {}, {}};
    }
}

} // namespace

std::optional<double> Diagnosis::shareOf(const SuspectGroup& group) const
{
    return nothing_fits ? std::nullopt : std::optional(group.probability);
}

bool Diagnosis::stops() const
{
    const Suspect* likeliest = best();
    return !evidence.broken_limits.empty() || nothing_fits ||
           (likeliest && likeliest->fault.kind != FaultKind::none);
}

std::optional<std::size_t> Diagnosis::placeOf(FaultKind kind) const
{
    for (std::size_t i = 0; i < groups.size(); ++i)
        for (const Suspect& one : groups[i].members)
            if (one.fault.kind == kind)
                return i;
    return std::nullopt;
}

FaultCourses coursesOf(const Sketch& sketch, const Evidence& evidence, const std::stop_token& stop)
{
    FaultCourses out;
    const SimulatedJob job(sketch, requestOf(evidence));
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Filling filling = fillOf(sketch, layout, nullptr, Assumptions(sketch));
    for (Fault& fault : faultsOf(sketch, layout, filling, evidence.heater)) {
        std::vector<Course> courses;
        std::string lacking;
        for (const FaultCase& one : fault.cases) {
            if (stop.stop_requested()) {
                out.missing = "it was stopped";
                return out;
            }
            courses.push_back(job.run(one.change));
            if (lacking.empty())
                lacking = courses.back().missing;
        }
        if (!lacking.empty() && fault.kind == FaultKind::none) {
            out.missing = lacking; // what the drawing lacks, every fault lacks too
            return out;
        }
        if (lacking.empty()) {
            out.faults.push_back(std::move(fault));
            out.courses.push_back(std::move(courses));
        } else {
            out.not_simulated.push_back(fault.id + ": " + lacking);
        }
    }
    if (out.faults.empty())
        out.missing = "the loop of this heater is not closed";
    return out;
}

Diagnosis weighed(const Evidence& evidence, const FaultCourses& courses)
{
    Diagnosis out;
    out.evidence = evidence;
    out.missing = evidence.missing.empty() ? courses.missing : evidence.missing;
    out.not_simulated = courses.not_simulated;
    if (!out.missing.empty())
        return out;
    std::vector<Suspect> suspects;
    for (std::size_t i = 0; i < courses.faults.size(); ++i) {
        Suspect suspect;
        suspect.fault = courses.faults[i];
        weigh(suspect, courses.courses[i], evidence);
        suspects.push_back(std::move(suspect));
    }
    shareOut(suspects);
    explain(suspects, evidence);
    if (!evidence.broken_limits.empty())
        blameDrawing(suspects);
    constexpr double fits_up_to = 6; // mean square of 2.4 standard deviations: own choice
    out.nothing_fits = misfit(evidence, suspects.front().course) > fits_up_to;
    out.groups = grouped(std::move(suspects), evidence);
    if (out.nothing_fits)
        giveUp(out);
    else
        findNext(out);
    return out;
}

Diagnosis diagnose(const Sketch& sketch, const Id& heater, const std::stop_token& stop)
{
    const Evidence evidence = evidenceOf(sketch, heater);
    if (evidence.missing.empty())
        return weighed(evidence, coursesOf(sketch, evidence, stop));
    Diagnosis out;
    out.evidence = evidence;
    out.missing = evidence.missing;
    return out;
}

} // namespace siphonwright
