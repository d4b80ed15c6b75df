#include "app/paper/hose_strip.h"

#include "app/drawing/elevation.h"
#include "app/drawing/slope_words.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/sheet/words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <functional>

namespace siphonwright::paper {

namespace {

using drawing::Anchor;
using drawing::Weight;

/// From the bar down to the texts.
constexpr double led_mm = 4.5;

constexpr double degrees = 180 / 3.14159265358979323846;

/// "valve 78, cut 70 to 85"; where nothing of a body is between its stops the hose is cut at its middle.
QString markOf(const InlinePart& part, const Hose& hose, const std::function<QString(double)>& length)
{
    const HosePart stops = stopsOf(part, hose);
    const QString place =
        QStringLiteral("%1 %2").arg(sheet::partWord(stops.kind), length(fromCutEnd(hose, part.along_mm)));
    const QString from = length(stops.from_mm);
    const QString to = length(stops.to_mm);
    return from == to ? place : tr("%1, cut %2 to %3").arg(place, from, to);
}

void addMarks(HoseStrip& strip, const Route& route, UnitSystem units)
{
    // Nobody marks a hose closer than to the millimetre; the unit is said once, over the strip.
    const auto length = [units](double mm) {
        return units == UnitSystem::metric ? numberInWords(mm, 0) : inchesInWords(mm);
    };
    const Hose& hose = *route.hose;
    for (const double along : hose.clips_mm) {
        const double at = along + strip.on_at_a_mm;
        strip.marks.push_back({StripMark::What::clip, at, at, tr("clip %1").arg(length(at))});
    }
    for (const InlinePart& part : hose.parts) {
        const double at = part.along_mm + strip.on_at_a_mm;
        strip.marks.push_back({StripMark::What::part, at, at, markOf(part, hose, length)});
    }
    for (std::size_t i = 0; i < route.bends.size(); ++i) {
        const Bend& bend = route.bends[i];
        if (route.bend_points[i] == Route::no_point)
            continue;
        const double half = bend.radius_mm * bend.angle_rad / 2;
        const double middle = bend.s - route.hose_from_mm + strip.on_at_a_mm;
        strip.marks.push_back({StripMark::What::bend, middle - half, middle + half,
                               tr("bend %1 to %2, %3, R %4")
                                   .arg(length(middle - half), length(middle + half),
                                        inWords(std::round(bend.angle_rad * degrees), Unit::degree, units),
                                        length(bend.radius_mm))});
    }
    std::stable_sort(strip.marks.begin(), strip.marks.end(), [](const StripMark& a, const StripMark& b) {
        return a.from_mm + a.to_mm < b.from_mm + b.to_mm;
    });
}

void addSlopes(HoseStrip& strip, const Route& route, const Plumb& plumb)
{
    for (const Piece& piece : route.path.line.pieces()) {
        const double from = std::max(piece.s, route.hose_from_mm);
        const double to = std::min(piece.s + piece.length_mm, route.hose_to_mm);
        if (piece.radius_mm <= 0 && to > from)
            strip.slopes.push_back({from - route.hose_from_mm + strip.on_at_a_mm,
                                    to - route.hose_from_mm + strip.on_at_a_mm,
                                    drawing::slopeWords(piece.u, plumb)});
    }
}

double xOf(const HoseStrip& strip, double left, double width, double along_mm)
{
    return left + width * std::clamp(along_mm / strip.length_mm, 0.0, 1.0);
}

void paintMark(QPainter& painter, const HoseStrip& strip, const StripMark& mark, const StripInk& ink,
               const drawing::Palette& palette)
{
    const double from = xOf(strip, ink.left, ink.width, mark.from_mm);
    const double to = xOf(strip, ink.left, ink.width, mark.to_mm);
    const double middle = ink.top + strip_bar_mm / 2;
    painter.setPen(QPen(palette.ink, drawing::medium_mm));
    switch (mark.what) {
    case StripMark::What::bend:
        painter.setBrush(palette.jacket_fill);
        painter.drawRect(QRectF(from, ink.top, std::max(0.3, to - from), strip_bar_mm));
        break;
    case StripMark::What::clip:
        painter.setBrush(palette.ground);
        painter.drawRect(QRectF(from - 0.7, ink.top - 0.7, 1.4, strip_bar_mm + 1.4));
        break;
    case StripMark::What::part:
        painter.setBrush(palette.ground);
        painter.drawPolygon(QPolygonF({{from - 2, middle - 1.8},
                                       {from + 2, middle + 1.8},
                                       {from + 2, middle - 1.8},
                                       {from - 2, middle + 1.8}}));
        break;
    }
}

} // namespace

HoseStrip stripOf(const ResolvedHose& hose, const Plumb& plumb, UnitSystem units)
{
    HoseStrip strip;
    const Hose& own = *hose->hose;
    strip.on_at_a_mm = fromCutEnd(own, 0);
    strip.on_at_b_mm = own.to.engagement_mm;
    strip.length_mm = hose->length_mm + strip.on_at_a_mm + strip.on_at_b_mm;
    if (hose->path.line.empty() || !(strip.length_mm > 0))
        return strip;
    addMarks(strip, *hose, units);
    addSlopes(strip, *hose, plumb);
    constexpr int samples = 120;
    for (int i = 0; i <= samples; ++i) {
        const double along = hose->length_mm * i / samples;
        const BoreHeights heights = heightsAt(hose->path, plumb, hose->hose_from_mm + along);
        strip.along_mm.push_back(along + strip.on_at_a_mm);
        strip.crown_mm.push_back(heights.crown_mm);
        strip.invert_mm.push_back(heights.invert_mm);
    }
    return strip;
}

std::vector<StripLabel> labelsUnder(const HoseStrip& strip, double left, double width, double lettering)
{
    std::vector<StripLabel> labels;
    for (const StripMark& mark : strip.marks) {
        const double at = xOf(strip, left, width, (mark.from_mm + mark.to_mm) / 2);
        labels.push_back({at, at, mark.text});
    }
    if (labels.empty())
        return labels;
    const double step = std::min(1.8 * lettering, width / double(labels.size()));
    double least = left;
    for (StripLabel& label : labels) {
        label.x = std::max(label.x, least);
        least = label.x + step;
    }
    double most = left + width;
    for (auto label = labels.rbegin(); label != labels.rend(); ++label) {
        label->x = std::min(label->x, most);
        most = label->x - step;
    }
    return labels;
}

double heightOf(const std::vector<StripLabel>& labels, double lettering)
{
    double longest = 0;
    for (const StripLabel& label : labels)
        longest = std::max(longest, drawing::textWidth(label.text, lettering));
    return labels.empty() ? 0 : longest + led_mm + 1;
}

namespace {

/// Over the straights that they are of, in a row; one that would be pushed off its straight is left out.
void paintSlopes(QPainter& painter, const HoseStrip& strip, const StripInk& ink)
{
    constexpr double apart_mm = 1.5;
    double taken_to = ink.left - apart_mm;
    for (const StripSlope& slope : strip.slopes) {
        const double from = xOf(strip, ink.left, ink.width, slope.from_mm);
        const double to = xOf(strip, ink.left, ink.width, slope.to_mm);
        const double half = drawing::textWidth(slope.text, ink.lettering) / 2;
        const double middle = std::max((from + to) / 2, taken_to + apart_mm + half);
        if (middle > to || middle + half > ink.left + ink.width + apart_mm)
            continue;
        drawing::paintWeightedText(painter, {middle, ink.top - 1.7}, slope.text, Anchor::centre,
                                   drawing::Palette::paper().ink, ink.lettering, Weight::regular);
        taken_to = middle + half;
    }
}

} // namespace

void paintStrip(QPainter& painter, const HoseStrip& strip, const std::vector<StripLabel>& labels,
                const StripInk& ink)
{
    const drawing::Palette palette = drawing::Palette::paper();
    const double bottom = ink.top + strip_bar_mm;
    painter.setPen(QPen(palette.ink, drawing::thick_mm, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(palette.ground);
    painter.drawRect(QRectF(ink.left, ink.top, ink.width, strip_bar_mm));
    for (const bool bends : {true, false})
        for (const StripMark& mark : strip.marks)
            if ((mark.what == StripMark::What::bend) == bends)
                paintMark(painter, strip, mark, ink, palette);
    // What is pushed on at either end.
    QPen dashed(palette.ink, drawing::medium_mm, Qt::DashLine);
    painter.setPen(dashed);
    for (const double on : {strip.on_at_a_mm, strip.length_mm - strip.on_at_b_mm}) {
        const double x = xOf(strip, ink.left, ink.width, on);
        painter.drawLine(QPointF(x, ink.top), QPointF(x, bottom));
    }
    const double middle = ink.top + strip_bar_mm / 2 + ink.lettering / 2;
    drawing::paintWeightedText(painter, {ink.left - 1.5, middle}, QStringLiteral("A"), Anchor::right,
                               palette.ink, drawing::text_mm, Weight::strong);
    drawing::paintWeightedText(painter, {ink.left + ink.width + 1.5, middle}, QStringLiteral("B"),
                               Anchor::left, palette.ink, drawing::text_mm, Weight::strong);
    paintSlopes(painter, strip, ink);
    for (const StripLabel& label : labels) {
        painter.setPen(QPen(palette.ink, drawing::hairline_mm));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(QPolygonF({{label.at, bottom},
                                        {label.at, bottom + 1},
                                        {label.x, bottom + led_mm - 1},
                                        {label.x, bottom + led_mm - 0.3}}));
        drawing::paintWeightedText(painter, {label.x + ink.lettering / 2, bottom + led_mm}, label.text,
                                   Anchor::right, palette.ink, ink.lettering, Weight::regular, -90);
    }
}

void paintRunProfile(QPainter& painter, const HoseStrip& strip, const StripInk& ink)
{
    if (strip.crown_mm.empty())
        return;
    const drawing::Palette palette = drawing::Palette::paper();
    const auto highest = std::max_element(strip.crown_mm.begin(), strip.crown_mm.end());
    const auto lowest = std::min_element(strip.invert_mm.begin(), strip.invert_mm.end());
    const auto [low, high] = ink.heights_mm.value_or(std::pair{*lowest, *highest});
    const double high_mm = high;
    const double span = std::max(1.0, high - low);
    const double room = ink.profile_mm - 7; // a line of text over and under it
    const auto place = [&](std::size_t i, double height) {
        return QPointF(xOf(strip, ink.left, ink.width, strip.along_mm[i]),
                       ink.top + 3.5 + room * (high_mm - height) / span);
    };
    painter.setBrush(Qt::NoBrush);
    for (const bool crown : {true, false}) {
        QPolygonF line;
        const std::vector<double>& heights = crown ? strip.crown_mm : strip.invert_mm;
        for (std::size_t i = 0; i < heights.size(); ++i)
            line << place(i, heights[i]);
        painter.setPen(QPen(palette.ink, crown ? drawing::edge_mm : drawing::thin_mm,
                            crown ? Qt::SolidLine : Qt::DashLine));
        painter.drawPolyline(line);
    }
    const auto name = [&](std::size_t i, double height, double dy) {
        const QPointF at = place(i, height);
        const double aside = std::min(25.0, ink.width / 3);
        const Anchor anchor = at.x() < ink.left + aside               ? Anchor::left
                              : at.x() > ink.left + ink.width - aside ? Anchor::right
                                                                      : Anchor::centre;
        const double on_tape_mm = ink.units == UnitSystem::metric ? std::round(height) : height;
        drawing::paintWeightedText(painter, {at.x(), at.y() + dy}, inWords(on_tape_mm, Unit::mm, ink.units),
                                   anchor, palette.ink, ink.lettering, Weight::regular);
    };
    name(std::size_t(highest - strip.crown_mm.begin()), *highest, -1.2);
    name(std::size_t(lowest - strip.invert_mm.begin()), *lowest, 1.2 + ink.lettering);
}

} // namespace siphonwright::paper
