#include "app/drawing/text.h"
#include "app/sheet/plan.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <vector>

/// Zones and trimming marks after ISO 5457 (from memory): fields of 50 mm from the middle out, figures along
/// the sheet, letters down it without I and O.
namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

/// Borders between fields along an edge, its ends included; the last field on either side takes the rest.
std::vector<double> fieldsOf(double from, double to)
{
    constexpr double field_mm = 50;
    constexpr double least_mm = 15;
    std::vector<double> cuts;
    const double middle = (from + to) / 2;
    const int half = std::max(1, int(std::floor((to - middle - least_mm) / field_mm)));
    for (int i = -half; i <= half; ++i)
        if (middle + i * field_mm > from + least_mm && middle + i * field_mm < to - least_mm)
            cuts.push_back(middle + i * field_mm);
    cuts.insert(cuts.begin(), from);
    cuts.push_back(to);
    return cuts;
}

QString letterOf(std::size_t row)
{
    static const QString letters = QStringLiteral("ABCDEFGHJKLMNPQRSTUVWXYZ");
    const auto count = std::size_t(letters.size());
    const QString last(letters.at(qsizetype(row % count)));
    return row < count ? last : letterOf(row / count - 1) + last;
}

/// Filled corners, to trim copies by.
void paintTrimMarks(const Page& page, const QSizeF& paper)
{
    constexpr double long_mm = 8;
    constexpr double broad_mm = 1.2;
    page.painter.setPen(Qt::NoPen);
    page.painter.setBrush(page.palette.ink);
    for (const double x : {0.0, paper.width()})
        for (const double y : {0.0, paper.height()}) {
            const double along = x > 0 ? -1 : 1;
            const double down = y > 0 ? -1 : 1;
            page.painter.drawPolygon(QPolygonF({{x, y},
                                                {x + along * long_mm, y},
                                                {x + along * long_mm, y + down * broad_mm},
                                                {x + along * broad_mm, y + down * broad_mm},
                                                {x + along * broad_mm, y + down * long_mm},
                                                {x, y + down * long_mm}}));
        }
}

} // namespace

void paintBorder(const Page& page, const Plan& plan)
{
    const QRectF& in = plan.frame;
    const QRectF& out = plan.border;
    const auto tick = [&](QPointF a, QPointF b) {
        page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm, Qt::SolidLine, Qt::FlatCap));
        page.painter.drawLine(a, b);
    };
    const auto name = [&](QPointF middle, const QString& text) {
        drawing::paintWeightedText(page.painter, middle + QPointF(0, normal_mm / 2), text, Anchor::centre,
                                   page.palette.ink, normal_mm, Weight::regular);
    };
    const std::vector<double> columns = fieldsOf(in.left(), in.right());
    const std::vector<double> rows = fieldsOf(in.top(), in.bottom());
    for (const auto& [from, to] : {std::pair{out.top(), in.top()}, std::pair{in.bottom(), out.bottom()}})
        for (std::size_t i = 0; i + 1 < columns.size(); ++i) {
            if (i > 0)
                tick({columns[i], from}, {columns[i], to});
            name({(columns[i] + columns[i + 1]) / 2, (from + to) / 2}, QString::number(i + 1));
        }
    for (const auto& [from, to] : {std::pair{out.left(), in.left()}, std::pair{in.right(), out.right()}})
        for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
            if (i > 0)
                tick({from, rows[i]}, {to, rows[i]});
            name({(from + to) / 2, (rows[i] + rows[i + 1]) / 2}, letterOf(i));
        }
    page.painter.setBrush(Qt::NoBrush);
    page.painter.setPen(QPen(page.palette.ink, drawing::thin_mm));
    page.painter.drawRect(out);
    paintTrimMarks(page, pageSize(page.options));
}

} // namespace siphonwright::sheet
