#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/analysis/margin_text.h"
#include "core/analysis/running_text.h"

#include <QTextStream>

#include <algorithm>
#include <optional>
#include <utility>

namespace siphonwright::headless {

namespace {

Checked checked(const QString& path, bool bands)
{
    Checked file;
    file.file = path;
    Document document;
    file.problems = document.open(path);
    if (file.problems.isEmpty()) {
        file.sketch = document.sketch();
        ProofOptions options;
        options.bands = bands;
        file.analysis = proved(file.sketch, options);
    }
    return file;
}

QString severityWord(Severity severity)
{
    switch (severity) {
    case Severity::stop:
        return tr("STOP");
    case Severity::caution:
        return tr("CAUTION");
    case Severity::advice:
        return tr("advice");
    }
    return {};
}

/// In which grades and with how much sag the job stays sound.
void writeMargins(const Checked& file, UnitSystem units, QTextStream& out)
{
    const auto line = [&](const Message& text) {
        out << QStringLiteral("  ") << inWords(text, units) << '\n';
    };
    line(textOf(file.analysis.proof->sound));
    for (const SagMargin& one : file.analysis.proof->sag)
        line(textOf(one, file.sketch));
}

/// How each loop runs, the warm-up, and their bands where there are any.
void writeRunning(const Checked& file, UnitSystem units, QTextStream& out)
{
    const auto line = [&](const Message& text) {
        out << QStringLiteral("  ") << inWords(text, units) << QStringLiteral(".\n");
    };
    const std::vector<LoopRun>& loops = file.analysis.running.loops;
    for (const LoopRun& run : loops)
        line(textOf(run, file.sketch));
    if (!loops.empty())
        line(textOf(file.analysis.proof->warm_up));
    for (const HeaterBands& bands : file.analysis.proof->bands)
        line(textOf(bands, file.sketch));
}

/// An exit code of 0 only says that nothing that was judged stops the job.
QString closing(const Analysis& analysis)
{
    if (analysis.stopped())
        return tr("The job is stopped.");
    if (analysis.not_judged.empty())
        return tr("Nothing stops the job.");
    return tr("Nothing that was judged stops the job.");
}

QString counted(std::size_t count, const QString& one, const QString& many)
{
    return count == 1 ? one : many.arg(count);
}

} // namespace

UnitSystem unitsOf(const Sketch& sketch)
{
    return sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
}

void writeFinding(const Finding& finding, UnitSystem units, int indent, QTextStream& out)
{
    const auto words = [&](double value, Unit unit) { return inWords(value, unit, units); };
    out << QString(indent, u' ') << QStringLiteral("%1 ").arg(severityWord(finding.severity), -8)
        << inWords(finding.text, units);
    if (finding.measured && finding.limit)
        out << tr(" [%1: measured %2, limit %3]")
                   .arg(QString::fromStdString(finding.rule), words(*finding.measured, finding.unit),
                        words(*finding.limit, finding.unit));
    else
        out << QStringLiteral(" [%1]").arg(QString::fromStdString(finding.rule));
    if (!finding.rests_on.empty())
        out << tr(" Hangs on %1.").arg(inWords(listOf(finding.rests_on)));
    out << '\n';
    for (const Finding& detail : finding.details)
        writeFinding(detail, units, indent + 4, out);
}

void writeWords(const Checked& file, QTextStream& out)
{
    const UnitSystem units = unitsOf(file.sketch);
    out << file.file << '\n';
    for (const Finding& finding : file.analysis.findings)
        writeFinding(finding, units, 2, out);
    for (const NotJudged& one : file.analysis.not_judged)
        out << tr("  not judged: %1 [%2]").arg(inWords(one.missing), QString::fromStdString(one.rule))
            << '\n';
    for (const LimitChange& change : file.sketch.limits)
        if (change.off)
            out << tr("  switched off: %1 (%2)")
                       .arg(QString::fromStdString(change.rule), QString::fromStdString(change.reason))
                << '\n';
    if (!file.analysis.unconfirmed.empty())
        out << tr("  not confirmed: %1").arg(inWords(listOf(file.analysis.unconfirmed))) << '\n';
    if (file.analysis.proof) {
        writeMargins(file, units, out);
        writeRunning(file, units, out);
        writeAir(file, units, out);
    }
    const Analysis& a = file.analysis;
    out << "  "
        << tr("%1, %2, %3, %4.")
               .arg(counted(a.count(Severity::stop), tr("1 stop"), tr("%1 stops")),
                    counted(a.count(Severity::caution), tr("1 caution"), tr("%1 cautions")),
                    counted(a.count(Severity::advice), tr("1 advice"), tr("%1 advices")),
                    tr("%1 not judged").arg(a.not_judged.size()))
        << ' ' << closing(a) << '\n';
}

namespace {
constexpr int most_files = 1'000'000;
}

int check(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments, {"check", {"--json", "--bands"}, {}, most_files}, err);
    if (!command)
        return not_understood;
    const bool json = command->has("--json");
    int code = nothing_stops;
    std::vector<Checked> files;
    for (const QString& path : command->files) {
        files.push_back(checked(path, command->has("--bands")));
        const Checked& file = files.back();
        for (const QString& problem : file.problems)
            err << path << ": " << problem << '\n';
        if (!file.problems.isEmpty())
            code = not_understood;
        else if (file.analysis.stopped())
            code = std::max<int>(code, job_stopped);
        if (!json && file.problems.isEmpty())
            writeWords(file, out);
    }
    if (json)
        out << QString::fromStdString(jsonOf(files)) << '\n';
    return code;
}

} // namespace siphonwright::headless
