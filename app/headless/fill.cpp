#include "app/demonstration/export.h"
#include "app/document/document.h"
#include "app/headless/air_json.h"
#include "app/headless/commands.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/running/fill_words.h"

#include <QCoreApplication>
#include <QTextStream>

#include <algorithm>
#include <optional>

/// What happens while a drawn job is filled, and what air stays.
namespace siphonwright::headless {

namespace {

using Json = nlohmann::ordered_json;

/// A file that was filled.
struct FilledFile {
    Sketch sketch;
    Analysis analysis;
    std::vector<FillLine> lines;
    const Filling& filling() const { return analysis.proof->filling; }
};

QString startWords(const FillPlan& plan, UnitSystem units)
{
    const QString start = plan.start == FillStart::block_full ? tr("block full, new hoses empty")
                          : plan.start == FillStart::block_drained
                              ? tr("block partly drained, new hoses empty")
                          : plan.start == FillStart::hoses_full ? tr("block full, hoses and heater filled "
                                                                     "before they are connected")
                                                                : tr("engine and hoses empty");
    if (plan.start == FillStart::hoses_full)
        return plan.hose_air_ml.value_or(0) > 0 ? tr("Start: %1; %2 of air in each hose.")
                                                      .arg(start, inWords(*plan.hose_air_ml, Unit::ml, units))
                                                : tr("Start: %1; no air in them.").arg(start);
    const QString by = plan.by == FillBy::vacuum  ? tr("filled under vacuum")
                       : plan.by == FillBy::below ? tr("filled from below")
                                                  : tr("filled at the filler");
    const QString begun = tr("Start: %1; %2").arg(start, by);
    return plan.short_by_ml > 0 ? tr("%1, %2 short.").arg(begun, inWords(plan.short_by_ml, Unit::ml, units))
                                : begun + QLatin1Char('.');
}

void writeLines(const FilledFile& file, UnitSystem units, QTextStream& out)
{
    out << QStringLiteral("  %1\n").arg(startWords(file.sketch.fill, units));
    for (const FillLine& line : file.lines)
        out << QStringLiteral("  %1 %2  %3\n")
                   .arg(inWords(line.poured_ml, Unit::ml, units), 12)
                   .arg(inWords(line.level_mm, Unit::mm, units), 10)
                   .arg(inWords(line.text, units));
}

void writeEnd(const FilledFile& file, UnitSystem units, QTextStream& out)
{
    const Filling& filling = file.filling();
    const auto line = [&](const QString& text, int indent = 2) {
        out << QString(indent, QLatin1Char(' ')) << text << '\n';
    };
    line(inWords(endOf(filling), units));
    constexpr double worth_saying_ml = 0.5;
    std::size_t said = 0;
    for (const PocketFound& pocket : filling.pockets) {
        if (!pocket.closes_bore && pocket.volume_ml < worth_saying_ml)
            continue;
        ++said;
        line(inWords(textOf(pocket, file.sketch, file.analysis.layout.plumb), units));
        if (pocket.closes_bore)
            line(inWords(clearingOf(pocket), units), 4);
    }
    if (said == 0 && filling.missing.empty())
        line(tr("No air stays."));
    for (const LoopAir& air : filling.loops) {
        if (air.element_known && !air.element_covered)
            line(inWords(baredOf(air, file.sketch), units));
        line(inWords(runningOf(air, file.sketch), units));
    }
    if (filling.missing.empty())
        line(inWords(topUpOf(filling), units));
    if (const auto cold = coldestOf(filling, file.sketch))
        line(inWords(*cold, units));
}

Json lineJson(const FillLine& line)
{
    return {{"poured_ml", line.poured_ml},
            {"level_mm", line.level_mm},
            {"text", format(line.text, UnitSystem::metric)}};
}

void writeJson(const Arguments& command, const FilledFile& file, std::size_t pictures, QTextStream& out)
{
    Json entry;
    entry["file"] = command.files[0].toStdString();
    Json events = Json::array();
    for (const FillLine& line : file.lines)
        events.push_back(lineJson(line));
    entry["events"] = std::move(events);
    entry["air"] = airJson(file.filling());
    entry["fill"] = fillJson(file.filling());
    if (pictures > 0)
        entry["frames"] = {{"folder", command.value("--frames").value_or(QString()).toStdString()},
                           {"pictures", pictures}};
    out << QString::fromStdString(entry.dump(2, ' ', false, Json::error_handler_t::replace)) << '\n';
}

constexpr std::size_t every_third = 3; ///< moment, as the window writes them

/// The pictures of a whole demonstration; what went wrong.
QStringList writeFrames(const QString& folder, const FilledFile& file, UnitSystem units, std::size_t& written)
{
    const demonstration::Demonstration shown = demonstration::demonstrate(file.sketch, file.analysis.layout);
    if (shown.moments.empty())
        return {QCoreApplication::translate("siphonwright::headless", "There is nothing to draw: %1.")
                    .arg(inWords(shown.missing))};
    if (const QStringList problems = demonstration::makeFolder(folder); !problems.isEmpty())
        return problems;
    drawing::Style style;
    style.units = units;
    const QStringList problems =
        demonstration::exportSequence(folder, file.sketch, file.analysis, shown, style, every_third);
    written = demonstration::sequenceOf(shown, every_third).size();
    return problems;
}

FilledFile filled(Sketch sketch)
{
    FilledFile file;
    file.sketch = std::move(sketch);
    ProofOptions options;
    options.bands = false;
    file.analysis = proved(file.sketch, options);
    FillPlanOf plan = fillRequestOf(file.sketch, file.analysis.layout, Assumptions(file.sketch));
    constexpr std::size_t frames = 200; // so that the lines know what is sealed
    if (plan.request)
        plan.request->frames = frames;
    file.lines = linesOf(plan.request ? fillAsPlanned(*plan.request) : FillResult{}, plan);
    return file;
}

} // namespace

int fill(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command =
        understood(arguments,
                   {"fill",
                    {"--json"},
                    {{"--frames", QT_TRANSLATE_NOOP("siphonwright::headless", "a folder for the pictures")}}},
                   err);
    const std::optional<Sketch> sketch = command ? opened(command->files[0], err) : std::nullopt;
    if (!sketch)
        return not_understood;
    const QString& name = command->files[0];
    const FilledFile file = filled(*sketch);
    const UnitSystem units = file.sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    std::size_t pictures = 0;
    const std::optional<QString> frames = command->value("--frames");
    if (frames) {
        for (const QString& problem : writeFrames(*frames, file, units, pictures)) {
            err << name << ": " << problem << '\n';
            return not_understood;
        }
    }
    if (command->has("--json")) {
        writeJson(*command, file, pictures, out);
    } else {
        out << name << '\n';
        writeLines(file, units, out);
        writeEnd(file, units, out);
        if (pictures > 0)
            out << QStringLiteral("  ") << tr("%1 pictures written to %2.").arg(pictures).arg(*frames)
                << '\n';
    }
    return file.analysis.stopped() ? job_stopped : nothing_stops;
}

void writeAir(const Checked& file, UnitSystem units, QTextStream& out)
{
    const Filling& filling = file.analysis.proof->filling;
    if (!filling.missing.empty())
        return;
    const auto line = [&](const Message& text) {
        out << QStringLiteral("  ") << inWords(text, units) << '\n';
    };
    for (const PocketFound& pocket : filling.pockets)
        if (pocket.closes_bore)
            line(textOf(pocket, file.sketch, file.analysis.layout.plumb));
    line(topUpOf(filling));
}

} // namespace siphonwright::headless
