#include "app/warming/files.h"

#include "app/language/tr.h"
#include "app/warming/chart_view.h"
#include "app/warming/words.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>

namespace siphonwright::warming {
namespace {

constexpr QSize picture{1000, 560};
constexpr double margin = 16;

QString titleOf(const Result& result)
{
    const QString of =
        result.name.isEmpty() ? result.heater_name : tr("%1, %2").arg(result.name, result.heater_name);
    return tr("Warm-up: %1").arg(of);
}

/// The chart with what it is of and what came out, black on white as well as in colour.
void paintPicture(QPainter& painter, const Result& result, const std::vector<Result>& kept, UnitSystem units)
{
    const drawing::Palette ink = drawing::Palette::light();
    const QFontMetricsF metrics(chartFont());
    const QRectF page(QPointF(0, 0), QSizeF(picture));
    painter.fillRect(page, Qt::white);
    painter.setFont(chartFont());
    painter.setPen(ink.text);
    double top = margin;
    for (const QString& said : {titleOf(result), resultLine(result, units), driversLine(result)}) {
        const QRectF place(margin, top, page.width() - 2 * margin, page.height());
        const QRectF needed = metrics.boundingRect(place, Qt::AlignLeft | Qt::TextWordWrap, said);
        painter.drawText(place, Qt::AlignLeft | Qt::TextWordWrap, said);
        top += said.isEmpty() ? 0 : needed.height() + 2;
    }
    const QRectF room(margin, top + 8, page.width() - 2 * margin, page.height() - margin - top - 8);
    Chart(room, result, kept, units, chartFont()).paint(painter, ink, std::nullopt);
}

bool writePng(QIODevice& file, const Result& result, const std::vector<Result>& kept, UnitSystem units)
{
    constexpr double scale = 2;
    QImage image(picture * scale, QImage::Format_RGB32);
    image.setText(QStringLiteral("Title"), titleOf(result));
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintPicture(painter, result, kept, units);
    return painter.end() && image.save(&file, "PNG");
}

bool writeSvg(QIODevice& file, const Result& result, const std::vector<Result>& kept, UnitSystem units)
{
    QSvgGenerator generator;
    generator.setOutputDevice(&file);
    generator.setTitle(titleOf(result));
    generator.setResolution(96);
    generator.setSize(picture);
    generator.setViewBox(QRectF(QPointF(0, 0), QSizeF(picture)));
    QPainter painter;
    if (!painter.begin(&generator))
        return false;
    paintPicture(painter, result, kept, units);
    return painter.end();
}

bool writeCsv(QIODevice& file, const Result& result)
{
    const QByteArray text = csvOf(result);
    return file.write(text) == text.size();
}

} // namespace

QByteArray csvOf(const Result& result)
{
    QByteArray out = "time_h,outlet_degC,inlet_degC,return_degC,hose_outside_degC,block_degC,flow_l_per_min,"
                     "power_W,flow_kg_per_s,energy_kWh\r\n";
    for (std::size_t i = 0; i < result.time_h.size(); ++i) {
        out += QByteArray::fromStdString(toAMillionth(result.time_h[i]));
        for (const Curve curve : all_curves)
            out += ',' + QByteArray::fromStdString(toAMillionth(result[curve][i]));
        out += ',' + QByteArray::fromStdString(toAMillionth(result.flow_kg_per_s[i]));
        out += ',' + QByteArray::fromStdString(toAMillionth(result.energy_kWh[i])) + "\r\n";
    }
    return out;
}

QStringList exportTo(const QString& path, const Result& result, const std::vector<Result>& kept,
                     UnitSystem units, const PutFile& put)
{
    const QString suffix = QFileInfo(path).suffix().toLower();
    const bool csv = suffix == QLatin1String("csv");
    const bool png = suffix == QLatin1String("png");
    if (!csv && !png && suffix != QLatin1String("svg"))
        return {tr("%1: a warm-up is written as .csv, .png or .svg.").arg(path)};
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    const bool written = csv   ? writeCsv(file, result)
                         : png ? writePng(file, result, kept, units)
                               : writeSvg(file, result, kept, units);
    if (!written)
        return {tr("%1: the warm-up could not be written.").arg(path)};
    return put(path, file.data());
}

} // namespace siphonwright::warming
