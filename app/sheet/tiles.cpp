#include "app/drawing/elevation.h"
#include "app/drawing/line_table.h"
#include "app/drawing/text.h"
#include "app/language/tr.h"
#include "app/sheet/lay_out.h"
#include "app/sheet/sheet.h"

#include <QPainter>

#include <memory>

/// A drawing larger than its paper: printed in pieces that are trimmed at marks and joined edge to edge.
namespace siphonwright::sheet {

namespace {

/// Short lines outside the corners of what is printed, where to cut.
void paintTrimMarks(QPainter& painter, const QRectF& printed)
{
    constexpr double corner_gap_mm = 1.5;
    constexpr double mark_mm = 6;
    painter.setPen(QPen(drawing::Palette::paper().ink, drawing::medium_mm, Qt::SolidLine, Qt::FlatCap));
    for (const double x : {printed.left(), printed.right()}) {
        for (const double y : {printed.top(), printed.bottom()}) {
            const double out_x = x == printed.left() ? -1 : 1;
            const double out_y = y == printed.top() ? -1 : 1;
            painter.drawLine(QPointF(x + out_x * corner_gap_mm, y),
                             QPointF(x + out_x * (corner_gap_mm + mark_mm), y));
            painter.drawLine(QPointF(x, y + out_y * corner_gap_mm),
                             QPointF(x, y + out_y * (corner_gap_mm + mark_mm)));
        }
    }
}

void paintTile(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options,
               const LaidSheet& laid, int column, int row)
{
    const QSizeF paper = paperSize(options);
    const QRectF printed(tile_margin_mm, tile_margin_mm, paper.width() - 2 * tile_margin_mm,
                         paper.height() - 2 * tile_margin_mm);
    painter.save();
    painter.setClipRect(printed);
    painter.translate(printed.left() - column * printed.width(), printed.top() - row * printed.height());
    paintSheet(painter, sketch, analysis, options, laid, 1);
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
    // Laid out once for all its sheets.
    const auto laid = options.laid
                          ? options.laid
                          : std::make_shared<const LaidSheets>(LaidSheets{layOut(sketch, analysis, options)});
    std::vector<FurtherPage> pages;
    const auto add = [&pages, &options](std::function<void(QPainter&)> paint) {
        pages.push_back({pageLayout(options), std::move(paint), {}, {}});
    };
    if (options.across <= 1 && options.down <= 1)
        add([&sketch, &analysis, options, laid](QPainter& painter) {
            paintSheet(painter, sketch, analysis, options, laid->sheets.front(), 1);
        });
    else
        for (int row = 0; row < options.down; ++row)
            for (int column = 0; column < options.across; ++column)
                add([&sketch, &analysis, options, laid, column, row](QPainter& painter) {
                    paintTile(painter, sketch, analysis, options, laid->sheets.front(), column, row);
                });
    for (std::size_t i = 1; i < laid->sheets.size() && int(i) <= options.notes_sheets; ++i)
        add([&sketch, &analysis, options, laid, i](QPainter& painter) {
            paintSheet(painter, sketch, analysis, options, laid->sheets[i], int(i) + 1);
        });
    return pages;
}

} // namespace siphonwright::sheet
