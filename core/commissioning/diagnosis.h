#pragma once

#include "core/commissioning/evidence.h"
#include "core/commissioning/faults_of.h"

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// Which fault explains the readings: each one is built into the drawing and the warm-up run on it.
///
/// Probability by Bayes' rule: a fault's prior weight (faultBook()) times its likelihood (logLikelihood()),
/// averaged over its cases, over the sum of all. It compares only the faults listed; where none of them gives
/// what was read, that is said.
namespace siphonwright {

/// One fault with what speaks for it.
struct Suspect {
    Fault fault;
    double prior = 0; ///< share of all
    double probability = 0;
    double log_likelihood = 0;
    Message why;   ///< the reading that speaks most for it, or against it
    Message check; ///< what makes sure
    Message fix;
    Course course; ///< of its likeliest case: the readings' times first, then 10 and 60 min after the last
};

/// Faults that the readings so far cannot tell apart, likeliest first.
struct SuspectGroup {
    std::vector<Suspect> members; ///< never empty
    double probability = 0;
};

/// What would best tell the likeliest suspect from the next likely one that a reading can tell from it.
struct NextReading {
    std::optional<Channel> channel; ///< nothing: no instrument tells them apart, the words say what does
    double wait_s = 0;              ///< after the last reading
    double if_first = 0;            ///< expected of the likeliest, in the instrument's unit
    double if_second = 0;
    Message words;
};

struct Diagnosis {
    std::string missing; ///< why there is none; empty when there is
    Evidence evidence;
    std::vector<SuspectGroup> groups; ///< likeliest first
    std::optional<NextReading> next;  ///< nothing: no other suspect is worth telling apart
    /// Not even the likeliest explains the temperatures read. The groups are then the nearest of those
    /// listed, without "nothing wrong", and their probabilities say nothing.
    bool nothing_fits = false;
    std::vector<std::string> not_simulated; ///< faults that could not be, with the reason

    const Suspect* best() const { return groups.empty() ? nullptr : &groups.front().members.front(); }
    /// What may be said of a group's probability: nothing where nothing fits.
    std::optional<double> shareOf(const SuspectGroup& group) const;
    /// Something has to be done: a limit is broken, nothing fits, or a fault is likelier than none.
    bool stops() const;
    /// Place of a fault's group in the list, from 0; nothing where it is in none.
    std::optional<std::size_t> placeOf(FaultKind kind) const;
};

/// Every fault of a drawing with what the instruments would read, case by case.
struct FaultCourses {
    std::string missing;
    std::vector<Fault> faults;
    std::vector<std::vector<Course>>
        courses; ///< by fault and case, at the readings' times, 10 and 60 min later
    std::vector<std::string> not_simulated;
};

/// The long part of a diagnosis: about a second, hanging on the readings' times alone. Missing when stopped.
FaultCourses coursesOf(const Sketch& sketch, const Evidence& evidence, const std::stop_token& stop = {});

/// The short part: weighs the faults by what was read. \param courses computed for the same times
Diagnosis weighed(const Evidence& evidence, const FaultCourses& courses);

/// Both: diagnose one heater. The same for one sketch every time. \param heater empty: the first
Diagnosis diagnose(const Sketch& sketch, const Id& heater = {}, const std::stop_token& stop = {});

} // namespace siphonwright
