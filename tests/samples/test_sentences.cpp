#include "tests/language/sayings.h"

#include "core/sketch/file.h"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

#include <string>
#include <variant>

using namespace siphonwright;

/// What core says of a job, as it reads: every place of a sentence is filled, and no figure is none.
class TestSentences : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everySentenceIsWhole_data();
    void everySentenceIsWhole();
};

void TestSentences::everySentenceIsWhole_data()
{
    QTest::addColumn<QString>("sample");
    // Sound; air that stays and readings; two heaters, valves and little that runs out at once.
    for (const char* sample : {"sound-bus", "air-lock-fault-1", "generator-two-heaters"})
        QTest::newRow(sample) << QString::fromLatin1(sample);
}

void TestSentences::everySentenceIsWhole()
{
    QFETCH(QString, sample);
    QFile in(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(sample));
    QVERIFY(in.open(QIODevice::ReadOnly));
    const auto read = readSketch(in.readAll().toStdString());
    QVERIFY(std::holds_alternative<Sketch>(read));
    const auto& sketch = std::get<Sketch>(read);
    Sayings sayings;
    saySketch(sayings, sketch);
    if (!sketch.readings.empty())
        sayDiagnosis(sayings, sketch);
    QVERIFY(sayings.sentences().size() > 100);
    static const QRegularExpression wrong(QStringLiteral("[{}]|  |\\b(nan|inf)\\b| [.,;:]|\\.\\.$"));
    for (const std::string& sentence : sayings.sentences()) {
        const QString text = QString::fromStdString(sentence);
        QVERIFY2(!text.contains(wrong), sentence.c_str());
        QVERIFY2(text == text.trimmed(), sentence.c_str());
    }
}

QTEST_APPLESS_MAIN(TestSentences)
#include "test_sentences.moc"
