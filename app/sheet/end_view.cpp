#include "app/sheet/end_view.h"

#include "app/drawing/seen.h"
#include "app/drawing/text.h"
#include "app/language/tr.h"

#include <QPainter>

#include <algorithm>
#include <limits>

namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

struct Range {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();

    void include(double value)
    {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

} // namespace

Projection endOf(const Options& options)
{
    return Projection(options.third_angle ? Projection::From::from_right : Projection::From::from_left);
}

bool depthMatters(const Sketch& sketch, const Analysis& analysis)
{
    Range y;
    double thickest = 0;
    for (const ResolvedHose& hose : analysis.layout.hoses) {
        thickest = std::max(thickest, hose->outsideDiameter());
        for (const Piece& piece : hose->path.line.pieces()) {
            y.include(piece.start.y);
            y.include(piece.at(piece.length_mm).y);
        }
    }
    if (analysis.layout.hoses.empty())
        return false;
    for (const Port& port : sketch.ports)
        if (port.role != PortRole::sensor && port.role != PortRole::spare)
            y.include(port.position.y);
    return y.high - y.low > thickest;
}

void paintEndCaption(const Page& page, const Plan& plan, double taken_to_mm)
{
    if (plan.end.isNull())
        return;
    QString name = tr("End view");
    if (page.sketch.engine)
        name = drawing::endSeen(*page.sketch.engine, endOf(page.options)) == drawing::EndSeen::front
                   ? tr("End view from the front")
                   : tr("End view from the rear");
    const double width = drawing::textWidth(name, normal_mm, Weight::strong);
    double x = std::max(plan.end.left() + 2, taken_to_mm + 6);
    double baseline = plan.caption.top() + 5;
    if (x + width > plan.caption.right()) {
        x = plan.end.left() + 2;
        baseline += 1.6 * normal_mm;
    }
    drawing::paintWeightedText(page.painter, {x, baseline}, name, Anchor::left, page.palette.ink, normal_mm,
                               Weight::strong);
}

void paintProjectionSymbol(const Page& page, const QRectF& cell)
{
    // The small end is as wide as it is, the large one twice as wide, the frustum as long as that.
    const double unit = std::min(cell.height() / 8, cell.width() / 14);
    const double small = 1 * unit;
    const double large = 2 * unit;
    const double frustum = (page.options.third_angle ? 3 : -3) * unit;
    const QPointF side = cell.center() + QPointF(frustum, 0);
    const QPointF end = cell.center() - QPointF(frustum, 0);
    page.painter.setBrush(Qt::NoBrush);
    page.painter.setPen(
        QPen(page.palette.ink, drawing::medium_mm, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    page.painter.drawPolygon(QPolygonF({side + QPointF(-large, -small), side + QPointF(large, -large),
                                        side + QPointF(large, large), side + QPointF(-large, small)}));
    page.painter.drawEllipse(end, large, large);
    page.painter.drawEllipse(end, small, small);
    QPen chain(page.palette.ink, drawing::hairline_mm);
    chain.setDashPattern({8, 2, 1, 2});
    page.painter.setPen(chain);
    const double past = large + 0.7 * unit;
    page.painter.drawLine(side - QPointF(past, 0), side + QPointF(past, 0));
    page.painter.drawLine(end - QPointF(past, 0), end + QPointF(past, 0));
    page.painter.drawLine(end - QPointF(0, past), end + QPointF(0, past));
}

Section viewsSection(bool end_left_out)
{
    Section section{tr("Views"), {}, 1, 2};
    if (end_left_out)
        section.items.push_back(
            {tr("No end view: beside it the elevation would be too small on this paper. What lies across the "
                "engine is drawn in the program and counted in every length."),
             std::nullopt, 0});
    return section;
}

} // namespace siphonwright::sheet
