#include "app/commissioning/expected_ink.h"

#include "app/drawing/line_table.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/panels/field.h"

#include "core/checks/rules.h"
#include "core/quantity/constants.h"

#include <QPainter>
#include <QPen>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace siphonwright::commissioning {

namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double chart_lettering_mm = drawing::small_text_mm;

std::optional<double> stopOf(const Sketch& sketch, const char* id)
{
    const Rule* rule = ruleById(id);
    if (!rule)
        return std::nullopt;
    const Limits limits = limitsOf(*rule, sketch);
    return limits.stop ? limits.stop : limits.caution;
}

const ResultBand* peakBand(const Analysis& analysis, const Id& heater)
{
    if (!analysis.proof)
        return nullptr;
    for (const HeaterBands& bands : analysis.proof->bands)
        if (bands.heater == heater && bands[Banded::peak_outlet_degC])
            return &*bands[Banded::peak_outlet_degC];
    return nullptr;
}

/// Of the loop in the series; nothing: none.
std::optional<std::size_t> loopIndex(const EngineWarmUp& warm, const Id& heater)
{
    const auto found = std::find(warm.heaters.begin(), warm.heaters.end(), heater);
    if (found == warm.heaters.end())
        return std::nullopt;
    return std::size_t(found - warm.heaters.begin());
}

/// From degrees and hours to the page.
struct Axes {
    QRectF plot;
    double low_degC = 0;
    double high_degC = 1;
    double hours = 1;

    QPointF at(double hour, double degC) const
    {
        return {plot.left() + plot.width() * hour / hours,
                plot.bottom() - plot.height() * (degC - low_degC) / (high_degC - low_degC)};
    }
};

Axes axesFor(const Sketch& sketch, const Analysis& analysis, const Id& heater, const QRectF& box)
{
    const WarmUp& result = analysis.proof->warm_up.result;
    const std::size_t loop = *loopIndex(analysis.proof->warm_up, heater);
    Axes axes;
    axes.plot = box.adjusted(14, 2, -26, -5);
    double low = 1e9;
    double high = -1e9;
    for (const WarmUpSample& sample : result.series) {
        low = std::min({low, sample.block_degC, sample.loops[loop].outlet_degC});
        high = std::max({high, sample.block_degC, sample.loops[loop].outlet_degC});
    }
    if (const auto limit = stopOf(sketch, "outlet-over-limit"))
        high = std::max(high, *limit);
    if (const ResultBand* band = peakBand(analysis, heater))
        high = std::max(high, band->high);
    constexpr double step_degC = 10;
    axes.low_degC = std::floor(low / step_degC) * step_degC;
    axes.high_degC = std::ceil((high + 1) / step_degC) * step_degC;
    axes.hours = std::max(result.series.back().time_s / s_per_h, 1e-3);
    return axes;
}

} // namespace

QString limitsText(const Sketch& sketch, const Analysis& analysis, const Id& heater)
{
    const UnitSystem units = panels::unitsOf(sketch);
    const auto outlet = stopOf(sketch, "outlet-over-limit");
    const auto cycles = stopOf(sketch, "cycles-over-4");
    QString text = outlet && cycles ? tr("Limits: outlet under %1 all the time, at most %2 cycles an hour.")
                                          .arg(inWords(*outlet, Unit::degC, units), numberInWords(*cycles, 0))
                                    : tr("Limits: those of the heater's manual.");
    const LoopOutcome* outcome = analysis.proof ? analysis.proof->warm_up.loopOf(heater) : nullptr;
    if (!outcome || !outcome->peak_outlet_degC)
        return text + QLatin1Char(' ') + tr("Nothing was computed to expect.");
    const QString peak = inWords(*outcome->peak_outlet_degC, Unit::degC, units);
    const ResultBand* band = peakBand(analysis, heater);
    text += QLatin1Char(' ');
    text +=
        band ? tr("Expected: outlet peaks at %1 (%2 to %3).")
                   .arg(peak, inWords(band->low, Unit::degC, units), inWords(band->high, Unit::degC, units))
             : tr("Expected: outlet peaks at %1.").arg(peak);
    return text;
}

bool hasExpected(const Analysis& analysis, const Id& heater)
{
    if (!analysis.proof || analysis.proof->warm_up.result.series.size() < 2)
        return false;
    const auto loop = loopIndex(analysis.proof->warm_up, heater);
    return loop && *loop < analysis.proof->warm_up.result.series.front().loops.size();
}

void paintExpected(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Id& heater,
                   const QRectF& box)
{
    if (!hasExpected(analysis, heater))
        return;
    const UnitSystem units = panels::unitsOf(sketch);
    const WarmUp& result = analysis.proof->warm_up.result;
    const std::size_t loop = *loopIndex(analysis.proof->warm_up, heater);
    const Axes axes = axesFor(sketch, analysis, heater, box);
    const auto write = [&](QPointF at, const QString& text, Anchor anchor) {
        drawing::paintWeightedText(painter, at, text, anchor, Qt::black, chart_lettering_mm, Weight::regular);
    };
    const auto pen = [&painter](double width, Qt::PenStyle style = Qt::SolidLine) {
        painter.setPen(QPen(Qt::black, width, style, Qt::FlatCap));
    };
    painter.setBrush(Qt::NoBrush);
    pen(drawing::medium_mm);
    painter.drawRect(axes.plot);
    const auto degrees = [&](double degC) { return inWords(degC, Unit::degC, units); };
    write(axes.plot.topLeft() + QPointF(-1, chart_lettering_mm), degrees(axes.high_degC), Anchor::right);
    write(axes.plot.bottomLeft() + QPointF(-1, 0), degrees(axes.low_degC), Anchor::right);
    const double under = axes.plot.bottom() + 1.2 + chart_lettering_mm;
    write({axes.plot.left(), under}, numberInWords(0, 0), Anchor::left);
    write({axes.plot.right(), under}, inWords(axes.hours, Unit::hour, units), Anchor::right);
    write({axes.plot.center().x(), under}, tr("outlet: line; engine: dashes; limit: dots"), Anchor::centre);
    const auto curve = [&](const auto& value, double width, Qt::PenStyle style) {
        QPolygonF line;
        for (const WarmUpSample& sample : result.series) {
            const QPointF at = axes.at(sample.time_s / s_per_h, value(sample));
            if (line.isEmpty() || std::hypot(at.x() - line.last().x(), at.y() - line.last().y()) > 0.15)
                line << at;
        }
        pen(width, style);
        painter.drawPolyline(line);
    };
    curve([loop](const WarmUpSample& sample) { return sample.loops[loop].outlet_degC; }, drawing::medium_mm,
          Qt::SolidLine);
    curve([](const WarmUpSample& sample) { return sample.block_degC; }, drawing::edge_mm, Qt::DashLine);
    if (const auto limit = stopOf(sketch, "outlet-over-limit")) {
        pen(drawing::medium_mm, Qt::DotLine);
        painter.drawLine(axes.at(0, *limit), axes.at(axes.hours, *limit));
    }
    if (const ResultBand* band = peakBand(analysis, heater)) {
        const double x = axes.plot.right() + 2.5;
        pen(drawing::medium_mm);
        painter.setBrush(QColor(0xd0, 0xd0, 0xd0));
        painter.drawRect(
            QRectF(QPointF(x - 1, axes.at(0, band->high).y()), QPointF(x + 1, axes.at(0, band->low).y())));
        write({x + 2, axes.at(0, (band->low + band->high) / 2).y() + chart_lettering_mm / 2},
              tr("peak, range"), Anchor::left);
    }
}

} // namespace siphonwright::commissioning
