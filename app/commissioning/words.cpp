#include "app/commissioning/words.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <QLocale>

namespace siphonwright::commissioning {
QString text(std::string_view words)
{
    return inWords(words);
}

QString text(const Message& message, UnitSystem units)
{
    return inWords(message, units);
}

QString text(double value, Unit unit, UnitSystem units)
{
    return inWords(value, unit, units);
}

std::string isoTime(const QDateTime& moment)
{
    return moment.toOffsetFromUtc(moment.offsetFromUtc()).toString(Qt::ISODate).toStdString();
}

QString shownTimeFormat()
{
    return tr("d MMM HH:mm");
}

QString shownTime(const std::string& iso)
{
    const QString words = QString::fromStdString(iso);
    const QDateTime moment = QDateTime::fromString(words, Qt::ISODate);
    return moment.isValid() ? QLocale().toString(moment.toLocalTime(), shownTimeFormat()) : words;
}

QString markOf(Fit fit)
{
    switch (fit) {
    case Fit::fits:
        return QStringLiteral("✓");
    case Fit::doubtful:
        return QStringLiteral("?");
    case Fit::off:
        return QStringLiteral("▲");
    case Fit::over_limit:
        return QStringLiteral("■");
    case Fit::not_judged:
        break;
    }
    return QStringLiteral("–");
}

QString nameFor(Fit fit)
{
    switch (fit) {
    case Fit::fits:
        return tr("fits");
    case Fit::doubtful:
        return tr("doubtful");
    case Fit::off:
        return tr("does not fit");
    case Fit::over_limit:
        return tr("over the limit");
    case Fit::not_judged:
        break;
    }
    return tr("not judged");
}

} // namespace siphonwright::commissioning
