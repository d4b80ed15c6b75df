#include "app/drawing/between.h"
#include "app/drawing/ink.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"

#include "core/running/loop_figures.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

/// The coolant's temperature as a colour, and the scale that says which is which.
namespace siphonwright::drawing {

namespace {

constexpr double bar_mm = 42;
constexpr double bar_height_mm = 2.6;

QString legendDegrees(const Ink& ink, double degC)
{
    return inWords(degC, Unit::degC, ink.style.units);
}

/// In a corner of what is seen, where nothing is in its way; else in the first one.
QRectF cornerFor(const Ink& ink, const QSizeF& size)
{
    const double in = ink.paper(3);
    const QRectF room = ink.visible.adjusted(in, in, -in, -in);
    const double right = room.right() - size.width();
    const double low = room.bottom() - size.height();
    const QRectF corners[] = {{{room.left(), low}, size},
                              {{right, low}, size},
                              {{room.left(), room.top()}, size},
                              {{right, room.top()}, size}};
    for (const bool of_lines : {true, false})
        for (const QRectF& corner : corners)
            if (ink.isFree(corner, of_lines))
                return corner;
    return corners[0];
}

} // namespace

QColor temperatureColour(const Palette& palette, double share)
{
    if (!std::isfinite(share))
        return palette.tepid;
    const double within = std::clamp(share, 0.0, 1.0);
    return within < 0.5 ? between(palette.cold, palette.tepid, 2 * within)
                        : between(palette.tepid, palette.hot, 2 * within - 1);
}

std::optional<TemperatureRange> temperatureRange(const Ink& ink)
{
    if (!ink.style.tint)
        return std::nullopt;
    constexpr double round_degC = 5; // whole in degF too
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const LoopRun& run : ink.analysis.running.loops)
        for (const HoseRole role : {HoseRole::supply, HoseRole::return_})
            for (const HoseTemperature& at : temperaturesAlong(run, role)) {
                low = std::min(low, at.degC);
                high = std::max(high, at.degC);
            }
    if (!(low <= high))
        return std::nullopt;
    const double from = std::floor(low / round_degC) * round_degC;
    return TemperatureRange{from, std::max(from + round_degC, std::ceil(high / round_degC) * round_degC)};
}

void paintTemperatureScale(Ink& ink)
{
    const std::optional<TemperatureRange> range = temperatureRange(ink);
    if (!range)
        return;
    const double h = ink.paper(ink.style.lettering_mm);
    const QSizeF size(ink.paper(bar_mm + 4), ink.paper(bar_height_mm) + 4.2 * h);
    const QRectF box = cornerFor(ink, size);
    ink.painter.setPen(ink.pen(ink.palette.faint, thin_mm));
    ink.painter.setBrush(ink.palette.ground);
    ink.painter.drawRect(box);
    const QString title = QCoreApplication::translate("Drawing", "Coolant in the hoses");
    const double left = box.left() + ink.paper(2);
    paintText(ink.painter, ink.style, {left, box.top() + 1.6 * h}, title, Anchor::left, ink.palette.text);
    const QRectF bar(left, box.top() + 2.1 * h, ink.paper(bar_mm), ink.paper(bar_height_mm));
    constexpr int steps = 42;
    ink.painter.setPen(Qt::NoPen);
    for (int i = 0; i < steps; ++i) {
        ink.painter.setBrush(temperatureColour(ink.palette, (i + 0.5) / steps));
        ink.painter.drawRect(QRectF(bar.left() + bar.width() * i / steps, bar.top(),
                                    bar.width() * (i + 1 < steps ? 1.2 : 1) / steps, bar.height()));
    }
    ink.painter.setPen(ink.pen(ink.palette.ink, thin_mm));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawRect(bar);
    const double below = bar.bottom() + 1.5 * h;
    paintText(ink.painter, ink.style, {bar.left(), below}, legendDegrees(ink, range->low_degC), Anchor::left,
              ink.palette.text);
    paintText(ink.painter, ink.style, {bar.center().x(), below},
              legendDegrees(ink, (range->low_degC + range->high_degC) / 2), Anchor::centre, ink.palette.text);
    paintText(ink.painter, ink.style, {bar.right(), below}, legendDegrees(ink, range->high_degC),
              Anchor::right, ink.palette.text);
    ink.reserve(box);
}

} // namespace siphonwright::drawing
