#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/hose_strip.h"
#include "app/paper/pages.h"

#include "core/layout/wording.h"
#include "core/paperwork/coolant_mix.h"
#include "core/paperwork/electrical_load.h"
#include "core/running/assumptions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

/// What somebody needs who has only the paper: hoses laid flat, what is screwed in where, how the heater
/// hangs.
namespace siphonwright::paper {

namespace {

QString lengthIn(const Job& job, double mm)
{
    return inWords(mm, Unit::mm, job.units);
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

QString endName(const Sketch& sketch, const HoseEnd& end)
{
    if (const Port* port = sketch.port(end.port))
        return inWords(nameOfPort(*port));
    if (const Heater* heater = sketch.heater(end.heater))
        return end.nozzle == NozzleKind::inlet ? tr("%1, inlet").arg(inWords(nameOfHeater(*heater)))
                                               : tr("%1, outlet").arg(inWords(nameOfHeater(*heater)));
    return tr("nothing yet");
}

void layHose(Flow& flow, const Job& job, const ResolvedHose& hose, const Plumb& plumb)
{
    const Hose& own = *hose->hose;
    auto strip = std::make_shared<const HoseStrip>(stripOf(hose, plumb, job.units));
    constexpr double beside = 5;
    StripInk ink{flow.left() + beside, flow.width() - 2 * beside, 0, small_mm, job.units};
    auto labels =
        std::make_shared<const std::vector<StripLabel>>(labelsUnder(*strip, ink.left, ink.width, small_mm));
    const double room = strip_slopes_mm + strip_bar_mm + heightOf(*labels, small_mm) + strip_profile_mm + 24;
    flow.need(std::min(room, 200.0));
    flow.down(2);
    const QString bore = own.bore_mm.known() ? lengthIn(job, *own.bore_mm.value) : tr("not entered");
    flow.paragraph(tr("%1%2: bore %3, wall %4")
                       .arg(inWords(nameOfHose(own)), itemOf(job, refOf(own), {ItemKind::hose}), bore,
                            lengthIn(job, own.wall_mm)),
                   heading_mm, Weight::strong);
    for (const HoseCut& cut : job.work.parts.cuts)
        if (cut.hose == own.id)
            flow.paragraph(tr("Cut %1: drawn %2, and %3 allowance, left at B and trimmed there.")
                               .arg(lengthIn(job, cut.length_mm),
                                    lengthIn(job, cut.length_mm - job.quote.cut_allowance_mm),
                                    lengthIn(job, job.quote.cut_allowance_mm)),
                           body_mm, Weight::strong);
    flow.paragraph(tr("A: %1, %2 pushed on. B: %3, %4 pushed on.")
                       .arg(endName(job.sketch, own.from), lengthIn(job, strip->on_at_a_mm),
                            endName(job.sketch, own.to), lengthIn(job, strip->on_at_b_mm)));
    flow.paragraph(hose.rise_mm >= 0 ? tr("B is %1 higher than A.").arg(lengthIn(job, hose.rise_mm))
                                     : tr("B is %1 lower than A.").arg(lengthIn(job, -hose.rise_mm)));
    flow.down(2.5 + strip_slopes_mm);
    ink.top = flow.y();
    flow.draw([strip, labels, ink](QPainter& painter) { paintStrip(painter, *strip, *labels, ink); });
    flow.down(strip_bar_mm + heightOf(*labels, small_mm) + 2);
    ink.top = flow.y();
    flow.draw([strip, ink](QPainter& painter) { paintRunProfile(painter, *strip, ink); });
    flow.down(strip_profile_mm + 2);
}

void layEnds(Flow& flow, const Job& job)
{
    flow.heading(tr("Ports and hose ends"));
    FlowTable table(flow, {{tr("Where"), 0, Anchor::left},
                           {tr("Thread"), 22, Anchor::left},
                           {tr("Screwed in"), 42, Anchor::left},
                           {tr("Hose end"), 40, Anchor::left},
                           {tr("Sealant"), 36, Anchor::left}});
    table.head();
    for (const Shared<Hose>& hose : job.sketch.hoses) {
        for (const HoseEnd* end : {&hose->from, &hose->to}) {
            if (!end->connected())
                continue;
            const Port* port = job.sketch.port(end->port);
            const Heater* heater = job.sketch.heater(end->heater);
            const std::string thread = port                               ? port->thread
                                       : !heater                          ? std::string()
                                       : end->nozzle == NozzleKind::inlet ? heater->inlet.thread
                                                                          : heater->outlet.thread;
            const PartRef part = port ? refOf(*port) : heater ? refOf(*heater) : PartRef{};
            const std::string nozzle =
                heater ? nameOfHeater(*heater) + (end->nozzle == NozzleKind::inlet ? ", inlet" : ", outlet")
                       : std::string();
            QStringList screwed;
            QString sealant = tr("none counted");
            for (const PartRow& row : job.work.parts.rows)
                for (const UsedAt& used : row.used) {
                    const bool here =
                        used.part == part && (port || used.name.words == std::vector<std::string>{nozzle});
                    if (!here)
                        continue;
                    if (row.kind >= ItemKind::adapter && row.kind <= ItemKind::elbow)
                        screwed << QStringLiteral("%1 [%2]").arg(words(nameOf(row.kind))).arg(row.number);
                }
            for (const PartRow& row : job.work.parts.rows)
                if (row.kind == ItemKind::sealant)
                    sealant = tr("on the thread [%1]").arg(row.number);
            screwed.removeDuplicates();
            table.row({endName(job.sketch, *end), thread.empty() ? tr("not entered") : words(thread),
                       screwed.isEmpty() ? tr("none counted") : screwed.join(QStringLiteral(", ")),
                       tr("%1, %2 on").arg(lengthIn(job, end->bore_mm), lengthIn(job, end->engagement_mm)),
                       sealant});
        }
    }
}

/// "120 mm towards the front".
QString alongFrom(const Job& job, double to_right_mm)
{
    const bool front_left = job.sketch.engine && job.sketch.engine->front == EngineEnd::left;
    if (std::abs(to_right_mm) < 0.5)
        return tr("in line along the engine");
    const bool to_front = (to_right_mm < 0) == front_left;
    return to_front ? tr("%1 towards the front").arg(lengthIn(job, std::abs(to_right_mm)))
                    : tr("%1 towards the rear").arg(lengthIn(job, std::abs(to_right_mm)));
}

QString acrossFrom(const Job& job, double away_mm)
{
    if (std::abs(away_mm) < 0.5)
        return tr("in line across it");
    // Who looks at the drawing looks at the engine's left side where its front is at the left.
    const bool front_left = job.sketch.engine && job.sketch.engine->front == EngineEnd::left;
    return (away_mm < 0) == front_left
               ? tr("%1 towards the engine's left side").arg(lengthIn(job, std::abs(away_mm)))
               : tr("%1 towards the engine's right side").arg(lengthIn(job, std::abs(away_mm)));
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

void layHeater(Flow& flow, const Job& job, const Layout& layout, std::size_t index)
{
    const Heater& heater = job.sketch.heaters[index];
    const HeaterHeights& heights = layout.heaters[index];
    flow.paragraph(inWords(nameOfHeater(heater)) + itemOf(job, refOf(heater), {ItemKind::heater}), body_mm,
                   Weight::strong);
    flow.paragraph(ratingOf(job, heater));
    QString high = tr("Top %1 and bottom %2 over the datum")
                       .arg(lengthIn(job, heights.body_top_mm), lengthIn(job, heights.body_bottom_mm));
    if (layout.jacket)
        high += tr("; top %1 under the jacket's lowest point")
                    .arg(lengthIn(job, layout.jacket->lowest_mm - heights.body_top_mm));
    flow.paragraph(high + QLatin1Char('.'));
    for (const Shared<Hose>& hose : job.sketch.hoses) {
        const Port* port = hose->from.heater == heater.id ? job.sketch.port(hose->to.port) : nullptr;
        if (port)
            flow.paragraph(tr("Its middle from %1: %2; %3.")
                               .arg(inWords(nameOfPort(*port)),
                                    alongFrom(job, heater.position.x - port->position.x),
                                    acrossFrom(job, heater.position.y - port->position.y)));
    }
    const QString upright = std::abs(heater.tilt_deg) < 0.05
                                ? tr("Upright, the arrow on its body pointing up.")
                                : tr("Leaning %1 from upright, the arrow on its body pointing up.")
                                      .arg(inWords(std::abs(heater.tilt_deg), Unit::degree, job.units));
    const QString held = !heater.mounting.known()                    ? tr("Mounting not entered.")
                         : *heater.mounting.value == Mounting::frame ? tr("Mounted to the frame.")
                                                                     : tr("Mounted to the engine.");
    flow.paragraph(upright + QLatin1Char(' ') + held);
    flow.down(1.5);
}

void laySupply(Flow& flow, const Job& job, const Layout& layout)
{
    flow.heading(tr("Electrical load and coolant"));
    const ElectricalLoad load = electricalLoadOf(job.sketch);
    const auto figure = [&](const std::optional<double>& value, Unit unit) {
        return value ? inWords(*value, unit, job.units) : tr("not known");
    };
    flow.paragraph(tr("All heaters %1, current %2, continuous load (125 %) %3.")
                       .arg(figure(load.power_W, Unit::watt), figure(load.current_A, Unit::ampere),
                            figure(load.continuous_A, Unit::ampere)));
    for (const Message& missing : load.missing)
        flow.paragraph(QStringLiteral("▲ ") + words(missing, job.units), small_mm);
    const CoolantMix mix = coolantMixOf(job.sketch, layout, Assumptions(job.sketch));
    const Fact<double>& glycol = job.sketch.coolant.volume_percent;
    flow.paragraph(
        tr("New hoses and chambers take %1 of coolant; in it now: antifreeze %2.")
            .arg(inWords(mix.new_l(), Unit::litre, job.units),
                 glycol.known() ? inWords(*glycol.value, Unit::percent, job.units) : tr("not entered")));
}

} // namespace

void layFitting(Flow& flow, const Job& job)
{
    const Layout layout = resolve(job.sketch, plumbOf(job.sketch));
    const QString unit = job.units == UnitSystem::metric ? tr("mm") : tr("in");
    flow.paragraph(tr("Distances along a hose are from its cut end at A, in %1; R is the radius of a bend's "
                      "middle; over a straight its slope from A to B, rise over run. Under each hose its "
                      "run: height of the top (line) and bottom (dashes) of its "
                      "bore over the datum. Numbers in brackets are items of the parts list. Measure on the "
                      "vehicle before you cut.")
                       .arg(unit),
                   small_mm);
    for (const ResolvedHose& hose : layout.hoses)
        layHose(flow, job, hose, layout.plumb);
    layCautions(flow, job);
    layEnds(flow, job);
    flow.heading(tr("Hang the heater"));
    for (std::size_t i = 0; i < job.sketch.heaters.size() && i < layout.heaters.size(); ++i)
        layHeater(flow, job, layout, i);
    laySupply(flow, job, layout);
    layToFillIn(flow, job);
    layTag(flow, job);
}

} // namespace siphonwright::paper
