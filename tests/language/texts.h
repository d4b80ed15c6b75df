#pragma once

#include "app/language/core_translator.h"

#include <QMutex>
#include <QSet>
#include <QString>
#include <QStringList>

#include <vector>

/// The translations as files, and a language made up of them.

/// One text of a .ts file.
struct TranslatedText {
    QString context;
    QString source;
    QStringList translations; ///< one, or one for each plural form
    bool finished = false;
};
/// Every text of resources/translations/siphonwright_<code>.ts in its order.
std::vector<TranslatedText> textsOf(const QString& code);

/// "Ðřàŵ %1 ðřàŵ": each letter of a text as one that no English has, and the text said twice, as the longest
/// of languages would; placeholders, tags and the letter of a menu's key stay.
QString pseudo(const QString& text);

/// A language of pseudo() for each text of the .ts files. It remembers what is asked for and is in none of
/// them.
class PseudoTranslator : public siphonwright::language::CoreTranslator {
    Q_OBJECT
public:
    PseudoTranslator();

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* disambiguation = nullptr,
                      int n = -1) const override;
    /// "context: text" of each.
    QStringList missing() const;
    void forget();

protected:
    QString listed(const char* context, const char* source, const char* disambiguation, int n) const override;

private:
    QSet<QString> sources_; ///< context and text
    mutable QMutex lock_;
    mutable QSet<QString> missing_;
};
