#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/analysis/running_text.h"
#include "core/quantity/constants.h"
#include "core/running/warm_up_csv.h"

#include <QSaveFile>
#include <QTextStream>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace siphonwright::headless {

namespace {

/// A typed value within what a sketch may hold; nothing, with a sentence on `err`, when it is none.
std::optional<double> typed(const char* option, const QString& text, Unit unit, UnitSystem units,
                            double least, double most, QTextStream& err)
{
    const QString name = QString::fromLatin1(option);
    std::string problem;
    const std::optional<double> value = parse(text.toStdString(), unit, units, &problem);
    if (!value) {
        err << name << ": " << inWords(problem) << '\n';
        return std::nullopt;
    }
    if (!(*value >= least && *value <= most)) {
        err << tr("%1: %2 is not from %3 to %4.")
                   .arg(name, text, inWords(least, unit, units), inWords(most, unit, units))
            << '\n';
        return std::nullopt;
    }
    return value;
}

/// Let the command's figures take the place of the sketch's.
bool apply(const Arguments& command, Sketch& sketch, QTextStream& err)
{
    const UnitSystem units = unitsOf(sketch);
    if (const auto given = command.value("--hours")) {
        const auto hours = typed("--hours", *given, Unit::hour, units, 0.1, 240, err);
        if (!hours)
            return false;
        sketch.plan.hours = *hours;
    }
    if (const auto given = command.value("--ambient")) {
        const auto ambient = typed("--ambient", *given, Unit::degC, units, -100, 100, err);
        if (!ambient)
            return false;
        sketch.site.ambient_degC = {*ambient, Source::measured};
    }
    return true;
}

bool isOfRunning(const Finding& finding)
{
    const Rule* rule = ruleById(finding.rule);
    return rule && rule->needs != Needs::layout;
}

/// What was found about how the job runs, whatever it was put under.
std::vector<Finding> runningFindings(const Analysis& analysis)
{
    std::vector<Finding> out;
    for (const Finding& finding : analysis.findings) {
        if (isOfRunning(finding)) {
            out.push_back(finding);
            continue;
        }
        std::copy_if(finding.details.begin(), finding.details.end(), std::back_inserter(out), isOfRunning);
    }
    return out;
}

class WarmUpWords {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::headless)

public:
    WarmUpWords(const Sketch& sketch, const Analysis& analysis, QTextStream& out)
        : sketch_(sketch),
          analysis_(analysis),
          warm_(analysis.proof->warm_up),
          units_(unitsOf(sketch)),
          out_(out)
    {}

    void write() const
    {
        for (const LoopRun& run : analysis_.running.loops)
            line(inWords(textOf(run, sketch_), units_));
        line(inWords(textOf(warm_), units_));
        for (std::size_t i = 0; i < warm_.result.loops.size() && i < warm_.heaters.size(); ++i)
            if (const Heater* heater = sketch_.heater(warm_.heaters[i]))
                writeOutcome(warm_.result.loops[i], *heater);
        if (const std::optional<Message> on_grades = textOf(analysis_.proof->at_ends))
            line(inWords(*on_grades, units_));
        for (const Finding& finding : runningFindings(analysis_))
            writeFinding(finding, units_, 2, out_);
        writeMissing();
        writeAssumed();
    }

private:
    void line(const QString& text) const { out_ << "  " << text << ".\n"; }
    QString words(double value, Unit unit) const { return inWords(value, unit, units_); }

    void writeOutcome(const LoopOutcome& outcome, const Heater& heater) const
    {
        line(inWords(textOf(outcome, heater), units_));
        if (outcome.return_warm_s)
            out_ << tr("    the return is warm to the hand at the engine after %1 min\n")
                        .arg(words(std::round(*outcome.return_warm_s / s_per_min), Unit::none));
        out_ << tr("    an infrared thermometer reads %1 on the return hose there at the end\n")
                    .arg(words(outcome.at_end.return_surface_degC, Unit::degC));
        if (outcome.tripped_s)
            out_ << tr("    the cut-out trips after %1 min\n")
                        .arg(words(std::round(*outcome.tripped_s / s_per_min), Unit::none));
        if (outcome.on_the_edge)
            out_ << tr("    on the edge: air withstands nearly all that drives, and small causes decide\n");
    }

    void writeMissing() const
    {
        for (const NotJudged& one : analysis_.not_judged) {
            const Rule* rule = ruleById(one.rule);
            if (rule && rule->needs != Needs::layout)
                out_
                    << tr("  not judged: %1 [%2]").arg(inWords(one.missing), QString::fromStdString(one.rule))
                    << '\n';
        }
    }

    /// Every assumed figure that the results hang on, those that the sketch has changed with their reasons.
    void writeAssumed() const
    {
        if (!warm_.inputs)
            return;
        const Assumptions assumed(sketch_);
        for (const Assumed which : assumptionsIn(sketch_)) {
            const Assumption& row = assumptionOf(which);
            const std::string text = std::string(row.title) + ": " + valueText(row, assumed[which], units_);
            out_ << tr("  assumed: %1").arg(QString::fromStdString(text));
            if (assumed.changed(which))
                out_ << tr(" (changed; usually %1)")
                            .arg(QString::fromStdString(valueText(row, row.value, units_)));
            out_ << '\n';
        }
    }

    const Sketch& sketch_;
    const Analysis& analysis_;
    const EngineWarmUp& warm_;
    UnitSystem units_;
    QTextStream& out_;
};

/// The reason, where the series could not be written.
QString writeCsv(const QString& path, const EngineWarmUp& warm)
{
    if (warm.result.series.empty())
        return tr("there is no warm-up to write: %1").arg(inWords(textOf(warm), UnitSystem::metric));
    QSaveFile file(path);
    const std::string text = csvOf(warm);
    if (!file.open(QIODevice::WriteOnly) ||
        file.write(text.data(), qint64(text.size())) != qint64(text.size()) || !file.commit())
        return tr("%1 could not be written: %2").arg(path, file.errorString());
    return {};
}

} // namespace

int warmUp(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments,
                   {"warm-up",
                    {},
                    {{"--hours", QT_TRANSLATE_NOOP("siphonwright::headless", "a time in hours")},
                     {"--ambient", QT_TRANSLATE_NOOP("siphonwright::headless", "a temperature")},
                     {"--csv", QT_TRANSLATE_NOOP("siphonwright::headless", "the name of a file to write")}}},
                   err);
    std::optional<Sketch> read = command ? opened(command->files[0], err) : std::nullopt;
    if (!read || !apply(*command, *read, err))
        return not_understood;
    const QString& name = command->files[0];
    const Sketch& sketch = *read;
    const std::optional<QString> csv = command->value("--csv");
    ProofOptions options;
    options.bands = false;
    const Analysis analysis = proved(sketch, options);
    if (csv) {
        const QString problem = writeCsv(*csv, analysis.proof->warm_up);
        if (!problem.isEmpty()) {
            err << name << ": " << problem << '\n';
            return not_understood;
        }
    }
    out << name << '\n';
    WarmUpWords(sketch, analysis, out).write();
    if (csv)
        out << tr("  %1 written.").arg(*csv) << '\n';
    const std::vector<Finding> found = runningFindings(analysis);
    const bool stops = std::any_of(found.begin(), found.end(),
                                   [](const Finding& finding) { return finding.severity == Severity::stop; });
    return stops ? job_stopped : nothing_stops;
}

} // namespace siphonwright::headless
