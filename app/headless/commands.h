#pragma once

#include "app/headless/arguments.h"
#include "app/headless/headless.h"

#include "core/analysis/analysis.h"

#include <optional>
#include <string>
#include <vector>

/// The commands behind the command line.
namespace siphonwright::headless {

/// One file that was to be checked: its analysis, or what is wrong with it.
struct Checked {
    QString file;
    QStringList problems; ///< empty: it was read
    Sketch sketch;
    Analysis analysis;
};

int check(const QStringList& arguments, QTextStream& out, QTextStream& err);
int diagnose(const QStringList& arguments, QTextStream& out, QTextStream& err);
int fill(const QStringList& arguments, QTextStream& out, QTextStream& err);
int parts(const QStringList& arguments, QTextStream& out, QTextStream& err);
int sheet(const QStringList& arguments, QTextStream& out, QTextStream& err);
int surveyForm(const QStringList& arguments, QTextStream& out, QTextStream& err);
int warmUp(const QStringList& arguments, QTextStream& out, QTextStream& err);

UnitSystem unitsOf(const Sketch& sketch);
/// One finding with its details, in words.
void writeFinding(const Finding& finding, UnitSystem units, int indent, QTextStream& out);
/// For people: findings in words, how many were not judged, how it runs, a closing line.
void writeWords(const Checked& file, QTextStream& out);
/// For people: pockets that close the bore, and the top-up.
void writeAir(const Checked& file, UnitSystem units, QTextStream& out);
/// For programs: always an array, one entry per file; what does not apply is null.
std::string jsonOf(const std::vector<Checked>& files);

} // namespace siphonwright::headless
