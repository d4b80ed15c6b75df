#include "app/commissioning/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace siphonwright::commissioning {
namespace {

QString tr(const char* words)
{
    return QCoreApplication::translate("siphonwright::commissioning", words);
}

} // namespace

QString text(std::string_view words)
{
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString text(const Message& message, UnitSystem units)
{
    return QString::fromStdString(format(message, units));
}

QString text(double value, Unit unit, UnitSystem units)
{
    return QString::fromStdString(format(value, unit, units));
}

std::string isoTime(const QDateTime& moment)
{
    return moment.toOffsetFromUtc(moment.offsetFromUtc()).toString(Qt::ISODate).toStdString();
}

QString shownTime(const std::string& iso)
{
    const QString words = QString::fromStdString(iso);
    const QDateTime moment = QDateTime::fromString(words, Qt::ISODate);
    return moment.isValid() ? QLocale::c().toString(moment.toLocalTime(), QStringLiteral("d MMM HH:mm"))
                            : words;
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
