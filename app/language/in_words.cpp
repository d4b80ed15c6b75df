#include "app/language/in_words.h"

#include <QCoreApplication>
#include <QLatin1String>
#include <QLocale>
#include <QStringView>

#include <optional>

namespace siphonwright {

namespace {

QString inCore(const QString& text)
{
    return text.isEmpty() ? QString() : QCoreApplication::translate("core", text.toUtf8().constData());
}

/// "19 to 25 mm": a unit that both have is said once; one figure where both read alike.
QString rangeText(const QString& low, const QString& high)
{
    if (low == high)
        return low;
    const qsizetype space = low.lastIndexOf(QLatin1Char(' '));
    const bool same_unit = space > 0 && high.endsWith(low.mid(space)) &&
                           !low.endsWith(QLatin1String(" in")); // inches come with fractions
    return QCoreApplication::translate("siphonwright", "%1 to %2")
        .arg(same_unit ? low.left(space) : low, high);
}

std::optional<QString> placeText(QStringView key, const Message& message, UnitSystem units)
{
    if (key.size() == 3 && key[1] == QLatin1Char('-')) {
        const auto low = placeText(key.left(1), message, units);
        const auto high = placeText(key.mid(2), message, units);
        if (low && high)
            return rangeText(*low, *high);
    }
    if (key.size() != 1)
        return std::nullopt;
    const char16_t letter = key[0].unicode();
    if (letter >= u'0' && letter <= u'9' && letter - u'0' < static_cast<int>(message.quantities.size())) {
        const Quantity& quantity = message.quantities[static_cast<std::size_t>(letter - u'0')];
        return inWords(quantity.value, quantity.unit, units);
    }
    if (letter >= u'a' && letter <= u'z' && letter - u'a' < static_cast<int>(message.words.size()))
        return inWords(message.words[static_cast<std::size_t>(letter - u'a')]);
    return std::nullopt;
}

/// Quantities that are put into words; all others are figures with the symbol of their unit.
bool isWorded(Unit unit)
{
    return unit == Unit::slope || unit == Unit::bores;
}

} // namespace

QString inWords(std::string_view text)
{
    return inCore(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())));
}

QString inWords(double value, Unit unit, UnitSystem units)
{
    const QString text = QString::fromStdString(format(value, unit, units));
    return withDecimalSign(isWorded(unit) ? inCore(text) : text);
}

QString inWords(const Message& message, UnitSystem units)
{
    const QString pattern = inWords(message.pattern);
    QString text;
    qsizetype at = 0;
    while (at < pattern.size()) {
        const qsizetype open = pattern.indexOf(QLatin1Char('{'), at);
        const qsizetype close = open < 0 ? open : pattern.indexOf(QLatin1Char('}'), open);
        if (close < 0)
            break;
        text += QStringView(pattern).mid(at, open - at);
        const QStringView key = QStringView(pattern).mid(open + 1, close - open - 1);
        text += placeText(key, message, units).value_or(pattern.mid(open, close - open + 1));
        at = close + 1;
    }
    return text + pattern.mid(at);
}

QString withDecimalSign(QString figures)
{
    const QString sign = QLocale().decimalPoint();
    if (sign == QLatin1String("."))
        return figures;
    for (qsizetype i = 1; i + 1 < figures.size(); ++i)
        if (figures[i] == QLatin1Char('.') && figures[i - 1].isDigit() && figures[i + 1].isDigit())
            figures.replace(i, 1, sign);
    return figures;
}

QString inchesInWords(double length_mm)
{
    return withDecimalSign(QString::fromStdString(inchesAlone(length_mm)));
}

QString numberInWords(double value, int decimals)
{
    return withDecimalSign(QString::number(value, 'f', decimals));
}

std::string typedQuantity(const QString& typed, Unit unit)
{
    QString text = typed;
    // Where the comma is the decimal sign it sets no thousands apart, "1,250".
    if (QLocale().decimalPoint() == QLatin1String(",") && !text.contains(QLatin1Char('.')))
        text.replace(QLatin1Char(','), QLatin1Char('.'));
    if (!isWorded(unit))
        return text.toStdString();
    text = text.trimmed().toLower();
    for (const char* const said :
         {"falls 1 in %1", "falls steeply", "1 in %1", "steep", "level", "%1 bores", "1 bore"}) {
        const QString english = QLatin1String(said);
        const QString shown = QString(inCore(english)).toLower();
        const qsizetype place = shown.indexOf(QLatin1String("%1"));
        if (place < 0) {
            if (text == shown)
                return said;
            continue;
        }
        const QString before = shown.left(place).trimmed();
        const QString after = shown.mid(place + 2).trimmed();
        const qsizetype between = text.size() - before.size() - after.size();
        if (between > 0 && text.startsWith(before) && text.endsWith(after))
            return english.arg(text.mid(before.size(), between).trimmed()).toStdString();
    }
    return text.toStdString();
}

} // namespace siphonwright
