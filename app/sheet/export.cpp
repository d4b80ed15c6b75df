#include "app/language/tr.h"
#include "app/sheet/lay_out.h"
#include "app/sheet/pdf_metadata.h"
#include "app/sheet/sheet.h"
#include "app/sheet/svg_fonts.h"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <algorithm>
#include <cmath>
#include <functional>
#include <memory>

/// The sheet as a file. Every kind is written beside the old file and takes its place only when complete.
namespace siphonwright::sheet {

namespace {

QString titleOf(const Sketch& sketch)
{
    const QString title = QString::fromStdString(sketch.sheet.title);
    return title.isEmpty() ? tr("Layout sheet") : title;
}

/// "Heater layout QM-H-014: Low-floor bus; 1.5 kW tank heater on the left frame rail".
QString subjectOf(const Sketch& sketch)
{
    const SheetDetails& s = sketch.sheet;
    QStringList kind{s.document_type.empty() ? tr("Layout sheet") : QString::fromStdString(s.document_type)};
    if (!s.identification_number.empty())
        kind << QString::fromStdString(s.identification_number);
    QStringList of;
    for (const std::string& one : {s.vehicle, s.supplementary_title})
        if (!one.empty())
            of << QString::fromStdString(one);
    const QString what = kind.join(QLatin1Char(' '));
    return of.isEmpty() ? what : QStringLiteral("%1: %2").arg(what, of.join(QStringLiteral("; ")));
}

bool paintPdf(QIODevice& file, const std::vector<FurtherPage>& pages, const Sketch& sketch)
{
    QPdfWriter writer(&file);
    // Archival PDF as far as Qt can: fonts embedded, colours by a profile, what it is as XMP metadata.
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setTitle(titleOf(sketch));
    writer.setCreator(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION));
    writer.setResolution(1200);
    // Before begin(): a layout set later does not reach the first page.
    if (!writer.setPageLayout(pages.front().layout))
        return false;
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    // The physical resolution of this device is not the one that it paints in.
    const double per_mm = writer.logicalDpiX() / 25.4;
    painter.scale(per_mm, per_mm);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && (!writer.setPageLayout(pages[i].layout) || !writer.newPage()))
            return false;
        pages[i].paint(painter);
    }
    return painter.end();
}

bool writePdf(QIODevice& file, const std::vector<FurtherPage>& pages, const Sketch& sketch)
{
    QBuffer buffer;
    if (!buffer.open(QIODevice::WriteOnly) || !paintPdf(buffer, pages, sketch))
        return false;
    // Who drew it, or else whose drawing it is.
    const SheetDetails& s = sketch.sheet;
    const QByteArray pdf =
        withMetadata(buffer.data(), {QString::fromStdString(s.creator.empty() ? s.legal_owner : s.creator),
                                     subjectOf(sketch)});
    return file.write(pdf) == pdf.size();
}

QSizeF sizeOf(const FurtherPage& page)
{
    return page.layout.fullRect(QPageLayout::Millimeter).size();
}

bool writeSvg(QIODevice& file, const FurtherPage& one, const Sketch& sketch, double /*no pixels*/)
{
    const QSizeF page = sizeOf(one);
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setTitle(titleOf(sketch));
    generator.setDescription(subjectOf(sketch));
    // 254 dots per inch are 10 per millimetre; the view box counts hundredths of one.
    generator.setResolution(254);
    generator.setSize(QSize(int(std::lround(page.width() * 10)), int(std::lround(page.height() * 10))));
    generator.setViewBox(QRectF(0, 0, page.width() * 100, page.height() * 100));
    QPainter painter;
    if (!painter.begin(&generator))
        return false;
    painter.scale(100, 100);
    one.paint(painter);
    if (!painter.end())
        return false;
    const QByteArray svg = withFonts(buffer.data());
    return file.write(svg) == svg.size();
}

bool writePng(QIODevice& file, const FurtherPage& one, const Sketch& sketch, double dpi)
{
    const double per_mm = dpi / 25.4;
    const QSizeF page = sizeOf(one);
    QImage image(int(std::lround(page.width() * per_mm)), int(std::lround(page.height() * per_mm)),
                 QImage::Format_RGB32);
    if (image.isNull())
        return false;
    image.setDotsPerMeterX(int(std::lround(per_mm * 1000)));
    image.setDotsPerMeterY(int(std::lround(per_mm * 1000)));
    image.setText(QStringLiteral("Title"), titleOf(sketch));
    image.setText(QStringLiteral("Author"), QString::fromStdString(sketch.sheet.creator));
    image.setText(QStringLiteral("Description"), subjectOf(sketch));
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(per_mm, per_mm);
    one.paint(painter);
    return painter.end() && image.save(&file, "PNG");
}

/// In the place of the old file, when `draw` has succeeded.
QStringList keep(const QString& path, const PutFile& put, const std::function<bool(QIODevice&)>& draw)
{
    QBuffer file;
    if (!file.open(QIODevice::WriteOnly) || !draw(file))
        return {tr("%1: the sheet could not be drawn.").arg(path)};
    return put(path, file.data());
}

/// "sheet-2.png".
QString numberedPath(const QString& path, std::size_t page)
{
    const QFileInfo info(path);
    if (page == 0)
        return path;
    return info.dir().filePath(
        QStringLiteral("%1-%2.%3").arg(info.completeBaseName()).arg(page + 1).arg(info.suffix()));
}

} // namespace

QStringList write(const QString& path, const std::vector<FurtherPage>& pages, const Sketch& sketch,
                  double png_dpi, const PutFile& put)
{
    const QString suffix = QFileInfo(path).suffix().toLower();
    if (pages.empty())
        return {tr("%1: none of the pages asked for has anything on it.").arg(path)};
    if (suffix == QLatin1String("pdf"))
        return keep(path, put, [&](QIODevice& file) { return writePdf(file, pages, sketch); });
    const auto draw = suffix == QLatin1String("svg")   ? writeSvg
                      : suffix == QLatin1String("png") ? writePng
                                                       : nullptr;
    if (!draw)
        return {tr("%1: a sheet is written as .pdf, .svg or .png.").arg(path)};
    // What one has no place for, the next ones have none for either.
    QStringList problems;
    for (std::size_t i = 0; i < pages.size() && problems.isEmpty(); ++i)
        problems = keep(numberedPath(path, i), put,
                        [&](QIODevice& file) { return draw(file, pages[i], sketch, png_dpi); });
    return problems;
}

namespace {

/// The sheets behind the drawing, counted from those with its notes on.
Options listing(Options options, const std::vector<FurtherPage>& behind)
{
    options.behind.clear();
    options.sheets = 1 + options.notes_sheets;
    for (const FurtherPage& page : behind) {
        ++options.sheets;
        if (options.behind.empty() || options.behind.back().title != page.title)
            options.behind.push_back({page.title, page.holds, options.sheets, options.sheets, page.page});
        options.behind.back().last_sheet = options.sheets;
    }
    return options;
}

} // namespace

Options followedBy(Options options, const Sketch& sketch, const Analysis& analysis,
                   const std::vector<FurtherPage>& behind)
{
    // How much goes on the sheets behind depends a little on the words and numbers that refer to them.
    constexpr int tries = 4;
    LaidSheets laid;
    options.laid.reset();
    options.notes_sheets = 0;
    options.says_whole = false;
    Known known;
    for (int i = 0; i < tries; ++i) {
        options = listing(std::move(options), behind);
        known.no_more_keys = known.no_more_keys || i > 1; // or what was given to one may be taken again
        laid.sheets = layOut(sketch, analysis, options, known);
        const int taken = static_cast<int>(laid.sheets.size()) - 1;
        if (taken == options.notes_sheets)
            break;
        // Without that line all would be laid out otherwise, and again not go on one sheet.
        options.says_whole = options.says_whole || taken == 0;
        options.notes_sheets = i + 1 < tries ? taken : std::max(taken, options.notes_sheets);
    }
    options = listing(std::move(options), behind);
    while (static_cast<int>(laid.sheets.size()) - 1 < options.notes_sheets)
        laid.sheets.push_back(emptySheet(options));
    options.laid = std::make_shared<const LaidSheets>(std::move(laid));
    return options;
}

QStringList exportTo(const QString& path, const Sketch& sketch, const Analysis& analysis,
                     const Options& options, const std::vector<FurtherPage>& further)
{
    const Options counted = followedBy(tiled(options, sketch, analysis), sketch, analysis, further);
    std::vector<FurtherPage> pages = drawingPages(sketch, analysis, counted);
    pages.insert(pages.end(), further.begin(), further.end());
    return write(path, pages, sketch, options.png_dpi);
}

} // namespace siphonwright::sheet
