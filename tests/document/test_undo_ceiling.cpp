#include "tests/sound_loop.h"

#include "app/document/document.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <string>

using namespace siphonwright;

namespace {

constexpr std::size_t kilobyte = 1024;

void note(Document& document, int number, int gesture = 0)
{
    document.apply(
        QStringLiteral("Note"), [number](Sketch& sketch) { sketch.notes = std::to_string(number); }, gesture);
}

int noteOf(const Document& document)
{
    return std::stoi(document.sketch().notes);
}

int undoAll(Document& document)
{
    int steps = 0;
    for (; document.undoStack().canUndo(); ++steps)
        document.undoStack().undo();
    return steps;
}

} // namespace

class TestUndoCeiling : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void beyondTheCeilingTheOldestStepsAreForgottenAndTheOthersGoBackAndForth();
    void belowTheCeilingNothingIsForgotten();
    void aSavedStateThatIsStillWithinReachIsFoundAgain();
    void aSavedStateThatIsForgottenIsNeverTakenForTheDrawing();
    void stepsOfOneDragStayOneAndThoseApartBySavingStayTwo();
    void aStepLargerThanTheCeilingCanStillBeUndone();
    void aPhotographIsCountedWithEachStepThatHoldsOne();
    void stepsThatGoAreCountedNoLonger();
};

void TestUndoCeiling::beyondTheCeilingTheOldestStepsAreForgottenAndTheOthersGoBackAndForth()
{
    constexpr int edits = 5000;
    Document document;
    document.setUndoCeiling(64 * kilobyte);
    QSignalSpy forgotten(&document, &Document::undoForgotten);
    for (int i = 1; i <= edits; ++i) {
        note(document, i);
        QVERIFY(document.undoBytes() <= 64 * kilobyte);
        QCOMPARE(noteOf(document), i);
    }
    QVERIFY(forgotten.count() > 10);
    QVERIFY2(forgotten.count() < edits / 10, "a quarter goes at a time, not each step alone");
    QVERIFY(document.undoStack().canUndo());
    const int steps = undoAll(document);
    QVERIFY2(steps > 50 && steps < edits, qPrintable(QString::number(steps)));
    QCOMPARE(noteOf(document), edits - steps);
    while (document.undoStack().canRedo())
        document.undoStack().redo();
    QCOMPARE(noteOf(document), edits);
}

void TestUndoCeiling::belowTheCeilingNothingIsForgotten()
{
    Document document;
    QSignalSpy forgotten(&document, &Document::undoForgotten);
    const Sketch first = document.sketch();
    for (int i = 1; i <= 1000; ++i)
        note(document, i);
    QCOMPARE(forgotten.count(), 0);
    QCOMPARE(undoAll(document), 1000);
    QVERIFY(document.sketch() == first);
}

void TestUndoCeiling::aSavedStateThatIsStillWithinReachIsFoundAgain()
{
    QTemporaryDir folder;
    Document document;
    document.setUndoCeiling(64 * kilobyte);
    QSignalSpy forgotten(&document, &Document::undoForgotten);
    int number = 0;
    const auto untilForgotten = [&] {
        const auto before = forgotten.count();
        while (forgotten.count() == before)
            note(document, ++number);
    };
    untilForgotten();
    note(document, ++number);
    QCOMPARE(document.save(folder.filePath(QStringLiteral("bus.siphon"))), QStringList());
    const int saved = number;
    untilForgotten();
    QVERIFY(document.isModified());
    while (document.isModified() && document.undoStack().canUndo())
        document.undoStack().undo();
    QVERIFY(!document.isModified());
    QCOMPARE(noteOf(document), saved);
}

void TestUndoCeiling::aSavedStateThatIsForgottenIsNeverTakenForTheDrawing()
{
    QTemporaryDir folder;
    Document document;
    document.setUndoCeiling(64 * kilobyte);
    note(document, 1);
    QCOMPARE(document.save(folder.filePath(QStringLiteral("bus.siphon"))), QStringList());
    for (int i = 2; i <= 2000; ++i) {
        note(document, i);
        QVERIFY(document.isModified());
    }
    while (document.undoStack().canUndo()) {
        document.undoStack().undo();
        QVERIFY(document.isModified());
    }
}

void TestUndoCeiling::stepsOfOneDragStayOneAndThoseApartBySavingStayTwo()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("bus.siphon"));
    Document document;
    QSignalSpy forgotten(&document, &Document::undoForgotten);
    for (int i = 1; i <= 100; ++i)
        note(document, i);
    const int drag = document.beginGesture();
    note(document, 1001, drag);
    note(document, 1002, drag);
    QCOMPARE(document.save(path), QStringList());
    note(document, 1003, drag);
    note(document, 2000);
    QCOMPARE(document.save(path), QStringList()); // the mark between the two halves of the drag is gone
    const int next = document.beginGesture();
    document.setUndoCeiling(document.undoBytes());
    note(document, 3001, next);
    QCOMPARE(forgotten.count(), 1);
    note(document, 3002, next);
    for (const int before : {2000, 1003, 1002, 100, 99}) {
        document.undoStack().undo();
        QCOMPARE(noteOf(document), before);
    }
}

void TestUndoCeiling::aStepLargerThanTheCeilingCanStillBeUndone()
{
    Document document;
    document.setUndoCeiling(kilobyte);
    document.apply(QStringLiteral("Note"),
                   [](Sketch& sketch) { sketch.notes = std::string(50 * kilobyte, 'x'); });
    document.apply(QStringLiteral("Note"),
                   [](Sketch& sketch) { sketch.notes = std::string(60 * kilobyte, 'y'); });
    QCOMPARE(document.undoStack().count(), 1);
    document.undoStack().undo();
    QCOMPARE(document.sketch().notes, std::string(50 * kilobyte, 'x'));
}

void TestUndoCeiling::aPhotographIsCountedWithEachStepThatHoldsOne()
{
    Document document;
    document.apply(QStringLiteral("Photo"), [](Sketch& sketch) {
        Photo photo;
        photo.data_base64.assign(1000 * kilobyte, 'A');
        sketch.photo = Shared<Photo>(std::move(photo));
    });
    QVERIFY(document.undoBytes() > 1000 * kilobyte);
    for (int i = 1; i <= 10; ++i)
        document.apply(QStringLiteral("Move"), [i](Sketch& sketch) {
            sketch.photo->edit([i](Photo& photo) { photo.top_left.x = i; });
        });
    QVERIFY(document.undoBytes() > 11 * 1000 * kilobyte);
}

void TestUndoCeiling::stepsThatGoAreCountedNoLonger()
{
    Document document;
    QCOMPARE(document.undoBytes(), std::size_t{0});
    note(document, 1);
    const std::size_t one = document.undoBytes();
    QVERIFY(one > 0);
    note(document, 2);
    document.undoStack().undo();
    note(document, 3); // what could be redone is gone
    QCOMPARE(document.undoBytes(), 2 * one);
    const int drag = document.beginGesture();
    note(document, 4, drag);
    note(document, 5, drag);
    QCOMPARE(document.undoBytes(), 3 * one);
    document.cancelGesture(drag);
    QCOMPARE(document.undoBytes(), 2 * one);
    document.reset(test::soundLoop());
    QCOMPARE(document.undoBytes(), std::size_t{0});
}

QTEST_GUILESS_MAIN(TestUndoCeiling)
#include "test_undo_ceiling.moc"
