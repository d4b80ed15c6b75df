#include "app/paper/cut_bars.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
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

double CutBars::textHeight(const QString& text, double width) const
{
    return QFontMetricsF(font()).boundingRect(QRectF(0, 0, width, 1000), Qt::TextWordWrap, text).height();
}

CutInk CutBars::ink(double width) const
{
    CutInk ink;
    ink.ink = palette().color(QPalette::Text);
    ink.faint = palette().color(QPalette::PlaceholderText);
    ink.fill = palette().color(QPalette::Mid);
    ink.lettering = lettering_px;
    ink.line = lettering_px / 14;
    ink.label_width = label_px;
    ink.bar_width = std::max(50.0, width - label_px - 4);
    ink.bar_height = bar_px;
    return ink;
}

int CutBars::heightForWidth(int width) const
{
    const CutInk bars = ink(width);
    const std::int64_t longest = longestRoll(plans_);
    double height = 0;
    for (const BorePlan& bore : plans_) {
        height += textHeight(planText(bore, units_), width) + 4 + gap_px;
        for (const RollsAlike& alike : rollsAlike(bore)) {
            height += row_px;
            if (!lengthsFit(alike, bore, longest, units_, bars))
                height += textHeight(cutsText(alike, bore, units_), bars.bar_width) + 4;
        }
    }
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
    const CutInk bars = ink(width());
    const std::int64_t longest = longestRoll(plans_);
    double y = 0;
    const auto write = [&](const QString& text, double x, double room) {
        const double height = textHeight(text, room);
        painter.setPen(bars.ink);
        painter.drawText(QRectF(x, y, room, height), Qt::TextWordWrap, text);
        y += height + 4;
    };
    for (const BorePlan& bore : plans_) {
        write(planText(bore, units_), 0, width());
        for (const RollsAlike& alike : rollsAlike(bore)) {
            paintRoll(painter, {0, y}, alike, bore, longest, units_, bars);
            y += row_px;
            if (!lengthsFit(alike, bore, longest, units_, bars))
                write(cutsText(alike, bore, units_), label_px, bars.bar_width);
        }
        y += gap_px;
    }
}

} // namespace siphonwright::paper
