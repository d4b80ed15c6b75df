#include "app/panels/grade_slider.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace siphonwright::panels {

namespace {

constexpr double handle_half = 6;
constexpr double axis_from_top = 15;

} // namespace

GradeSlider::GradeSlider(double most_percent, QWidget* parent) : QAbstractSlider(parent)
{
    setOrientation(Qt::Horizontal);
    const int most = static_cast<int>(std::lround(most_percent * 10));
    setRange(-most, most);
    setSingleStep(1);
    setPageStep(10);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::SizeHorCursor);
}

void GradeSlider::setSound(const std::optional<SoundGrades>& sound)
{
    sound_ = sound;
    update();
}

void GradeSlider::setJudged(double percent)
{
    judged_percent_ = percent;
    update();
}

void GradeSlider::setLook(drawing::Look look)
{
    look_ = look;
    update();
}

QSize GradeSlider::sizeHint() const
{
    return {200, 22 + static_cast<int>(12 * drawing::textScale(font()))};
}

QSize GradeSlider::minimumSizeHint() const
{
    return {110, 22 + static_cast<int>(12 * drawing::textScale(font()))};
}

double GradeSlider::placeOf(double percent) const
{
    const double share = (percent * 10 - minimum()) / (maximum() - minimum());
    const double edge = handle_half * drawing::textScale(font()); // half of the outermost number
    return edge + std::clamp(share, 0.0, 1.0) * (width() - 2 * edge);
}

void GradeSlider::follow(double x)
{
    const double edge = handle_half * drawing::textScale(font());
    const double share = (x - edge) / (width() - 2 * edge);
    int value = minimum() + static_cast<int>(std::lround(share * (maximum() - minimum())));
    constexpr int near_level = 2; // the level is easy to hit
    if (std::abs(value) <= near_level)
        value = 0;
    setValue(value);
}

void GradeSlider::paintScale(QPainter& painter, const drawing::Palette& ink) const
{
    const double most = maximum() / 10.0;
    if (sound_) {
        const QRectF band(QPointF(placeOf(sound_->low_percent), axis_from_top - 8),
                          QPointF(placeOf(sound_->high_percent), axis_from_top));
        QColor wash = ink.accent;
        wash.setAlpha(60);
        painter.fillRect(band, wash);
        painter.setPen(QPen(ink.accent, 1.5));
        painter.drawLine(band.topLeft(), band.bottomLeft());
        painter.drawLine(band.topRight(), band.bottomRight());
    }
    painter.setPen(QPen(ink.ink, 1));
    painter.drawLine(QPointF(placeOf(-most), axis_from_top), QPointF(placeOf(most), axis_from_top));
    const int step = most > 5 ? 5 : 1;
    QFont small = font();
    const double scale = drawing::textScale(font());
    small.setPixelSize(static_cast<int>(9 * scale));
    painter.setFont(small);
    for (int at = -static_cast<int>(most); at <= static_cast<int>(most); ++at) {
        const bool named = at % step == 0 && (most > 5 || at % 2 == 0);
        const double x = placeOf(at);
        painter.setPen(QPen(named ? ink.ink : ink.faint, 1));
        painter.drawLine(QPointF(x, axis_from_top), QPointF(x, axis_from_top + (named ? 5 : 3)));
        if (named)
            painter.drawText(QRectF(x - 12 * scale, axis_from_top + 5, 24 * scale, 12 * scale),
                             Qt::AlignCenter, QString::number(std::abs(at)));
    }
    if (judged_percent_ > 0) {
        painter.setPen(QPen(ink.ink, 3));
        painter.drawLine(QPointF(placeOf(-judged_percent_), axis_from_top),
                         QPointF(placeOf(judged_percent_), axis_from_top));
    }
}

void GradeSlider::paintHandle(QPainter& painter, const drawing::Palette& ink) const
{
    const double x = placeOf(percent());
    const QPolygonF shape({{x, axis_from_top + 1},
                           {x - handle_half, axis_from_top - 8},
                           {x - handle_half, axis_from_top - 13},
                           {x + handle_half, axis_from_top - 13},
                           {x + handle_half, axis_from_top - 8}});
    painter.setPen(QPen(hasFocus() ? ink.accent : ink.ink, hasFocus() ? 2 : 1.2));
    painter.setBrush(value() == 0 ? ink.ground : ink.accent);
    painter.drawPolygon(shape);
}

void GradeSlider::paintEvent(QPaintEvent*)
{
    const drawing::Palette ink = drawing::paletteOf(look_);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintScale(painter, ink);
    paintHandle(painter, ink);
}

void GradeSlider::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton)
        follow(event->position().x());
}

void GradeSlider::mouseMoveEvent(QMouseEvent* event)
{
    if (event->buttons().testFlag(Qt::LeftButton))
        follow(event->position().x());
}

void GradeSlider::mouseDoubleClickEvent(QMouseEvent*)
{
    setValue(0);
}

void GradeSlider::wheelEvent(QWheelEvent* event)
{
    // A page scrolled past it must not tilt the vehicle.
    if (hasFocus())
        QAbstractSlider::wheelEvent(event);
    else
        event->ignore();
}

} // namespace siphonwright::panels
