#include "app/commissioning/reading_chart.h"

#include "app/commissioning/words.h"
#include "app/drawing/elevation.h"
#include "app/warming/chart.h"

#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace siphonwright::commissioning {
namespace {

constexpr std::array shown_channels = {Channel::outlet, Channel::inlet, Channel::hose_surface,
                                       Channel::engine};

/// The pen that the warm-up chart draws the same thing with.
QPen penFor(Channel channel, const drawing::Palette& ink)
{
    switch (channel) {
    case Channel::outlet:
        return warming::penOf(warming::Curve::outlet, ink);
    case Channel::inlet:
        return warming::penOf(warming::Curve::inlet, ink);
    case Channel::hose_surface:
        return warming::penOf(warming::Curve::hose_outside, ink);
    default:
        return warming::penOf(warming::Curve::block, ink);
    }
}

void paintMark(QPainter& painter, Channel channel, QPointF at, const drawing::Palette& ink)
{
    constexpr double r = 4.5;
    painter.setPen(QPen(ink.ink, 1.2));
    painter.setBrush(penFor(channel, ink).color());
    switch (channel) {
    case Channel::outlet:
        painter.drawEllipse(at, r, r);
        break;
    case Channel::inlet:
        painter.drawRect(QRectF(at.x() - r, at.y() - r, 2 * r, 2 * r));
        break;
    case Channel::hose_surface:
        painter.drawPolygon(
            QPolygonF{at + QPointF(0, -r - 1), at + QPointF(r + 1, r), at + QPointF(-r - 1, r)});
        break;
    default:
        painter.drawPolygon(QPolygonF{at + QPointF(0, -r - 1), at + QPointF(r + 1, 0), at + QPointF(0, r + 1),
                                      at + QPointF(-r - 1, 0)});
        break;
    }
    painter.setBrush(Qt::NoBrush);
}

double niceStep(double least)
{
    const double power = std::pow(10, std::floor(std::log10(std::max(least, 1e-9))));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= least)
            return factor * power;
    return 10 * power;
}

/// The chart laid out for one place.
class Plot {
public:
    Plot(QPainter& painter, const QRectF& room, const Outcome& outcome, UnitSystem units,
         const drawing::Palette& ink)
        : painter_(painter), outcome_(outcome), units_(units), ink_(ink)
    {
        const double line = painter.fontMetrics().height();
        legend_ = QRectF(room.left(), room.top(), room.width(), 2 * line + 2);
        area_ = room.adjusted(52 * drawing::textScale(painter.font()), legend_.height() + 6, -12, -line - 6);
        findRange();
    }

    void paint()
    {
        paintGrid();
        for (const Channel channel : shown_channels)
            if (isRead(channel))
                paintExpected(channel);
        paintLimit();
        for (const Channel channel : shown_channels)
            paintRead(channel);
        paintLegend();
    }

private:
    bool isRead(Channel channel) const
    {
        const std::vector<Reading>& readings = outcome_.judged.evidence.readings;
        return std::any_of(readings.begin(), readings.end(),
                           [channel](const Reading& one) { return readOn(one, channel).has_value(); });
    }

    void findRange()
    {
        const auto reach = [this](double value) {
            low_ = std::min(low_, value);
            high_ = std::max(high_, value);
        };
        for (const Channel channel : shown_channels) {
            if (!isRead(channel))
                continue;
            for (std::size_t i = 0; i < outcome_.hours.size(); ++i) {
                const ExpectedRange range = expectedRange(outcome_.as_drawn, i, channel);
                reach(range.low);
                reach(range.high);
            }
            for (const Reading& reading : outcome_.judged.evidence.readings)
                if (readOn(reading, channel))
                    reach(*readOn(reading, channel));
        }
        if (low_ > high_) {
            low_ = 0;
            high_ = 50;
        }
        low_ -= 2;
        high_ += 2;
    }

    double x(double hour) const { return area_.left() + area_.width() * hour / outcome_.hours.back(); }
    double y(double degC) const { return area_.bottom() - area_.height() * (degC - low_) / (high_ - low_); }

    void paintGrid()
    {
        const double least = (high_ - low_) * 1.6 * painter_.fontMetrics().height() / area_.height();
        const double per = units_ == UnitSystem::inch ? 5.0 / 9 : 1;
        const double zero = units_ == UnitSystem::inch ? -160.0 / 9 : 0;
        const double step = niceStep(least / per) * per;
        for (double at = zero + std::ceil((low_ - zero) / step) * step; at <= high_; at += step) {
            painter_.setPen(QPen(ink_.grid_strong, 1));
            painter_.drawLine(QPointF(area_.left(), y(at)), QPointF(area_.right(), y(at)));
            painter_.setPen(ink_.faint);
            painter_.drawText(QRectF(area_.left() - 54, y(at) - 10, 50, 20),
                              int(Qt::AlignRight) | int(Qt::AlignVCenter),
                              text(std::abs(at) < 1e-9 ? 0 : at, Unit::degC, units_));
        }
        const double hours = outcome_.hours.back();
        const double wide = hours * 62 / std::max(area_.width(), 1.0);
        double every = 24 * std::max(1.0, std::ceil(wide / 24));
        for (const double nice : {0.25, 0.5, 1.0, 2.0, 4.0, 6.0, 12.0})
            if (nice >= wide) {
                every = nice;
                break;
            }
        for (double at = 0; at <= hours * (1 + 1e-9); at += every) {
            painter_.setPen(QPen(ink_.grid_strong, 1));
            painter_.drawLine(QPointF(x(at), area_.top()), QPointF(x(at), area_.bottom() + 3));
            painter_.setPen(ink_.faint);
            painter_.drawText(QRectF(std::min(x(at) - 30, area_.right() - 48), area_.bottom() + 3, 60, 20),
                              Qt::AlignHCenter, text(at, Unit::hour, units_));
        }
    }

    void paintExpected(Channel channel)
    {
        QPolygonF line;
        QPolygonF band;
        for (std::size_t i = 0; i < outcome_.hours.size(); ++i) {
            const ExpectedRange range = expectedRange(outcome_.as_drawn, i, channel);
            line << QPointF(x(outcome_.hours[i]), y(range.middle));
            band << QPointF(x(outcome_.hours[i]), y(range.high));
        }
        for (std::size_t i = outcome_.hours.size(); i-- > 0;)
            band << QPointF(x(outcome_.hours[i]), y(expectedRange(outcome_.as_drawn, i, channel).low));
        QColor tint = penFor(channel, ink_).color();
        tint.setAlphaF(0.16F);
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(tint);
        painter_.drawPolygon(band);
        painter_.setBrush(Qt::NoBrush);
        QPen pen = penFor(channel, ink_);
        pen.setWidthF(std::min(pen.widthF(), 2.0));
        painter_.setPen(pen);
        painter_.drawPolyline(line);
    }

    void paintLimit()
    {
        const Limits limits = limitsOf(*ruleById("outlet-over-limit"), outcome_.sketch);
        if (!limits.stop || *limits.stop > high_)
            return;
        painter_.setPen(QPen(ink_.stop, 1.4, Qt::DashDotDotLine));
        painter_.drawLine(QPointF(area_.left(), y(*limits.stop)), QPointF(area_.right(), y(*limits.stop)));
    }

    void paintRead(Channel channel)
    {
        const Evidence& evidence = outcome_.judged.evidence;
        for (std::size_t i = 0; i < evidence.readings.size(); ++i)
            if (const std::optional<double>& value = readOn(evidence.readings[i], channel);
                value && evidence.times_s[i] / 3600 <= outcome_.hours.back())
                paintMark(painter_, channel, {x(evidence.times_s[i] / 3600), y(*value)}, ink_);
    }

    void paintLegend()
    {
        const double wide = legend_.width() / 2;
        const double line = legend_.height() / 2;
        int place = 0;
        for (const Channel channel : shown_channels) {
            if (!isRead(channel))
                continue;
            const QPointF at(legend_.left() + (place % 2) * wide, legend_.top() + (place / 2) * line);
            QPen pen = penFor(channel, ink_);
            pen.setWidthF(std::min(pen.widthF(), 2.0));
            painter_.setPen(pen);
            painter_.drawLine(at + QPointF(4, line / 2), at + QPointF(34, line / 2));
            paintMark(painter_, channel, at + QPointF(19, line / 2), ink_);
            painter_.setPen(ink_.text);
            painter_.drawText(QRectF(at.x() + 40, at.y(), wide - 42, line), Qt::AlignVCenter,
                              text(instrumentFor(channel).title));
            ++place;
        }
    }

    QPainter& painter_;
    const Outcome& outcome_;
    UnitSystem units_;
    const drawing::Palette& ink_;
    QRectF legend_;
    QRectF area_;
    double low_ = 1e9;
    double high_ = -1e9;
};

} // namespace

ReadingChart::ReadingChart(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("reading-chart"));
    setAccessibleName(tr("Readings over what the drawing would give"));
}

void ReadingChart::setLook(drawing::Look look)
{
    look_ = look;
    update();
}

void ReadingChart::setUnits(UnitSystem units)
{
    units_ = units;
    update();
}

void ReadingChart::show(Outcome outcome, bool of_before)
{
    const std::vector<Reading>& readings = outcome.judged.evidence.readings;
    const bool any = std::any_of(readings.begin(), readings.end(), [](const Reading& one) {
        return std::any_of(shown_channels.begin(), shown_channels.end(),
                           [&](Channel channel) { return readOn(one, channel).has_value(); });
    });
    const bool drawable = any && !outcome.hours.empty() && outcome.as_drawn.missing.empty();
    outcome_ = drawable ? std::optional(std::move(outcome)) : std::nullopt;
    of_before_ = of_before;
    setVisible(outcome_.has_value());
    update();
}

void ReadingChart::clear()
{
    outcome_.reset();
    setVisible(false);
}

void ReadingChart::paint(QPainter& painter, const QRectF& room, const drawing::Palette& ink) const
{
    painter.fillRect(room, ink.ground);
    if (!outcome_)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setOpacity(of_before_ ? 0.45 : 1);
    Plot(painter, room.adjusted(4, 4, -4, -4), *outcome_, units_, ink).paint();
}

void ReadingChart::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    paint(painter, rect(), drawing::paletteOf(look_));
}

} // namespace siphonwright::commissioning
