#include "app/commissioning/page.h"

#include "app/commissioning/expected_ink.h"
#include "app/commissioning/words.h"
#include "app/drawing/line_table.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/panels/field.h"

#include "core/commissioning/checklist_text.h"
#include "core/layout/wording.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace siphonwright::commissioning {
namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double margin_mm = 12;
constexpr double head_mm = 16;
constexpr double foot_mm = 9;
constexpr double title_lettering_mm = drawing::text_mm;
constexpr double lettering_mm = drawing::small_text_mm;
constexpr double leading = 1.75; ///< line to line, as a multiple of the lettering
constexpr double box_mm = 5;
constexpr double gap_mm = 2.6;
constexpr double table_row_mm = 8;
constexpr double expected_mm = 36; ///< chart under a readings table

/// A stretch of the page that is not broken.
struct Block {
    const WorkStep* step = nullptr; ///< null: the readings table
    QStringList title;
    QStringList caution;
    QStringList numbers;
    QString done;
    Id heater; ///< of a readings table
    double height_mm = 0;
};

double lines(qsizetype count, double lettering)
{
    return double(count) * lettering * leading;
}

class Paper {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::commissioning)

public:
    Paper(const Sketch& sketch, const Analysis& analysis, const sheet::Options& options)
        : sketch_(sketch), analysis_(analysis), size_(sheet::pageSize(options))
    {
        layBlocks();
        breakPages();
    }

    int count() const { return static_cast<int>(pages_.size()); }

    void paint(QPainter& painter, int page, const QString& place = {}) const
    {
        painter.save();
        paintHead(painter, page, place);
        double y = margin_mm + head_mm;
        for (const std::size_t index : pages_.at(static_cast<std::size_t>(page))) {
            const Block& block = blocks_[index];
            if (block.step)
                paintStep(painter, block, y);
            else
                paintTable(painter, block, y);
            y += block.height_mm + gap_mm;
        }
        painter.restore();
    }

private:
    double width() const { return size_.width() - 2 * margin_mm; }

    void layBlocks()
    {
        const double room = width() - box_mm - 4;
        const UnitSystem units = panels::unitsOf(sketch_);
        int number = 1;
        for (const WorkStep& step : checklistSteps()) {
            Block block;
            block.step = &step;
            block.title = drawing::wrapped(tr("%1. %2").arg(number++).arg(text(step.title)), room - 52,
                                           title_lettering_mm, Weight::strong);
            block.caution = drawing::wrapped(tr("Caution: %1").arg(text(step.caution)), room - 52,
                                             lettering_mm, Weight::strong);
            for (const Message& line : textOf(step, sketch_, analysis_))
                block.numbers += drawing::wrapped(text(line, units), room, lettering_mm);
            if (const Tick* tick = tickOf(sketch_.checklist, step.id))
                block.done = tick->by.empty()
                                 ? shownTime(tick->time)
                                 : tr("%1, %2").arg(QString::fromStdString(tick->by), shownTime(tick->time));
            block.height_mm = lines(block.title.size(), title_lettering_mm) +
                              lines(block.caution.size() + block.numbers.size(), lettering_mm) + 1.2;
            blocks_.push_back(std::move(block));
        }
        for (const Heater& heater : sketch_.heaters) {
            Block table;
            table.heater = heater.id;
            table.numbers =
                drawing::wrapped(limitsText(sketch_, analysis_, heater.id), width(), lettering_mm);
            table.height_mm = 7 + lines(table.numbers.size(), lettering_mm) +
                              table_row_mm * (1 + rowCount()) +
                              (hasExpected(analysis_, heater.id) ? expected_mm : 0);
            blocks_.push_back(std::move(table));
        }
    }

    static int rowCount() { return 6; }

    void breakPages()
    {
        const double most = size_.height() - 2 * margin_mm - head_mm - foot_mm;
        double used = 0;
        pages_.emplace_back();
        for (std::size_t i = 0; i < blocks_.size(); ++i) {
            if (used + blocks_[i].height_mm > most && !pages_.back().empty()) {
                pages_.emplace_back();
                used = 0;
            }
            pages_.back().push_back(i);
            used += blocks_[i].height_mm + gap_mm;
        }
    }

    static void write(QPainter& painter, QPointF at, const QString& words, double lettering,
                      Weight weight = Weight::regular, Anchor anchor = Anchor::left)
    {
        drawing::paintWeightedText(painter, at, words, anchor, Qt::black, lettering, weight);
    }

    void paintHead(QPainter& painter, int page, const QString& place) const
    {
        const double right = size_.width() - margin_mm;
        write(painter, {margin_mm, margin_mm + 4}, tr("Commissioning checklist"), drawing::heading_text_mm,
              Weight::strong);
        QStringList of;
        for (const std::string& one :
             {sketch_.sheet.title, sketch_.sheet.vehicle, sketch_.sheet.identification_number})
            if (!one.empty())
                of << QString::fromStdString(one);
        const QStringList fitted =
            drawing::wrapped(of.join(QStringLiteral(" · ")), width() - 52, title_lettering_mm);
        if (!fitted.isEmpty())
            write(painter, {margin_mm, margin_mm + 9.5}, fitted.first(), title_lettering_mm);
        write(painter, {right - 47, margin_mm + 9.5}, tr("done by, time"), lettering_mm);
        painter.setPen(QPen(Qt::black, drawing::edge_mm));
        painter.drawLine(QPointF(margin_mm, margin_mm + 12), QPointF(right, margin_mm + 12));
        const double foot = size_.height() - margin_mm;
        painter.setPen(QPen(Qt::black, drawing::thin_mm));
        painter.drawLine(QPointF(margin_mm, foot - 5), QPointF(right, foot - 5));
        write(painter, {margin_mm, foot - 1},
              tr("Estimates from stated assumptions. The heater's and the engine's own manuals rule."),
              lettering_mm);
        write(painter, {right, foot - 1},
              place.isEmpty() ? tr("page %1 of %2").arg(page + 1).arg(count()) : place, lettering_mm,
              Weight::regular, Anchor::right);
    }

    void paintStep(QPainter& painter, const Block& block, double top) const
    {
        const double left = margin_mm + box_mm + 4;
        const double right = size_.width() - margin_mm;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(Qt::black, drawing::edge_mm));
        painter.drawRect(QRectF(margin_mm, top, box_mm, box_mm));
        if (!block.done.isEmpty()) {
            painter.setPen(QPen(Qt::black, drawing::thick_mm));
            painter.drawPolyline(QPolygonF{
                {margin_mm + 1, top + 2.6}, {margin_mm + 2.2, top + 4}, {margin_mm + 4.2, top + 0.9}});
        }
        painter.setPen(QPen(Qt::black, drawing::thin_mm));
        painter.drawLine(QPointF(right - 48, top + 4), QPointF(right, top + 4));
        if (!block.done.isEmpty())
            write(painter, {right - 47, top + 3.2}, block.done, lettering_mm);
        double y = top;
        const auto paragraph = [&](const QStringList& all, double lettering, Weight weight) {
            for (const QString& one : all) {
                y += lettering * leading;
                write(painter, {left, y - 0.4 * lettering}, one, lettering, weight);
            }
        };
        paragraph(block.title, title_lettering_mm, Weight::strong);
        paragraph(block.caution, lettering_mm, Weight::strong);
        paragraph(block.numbers, lettering_mm, Weight::regular);
    }

    /// Columns to fill in by hand, as wide as what goes into them.
    void paintTable(QPainter& painter, const Block& block, double top) const
    {
        const Heater* heater = sketch_.heater(block.heater);
        const UnitSystem units = panels::unitsOf(sketch_);
        const bool inch = units == UnitSystem::inch;
        const QString degree = inch ? tr("°F") : tr("°C");
        const QString length = inch ? tr("in") : tr("mm");
        const std::vector<QStringList> heads = {
            {tr("Time"), {}},           {tr("Ambient"), degree},  {tr("Inlet"), degree},
            {tr("Outlet"), degree},     {tr("Return"), degree},   {tr("Engine"), degree},
            {tr("Current"), tr("A")},   {tr("Voltage"), tr("V")}, {tr("Level"), length},
            {tr("On/off"), tr("seen")}, {tr("Note"), {}}};
        write(painter, {margin_mm, top + 4},
              tr("Readings: %1").arg(heater ? inWords(nameOfHeater(*heater)) : QString()), title_lettering_mm,
              Weight::strong);
        double y = top + 4;
        for (const QString& line : block.numbers) {
            y += lettering_mm * leading;
            write(painter, {margin_mm, y + 0.6}, line, lettering_mm);
        }
        const double from = top + 7 + lines(block.numbers.size(), lettering_mm);
        const double under = from + table_row_mm * (1 + rowCount());
        paintExpected(painter, sketch_, analysis_, block.heater,
                      QRectF(margin_mm, under + 2, width() * 0.7, expected_mm - 2));
        const double column = width() / double(heads.size());
        painter.setPen(QPen(Qt::black, drawing::medium_mm));
        for (int row = 0; row <= rowCount() + 1; ++row)
            painter.drawLine(QPointF(margin_mm, from + row * table_row_mm),
                             QPointF(margin_mm + width(), from + row * table_row_mm));
        for (std::size_t i = 0; i <= heads.size(); ++i)
            painter.drawLine(QPointF(margin_mm + double(i) * column, from),
                             QPointF(margin_mm + double(i) * column, from + table_row_mm * (rowCount() + 1)));
        for (std::size_t i = 0; i < heads.size(); ++i) {
            const double x = margin_mm + (double(i) + 0.5) * column;
            write(painter, {x, from + 3.4}, heads[i][0], lettering_mm, Weight::strong, Anchor::centre);
            write(painter, {x, from + 6.7}, heads[i][1], lettering_mm, Weight::regular, Anchor::centre);
        }
        fillTable(painter, block.heater, from + table_row_mm, column);
    }

    /// What was read already; the rest stays empty.
    void fillTable(QPainter& painter, const Id& heater, double from, double column) const
    {
        const UnitSystem units = panels::unitsOf(sketch_);
        int row = 0;
        for (const Reading& reading : sketch_.readings) {
            if (reading.heater != heater || row >= rowCount())
                continue;
            QStringList cells = {shownTime(reading.time).section(u' ', -1),
                                 reading.ambient_degC ? text(*reading.ambient_degC, Unit::degC, units)
                                                      : QString()};
            for (const Instrument& one : instruments())
                if (const std::optional<double>& value = readOn(reading, one.channel))
                    cells << text(*value, one.unit, units);
                else
                    cells << QString();
            for (qsizetype i = 0; i < cells.size(); ++i)
                write(painter, {margin_mm + (double(i) + 0.5) * column, from + row * table_row_mm + 5},
                      cells[i], lettering_mm, Weight::regular, Anchor::centre);
            ++row;
        }
    }

    const Sketch& sketch_;
    const Analysis& analysis_;
    QSizeF size_;
    std::vector<Block> blocks_;
    std::vector<std::vector<std::size_t>> pages_;
};

} // namespace

sheet::Options pageOptions(sheet::Paper paper)
{
    sheet::Options out;
    out.paper = paper == sheet::Paper::letter || paper == sheet::Paper::tabloid ? sheet::Paper::letter
                                                                                : sheet::Paper::a4;
    out.orientation = QPageLayout::Portrait;
    return out;
}

QString pageTitle()
{
    return tr("Commissioning checklist");
}

QString pageHolds()
{
    return tr("steps with their cautions, readings with limits and what is expected");
}

int pageCount(const Sketch& sketch, const Analysis& analysis, const sheet::Options& options)
{
    return Paper(sketch, analysis, options).count();
}

void paintPage(QPainter& painter, const Sketch& sketch, const Analysis& analysis,
               const sheet::Options& options, int page, const QString& place)
{
    const Paper paper(sketch, analysis, options);
    if (page >= 0 && page < paper.count())
        paper.paint(painter, page, place);
}

QStringList exportTo(const QString& path, const Sketch& sketch, const Analysis& analysis,
                     const sheet::Options& options, const PutFile& put)
{
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&file);
        writer.setTitle(tr("Commissioning checklist"));
        writer.setCreator(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION));
        writer.setResolution(1200);
        writer.setPageLayout(sheet::pageLayout(options));
        QPainter painter;
        if (!painter.begin(&writer))
            return {tr("%1: the checklist could not be drawn.").arg(path)};
        const Paper paper(sketch, analysis, options);
        const double per_mm = writer.logicalDpiX() / 25.4;
        painter.scale(per_mm, per_mm);
        for (int page = 0; page < paper.count(); ++page) {
            if (page > 0)
                writer.newPage();
            paper.paint(painter, page);
        }
    }
    return put(path, file.data());
}

} // namespace siphonwright::commissioning
