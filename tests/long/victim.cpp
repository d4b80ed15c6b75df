// Edits and saves a drawing as fast and as oddly as a seed says, and says each edit and each acknowledged
// save on standard output, until somebody kills it; or crashes after a few edits when asked to.

#include "tests/sound_loop.h"

#include "app/document/crash_report.h"
#include "app/document/document.h"
#include "app/document/recovery.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTimer>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <random>
#include <string>

using namespace siphonwright;

namespace {

void say(const char* what, int number)
{
    QElapsedTimer now;
    now.start();
    std::printf("%s %d %lld\n", what, number, static_cast<long long>(now.msecsSinceReference()));
    std::fflush(stdout);
}

void edit(Document& document, int number)
{
    document.apply(QStringLiteral("Secret of Mr X"), [number](Sketch& sketch) {
        sketch.notes = "number " + std::to_string(number) + " of Mr X";
        sketch.heaters.front().position.x += 1;
    });
}

int crash(Document& document, const QString& folder)
{
    Recovery recovery(document, folder);
    CrashReport report(document);
    CrashReport::writeTo(recovery.reportFile());
    constexpr int edits = 50;
    for (int number = 1; number <= edits; ++number)
        edit(document, number);
    std::raise(SIGSEGV);
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    if (argc < 4)
        return EXIT_FAILURE;
    const QString file = QString::fromLocal8Bit(argv[1]);
    const QString folder = QString::fromLocal8Bit(argv[2]);
    const std::string seed = argv[3];
    Document document;
    document.reset(test::soundLoop());
    if (!document.save(file).isEmpty())
        return EXIT_FAILURE;
    if (seed == "crash")
        return crash(document, folder);
    Recovery recovery(document, folder);
    std::mt19937 random(static_cast<unsigned>(std::stoul(seed)));
    // One saves all the time, the other leaves it to the recovery file.
    const unsigned saved_of_hundred = random() % 2 == 0 ? 30 : 2;
    int number = 0;
    QTimer next;
    next.setSingleShot(true);
    QObject::connect(&next, &QTimer::timeout, &document, [&] {
        edit(document, ++number);
        say("edit", number);
        constexpr unsigned of_hundred = 100;
        if (random() % of_hundred < saved_of_hundred && document.save(file).isEmpty())
            say("saved", number);
        // Bursts, and rests in which a recovery file is due.
        constexpr unsigned longest_rest_ms = 1500;
        next.start(static_cast<int>(random() % 4 == 0 ? random() % longest_rest_ms : random() % 20));
    });
    say("ready", 0);
    next.start(0);
    return QCoreApplication::exec();
}
