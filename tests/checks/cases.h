#pragma once

#include "tests/sound_loop.h"

#include "core/checks/rules.h"
#include "core/running/by_bore.h"
#include "core/running/running.h"
#include "core/running/running_bands.h"
#include "core/sketch/sketch.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace siphonwright::test {

/// How the sound loop runs, for cases to spoil. Bands and table are empty until a case fills them.
struct CaseResults {
    Running running;
    EngineWarmUp warm_up;
    std::vector<HeaterBands> bands;
    std::vector<BoreRow> by_bore;

    Circulation& flow() { return running.loops.at(0).circulation; }
    LoopOutcome& outcome() { return warm_up.result.loops.at(0); }
};

/// One side of one limit: spoil a sound loop (and, for exact figures, its resolved layout) and say what the
/// rule must find; nothing means that it passes.
struct Case {
    std::string rule;
    std::string name;
    std::optional<Severity> expected;
    std::function<void(Sketch&)> spoil;
    std::function<void(Layout&)> spoil_layout;
    std::function<void(CaseResults&)> spoil_results;

    Case(std::string of_rule, std::string of_name, std::optional<Severity> severity,
         std::function<void(Sketch&)> change, std::function<void(Layout&)> change_layout = {})
        : rule(std::move(of_rule)),
          name(std::move(of_name)),
          expected(severity),
          spoil(std::move(change)),
          spoil_layout(std::move(change_layout))
    {}

    /// A case whose results are spoiled, not its sketch.
    static Case ofResults(std::string of_rule, std::string of_name, std::optional<Severity> severity,
                          std::function<void(CaseResults&)> change)
    {
        Case out(std::move(of_rule), std::move(of_name), severity, {});
        out.spoil_results = std::move(change);
        return out;
    }
};

std::vector<Case> hoseCases();
std::vector<Case> placeCases();
std::vector<Case> circuitCases();
std::vector<Case> clearanceCases();
std::vector<Case> runningCases();
std::vector<Case> warmingCases();
std::vector<Case> allCases();

struct Judged {
    Layout layout;
    Judgement judgement;
};
Judged judgeCase(const Case& one);

constexpr std::optional<Severity> passes = std::nullopt;
constexpr std::optional<Severity> advice = Severity::advice;
constexpr std::optional<Severity> caution = Severity::caution;
constexpr std::optional<Severity> stop = Severity::stop;

} // namespace siphonwright::test
