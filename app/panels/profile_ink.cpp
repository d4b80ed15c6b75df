#include "app/drawing/elevation.h"
#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/profile_panel.h"

#include <QComboBox>
#include <QPainter>

#include <algorithm>
#include <cmath>

/// How the run profile is painted.
namespace siphonwright::panels {

namespace {

drawing::Palette inkFor(drawing::Look look)
{
    return drawing::paletteOf(look);
}

/// 1, 2 or 5 times a power of ten, in the unit people read, at least `least` millimetres.
double niceStep(double least_mm, UnitSystem units)
{
    const double unit = units == UnitSystem::inch ? 25.4 : 1;
    const double power = std::pow(10, std::floor(std::log10(least_mm / unit)));
    for (const double factor : {1.0, 2.0, 5.0, 10.0})
        if (factor * power * unit >= least_mm)
            return factor * power * unit;
    return 10 * power * unit;
}

} // namespace

void ProfilePanel::paintEvent(QPaintEvent*)
{
    const drawing::Palette ink = inkFor(look_);
    QPainter painter(this);
    painter.fillRect(rect(), ink.ground);
    painter.setRenderHint(QPainter::Antialiasing);
    if (strips_.empty()) {
        painter.setPen(ink.faint);
        painter.drawText(rect(), Qt::AlignCenter, tr("The profile appears when a hose is drawn."));
        return;
    }
    painter.setClipRect(QRectF(0, topMargin() - 4, width(), height() - topMargin() + 4));
    paintScale(painter);
    paintLevel(painter);
    for (const Strip& strip : strips_)
        paintStrip(painter, strip);
    paintLevelName(painter);
    paintHover(painter);
    painter.setClipping(false);
    paintNames(painter);
}

/// The hoses' names, led to their strips where they stand in several rows, and what heights are stretched
/// by.
void ProfilePanel::paintNames(QPainter& painter) const
{
    const drawing::Palette ink = inkFor(look_);
    const auto colourOf = [&ink](const Name& name) {
        return name.role == HoseRole::supply ? ink.supply : ink.return_;
    };
    double first_row_ends = 0;
    for (const Name& name : names_) {
        if (name.area.top() < rowHeight())
            first_row_ends = std::max(first_row_ends, name.area.right());
        if (name_rows_ == 1)
            continue;
        painter.setPen(QPen(colourOf(name), 1));
        painter.drawLine(QPointF(name.strip_left, name.area.center().y()),
                         QPointF(name.strip_left, topMargin() - 2));
        if (name.area.left() > name.strip_left)
            painter.drawLine(QPointF(name.strip_left, name.area.center().y()),
                             QPointF(name.area.left() - 1, name.area.center().y()));
    }
    for (const Name& name : names_) {
        if (name_rows_ > 1) // a name is led past another behind it
            painter.fillRect(name.area.adjusted(-1, 1, 1, -1), ink.ground);
        painter.setPen(colourOf(name));
        painter.drawText(name.area.adjusted(0, 0, 4, 0), Qt::AlignLeft | Qt::AlignVCenter, name.text);
    }
    // The stretch is said in its own list too: it gives way to a name.
    const QString scale = scaleWords();
    const double right = times_->x() - 8;
    const double left = right - painter.fontMetrics().horizontalAdvance(scale);
    if (left < first_row_ends + 8)
        return;
    painter.setPen(ink.faint);
    painter.drawText(QRectF(left, 2, right - left, 18 * this->scale()), Qt::AlignRight | Qt::AlignVCenter,
                     scale);
}

void ProfilePanel::paintScale(QPainter& painter) const
{
    const drawing::Palette ink = inkFor(look_);
    const UnitSystem units = unitsOf(document_.sketch());
    const double step = niceStep(26 * scale() / std::max(px_per_mm_, 1e-6), units);
    for (double level = std::ceil(lowest_mm_ / step) * step; level <= highest_mm_; level += step) {
        if (y(level) < topMargin() - 4 || y(level) > height() - bottomMargin() + 1)
            continue;
        painter.setPen(QPen(ink.grid_strong, 1));
        painter.drawLine(QPointF(leftMargin() - 4, y(level)), QPointF(width() - right_margin, y(level)));
        painter.setPen(ink.faint);
        painter.drawText(QRectF(0, y(level) - 8 * scale(), leftMargin() - 8, 16 * scale()),
                         Qt::AlignRight | Qt::AlignVCenter, inWords(level, Unit::mm, units));
    }
    const bool room_under_level = roomForHeights() > 24 * scale();
    for (const Strip& strip : strips_) {
        if (!room_under_level)
            break;
        const double along = niceStep(90 * scale() / (strip.width / strip.length_mm), units);
        for (double at = along; at < strip.length_mm; at += along) {
            const double x = strip.x(at);
            if (x > strip.left + strip.width - 40 * scale())
                break;
            painter.setPen(QPen(ink.grid_strong, 1));
            painter.drawLine(QPointF(x, height() - bottomMargin()),
                             QPointF(x, height() - bottomMargin() + 4));
            painter.setPen(ink.faint);
            painter.drawText(
                QRectF(x - 45 * scale(), height() - bottomMargin() + 3, 90 * scale(), 15 * scale()),
                Qt::AlignCenter, inWords(at, Unit::mm, units));
        }
    }
}

/// Height of the highest crown that is drawn between two places across.
double ProfilePanel::highestBetween(double left, double right) const
{
    double out = lowest_mm_;
    for (const Strip& strip : strips_)
        for (const Sample& at : strip.samples)
            if (const double x = strip.x(at.along_mm); x >= left && x <= right)
                out = std::max(out, at.heights.crown_mm);
    return out;
}

void ProfilePanel::paintLevel(QPainter& painter) const
{
    const auto& level = document_.analysis().layout.levels.cold_min_mm;
    if (!level)
        return;
    const drawing::Palette ink = inkFor(look_);
    painter.setPen(QPen(ink.level, 1.2, Qt::DashDotLine));
    painter.drawLine(QPointF(leftMargin(), y(*level)), QPointF(width() - right_margin, y(*level)));
}

/// At an end of the line where no hose is in its way, else not at all: it would hide the hose.
void ProfilePanel::paintLevelName(QPainter& painter) const
{
    const auto& level = document_.analysis().layout.levels.cold_min_mm;
    if (!level)
        return;
    const QString words = tr("cold minimum");
    const QSizeF size(painter.fontMetrics().horizontalAdvance(words) + 1, painter.fontMetrics().height());
    for (const double x : {width() - right_margin - 4 - size.width(), leftMargin() + 4}) {
        const QRectF place(QPointF(x, y(*level) + 1), size);
        if (y(highestBetween(place.left(), place.right())) < place.bottom())
            continue;
        painter.setPen(inkFor(look_).level);
        painter.drawText(place, Qt::AlignLeft, words);
        return;
    }
}

QPainterPath ProfilePanel::between(const Strip& strip, double from_mm, double to_mm, double level_mm,
                                   bool over) const
{
    QPolygonF upper;
    QPolygonF lower;
    for (const Sample& at : strip.samples) {
        if (at.along_mm < from_mm || at.along_mm > to_mm)
            continue;
        const double top = over ? at.heights.crown_mm : std::min(level_mm, at.heights.crown_mm);
        const double bottom = over ? std::max(level_mm, at.heights.invert_mm) : at.heights.invert_mm;
        if (top < bottom)
            continue;
        upper << QPointF(strip.x(at.along_mm), y(top));
        lower.prepend(QPointF(strip.x(at.along_mm), y(bottom)));
    }
    QPainterPath path;
    path.addPolygon(upper + lower);
    path.closeSubpath();
    return path;
}

void ProfilePanel::paintStrip(QPainter& painter, const Strip& strip) const
{
    const drawing::Palette ink = inkFor(look_);
    const bool supply = strip.role == HoseRole::supply;
    const QColor colour = supply ? ink.supply : ink.return_;
    const bool selected = selection_.part().id == strip.hose;
    QColor wash = colour;
    wash.setAlpha(selected ? 70 : 40);
    painter.fillPath(between(strip, 0, strip.length_mm, -1e300, true), wash);

    if (const ResolvedHose* hose = document_.analysis().layout.hose(strip.hose)) {
        for (const HighPoint& crest : hose->profile.high_points) {
            painter.setPen(QPen(ink.stop, 1));
            painter.setBrush(ink.air);
            painter.drawPath(between(strip, crest.from_mm, crest.to_mm, crest.sill_mm, true));
        }
        for (const Dip& dip : hose->profile.dips) {
            painter.setPen(QPen(ink.held, 1));
            painter.setBrush(QBrush(ink.held, Qt::BDiagPattern));
            painter.drawPath(between(strip, dip.from_mm, dip.to_mm, dip.rim_mm, false));
        }
    }
    QPolygonF crown;
    QPolygonF invert;
    for (const Sample& at : strip.samples) {
        crown << QPointF(strip.x(at.along_mm), y(at.heights.crown_mm));
        invert << QPointF(strip.x(at.along_mm), y(at.heights.invert_mm));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, selected ? 2 : 1.4, supply ? Qt::SolidLine : Qt::DashLine));
    painter.drawPolyline(crown);
    painter.drawPolyline(invert);
}

void ProfilePanel::paintHover(QPainter& painter) const
{
    const auto at = positionOf(selection_.hoverHose(), selection_.hoverAlong());
    const ResolvedHose* hose = document_.analysis().layout.hose(selection_.hoverHose());
    if (!at || !hose)
        return;
    const drawing::Palette ink = inkFor(look_);
    const UnitSystem units = unitsOf(document_.sketch());
    painter.setPen(QPen(ink.accent, 1));
    painter.drawLine(QPointF(at->x(), topMargin()), QPointF(at->x(), height() - bottomMargin()));
    painter.setBrush(ink.accent);
    painter.drawEllipse(*at, 3, 3);
    const BoreHeights heights =
        heightsAt((*hose)->path, document_.analysis().layout.plumb, selection_.hoverAlong());
    const QString text =
        tr("%1 along, crown %2, bottom %3")
            .arg(inWords(selection_.hoverAlong(), Unit::mm, units),
                 inWords(heights.crown_mm, Unit::mm, units), inWords(heights.invert_mm, Unit::mm, units));
    const double text_width = painter.fontMetrics().horizontalAdvance(text) + 12;
    const double x = std::clamp(at->x() + 8, 0.0, std::max(0.0, width() - text_width));
    const QRectF box(x, height() - bottomMargin() - 2 - 18 * scale(), text_width, 18 * scale());
    painter.setPen(ink.accent);
    painter.setBrush(ink.ground);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(ink.text);
    painter.drawText(box, Qt::AlignCenter, text);
}

} // namespace siphonwright::panels
