#include "app/warming/chart.h"

#include "app/language/tr.h"
#include "app/warming/words.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::warming {
namespace {

constexpr double usual_axis_width = 52;
constexpr double edge = 12;
constexpr double hours_height = 17;
constexpr double bar_height = 5;
constexpr double key_width = 26;   ///< of a line in the legend
constexpr double low_chart = 200;  ///< under this height there is no strip
constexpr double flat_chart = 110; ///< under this height the legend stands beside the curves

/// 1, 2 or 5 times a power of ten, at least `least`.
double niceStep(double least)
{
    const double power = std::pow(10, std::floor(std::log10(std::max(least, 1e-9))));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= least)
            return factor * power;
    return 10 * power;
}

} // namespace

Chart::Chart(const QRectF& room, const Result& result, const std::vector<Result>& kept, UnitSystem units,
             const QFont& font)
    : room_(room), result_(result), kept_(kept), units_(units), font_(font), metrics_(font)
{
    const bool high = room_.height() >= low_chart;
    for (const Curve curve : all_curves)
        if (high || unitOf(curve) == Unit::degC)
            shown_.push_back(curve);
    hours_ = std::max(result_.hours, 1e-3);
    const bool flat = room_.height() < flat_chart;
    const double legend_width = flat ? layLegendBeside() : 0;
    if (!flat)
        layLegend();
    const double top = room_.top() + legend_height_ + 4;
    const double axis_width = usual_axis_width * font_.pixelSize() / 12;
    const double left = room_.left() + axis_width;
    const double right = room_.right() - legend_width - (high ? axis_width + 14 : edge);
    const double bottom = room_.bottom() - hours_height * font_.pixelSize() / 12;
    const double tall = std::max(10.0, bottom - top);
    const double share = high ? 0.66 : 1;
    bar_ = QRectF(QPointF(left, bottom - bar_height), QPointF(right, bottom));
    temperatures_ = QRectF(left, top, right - left, tall * share - (high ? 6 : bar_height + 1));
    if (high)
        strip_ = QRectF(QPointF(left, temperatures_.bottom() + 12), QPointF(right, bar_.top() - 2));
    layAxes();
}

double Chart::entryWidth(Curve curve) const
{
    const Unit unit = unitOf(curve);
    const QString widest = unit == Unit::l_per_min ? QStringLiteral(" -00.00 gal/min")
                           : unit == Unit::watt    ? QStringLiteral(" 00000 W")
                                                   : QStringLiteral(" -000.0 °C");
    return key_width + metrics_.horizontalAdvance(nameOf(curve) + widest) + 8;
}

/// One under the other at the right. @return the width taken
double Chart::layLegendBeside()
{
    double width = 0;
    for (const Curve curve : shown_)
        width = std::max(width, entryWidth(curve));
    const double line =
        std::min(std::ceil(metrics_.height()), room_.height() / static_cast<double>(shown_.size()));
    double y = room_.top();
    for (const Curve curve : shown_) {
        legend_.push_back({curve, QRectF(room_.right() - width, y, width, line)});
        y += line;
    }
    constexpr double gap = 20; // for half of the last hour's label
    return width + gap;
}

void Chart::layLegend()
{
    const double line = std::ceil(metrics_.height());
    const double time_width = metrics_.horizontalAdvance(tr("at %1").arg(clockText(23.99))) + 10;
    double x = room_.left() + 6;
    double y = room_.top();
    time_box_ = QRectF(x, y, time_width, line);
    x += time_width;
    for (const Curve curve : shown_) {
        const double width = entryWidth(curve);
        if (x + width > room_.right() && x > room_.left() + 6) {
            x = room_.left() + 6;
            y += line;
        }
        legend_.push_back({curve, QRectF(x, y, width, line)});
        x += width;
    }
    legend_height_ = y + line - room_.top();
}

double Chart::shownValue(double value, Unit unit) const
{
    const Shown& shown = shownIn(unit, units_);
    return value / shown.size - shown.offset;
}

double Chart::storedValue(double shown_value, Unit unit) const
{
    const Shown& shown = shownIn(unit, units_);
    return (shown_value + shown.offset) * shown.size;
}

Chart::Axis Chart::axisOver(double low, double high, Unit unit, double height) const
{
    Axis axis;
    axis.unit = unit;
    const double from = shownValue(low, unit);
    const double to = std::max(shownValue(high, unit), from + 1e-3);
    axis.step = niceStep((to - from) * 1.3 * metrics_.height() / std::max(height, 1.0));
    axis.low = low;
    axis.high = std::max(high, storedValue(to, unit));
    return axis;
}

void Chart::layAxes()
{
    double low = result_.target_degC;
    double high = result_.outlet_limit_degC ? std::max(low, *result_.outlet_limit_degC) : low;
    double least_flow = 0;
    double most_flow = 0;
    double most_power = 0;
    const auto reach = [&](const Result& result) {
        for (const Curve curve : all_curves) {
            const std::vector<double>& values = result[curve];
            if (values.empty())
                continue;
            const auto [least, most] = std::minmax_element(values.begin(), values.end());
            if (unitOf(curve) == Unit::degC) {
                low = std::min(low, *least);
                high = std::max(high, *most);
            } else if (curve == Curve::flow) {
                least_flow = std::min(least_flow, *least);
                most_flow = std::max(most_flow, *most);
            } else {
                most_power = std::max(most_power, *most);
            }
        }
    };
    reach(result_);
    for (const Result& result : kept_)
        reach(result);
    if (result_.outcome.peak_outlet_degC)
        high = std::max(high, *result_.outcome.peak_outlet_degC);
    if (result_.peak_band)
        high = std::max(high, result_.peak_band->high);
    const double room = 0.06 * (high - low) + 1;
    degC_ = axisOver(low - room / 2, high + room, Unit::degC, temperatures_.height());
    flow_ = axisOver(least_flow * 1.1, std::max(most_flow * 1.1, 0.1), Unit::l_per_min, strip_.height());
    power_ = axisOver(0, std::max(most_power * 1.1, 1.0), Unit::watt, strip_.height());
}

const Chart::Axis& Chart::axisOf(Curve curve) const
{
    return curve == Curve::flow ? flow_ : curve == Curve::power ? power_ : degC_;
}

double Chart::x(double hour) const
{
    return temperatures_.left() + temperatures_.width() * hour / hours_;
}

double Chart::hourAt(double at) const
{
    return std::clamp((at - temperatures_.left()) / temperatures_.width(), 0.0, 1.0) * hours_;
}

double Chart::y(Curve curve, double value) const
{
    const QRectF& plot = unitOf(curve) == Unit::degC ? temperatures_ : strip_;
    const Axis& axis = axisOf(curve);
    return plot.bottom() - plot.height() * (value - axis.low) / (axis.high - axis.low);
}

/// A curve as a line of few points: of each pixel column first, lowest, highest and last.
QPolygonF Chart::lineOf(const Result& result, Curve curve) const
{
    QPolygonF line;
    const std::vector<double>& values = result[curve];
    std::size_t i = 0;
    while (i < values.size() && result.time_h[i] <= hours_ * (1 + 1e-9)) {
        const double column = std::floor(x(result.time_h[i]));
        std::size_t end = i;
        while (end < values.size() && std::floor(x(result.time_h[end])) <= column)
            ++end;
        const auto first = values.begin() + static_cast<std::ptrdiff_t>(i);
        const auto last = values.begin() + static_cast<std::ptrdiff_t>(end);
        const auto [least, most] = std::minmax_element(first, last);
        std::array<std::size_t, 4> picked = {i, static_cast<std::size_t>(least - values.begin()),
                                             static_cast<std::size_t>(most - values.begin()), end - 1};
        std::sort(picked.begin(), picked.end());
        for (std::size_t k = 0; k < picked.size(); ++k)
            if (k == 0 || picked[k] != picked[k - 1])
                line << QPointF(x(result.time_h[picked[k]]), y(curve, values[picked[k]]));
        i = end;
    }
    return line;
}

QString nameOfKept(const std::vector<Result>& kept, std::size_t index)
{
    const auto called = [](const Result& result) {
        return result.name.isEmpty() ? tr("before") : result.name;
    };
    const QString name = called(kept[index]);
    std::size_t same = 0;
    for (std::size_t i = 0; i < index; ++i)
        if (called(kept[i]) == name)
            ++same;
    return same == 0 ? name : tr("%1 (%2)").arg(name, QString::number(same + 1));
}

} // namespace siphonwright::warming
