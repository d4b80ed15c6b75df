#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/paper/pages.h"

#include "core/layout/wording.h"
#include "core/running/assumptions.h"

#include <algorithm>

/// What is filled in by hand, the tag to cut out, and what the figures rest on.
namespace siphonwright::paper {

namespace {

constexpr double written_row_mm = 8;

/// Rows to write in, under a head; what is known stands in the first.
void layBlank(Flow& flow, const QStringList& heads, const std::vector<double>& shares, int rows,
              const QStringList& first = {})
{
    constexpr double head_row_mm = 5;
    flow.need(head_row_mm + written_row_mm * rows + 2);
    double x = flow.left();
    const double top = flow.y();
    const double bottom = top + head_row_mm + rows * written_row_mm;
    for (qsizetype i = 0; i < heads.size(); ++i) {
        const double wide = flow.width() * shares[std::size_t(i)];
        flow.text(x + 1, top + 3.4, heads[i], Anchor::left, small_mm, Weight::strong);
        flow.box(QRectF(x, top, wide, bottom - top), drawing::medium_mm);
        const QStringList known = drawing::wrapped(first.value(i), wide - 2, small_mm);
        for (qsizetype line = 0; line < std::min<qsizetype>(known.size(), 2); ++line)
            flow.text(x + 1, top + head_row_mm + 3.4 + 3 * double(line), known[line], Anchor::left, small_mm);
        x += wide;
    }
    for (int row = 0; row < rows; ++row)
        flow.line(flow.left(), flow.right(), top + head_row_mm + row * written_row_mm, drawing::thin_mm);
    flow.down(bottom - top + 3);
}

/// A part and its serial number, or a line to write it on.
void laySerial(Flow& flow, const QString& part, const std::string& serial)
{
    flow.need(written_row_mm);
    const double baseline = flow.y() + written_row_mm - 2;
    const double line_from = flow.left() + flow.width() * 0.45;
    const QStringList name =
        drawing::wrapped(tr("%1, serial number").arg(part), line_from - flow.left() - 2, body_mm);
    flow.text(flow.left(), baseline, name.value(0), Anchor::left, body_mm);
    flow.text(line_from + 1, baseline, words(serial), Anchor::left, body_mm, Weight::strong);
    flow.line(line_from, flow.right(), baseline + 1, drawing::thin_mm);
    flow.down(written_row_mm);
}

} // namespace

void layToFillIn(Flow& flow, const Job& job)
{
    flow.heading(tr("To fill in"));
    flow.need(written_row_mm * double(2 + job.sketch.heaters.size()));
    const SheetDetails& sheet = job.sketch.sheet;
    laySerial(flow, tr("Unit or vehicle"), sheet.vehicle_serial);
    laySerial(flow, tr("Engine"), job.sketch.engine ? job.sketch.engine->serial_number : std::string());
    for (const Heater& heater : job.sketch.heaters)
        laySerial(flow, inWords(nameOfHeater(heater)), heater.serial_number);
    flow.down(3);
    layBlank(flow, {tr("Rev."), tr("What was changed"), tr("By"), tr("Date")}, {0.1, 0.5, 0.2, 0.2}, 3,
             {words(sheet.revision), words(sheet.revision_change), words(sheet.creator),
              words(sheet.date_of_issue)});
    layBlank(flow, {tr("Fitted by, date"), tr("Checked by, date"), tr("Handed over to, date")},
             {1.0 / 3, 1.0 / 3, 1.0 / 3}, 1);
}

void layTag(Flow& flow, const Job& job)
{
    constexpr double wide = 110;
    constexpr double high = 42;
    constexpr double heading_with_it = 12;
    flow.need(high + heading_with_it);
    flow.heading(tr("Tag to cut out and tie to the switch"));
    const QRectF tag(flow.left(), flow.y(), wide, high);
    const QString unit =
        words(job.sketch.sheet.vehicle.empty() ? job.sketch.sheet.title : job.sketch.sheet.vehicle);
    const QStringList big =
        drawing::wrappedEvenly(tr("Valves open before turning on"), wide - 26, title_mm, Weight::strong);
    const QStringList small =
        drawing::wrapped(tr("Coolant in the heater before turning on. Heater off before a valve is closed."),
                         wide - 26, body_mm);
    const QStringList name = drawing::wrapped(unit, wide - 26, body_mm);
    flow.draw([tag, big, small, name](QPainter& painter) {
        const QColor ink = drawing::Palette::paper().ink;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink, drawing::medium_mm, Qt::DashLine));
        painter.drawRect(tag);
        painter.setPen(QPen(ink, drawing::edge_mm));
        painter.drawEllipse(QPointF(tag.left() + 10, tag.center().y()), 4, 4);
        double y = tag.top() + 9;
        const double x = tag.left() + 21;
        for (const QString& line : big) {
            drawing::paintWeightedText(painter, {x, y}, line, Anchor::left, ink, title_mm, Weight::strong);
            y += 8;
        }
        y -= 2;
        for (const QString& line : small) {
            drawing::paintWeightedText(painter, {x, y}, line, Anchor::left, ink, body_mm, Weight::regular);
            y += 4.4;
        }
        drawing::paintWeightedText(painter, {x, tag.bottom() - 3}, name.value(0), Anchor::left, ink, body_mm,
                                   Weight::strong);
    });
    flow.down(high + 2);
}

void layAssumptions(Flow& flow, const Job& job)
{
    flow.paragraph(tr("What the figures rest on, with the range in which each is taken to lie. They are "
                      "estimates; what was measured replaces them."));
    flow.down(2);
    FlowTable table(flow, {{tr("Assumed"), 56, Anchor::left},
                           {tr("Figure"), 24, Anchor::left},
                           {tr("Range"), 32, Anchor::left},
                           {tr("Basis"), 0, Anchor::left}});
    table.head();
    const Assumptions now(job.sketch);
    const std::vector<Assumed> used = assumptionsIn(job.sketch);
    for (const Assumed which : used) {
        const Assumption& one = assumptionOf(which);
        const auto text = [&](double value) {
            return withDecimalSign(inWords(valueText(one, value, job.units)));
        };
        const AssumptionChange* change = nullptr;
        for (const AssumptionChange& other : job.sketch.assumptions)
            if (other.assumption == one.id)
                change = &other;
        const QString range = one.low == one.high || change
                                  ? QStringLiteral("–")
                                  : tr("%1 to %2").arg(text(one.low), text(one.high));
        const QString basis = !change ? words(one.basis)
                              : change->reason.empty()
                                  ? tr("For this drawing; no reason given")
                                  : tr("For this drawing: %1").arg(words(change->reason));
        table.row({words(one.title), text(now[which]), range, basis});
    }
}

} // namespace siphonwright::paper
