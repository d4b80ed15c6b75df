#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/language/tr.h"
#include "app/paper/sheet_set.h"
#include "app/sheet/sheet.h"

#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QTextStream>

#include <algorithm>
#include <optional>
#include <vector>

namespace siphonwright::headless {

namespace {

/// How it is to be drawn; nothing, with a sentence on `err`, when an argument is wrong.
std::optional<sheet::Options> optionsOf(const Arguments& command, QTextStream& err)
{
    sheet::Options options;
    if (!command.value("--output") && !command.value("--output-dir")) {
        err << tr("sheet needs a sketch file and --output OUT.pdf, .svg or .png.") << '\n';
        return std::nullopt;
    }
    if (command.files.size() > 1 && !command.value("--output-dir")) {
        err << tr("Several sketches need --output-dir DIR.") << '\n';
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

/// Figures typed behind options; false, with a sentence on `err`, when one is none.
bool takeFigures(const Arguments& command, sheet::Options& options, QTextStream& err)
{
    if (const auto typed = command.value("--scale")) {
        bool is_number = false;
        const int n = typed->section(QLatin1Char(':'), -1).toInt(&is_number);
        constexpr int smallest = 10000;
        if (!is_number || n < 1 || n > smallest) {
            err << tr("\"%1\" is no scale; 1:10 is.").arg(*typed) << '\n';
            return false;
        }
        options.scale = n;
    }
    if (const auto typed = command.value("--dpi")) {
        bool is_number = false;
        options.png_dpi = typed->toDouble(&is_number);
        if (!is_number || !(options.png_dpi >= 20 && options.png_dpi <= 1200)) {
            err << tr("\"%1\" is no resolution; 20 to 1200 dots per inch are.").arg(*typed) << '\n';
            return false;
        }
    }
    if (const auto path = command.value("--logo")) {
        options.logo = QImage(*path);
        if (options.logo.isNull()) {
            err << tr("%1 could not be read as a picture.").arg(*path) << '\n';
            return false;
        }
    }
    return true;
}

std::optional<paper::SheetSet> setOf(const Arguments& command, QTextStream& err)
{
    paper::SheetSet set;
    if (const auto names = command.value("--pages")) {
        const auto chosen = paper::setByNames(*names);
        if (!chosen) {
            err << tr("\"%1\": pages are drawing, fitting, checklist, parts, estimate and assumptions, with "
                      "commas between, or all.")
                       .arg(*names)
                << '\n';
            return std::nullopt;
        }
        set = *chosen;
    }
    set.parts = set.parts || command.has("--parts");
    return set;
}

struct Asked {
    sheet::Options options;
    paper::SheetSet set;
};

/// One sketch to one file. \return exit code
int printOne(const QString& from, const QString& to, const Asked& asked, const QString& progress,
             QTextStream& out, QTextStream& err)
{
    const std::optional<Sketch> sketch = opened(from, err);
    if (!sketch)
        return not_understood;
    ProofOptions with_bands;
    with_bands.bands = true;
    const Analysis analysis = proved(*sketch, with_bands);
    sheet::Options options = asked.options;
    const std::vector<sheet::FurtherPage> pages = paper::pagesOf(*sketch, analysis, asked.set, options);
    const QStringList problems = sheet::write(to, pages, *sketch, options.png_dpi);
    for (const QString& problem : problems)
        err << from << ": " << problem << '\n';
    if (!problems.isEmpty())
        return not_understood;
    const int scale = sheet::scaleDenominator(*sketch, analysis, options);
    out << progress << tr("%1 written, scale 1:%2.").arg(to).arg(scale) << '\n';
    out.flush();
    return analysis.stopped() ? job_stopped : nothing_stops;
}

/// Each sketch to a file of its own name in a folder, which is made.
int printAll(const Arguments& command, const Asked& asked, const QString& folder, QTextStream& out,
             QTextStream& err)
{
    if (!QDir().mkpath(folder)) {
        err << tr("%1 cannot be made.").arg(folder) << '\n';
        return not_understood;
    }
    int code = nothing_stops;
    for (qsizetype i = 0; i < command.files.size(); ++i) {
        const QString name = QFileInfo(command.files[i]).completeBaseName() + QStringLiteral(".pdf");
        const QString progress = QStringLiteral("%1/%2 ").arg(i + 1).arg(command.files.size());
        code = std::max(code,
                        printOne(command.files[i], QDir(folder).filePath(name), asked, progress, out, err));
    }
    return code;
}

} // namespace

int sheet(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments,
                   {"sheet",
                    {"--portrait", "--colour", "--parts", "--photo", "--student", "--third-angle"},
                    {{"--output", QT_TRANSLATE_NOOP("siphonwright::headless", "OUT.pdf, .svg or .png")},
                     {"--output-dir", QT_TRANSLATE_NOOP("siphonwright::headless", "the name of a folder")},
                     {"--pages", QT_TRANSLATE_NOOP("siphonwright::headless", "names of pages, or all")},
                     {"--scale", QT_TRANSLATE_NOOP("siphonwright::headless", "a scale such as 1:10")},
                     {"--dpi", QT_TRANSLATE_NOOP("siphonwright::headless", "dots per inch")},
                     {"--logo", QT_TRANSLATE_NOOP("siphonwright::headless", "the name of a picture")},
                     {"--paper", QT_TRANSLATE_NOOP("siphonwright::headless", "A4, A3, Letter or Tabloid")}},
                    10'000},
                   err);
    std::optional<sheet::Options> options = command ? optionsOf(*command, err) : std::nullopt;
    const std::optional<paper::SheetSet> set =
        options && takeFigures(*command, *options, err) ? setOf(*command, err) : std::nullopt;
    if (!set)
        return not_understood;
    const Asked asked{*options, *set};
    if (const auto folder = command->value("--output-dir"))
        return printAll(*command, asked, *folder, out, err);
    return printOne(command->files[0], command->value("--output").value_or(QString()), asked, {}, out, err);
}

} // namespace siphonwright::headless
