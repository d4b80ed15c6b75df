#include "tests/document/hanging_disk.h"
#include "tests/sound_loop.h"

#include "app/document/analyser.h"
#include "app/document/document.h"
#include "app/document/long_call.h"
#include "app/document/saving.h"
#include "app/document/worker.h"

#include "core/analysis/analysis.h"
#include "core/commissioning/diagnosis.h"
#include "core/proposing/fix.h"
#include "core/proposing/propose.h"
#include "core/sketch/edits.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <stop_token>
#include <thread>
#include <utility>
#include <variant>
#include <vector>

using namespace siphonwright;

namespace {

/// Waits for the answers of a worker by the standard library alone, of which a thread sanitizer sees all.
class Bell {
public:
    void ring()
    {
        const std::lock_guard lock(mutex_);
        ++rung_;
        heard_.notify_all();
    }
    bool waitFor(int times)
    {
        std::unique_lock lock(mutex_);
        constexpr std::chrono::minutes patience{5};
        return heard_.wait_for(lock, patience, [this, times] { return rung_ >= times; });
    }

private:
    std::mutex mutex_;
    std::condition_variable heard_;
    int rung_ = 0;
};

/// A loop with a heater that hangs too near to the ground: something to cure.
Sketch lowHeater()
{
    Sketch sketch = test::soundLoop();
    sketch.ground_z_mm = -60;
    return sketch;
}

void moveHeater(Sketch& sketch)
{
    move(sketch, {PartKind::heater, "heater-1", 0}, {1, 0, 0});
}

} // namespace

/// What the program computes beside the window, while the drawing that it was copied from is edited on:
/// copies share their parts. Run under the thread sanitizer too.
class TestWorker : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLatestOfManyJobsIsAnsweredLast();
    void aSketchIsProvedWhileTheOneItWasCopiedFromIsEdited();
    void aDrawingIsJudgedWhileItIsDraggedOn();
    void aFixIsSoughtWhileTheDrawingIsEdited();
    void layoutsAreProposedWhileTheDrawingIsEdited();
    void faultsAreSoughtWhileTheDrawingIsEdited();
    void aCallThatIsLeftBehindEndsByItself();
    void whatIsSavedIsTheDrawingAsItWasThoughItIsEditedOn();
};

void TestWorker::theLatestOfManyJobsIsAnsweredLast()
{
    constexpr int last = 1000;
    Bell bell;
    Worker<int, int> worker(
        [&](int job, const Worker<int, int>::Tell& tell, const std::stop_token&) {
            tell(job);
            if (job == last)
                bell.ring();
        },
        [] {});
    for (int job = 1; job <= last; ++job)
        worker.ask(job);
    QVERIFY(bell.waitFor(1));
    QCOMPARE(worker.take().value_or(0), last);
    QVERIFY(!worker.take());
}

void TestWorker::aSketchIsProvedWhileTheOneItWasCopiedFromIsEdited()
{
    struct Job {
        Sketch sketch;
        Analysis level;
    };
    Bell bell;
    Worker<Job, Proof> worker(
        [&](Job job, const Worker<Job, Proof>::Tell& tell, const std::stop_token& stop) {
            ProofOptions options;
            options.so_far = [&](const Proof& proof) {
                tell(proof);
                if (proof.complete)
                    bell.ring();
            };
            prove(job.sketch, job.level, options, stop);
        },
        [] {});
    Sketch sketch = lowHeater();
    Analysis level = analyse(sketch);
    worker.ask({sketch, level});
    for (int i = 0; i < 20; ++i) {
        moveHeater(sketch);
        level = analyse(sketch, &level);
        if (i % 10 == 9)
            worker.ask({sketch, level});
        worker.take();
    }
    QVERIFY(bell.waitFor(1));
}

// As a document does with a large one: what was judged before is lent, and freed over there.
void TestWorker::aDrawingIsJudgedWhileItIsDraggedOn()
{
    Sketch sketch = lowHeater();
    Analysis level = analyse(sketch);
    const auto proof = std::make_shared<const std::optional<Proof>>(prove(sketch, level));
    Bell bell;
    Analyser analyser;
    connect(
        &analyser, &Analyser::ready, this, [&bell] { bell.ring(); }, Qt::DirectConnection);
    std::uint64_t revision = 0;
    for (int answers = 1; answers <= 3; ++answers) {
        moveHeater(sketch);
        std::vector<Analysis> done_with{level};
        analyser.ask({++revision, sketch, level, proof, false, {}, std::move(done_with)});
        const Sketch asked = sketch;
        for (int i = 0; i < 5; ++i) {
            moveHeater(sketch);
            QVERIFY(!analyser.isIdle());
        }
        QVERIFY(bell.waitFor(answers));
        std::optional<Analyser::Answer> answer = analyser.take();
        QVERIFY(answer);
        QCOMPARE(answer->revision, revision);
        QVERIFY(answer->shown);
        QVERIFY(answer->level.findings == analyse(asked).findings);
        QVERIFY(analyser.isIdle());
        level = std::move(answer->level);
    }
}

void TestWorker::aFixIsSoughtWhileTheDrawingIsEdited()
{
    struct Job {
        Sketch sketch;
        Analysis analysis;
        Finding finding;
    };
    Sketch sketch = lowHeater();
    Analysis analysis = proved(sketch);
    QVERIFY(!analysis.findings.empty());
    Bell bell;
    Worker<Job, bool> worker(
        [&](Job job, const Worker<Job, bool>::Tell& tell, const std::stop_token& stop) {
            tell(fixFor(job.sketch, job.analysis, job.finding, stop).has_value());
            bell.ring();
        },
        [] {});
    worker.ask({sketch, analysis, analysis.findings.front()});
    for (int i = 0; i < 20; ++i) {
        moveHeater(sketch);
        analysis = analyse(sketch, &analysis);
    }
    QVERIFY(bell.waitFor(1));
    QVERIFY(worker.take().has_value());
}

void TestWorker::layoutsAreProposedWhileTheDrawingIsEdited()
{
    Sketch sketch = test::soundLoop();
    Analysis level = analyse(sketch);
    Bell bell;
    Worker<Sketch, std::size_t> worker(
        [&](const Sketch& job, const Worker<Sketch, std::size_t>::Tell& tell, const std::stop_token& stop) {
            ProposeOptions options;
            options.how_many = 1;
            options.progress = [&](const ProposeProgress& progress) {
                tell(progress.tried);
                if (progress.tried > 0)
                    bell.ring();
            };
            propose(job, options, stop);
        },
        [] {});
    worker.ask(sketch);
    for (int i = 0; i < 20; ++i) {
        moveHeater(sketch);
        level = analyse(sketch, &level);
    }
    QVERIFY(bell.waitFor(1));
    QVERIFY(worker.take().has_value());
}

void TestWorker::faultsAreSoughtWhileTheDrawingIsEdited()
{
    Sketch sketch = test::soundLoop();
    Analysis level = analyse(sketch);
    Bell bell;
    Worker<Sketch, bool> worker(
        [&](const Sketch& job, const Worker<Sketch, bool>::Tell& tell, const std::stop_token& stop) {
            diagnose(job, {}, stop);
            tell(true);
            bell.ring();
        },
        [] {});
    worker.ask(sketch);
    for (int i = 0; i < 20; ++i) {
        moveHeater(sketch);
        level = analyse(sketch, &level);
    }
    QVERIFY(bell.waitFor(1));
}

void TestWorker::aCallThatIsLeftBehindEndsByItself()
{
    const auto goes = std::make_shared<std::atomic<bool>>(false);
    const auto ended = std::make_shared<std::atomic<bool>>(false);
    {
        const LongCall<int> call([goes, ended] {
            while (!*goes)
                std::this_thread::yield();
            *ended = true;
            return 1;
        });
        QVERIFY(!call.isDone(std::chrono::milliseconds{5}));
    }
    *goes = true;
    QTRY_VERIFY(*ended);
    LongCall<int> quick([] { return 7; });
    QVERIFY(quick.isDone(std::chrono::minutes{5}));
    QCOMPARE(quick.take(), 7);
}

void TestWorker::whatIsSavedIsTheDrawingAsItWasThoughItIsEditedOn()
{
    static test::HangingDisk disk; // a thread that is left behind may hang in it
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("bus.siphon"));
    Document document;
    document.setDisk(disk);
    document.reset(lowHeater());
    QVERIFY(!document.write(path));
    QVERIFY(document.apply(QStringLiteral("Move"), moveHeater));
    const auto begun = document.beginSave(path, Theirs::in_the_way);
    const auto* job = std::get_if<SaveJob>(&begun);
    QVERIFY(job);
    disk.hangIn(folder.path());
    LongCall<SaveOutcome> save([job = *job] { return carryOut(job); });
    for (int i = 0; i < 20; ++i)
        QVERIFY(document.apply(QStringLiteral("Move"), moveHeater));
    QVERIFY(!save.isDone());
    disk.letGo();
    QVERIFY(save.isDone(std::chrono::minutes{5}));
    QVERIFY(save.take().stands);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), job->bytes);
}

QTEST_GUILESS_MAIN(TestWorker)
#include "test_worker.moc"
