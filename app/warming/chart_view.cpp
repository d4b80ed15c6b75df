#include "app/warming/chart_view.h"

#include "app/warming/words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace siphonwright::warming {

QFont chartFont(double times_usual)
{
    constexpr int size_px = 12;
    QFont font = drawing::lettering();
    font.setPixelSize(static_cast<int>(std::lround(size_px * times_usual)));
    return font;
}

ChartView::ChartView(QWidget* parent) : QWidget(parent)
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setObjectName(QStringLiteral("warm-up-chart"));
    setAccessibleName(tr("Warm-up over time; left and right read the values"));
}

void ChartView::setLook(drawing::Look look)
{
    look_ = look;
    update();
}

void ChartView::setUnits(UnitSystem units)
{
    units_ = units;
    update();
}

void ChartView::show(std::optional<Result> result, bool of_before)
{
    result_ = std::move(result);
    of_before_ = of_before;
    sentence_.clear();
    setCursor(Qt::ArrowCursor);
    setCursorHour(cursor_h_);
    update();
}

void ChartView::showSentence(const QString& sentence, bool leads_somewhere)
{
    result_.reset();
    sentence_ = sentence;
    leads_somewhere_ = leads_somewhere;
    setCursor(leads_somewhere ? Qt::PointingHandCursor : Qt::ArrowCursor);
    setAccessibleDescription(sentence);
    update();
}

void ChartView::setKept(std::vector<Result> kept)
{
    kept_ = std::move(kept);
    update();
}

void ChartView::setCursorHour(std::optional<double> hour)
{
    if (!result_ || !hour)
        cursor_h_.reset();
    else
        cursor_h_ = result_->time_h[result_->nearest(*hour)];
    setAccessibleDescription(reading());
    update();
    Q_EMIT cursorMoved();
}

QString ChartView::reading() const
{
    return result_ && cursor_h_ ? readingAt(*result_, *cursor_h_, units_) : QString();
}

std::optional<Chart> ChartView::chart() const
{
    if (!result_)
        return std::nullopt;
    return Chart(QRectF(rect()), *result_, kept_, units_, chartFont(drawing::textScale(font())));
}

void ChartView::paintEvent(QPaintEvent*)
{
    const drawing::Palette ink = drawing::paletteOf(look_);
    QPainter painter(this);
    painter.fillRect(rect(), ink.ground);
    painter.setFont(chartFont(drawing::textScale(font())));
    if (!result_) {
        painter.setPen(leads_somewhere_ ? ink.accent : ink.faint);
        painter.drawText(rect().adjusted(12, 4, -12, -4), Qt::AlignCenter | Qt::TextWordWrap, sentence_);
    } else {
        painter.setOpacity(of_before_ ? 0.4 : 1);
        chart()->paint(painter, ink, cursor_h_);
        painter.setOpacity(1);
        if (of_before_) {
            const QString text = tr("of the drawing as it was");
            QRectF box(0, 0, painter.fontMetrics().horizontalAdvance(text) + 16,
                       painter.fontMetrics().height() + 4);
            box.moveCenter(chart()->temperatures().center());
            painter.setPen(ink.faint);
            painter.setBrush(ink.ground);
            painter.drawRect(box);
            painter.setPen(ink.text);
            painter.drawText(box, Qt::AlignCenter, text);
        }
    }
    if (hasFocus()) {
        painter.setPen(QPen(ink.accent, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void ChartView::mouseMoveEvent(QMouseEvent* event)
{
    const auto shown = chart();
    if (!shown)
        return;
    by_keys_ = false;
    const QRectF& plot = shown->temperatures();
    const double at = event->position().x();
    const bool over = at >= plot.left() - 6 && at <= plot.right() + 6;
    setCursorHour(over ? std::optional(shown->hourAt(at)) : std::nullopt);
}

void ChartView::mousePressEvent(QMouseEvent* event)
{
    if (!result_ && leads_somewhere_ && event->button() == Qt::LeftButton)
        Q_EMIT sentenceClicked();
}

void ChartView::leaveEvent(QEvent*)
{
    if (!by_keys_)
        setCursorHour(std::nullopt);
}

void ChartView::stepCursor(double hours)
{
    if (!result_)
        return;
    by_keys_ = true;
    const std::size_t now = cursor_h_ ? result_->nearest(*cursor_h_) : 0;
    std::size_t next = result_->nearest(result_->time_h[now] + hours);
    // A step of one sample always gets to the next, however they are spaced.
    if (next == now && hours > 0 && now + 1 < result_->time_h.size())
        ++next;
    if (next == now && hours < 0 && now > 0)
        --next;
    setCursorHour(cursor_h_ ? result_->time_h[next] : result_->time_h[now]);
}

void ChartView::keyPressEvent(QKeyEvent* event)
{
    constexpr double sample_h = 1.0 / 60;
    switch (event->key()) {
    case Qt::Key_Left:
        stepCursor(-sample_h);
        break;
    case Qt::Key_Right:
        stepCursor(sample_h);
        break;
    case Qt::Key_PageUp:
        stepCursor(-1);
        break;
    case Qt::Key_PageDown:
        stepCursor(1);
        break;
    case Qt::Key_Home:
        stepCursor(-1e6);
        break;
    case Qt::Key_End:
        stepCursor(1e6);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (!result_ && leads_somewhere_)
            Q_EMIT sentenceClicked();
        break;
    case Qt::Key_Escape:
        by_keys_ = false;
        setCursorHour(std::nullopt);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace siphonwright::warming
