#include "app/language/tr.h"
#include "app/warming/chart.h"
#include "app/warming/words.h"

#include "core/quantity/units.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

/// The chart's ink, back to front.
namespace siphonwright::warming {
namespace {

constexpr double room_for_words_px = 70; ///< under it, in a flat chart, lines alone

/// A colour on its ground without transparency, which not every viewer of SVG draws.
QColor mixed(const QColor& colour, const QColor& ground, double share)
{
    const auto part = [share](int of, int on) {
        return static_cast<int>(std::lround(on + share * (of - on)));
    };
    return {part(colour.red(), ground.red()), part(colour.green(), ground.green()),
            part(colour.blue(), ground.blue())};
}

/// Slanting lines within a rectangle, one by one: patterns and clips do not reach every file.
/// @param slope 1 falls to the right, -1 rises
QList<QLineF> hatching(const QRectF& where, double slope)
{
    constexpr double apart = 9;
    QList<QLineF> lines;
    if (where.width() < 1 || where.height() < 1)
        return lines;
    for (double from = -where.height() + apart / 2; from < where.width(); from += apart) {
        const double left = std::max(0.0, from);
        const double right = std::min(where.width(), from + where.height());
        QLineF line(left, left - from, right, right - from);
        if (slope < 0)
            line = QLineF(left, where.height() - (left - from), right, where.height() - (right - from));
        lines << line.translated(where.topLeft());
    }
    return lines;
}

} // namespace

QPen penOf(Curve curve, const drawing::Palette& ink)
{
    switch (curve) {
    case Curve::outlet:
        return {ink.return_, 1.8};
    case Curve::inlet:
        return {ink.supply, 1.4, Qt::DashLine, Qt::FlatCap};
    case Curve::return_port:
        return {ink.return_, 1.2, Qt::DashDotLine, Qt::FlatCap};
    case Curve::hose_outside:
        return {ink.held, 1.6, Qt::DotLine, Qt::FlatCap};
    case Curve::block:
        return {ink.ink, 3};
    case Curve::flow:
        return {ink.supply, 2};
    case Curve::power:
        return {ink.caution, 0.9};
    case Curve::count:
        break;
    }
    return {ink.ink, 1};
}

void Chart::paint(QPainter& painter, const drawing::Palette& ink, std::optional<double> cursor_h) const
{
    painter.save();
    painter.setFont(font_);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBands(painter, ink);
    paintHours(painter, ink);
    paintAxis(painter, ink, degC_, temperatures_, false);
    if (!strip_.isEmpty()) {
        paintAxis(painter, ink, flow_, strip_, false);
        paintAxis(painter, ink, power_, strip_, true);
    }
    paintKept(painter, ink);
    paintCurves(painter, ink);
    paintSwitches(painter, ink);
    paintLevels(painter, ink);
    if (cursor_h)
        paintCursor(painter, ink, *cursor_h);
    paintLegend(painter, ink, cursor_h);
    painter.restore();
}

void Chart::paintHours(QPainter& painter, const drawing::Palette& ink) const
{
    const double least = hours_ * metrics_.horizontalAdvance(QStringLiteral("00.00 h  ")) / bar_.width();
    double step = 48 * std::ceil(least / 48);
    for (const double nice : {0.05, 0.1, 0.25, 0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 12.0, 24.0, 48.0})
        if (nice >= least) {
            step = nice;
            break;
        }
    const double bottom = bar_.bottom();
    for (int i = 0; i * step <= hours_ * (1 + 1e-9); ++i) {
        const double at = x(i * step);
        painter.setPen(QPen(ink.grid_strong, 1));
        painter.drawLine(QPointF(at, temperatures_.top()), QPointF(at, bottom + 3));
        painter.setPen(ink.faint);
        const double wide = metrics_.horizontalAdvance(QStringLiteral("000.00 h"));
        const double left = std::clamp(at - wide / 2, room_.left(), room_.right() - wide);
        painter.drawText(QRectF(left, bottom + 2, wide, metrics_.height()), Qt::AlignCenter,
                         valueText(i * step, Unit::hour, units_));
    }
}

void Chart::paintAxis(QPainter& painter, const drawing::Palette& ink, const Axis& axis, const QRectF& plot,
                      bool right) const
{
    const double from = shownValue(axis.low, axis.unit);
    const double to = shownValue(axis.high, axis.unit);
    for (double tick = std::ceil(from / axis.step) * axis.step; tick <= to + 1e-9; tick += axis.step) {
        const double value = storedValue(std::abs(tick) < axis.step * 1e-6 ? 0 : tick, axis.unit);
        const double at = plot.bottom() - plot.height() * (value - axis.low) / (axis.high - axis.low);
        if (!right) {
            painter.setPen(QPen(ink.grid_strong, 1));
            painter.drawLine(QPointF(plot.left() - 3, at), QPointF(plot.right(), at));
        }
        painter.setPen(ink.faint);
        const double height = metrics_.height();
        const QRectF box =
            right ? QRectF(plot.right() + 5, at - height / 2, room_.right() - plot.right() - 5, height)
                  : QRectF(room_.left(), at - height / 2, plot.left() - room_.left() - 6, height);
        QString text = valueText(value, axis.unit, units_);
        if (axis.unit == Unit::l_per_min) // its unit stands in the strip
            text = text.section(QLatin1Char(' '), 0, 0);
        const int side = right ? Qt::AlignLeft : Qt::AlignRight;
        painter.drawText(box, side | int(Qt::AlignVCenter), text);
    }
}

void Chart::note(QPainter& painter, const drawing::Palette& ink, QPointF at, Qt::Alignment anchor,
                 const QString& text, const QColor& colour) const
{
    const double width = metrics_.horizontalAdvance(text) + 6;
    QRectF box(at.x(), at.y(), width, metrics_.height());
    if (anchor & Qt::AlignRight)
        box.moveRight(at.x());
    if (anchor & Qt::AlignHCenter)
        box.moveLeft(at.x() - width / 2);
    if (anchor & Qt::AlignBottom)
        box.moveBottom(at.y());
    if (box.top() < temperatures_.top())
        box.moveTop(temperatures_.top());
    if (box.bottom() > temperatures_.bottom())
        box.moveBottom(temperatures_.bottom());
    if (box.right() > temperatures_.right())
        box.moveRight(temperatures_.right());
    if (box.left() < temperatures_.left())
        box.moveLeft(temperatures_.left());
    painter.fillRect(box, ink.ground);
    painter.setPen(colour);
    painter.drawText(box, Qt::AlignCenter, text);
}

void Chart::paintBands(QPainter& painter, const drawing::Palette& ink) const
{
    QRectF peak;
    QRectF reached;
    if (result_.peak_band)
        peak = QRectF(QPointF(temperatures_.left(), y(Curve::outlet, result_.peak_band->high)),
                      QPointF(temperatures_.right(), y(Curve::outlet, result_.peak_band->low)));
    if (result_.target_band)
        reached = QRectF(QPointF(x(std::min(result_.target_band->low, hours_)), temperatures_.top()),
                         QPointF(x(std::min(result_.target_band->high, hours_)), temperatures_.bottom()));
    painter.fillRect(reached, mixed(ink.level, ink.ground, 0.1));
    painter.fillRect(peak, mixed(ink.return_, ink.ground, 0.1));
    painter.setPen(QPen(mixed(ink.level, ink.ground, 0.4), 0.8));
    painter.drawLines(hatching(reached, 1));
    painter.setPen(QPen(mixed(ink.return_, ink.ground, 0.4), 0.8));
    painter.drawLines(hatching(peak, -1));
}

void Chart::paintLevels(QPainter& painter, const drawing::Palette& ink) const
{
    const auto level = [&](double degC, const QColor& colour, Qt::PenStyle style) {
        const double at = y(Curve::outlet, degC);
        painter.setPen(QPen(colour, 1.2, style, Qt::FlatCap));
        painter.drawLine(QPointF(temperatures_.left(), at), QPointF(temperatures_.right(), at));
        return at;
    };
    const bool words = temperatures_.height() > room_for_words_px;
    const double target = level(result_.target_degC, ink.level, Qt::DashLine);
    if (words)
        note(painter, ink, {temperatures_.left() + 4, target - 1}, Qt::AlignLeft | Qt::AlignBottom,
             tr("target %1").arg(valueText(result_.target_degC, Unit::degC, units_)), ink.level);
    if (result_.outlet_limit_degC) {
        const double limit = level(*result_.outlet_limit_degC, ink.stop, Qt::DashDotDotLine);
        if (words)
            note(painter, ink, {temperatures_.right() - 4, limit + 1}, Qt::AlignRight,
                 tr("outlet's limit %1").arg(valueText(*result_.outlet_limit_degC, Unit::degC, units_)),
                 ink.stop);
    }
    if (words && result_.peak_band)
        note(painter, ink, {temperatures_.center().x(), y(Curve::outlet, result_.peak_band->high)},
             Qt::AlignHCenter | Qt::AlignBottom, tr("peak, 9 of 10 cases"), ink.return_);
    if (words && result_.target_band)
        note(painter, ink, {x(std::min(result_.target_band->low, hours_)) - 2, temperatures_.bottom() - 1},
             Qt::AlignRight | Qt::AlignBottom,
             result_.target_band->share < 0.95 ? tr("target reached, where it is")
                                               : tr("target reached, 9 of 10 cases"),
             ink.level);
}

void Chart::paintSwitches(QPainter& painter, const drawing::Palette& ink) const
{
    const std::vector<HeaterSwitch>& switches = result_.outcome.switches;
    painter.setPen(QPen(ink.caution, 0.8));
    painter.setBrush(mixed(ink.caution, ink.ground, 0.1));
    painter.drawRect(bar_);
    double on_since = -1;
    const auto fill = [&](double from_h, double to_h) {
        painter.fillRect(
            QRectF(QPointF(x(from_h), bar_.top()), QPointF(x(std::min(to_h, hours_)), bar_.bottom())),
            ink.caution);
    };
    std::size_t offs = 0;
    for (const HeaterSwitch& at : switches) {
        const double hour = at.time_s / 3600;
        if (at.on) {
            on_since = on_since < 0 ? hour : on_since;
        } else {
            if (on_since >= 0)
                fill(on_since, hour);
            on_since = -1;
            ++offs;
        }
    }
    if (on_since >= 0)
        fill(on_since, result_.end_h);
    constexpr std::size_t most_marks = 60;
    if (offs > most_marks)
        return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.caution);
    for (const HeaterSwitch& at : switches) {
        if (at.on)
            continue;
        const double across = x(at.time_s / 3600);
        const double top = temperatures_.top();
        painter.drawPolygon(QPolygonF{{across - 3, top}, {across + 3, top}, {across, top + 6}});
    }
    painter.setBrush(Qt::NoBrush);
}

void Chart::paintKept(QPainter& painter, const drawing::Palette& ink) const
{
    painter.setClipRect(temperatures_.adjusted(0, -2, 0, 2));
    for (std::size_t i = 0; i < kept_.size(); ++i)
        for (const Curve curve : {Curve::block, Curve::outlet}) {
            QPen pen = penOf(curve, ink);
            pen.setColor(mixed(ink.ink, ink.ground, 0.43));
            pen.setWidthF(curve == Curve::block ? 2 : 1);
            painter.setPen(pen);
            painter.drawPolyline(lineOf(kept_[i], curve));
        }
    painter.setClipping(false);
    if (temperatures_.height() <= room_for_words_px)
        return;
    // Named where each ends, or along it for the second and third.
    for (std::size_t i = 0; i < kept_.size(); ++i) {
        const Result& kept = kept_[i];
        const double share = 0.92 - 0.24 * static_cast<double>(i);
        const std::size_t at = kept.nearest(std::min(share * hours_, kept.end_h));
        const QString name = metrics_.elidedText(nameOfKept(kept_, i), Qt::ElideRight, 150);
        note(painter, ink, {x(kept.time_h[at]), y(Curve::block, kept[Curve::block][at]) + 2},
             Qt::AlignHCenter, name, ink.faint);
    }
}

void Chart::paintCurves(QPainter& painter, const drawing::Palette& ink) const
{
    painter.setBrush(Qt::NoBrush);
    // The outlet lies on top of the others.
    for (auto curve = shown_.rbegin(); curve != shown_.rend(); ++curve) {
        const QRectF& plot = unitOf(*curve) == Unit::degC ? temperatures_ : strip_;
        painter.setClipRect(plot.adjusted(0, -2, 0, 2));
        painter.setPen(penOf(*curve, ink));
        painter.drawPolyline(lineOf(result_, *curve));
    }
    painter.setClipping(false);
}

void Chart::paintCursor(QPainter& painter, const drawing::Palette& ink, double hour) const
{
    const std::size_t index = result_.nearest(hour);
    const double at = x(result_.time_h[index]);
    painter.setPen(QPen(ink.accent, 1));
    painter.drawLine(QPointF(at, temperatures_.top()), QPointF(at, bar_.bottom()));
    painter.setBrush(ink.accent);
    for (const Curve curve : shown_)
        painter.drawEllipse(QPointF(at, y(curve, result_[curve][index])), 2.5, 2.5);
    painter.setBrush(Qt::NoBrush);
}

void Chart::paintLegend(QPainter& painter, const drawing::Palette& ink, std::optional<double> cursor_h) const
{
    const bool reads = cursor_h.has_value();
    const std::size_t index = result_.nearest(cursor_h.value_or(0));
    painter.setPen(ink.accent);
    if (time_box_.isEmpty() && reads)
        note(painter, ink, {x(result_.time_h[index]) + 3, temperatures_.bottom()}, Qt::AlignBottom,
             clockText(result_.time_h[index]), ink.accent);
    if (!time_box_.isEmpty() && reads)
        painter.drawText(time_box_, Qt::AlignLeft | Qt::AlignVCenter,
                         tr("at %1").arg(clockText(result_.time_h[index])));
    for (const Entry& entry : legend_) {
        const double middle = entry.box.center().y();
        painter.setPen(penOf(entry.curve, ink));
        painter.drawLine(QPointF(entry.box.left(), middle), QPointF(entry.box.left() + 20, middle));
        QString text = nameOf(entry.curve);
        if (reads)
            text += QLatin1Char(' ') + valueText(result_[entry.curve][index], unitOf(entry.curve), units_);
        else if (entry.curve == Curve::flow) // its axis has numbers alone
            text += valueText(0, Unit::l_per_min, units_).replace(0, 1, QLatin1Char(','));
        painter.setPen(ink.text);
        painter.drawText(entry.box.adjusted(26, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, text);
    }
}

} // namespace siphonwright::warming
