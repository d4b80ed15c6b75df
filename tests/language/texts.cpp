#include "tests/language/texts.h"

#include <QFile>
#include <QMutexLocker>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace {

QString keyOf(const QString& context, const QString& source)
{
    return context + QStringLiteral(": ") + source;
}

QChar strange(QChar letter)
{
    static const QString plain = QStringLiteral("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ");
    static const QString other = QStringLiteral("àƀçđéƒĝĥîĵķłɱñöþɋřšťüṽŵẋýžÀƁÇĐÉƑĜĤÎĴĶŁⱮÑÖÞɊŘŠŤÜṼŴẊÝŽ");
    const qsizetype at = plain.indexOf(letter);
    return at < 0 ? letter : other[at];
}

/// What a format or a command line means by its letters.
bool isForMachines(const QString& text)
{
    return text == QLatin1String("d MMM HH:mm") || text.startsWith(QLatin1String("siphonwright [FILE]"));
}

TranslatedText readText(QXmlStreamReader& xml, const QString& context)
{
    TranslatedText out;
    out.context = context;
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source")) {
            out.source = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            out.finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
            QString whole;
            while (!xml.atEnd()) {
                xml.readNext();
                if (xml.isStartElement())
                    out.translations << xml.readElementText();
                else if (xml.isCharacters())
                    whole += xml.text();
                else if (xml.isEndElement())
                    break;
            }
            if (out.translations.isEmpty())
                out.translations << whole;
        } else {
            xml.skipCurrentElement();
        }
    }
    return out;
}

} // namespace

std::vector<TranslatedText> textsOf(const QString& code)
{
    QFile file(
        QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/resources/translations/siphonwright_%1.ts").arg(code));
    std::vector<TranslatedText> out;
    if (!file.open(QIODevice::ReadOnly))
        return out;
    QXmlStreamReader xml(&file);
    xml.readNextStartElement();
    while (xml.readNextStartElement()) {
        if (xml.name() != QLatin1String("context")) {
            xml.skipCurrentElement();
            continue;
        }
        QString context;
        while (xml.readNextStartElement()) {
            if (xml.name() == QLatin1String("name"))
                context = xml.readElementText();
            else
                out.push_back(readText(xml, context));
        }
    }
    return out;
}

QString pseudo(const QString& text)
{
    if (isForMachines(text))
        return text;
    static const QRegularExpression kept(
        QStringLiteral("%L?[0-9n]|\\{[a-z0-9](-[0-9])?\\}|<[^>]*>|&[a-z]+;|\\*\\.[a-z]+|\\.[a-z]{3}\\b"));
    QString once;
    QString twice;
    qsizetype at = 0;
    const auto say = [&](qsizetype end) {
        for (; at < end; ++at) {
            once += strange(text[at]);
            if (text[at].isLetter() || text[at] == QLatin1Char(' ') || text[at] == QLatin1Char('-'))
                twice += strange(text[at]);
        }
    };
    for (QRegularExpressionMatchIterator match = kept.globalMatch(text); match.hasNext();) {
        const QRegularExpressionMatch one = match.next();
        say(one.capturedStart());
        once += one.captured();
        at = one.capturedEnd();
    }
    say(text.size());
    // Behind the last word, so that what stands at the end (a stop, dots, a blank) stays there.
    qsizetype end = once.size();
    while (end > 0 && !once[end - 1].isLetterOrNumber() && once[end - 1] != QLatin1Char('>') &&
           once[end - 1] != QLatin1Char('}'))
        --end;
    twice = twice.simplified();
    return twice.isEmpty() || end == 0 ? once : once.insert(end, QLatin1Char(' ') + twice);
}

PseudoTranslator::PseudoTranslator()
{
    for (const TranslatedText& text : textsOf(QStringLiteral("de")))
        sources_.insert(keyOf(text.context, text.source));
}

QString PseudoTranslator::translate(const char* context, const char* source, const char* disambiguation,
                                    int n) const
{
    const QString out = CoreTranslator::translate(context, source, disambiguation, n);
    const QString asked = QString::fromUtf8(source);
    static const QRegularExpression words(QStringLiteral("\\p{L}{2}"));
    static const QRegularExpression places(
        QStringLiteral("\\{[a-z0-9](-[0-9])?\\}|[A-Za-z0-9]+_|_[A-Za-z0-9]+"));
    static const QRegularExpression name(
        QStringLiteral("[0-9].*|[a-z]+-[0-9].*|[a-z0-9./-]+")); // a size as entered, an id
    const bool is_name =
        name.match(asked, 0, QRegularExpression::NormalMatch, QRegularExpression::AnchorAtOffsetMatchOption)
            .capturedLength() == asked.size();
    if (out.isNull() && !is_name && QString(asked).remove(places).contains(words)) {
        const QMutexLocker hold(&lock_);
        missing_.insert(keyOf(QString::fromUtf8(context), asked));
    }
    return out;
}

void PseudoTranslator::forget()
{
    const QMutexLocker hold(&lock_);
    missing_.clear();
}

QStringList PseudoTranslator::missing() const
{
    const QMutexLocker hold(&lock_);
    QStringList out(missing_.begin(), missing_.end());
    out.sort();
    return out;
}

QString PseudoTranslator::listed(const char* context, const char* source, const char* /*disambiguation*/,
                                 int /*n*/) const
{
    const QString text = QString::fromUtf8(source);
    const QString where = QString::fromUtf8(context);
    // Qt's own texts come from Qt's translations.
    const bool is_ours = !where.startsWith(QLatin1Char('Q'));
    return !is_ours || sources_.contains(keyOf(where, text)) ? pseudo(text) : QString();
}
