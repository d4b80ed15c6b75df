#pragma once

#include "app/sheet/plan.h"

#include "core/paperwork/parts.h"

#include <optional>
#include <vector>

/// What the sheet says in words: findings, what was not judged and why, parts, cautions.
namespace siphonwright::sheet {

struct Item {
    QString text;
    std::optional<Severity> severity; ///< with a balloon of this shape
    int number = 0;
    int blank_lines = 0; ///< to write on, under it
};

struct Section {
    QString heading;
    std::vector<Item> items;
    std::size_t at_least = 0; ///< items that are left out only when all else is down to its own
    int keeps = 0;            ///< what keeps more gives way later
};

/// What sits in a hose, in small letters: "valve".
QString partWord(ItemKind kind);
/// The pieces that a cut is parted into, from A to B: "70 mm, valve, 635 mm"; empty: it stays whole.
QString piecesWords(const HoseCut& cut, UnitSystem units);

Section findingsSection(const Sketch& sketch, const Analysis& analysis);
Section notJudgedSection(const Analysis& analysis);
/// What is left: grades, sag; what verdicts hang on and nobody has confirmed.
Section marginsSection(const Sketch& sketch, const Analysis& analysis);
/// How each heater's loop runs and warms the engine, with bands where there are any, and what was assumed.
Section resultsSection(const Sketch& sketch, const Analysis& analysis);
/// Assumed figures replaced for this drawing, with the reasons given.
Section assumptionsSection(const Sketch& sketch);
/// Rules switched off and limits changed for this drawing, with the reasons given.
Section choicesSection(const Sketch& sketch);
Section partsSection(const Sketch& sketch, const Analysis& analysis);
Section cautionsSection();
/// Electrical load, and what coolant it takes.
Section supplySection(const Sketch& sketch, const Analysis& analysis);
/// What is told on the sheets behind, or is not printed with this one.
Section behindSection(const Options& options);
/// The drawing's own notes: for a class, the complaint.
Section complaintSection(const Sketch& sketch);
/// What a class is asked, with lines to write on.
Section questionsSection();

} // namespace siphonwright::sheet
