#include "app/canvas/rulers.h"

#include "app/language/in_words.h"

#include "core/quantity/constants.h"

#include <QFontMetricsF>
#include <QPainter>

#include <array>
#include <cmath>
#include <span>

namespace siphonwright {
namespace {

/// Numbered spacings with the marks between two numbers.
struct Division {
    double spacing_mm;
    int parts;
};
constexpr std::array<Division, 14> metric_marks = {{{1, 2},
                                                    {5, 5},
                                                    {10, 10},
                                                    {20, 4},
                                                    {50, 5},
                                                    {100, 10},
                                                    {200, 4},
                                                    {500, 5},
                                                    {1000, 10},
                                                    {2000, 4},
                                                    {5000, 5},
                                                    {10000, 10},
                                                    {20000, 4},
                                                    {50000, 5}}};
constexpr std::array<Division, 9> inch_marks = {{{mm_per_inch / 4, 4},
                                                 {mm_per_inch, 8},
                                                 {3 * mm_per_inch, 6},
                                                 {6 * mm_per_inch, 6},
                                                 {12 * mm_per_inch, 12},
                                                 {36 * mm_per_inch, 3},
                                                 {120 * mm_per_inch, 10},
                                                 {600 * mm_per_inch, 5},
                                                 {1200 * mm_per_inch, 10}}};

Division divisionFor(double zoom, UnitSystem units)
{
    constexpr double least_px = 56;
    const std::span<const Division> marks = units == UnitSystem::inch
                                                ? std::span<const Division>(inch_marks)
                                                : std::span<const Division>(metric_marks);
    for (const Division& division : marks)
        if (division.spacing_mm * zoom >= least_px)
            return division;
    return marks.back();
}

/// Multiples of a step from the one at or before `from` to the one at or after `to`.
struct Marks {
    long first;
    long last;
};
Marks marksBetween(double from, double to, double step)
{
    return {static_cast<long>(std::floor(from / step)), static_cast<long>(std::ceil(to / step))};
}

QString markText(double mm, UnitSystem units)
{
    const double value = units == UnitSystem::inch ? mm / mm_per_inch : mm;
    return withDecimalSign(QString::number(std::round(value * 100) / 100 + 0.0));
}

void paintMarks(QPainter& painter, const Canvas& canvas, bool across)
{
    const Division division = divisionFor(canvas.viewport.zoom() / canvas.text_scale, canvas.units());
    const Vec2 low = canvas.viewport.toDrawing(canvas.area.bottomLeft());
    const Vec2 high = canvas.viewport.toDrawing(canvas.area.topRight());
    const double step_mm = division.spacing_mm / division.parts;
    const Marks marks = across ? marksBetween(low.x, high.x, step_mm) : marksBetween(low.z, high.z, step_mm);
    const QFontMetricsF metrics(painter.font());
    const double ruler_px = rulerWidth(canvas);
    for (long i = marks.first; i <= marks.last; ++i) {
        const double mm = static_cast<double>(i) * step_mm;
        const QPointF at = canvas.viewport.toScreen(across ? Vec2{mm, 0} : Vec2{0, mm});
        const bool numbered = i % division.parts == 0;
        const double tick =
            numbered ? 10 : (division.parts % 2 == 0 && i % (division.parts / 2) == 0 ? 7 : 4);
        if (across)
            painter.drawLine(QPointF(at.x(), ruler_px - tick), QPointF(at.x(), ruler_px));
        else
            painter.drawLine(QPointF(ruler_px - tick, at.y()), QPointF(ruler_px, at.y()));
        if (!numbered)
            continue;
        const QString text = markText(across ? canvas.view().ruler(mm) : mm, canvas.units());
        const double width = metrics.horizontalAdvance(text);
        if (across) {
            painter.drawText(QPointF(at.x() - width / 2, metrics.ascent() + 1), text);
        } else {
            painter.save();
            painter.translate(metrics.ascent() + 1, at.y());
            painter.rotate(-90);
            painter.drawText(QPointF(-width / 2, 0), text);
            painter.restore();
        }
    }
}

} // namespace

double rulerWidth(const Canvas& canvas)
{
    return usual_ruler_px * canvas.text_scale;
}

double rulerSpacing(double zoom, UnitSystem units)
{
    return divisionFor(zoom, units).spacing_mm;
}

void paintGrid(QPainter& painter, const Canvas& canvas)
{
    const double fine_mm = gridSpacing(canvas.viewport.zoom(), canvas.units());
    const double strong_mm = rulerSpacing(canvas.viewport.zoom() / canvas.text_scale, canvas.units());
    const Vec2 low = canvas.viewport.toDrawing(canvas.area.bottomLeft());
    const Vec2 high = canvas.viewport.toDrawing(canvas.area.topRight());
    const auto lines = [&](double step_mm, const QColor& colour) {
        painter.setPen(QPen(colour, 0)); // one pixel of the device, whatever it is scaled by
        const Marks across = marksBetween(low.x, high.x, step_mm);
        for (long i = across.first; i <= across.last; ++i) {
            const double x = canvas.viewport.toScreen(Vec2{static_cast<double>(i) * step_mm, 0}).x();
            painter.drawLine(QPointF(x, canvas.area.top()), QPointF(x, canvas.area.bottom()));
        }
        const Marks up = marksBetween(low.z, high.z, step_mm);
        for (long i = up.first; i <= up.last; ++i) {
            const double y = canvas.viewport.toScreen(Vec2{0, static_cast<double>(i) * step_mm}).y();
            painter.drawLine(QPointF(canvas.area.left(), y), QPointF(canvas.area.right(), y));
        }
    };
    lines(fine_mm, canvas.palette.grid);
    if (strong_mm > fine_mm)
        lines(strong_mm, canvas.palette.grid_strong);
}

void paintRulers(QPainter& painter, const Canvas& canvas, QSizeF widget,
                 const std::optional<QPointF>& pointer)
{
    painter.save();
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(std::lround(10 * canvas.text_scale)));
    painter.setFont(font);
    const double ruler_px = rulerWidth(canvas);
    const QRectF top(0, 0, widget.width(), ruler_px);
    const QRectF side(0, 0, ruler_px, widget.height());
    painter.setPen(Qt::NoPen);
    painter.setBrush(canvas.palette.ground);
    painter.drawRect(top);
    painter.drawRect(side);
    painter.setPen(QPen(canvas.palette.text, 1));
    painter.setClipRect(top.adjusted(ruler_px, 0, 0, 0));
    paintMarks(painter, canvas, true);
    painter.setClipRect(side.adjusted(0, ruler_px, 0, 0));
    paintMarks(painter, canvas, false);
    painter.setClipping(false);
    painter.setPen(QPen(canvas.palette.faint, 1));
    painter.drawLine(QPointF(0, ruler_px), QPointF(widget.width(), ruler_px));
    painter.drawLine(QPointF(ruler_px, 0), QPointF(ruler_px, widget.height()));
    if (pointer) {
        painter.setPen(QPen(canvas.palette.accent, 2));
        if (pointer->x() > ruler_px)
            painter.drawLine(QPointF(pointer->x(), 0), QPointF(pointer->x(), ruler_px));
        if (pointer->y() > ruler_px)
            painter.drawLine(QPointF(0, pointer->y()), QPointF(ruler_px, pointer->y()));
    }
    const QRectF corner(0, 0, ruler_px, ruler_px);
    painter.setPen(Qt::NoPen);
    painter.drawRect(corner);
    painter.setPen(canvas.palette.text);
    painter.drawText(corner, Qt::AlignCenter,
                     canvas.units() == UnitSystem::inch ? QStringLiteral("in") : QStringLiteral("mm"));
    painter.restore();
}

} // namespace siphonwright
