#include "tests/random_runs.h"

#include "app/document/document.h"
#include "app/document/recovery.h"

#include <QDir>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <memory>
#include <random>
#include <variant>
#include <vector>

using namespace siphonwright;

namespace {

/// The running number of an edit, as the victim writes it into the notes; 0 before its first.
int numberIn(const Sketch& sketch)
{
    const QStringList words = QString::fromStdString(sketch.notes).split(QLatin1Char(' '));
    return words.size() > 1 ? words[1].toInt() : 0;
}

struct Found {
    int saved = 0;        ///< last acknowledged save
    int in_file = -1;     ///< what the drawing's file holds; -1 when it cannot be read
    int in_recovery = -1; ///< likewise; -1 without one
    bool unreadable = false;
    qint64 oldest_lost_ms =
        0; ///< age at the kill of the oldest edit that is in neither; 0 where none is lost
};

class Victim {
public:
    Victim(unsigned seed, const QString& folder) : folder_(folder)
    {
        QDir().mkpath(folder_);
        process_.start(QStringLiteral(SIPHONWRIGHT_VICTIM),
                       {file(), folder_ + QStringLiteral("/recovery"), QString::number(seed)});
    }
    QProcess& process() { return process_; }
    bool waitUntilReady() { return process_.waitForReadyRead(60000); }
    void kill()
    {
        QElapsedTimer now;
        now.start();
        killed_ms_ = now.msecsSinceReference();
        process_.kill();
        process_.waitForFinished();
    }
    Found found()
    {
        Found out;
        out.in_file = inFile();
        for (const RecoveryEntry& entry : recoverable(folder_ + QStringLiteral("/recovery"))) {
            const std::optional<Sketch> sketch = readRecovery(entry);
            out.unreadable = out.unreadable || !sketch;
            if (sketch)
                out.in_recovery = std::max(out.in_recovery, numberIn(*sketch));
        }
        const QStringList lines =
            QString::fromLatin1(process_.readAllStandardOutput()).split(QLatin1Char('\n'));
        for (const QString& line : lines) {
            const QStringList words = line.split(QLatin1Char(' '));
            if (words.size() != 3)
                continue;
            const int number = words[1].toInt();
            if (words[0] == QLatin1String("saved"))
                out.saved = number;
            if (words[0] == QLatin1String("edit") && number > std::max(out.in_file, out.in_recovery))
                out.oldest_lost_ms = std::max(out.oldest_lost_ms, killed_ms_ - words[2].toLongLong());
        }
        return out;
    }

private:
    QString file() const { return folder_ + QStringLiteral("/bus.siphon"); }
    int inFile() const
    {
        QFile drawing(file());
        if (!drawing.open(QIODevice::ReadOnly))
            return -1;
        const auto read = readSketch(drawing.readAll().toStdString());
        const auto* sketch = std::get_if<Sketch>(&read);
        return sketch ? numberIn(*sketch) : -1;
    }

    QString folder_;
    QProcess process_;
    qint64 killed_ms_ = 0;
};

} // namespace

class TestKilled : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whateverMomentItIsKilledNothingAcknowledgedIsLost_data();
    void whateverMomentItIsKilledNothingAcknowledgedIsLost();
    void aCrashLeavesAReportWithoutPersonalData();
};

// In rows, since one may not take longer than Qt Test lets it.
void TestKilled::whateverMomentItIsKilledNothingAcknowledgedIsLost_data()
{
    QTest::addColumn<unsigned>("seed");
    QTest::addColumn<int>("kills");
    const int all = test::runs(10, 1000);
    constexpr int in_a_row = 200;
    for (int begun = 0; begun < all; begun += in_a_row)
        QTest::addRow("from kill %d on", begun + 1)
            << 20261126U + static_cast<unsigned>(begun) << std::min(in_a_row, all - begun);
}

void TestKilled::whateverMomentItIsKilledNothingAcknowledgedIsLost()
{
    QFETCH(unsigned, seed);
    QFETCH(int, kills);
    constexpr int at_once = 40; // they rest most of the time
    constexpr int longest_life_ms = 8000;
    std::mt19937 random(seed);
    QTemporaryDir folder;
    qint64 oldest_lost_ms = 0;
    int with_recovery = 0;
    int saves = 0;
    for (int done = 0; done < kills; done += at_once) {
        std::vector<std::unique_ptr<Victim>> victims;
        const int count = std::min(at_once, kills - done);
        for (int i = 0; i < count; ++i)
            victims.push_back(std::make_unique<Victim>(random(), folder.filePath(QString::number(done + i))));
        QEventLoop loop;
        int alive = count;
        for (const auto& victim : victims) {
            QVERIFY2(victim->waitUntilReady(), qPrintable(victim->process().errorString()));
            QTimer::singleShot(static_cast<int>(random() % longest_life_ms), &loop, [&] {
                victim->kill();
                if (--alive == 0)
                    loop.quit();
            });
        }
        loop.exec();
        for (const auto& victim : victims) {
            const Found found = victim->found();
            QVERIFY2(found.in_file >= found.saved,
                     qPrintable(QStringLiteral("save %1 was acknowledged, %2 is there")
                                    .arg(found.saved)
                                    .arg(found.in_file)));
            QVERIFY(!found.unreadable);
            QVERIFY2(found.oldest_lost_ms <= recovery_promise_s * 1000,
                     qPrintable(QStringLiteral("an edit %1 ms old is lost").arg(found.oldest_lost_ms)));
            oldest_lost_ms = std::max(oldest_lost_ms, found.oldest_lost_ms);
            with_recovery += found.in_recovery >= 0 ? 1 : 0;
            saves += found.saved > 0 ? 1 : 0;
        }
    }
    qInfo("%d kills, %d after an acknowledged save, %d left a recovery file, oldest edit lost %lld ms", kills,
          saves, with_recovery, static_cast<long long>(oldest_lost_ms));
    QVERIFY(saves > 0 && with_recovery > 0);
}

void TestKilled::aCrashLeavesAReportWithoutPersonalData()
{
    QTemporaryDir folder(QDir::tempPath() + QStringLiteral("/home-of-Mr-X-XXXXXX"));
    const QString recovery = folder.filePath(QStringLiteral("recovery"));
    QProcess process;
    process.start(QStringLiteral(SIPHONWRIGHT_VICTIM),
                  {folder.filePath(QStringLiteral("Mr X.siphon")), recovery, QStringLiteral("crash")});
    QVERIFY(process.waitForFinished(60000));
    QCOMPARE(process.exitStatus(), QProcess::CrashExit);
    const QStringList reports = newCrashReports(recovery);
    QCOMPARE(reports.size(), 1);
    const QString said = QString::fromLocal8Bit(process.readAllStandardError());
    QVERIFY2(said.contains(recovery), qPrintable(said));
    QFile file(reports.front());
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QString report = QString::fromUtf8(file.readAll());
    QVERIFY2(report.contains(QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION)), qPrintable(report));
    QVERIFY2(report.contains(QStringLiteral("SIGSEGV")), qPrintable(report));
    QVERIFY2(report.contains(QStringLiteral("50 heaters: 1 of 1 changed; notes changed")),
             qPrintable(report));
    QVERIFY2(!report.contains(QStringLiteral("\n10 heaters")), qPrintable(report)); // forty are kept
    QVERIFY2(report.contains(QStringLiteral("siphonwright_victim +0x")), qPrintable(report));
    QVERIFY2(!report.contains(QStringLiteral("Mr")), qPrintable(report));
    QVERIFY2(!report.contains(QLatin1Char('/')) || !report.contains(QDir::homePath()), qPrintable(report));
    QCOMPARE(newCrashReports(recovery), QStringList()); // told of once
}

QTEST_GUILESS_MAIN(TestKilled)
#include "test_killed.moc"
