#pragma once

#include "tests/sound_loop.h"

#include "core/checks/rules.h"
#include "core/sketch/sketch.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace siphonwright::test {

/// One side of one limit: spoil a sound loop (and, for exact figures, its resolved layout) and say what the
/// rule must find; nothing means that it passes.
struct Case {
    std::string rule;
    std::string name;
    std::optional<Severity> expected;
    std::function<void(Sketch&)> spoil;
    std::function<void(Layout&)> spoil_layout;

    Case(std::string of_rule, std::string of_name, std::optional<Severity> severity,
         std::function<void(Sketch&)> change, std::function<void(Layout&)> change_layout = {})
        : rule(std::move(of_rule)),
          name(std::move(of_name)),
          expected(severity),
          spoil(std::move(change)),
          spoil_layout(std::move(change_layout))
    {}
};

std::vector<Case> hoseCases();
std::vector<Case> placeCases();
std::vector<Case> circuitCases();
std::vector<Case> clearanceCases();
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
