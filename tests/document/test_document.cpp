#include "tests/near.h"
#include "tests/sound_loop.h"

#include "app/document/document.h"

#include <QSignalSpy>
#include <QTemporaryDir>

using namespace siphonwright;

namespace {

void raise(Sketch& sketch, double mm)
{
    move(sketch, {PartKind::heater, "heater-1", 0}, {0, 0, mm});
}

double heaterHeight(const Document& document)
{
    return document.sketch().heaters.at(0).position.z;
}

void writeFile(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    QCOMPARE(file.write(bytes), bytes.size());
}

} // namespace

class TestDocument : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void anEditIsOneStepAndAnnouncedOnce();
    void anEditThatChangesNothingLeavesNoStep();
    void stepsOfOneGestureBecomeOne();
    void stepsOfTwoGesturesStayApart();
    void aGestureThatComesBackLeavesNoStep();
    void aCancelledGestureLeavesNothingToRedo();
    void cancellingAnEndedGestureLeavesLaterStepsAlone();
    void undoGivesTheValueBeforeAndRedoTheValueAfter();
    void savingSetsTheUnsavedMarkBack();
    void aSavedSketchReadsBackEqual();
    void aBadFileLeavesTheDrawingAsItWas_data();
    void aBadFileLeavesTheDrawingAsItWas();
    void savingWhereNothingCanBeWrittenSaysSo();
    void analysisFollowsTheSketch();
    void aListenerCannotEditWhileItIsTold();
    void selectionAnnouncesOnlyChanges();

private:
    std::unique_ptr<Document> document_;
};

void TestDocument::init()
{
    document_ = std::make_unique<Document>();
    document_->reset(test::soundLoop());
}

void TestDocument::anEditIsOneStepAndAnnouncedOnce()
{
    QSignalSpy changed(document_.get(), &Document::changed);
    QVERIFY(document_->apply(QStringLiteral("Raise"), [](Sketch& s) { raise(s, 10); }));
    QCOMPARE(changed.count(), 1);
    QCOMPARE(document_->undoStack().count(), 1);
    QCOMPARE(document_->undoStack().undoText(), QStringLiteral("Raise"));
    QVERIFY(document_->isModified());
}

void TestDocument::anEditThatChangesNothingLeavesNoStep()
{
    QSignalSpy changed(document_.get(), &Document::changed);
    QVERIFY(!document_->apply(QStringLiteral("Nothing"), [](Sketch& s) { raise(s, 0); }));
    QCOMPARE(document_->undoStack().count(), 0);
    QCOMPARE(changed.count(), 0);
}

void TestDocument::stepsOfOneGestureBecomeOne()
{
    const Sketch before = document_->sketch();
    const int gesture = document_->beginGesture();
    for (int i = 0; i < 5; ++i)
        document_->apply(
            QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, gesture);
    QCOMPARE(document_->undoStack().count(), 1);
    VERIFY_NEAR(heaterHeight(*document_), before.heaters.at(0).position.z + 50, 1e-9);
    document_->undoStack().undo();
    QVERIFY(document_->sketch() == before);
}

void TestDocument::stepsOfTwoGesturesStayApart()
{
    for (int i = 0; i < 2; ++i)
        document_->apply(
            QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, document_->beginGesture());
    for (int i = 0; i < 2; ++i)
        document_->apply(QStringLiteral("Typed"), [](Sketch& s) { raise(s, 10); });
    QCOMPARE(document_->undoStack().count(), 4);
}

void TestDocument::aGestureThatComesBackLeavesNoStep()
{
    const int gesture = document_->beginGesture();
    document_->apply(
        QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, gesture);
    document_->apply(
        QStringLiteral("Drag"), [](Sketch& s) { raise(s, -10); }, gesture);
    QCOMPARE(document_->undoStack().count(), 0);
    QVERIFY(!document_->isModified());
}

void TestDocument::aCancelledGestureLeavesNothingToRedo()
{
    const Sketch before = document_->sketch();
    const int gesture = document_->beginGesture();
    document_->apply(
        QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, gesture);
    document_->cancelGesture(gesture);
    QVERIFY(document_->sketch() == before);
    QCOMPARE(document_->undoStack().count(), 0);
    QVERIFY(!document_->undoStack().canRedo());
    QVERIFY(!document_->isModified());
}

void TestDocument::cancellingAnEndedGestureLeavesLaterStepsAlone()
{
    const int gesture = document_->beginGesture();
    document_->apply(
        QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, gesture);
    document_->apply(QStringLiteral("Typed"), [](Sketch& s) { raise(s, 10); });
    const Sketch now = document_->sketch();
    document_->cancelGesture(gesture);
    document_->cancelGesture(0);
    QVERIFY(document_->sketch() == now);
    QCOMPARE(document_->undoStack().count(), 2);
}

void TestDocument::undoGivesTheValueBeforeAndRedoTheValueAfter()
{
    std::vector<Sketch> values = {document_->sketch()};
    for (int i = 1; i <= 4; ++i) {
        document_->apply(QStringLiteral("Raise"), [i](Sketch& s) { raise(s, i); });
        values.push_back(document_->sketch());
    }
    for (std::size_t i = values.size() - 1; i > 0; --i) {
        document_->undoStack().undo();
        QVERIFY(document_->sketch() == values[i - 1]);
    }
    for (std::size_t i = 1; i < values.size(); ++i) {
        document_->undoStack().redo();
        QVERIFY(document_->sketch() == values[i]);
    }
}

void TestDocument::savingSetsTheUnsavedMarkBack()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("loop.siphon"));
    const int gesture = document_->beginGesture();
    document_->apply(
        QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, gesture);
    QSignalSpy file_changed(document_.get(), &Document::fileChanged);
    QCOMPARE(document_->save(path), QStringList());
    QVERIFY(file_changed.count() >= 1);
    QVERIFY(!document_->isModified());
    QCOMPARE(document_->path(), path);
    // A drag that goes on after saving is unsaved again, and cancelling it takes both halves back.
    document_->apply(
        QStringLiteral("Drag"), [](Sketch& s) { raise(s, 10); }, gesture);
    QVERIFY(document_->isModified());
    document_->cancelGesture(gesture);
    QVERIFY(document_->sketch() == test::soundLoop());
}

void TestDocument::aSavedSketchReadsBackEqual()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("loop.siphon"));
    document_->apply(QStringLiteral("Raise"), [](Sketch& s) { raise(s, 0.1); });
    QCOMPARE(document_->save(path), QStringList());
    Document other;
    QCOMPARE(other.open(path), QStringList());
    QVERIFY(other.sketch() == document_->sketch());
    QVERIFY(!other.isModified());
    QCOMPARE(other.path(), path);
}

void TestDocument::aBadFileLeavesTheDrawingAsItWas_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::newRow("empty") << QByteArray();
    QTest::newRow("truncated") << QByteArray("{\"format_version\": 1, \"hoses\": [");
    QTest::newRow("not an object") << QByteArray("[1, 2, 3]");
    QTest::newRow("binary") << QByteArray("\x00\xff\xfe\x01", 4);
    QTest::newRow("too large") << QByteArray(static_cast<qsizetype>(largest_file_bytes) + 10, ' ');
}

void TestDocument::aBadFileLeavesTheDrawingAsItWas()
{
    QFETCH(QByteArray, bytes);
    QTemporaryDir folder;
    const QString bad = folder.filePath(QStringLiteral("bad.siphon"));
    writeFile(bad, bytes);
    document_->apply(QStringLiteral("Raise"), [](Sketch& s) { raise(s, 10); });
    const Sketch before = document_->sketch();
    QSignalSpy changed(document_.get(), &Document::changed);
    const QStringList problems = document_->open(bad);
    QVERIFY(!problems.isEmpty());
    QVERIFY(!problems.front().isEmpty());
    QVERIFY(document_->sketch() == before);
    QCOMPARE(document_->undoStack().count(), 1);
    QCOMPARE(document_->path(), QString());
    QCOMPARE(changed.count(), 0);
}

void TestDocument::savingWhereNothingCanBeWrittenSaysSo()
{
    QTemporaryDir folder;
    document_->apply(QStringLiteral("Raise"), [](Sketch& s) { raise(s, 10); });
    const QString nowhere = folder.filePath(QStringLiteral("no/such/folder/loop.siphon"));
    const QStringList problems = document_->save(nowhere);
    QCOMPARE(problems.size(), 1);
    QVERIFY(problems.front().contains(nowhere));
    QVERIFY(document_->isModified());
    QCOMPARE(document_->path(), QString());
    QVERIFY(!document_->open(nowhere).isEmpty());
}

void TestDocument::analysisFollowsTheSketch()
{
    // 300 mm up puts the heater's top over the jacket's underside at z 400: the drop is gone.
    const auto has_drop = [this] {
        const auto& findings = document_->analysis().findings;
        return std::any_of(findings.begin(), findings.end(),
                           [](const Finding& f) { return f.rule == "heater-drop"; });
    };
    QVERIFY(!has_drop());
    document_->apply(QStringLiteral("Raise"), [](Sketch& s) { raise(s, 300); });
    QVERIFY(has_drop());
    document_->undoStack().undo();
    QVERIFY(!has_drop());
}

void TestDocument::aListenerCannotEditWhileItIsTold()
{
    bool edited = true;
    connect(document_.get(), &Document::changed, this,
            [&] { edited = document_->apply(QStringLiteral("Echo"), [](Sketch& s) { raise(s, 1); }); });
    const double before = heaterHeight(*document_);
    document_->apply(QStringLiteral("Raise"), [](Sketch& s) { raise(s, 10); });
    QVERIFY(!edited);
    VERIFY_NEAR(heaterHeight(*document_), before + 10, 1e-9);
    edited = true;
    document_->undoStack().undo();
    QVERIFY(!edited);
    VERIFY_NEAR(heaterHeight(*document_), before, 1e-9);
}

void TestDocument::selectionAnnouncesOnlyChanges()
{
    Selection selection;
    QSignalSpy part(&selection, &Selection::partChanged);
    QSignalSpy finding(&selection, &Selection::findingChanged);
    QSignalSpy hover(&selection, &Selection::hoverChanged);
    for (int i = 0; i < 2; ++i) {
        selection.select({PartKind::port, "port-1", 0});
        selection.selectFinding(2);
        selection.hover("hose-1", 120);
    }
    QCOMPARE(part.count(), 1);
    QCOMPARE(finding.count(), 1);
    QCOMPARE(hover.count(), 1);
    selection.hover({}, 0);
    selection.hover({}, 5);
    QCOMPARE(hover.count(), 2);
}

QTEST_MAIN(TestDocument)
#include "test_document.moc"
