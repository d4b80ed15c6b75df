#include "app/document/document.h"
#include "app/headless/commands.h"

#include <QCoreApplication>
#include <QTextStream>

#include <algorithm>

namespace siphonwright::headless {

namespace {

QString tr(const char* text, int count = -1)
{
    return QCoreApplication::translate("Headless", text, nullptr, count);
}

Checked checked(const QString& path)
{
    Checked file;
    file.file = path;
    Document document;
    file.problems = document.open(path);
    if (file.problems.isEmpty()) {
        file.sketch = document.sketch();
        file.analysis = document.analysis();
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

QString counted(std::size_t count, const QString& one, const QString& many)
{
    return count == 1 ? one : many.arg(count);
}

} // namespace

void writeWords(const Checked& file, QTextStream& out)
{
    const UnitSystem units = file.sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    const auto words = [&](double value, Unit unit) {
        return QString::fromStdString(format(value, unit, units));
    };
    out << file.file << '\n';
    for (const Finding& finding : file.analysis.findings) {
        out << QStringLiteral("  %1 ").arg(severityWord(finding.severity), -8)
            << QString::fromStdString(format(finding.text, units));
        if (finding.measured && finding.limit)
            out << tr(" [%1: measured %2, limit %3]")
                       .arg(QString::fromStdString(finding.rule), words(*finding.measured, finding.unit),
                            words(*finding.limit, finding.unit));
        else
            out << QStringLiteral(" [%1]").arg(QString::fromStdString(finding.rule));
        out << '\n';
    }
    for (const NotJudged& one : file.analysis.not_judged)
        out << tr("  not judged: %1 [%2]")
                   .arg(QString::fromStdString(one.missing), QString::fromStdString(one.rule))
            << '\n';
    const Analysis& a = file.analysis;
    out << "  "
        << tr("%1, %2, %3, %4.")
               .arg(counted(a.count(Severity::stop), tr("1 stop"), tr("%1 stops")),
                    counted(a.count(Severity::caution), tr("1 caution"), tr("%1 cautions")),
                    counted(a.count(Severity::advice), tr("1 advice"), tr("%1 advices")),
                    tr("%1 not judged").arg(a.not_judged.size()))
        << ' ' << (a.stopped() ? tr("The job is stopped.") : tr("Nothing stops the job.")) << '\n';
}

int check(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    bool json = false;
    bool options = true;
    QStringList paths;
    for (const QString& argument : arguments) {
        if (options && argument == QLatin1String("--")) {
            options = false;
        } else if (options && argument == QLatin1String("--json")) {
            json = true;
        } else if (options && argument.startsWith(QLatin1String("--"))) {
            err << tr("check does not know %1.").arg(argument) << '\n';
            return not_understood;
        } else {
            paths << argument;
        }
    }
    if (paths.isEmpty()) {
        err << tr("check needs at least one sketch file.") << '\n';
        return not_understood;
    }
    int code = nothing_stops;
    std::vector<Checked> files;
    for (const QString& path : paths) {
        files.push_back(checked(path));
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
