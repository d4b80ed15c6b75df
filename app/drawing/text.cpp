#include "app/drawing/text.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QHash>
#include <QPainter>
#include <QPainterPath>
#include <QPen>

#include <algorithm>

namespace siphonwright::drawing {

namespace {

// Widths of small sizes are rounded to whole pixels by some devices, so text is set at this size and scaled.
constexpr int set_px = 100;

QFont load(const QString& file, QFont::Weight weight)
{
    const int id = QFontDatabase::addApplicationFont(file);
    const QStringList families = id < 0 ? QStringList() : QFontDatabase::applicationFontFamilies(id);
    QFont font = families.isEmpty() ? QFont() : QFont(families.first());
    font.setPixelSize(set_px);
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::ForceOutline);
    return font;
}

const QFont& fontOf(Weight weight)
{
    static const QFont regular = load(QStringLiteral(":/fonts/Inter-Regular.otf"), QFont::Normal);
    static const QFont strong = load(QStringLiteral(":/fonts/Inter-SemiBold.otf"), QFont::DemiBold);
    return weight == Weight::strong ? strong : regular;
}

double capitalHeight(Weight weight)
{
    static const double regular = QFontMetricsF(fontOf(Weight::regular)).capHeight();
    static const double strong = QFontMetricsF(fontOf(Weight::strong)).capHeight();
    const double height = weight == Weight::strong ? strong : regular;
    return height > 0 ? height : 0.7 * set_px;
}

/// At the size that text is set at. To lay a page out is for the most part to ask for the same widths again.
double advanceOf(const QString& text, Weight weight)
{
    constexpr qsizetype most = 20'000;
    thread_local QHash<QString, double> known[2];
    QHash<QString, double>& widths = known[weight == Weight::strong ? 1 : 0];
    const auto found = widths.constFind(text);
    if (found != widths.constEnd())
        return *found;
    if (widths.size() >= most)
        widths.clear();
    return *widths.insert(text, QFontMetricsF(fontOf(weight)).horizontalAdvance(text));
}

/// How many characters of a word fit into a width; at least one.
qsizetype fitting(const QString& word, double width_mm, double lettering_mm, Weight weight)
{
    qsizetype count = word.size();
    while (count > 1 && textWidth(word.left(count), lettering_mm, weight) > width_mm)
        --count;
    return count;
}

} // namespace

QFont lettering()
{
    return fontOf(Weight::regular);
}

QFont strongLettering()
{
    return fontOf(Weight::strong);
}

double textWidth(const QString& text, double lettering_mm, Weight weight)
{
    return advanceOf(text, weight) * lettering_mm / capitalHeight(weight);
}

void paintWeightedText(QPainter& painter, QPointF at, const QString& text, Anchor anchor,
                       const QColor& colour, double lettering, Weight weight, double angle_deg)
{
    if (text.isEmpty())
        return;
    const double width = advanceOf(text, weight);
    const double shift = anchor == Anchor::left ? 0 : anchor == Anchor::centre ? -width / 2 : -width;
    const double k = lettering / capitalHeight(weight);
    painter.save();
    painter.translate(at);
    painter.rotate(angle_deg);
    painter.scale(k, k);
    painter.setFont(fontOf(weight));
    painter.setPen(colour);
    painter.drawText(QPointF(shift, 0), text);
    painter.restore();
}

void paintHalo(QPainter& painter, const Style& style, QPointF at, const QString& text, Anchor anchor,
               const QColor& ground, double angle_deg)
{
    constexpr double beyond_mm = 0.3; // of the letters, on the device
    const QFont& font = fontOf(Weight::regular);
    const double width = advanceOf(text, Weight::regular);
    const double k = style.lettering_mm / style.scale / capitalHeight(Weight::regular);
    const double shift = anchor == Anchor::left ? 0 : anchor == Anchor::centre ? -width / 2 : -width;
    QPainterPath letters;
    letters.addText(QPointF(shift, 0), font, text);
    // Between words too, where a rest of a line would read as a dash.
    letters.addRect(shift, -capitalHeight(Weight::regular), width, capitalHeight(Weight::regular));
    letters.setFillRule(Qt::WindingFill);
    painter.save();
    painter.translate(at);
    painter.rotate(angle_deg);
    painter.scale(k, k);
    painter.setPen(QPen(ground, 2 * beyond_mm / style.scale / k, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(ground);
    painter.drawPath(letters);
    painter.restore();
}

void paintText(QPainter& painter, const Style& style, QPointF at, const QString& text, Anchor anchor,
               const QColor& colour, double angle_deg)
{
    paintWeightedText(painter, at, text, anchor, colour, style.lettering_mm / style.scale, Weight::regular,
                      angle_deg);
}

namespace {

/// A word without the signs that close it.
QString bare(QString word)
{
    while (!word.isEmpty() && QStringLiteral(".,;:)").contains(word.back()))
        word.chop(1);
    return word;
}

bool isFraction(const QString& word)
{
    const qsizetype stroke = word.indexOf(QLatin1Char('/'));
    return stroke > 0 && word[stroke - 1].isDigit() && stroke + 1 < word.size() && word[stroke + 1].isDigit();
}

/// What looks like a unit behind a number: "W", "°C;", "gal/min", and the "pipe" of a thread. A short word
/// that is none does no harm there.
bool isUnitOf(const QString& number, const QString& word)
{
    constexpr qsizetype longest = 3;
    constexpr qsizetype longest_of_thread = 4;
    const qsizetype length = bare(word).size();
    return number.back().isDigit() && length > 0 && !word[0].isDigit() &&
           (length <= longest || word.contains(QLatin1Char('/')) ||
            (length <= longest_of_thread && isFraction(number.section(QLatin1Char(' '), -1))));
}

/// What goes on a number: the fraction behind the whole, the inches behind the feet, the factor behind its
/// sign, the item behind its name.
bool goesOn(const QString& before, const QString& word)
{
    const QString last = before.section(QLatin1Char(' '), -1);
    if (word.startsWith(QLatin1Char('[')))
        return true;
    if (!word[0].isDigit())
        return false;
    return (last.back().isDigit() && isFraction(word)) ||
           (last == QLatin1String("ft") && before.size() > last.size()) || last == QStringLiteral("×");
}

} // namespace

QStringList unbroken(const QString& text)
{
    QStringList pieces;
    for (const QString& word : text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (!pieces.isEmpty() && (isUnitOf(pieces.back(), word) || goesOn(pieces.back(), word)))
            pieces.back() += QLatin1Char(' ') + word;
        else
            pieces << word;
    }
    return pieces;
}

namespace {

/// What is wider than a line by itself may be parted at its spaces after all.
QStringList fittingPieces(const QString& text, double width_mm, double lettering_mm, Weight weight)
{
    QStringList pieces;
    for (const QString& piece : unbroken(text))
        if (textWidth(piece, lettering_mm, weight) <= width_mm)
            pieces << piece;
        else
            pieces << piece.split(QLatin1Char(' '));
    return pieces;
}

} // namespace

QStringList wrapped(const QString& text, double width_mm, double lettering_mm, Weight weight)
{
    QStringList lines;
    QString line;
    for (QString word : fittingPieces(text, width_mm, lettering_mm, weight)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (textWidth(longer, lettering_mm, weight) <= width_mm) {
            line = longer;
            continue;
        }
        if (!line.isEmpty())
            lines << line;
        while (textWidth(word, lettering_mm, weight) > width_mm && word.size() > 1) {
            const qsizetype count = fitting(word, width_mm, lettering_mm, weight);
            lines << word.left(count);
            word = word.mid(count);
        }
        line = word;
    }
    if (!line.isEmpty())
        lines << line;
    return lines;
}

QStringList wrappedEvenly(const QString& text, double width_mm, double lettering_mm, Weight weight)
{
    QStringList even = wrapped(text, width_mm, lettering_mm, weight);
    if (even.size() < 2)
        return even;
    double longest_mm = 0; // no narrower: a piece by itself would be parted
    for (const QString& piece : unbroken(text))
        longest_mm = std::max(longest_mm, textWidth(piece, lettering_mm, weight));
    for (double narrower = width_mm - lettering_mm / 2; narrower >= longest_mm;
         narrower -= lettering_mm / 2) {
        QStringList lines = wrapped(text, narrower, lettering_mm, weight);
        if (lines.size() > even.size())
            break;
        even = std::move(lines);
    }
    return even;
}

} // namespace siphonwright::drawing
