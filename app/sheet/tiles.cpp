#include "app/drawing/elevation.h"
#include "app/drawing/line_table.h"
#include "app/drawing/text.h"
#include "app/language/tr.h"
#include "app/sheet/sheet.h"

#include <QPainter>

/// A drawing larger than its paper: printed in pieces that are trimmed at marks and joined edge to edge.
namespace siphonwright::sheet {

namespace {

/// Short lines outside the corners of what is printed, where to cut.
void paintTrimMarks(QPainter& painter, const QRectF& printed)
{
    constexpr double gap_mm = 1.5;
    constexpr double mark_mm = 6;
    painter.setPen(QPen(drawing::Palette::paper().ink, drawing::medium_mm, Qt::SolidLine, Qt::FlatCap));
    for (const double x : {printed.left(), printed.right()}) {
        for (const double y : {printed.top(), printed.bottom()}) {
            const double out_x = x == printed.left() ? -1 : 1;
            const double out_y = y == printed.top() ? -1 : 1;
            painter.drawLine(QPointF(x + out_x * gap_mm, y), QPointF(x + out_x * (gap_mm + mark_mm), y));
            painter.drawLine(QPointF(x, y + out_y * gap_mm), QPointF(x, y + out_y * (gap_mm + mark_mm)));
        }
    }
}

void paintTile(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options,
               int column, int row)
{
    const QSizeF paper = paperSize(options);
    const QRectF printed(tile_margin_mm, tile_margin_mm, paper.width() - 2 * tile_margin_mm,
                         paper.height() - 2 * tile_margin_mm);
    painter.save();
    painter.setClipRect(printed);
    painter.translate(printed.left() - column * printed.width(), printed.top() - row * printed.height());
    paintPage(painter, sketch, analysis, options);
    painter.restore();
    painter.save();
    paintTrimMarks(painter, printed);
    constexpr double lettering_mm = drawing::text_mm;
    drawing::paintWeightedText(painter, {printed.left() + 12, printed.bottom() + 2 + 2 * lettering_mm},
                               tr("Row %1 of %2, column %3 of %4. Trim at the marks and join.")
                                   .arg(row + 1)
                                   .arg(options.down)
                                   .arg(column + 1)
                                   .arg(options.across),
                               drawing::Anchor::left, drawing::Palette::paper().ink, lettering_mm,
                               drawing::Weight::regular);
    painter.restore();
}

} // namespace

std::vector<FurtherPage> drawingPages(const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    std::vector<FurtherPage> pages;
    const auto add = [&pages, &options](std::function<void(QPainter&)> paint) {
        pages.push_back({pageLayout(options), std::move(paint), {}, {}});
    };
    if (options.across <= 1 && options.down <= 1)
        add([&sketch, &analysis, options](QPainter& painter) {
            paintPage(painter, sketch, analysis, options);
        });
    else
        for (int row = 0; row < options.down; ++row)
            for (int column = 0; column < options.across; ++column)
                add([&sketch, &analysis, options, column, row](QPainter& painter) {
                    paintTile(painter, sketch, analysis, options, column, row);
                });
    for (int number = 2; number < 2 + options.notes_sheets; ++number)
        add([&sketch, &analysis, options, number](QPainter& painter) {
            paintNotesSheet(painter, sketch, analysis, options, number);
        });
    return pages;
}

} // namespace siphonwright::sheet
