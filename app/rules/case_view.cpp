#include "app/rules/case_view.h"

#include <QPainter>

#include <cmath>

namespace siphonwright::rules {

namespace {
constexpr int least_width = 230;
constexpr int usual_width = 330;
} // namespace

CaseView::CaseView(const RuleDrawing& drawing, bool right, drawing::Look look, QWidget* parent)
    : QWidget(parent), drawing_(drawing), right_(right), look_(look)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setMinimumWidth(least_width);
    setObjectName(right ? QStringLiteral("right-case") : QStringLiteral("wrong-case"));
    setAccessibleName((right ? tr("Right: %1") : tr("Wrong: %1")).arg(drawing.caption(right)));
}

int CaseView::heightForWidth(int width) const
{
    return static_cast<int>(std::ceil(width * drawing_height_mm / drawing_width_mm));
}

QSize CaseView::sizeHint() const
{
    return {usual_width, heightForWidth(usual_width)};
}

void CaseView::paintEvent(QPaintEvent* /*event*/)
{
    const drawing::Palette palette = drawing::paletteOf(look_);
    QPainter painter(this);
    painter.fillRect(rect(), palette.ground);
    painter.setPen(palette.grid_strong);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = std::min(width() / drawing_width_mm, height() / drawing_height_mm);
    painter.scale(scale, scale);
    paintCase(painter, palette, drawing_, right_);
}

} // namespace siphonwright::rules
