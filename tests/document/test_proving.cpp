#include "tests/near.h"
#include "tests/patience.h"
#include "tests/sound_loop.h"

#include "app/document/document.h"

#include <QSignalSpy>

#include <algorithm>

using namespace siphonwright;
using siphonwright::test::patience_ms;

namespace {

/// A return hose whose upper half is nearly level: sound on the level, holding air when parked nose-down.
Sketch flatOnTop()
{
    Sketch sketch = test::soundLoop();
    sketch.hoses[test::return_hose].edit([](Hose& hose) {
        hose.points = {{{1400, 0, 640}, 60, BendKind::hose}};
        hose.parts[0].along_mm = 900;
    });
    return sketch;
}

Analysis wholeProof(const Sketch& sketch)
{
    ProofOptions options;
    options.bands = true;
    return proved(sketch, options);
}

bool onGradeOnly(const Finding& finding)
{
    return finding.only_on_grade.has_value();
}

bool anyOnGrade(const Document& document)
{
    const auto& findings = document.analysis().findings;
    return std::any_of(findings.begin(), findings.end(), onGradeOnly);
}

} // namespace

class TestProving : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theProofComesByItselfAndIsOfTheNewestSketch();
    void aProofThatCameIsTheOneThatIsComputedAlone();
    void standingOnAGradeTiltsTheLayoutAndLeavesTheSketch();
    void anotherDrawingForgetsGradeAndProof();
    void aProverThatIsAskedAndDroppedEnds();
};

void TestProving::theProofComesByItselfAndIsOfTheNewestSketch()
{
    Document document;
    document.reset(test::soundLoop());
    QSignalSpy came(&document, &Document::analysed);
    document.startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent() && document.proof()->complete, patience_ms);
    QVERIFY(document.proof()->sound.has_value());
    for (int i = 0; i < 50; ++i)
        document.apply(QStringLiteral("Move"), [](Sketch& s) {
            move(s, {PartKind::heater, "heater-1", 0}, {1, 0, 0});
        });
    QVERIFY(!document.proofIsCurrent());
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent() && document.proof()->complete, patience_ms);
    QVERIFY(came.count() >= 2);
    const Analysis alone = wholeProof(document.sketch());
    QCOMPARE(*document.proof()->sound == *alone.proof->sound, true);
}

void TestProving::aProofThatCameIsTheOneThatIsComputedAlone()
{
    Document document;
    document.reset(flatOnTop());
    document.startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent() && document.proof()->complete, patience_ms);
    QVERIFY(anyOnGrade(document));
    QVERIFY(document.analysis().findings == wholeProof(document.sketch()).findings);
}

void TestProving::standingOnAGradeTiltsTheLayoutAndLeavesTheSketch()
{
    Document document;
    document.reset(flatOnTop());
    const Sketch before = document.sketch();
    const double level_mm = *document.analysis().layout.levels.cold_min_mm;
    QVERIFY(!anyOnGrade(document));
    document.setGrade({-4, 0});
    QVERIFY(anyOnGrade(document));
    QVERIFY(document.sketch() == before);
    QVERIFY(!document.isModified());
    QVERIFY(*document.analysis().layout.levels.cold_min_mm != level_mm);
    document.setGrade({});
    VERIFY_NEAR(*document.analysis().layout.levels.cold_min_mm, level_mm, 1e-9);
    QVERIFY(!anyOnGrade(document));
}

void TestProving::anotherDrawingForgetsGradeAndProof()
{
    Document document;
    document.reset(flatOnTop());
    document.startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent() && document.proof()->complete, patience_ms);
    document.setGrade({-4, 0});
    document.reset(test::soundLoop());
    QVERIFY(document.grade() == Grade{});
    QVERIFY(!anyOnGrade(document));
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent() && document.proof()->complete, patience_ms);
    QVERIFY(document.analysis().findings == wholeProof(test::soundLoop()).findings);
}

void TestProving::aProverThatIsAskedAndDroppedEnds()
{
    for (int i = 0; i < 100; ++i) {
        Document document;
        document.reset(flatOnTop());
        document.startProving();
    }
}

QTEST_GUILESS_MAIN(TestProving)
#include "test_proving.moc"
