#include "app/drawing/text.h"
#include "app/language/language.h"
#include "app/language/tr.h"
#include "app/sheet/end_view.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

/// Title block after ISO 7200, and the bars that a print can be measured by.
namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

/// The largest lettering of the series in which a text fits; the smallest where none does.
double fittingLettering(const QString& text, double width_mm, double largest_mm, Weight weight)
{
    for (const double size : {large_mm, normal_mm}) {
        if (size <= largest_mm && drawing::textWidth(text, size, weight) <= width_mm)
            return size;
    }
    return small_mm;
}

/// What of a text too long for the smallest lettering can be read, with a sign that there is more.
QString shortened(QString text, double width_mm, double lettering_mm, Weight weight)
{
    const QChar more(0x2026);
    if (drawing::textWidth(text, lettering_mm, weight) <= width_mm + 1e-6)
        return text;
    while (!text.isEmpty() && drawing::textWidth(text + more, lettering_mm, weight) > width_mm)
        text.chop(1);
    return text + more;
}

struct Cell {
    QRectF box;
    QString name;
    QString value;
    double lettering_mm = normal_mm;
    Weight weight = Weight::regular;
};

void paintCell(const Page& page, const Cell& cell)
{
    page.painter.setPen(QPen(page.palette.ink, drawing::medium_mm));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(cell.box);
    const double inside = cell.box.width() - 2.4;
    const double left = cell.box.left() + 1.2;
    drawing::paintWeightedText(page.painter, {left, cell.box.top() + 2.6},
                               shortened(cell.name, inside, small_mm, Weight::regular), Anchor::left,
                               page.palette.faint, small_mm, Weight::regular);
    if (cell.value.isEmpty())
        return;
    const double size = fittingLettering(cell.value, inside, cell.lettering_mm, cell.weight);
    const QString text = shortened(cell.value, inside, size, cell.weight);
    drawing::paintWeightedText(page.painter, {left, cell.box.bottom() - 1.2}, text, Anchor::left,
                               page.palette.ink, size, cell.weight);
}

/// What is not entered is written into the cell by hand.
QString heaterSerials(const Sketch& sketch)
{
    QStringList serials;
    for (const Heater& heater : sketch.heaters)
        if (!heater.serial_number.empty())
            serials << QString::fromStdString(heater.serial_number);
    return serials.join(QStringLiteral(", "));
}

/// Which page of the set these sheets are, whatever their number: "1, drawing: sheets 1 to 3".
QString pageName(const Options& options)
{
    return options.notes_sheets > 0 ? tr("1, drawing: sheets 1 to %1").arg(1 + options.notes_sheets)
                                    : tr("1, drawing");
}

/// The owner's sign over his name, as large as its cell takes; grey where nothing is in colour.
void paintLogo(const Page& page, const QRectF& cell)
{
    if (page.options.logo.isNull())
        return;
    const QRectF room(cell.left() + 18, cell.top() + 1, cell.width() - 19, cell.height() - 6.5);
    QImage flat(page.options.logo.size(), QImage::Format_RGB32);
    flat.fill(Qt::white);
    QPainter(&flat).drawImage(0, 0, page.options.logo);
    if (!page.options.colour)
        flat = flat.convertToFormat(QImage::Format_Grayscale8);
    const QSizeF size = QSizeF(flat.size()).scaled(room.size(), Qt::KeepAspectRatio);
    page.painter.drawImage(QRectF(QPointF(room.right() - size.width(), room.top()), size), flat);
}

/// A bar in alternating black and white fields with figures at its ends.
void paintBar(const Page& page, QPointF at, double length_mm, int fields, const QString& far_end)
{
    page.painter.setPen(QPen(page.palette.ink, drawing::thin_mm));
    for (int i = 0; i < fields; ++i) {
        page.painter.setBrush(i % 2 ? page.palette.ground : page.palette.ink);
        page.painter.drawRect(QRectF(at.x() + length_mm * i / fields, at.y(), length_mm / fields, 1.6));
    }
    drawing::paintWeightedText(page.painter, at + QPointF(0, 4.4), QStringLiteral("0"), Anchor::left,
                               page.palette.ink, small_mm, Weight::regular);
    drawing::paintWeightedText(page.painter, at + QPointF(length_mm, 4.4), far_end, Anchor::right,
                               page.palette.ink, small_mm, Weight::regular);
}

/// A square that tells a print to scale from one that was fitted to its paper, along and across.
void paintMeasureMe(const Page& page, const QRectF& square)
{
    page.painter.setBrush(Qt::NoBrush);
    page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    page.painter.drawRect(square);
    QStringList lines;
    for (const QString& text : {tr("Measure me:"), page.units == UnitSystem::inch ? tr("1 in") : tr("25 mm"),
                                tr("each way when printed at 100 %")})
        lines += drawing::wrapped(text, square.width() - 2.4, small_mm, Weight::strong);
    const double step = 1.7 * small_mm;
    double baseline = square.center().y() - step * double(lines.size()) / 2 + 1.25 * small_mm;
    for (const QString& line : lines) {
        drawing::paintWeightedText(page.painter, {square.center().x(), baseline}, line, Anchor::centre,
                                   page.palette.ink, small_mm, Weight::strong);
        baseline += step;
    }
}

/// The longest round length whose bar is at most this long on paper.
double roundLength(double at_most)
{
    const double ten = std::pow(10, std::floor(std::log10(at_most)));
    return at_most >= 5 * ten ? 5 * ten : at_most >= 2 * ten ? 2 * ten : ten;
}

constexpr double inch_mm = 25.4;

/// Does the drawing tell of air, whose amount no finding gives? A finding counts the bore over a hump's sill.
bool saysUndersized(const Analysis& analysis)
{
    return std::any_of(analysis.findings.begin(), analysis.findings.end(), [](const Finding& finding) {
        return finding.rule == "bore-under-manual" || finding.rule == "bore-restriction";
    });
}

bool saysRunning(const Analysis& analysis)
{
    return std::any_of(analysis.running.loops.begin(), analysis.running.loops.end(),
                       [](const LoopRun& loop) { return loop.missing.empty(); });
}

bool saysAir(const Analysis& analysis)
{
    return analysis.proof &&
           std::any_of(analysis.proof->filling.pockets.begin(), analysis.proof->filling.pockets.end(),
                       [](const PocketFound& pocket) { return pocket.volume_ml >= drawing::least_named_ml; });
}

} // namespace

double measureMeSide(UnitSystem units)
{
    return units == UnitSystem::inch ? inch_mm : 25;
}

void paintTitleBlock(const Page& page, const QRectF& box, int denominator)
{
    const SheetDetails& s = page.sketch.sheet;
    const auto q = [](const std::string& text) { return QString::fromStdString(text); };
    const double x = box.left();
    const double y = box.top();
    const double k = box.width() / 180;
    const auto at = [&](double left, double top, double width, double height) {
        return QRectF(x + left * k, y + top, width * k, height);
    };
    const QString type = s.document_type.empty() ? tr("Layout sheet") : q(s.document_type);
    const QString scale = denominator > 0 ? QStringLiteral("1:%1").arg(denominator) : tr("none");
    const std::vector<Cell> cells = {
        {at(0, 0, 40, 8), tr("Department"), q(s.department)},
        {at(40, 0, 40, 8), tr("Technical reference"), q(s.technical_reference)},
        {at(80, 0, 50, 8), tr("Creator"), q(s.creator)},
        {at(130, 0, 50, 8), tr("Approver"), q(s.approver)},
        {at(0, 8, 52, 16), tr("Legal owner"), q(s.legal_owner),
         page.options.logo.isNull() ? large_mm : normal_mm, Weight::strong},
        {at(52, 8, 83, 9), tr("Title"), q(s.title), large_mm, Weight::strong},
        {at(52, 17, 83, 7), tr("Supplementary title"), q(s.supplementary_title)},
        {at(135, 8, 45, 8), tr("Document type"), type},
        {at(135, 16, 45, 8), tr("Identification number"), q(s.identification_number), normal_mm,
         Weight::strong},
        {at(0, 24, 47, 8), tr("Vehicle"), q(s.vehicle)},
        {at(47, 24, 43, 8), tr("Customer"), q(s.customer)},
        {at(90, 24, 13, 8), QString(), QString()},
        {at(103, 24, 15, 8), tr("Scale"), scale, normal_mm, Weight::strong},
        {at(118, 24, 12, 8), tr("Rev."), q(s.revision)},
        {at(130, 24, 24, 8), tr("Date of issue"), q(s.date_of_issue)},
        {at(154, 24, 12, 8), tr("Lang."), language::inUse()},
        {at(166, 24, 14, 8), tr("Sheet"), QStringLiteral("%1/%2").arg(page.number).arg(page.options.sheets)},
        {at(0, 32, 37, 8), tr("Vehicle's serial number"), q(s.vehicle_serial)},
        {at(37, 32, 34, 8), tr("Engine's serial number"),
         page.sketch.engine ? q(page.sketch.engine->serial_number) : QString()},
        {at(71, 32, 32, 8), tr("Heater's serial number"), heaterSerials(page.sketch)},
        {at(103, 32, 41, 8), tr("Changed in this revision"), q(s.revision_change)},
        {at(144, 32, 36, 8), tr("Page"), pageName(page.options)},
    };
    for (const Cell& cell : cells)
        paintCell(page, cell);
    paintLogo(page, at(0, 8, 52, 16));
    paintProjectionSymbol(page, at(90, 24, 13, 8));
    page.painter.setPen(QPen(page.palette.ink, drawing::border_mm));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
}

void paintFoot(const Page& page, const Plan& plan)
{
    const QRectF& box = plan.foot;
    const int denominator = plan.denominator;
    page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
    constexpr double inset = 4;
    const bool inches = page.units == UnitSystem::inch;
    const double side = measureMeSide(page.units);
    paintMeasureMe(page, QRectF(box.right() - inset - side, box.center().y() - side / 2, side, side));
    const double left = box.left() + inset;
    const double room = std::min(box.width() - side - 3 * inset, plan.foot_free.left() - left - 2);
    const double unit_mm = inches ? inch_mm : 1;
    const double length = roundLength(std::min(60.0, room) * denominator / unit_mm) * unit_mm;
    const QString end = inches ? tr("%1 in").arg(length / inch_mm) : tr("%1 mm").arg(length);
    paintBar(page, {left, box.top() + 7}, length / denominator, 5, end);
    drawing::paintWeightedText(page.painter, {left, box.top() + 4.6}, tr("Scale 1:%1").arg(denominator),
                               Anchor::left, page.palette.ink, small_mm, Weight::strong);
    QStringList notes{tr("Slopes: rise over run, the way it flows.")};
    if (anyUnmeasured(page.sketch, page.analysis))
        notes << tr("* not measured");
    if (!page.options.student && saysAir(page.analysis))
        notes << tr("Air is what stays after filling.");
    if (!page.options.student && saysUndersized(page.analysis))
        notes << tr("Crossed out: a hose whose bore is too small.");
    if (!page.options.student && page.options.running && saysRunning(page.analysis))
        notes << tr("In a box: as it runs at that block temperature.");
    double baseline = box.top() + 17;
    for (const QString& note : notes)
        for (const QString& line : drawing::wrapped(note, room, small_mm)) {
            if (baseline > box.bottom() - 1)
                return;
            drawing::paintWeightedText(page.painter, {left, baseline}, line, Anchor::left, page.palette.ink,
                                       small_mm, Weight::regular);
            baseline += 1.7 * small_mm;
        }
}

} // namespace siphonwright::sheet
