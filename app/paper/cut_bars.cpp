#include "app/paper/cut_bars.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace siphonwright::paper {

namespace {

constexpr double row_px = 26;
constexpr double bar_px = 20;
constexpr double gap_px = 8;
constexpr double lettering_px = 9; ///< height of capitals
constexpr double label_px = 110;

} // namespace

void CutBars::show(const std::vector<BorePlan>& plans, UnitSystem units)
{
    plans_ = plans;
    units_ = units;
    QStringList said;
    for (const BorePlan& bore : plans_)
        said << planText(bore, units_);
    setAccessibleName(tr("Cut plan"));
    setAccessibleDescription(said.join(QLatin1Char(' ')));
    setMinimumHeight(heightForWidth(width()));
    updateGeometry();
    update();
}

double CutBars::textHeight(const BorePlan& bore, double width) const
{
    const QRectF room(0, 0, width, 1000);
    return QFontMetricsF(font()).boundingRect(room, Qt::TextWordWrap, planText(bore, units_)).height();
}

int CutBars::heightForWidth(int width) const
{
    double height = 0;
    for (const BorePlan& bore : plans_)
        height +=
            textHeight(bore, width) + 4 + static_cast<double>(rollsAlike(bore).size()) * row_px + gap_px;
    return static_cast<int>(std::ceil(height));
}

QSize CutBars::sizeHint() const
{
    return {400, heightForWidth(std::max(width(), 400))};
}

void CutBars::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    setMinimumHeight(heightForWidth(width()));
}

void CutBars::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    CutInk ink;
    ink.ink = palette().color(QPalette::Text);
    ink.faint = palette().color(QPalette::PlaceholderText);
    ink.fill = palette().color(QPalette::Mid);
    ink.lettering = lettering_px;
    ink.label_width = label_px;
    ink.bar_width = std::max(50.0, width() - label_px - 4);
    ink.bar_height = bar_px;
    double y = 0;
    const std::int64_t longest = longestRoll(plans_);
    for (const BorePlan& bore : plans_) {
        const double height = textHeight(bore, width());
        painter.setPen(ink.ink);
        painter.drawText(QRectF(0, y, width(), height), Qt::TextWordWrap, planText(bore, units_));
        y += height + 4;
        for (const RollsAlike& alike : rollsAlike(bore)) {
            paintRoll(painter, {0, y}, alike, bore, longest, units_, ink);
            y += row_px;
        }
        y += gap_px;
    }
}

} // namespace siphonwright::paper
