#include "app/language/language.h"

#include "app/language/core_translator.h"

#include <QCoreApplication>
#include <QLatin1String>
#include <QLibraryInfo>
#include <QLocale>
#include <QStringList>
#include <QTranslator>
#include <QVariant>

#include <algorithm>
#include <iterator>

namespace siphonwright::language {

namespace {

constexpr Language known[] = {{"en", "English"}, {"es", "Español"}, {"fr", "Français"}, {"de", "Deutsch"}};

constexpr const char* in_use = "language"; ///< property of the program

bool isKnown(const QString& code)
{
    return std::any_of(std::begin(known), std::end(known),
                       [&](const Language& one) { return code == QLatin1String(one.code); });
}

QString codeOf(const QString& locale_name)
{
    return locale_name.left(2).toLower();
}

/// Numbers and dates: of the choice, or the system's where there is none or it speaks the same language.
QLocale localeFor(const QString& choice)
{
    const QLocale system = QLocale::system();
    if (choice.isEmpty() || codeOf(system.name()) == choice)
        return system;
    // Nothing is known of the place but that its system speaks another language: inches are not offered
    // there.
    return choice == QLatin1String("en") ? QLocale(QLocale::English, QLocale::UnitedKingdom)
                                         : QLocale(choice);
}

/// Loaded, it belongs to the program; what is not there is done without.
template <class Translator>
void take(QCoreApplication& app, const QString& file, const QString& folder)
{
    auto* translator = new Translator(&app);
    if (translator->load(file, folder))
        QCoreApplication::installTranslator(translator);
    else
        delete translator;
}

} // namespace

std::span<const Language> languages()
{
    return known;
}

QString languageFor(const QString& choice)
{
    if (!choice.isEmpty())
        return isKnown(choice) ? choice : QStringLiteral("en");
    const QStringList wanted = QLocale::system().uiLanguages();
    for (const QString& name : wanted)
        if (isKnown(codeOf(name)))
            return codeOf(name);
    return QStringLiteral("en");
}

QString inUse()
{
    const QCoreApplication* app = QCoreApplication::instance();
    const QString code = app ? app->property(in_use).toString() : QString();
    return code.isEmpty() ? QStringLiteral("en") : code;
}

QString withinSentence(QString label)
{
    const bool is_abbreviation = label.size() > 1 && label[1].isUpper();
    if (!label.isEmpty() && !is_abbreviation && inUse() != QLatin1String("de"))
        label[0] = label[0].toLower();
    return label;
}

std::optional<QString> takeOption(QStringList& arguments)
{
    const QString option = QStringLiteral("--language");
    for (qsizetype i = 0; i < arguments.size(); ++i) {
        const QString argument = arguments[i];
        if (argument == QLatin1String("--"))
            break;
        QString code;
        if (argument == option) {
            code = arguments.value(i + 1);
            arguments.remove(i, std::min<qsizetype>(2, arguments.size() - i));
        } else if (argument.startsWith(option + QLatin1Char('='))) {
            code = argument.mid(option.size() + 1);
            arguments.removeAt(i);
        } else {
            continue;
        }
        return isKnown(code) ? std::optional<QString>(code) : std::nullopt;
    }
    return QString();
}

QString optionHelp()
{
    QStringList codes;
    for (const Language& one : known)
        codes << QLatin1String(one.code);
    return QStringLiteral("--language needs one of: %1.").arg(codes.join(QStringLiteral(", ")));
}

void use(QCoreApplication& app, const QString& choice)
{
    const QString code = languageFor(choice);
    app.setProperty(in_use, code);
    QLocale locale = localeFor(choice);
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QLocale::setDefault(locale);
    take<QTranslator>(app, QStringLiteral("qtbase_") + code,
                      QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    take<CoreTranslator>(app, QStringLiteral("siphonwright_") + code, QStringLiteral(":/translations"));
}

} // namespace siphonwright::language
