#include "app/language/core_translator.h"

#include "app/language/core_words.h"

#include <QLatin1String>
#include <QMutexLocker>
#include <QRegularExpression>

#include <algorithm>
#include <cstring>

namespace siphonwright::language {

namespace {

constexpr int deepest = 6;              ///< joined texts within each other; core has at most four
constexpr qsizetype most_known = 5'000; ///< figures change all the time, and each makes another text
constexpr int few_letters = 3;          ///< "to", "on": such a text says too little to be known by it
constexpr const char* context_of_core = "core";

int lettersIn(const QString& text)
{
    return static_cast<int>(std::count_if(text.begin(), text.end(), [](QChar c) { return c.isLetter(); }));
}

/// Whether a text has words, besides the placeholders of a message and letters by themselves: "A, supply
/// port" of a survey.
bool hasWords(const QString& text)
{
    bool inside = false;
    bool letter = false;
    for (const QChar c : text) {
        inside = c == QLatin1Char('{') || (inside && c != QLatin1Char('}'));
        const bool is_letter = !inside && c.isLetter();
        if (letter && is_letter)
            return true;
        letter = is_letter;
    }
    return false;
}

/// What stands in the places of a joined text; nothing where it is another text.
std::optional<QStringList> placesIn(const QString& text, const QStringList& written)
{
    if (!text.startsWith(written.first()))
        return std::nullopt;
    QStringList places;
    qsizetype at = written.first().size();
    for (qsizetype i = 1; i < written.size(); ++i) {
        const bool last = i + 1 == written.size();
        const qsizetype next = last ? (text.endsWith(written[i]) ? text.size() - written[i].size() : -1)
                                    : text.indexOf(written[i], at + 1);
        if (next <= at)
            return std::nullopt;
        places << text.mid(at, next - at);
        at = next + written[i].size();
    }
    return places;
}

/// A translation with its places filled.
QString filled(const QString& pattern, const QStringList& places)
{
    QString out;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int place =
            pattern[i] == QLatin1Char('%') && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
        if (place >= 1 && place <= places.size()) {
            out += places[place - 1];
            ++i;
        } else {
            out += pattern[i];
        }
    }
    return out;
}

} // namespace

CoreTranslator::CoreTranslator(QObject* parent) : QTranslator(parent)
{
    static const QRegularExpression place(QStringLiteral("%[1-9]"));
    for (const char* const source : coreWords()) {
        const QString text = QString::fromUtf8(source);
        if (!text.contains(place))
            continue;
        joints_.push_back({source, text.split(place), lettersIn(QString(text).remove(place))});
    }
    std::stable_sort(joints_.begin(), joints_.end(),
                     [](const Joint& a, const Joint& b) { return a.letters > b.letters; });
}

QString CoreTranslator::translate(const char* context, const char* source, const char* disambiguation,
                                  int n) const
{
    const QString whole = listed(context, source, disambiguation, n);
    if (!whole.isNull() || std::strcmp(context, context_of_core) != 0)
        return whole;
    const QString text = QString::fromUtf8(source);
    {
        const QMutexLocker lock(&guard_);
        const auto found = known_.constFind(text);
        if (found != known_.constEnd())
            return *found;
    }
    const QString read_text = read(text).value_or(QString());
    const QMutexLocker lock(&guard_);
    if (known_.size() > most_known)
        known_.clear();
    known_.insert(text, read_text);
    return read_text;
}

QString CoreTranslator::listed(const char* context, const char* source, const char* disambiguation,
                               int n) const
{
    return QTranslator::translate(context, source, disambiguation, n);
}

/// What says every word in the language comes before what leaves some as they are: those may be names, but
/// also the rest of a sentence that reads otherwise.
std::optional<QString> CoreTranslator::read(const QString& text) const
{
    const auto whole = read(text, Reading::whole, 0);
    return whole ? whole : read(text, Reading::with_names, 0);
}

/// A text with or without the signs around it: ", in 3 rounds", "Supply voltage:".
std::optional<QString> CoreTranslator::read(const QString& text, Reading reading, int depth) const
{
    if (depth > deepest || !hasWords(text))
        return std::nullopt;
    if (const auto said = readBare(text, reading, depth))
        return said;
    static const QRegularExpression signs(QStringLiteral("\\A([\\s,;:]*)(.*?)([\\s,;:.]*)\\z"),
                                          QRegularExpression::DotMatchesEverythingOption);
    const QRegularExpressionMatch match = signs.match(text);
    if (match.capturedLength(2) == text.size())
        return std::nullopt;
    const auto said = readBare(match.captured(2), reading, depth);
    return said ? std::optional<QString>(match.captured(1) + *said + match.captured(3)) : std::nullopt;
}

std::optional<QString> CoreTranslator::readBare(const QString& text, Reading reading, int depth) const
{
    if (const auto whole = readWhole(text))
        return whole;
    for (const Joint& joint : joints_)
        if (const auto joined = readJoint(joint, text, reading, depth))
            return joined;
    return readParts(text, reading, depth);
}

std::optional<QString> CoreTranslator::readWhole(const QString& text) const
{
    const QString whole = listed(context_of_core, text.toUtf8().constData(), nullptr, -1);
    if (!whole.isNull())
        return whole;
    if (text.front().isUpper()) { // the beginning of a sentence
        QString small = text;
        small[0] = small[0].toLower();
        QString out = listed(context_of_core, small.toUtf8().constData(), nullptr, -1);
        if (!out.isEmpty()) {
            out[0] = out[0].toUpper();
            return out;
        }
    }
    static const QRegularExpression numbered(QStringLiteral("\\A(\\D+) ([0-9]+)\\z")); // "Heater 2"
    if (const QRegularExpressionMatch match = numbered.match(text); match.hasMatch()) {
        const QString out = listed(context_of_core, match.captured(1).toUtf8().constData(), nullptr, -1);
        if (!out.isNull())
            return out + QLatin1Char(' ') + match.captured(2);
    }
    return std::nullopt;
}

std::optional<QString> CoreTranslator::readJoint(const Joint& joint, const QString& text, Reading reading,
                                                 int depth) const
{
    auto places = placesIn(text, joint.written);
    const bool begins = !places && text.front().isUpper() && joint.written.first().size() > 0;
    if (begins) {
        QString small = text;
        small[0] = small[0].toLower();
        places = placesIn(small, joint.written);
    }
    if (!places)
        return std::nullopt;
    QString pattern = listed(context_of_core, joint.source.constData(), nullptr, -1);
    if (pattern.isNull())
        return std::nullopt;
    for (QString& place : *places) {
        const auto inside = read(place, reading, depth + 1);
        if (!inside && hasWords(place) && (reading == Reading::whole || joint.letters <= few_letters))
            return std::nullopt;
        place = inside.value_or(place);
    }
    if (begins && !pattern.isEmpty())
        pattern[0] = pattern[0].toUpper();
    return filled(pattern, *places);
}

/// Sentences, or parts of one, that were put one behind the other: each has to be known.
std::optional<QString> CoreTranslator::readParts(const QString& text, Reading reading, int depth) const
{
    for (const char* const between : {". ", "; ", ": ", ", "}) {
        const QString joint = QLatin1String(between);
        qsizetype at = text.indexOf(joint);
        while (at > 0) {
            const qsizetype stop = between[0] == '.' ? 1 : 0; // the full stop belongs to its sentence
            const QString first = text.left(at + stop);
            const QString rest = text.mid(at + joint.size());
            const auto first_read = read(first, reading, depth + 1);
            const auto rest_read =
                first_read || !hasWords(first) ? read(rest, reading, depth + 1) : std::nullopt;
            if ((first_read || !hasWords(first)) && (rest_read || !hasWords(rest)) &&
                (first_read || rest_read))
                return first_read.value_or(first) + joint.mid(stop) + rest_read.value_or(rest);
            at = text.indexOf(joint, at + 1);
        }
    }
    return std::nullopt;
}

} // namespace siphonwright::language
