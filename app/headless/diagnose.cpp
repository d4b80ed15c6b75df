#include "app/document/document.h"
#include "app/headless/commands.h"
#include "app/headless/json.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/commissioning/checklist.h"
#include "core/commissioning/diagnosis.h"
#include "core/commissioning/readings.h"
#include "core/layout/wording.h"

#include <QTextStream>

#include <algorithm>
#include <cmath>
#include <optional>

/// The readings kept in a file judged, and what explains them.
namespace siphonwright::headless {

namespace {

/// One heater of the file.
struct HeaterCase {
    const Heater* heater = nullptr;
    JudgedReadings judged;
    Diagnosis diagnosis;
};

class DiagnosisWords {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::headless)

public:
    DiagnosisWords(const Sketch& sketch, QTextStream& out)
        : sketch_(sketch), units_(unitsOf(sketch)), out_(out)
    {}

    void writeProgress() const
    {
        const Progress progress = progressOf(sketch_.checklist);
        line(2, tr("Checklist: %1 of %2 steps done.").arg(progress.done).arg(progress.total));
        for (const Tick* tick : progress.against_order)
            line(4, tr("out of order: %1 (%2)")
                        .arg(textOf(stepById(tick->step) ? stepById(tick->step)->title : tick->step),
                             tick->override_reason.empty() ? tr("no reason given")
                                                           : QString::fromStdString(tick->override_reason)));
    }

    void write(const HeaterCase& one) const
    {
        line(2, inWords(nameOfHeater(*one.heater)));
        for (const Message& broken : one.diagnosis.evidence.broken_limits)
            line(4, inWords(broken, units_));
        if (one.judged.evidence.readings.empty()) {
            line(4, tr("not judged: %1").arg(inWords(one.judged.missing)));
            return;
        }
        writeReadings(one.judged);
        if (!one.diagnosis.missing.empty())
            line(4, tr("not diagnosed: %1").arg(inWords(one.diagnosis.missing)));
        else
            writeDiagnosis(one.diagnosis);
    }

private:
    static QString textOf(std::string_view text) { return inWords(text); }
    void line(int indent, const QString& text) const { out_ << QString(indent, u' ') << text << '\n'; }

    void writeReadings(const JudgedReadings& judged) const
    {
        std::size_t shown = static_cast<std::size_t>(-1);
        for (const ReadingVerdict& one : judged.verdicts) {
            const Reading& reading = sketch_.readings[one.reading];
            if (shown != one.reading)
                line(4, QString::fromStdString(reading.time));
            shown = one.reading;
            const Instrument& row = instrumentFor(one.channel);
            line(6, QStringLiteral("%1 %2  %3")
                        .arg(textOf(row.title), -14)
                        .arg(inWords(one.read, row.unit, units_), 9)
                        .arg(inWords(one.words, units_)));
        }
        line(4, inWords(judged.cycles_words, units_));
    }

    void writeDiagnosis(const Diagnosis& diagnosis) const
    {
        constexpr double worth_saying = 0.01;
        if (diagnosis.nothing_fits)
            line(4, tr("None of the faults listed explains these readings well. The nearest of them:"));
        for (const SuspectGroup& group : diagnosis.groups) {
            if (group.probability < worth_saying)
                break;
            const Suspect& first = group.members.front();
            line(4, QStringLiteral("%1  %2")
                        .arg(percent(diagnosis.shareOf(group)), 6)
                        .arg(inWords(first.fault.title, units_)));
            for (std::size_t i = 1; i < group.members.size(); ++i)
                line(12, tr("or: %1").arg(inWords(group.members[i].fault.title, units_)));
            line(12, inWords(first.why, units_));
            line(12, inWords(first.check, units_));
        }
        if (diagnosis.next)
            line(4, tr("Next: %1").arg(inWords(diagnosis.next->words, units_)));
    }

    static QString percent(std::optional<double> known)
    {
        if (!known)
            return {};
        const double share = *known;
        return share > 0.99 ? tr("> 99 %") : tr("%1 %").arg(std::round(100 * share));
    }

    const Sketch& sketch_;
    UnitSystem units_;
    QTextStream& out_;
};

std::string metric(const Message& text)
{
    return format(text, UnitSystem::metric);
}

Json checklistJson(const Checklist& checklist)
{
    const Progress progress = progressOf(checklist);
    Json against = Json::array();
    for (const Tick* tick : progress.against_order)
        against.push_back({{"step", tick->step}, {"reason", tick->override_reason}});
    return {{"done", progress.done},
            {"total", progress.total},
            {"next", progress.next ? Json(progress.next->id) : Json(nullptr)},
            {"out_of_order", std::move(against)}};
}

Json verdictJson(const ReadingVerdict& one, const Sketch& sketch)
{
    return {{"time", sketch.readings[one.reading].time},
            {"value", instrumentFor(one.channel).id},
            {"read", number(one.read)},
            {"low", one.expected ? number(one.expected->low) : Json(nullptr)},
            {"expected", one.expected ? number(one.expected->middle) : Json(nullptr)},
            {"high", one.expected ? number(one.expected->high) : Json(nullptr)},
            {"verdict", nameOf(one.fit)},
            {"text", metric(one.words)}};
}

Json suspectJson(const Suspect& one, bool with_share)
{
    return {{"fault", one.fault.id},
            {"probability", with_share ? number(one.probability) : Json(nullptr)},
            {"prior", number(one.prior)},
            {"part", partName(one.fault.part)},
            {"x_mm", one.fault.at ? number(one.fault.at->x) : Json(nullptr)},
            {"z_mm", one.fault.at ? number(one.fault.at->z) : Json(nullptr)},
            {"text", metric(one.fault.title)},
            {"why", metric(one.why)},
            {"check", metric(one.check)},
            {"fix", metric(one.fix)}};
}

Json nextJson(const std::optional<NextReading>& next)
{
    if (!next)
        return nullptr;
    const bool read = next->channel.has_value();
    return {{"value", read ? Json(instrumentFor(*next->channel).id) : Json(nullptr)},
            {"wait_min", read ? number(next->wait_s / 60) : Json(nullptr)},
            {"if_first", read ? number(next->if_first) : Json(nullptr)},
            {"if_second", read ? number(next->if_second) : Json(nullptr)},
            {"text", metric(next->words)}};
}

Json heaterJson(const HeaterCase& one, const Sketch& sketch)
{
    Json readings = Json::array();
    for (const ReadingVerdict& verdict : one.judged.verdicts)
        readings.push_back(verdictJson(verdict, sketch));
    Json groups = Json::array();
    for (const SuspectGroup& group : one.diagnosis.groups) {
        Json members = Json::array();
        for (const Suspect& suspect : group.members)
            members.push_back(suspectJson(suspect, one.diagnosis.shareOf(group).has_value()));
        groups.push_back(
            {{"probability", number(one.diagnosis.shareOf(group))}, {"faults", std::move(members)}});
    }
    Json broken = Json::array();
    for (const Message& limit : one.diagnosis.evidence.broken_limits)
        broken.push_back(metric(limit));
    const std::string& missing = one.diagnosis.missing.empty() ? one.judged.missing : one.diagnosis.missing;
    return {{"heater", one.heater->id},
            {"missing", missing.empty() ? Json(nullptr) : Json(missing)},
            {"readings", std::move(readings)},
            {"cycles_per_hour", number(one.judged.cycles_per_hour)},
            {"cycles_verdict", nameOf(one.judged.cycles_fit)},
            {"broken_limits", std::move(broken)},
            {"groups", std::move(groups)},
            {"nothing_fits", one.diagnosis.nothing_fits},
            {"next", nextJson(one.diagnosis.next)}};
}

} // namespace

int diagnose(const QStringList& arguments, QTextStream& out, QTextStream& err)
{
    const std::optional<Arguments> command = understood(arguments, {"diagnose", {"--json"}, {}}, err);
    const std::optional<Sketch> read = command ? opened(command->files[0], err) : std::nullopt;
    if (!read)
        return not_understood;
    const QString& name = command->files[0];
    const Sketch& sketch = *read;
    std::vector<HeaterCase> cases;
    for (const Heater& heater : sketch.heaters) {
        HeaterCase one;
        one.heater = &heater;
        one.judged = judgeReadings(sketch, heater.id);
        one.diagnosis = siphonwright::diagnose(sketch, heater.id);
        cases.push_back(std::move(one));
    }
    if (command->has("--json")) {
        Json entry;
        entry["file"] = name.toStdString();
        entry["checklist"] = checklistJson(sketch.checklist);
        Json heaters = Json::array();
        for (const HeaterCase& one : cases)
            heaters.push_back(heaterJson(one, sketch));
        entry["heaters"] = std::move(heaters);
        out << QString::fromStdString(entry.dump(2, ' ', false, Json::error_handler_t::replace)) << '\n';
    } else {
        out << name << '\n';
        const DiagnosisWords said(sketch, out);
        said.writeProgress();
        for (const HeaterCase& one : cases)
            said.write(one);
        if (cases.empty())
            out << tr("  There is no heater to diagnose.") << '\n';
    }
    const bool stops =
        std::any_of(cases.begin(), cases.end(), [](const HeaterCase& one) { return one.diagnosis.stops(); });
    return stops ? job_stopped : nothing_stops;
}

} // namespace siphonwright::headless
