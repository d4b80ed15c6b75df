#pragma once

#include <QString>
#include <QStringList>

#include <optional>
#include <span>

class QCoreApplication;

/// The language of the program: chosen in the View menu or by --language, else the system's.
namespace siphonwright::language {

struct Language {
    const char* code;     ///< ISO 639-1
    const char* own_name; ///< as those who speak it call it
};
std::span<const Language> languages();

/// The language for a choice: a code of languages(), or empty for the system's, English where the system's is
/// none of them.
QString languageFor(const QString& choice);

/// Load texts, Qt's own and ours, and set the locale that numbers and dates are written by: the system's
/// where it speaks the language, else that of the language. Once, before the first widget.
void use(QCoreApplication& app, const QString& choice);

/// The code of the language that use() loaded.
QString inUse();

/// A label as it stands within a sentence: it begins small, but for German, whose nouns do not, and for
/// abbreviations.
QString withinSentence(QString label);

/// Takes "--language CODE" or "--language=CODE" out of what stands behind the program's name: the code, empty
/// where it is not given; nothing where it is none of languages().
std::optional<QString> takeOption(QStringList& arguments);
/// What is said then.
QString optionHelp();

} // namespace siphonwright::language
