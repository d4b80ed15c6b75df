#include "app/paper/fitting_words.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/sheet/words.h"

#include "core/layout/wording.h"
#include "core/paperwork/electrical_load.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace siphonwright::paper {

namespace {

QString lengthIn(const Job& job, double mm)
{
    return inWords(mm, Unit::mm, job.units);
}

/// As a tape shows it: whole millimetres, or sixteenths of an inch.
QString onTape(const Job& job, double mm)
{
    return lengthIn(job, job.units == UnitSystem::metric ? std::round(mm) : mm);
}

/// "[3]" of the row that a part is in; empty if none.
QString itemOf(const Job& job, const PartRef& part, std::initializer_list<ItemKind> kinds)
{
    for (const PartRow& row : job.work.parts.rows)
        for (const UsedAt& used : row.used)
            if (used.part == part && std::find(kinds.begin(), kinds.end(), row.kind) != kinds.end())
                return QStringLiteral(" [%1]").arg(row.number);
    return {};
}

/// "Cut 705 mm: 70 mm, valve, 635 mm from A to B."
QString cutWords(const Job& job, const HoseCut& cut)
{
    const QString pieces = sheet::piecesWords(cut, job.units);
    QString said = pieces.isEmpty()
                       ? tr("Cut %1.").arg(onTape(job, cut.length_mm))
                       : tr("Cut %1, in pieces from A to B: %2.").arg(onTape(job, cut.length_mm), pieces);
    if (job.quote.cut_allowance_mm > 0)
        said += QLatin1Char(' ') + tr("%1 of it is allowance, left at B and trimmed there.")
                                       .arg(onTape(job, job.quote.cut_allowance_mm));
    return said;
}

QString endName(const Sketch& sketch, const HoseEnd& end)
{
    if (const Port* port = sketch.port(end.port))
        return inWords(nameOfPort(*port));
    if (const Heater* heater = sketch.heater(end.heater))
        return end.nozzle == NozzleKind::inlet ? tr("%1, inlet").arg(inWords(nameOfHeater(*heater)))
                                               : tr("%1, outlet").arg(inWords(nameOfHeater(*heater)));
    return tr("nothing yet");
}

/// What is screwed into a place, with the numbers of the parts list.
QString screwedIn(const Job& job, const PartRef& part, const std::string& nozzle)
{
    QStringList screwed;
    for (const PartRow& row : job.work.parts.rows)
        for (const UsedAt& used : row.used) {
            const bool here =
                used.part == part && (nozzle.empty() || used.name.words == std::vector<std::string>{nozzle});
            if (here && row.kind >= ItemKind::adapter && row.kind <= ItemKind::elbow)
                screwed << QStringLiteral("%1 [%2]").arg(words(nameOf(row.kind))).arg(row.number);
        }
    screwed.removeDuplicates();
    return screwed.isEmpty() ? tr("none counted") : screwed.join(QStringLiteral(", "));
}

QStringList rowOfEnd(const Job& job, const HoseEnd& end, const QString& sealant)
{
    const Port* port = job.sketch.port(end.port);
    const Heater* heater = job.sketch.heater(end.heater);
    const bool inlet = end.nozzle == NozzleKind::inlet;
    const std::string thread = port      ? port->thread
                               : !heater ? std::string()
                               : inlet   ? heater->inlet.thread
                                         : heater->outlet.thread;
    const PartRef part = port ? refOf(*port) : heater ? refOf(*heater) : PartRef{};
    const std::string nozzle =
        heater && !port ? nameOfHeater(*heater) + (inlet ? ", inlet" : ", outlet") : std::string();
    return {endName(job.sketch, end), thread.empty() ? tr("not entered") : words(thread),
            screwedIn(job, part, nozzle),
            tr("passage %1, %2 on").arg(lengthIn(job, end.bore_mm), onTape(job, end.engagement_mm)), sealant};
}

/// "120 mm towards the front".
QString alongFrom(const Job& job, double to_right_mm)
{
    const bool front_left = job.sketch.engine && job.sketch.engine->front == EngineEnd::left;
    if (std::abs(to_right_mm) < 0.5)
        return tr("in line along the engine");
    const bool to_front = (to_right_mm < 0) == front_left;
    return to_front ? tr("%1 towards the front").arg(onTape(job, std::abs(to_right_mm)))
                    : tr("%1 towards the rear").arg(onTape(job, std::abs(to_right_mm)));
}

QString acrossFrom(const Job& job, double away_mm)
{
    if (std::abs(away_mm) < 0.5)
        return tr("in line with it across the engine");
    // Who looks at the drawing looks at the engine's left side where its front is at the left.
    const bool front_left = job.sketch.engine && job.sketch.engine->front == EngineEnd::left;
    return (away_mm < 0) == front_left
               ? tr("%1 towards the engine's left side").arg(onTape(job, std::abs(away_mm)))
               : tr("%1 towards the engine's right side").arg(onTape(job, std::abs(away_mm)));
}

/// "1500 W, 120 V, 1 phase; on at 38 degC, off at 49 degC. Serial number H-0471."
QString ratingOf(const Job& job, const Heater& heater)
{
    const auto figure = [&](const Fact<double>& fact, Unit unit) {
        return fact.known() ? inWords(*fact.value, unit, job.units) : tr("not entered");
    };
    const QString phases = heater.phases == 3 ? tr("three phases") : tr("one phase");
    const QString serial = heater.serial_number.empty() ? tr("not entered") : words(heater.serial_number);
    return tr("Power %1, voltage %2, %3; its thermostat on at %4, off at %5. Serial number %6.")
        .arg(figure(heater.power_W, Unit::watt), figure(heater.rated_V, Unit::volt), phases,
             figure(heater.on_degC, Unit::degC), figure(heater.off_degC, Unit::degC), serial);
}

} // namespace

HoseWords wordsOf(const Job& job, const ResolvedHose& hose, const HoseStrip& strip)
{
    const Hose& own = *hose->hose;
    const QString bore = own.bore_mm.known() ? lengthIn(job, *own.bore_mm.value) : tr("not entered");
    HoseWords out;
    out.title = tr("%1%2: bore %3, wall %4")
                    .arg(inWords(nameOfHose(own)), itemOf(job, refOf(own), {ItemKind::hose}), bore,
                         lengthIn(job, own.wall_mm));
    QStringList cuts;
    for (const HoseCut& cut : job.work.parts.cuts)
        if (cut.hose == own.id)
            cuts << cutWords(job, cut);
    out.cut = cuts.join(QLatin1Char(' '));
    out.ends = tr("A: %1, %2 pushed on. B: %3, %4 pushed on.")
                   .arg(endName(job.sketch, own.from), onTape(job, strip.on_at_a_mm),
                        endName(job.sketch, own.to), onTape(job, strip.on_at_b_mm));
    out.rise = hose.rise_mm >= 0
                   ? tr("Port or nozzle at B is %1 higher than at A.").arg(onTape(job, hose.rise_mm))
                   : tr("Port or nozzle at B is %1 lower than at A.").arg(onTape(job, -hose.rise_mm));
    return out;
}

std::vector<QStringList> rowsOfEnds(const Job& job)
{
    QString sealant = tr("none counted");
    for (const PartRow& row : job.work.parts.rows)
        if (row.kind == ItemKind::sealant)
            sealant = tr("on the thread [%1]").arg(row.number);
    std::vector<QStringList> rows;
    for (const auto& hose : job.sketch.hoses)
        for (const HoseEnd* end : {&hose->from, &hose->to})
            if (end->connected())
                rows.push_back(rowOfEnd(job, *end, sealant));
    return rows;
}

HeaterWords wordsOf(const Job& job, const Layout& layout, std::size_t index)
{
    const Heater& heater = job.sketch.heaters[index];
    const HeaterHeights& heights = layout.heaters[index];
    HeaterWords out;
    out.title = inWords(nameOfHeater(heater)) + itemOf(job, refOf(heater), {ItemKind::heater});
    out.lines << ratingOf(job, heater);
    QString high = tr("Top %1 and bottom %2 over the datum")
                       .arg(onTape(job, heights.body_top_mm), onTape(job, heights.body_bottom_mm));
    if (layout.jacket)
        high += tr("; top %1 under the jacket's lowest point")
                    .arg(onTape(job, layout.jacket->lowest_mm - heights.body_top_mm));
    out.lines << high + QLatin1Char('.');
    for (const auto& hose : job.sketch.hoses) {
        const Port* port = hose->from.heater == heater.id ? job.sketch.port(hose->to.port) : nullptr;
        if (port)
            out.lines << tr("Its middle from %1: %2; %3.")
                             .arg(inWords(nameOfPort(*port)),
                                  alongFrom(job, heater.position.x - port->position.x),
                                  acrossFrom(job, heater.position.y - port->position.y));
    }
    const QString upright = std::abs(heater.tilt_deg) < 0.05
                                ? tr("Upright, the arrow on its body pointing up.")
                                : tr("Leaning %1 from upright, the arrow on its body pointing up.")
                                      .arg(inWords(std::abs(heater.tilt_deg), Unit::degree, job.units));
    const QString held = !heater.mounting.known()                    ? tr("Mounting not entered.")
                         : *heater.mounting.value == Mounting::frame ? tr("Mounted to the frame.")
                                                                     : tr("Mounted to the engine.");
    out.lines << upright + QLatin1Char(' ') + held;
    return out;
}

QStringList missingOfLoad(const Job& job)
{
    QStringList lines;
    for (const Message& missing : electricalLoadOf(job.sketch).missing)
        lines << QStringLiteral("▲ ") + words(missing, job.units);
    return lines;
}

} // namespace siphonwright::paper
