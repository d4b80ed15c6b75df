#include "app/sheet/svg_fonts.h"

#include "app/drawing/text.h"

#include <QFile>
#include <QFontMetricsF>
#include <QRegularExpression>
#include <QString>

namespace siphonwright::sheet {

namespace {

QByteArray fontFace(const char* file, int weight)
{
    QFile font(QString::fromLatin1(file));
    if (!font.open(QIODevice::ReadOnly))
        return {};
    return "@font-face{font-family:\"" + drawing::lettering().family().toUtf8() +
           "\";font-weight:" + QByteArray::number(weight) + ";src:url(data:font/otf;base64," +
           font.readAll().toBase64() + ")}\n";
}

QString unescaped(QString text)
{
    return text.replace(QLatin1String("&lt;"), QLatin1String("<"))
        .replace(QLatin1String("&gt;"), QLatin1String(">"))
        .replace(QLatin1String("&quot;"), QLatin1String("\""))
        .replace(QLatin1String("&amp;"), QLatin1String("&"));
}

} // namespace

QByteArray withFonts(const QByteArray& svg)
{
    const QString from = QString::fromUtf8(svg);
    const QString family = QRegularExpression::escape(drawing::lettering().family());
    const QRegularExpression text(QStringLiteral("(<text [^>]*font-family=\"%1\" font-size=\"([\\d.]+)\" "
                                                 "font-weight=\"(\\d+)\"[^>]*)>([^<]*)</text>")
                                      .arg(family));
    constexpr int heavy = 500;
    QString out;
    qsizetype copied = 0;
    for (auto found = text.globalMatch(from); found.hasNext();) {
        const QRegularExpressionMatch one = found.next();
        const bool strong = one.captured(3).toInt() > heavy;
        QFont font = strong ? drawing::strongLettering() : drawing::lettering();
        font.setPixelSize(int(one.captured(2).toDouble()));
        const double width = QFontMetricsF(font).horizontalAdvance(unescaped(one.captured(4)));
        out += from.mid(copied, one.capturedEnd(1) - copied) +
               QStringLiteral(" textLength=\"%1\" lengthAdjust=\"spacingAndGlyphs\"").arg(width, 0, 'f', 2);
        copied = one.capturedEnd(1);
    }
    out += from.mid(copied);
    const QByteArray faces =
        fontFace(":/fonts/Inter-Regular.otf", 400) + fontFace(":/fonts/Inter-SemiBold.otf", 600);
    return out.toUtf8().replace("<defs>\n", "<defs>\n<style type=\"text/css\">\n" + faces + "</style>\n");
}

} // namespace siphonwright::sheet
