#include "core/analysis/analysis.h"
#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <algorithm>
#include <initializer_list>
#include <string>
#include <variant>

using namespace siphonwright;

namespace {

const QString folder = QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/");

QByteArray contents(const QString& name)
{
    QFile file(folder + name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// What each sample is expected to show, by the sample's name without its ending.
QJsonObject expectations()
{
    return QJsonDocument::fromJson(contents(QStringLiteral("expected.json"))).object();
}

QStringList sampleNames()
{
    QStringList names;
    for (const QString& file : QDir(folder).entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name))
        names << file.chopped(7);
    return names;
}

std::variant<Sketch, Problems> readSample(const QString& name)
{
    const QByteArray text = contents(name + QStringLiteral(".siphon"));
    return readSketch({text.constData(), static_cast<std::size_t>(text.size())});
}

QString problemText(const Problems& problems)
{
    QString text;
    for (const Problem& problem : problems)
        text += QString::fromStdString(problem.text()) + u'\n';
    return text;
}

QString line(const QString& severity, const QString& rule, const QString& hose, const QString& part)
{
    return severity + u' ' + rule + QStringLiteral(" on ") + (hose.isEmpty() ? QStringLiteral("-") : hose) +
           QStringLiteral(" at ") + (part.isEmpty() ? QStringLiteral("-") : part);
}

QStringList found(const Analysis& analysis)
{
    QStringList lines;
    for (const Finding& finding : analysis.findings) {
        const std::string_view severity = nameOf(finding.severity);
        lines << line(QString::fromUtf8(severity.data(), static_cast<qsizetype>(severity.size())),
                      QString::fromStdString(finding.rule), QString::fromStdString(finding.hose),
                      QString::fromStdString(finding.part.id));
    }
    lines.sort();
    return lines;
}

QStringList expected(const QString& name)
{
    QStringList lines;
    for (const QJsonValue& entry : expectations().value(name).toArray()) {
        lines << line(entry[QStringLiteral("severity")].toString(), entry[QStringLiteral("rule")].toString(),
                      entry[QStringLiteral("hose")].toString(), entry[QStringLiteral("part")].toString());
    }
    lines.sort();
    return lines;
}

void rowPerSample()
{
    QTest::addColumn<QString>("name");
    for (const QString& name : sampleNames())
        QTest::newRow(qPrintable(name)) << name;
}

void rowPerName(std::initializer_list<const char*> names)
{
    QTest::addColumn<QString>("name");
    for (const char* name : names)
        QTest::newRow(name) << QString::fromUtf8(name);
}

} // namespace

class SamplesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void samplesAndExpectationsNameEachOther();
    void aSampleReadsAndIsWrittenBackToTheSameText_data() { rowPerSample(); }
    void aSampleReadsAndIsWrittenBackToTheSameText();
    void aSampleShowsItsExpectedFindingsAndNoOthers_data() { rowPerSample(); }
    void aSampleShowsItsExpectedFindingsAndNoOthers();
    void everyFactThatARuleNeedsIsEnteredInASample_data() { rowPerSample(); }
    void everyFactThatARuleNeedsIsEnteredInASample();
    void aSoundSampleHasNoStopAndNoCaution_data();
    void aSoundSampleHasNoStopAndNoCaution();
    void aSoundSampleHoldsOverAllThatIsAssumed_data() { aSoundSampleHasNoStopAndNoCaution_data(); }
    void aSoundSampleHoldsOverAllThatIsAssumed();
    void aBrokenSampleHasAStop_data();
    void aBrokenSampleHasAStop();
    void portsTooCloseAreFound();
};

void SamplesTest::samplesAndExpectationsNameEachOther()
{
    QVERIFY(!sampleNames().isEmpty());
    QCOMPARE(QStringList(expectations().keys()), sampleNames());
}

void SamplesTest::aSampleReadsAndIsWrittenBackToTheSameText()
{
    QFETCH(const QString, name);
    const auto read = readSample(name);
    QVERIFY2(std::holds_alternative<Sketch>(read),
             qPrintable(std::holds_alternative<Problems>(read) ? problemText(std::get<Problems>(read))
                                                               : QString()));
    const auto written = writeSketch(std::get<Sketch>(read));
    QVERIFY(std::holds_alternative<std::string>(written));
    QCOMPARE(QByteArray::fromStdString(std::get<std::string>(written)),
             contents(name + QStringLiteral(".siphon")));
}

void SamplesTest::aSampleShowsItsExpectedFindingsAndNoOthers()
{
    QFETCH(const QString, name);
    const auto read = readSample(name);
    QVERIFY(std::holds_alternative<Sketch>(read));
    QVERIFY(expectations().value(name).isArray());
    QCOMPARE(found(analyse(std::get<Sketch>(read))), expected(name));
}

void SamplesTest::everyFactThatARuleNeedsIsEnteredInASample()
{
    QFETCH(const QString, name);
    const auto read = readSample(name);
    QVERIFY(std::holds_alternative<Sketch>(read));
    QStringList missing;
    for (const NotJudged& gap : analyse(std::get<Sketch>(read)).not_judged)
        missing << QString::fromStdString(gap.rule + ": " + gap.missing);
    QCOMPARE(missing, QStringList());
}

void SamplesTest::aSoundSampleHasNoStopAndNoCaution_data()
{
    rowPerName({"sound-bus", "vee-crossing", "generator-two-heaters"});
}

void SamplesTest::aSoundSampleHasNoStopAndNoCaution()
{
    QFETCH(const QString, name);
    const auto read = readSample(name);
    QVERIFY(std::holds_alternative<Sketch>(read));
    const Analysis analysis = analyse(std::get<Sketch>(read));
    QCOMPARE(analysis.layout.hoses.empty(), false);
    QCOMPARE(analysis.count(Severity::stop), std::size_t{0});
    QCOMPARE(analysis.count(Severity::caution), std::size_t{0});
}

void SamplesTest::aSoundSampleHoldsOverAllThatIsAssumed()
{
    QFETCH(const QString, name);
    const auto read = readSample(name);
    QVERIFY(std::holds_alternative<Sketch>(read));
    const Sketch& sketch = std::get<Sketch>(read);
    ProofOptions options;
    options.bands = true;
    const Analysis analysis = proved(sketch, options);
    QCOMPARE(analysis.count(Severity::stop), std::size_t{0});
    QCOMPARE(analysis.count(Severity::caution), std::size_t{0});
    QVERIFY(analysis.proof->warm_up.missing.empty());
    QCOMPARE(analysis.proof->bands.size(), sketch.heaters.size());
    for (const HeaterBands& bands : analysis.proof->bands) {
        const auto& peak = bands[Banded::peak_outlet_degC];
        const auto& cycles = bands[Banded::cycles_per_hour];
        const auto& target = bands[Banded::target_h];
        QVERIFY(peak && cycles && target);
        // The limits of the rule book; high is P95.
        QVERIFY2(peak->high <= *ruleById("outlet-over-limit")->limits.stop, qPrintable(name));
        QVERIFY2(cycles->high <= *ruleById("cycles-over-4")->limits.caution, qPrintable(name));
        QVERIFY2(target->share >= 0.95, qPrintable(name));
    }
    // What is found on grades or by the proof besides is advice, and none of it on how the job runs.
    for (const Finding& finding : analysis.findings)
        QVERIFY2(finding.only_on_grade ||
                     expected(name).contains(
                         line(QStringLiteral("advice"), QString::fromStdString(finding.rule),
                              QString::fromStdString(finding.hose), QString::fromStdString(finding.part.id))),
                 finding.rule.c_str());
}

void SamplesTest::aBrokenSampleHasAStop_data()
{
    rowPerName({"supply-hump", "return-dip", "hose-too-small", "above-level"});
}

void SamplesTest::aBrokenSampleHasAStop()
{
    QFETCH(const QString, name);
    const auto read = readSample(name);
    QVERIFY(std::holds_alternative<Sketch>(read));
    QVERIFY(analyse(std::get<Sketch>(read)).stopped());
}

void SamplesTest::portsTooCloseAreFound()
{
    const auto read = readSample(QStringLiteral("ports-too-close"));
    QVERIFY(std::holds_alternative<Sketch>(read));
    const Analysis analysis = analyse(std::get<Sketch>(read));
    QVERIFY(std::any_of(analysis.findings.begin(), analysis.findings.end(),
                        [](const Finding& finding) { return finding.rule == "ports-too-close"; }));
}

QTEST_APPLESS_MAIN(SamplesTest)
#include "test_samples.moc"
