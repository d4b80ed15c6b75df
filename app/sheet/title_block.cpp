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

/// The largest lettering of the series in which a text fits; below it, exactly what fits.
double fittingLettering(const QString& text, double width_mm, double largest_mm, Weight weight)
{
    for (const double size : {large_mm, normal_mm, small_mm}) {
        if (size <= largest_mm && drawing::textWidth(text, size, weight) <= width_mm)
            return size;
    }
    return std::max(1.3, small_mm * width_mm / drawing::textWidth(text, small_mm, weight));
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
    page.painter.setPen(QPen(page.palette.ink, 0.25));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(cell.box);
    const double inside = cell.box.width() - 2.4;
    const double left = cell.box.left() + 1.2;
    const double caption = fittingLettering(cell.name, inside, small_mm, Weight::regular);
    drawing::paintWeightedText(page.painter, {left, cell.box.top() + 2.6}, cell.name, Anchor::left,
                               page.palette.faint, caption, Weight::regular);
    if (cell.value.isEmpty())
        return;
    const double size = fittingLettering(cell.value, inside, cell.lettering_mm, cell.weight);
    const QString text = shortened(cell.value, inside, size, cell.weight);
    drawing::paintWeightedText(page.painter, {left, cell.box.bottom() - 1.2}, text, Anchor::left,
                               page.palette.ink, size, cell.weight);
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
    page.painter.setPen(QPen(page.palette.ink, 0.18));
    for (int i = 0; i < fields; ++i) {
        page.painter.setBrush(i % 2 ? page.palette.ground : page.palette.ink);
        page.painter.drawRect(QRectF(at.x() + length_mm * i / fields, at.y(), length_mm / fields, 1.6));
    }
    drawing::paintWeightedText(page.painter, at + QPointF(0, 4.4), QStringLiteral("0"), Anchor::left,
                               page.palette.ink, small_mm, Weight::regular);
    drawing::paintWeightedText(page.painter, at + QPointF(length_mm, 4.4), far_end, Anchor::right,
                               page.palette.ink, small_mm, Weight::regular);
}

/// The longest round length whose bar is at most this long on paper.
double roundLength(double at_most)
{
    const double ten = std::pow(10, std::floor(std::log10(at_most)));
    return at_most >= 5 * ten ? 5 * ten : at_most >= 2 * ten ? 2 * ten : ten;
}

} // namespace

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
    const QString scale = QStringLiteral("1:%1").arg(denominator);
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
        {at(0, 24, 40, 8), tr("Vehicle"), q(s.vehicle)},
        {at(40, 24, 37, 8), tr("Customer"), q(s.customer)},
        {at(77, 24, 13, 8), QString(), QString()},
        {at(90, 24, 18, 8), tr("Scale"), scale, normal_mm, Weight::strong},
        {at(108, 24, 14, 8), tr("Rev."), q(s.revision)},
        {at(122, 24, 28, 8), tr("Date of issue"), q(s.date_of_issue)},
        {at(150, 24, 14, 8), tr("Lang."), language::inUse()},
        {at(164, 24, 16, 8), tr("Sheet"), QStringLiteral("1/%1").arg(page.options.sheets)},
    };
    for (const Cell& cell : cells)
        paintCell(page, cell);
    paintLogo(page, at(0, 8, 52, 16));
    paintProjectionSymbol(page, at(77, 24, 13, 8));
    page.painter.setPen(QPen(page.palette.ink, 0.7));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
}

void paintFoot(const Page& page, const QRectF& box, int denominator)
{
    page.painter.setPen(QPen(page.palette.ink, 0.35));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
    const bool side_by_side = box.height() < 20;
    const double left = box.left() + 4;
    const double inch_mm = 25.4;
    const bool inches = page.units == UnitSystem::inch;
    const double unit_mm = inches ? inch_mm : 1;
    const double length = roundLength(60.0 * denominator / unit_mm) * unit_mm;
    const QString end = inches ? tr("%1 in").arg(length / inch_mm) : tr("%1 mm").arg(length);
    paintBar(page, {left, box.top() + 6}, length / denominator, 5, end);
    drawing::paintWeightedText(page.painter, {left, box.top() + 4}, tr("Scale 1:%1").arg(denominator),
                               Anchor::left, page.palette.ink, small_mm, Weight::strong);
    const QPointF second = side_by_side ? QPointF(left + 84, box.top() + 6) : QPointF(left, box.top() + 21);
    drawing::paintWeightedText(page.painter, second - QPointF(0, 2),
                               tr("Measure me: 50 mm when printed at 100 %"), Anchor::left, page.palette.ink,
                               small_mm, Weight::strong);
    paintBar(page, second, 50, 5, tr("50 mm"));
    const QPointF third =
        side_by_side ? QPointF(left + 138, box.top() + 4) : QPointF(left, box.bottom() - 1.6);
    if (anyUnmeasured(page.sketch, page.analysis)) {
        const QString star = tr("* not measured");
        const double size = fittingLettering(star, box.right() - third.x() - 1, small_mm, Weight::regular);
        drawing::paintWeightedText(page.painter, third, star, Anchor::left, page.palette.ink, size,
                                   Weight::regular);
    }
}

} // namespace siphonwright::sheet
