#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/paper/pages.h"
#include "app/sheet/sheet.h"

#include <QCoreApplication>
#include <QTextStream>

#include <optional>

namespace siphonwright::headless {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("Headless", text);
}

struct SheetCommand {
    QString file;
    QString output;
    sheet::Options options;
    bool parts = false;
};

/// Nothing, with a sentence on `err`, when an argument is wrong.
std::optional<SheetCommand> understood(const QStringList& arguments, QTextStream& err)
{
    SheetCommand command;
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString argument = arguments[i];
        if (const auto output = valueOf(arguments, i, QStringLiteral("--output"))) {
            command.output = *output;
        } else if (const auto name = valueOf(arguments, i, QStringLiteral("--paper"))) {
            const auto paper = sheet::paperByName(*name);
            if (!paper) {
                err << tr("\"%1\" is no paper; A4, A3, Letter or Tabloid is.").arg(*name) << '\n';
                return std::nullopt;
            }
            command.options.paper = *paper;
        } else if (argument == QLatin1String("--portrait")) {
            command.options.orientation = QPageLayout::Portrait;
        } else if (argument == QLatin1String("--colour")) {
            command.options.colour = true;
        } else if (argument == QLatin1String("--parts")) {
            command.parts = true;
        } else if (argument == QLatin1String("--student")) {
            command.options.student = true;
        } else if (argument.startsWith(QLatin1String("--")) || !command.file.isEmpty()) {
            err << tr("sheet does not know what to do with \"%1\".").arg(argument) << '\n';
            return std::nullopt;
        } else {
            command.file = argument;
        }
    }
    if (command.file.isEmpty() || command.output.isEmpty()) {
        err << tr("sheet needs a sketch file and --output OUT.pdf, .svg or .png.") << '\n';
        return std::nullopt;
    }
    return command;
}

} // namespace

int sheet(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<SheetCommand> command = understood(arguments, err);
    if (!command)
        return not_understood;
    Document document;
    QStringList problems = document.open(command->file);
    Analysis analysis;
    if (problems.isEmpty()) {
        ProofOptions with_bands;
        with_bands.bands = true;
        analysis = proved(document.sketch(), with_bands);
        problems =
            sheet::exportTo(command->output, document.sketch(), analysis, command->options,
                            command->parts ? paper::partsPages(document.sketch(), command->options.paper)
                                           : std::vector<sheet::FurtherPage>());
    }
    for (const QString& problem : problems)
        err << command->file << ": " << problem << '\n';
    if (!problems.isEmpty())
        return not_understood;
    const int scale = sheet::scaleDenominator(document.sketch(), analysis, command->options);
    out << tr("%1 written, scale 1:%2.").arg(command->output).arg(scale) << '\n';
    return analysis.stopped() ? job_stopped : nothing_stops;
}

} // namespace siphonwright::headless
