#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/language/tr.h"
#include "app/paper/pages.h"
#include "app/sheet/sheet.h"

#include <QTextStream>

#include <optional>

namespace siphonwright::headless {

namespace {

/// How it is to be drawn; nothing, with a sentence on `err`, when an argument is wrong.
std::optional<sheet::Options> optionsOf(const Arguments& command, QTextStream& err)
{
    sheet::Options options;
    if (!command.value("--output")) {
        err << tr("sheet needs a sketch file and --output OUT.pdf, .svg or .png.") << '\n';
        return std::nullopt;
    }
    if (const auto name = command.value("--paper")) {
        const auto paper = sheet::paperByName(*name);
        if (!paper) {
            err << tr("\"%1\" is no paper; A4, A3, Letter or Tabloid is.").arg(*name) << '\n';
            return std::nullopt;
        }
        options.paper = *paper;
    }
    if (command.has("--portrait"))
        options.orientation = QPageLayout::Portrait;
    options.colour = command.has("--colour");
    options.third_angle = command.has("--third-angle");
    options.photo = command.has("--photo");
    options.student = command.has("--student");
    return options;
}

} // namespace

int sheet(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments,
                   {"sheet",
                    {"--portrait", "--colour", "--parts", "--photo", "--student", "--third-angle"},
                    {{"--output", QT_TRANSLATE_NOOP("siphonwright::headless", "OUT.pdf, .svg or .png")},
                     {"--paper", QT_TRANSLATE_NOOP("siphonwright::headless", "A4, A3, Letter or Tabloid")}}},
                   err);
    const std::optional<sheet::Options> options = command ? optionsOf(*command, err) : std::nullopt;
    const std::optional<Sketch> sketch = options ? opened(command->files[0], err) : std::nullopt;
    if (!sketch)
        return not_understood;
    const QString output = command->value("--output").value_or(QString());
    ProofOptions with_bands;
    with_bands.bands = true;
    const Analysis analysis = proved(*sketch, with_bands);
    const QStringList problems =
        sheet::exportTo(output, *sketch, analysis, *options,
                        command->has("--parts") ? paper::partsPages(*sketch, options->paper)
                                                : std::vector<sheet::FurtherPage>());
    for (const QString& problem : problems)
        err << command->files[0] << ": " << problem << '\n';
    if (!problems.isEmpty())
        return not_understood;
    const int scale = sheet::scaleDenominator(*sketch, analysis, *options);
    out << tr("%1 written, scale 1:%2.").arg(output).arg(scale) << '\n';
    return analysis.stopped() ? job_stopped : nothing_stops;
}

} // namespace siphonwright::headless
