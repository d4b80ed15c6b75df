#pragma once

#include "app/drawing/elevation.h"
#include "app/warming/result.h"

#include <QCoreApplication>
#include <QFont>
#include <QFontMetricsF>
#include <QPainterPath>

#include <utility>

namespace siphonwright::warming {

/// How a curve is drawn: apart from the others by line and not by colour alone.
QPen penOf(Curve curve, const drawing::Palette& ink);

/// Most results that are kept under the present one.
constexpr std::size_t most_kept = 3;

/// The chart of a warm-up, laid out for one place; the same on the screen, as PNG and as SVG. Pixels of the
/// painter. A low chart shows temperatures alone; a higher one flow and power in a strip under them. Where
/// the heater is on is always shown as a bar along the hours.
class Chart {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::warming)

public:
    Chart(const QRectF& room, const Result& result, const std::vector<Result>& kept, UnitSystem units,
          const QFont& font);

    void paint(QPainter& painter, const drawing::Palette& ink, std::optional<double> cursor_h) const;

    const QRectF& temperatures() const { return temperatures_; }
    /// Where flow and power are drawn; empty in a low chart.
    const QRectF& strip() const { return strip_; }
    double x(double hour) const;
    double hourAt(double x) const;
    double y(Curve curve, double value) const;
    /// The curves drawn, in the legend's order.
    const std::vector<Curve>& shown() const { return shown_; }
    /// Does the legend fit over the chart?
    double legendBottom() const { return room_.top() + legend_height_; }

private:
    struct Entry {
        Curve curve;
        QRectF box;
    };
    struct Axis {
        double low = 0;
        double high = 1;
        double step = 1; ///< in the shown unit
        Unit unit = Unit::degC;
    };

    double entryWidth(Curve curve) const;
    double layLegendBeside();
    void layLegend();
    void layAxes();
    Axis axisOver(double low, double high, Unit unit, double height) const;
    double shownValue(double value, Unit unit) const;
    double storedValue(double shown, Unit unit) const;
    const Axis& axisOf(Curve curve) const;

    void paintHours(QPainter& painter, const drawing::Palette& ink) const;
    void paintAxis(QPainter& painter, const drawing::Palette& ink, const Axis& axis, const QRectF& plot,
                   bool right) const;
    void paintBands(QPainter& painter, const drawing::Palette& ink) const;
    void paintLevels(QPainter& painter, const drawing::Palette& ink) const;
    void paintSwitches(QPainter& painter, const drawing::Palette& ink) const;
    void paintKept(QPainter& painter, const drawing::Palette& ink) const;
    void paintCurves(QPainter& painter, const drawing::Palette& ink) const;
    void paintLegend(QPainter& painter, const drawing::Palette& ink, std::optional<double> cursor_h) const;
    void paintCursor(QPainter& painter, const drawing::Palette& ink, double hour) const;
    void note(QPainter& painter, const drawing::Palette& ink, QPointF at, Qt::Alignment anchor,
              const QString& text, const QColor& colour) const;
    QPolygonF lineOf(const Result& result, Curve curve) const;

    QRectF room_;
    const Result& result_;
    const std::vector<Result>& kept_;
    UnitSystem units_;
    QFont font_;
    QFontMetricsF metrics_;
    std::vector<Curve> shown_;
    std::vector<Entry> legend_;
    double legend_height_ = 0;
    QRectF time_box_;
    QRectF temperatures_;
    QRectF strip_;
    QRectF bar_; ///< when the heater is on
    double hours_ = 24;
    Axis degC_;
    Axis flow_;
    Axis power_;
};

/// What a kept result is called among the others: its sketch's title or "before".
QString nameOfKept(const std::vector<Result>& kept, std::size_t index);

} // namespace siphonwright::warming
