#include "tests/language/texts.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

namespace {

constexpr const char* codes[] = {"es", "fr", "de"};

QStringList sortedMatches(const QString& text, const QString& pattern)
{
    QStringList out;
    const QRegularExpression wanted(pattern);
    for (QRegularExpressionMatchIterator match = wanted.globalMatch(text); match.hasNext();)
        out << match.next().captured();
    out.sort();
    return out;
}

QStringList placesIn(const QString& text)
{
    return sortedMatches(text, QStringLiteral("%L?[0-9]|\\{[a-z0-9](-[0-9])?\\}"));
}

QStringList tagsIn(const QString& text)
{
    return sortedMatches(text, QStringLiteral("</?[a-z][^>]*>"));
}

qsizetype menuKeysIn(QString text)
{
    return text.remove(QStringLiteral("&&"))
        .remove(QRegularExpression(QStringLiteral("&[a-z]+;")))
        .count(QLatin1Char('&'));
}

/// A blank at an end, by which texts are put together.
bool blankAt(const QString& text, bool at_end)
{
    return !text.isEmpty() && (at_end ? text.back() : text.front()).isSpace();
}

QString complaint(const TranslatedText& text, const QString& translation)
{
    if (!text.finished)
        return QStringLiteral("unfinished");
    if (translation.isEmpty())
        return QStringLiteral("empty");
    if (placesIn(text.source) != placesIn(translation))
        return QStringLiteral("other placeholders");
    if (menuKeysIn(text.source) != menuKeysIn(translation))
        return QStringLiteral("other count of &");
    if (tagsIn(text.source) != tagsIn(translation))
        return QStringLiteral("other tags");
    if (text.source.count(QLatin1Char('\n')) != translation.count(QLatin1Char('\n')))
        return QStringLiteral("other count of lines");
    if (blankAt(text.source, false) != blankAt(translation, false) ||
        blankAt(text.source, true) != blankAt(translation, true))
        return QStringLiteral("a blank at an end");
    return {};
}

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QString inSource(const char* path)
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/") + QLatin1String(path);
}

} // namespace

class TestTranslations : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void every_text_is_translated_data();
    void every_text_is_translated();
    void english_has_its_plurals();
    void the_languages_have_the_same_texts();
    void every_text_of_core_is_listed();
    void the_teaching_page_is_there_in_each_language();
};

void TestTranslations::every_text_is_translated_data()
{
    QTest::addColumn<QString>("code");
    for (const char* code : codes)
        QTest::newRow(code) << QString::fromLatin1(code);
}

void TestTranslations::every_text_is_translated()
{
    QFETCH(QString, code);
    const std::vector<TranslatedText> texts = textsOf(code);
    QVERIFY(texts.size() > 3000);
    QStringList wrong;
    for (const TranslatedText& text : texts)
        for (const QString& translation : text.translations)
            if (const QString why = complaint(text, translation); !why.isEmpty())
                wrong << QStringLiteral("%1: %2: \"%3\" \"%4\"")
                             .arg(why, text.context, text.source, translation);
    QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1:\n").arg(wrong.size()) +
                                         wrong.mid(0, 40).join(QLatin1Char('\n'))));
}

void TestTranslations::english_has_its_plurals()
{
    const std::vector<TranslatedText> texts = textsOf(QStringLiteral("en"));
    QVERIFY(!texts.empty());
    for (const TranslatedText& text : texts) {
        QCOMPARE(text.translations.size(), 2);
        QVERIFY2(text.finished && !text.translations[0].isEmpty() && !text.translations[1].isEmpty(),
                 qPrintable(text.source));
    }
}

void TestTranslations::the_languages_have_the_same_texts()
{
    const auto keysOf = [](const QString& code) {
        QStringList keys;
        for (const TranslatedText& text : textsOf(code))
            keys << text.context + QLatin1Char('\n') + text.source;
        keys.sort();
        return keys;
    };
    const QStringList german = keysOf(QStringLiteral("de"));
    QCOMPARE(keysOf(QStringLiteral("es")), german);
    QCOMPARE(keysOf(QStringLiteral("fr")), german);
}

void TestTranslations::every_text_of_core_is_listed()
{
    QTemporaryDir folder;
    const QString made = folder.filePath(QStringLiteral("core_words.inc"));
    QCOMPARE(QProcess::execute(QStringLiteral("python3"),
                               {inSource("resources/translations/core_words.py"), made}),
             0);
    QVERIFY2(contentOf(made) == contentOf(inSource("app/language/core_words.inc")),
             "run resources/translations/refresh, and translate what is new");
    QSet<QString> listed;
    for (const TranslatedText& text : textsOf(QStringLiteral("de")))
        if (text.context == QLatin1String("core"))
            listed.insert(text.source);
    const QRegularExpression line(QStringLiteral("QT_TRANSLATE_NOOP\\(\"core\", \"(.*)\"\\),"));
    const QString content = QString::fromUtf8(contentOf(made));
    for (QRegularExpressionMatchIterator match = line.globalMatch(content); match.hasNext();) {
        QString text = match.next().captured(1);
        text.replace(QStringLiteral("\\\""), QStringLiteral("\""))
            .replace(QStringLiteral("\\n"), QStringLiteral("\n"));
        QVERIFY2(listed.contains(text), qPrintable(text));
    }
}

void TestTranslations::the_teaching_page_is_there_in_each_language()
{
    const auto headings = [](const QByteArray& page) { return page.count("\n#"); };
    const QByteArray english = contentOf(inSource("resources/teaching.md"));
    for (const char* code : codes) {
        const QByteArray page =
            contentOf(inSource("resources/teaching_") + QLatin1String(code) + QStringLiteral(".md"));
        QVERIFY2(page.size() > english.size() / 2, code);
        QCOMPARE(headings(page), headings(english));
    }
}

QTEST_GUILESS_MAIN(TestTranslations)
#include "test_translations.moc"
