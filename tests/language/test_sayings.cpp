#include "tests/language/sayings.h"
#include "tests/language/texts.h"
#include "tests/random_runs.h"

#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <QTest>

#include <variant>

using namespace siphonwright;

namespace {

/// A language as its .ts file has it, without the compiled one.
class InLanguage : public language::CoreTranslator {
public:
    explicit InLanguage(const QString& code)
    {
        for (const TranslatedText& text : textsOf(code))
            if (text.context == QLatin1String("core"))
                texts_.insert(text.source, text.translations.value(0));
    }
    bool isEmpty() const override { return false; }
    /// Whatever a translation says.
    QStringList all() const { return texts_.values(); }

protected:
    QString listed(const char* context, const char* source, const char* /*disambiguation*/,
                   int /*n*/) const override
    {
        return qstrcmp(context, "core") == 0 ? texts_.value(QString::fromUtf8(source)) : QString();
    }

private:
    QHash<QString, QString> texts_;
};

QStringList wordsIn(const QString& text)
{
    static const QRegularExpression places(QStringLiteral("\\{[a-z0-9](-[0-9])?\\}|%[1-9]"));
    static const QRegularExpression word(QStringLiteral("\\p{L}[\\p{L}-]*\\p{L}"));
    QStringList out;
    const QString bare = QString(text).replace(places, QStringLiteral(" "));
    for (QRegularExpressionMatchIterator match = word.globalMatch(bare); match.hasNext();)
        out << match.next().captured().toLower();
    out.removeAll(QString::fromUtf8(users_word.data()).toLower());
    return out;
}

/// Threads and sizes as they are sold.
bool isSize(const std::string& text)
{
    static const QRegularExpression size(QStringLiteral("\\A[0-9M][0-9/. x-]*(NPT|BSP|pipe|mm|in)?\\z"));
    return size.match(QString::fromStdString(text)).hasMatch();
}

} // namespace

class TestSayings : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void no_word_of_a_sentence_is_left_in_english();
    void every_word_said_is_of_the_language_data();
    void every_word_said_is_of_the_language();

private:
    std::set<std::string> said_;
};

void TestSayings::initTestCase()
{
    Sayings sayings;
    sayBooks(sayings);
    const QDir samples(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    const QStringList files = samples.entryList({QStringLiteral("*.siphon")});
    QVERIFY(files.size() > 5);
    bool diagnosed = false;
    int index = 0;
    for (const QString& file : files) {
        // Where few are wanted, some; and of the rest the one that was measured.
        const bool wanted = !test::fewRuns() || index++ % 3 == 0;
        QFile in(samples.filePath(file));
        QVERIFY(in.open(QIODevice::ReadOnly));
        auto read = readSketch(in.readAll().toStdString());
        QVERIFY2(std::holds_alternative<Sketch>(read), qPrintable(file));
        Sketch& sketch = std::get<Sketch>(read);
        if (!wanted && (diagnosed || sketch.readings.empty()))
            continue;
        callByUsersWord(sketch);
        saySketch(sayings, sketch);
        if (diagnosed || sketch.readings.empty())
            continue;
        diagnosed = true;
        sayDiagnosis(sayings, sketch);
    }
    QVERIFY(diagnosed);
    for (const std::string& text : sayings.texts())
        if (!isSize(text))
            said_.insert(text);
    QVERIFY(said_.size() > 400);
}

/// Told by a language in which no letter is of English.
void TestSayings::no_word_of_a_sentence_is_left_in_english()
{
    const PseudoTranslator strange;
    static const QRegularExpression english(QStringLiteral("[a-z]"));
    QStringList left;
    for (const std::string& text : said_) {
        const QString out = strange.translate("core", text.c_str());
        const QString shown = out.isNull() ? QString::fromStdString(text) : out;
        if (!wordsIn(shown).filter(english).isEmpty())
            left << shown + QStringLiteral("   of   ") + QString::fromStdString(text);
    }
    for (const QString& one : left)
        qWarning("%s", qPrintable(one));
    QCOMPARE(left.size(), 0);
}

void TestSayings::every_word_said_is_of_the_language_data()
{
    QTest::addColumn<QString>("code");
    for (const char* code : {"de", "es", "fr"})
        QTest::newRow(code) << QString::fromLatin1(code);
}

void TestSayings::every_word_said_is_of_the_language()
{
    QFETCH(QString, code);
    const InLanguage language(code);
    QSet<QString> known;
    for (const QString& translation : language.all())
        for (const QString& word : wordsIn(translation))
            known.insert(word);
    QVERIFY(known.size() > 1000);
    QStringList wrong;
    for (const std::string& text : said_) {
        const QString out = language.translate("core", text.c_str());
        for (const QString& word : wordsIn(out.isNull() ? QString::fromStdString(text) : out))
            if (!known.contains(word))
                wrong << word + QStringLiteral("   in   ") + out;
    }
    for (const QString& one : wrong)
        qWarning("%s", qPrintable(one));
    QCOMPARE(wrong.size(), 0);
}

QTEST_GUILESS_MAIN(TestSayings)
#include "test_sayings.moc"
