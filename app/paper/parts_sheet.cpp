#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/cut_ink.h"
#include "app/paper/pages.h"

#include "core/paperwork/money.h"

/// The parts list with its cut plan, and the cautions of every document.
namespace siphonwright::paper {

namespace {

QString joined(const std::vector<QString>& texts, const QString& by)
{
    return QStringList(texts.begin(), texts.end()).join(by);
}

constexpr double bar_mm = 6;
constexpr double bar_step_mm = 8;

} // namespace

void layPartsList(Flow& flow, const Job& job)
{
    const bool several = job.quote.vehicles > 1;
    const double quantity_mm = job.units == UnitSystem::metric ? 22 : 30; // feet, inches and a fraction
    std::vector<FlowTable::Column> columns{
        {tr("Item"), 11, Anchor::right},
        {several ? tr("On one") : tr("Quantity"), quantity_mm, Anchor::right}};
    if (several)
        columns.push_back({tr("On all %1").arg(job.quote.vehicles), quantity_mm, Anchor::right});
    columns.push_back({tr("Part"), several ? 44.0 : 52.0, Anchor::left});
    columns.push_back({tr("Where used"), 0, Anchor::left});
    columns.push_back({tr("Remarks"), several ? 38.0 : 44.0, Anchor::left});
    FlowTable table(flow, columns);
    table.head();
    for (const PartRow& part : job.work.parts.rows) {
        std::vector<QString> remarks;
        if (!part.missing.empty())
            remarks.push_back(QStringLiteral("▲ ") + words(part.missing) + QLatin1Char('.'));
        for (const Message& note : part.notes)
            remarks.push_back(words(note, job.units));
        QString what = words(nameOf(part.kind));
        if (!part.size.pattern.empty())
            what += QStringLiteral(", ") + words(part.size, job.units);
        QStringList cells{QString::number(part.number), quantityText(part, job.units)};
        if (several) {
            PartRow all = part;
            all.thousandths =
                part.thousandths ? productOf(*part.thousandths, job.quote.vehicles) : std::nullopt;
            cells << quantityText(all, job.units);
        }
        cells << what << whereUsed(part, job.work.parts, job.units).join(QStringLiteral("; "))
              << joined(remarks, QStringLiteral(" "));
        table.row(cells);
    }
    if (job.work.parts.rows.empty())
        flow.paragraph(tr("Nothing is drawn that takes parts."));
    for (const Message& left_out : job.work.parts.not_counted) {
        flow.down(1);
        flow.paragraph(QStringLiteral("▲ ") + words(left_out, job.units));
    }
}

void layCutPlan(Flow& flow, const Job& job)
{
    if (job.work.plans.empty())
        return;
    flow.heading(job.quote.vehicles == 1 ? tr("Hose cuts")
                                         : tr("Hose cuts, all %1 vehicles").arg(job.quote.vehicles));
    flow.paragraph(tr("Cut lengths with %1 of allowance each. Measure on the vehicle before you cut.")
                       .arg(inWords(job.quote.cut_allowance_mm, Unit::mm, job.units)),
                   small_mm);
    flow.down(2);
    CutInk ink;
    ink.ink = drawing::Palette::paper().ink;
    ink.faint = drawing::Palette::paper().ink;
    ink.fill = QColor(0xe4, 0xe4, 0xe4);
    ink.lettering = small_mm;
    ink.label_width = 26;
    ink.bar_width = flow.width() - ink.label_width;
    ink.bar_height = bar_mm;
    const std::int64_t longest = longestRoll(job.work.plans);
    for (const BorePlan& bore : job.work.plans) {
        flow.need(body_mm * line_share * 2 + bar_step_mm);
        flow.paragraph(planText(bore, job.units));
        flow.down(1.2);
        for (const RollsAlike& alike : rollsAlike(bore)) {
            flow.need(bar_step_mm);
            const QPointF at(flow.left(), flow.y());
            flow.draw([at, alike, bore, longest, units = job.units, ink](QPainter& painter) {
                paintRoll(painter, at, alike, bore, longest, units, ink);
            });
            flow.down(bar_step_mm);
            if (lengthsFit(alike, bore, longest, job.units, ink))
                continue;
            flow.paragraph(cutsText(alike, bore, job.units), small_mm, Weight::regular, ink.label_width);
            flow.down(1.5);
        }
        flow.down(2);
    }
}

void layCautions(Flow& flow, const Job& job)
{
    flow.heading(tr("Cautions"));
    const QStringList cautions =
        job.kind != Kind::for_customer && job.kind != Kind::internal
            ? QStringList{tr("Check sizes, threads and materials against the heater's and the engine's "
                             "manuals "
                             "before you order. Hose, clamps and sealant have to be fit for hot coolant "
                             "under "
                             "pressure."),
                          tr("Antifreeze is poisonous: catch it and dispose of it properly. Mix with "
                             "distilled or deionised water only."),
                          tr("Work by a qualified technician; power locked out, wheels chocked, cap opened "
                             "only cold.")}
            : QStringList{tr("Grounded supply by the local electrical code, connected by a licensed "
                             "electrician."),
                          tr("Old coolant is poisonous and is disposed of properly."),
                          tr("An estimate from the drawing as it stands: what is found on the vehicle may "
                             "change it.")};
    for (const QString& caution : cautions)
        flow.paragraph(QStringLiteral("▲ ") + caution, small_mm);
}

} // namespace siphonwright::paper
