#include "app/language/tr.h"
#include "app/paper/fitting_words.h"
#include "app/paper/insets.h"
#include "app/paper/set_lines.h"

#include <algorithm>
#include <memory>
#include <numeric>
#include <optional>

/// Insets with lines to write on, the table of ports, and the tag.
namespace siphonwright::paper {

namespace {

constexpr double head_row_mm = 3.6;
constexpr double least_row_mm = 5; ///< to write in
constexpr double signed_row_mm = 6.3;
constexpr double tables_apart_mm = 1.4;

QPen penOf(double width_mm)
{
    return {drawing::Palette::paper().ink, width_mm, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

/// Empty rows under heads, between lines; what is known stands in the first.
struct BlankTable {
    QStringList heads;
    QStringList first;
    std::optional<std::size_t> roomy; ///< the column that takes what the others leave; none: all alike

    static constexpr double sides_mm = 1.6; ///< of a cell, beside its text

    /// Each column as broad as its head and the longest word under it; what is left goes to what stands under
    /// the heads, then to the roomy column.
    std::vector<double> widths(double width_mm) const
    {
        std::vector<double> out;
        for (qsizetype i = 0; i < heads.size(); ++i) {
            double text = drawing::textWidth(heads[i], small_mm, Weight::strong);
            for (const QString& word : drawing::unbroken(first.value(i)))
                text = std::max(text, drawing::textWidth(word, small_mm, Weight::regular));
            out.push_back(text + sides_mm);
        }
        const double taken = std::accumulate(out.begin(), out.end(), 0.0);
        double spare = width_mm - taken;
        for (std::size_t i = 0; spare > 0 && roomy && i < out.size(); ++i) {
            const double whole =
                drawing::textWidth(first.value(qsizetype(i)), small_mm, Weight::regular) + sides_mm;
            const double more = *roomy == i ? 0 : std::clamp(whole - out[i], 0.0, spare);
            out[i] += more;
            spare -= more;
        }
        for (std::size_t i = 0; i < out.size(); ++i) {
            if (spare < 0)
                out[i] *= width_mm / taken;
            else if (!roomy || *roomy == i)
                out[i] += roomy ? spare : spare / double(out.size());
        }
        return out;
    }
    std::vector<SetLines> known(double width_mm) const
    {
        const std::vector<double> columns = widths(width_mm);
        std::vector<SetLines> cells;
        for (qsizetype i = 0; i < heads.size(); ++i) {
            cells.emplace_back(columns[std::size_t(i)] - sides_mm);
            cells.back().add(first.value(i), small_mm, Weight::regular);
        }
        return cells;
    }
    double firstRow(double width_mm) const
    {
        double height = least_row_mm;
        for (const SetLines& cell : known(width_mm))
            height = std::max(height, cell.height_mm() + 1.4);
        return height;
    }
};

void paintBlank(QPainter& painter, const BlankTable& table, const QRectF& box, int rows)
{
    const QColor ink = drawing::Palette::paper().ink;
    painter.setBrush(Qt::NoBrush);
    const double under_head = box.top() + head_row_mm;
    const std::vector<SetLines> known = table.known(box.width());
    const std::vector<double> columns = table.widths(box.width());
    double x = box.left();
    for (qsizetype i = 0; i < table.heads.size(); ++i) {
        const double wide = columns[std::size_t(i)];
        const double text = wide - BlankTable::sides_mm;
        const double text_left = x + BlankTable::sides_mm / 2;
        const QString head = drawing::wrapped(table.heads[i], text + 0.01, small_mm, Weight::strong).value(0);
        drawing::paintWeightedText(painter, {text_left, box.top() + 2.6}, head, Anchor::left, ink, small_mm,
                                   Weight::strong);
        painter.setPen(penOf(drawing::medium_mm));
        painter.drawRect(QRectF(x, box.top(), wide, box.height()));
        known[std::size_t(i)].paint(painter, {text_left, under_head + 0.7});
        x += wide;
    }
    painter.setPen(penOf(drawing::thin_mm));
    const double first = rows > 1 ? std::max(table.firstRow(box.width()), (box.bottom() - under_head) / rows)
                                  : box.bottom() - under_head;
    for (int row = 0; row < rows; ++row) {
        const double rest = rows > 1 ? (box.bottom() - under_head - first) / (rows - 1) : 0;
        const double y = row == 0 ? under_head : under_head + first + (row - 1) * rest;
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    }
}

/// Cells of a table without lines to write on.
struct EndsTable {
    std::vector<QStringList> rows; ///< the heads first

    /// In which no word is broken.
    double leastWidth(double lettering_mm) const
    {
        std::vector<double> more;
        const std::vector<double> least = leastWidths(lettering_mm, more);
        return std::accumulate(least.begin(), least.end(), 0.0);
    }

    /// Each column as broad as its longest word, and of the rest as much as its longest cell can use.
    std::vector<double> widths(double width_mm, double lettering_mm) const
    {
        std::vector<double> more;
        std::vector<double> least = leastWidths(lettering_mm, more);
        const double spare = width_mm - std::accumulate(least.begin(), least.end(), 0.0);
        const double wanted = std::max(1e-9, std::accumulate(more.begin(), more.end(), 0.0));
        for (std::size_t k = 0; k < least.size(); ++k)
            least[k] += spare > 0 ? spare * more[k] / wanted : spare / double(least.size());
        return least;
    }

    /// \param more  becomes what the longest cells can use beyond that
    std::vector<double> leastWidths(double lettering_mm, std::vector<double>& more) const
    {
        constexpr double apart_mm = 1.8;
        std::vector<double> least(std::size_t(rows[0].size()));
        more.assign(least.size(), 0);
        for (std::size_t k = 0; k < least.size(); ++k) {
            for (std::size_t i = 0; i < rows.size(); ++i) {
                const Weight weight = i == 0 ? Weight::strong : Weight::regular;
                const QString& cell = rows[i][qsizetype(k)];
                more[k] = std::max(more[k], drawing::textWidth(cell, lettering_mm, weight));
                for (const QString& word : drawing::unbroken(cell))
                    least[k] = std::max(least[k], drawing::textWidth(word, lettering_mm, weight));
            }
            more[k] -= least[k];
            least[k] += apart_mm;
        }
        return least;
    }

    std::vector<SetLines> row(std::size_t index, const std::vector<double>& widths, double lettering_mm) const
    {
        constexpr double apart_mm = 1.5;
        std::vector<SetLines> cells;
        for (qsizetype i = 0; i < rows[index].size(); ++i) {
            cells.emplace_back(widths[std::size_t(i)] - apart_mm);
            cells.back().add(rows[index][i], lettering_mm, index == 0 ? Weight::strong : Weight::regular);
        }
        return cells;
    }
    static double heightOf(const std::vector<SetLines>& row, double lettering_mm)
    {
        double most = 0;
        for (const SetLines& cell : row)
            most = std::max(most, cell.height_mm());
        return most + 0.7 * lettering_mm;
    }
};

void paintEnds(QPainter& painter, const EndsTable& table, const QRectF& box, double lettering_mm)
{
    double y = box.top();
    const auto rule = [&](double width_mm) {
        painter.setPen(penOf(width_mm));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    };
    rule(drawing::medium_mm);
    const std::vector<double> widths = table.widths(box.width(), lettering_mm);
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const std::vector<SetLines> row = table.row(i, widths, lettering_mm);
        double x = box.left();
        for (std::size_t k = 0; k < row.size(); ++k) {
            row[k].paint(painter, {x, y + 0.4 * lettering_mm});
            x += widths[k];
        }
        y += EndsTable::heightOf(row, lettering_mm);
        rule(i == 0 || i + 1 == table.rows.size() ? drawing::medium_mm : drawing::hairline_mm);
    }
}

constexpr double tag_over_and_under_mm = 4;
constexpr double widest_tag_mm = 110;

/// What stands on the tag, beside its hole.
SetLines wordsOfTag(const QString& unit, double width_mm)
{
    constexpr double beside_mm = 20;
    SetLines lines(width_mm - beside_mm);
    const QString sign = tr("Valves open before turning on");
    bool whole = true; // no word is broken
    for (const QString& word : sign.split(QLatin1Char(' ')))
        whole = whole && drawing::textWidth(word, title_mm, Weight::strong) <= width_mm - beside_mm;
    lines.addEven(sign, whole ? title_mm : heading_mm, Weight::strong);
    lines.add(tr("Coolant in the heater before turning on. Heater off before a valve is closed."), body_mm,
              Weight::regular);
    lines.add(unit, body_mm, Weight::strong);
    return lines;
}

} // namespace

/// What was changed and who signs: beside each other in so much room, else under each other.
constexpr double least_beside_mm = 150;
constexpr double changes_share = 0.55;

Inset insetToSign(const Job& job)
{
    const SheetDetails& sheet = job.sketch.sheet;
    const auto changes = std::make_shared<const BlankTable>(
        BlankTable{{tr("Rev."), tr("What was changed"), tr("By"), tr("Date")},
                   {words(sheet.revision), words(sheet.revision_change), words(sheet.creator),
                    words(sheet.date_of_issue)},
                   1});
    const auto hands = std::make_shared<const BlankTable>(BlankTable{
        {tr("Fitted by, date"), tr("Checked by, date"), tr("Handed over to, date")}, {}, std::nullopt});
    Inset inset;
    inset.needed = true;
    inset.least_width_mm = 68;
    inset.height_mm = [changes](double width, double) {
        const bool beside = width >= least_beside_mm;
        const double upper =
            head_row_mm + changes->firstRow(beside ? changes_share * width : width) + least_row_mm;
        const double hands_mm = head_row_mm + signed_row_mm;
        return beside ? std::max(upper, hands_mm) : upper + tables_apart_mm + hands_mm;
    };
    inset.paint = [changes, hands](QPainter& painter, const QRectF& box, double) {
        if (box.width() >= least_beside_mm) {
            const double changes_mm = changes_share * box.width();
            const QRectF left = box.adjusted(0, 0, changes_mm - box.width(), 0);
            const double rows_mm = left.height() - head_row_mm - changes->firstRow(changes_mm);
            paintBlank(painter, *changes, left, 1 + std::max(1, static_cast<int>(rows_mm / least_row_mm)));
            paintBlank(painter, *hands, box.adjusted(changes_mm + tables_apart_mm, 0, 0, 0), 1);
            return;
        }
        const double below = head_row_mm + signed_row_mm;
        const QRectF upper = box.adjusted(0, 0, 0, -below - tables_apart_mm);
        const double left_mm = upper.height() - head_row_mm - changes->firstRow(box.width());
        paintBlank(painter, *changes, upper, 1 + std::max(1, static_cast<int>(left_mm / least_row_mm)));
        paintBlank(painter, *hands, QRectF(box.left(), box.bottom() - below, box.width(), below), 1);
    };
    return inset;
}

Inset insetOfEnds(const Job& job)
{
    EndsTable all;
    all.rows = {{tr("Where"), tr("Thread"), tr("Screwed in"), tr("Hose end"), tr("Sealant")}};
    for (const QStringList& row : rowsOfEnds(job))
        all.rows.push_back(row);
    const auto table = std::make_shared<const EndsTable>(std::move(all));
    Inset inset;
    inset.heading = tr("Ports and hose ends");
    inset.least_width_at = [table](double lettering) { return std::max(74.0, table->leastWidth(lettering)); };
    inset.height_mm = [table](double width, double lettering) {
        double height = 0;
        const std::vector<double> widths = table->widths(width, lettering);
        for (std::size_t i = 0; i < table->rows.size(); ++i)
            height += EndsTable::heightOf(table->row(i, widths, lettering), lettering);
        return height;
    };
    inset.paint = [table](QPainter& painter, const QRectF& box, double lettering) {
        paintEnds(painter, *table, box, lettering);
    };
    return inset;
}

Inset insetTag(const Job& job)
{
    const SheetDetails& sheet = job.sketch.sheet;
    const QString unit = words(sheet.vehicle.empty() ? sheet.title : sheet.vehicle);
    Inset inset;
    inset.heading = tr("Tag to cut out and tie to the switch");
    inset.least_width_mm = 56;
    inset.height_mm = [unit](double width, double) {
        return wordsOfTag(unit, std::min(width, widest_tag_mm)).height_mm() + 2 * tag_over_and_under_mm;
    };
    inset.paint = [unit](QPainter& painter, const QRectF& box, double) {
        const QRectF tag(box.topLeft(), QSizeF(std::min(box.width(), widest_tag_mm), box.height()));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(drawing::Palette::paper().ink, drawing::medium_mm, Qt::DashLine));
        painter.drawRect(tag);
        painter.setPen(penOf(drawing::edge_mm));
        painter.drawEllipse(QPointF(tag.left() + 8, tag.center().y()), 4, 4);
        wordsOfTag(unit, tag.width()).paint(painter, tag.topLeft() + QPointF(16, tag_over_and_under_mm));
    };
    return inset;
}

} // namespace siphonwright::paper
