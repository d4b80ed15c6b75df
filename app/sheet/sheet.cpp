#include "app/sheet/sheet.h"

#include "app/drawing/elevation.h"
#include "app/drawing/text.h"
#include "app/language/tr.h"
#include "app/sheet/end_view.h"
#include "app/sheet/lay_out.h"
#include "app/sheet/plan.h"
#include "app/sheet/views.h"

#include <QPainter>

namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

/// Border and, after ISO 5457, centring marks: for copying and for folding.
void paintFrame(const Page& page, const QRectF& frame)
{
    page.painter.setBrush(Qt::NoBrush);
    page.painter.setPen(
        QPen(page.palette.ink, drawing::border_mm, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    page.painter.drawRect(frame);
    const QPointF c = frame.center();
    page.painter.drawLine(QPointF(c.x(), frame.top() - 5), QPointF(c.x(), frame.top()));
    page.painter.drawLine(QPointF(c.x(), frame.bottom() + 5), QPointF(c.x(), frame.bottom()));
    page.painter.drawLine(QPointF(frame.left() - 5, c.y()), QPointF(frame.left(), c.y()));
    page.painter.drawLine(QPointF(frame.right() + 5, c.y()), QPointF(frame.right(), c.y()));
}

/// What the view shows, from which side, and where the engine's front is.
/// @return where it ends.
double paintCaption(const Page& page, const QRectF& box, int denominator)
{
    const double baseline = box.top() + 5;
    double x = box.left() + 4;
    const QString name = page.options.student ? tr("Student sheet: side elevation 1:%1").arg(denominator)
                                              : tr("Side elevation 1:%1").arg(denominator);
    drawing::paintWeightedText(page.painter, {x, baseline}, name, Anchor::left, page.palette.ink, normal_mm,
                               Weight::strong);
    if (!page.sketch.engine)
        return x + drawing::textWidth(name, normal_mm, Weight::strong);
    x += drawing::textWidth(name, normal_mm, Weight::strong) + 5;
    const bool left = page.sketch.engine->front == EngineEnd::left;
    const QString side =
        left ? tr("seen from the engine's left side") : tr("seen from the engine's right side");
    drawing::paintWeightedText(page.painter, {x, baseline}, side, Anchor::left, page.palette.ink, small_mm,
                               Weight::regular);
    x += drawing::textWidth(side, small_mm) + 6;
    const double y = baseline - normal_mm / 2;
    page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm));
    page.painter.drawLine(QPointF(x, y), QPointF(x + 9, y));
    const double tip = left ? x : x + 9;
    const double way = left ? 1 : -1;
    page.painter.setBrush(page.palette.ink);
    page.painter.setPen(Qt::NoPen);
    page.painter.drawPolygon(QPolygonF({{tip, y}, {tip + way * 3, y - 1}, {tip + way * 3, y + 1}}));
    drawing::paintWeightedText(page.painter, {x + 10.5, baseline}, tr("Front"), Anchor::left,
                               page.palette.ink, small_mm, Weight::strong);
    return x + 10.5 + drawing::textWidth(tr("Front"), small_mm, Weight::strong);
}

Page pageFor(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    return {painter, sketch, analysis, options, unitsOf(sketch), paletteOf(options)};
}

void outline(const Page& page, const QRectF& box)
{
    if (box.isNull())
        return;
    page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
}

void paintDrawing(const Page& page, const LaidSheet& laid)
{
    const Plan& plan = laid.plan;
    if (drawing::boundsOf(page.sketch, page.analysis).isNull()) {
        drawing::paintWeightedText(page.painter, plan.view.center(), tr("Nothing is drawn yet."),
                                   Anchor::centre, page.palette.ink, large_mm, Weight::regular);
    } else {
        paintViews(page, plan, laid.names);
        paintHeights(page, plan);
        paintDrops(page, plan);
        paintSpacing(page, plan);
    }
    paintEndCaption(page, plan, paintCaption(page, plan.caption, plan.denominator));
    outline(page, plan.notes);
    outline(page, plan.under);
    paintFoot(page, plan);
}

} // namespace

void paintSheet(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options,
                const LaidSheet& laid, int number)
{
    const Plan& plan = laid.plan;
    Page page = pageFor(painter, sketch, analysis, options);
    page.number = number;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (number == 1)
        paintDrawing(page, laid);
    else
        drawing::paintWeightedText(painter, {plan.caption.left() + 3, plan.caption.top() + 5},
                                   tr("Continued from sheet 1"), Anchor::left, page.palette.ink, normal_mm,
                                   Weight::strong);
    paintBlocks(page, laid.notes, laid.columns.width_mm(), laid.lettering_mm);
    for (const PlacedInset& one : laid.insets)
        paintInset(painter, options.insets[one.inset], one);
    paintTitleBlock(page, plan.title, plan.denominator);
    paintFrame(page, plan.frame);
    paintBorder(page, plan);
    painter.restore();
}

void paintPage(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    paintSheet(painter, sketch, analysis, options, layOut(sketch, analysis, options).front(), 1);
}

} // namespace siphonwright::sheet
