#include "app/language/tr.h"
#include "app/sheet/sheet.h"

#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QSvgGenerator>

#include <cmath>

/// The sheet as a file. Every kind is written beside the old file and takes its place only when complete.
namespace siphonwright::sheet {

namespace {

QString titleOf(const Sketch& sketch)
{
    const QString title = QString::fromStdString(sketch.sheet.title);
    return title.isEmpty() ? tr("Layout sheet") : title;
}

bool writePdf(QIODevice& file, const Sketch& sketch, const Analysis& analysis, const Options& options,
              const std::vector<FurtherPage>& further)
{
    QPdfWriter writer(&file);
    writer.setTitle(titleOf(sketch));
    writer.setCreator(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION));
    writer.setResolution(1200);
    // Before begin(): a layout set later does not reach the first page.
    if (!writer.setPageLayout(pageLayout(options)))
        return false;
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    // The physical resolution of this device is not the one that it paints in.
    const double per_mm = writer.logicalDpiX() / 25.4;
    painter.scale(per_mm, per_mm);
    paintPage(painter, sketch, analysis, options);
    for (const FurtherPage& page : further) {
        if (!writer.setPageLayout(page.layout) || !writer.newPage())
            return false;
        page.paint(painter);
    }
    return painter.end();
}

bool writeSvg(QIODevice& file, const Sketch& sketch, const Analysis& analysis, const Options& options,
              const std::vector<FurtherPage>& /*one picture*/)
{
    const QSizeF page = pageSize(options);
    QSvgGenerator generator;
    generator.setOutputDevice(&file);
    generator.setTitle(titleOf(sketch));
    // 254 dots per inch are 10 per millimetre; the view box counts hundredths of one.
    generator.setResolution(254);
    generator.setSize(QSize(int(std::lround(page.width() * 10)), int(std::lround(page.height() * 10))));
    generator.setViewBox(QRectF(0, 0, page.width() * 100, page.height() * 100));
    QPainter painter;
    if (!painter.begin(&generator))
        return false;
    painter.scale(100, 100);
    paintPage(painter, sketch, analysis, options);
    return painter.end();
}

bool writePng(QIODevice& file, const Sketch& sketch, const Analysis& analysis, const Options& options,
              const std::vector<FurtherPage>& /*one picture*/)
{
    constexpr double per_mm = 200 / 25.4;
    const QSizeF page = pageSize(options);
    QImage image(int(std::lround(page.width() * per_mm)), int(std::lround(page.height() * per_mm)),
                 QImage::Format_RGB32);
    image.setDotsPerMeterX(int(std::lround(per_mm * 1000)));
    image.setDotsPerMeterY(int(std::lround(per_mm * 1000)));
    image.setText(QStringLiteral("Title"), titleOf(sketch));
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(per_mm, per_mm);
    paintPage(painter, sketch, analysis, options);
    return painter.end() && image.save(&file, "PNG");
}

} // namespace

QStringList exportTo(const QString& path, const Sketch& sketch, const Analysis& analysis,
                     const Options& options, const std::vector<FurtherPage>& further)
{
    const QString suffix = QFileInfo(path).suffix().toLower();
    const auto write = suffix == QLatin1String("pdf")   ? writePdf
                       : suffix == QLatin1String("svg") ? writeSvg
                       : suffix == QLatin1String("png") ? writePng
                                                        : nullptr;
    if (!write)
        return {tr("%1: a sheet is written as .pdf, .svg or .png.").arg(path)};
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return {tr("%1 cannot be written: %2.").arg(path, file.errorString())};
    if (!write(file, sketch, analysis, options, further)) {
        file.cancelWriting();
        return {tr("%1: the sheet could not be drawn.").arg(path)};
    }
    if (!file.commit())
        return {tr("%1 cannot be written: %2.").arg(path, file.errorString())};
    return {};
}

} // namespace siphonwright::sheet
