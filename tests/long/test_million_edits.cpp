#include "tests/random_runs.h"
#include "tests/sound_loop.h"

#include "app/document/document.h"

#include <QFile>
#include <QTest>

#include <random>
#include <string>

using namespace siphonwright;

namespace {

/// What this program takes of memory; 0 where the system does not tell.
double residentMegabytes()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0;
    const QList<QByteArray> lines = status.readAll().split('\n');
    for (const QByteArray& line : lines) {
        if (line.startsWith("VmRSS:"))
            return line.simplified().split(' ').value(1).toDouble() / 1024;
    }
    return 0;
}

void editAtRandom(Document& document, std::mt19937& random)
{
    const auto amount = static_cast<double>(random() % 21) - 10;
    document.apply(QStringLiteral("Edit"), [&](Sketch& sketch) {
        switch (random() % 3) {
        case 0:
            sketch.notes = std::to_string(random());
            break;
        case 1:
            sketch.ground_z_mm = -400 + amount;
            break;
        default:
            sketch.site.grade_along_percent = amount;
        }
    });
}

} // namespace

class TestMillionEdits : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void undoGoesBackToTheFirstValueAndRedoToTheLast();
};

void TestMillionEdits::undoGoesBackToTheFirstValueAndRedoToTheLast()
{
    const int edits = test::runs(10'000, 1'000'000);
    Document document;
    const Sketch first = document.sketch();
    std::mt19937 random(20261126);
    const double before_mb = residentMegabytes();
    for (int i = 0; i < edits; ++i)
        editAtRandom(document, random);
    const Sketch last = document.sketch();
    const double grown_mb = residentMegabytes() - before_mb;
    const double counted_mb = static_cast<double>(document.undoBytes()) / (1 << 20);
    qInfo("%d edits, %d steps, %.0f MB more, %.0f MB of them counted as steps", edits,
          document.undoStack().count(), grown_mb, counted_mb);
    // Undo has a ceiling of memory, below which a million edits stay; what is counted is not less than what
    // is taken, but for what the allocator and the first analysis take anyway.
    QVERIFY(document.undoBytes() <= undo_ceiling_bytes);
    QVERIFY2(grown_mb < 60 + counted_mb, qPrintable(QString::number(grown_mb)));
    while (document.undoStack().canUndo())
        document.undoStack().undo();
    QCOMPARE(document.sketch(), first);
    while (document.undoStack().canRedo())
        document.undoStack().redo();
    QCOMPARE(document.sketch(), last);
}

QTEST_GUILESS_MAIN(TestMillionEdits)
#include "test_million_edits.moc"
