#include "app/demonstration/export.h"

#include "app/drawing/text.h"
#include "app/language/tr.h"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

namespace {

constexpr int wide_px = 1920;
constexpr int high_px = 1080;
constexpr double px_per_mm = 6; ///< so that the picture counts as 320 by 180 mm
constexpr double caption_lettering_mm = 3.4;
constexpr int caption_lines = 3;
constexpr int quick_png = 75; ///< lossless all the same: a little larger, written in a fraction of the time

QString captionOf(const Moment& moment, UnitSystem units)
{
    const QString clock = clockOf(moment);
    const QString title =
        clock.isEmpty() ? titleOf(moment.phase) : titleOf(moment.phase) + QStringLiteral(", ") + clock;
    return title + QStringLiteral(": ") + wordsOf(moment, units);
}

QImage pictureOf(const Sketch& sketch, const Analysis& analysis, const Moment& moment,
                 const drawing::Style& style)
{
    QImage image(wide_px, high_px, QImage::Format_RGB32);
    image.fill(style.palette.ground);
    QPainter painter(&image);
    painter.scale(px_per_mm, px_per_mm);
    paintCaptioned(painter, QRectF(0, 0, wide_px / px_per_mm, high_px / px_per_mm), sketch, analysis, moment,
                   style);
    return image;
}

bool writePng(QIODevice& file, const Sketch& sketch, const Analysis& analysis, const Moment& moment,
              const drawing::Style& style)
{
    return pictureOf(sketch, analysis, moment, style).save(&file, "PNG", quick_png);
}

bool writeSvg(QIODevice& file, const Sketch& sketch, const Analysis& analysis, const Moment& moment,
              const drawing::Style& style)
{
    QSvgGenerator generator;
    generator.setOutputDevice(&file);
    generator.setTitle(captionOf(moment, style.units));
    generator.setSize(QSize(wide_px, high_px));
    generator.setViewBox(QRect(0, 0, wide_px, high_px));
    QPainter painter;
    if (!painter.begin(&generator))
        return false;
    painter.fillRect(QRect(0, 0, wide_px, high_px), style.palette.ground);
    painter.scale(px_per_mm, px_per_mm);
    paintCaptioned(painter, QRectF(0, 0, wide_px / px_per_mm, high_px / px_per_mm), sketch, analysis, moment,
                   style);
    return painter.end();
}

/// Where there are fewer than six moments: room to write.
void paintNoteLines(QPainter& painter, const QRectF& area, const drawing::Style& style)
{
    constexpr double line_mm = 8;
    drawing::paintWeightedText(painter, area.topLeft() + QPointF(2, 5), tr("Notes"), drawing::Anchor::left,
                               style.palette.ink, 2.4, drawing::Weight::strong);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(style.palette.faint, 0.18));
    for (double y = area.top() + 2 * line_mm; y < area.bottom(); y += line_mm)
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
}

/// The heading, then two columns of three.
void paintHandout(QPainter& painter, const QRectF& page, const Sketch& sketch, const Analysis& analysis,
                  const Demonstration& demonstration, const drawing::Style& style)
{
    constexpr double margin_mm = 12;
    constexpr double heading_mm = 14;
    constexpr double gap_mm = 5;
    const QRectF inside = page.adjusted(margin_mm, margin_mm, -margin_mm, -margin_mm);
    const QString title = QString::fromStdString(sketch.sheet.title);
    drawing::paintWeightedText(painter, inside.topLeft() + QPointF(0, 11),
                               QString::fromStdString(sketch.sheet.supplementary_title),
                               drawing::Anchor::left, style.palette.ink, 2.4, drawing::Weight::regular);
    drawing::paintWeightedText(painter, inside.topLeft() + QPointF(0, 5),
                               title.isEmpty() ? tr("From the fill to the heater on") : title,
                               drawing::Anchor::left, style.palette.ink, 4.2, drawing::Weight::strong);
    const std::vector<std::size_t> six = sixMoments(demonstration);
    const double width = (inside.width() - gap_mm) / 2;
    const double height = (inside.height() - heading_mm - 2 * gap_mm) / 3;
    for (std::size_t i = 0; i < 6; ++i) {
        const QRectF area(inside.left() + double(i % 2) * (width + gap_mm),
                          inside.top() + heading_mm + double(i / 2) * (height + gap_mm), width, height);
        if (i >= six.size()) {
            paintNoteLines(painter, area, style);
            continue;
        }
        drawing::Style own = style;
        own.lettering_mm = 1.8;
        Moment numbered = demonstration.moments[six[i]];
        paintCaptioned(painter, area, sketch, analysis, numbered, own);
        painter.setPen(QPen(style.palette.faint, 0.18));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(area);
        drawing::paintWeightedText(painter, area.topLeft() + QPointF(2, 5), QString::number(i + 1),
                                   drawing::Anchor::left, style.palette.ink, 3, drawing::Weight::strong);
    }
}

} // namespace

void paintCaptioned(QPainter& painter, const QRectF& area, const Sketch& sketch, const Analysis& analysis,
                    const Moment& moment, const drawing::Style& style)
{
    constexpr double inset_mm = 2.5;
    const double lettering = std::min(caption_lettering_mm, area.width() / 46);
    const double line_mm = lettering * 1.75;
    const double caption_mm = caption_lines * line_mm + inset_mm;
    const QRectF picture = area.adjusted(0, 0, 0, -caption_mm);
    const QRectF drawn = drawing::boundsOf(sketch, analysis);
    if (!drawn.isEmpty()) {
        constexpr double filled = 0.86;
        drawing::Style own = style;
        own.scale = filled * std::min(picture.width() / drawn.width(), picture.height() / drawn.height());
        painter.save();
        painter.setClipRect(picture);
        painter.translate(picture.center());
        painter.scale(own.scale, own.scale);
        painter.translate(-drawn.center());
        paintMoment(painter, sketch, analysis, moment, own);
        painter.restore();
    }
    const QStringList lines =
        drawing::wrapped(captionOf(moment, style.units), area.width() - 2 * inset_mm, lettering);
    painter.setPen(QPen(style.palette.faint, 0.18));
    painter.drawLine(picture.bottomLeft(), picture.bottomRight());
    for (qsizetype i = 0; i < lines.size() && i < caption_lines; ++i)
        drawing::paintWeightedText(
            painter, picture.bottomLeft() + QPointF(inset_mm, line_mm * (double(i) + 0.85)), lines[i],
            drawing::Anchor::left, style.palette.text, lettering, drawing::Weight::regular);
}

QStringList exportMoment(const QString& path, const Sketch& sketch, const Analysis& analysis,
                         const Moment& moment, const drawing::Style& style, const PutFile& put)
{
    const QString suffix = QFileInfo(path).suffix().toLower();
    const auto write = suffix == QLatin1String("svg")   ? writeSvg
                       : suffix == QLatin1String("png") ? writePng
                                                        : nullptr;
    if (!write)
        return {tr("%1: a moment is written as .png or .svg.").arg(path)};
    QBuffer file;
    if (!file.open(QIODevice::WriteOnly) || !write(file, sketch, analysis, moment, style))
        return {tr("%1: the moment could not be drawn.").arg(path)};
    return put(path, file.data());
}

std::vector<std::size_t> sequenceOf(const Demonstration& demonstration, std::size_t every)
{
    constexpr std::size_t fewer_with_heater_on = 5;
    std::vector<std::size_t> chosen;
    for (std::size_t i = 0; i < demonstration.moments.size(); ++i) {
        const Moment& moment = demonstration.moments[i];
        const std::size_t step = std::max<std::size_t>(1, every) *
                                 (moment.phase == PhaseKind::energised ? fewer_with_heater_on : 1);
        if (i % step == 0 || moment.event || i + 1 == demonstration.moments.size())
            chosen.push_back(i);
    }
    return chosen;
}

QStringList makeFolder(const QString& folder)
{
    const QFileInfo there(folder);
    if (there.exists() && !there.isDir())
        return {tr("%1 is a file; the pictures need a folder.").arg(folder)};
    if (!QDir().mkpath(folder))
        return {tr("The folder %1 cannot be made.").arg(folder)};
    if (!QFileInfo(folder).isWritable())
        return {tr("The folder %1 cannot be written to.").arg(folder)};
    return {};
}

QStringList exportSequence(const QString& folder, const Sketch& sketch, const Analysis& analysis,
                           const Demonstration& demonstration, const drawing::Style& style, std::size_t every,
                           const PutFile& put)
{
    int number = 0;
    for (const std::size_t i : sequenceOf(demonstration, every)) {
        const QString path =
            QDir(folder).filePath(QStringLiteral("moment-%1.png").arg(++number, 4, 10, QLatin1Char('0')));
        const QStringList problems =
            exportMoment(path, sketch, analysis, demonstration.moments[i], style, put);
        if (!problems.isEmpty())
            return problems;
    }
    return {};
}

std::vector<std::size_t> sixMoments(const Demonstration& demonstration)
{
    std::vector<std::size_t> six;
    const auto take = [&six](std::size_t moment) {
        if (std::find(six.begin(), six.end(), moment) == six.end())
            six.push_back(moment);
    };
    const auto sealed = [&](std::size_t i) {
        const std::vector<CellView>& cells = demonstration.moments[i].contents.frame->cells;
        return std::any_of(cells.begin() + 1, cells.end(),
                           [](const CellView& cell) { return cell.sealed && cell.gas_ml > 1; });
    };
    const auto spills = [&](std::size_t i) {
        return demonstration.moments[i].words.pattern.find("spills") != std::string::npos;
    };
    for (const Phase& phase : demonstration.phases) {
        const std::size_t last = phase.first + phase.count - 1;
        if (phase.kind == PhaseKind::fill) {
            take(phase.first);
            std::size_t telling = phase.first + phase.count / 2;
            bool told = false;
            for (std::size_t i = phase.first; i < last && !told; ++i) {
                const bool event = demonstration.moments[i].event && sealed(i);
                told = event && spills(i);
                if (event)
                    telling = i;
            }
            take(telling);
        }
        if (phase.kind == PhaseKind::energised) {
            constexpr double half_an_hour_s = 1800;
            take(demonstration.momentAt({PhaseKind::energised, 0, half_an_hour_s}));
        }
        if (phase.kind != PhaseKind::topped_up)
            take(last);
    }
    return six;
}

QStringList exportHandout(const QString& path, const Sketch& sketch, const Analysis& analysis,
                          const Demonstration& demonstration, const PutFile& put)
{
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    const bool inch = sketch.units == UnitChoice::inch;
    const QPageLayout layout(QPageSize(inch ? QPageSize::Letter : QPageSize::A4), QPageLayout::Portrait,
                             QMarginsF(0, 0, 0, 0));
    QPdfWriter writer(&file);
    writer.setTitle(tr("Handout: %1").arg(QString::fromStdString(sketch.sheet.title)));
    writer.setCreator(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION));
    writer.setResolution(1200);
    QPainter painter;
    if (!writer.setPageLayout(layout) || !painter.begin(&writer))
        return {tr("%1: the handout could not be drawn.").arg(path)};
    const double per_mm = writer.logicalDpiX() / 25.4;
    painter.scale(per_mm, per_mm);
    drawing::Style style;
    style.units = inch ? UnitSystem::inch : UnitSystem::metric;
    style.balloons = false;
    style.findings = false;
    paintHandout(painter, QRectF(QPointF(), layout.fullRect(QPageLayout::Millimeter).size()), sketch,
                 analysis, demonstration, style);
    if (!painter.end())
        return {tr("%1: the handout could not be drawn.").arg(path)};
    return put(path, file.data());
}

} // namespace siphonwright::demonstration
