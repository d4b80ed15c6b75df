#include "app/drawing/ink.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/sheet/plan.h"

#include "core/sketch/edits.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

/// Heights over the datum in a column beside the view, and each heater's drop under the jacket.
namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

QPointF extreme(const std::vector<Vec2>& outline, const Plumb& plumb, double sign)
{
    const auto best = std::max_element(outline.begin(), outline.end(), [&](Vec2 a, Vec2 b) {
        return sign * plumb.height({a.x, 0, a.z}) < sign * plumb.height({b.x, 0, b.z});
    });
    return best == outline.end() ? QPointF() : drawing::toPage(*best);
}

/// A dimension's arrowhead, 15 degrees wide as in ISO 129.
void arrowhead(const Page& page, QPointF tip, double towards)
{
    page.painter.setBrush(page.palette.ink);
    page.painter.setPen(Qt::NoPen);
    page.painter.drawPolygon(
        QPolygonF({tip, tip + QPointF(-0.35, -towards * 2.4), tip + QPointF(0.35, -towards * 2.4)}));
}

/// Rows as near to their heights as they can be without lying on each other, kept inside the column.
std::vector<double> spread(const std::vector<double>& wanted, double step, double top, double bottom)
{
    std::vector<double> rows = wanted;
    for (std::size_t i = 0; i < rows.size(); ++i)
        rows[i] = std::max(rows[i], i == 0 ? top : rows[i - 1] + step);
    for (std::size_t i = rows.size(); i-- > 0;)
        rows[i] = std::min(rows[i], i + 1 == rows.size() ? bottom : rows[i + 1] - step);
    return rows;
}

} // namespace

std::vector<Height> heightsOf(const Sketch& sketch, const Analysis& analysis)
{
    std::vector<Height> heights;
    const Layout& layout = analysis.layout;
    const auto add = [&](QPointF at, double height_mm, const QString& name, Source source,
                         bool led_to = true) {
        const QString value = inWords(height_mm, Unit::mm, unitsOf(sketch));
        const QString mark = isConfirmed(source) ? QString() : QStringLiteral("*");
        heights.push_back({at, QStringLiteral("%1  %2%3").arg(name, value, mark), led_to});
    };
    const double left = drawing::boundsOf(sketch, analysis).left();
    const auto level = [&](const std::optional<double>& height, const Fact<double> SurgeTank::*entered,
                           const QString& name) {
        if (height && sketch.tank && std::abs(layout.plumb.up().z) > 0.2)
            add(drawing::onLevel(layout.plumb, *height, left), *height, name,
                ((*sketch.tank).*entered).source, false);
    };
    level(layout.levels.hot_mm, &SurgeTank::hot_mm, tr("Level hot"));
    level(layout.levels.cold_full_mm, &SurgeTank::cold_full_mm, tr("Level cold full"));
    level(layout.levels.cold_min_mm, &SurgeTank::cold_min_mm, tr("Level cold minimum"));
    if (sketch.engine && layout.jacket) {
        add(extreme(sketch.engine->jacket, layout.plumb, 1), layout.jacket->highest_mm, tr("Jacket highest"),
            sketch.engine->jacket_source);
        add(extreme(sketch.engine->jacket, layout.plumb, -1), layout.jacket->lowest_mm, tr("Jacket lowest"),
            sketch.engine->jacket_source);
    }
    for (const Port& port : sketch.ports)
        add(drawing::toPage(port.position), layout.plumb.height(port.position), inWords(port.name),
            port.position_source);
    for (std::size_t i = 0; i < sketch.heaters.size() && i < layout.heaters.size(); ++i) {
        const Heater& heater = sketch.heaters[i];
        const Vec3 top = heaterPoint(heater, {0, 0, heater.length_mm / 2});
        const Vec3 foot = heaterPoint(heater, {0, 0, -heater.length_mm / 2});
        const bool upright = layout.plumb.height(top) >= layout.plumb.height(foot);
        add(drawing::toPage(upright ? top : foot), layout.heaters[i].body_top_mm,
            tr("%1, top").arg(inWords(heater.name)), heater.position_source);
    }
    if (sketch.ground_z_mm)
        add({left, -*sketch.ground_z_mm}, *sketch.ground_z_mm, tr("Ground"), Source::measured, false);
    std::stable_sort(heights.begin(), heights.end(),
                     [](const Height& a, const Height& b) { return a.at.y() < b.at.y(); });
    return heights;
}

namespace {

/// The heights that there is room for in their column, and where they stand on the page.
struct HeightRows {
    std::vector<Height> heights;
    std::vector<double> y;    ///< of the feature, page
    std::vector<double> rows; ///< of the text's middle
};

HeightRows rowsOf(const Sketch& sketch, const Analysis& analysis, const Plan& plan)
{
    HeightRows out{heightsOf(sketch, analysis), {}, {}};
    const double step = 1.65 * plan.lettering_mm;
    const double top = plan.heights.top() + step;
    const double bottom = plan.heights.bottom() - 2;
    const auto room = std::size_t(std::max(1.0, (bottom - top) / step));
    if (out.heights.size() > room)
        out.heights.resize(room);
    for (const Height& height : out.heights)
        out.y.push_back(plan.origin.y() + height.at.y() / plan.denominator);
    out.rows = spread(out.y, step, top, bottom);
    return out;
}

/// A heater's drop under the jacket: its place in the column, and its two ends.
struct Drop {
    double x = 0;
    QPointF top; ///< of the heater, page
    double low = 0;
    double drop_mm = 0;
};

std::vector<Drop> dropsOf(const Sketch& sketch, const Analysis& analysis, const Plan& plan)
{
    std::vector<Drop> drops;
    const Layout& layout = analysis.layout;
    if (!layout.jacket || !sketch.engine)
        return drops;
    const double n = plan.denominator;
    const double low = plan.origin.y() + extreme(sketch.engine->jacket, layout.plumb, -1).y() / n;
    const std::size_t count = std::min<std::size_t>({sketch.heaters.size(), layout.heaters.size(), 3});
    for (std::size_t i = 0; i < count; ++i) {
        const Heater& heater = sketch.heaters[i];
        const Vec3 high_end = heaterPoint(heater, {0, 0, heater.length_mm / 2});
        drops.push_back({plan.drops.left() + 8 * (double(i) + 1) - 1.5,
                         plan.origin + drawing::toPage(high_end) / n, low,
                         layout.jacket->lowest_mm - layout.heaters[i].body_top_mm});
    }
    return drops;
}

} // namespace

std::vector<QLineF> guidesOf(const Sketch& sketch, const Analysis& analysis, const Plan& plan)
{
    std::vector<QLineF> guides;
    const double n = plan.denominator;
    const auto add = [&](QPointF a, QPointF b) {
        guides.emplace_back((a - plan.origin) * n, (b - plan.origin) * n);
    };
    const HeightRows rows = rowsOf(sketch, analysis, plan);
    for (std::size_t i = 0; i < rows.heights.size(); ++i)
        if (rows.heights[i].led_to)
            add({plan.heights.right(), rows.y[i]}, {plan.origin.x() + rows.heights[i].at.x() / n, rows.y[i]});
    if (const auto ports = portsOfLoop(sketch); ports && !plan.spacing.isNull())
        for (const QPointF& port : {ports->first, ports->second})
            add(plan.origin + port / n, {plan.origin.x() + port.x() / n, plan.view.top()});
    const double right = plan.origin.x() + drawing::boundsOf(sketch, analysis).right() / n;
    for (const Drop& drop : dropsOf(sketch, analysis, plan)) {
        add(drop.top, {plan.view.right(), drop.top.y()});
        add({right, drop.low}, {plan.view.right(), drop.low});
    }
    return guides;
}

std::optional<std::pair<QPointF, QPointF>> portsOfLoop(const Sketch& sketch)
{
    const Port* supply = nullptr;
    const Port* back = nullptr;
    for (const Shared<Hose>& hose : sketch.hoses) {
        if (!supply && hose->role == HoseRole::supply)
            supply = sketch.port(hose->from.port);
        if (!back && hose->role == HoseRole::return_)
            back = sketch.port(hose->to.port);
    }
    if (!supply || !back)
        return std::nullopt;
    return std::pair{drawing::toPage(supply->position), drawing::toPage(back->position)};
}

bool anyUnmeasured(const Sketch& sketch, const Analysis& analysis)
{
    const std::vector<Height> heights = heightsOf(sketch, analysis);
    return std::any_of(heights.begin(), heights.end(),
                       [](const Height& height) { return height.text.endsWith(QLatin1Char('*')); });
}

/// How far the loop's ports are apart along the engine, over the view.
void paintSpacing(const Page& page, const Plan& plan)
{
    const auto ports = portsOfLoop(page.sketch);
    if (!ports || plan.spacing.isNull())
        return;
    const double n = plan.denominator;
    const double a = plan.origin.x() + std::min(ports->first.x(), ports->second.x()) / n;
    const double b = plan.origin.x() + std::max(ports->first.x(), ports->second.x()) / n;
    const double y = plan.spacing.bottom() - 1.6;
    page.painter.setPen(QPen(page.palette.faint, drawing::hairline_mm));
    for (const double x : {a, b})
        page.painter.drawLine(QPointF(x, y - 0.8), QPointF(x, plan.spacing.bottom()));
    page.painter.setPen(QPen(page.palette.ink, drawing::thin_mm));
    page.painter.drawLine(QPointF(a, y), QPointF(b, y));
    page.painter.setBrush(page.palette.ink);
    page.painter.setPen(Qt::NoPen);
    constexpr double arrow_mm = 2.4;
    if (b - a > 2 * arrow_mm) {
        page.painter.drawPolygon(QPolygonF({{a, y}, {a + arrow_mm, y - 0.35}, {a + arrow_mm, y + 0.35}}));
        page.painter.drawPolygon(QPolygonF({{b, y}, {b - arrow_mm, y - 0.35}, {b - arrow_mm, y + 0.35}}));
    } else { // from outside
        page.painter.drawPolygon(QPolygonF({{a, y}, {a - arrow_mm, y - 0.35}, {a - arrow_mm, y + 0.35}}));
        page.painter.drawPolygon(QPolygonF({{b, y}, {b + arrow_mm, y - 0.35}, {b + arrow_mm, y + 0.35}}));
    }
    const QString text = tr("Ports %1 apart, level").arg(inWords((b - a) * n, Unit::mm, page.units));
    const double half = drawing::textWidth(text, plan.lettering_mm) / 2;
    const double middle =
        std::clamp((a + b) / 2, plan.spacing.left() + half + 1, plan.spacing.right() - half - 1);
    drawing::paintWeightedText(page.painter, {middle, y - 2}, text, Anchor::centre, page.palette.ink,
                               plan.lettering_mm, Weight::regular);
}

void paintHeights(const Page& page, const Plan& plan)
{
    const HeightRows of = rowsOf(page.sketch, page.analysis, plan);
    const double edge = plan.heights.right();
    for (std::size_t i = 0; i < of.heights.size(); ++i) {
        const double y = of.y[i];
        const double row = of.rows[i];
        page.painter.setBrush(Qt::NoBrush);
        page.painter.setPen(QPen(page.palette.ink, drawing::hairline_mm));
        page.painter.drawPolyline(QPolygonF({{edge - 6.5, row}, {edge - 5, row}, {edge - 2, y}, {edge, y}}));
        QString text = of.heights[i].text;
        const double width = plan.heights.width() - 9;
        // The value stands at the end, so a name that is too long gives way in its middle.
        while (text.size() > 12 && drawing::textWidth(text, plan.lettering_mm) > width)
            text = text.left(text.size() / 3) + QChar(0x2026) + text.mid(text.size() / 3 + 2);
        drawing::paintWeightedText(page.painter, {edge - 7, row + plan.lettering_mm / 2}, text, Anchor::right,
                                   page.palette.ink, plan.lettering_mm, Weight::regular);
    }
}

void paintDrops(const Page& page, const Plan& plan)
{
    for (const Drop& drop : dropsOf(page.sketch, page.analysis, plan)) {
        page.painter.setPen(QPen(page.palette.faint, drawing::hairline_mm));
        for (const double y : {drop.top.y(), drop.low})
            page.painter.drawLine(QPointF(plan.drops.left(), y), QPointF(drop.x + 1, y));
        page.painter.setPen(QPen(page.palette.ink, drawing::thin_mm));
        page.painter.drawLine(QPointF(drop.x, drop.low), QPointF(drop.x, drop.top.y()));
        const double way = drop.top.y() > drop.low ? 1 : -1;
        arrowhead(page, {drop.x, drop.top.y()}, way);
        arrowhead(page, {drop.x, drop.low}, -way);
        const QString text = tr("Drop %1").arg(inWords(drop.drop_mm, Unit::mm, page.units));
        const double half = drawing::textWidth(text, plan.lettering_mm) / 2 + 1;
        const double high = std::min(drop.low, drop.top.y());
        const double low = std::max(drop.low, drop.top.y());
        // Over its line where that is too short for it, as beside it the extension lines are in the way.
        const double wanted = low - high > 2 * half ? (low + high) / 2 : high - half;
        const double middle = std::max(wanted, plan.drops.top() + half);
        drawing::paintWeightedText(page.painter, {drop.x - 1.2, middle}, text, Anchor::centre,
                                   page.palette.ink, plan.lettering_mm, Weight::regular, -90);
    }
}

} // namespace siphonwright::sheet
