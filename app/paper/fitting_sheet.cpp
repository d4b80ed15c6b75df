#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/fitting_words.h"
#include "app/paper/hose_strip.h"
#include "app/paper/pages.h"

#include "core/paperwork/coolant_mix.h"
#include "core/paperwork/electrical_load.h"
#include "core/running/assumptions.h"

#include <algorithm>
#include <memory>

/// What somebody needs who has only the paper: hoses laid flat, what is screwed in where, how the heater
/// hangs.
namespace siphonwright::paper {

namespace {

void layHose(Flow& flow, const Job& job, const ResolvedHose& hose, const Plumb& plumb)
{
    auto strip = std::make_shared<const HoseStrip>(stripOf(hose, plumb, job.units));
    constexpr double beside = 5;
    StripInk ink{flow.left() + beside, flow.width() - 2 * beside, 0, small_mm, job.units};
    auto labels =
        std::make_shared<const std::vector<StripLabel>>(labelsUnder(*strip, ink.left, ink.width, small_mm));
    const double room = strip_slopes_mm + strip_bar_mm + heightOf(*labels, small_mm) + strip_profile_mm + 24;
    flow.need(std::min(room, 200.0));
    flow.down(2);
    const HoseWords said = wordsOf(job, hose, *strip);
    flow.paragraph(said.title, heading_mm, Weight::strong);
    if (!said.cut.isEmpty())
        flow.paragraph(said.cut, body_mm, Weight::strong);
    flow.paragraph(said.ends);
    flow.paragraph(said.rise);
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
    for (const QStringList& row : rowsOfEnds(job))
        table.row(row);
}

void layHeater(Flow& flow, const Job& job, const Layout& layout, std::size_t index)
{
    const HeaterWords said = wordsOf(job, layout, index);
    flow.paragraph(said.title, body_mm, Weight::strong);
    for (const QString& line : said.lines)
        flow.paragraph(line);
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
    for (const QString& missing : missingOfLoad(job))
        flow.paragraph(missing, small_mm);
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
    const QString unit = job.units == UnitSystem::metric ? tr("mm") : tr("inches");
    flow.paragraph(tr("Distances along a hose are from its cut end at A, in %1; R is the radius of a bend's "
                      "middle; over a straight its slope from A to B, rise over run. Pieces reach to the "
                      "stops of the parts between them, by the lengths entered for these. Under each hose "
                      "its run: height of the top (line) and bottom (dashes) of its bore over the datum. "
                      "Numbers in brackets are items of the parts list. Measure on the vehicle, parts in "
                      "hand, before you cut.")
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
