#include "app/demonstration/scrub_bar.h"

#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

namespace {

constexpr double margin_px = 8;
constexpr double line_y_px = 10;

/// Share of the bar: each phase has room for its title.
double weightOf(PhaseKind phase)
{
    switch (phase) {
    case PhaseKind::fill:
        return 3.4;
    case PhaseKind::engine_runs:
    case PhaseKind::energised:
        return 3;
    case PhaseKind::topped_up:
        return 2.6;
    }
    return 1;
}

} // namespace

ScrubBar::ScrubBar(QWidget* parent) : QAbstractSlider(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Where the demonstration stands"));
    setToolTip(tr("Drag to move through the demonstration; ticks are where something happens."));
    setMouseTracking(false);
    connect(this, &QAbstractSlider::valueChanged, this, qOverload<>(&QWidget::update));
}

void ScrubBar::show(const Demonstration* demonstration)
{
    demonstration_ = demonstration;
    const int last = demonstration ? std::max(0, int(demonstration->moments.size()) - 1) : 0;
    const bool was = blockSignals(true);
    setRange(0, last);
    blockSignals(was);
    setEnabled(last > 0);
    update();
}

QSize ScrubBar::sizeHint() const
{
    return {420, 22 + fontMetrics().height()};
}

QSize ScrubBar::minimumSizeHint() const
{
    return {200, 22 + fontMetrics().height()};
}

ScrubBar::Span ScrubBar::spanOf(std::size_t phase) const
{
    double all = 0;
    double before = 0;
    for (std::size_t i = 0; i < demonstration_->phases.size(); ++i) {
        const double weight = weightOf(demonstration_->phases[i].kind);
        if (i < phase)
            before += weight;
        all += weight;
    }
    const double width = this->width() - 2 * margin_px;
    const double own = weightOf(demonstration_->phases[phase].kind);
    return {margin_px + width * before / all, margin_px + width * (before + own) / all};
}

double ScrubBar::xOf(int moment) const
{
    if (!demonstration_ || demonstration_->phases.empty())
        return margin_px;
    const std::size_t at = demonstration_->phaseAt(std::size_t(moment));
    const Phase& phase = demonstration_->phases[at];
    const Span span = spanOf(at);
    const double share =
        phase.count > 1 ? double(std::size_t(moment) - phase.first) / double(phase.count - 1) : 0;
    return span.from + (span.to - span.from) * share;
}

int ScrubBar::momentAt(double x) const
{
    if (!demonstration_ || demonstration_->phases.empty())
        return 0;
    std::size_t at = 0;
    while (at + 1 < demonstration_->phases.size() && x >= spanOf(at).to)
        ++at;
    const Phase& phase = demonstration_->phases[at];
    const Span span = spanOf(at);
    const double share = std::clamp((x - span.from) / (span.to - span.from), 0.0, 1.0);
    return int(phase.first) + int(std::lround(share * double(phase.count - 1)));
}

void ScrubBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (!demonstration_ || demonstration_->phases.empty())
        return;
    const QColor line = palette().color(QPalette::PlaceholderText);
    const QColor ink = palette().color(QPalette::Text);
    const QColor accent = palette().color(QPalette::Highlight);
    const double x = xOf(value());
    const std::size_t now = demonstration_->phaseAt(std::size_t(value()));
    for (std::size_t i = 0; i < demonstration_->phases.size(); ++i) {
        const Span span = spanOf(i);
        painter.setPen(QPen(line, 3, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(span.from + 1, line_y_px), QPointF(span.to - 1, line_y_px));
        if (x > span.from) {
            painter.setPen(QPen(accent, 3, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(span.from + 1, line_y_px), QPointF(std::min(x, span.to - 1), line_y_px));
        }
        painter.setPen(QPen(ink, 1));
        painter.drawLine(QPointF(span.from, line_y_px - 7), QPointF(span.from, line_y_px + 7));
        QFont font = this->font();
        font.setBold(i == now);
        painter.setFont(font);
        painter.setPen(i == now ? ink : line);
        const QRectF under(span.from + 2, line_y_px + 8, span.to - span.from - 4, height() - line_y_px - 8);
        const QString title = titleOf(demonstration_->phases[i].kind);
        painter.drawText(under, Qt::AlignLeft | Qt::AlignTop,
                         QFontMetricsF(font).elidedText(title, Qt::ElideRight, under.width()));
    }
    painter.setPen(QPen(ink, 1));
    for (std::size_t i = 1; i < demonstration_->moments.size(); ++i)
        if (demonstration_->moments[i].event)
            painter.drawLine(QPointF(xOf(int(i)), line_y_px - 4), QPointF(xOf(int(i)), line_y_px + 4));
    painter.setPen(QPen(palette().color(QPalette::Base), 2));
    painter.setBrush(accent);
    painter.drawEllipse(QPointF(x, line_y_px), 7, 7);
    if (hasFocus()) {
        painter.setPen(QPen(accent, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void ScrubBar::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton)
        setValue(momentAt(event->position().x()));
}

void ScrubBar::mouseMoveEvent(QMouseEvent* event)
{
    if (event->buttons().testFlag(Qt::LeftButton))
        setValue(momentAt(event->position().x()));
}

} // namespace siphonwright::demonstration
