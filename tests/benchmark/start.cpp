// From the start of the program to its first painted window, and the memory it takes, on each sample; beside
// an empty main window started in the same run. The program is the real one, with first_paint.cpp linked to
// it.

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace {

struct Start {
    double painted_ms = 0;
    double computed_ms = 0; ///< until then
    double painted_mb = 0;
    double settled_mb = 0;
};

Start startOnce(const QString& program, const QStringList& arguments)
{
    const QTemporaryDir home; // nobody's settings, nothing to recover
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* place :
         {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"})
        environment.insert(QLatin1String(place), home.path());
    if (!environment.contains(QStringLiteral("QT_QPA_PLATFORM")))
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    QProcess process;
    process.setProcessEnvironment(environment);
    QElapsedTimer begun;
    begun.start();
    process.start(program, arguments);
    process.waitForFinished(60000);
    Start out;
    const QList<QByteArray> lines = process.readAllStandardOutput().split('\n');
    for (const QByteArray& line : lines) {
        const QList<QByteArray> words = line.split(' ');
        if (words.size() != 4)
            continue;
        if (words[0] == "painted") {
            out.painted_ms = words[1].toDouble() - static_cast<double>(begun.msecsSinceReference());
            out.painted_mb = words[2].toDouble();
            out.computed_ms = words[3].toDouble();
        } else {
            out.settled_mb = words[2].toDouble();
        }
    }
    return out;
}

struct Row {
    double least_ms = 0;
    double middle_ms = 0;
    double computed_ms = 0; ///< least
    double painted_mb = 0;
    double settled_mb = 0;
};

Row measure(const QString& program, const QStringList& arguments, int times)
{
    std::vector<double> ms;
    Row row;
    for (int i = 0; i < times; ++i) {
        const Start start = startOnce(program, arguments);
        ms.push_back(start.painted_ms);
        row.computed_ms = i == 0 ? start.computed_ms : std::min(row.computed_ms, start.computed_ms);
        row.painted_mb = std::max(row.painted_mb, start.painted_mb);
        row.settled_mb = std::max(row.settled_mb, start.settled_mb);
    }
    std::sort(ms.begin(), ms.end());
    row.least_ms = ms.front();
    row.middle_ms = ms[ms.size() / 2];
    return row;
}

void print(const QString& name, const Row& row, const Row& empty)
{
    std::printf("%-28s %7.0f %7.0f %6.1f %9.0f %9.1f %9.1f %6.1f\n", qPrintable(name), row.least_ms,
                row.middle_ms, row.middle_ms / empty.middle_ms, row.computed_ms, row.painted_mb,
                row.settled_mb, row.painted_mb / empty.painted_mb);
    std::fflush(stdout);
}

/// How busy the machine was, as the system says it.
QByteArray load()
{
    QFile file(QStringLiteral("/proc/loadavg"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().simplified() : QByteArray("not known");
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    constexpr double most_ms = 300;
    constexpr double most_mb = 120;
    const int times = argc > 1 ? std::max(1, QString::fromLocal8Bit(argv[1]).toInt()) : 5;
    std::printf("load before: %s\n", load().constData());
    std::printf("%-28s %7s %7s %6s %9s %9s %6s\n", "of starts", "least", "middle", "times", "MB when",
                "MB 2 s", "times");
    std::printf("%-28s %7s %7s %6s %9s %9s %9s %6s\n", QByteArray::number(times).constData(), "ms", "ms",
                "empty", "ms", "painted", "later", "empty");
    const Row empty = measure(QStringLiteral(SIPHONWRIGHT_EMPTY_WINDOW), {}, times);
    print(QStringLiteral("(empty main window)"), empty, empty);
    bool holds = true;
    const QDir samples(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    for (const QString& name : samples.entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name)) {
        const Row row = measure(QStringLiteral(SIPHONWRIGHT_STARTED), {samples.filePath(name)}, times);
        print(name, row, empty);
        holds = holds && row.middle_ms > 0 && row.middle_ms < most_ms && row.settled_mb < most_mb;
    }
    std::printf("load after: %s\n%s\n", load().constData(),
                holds ? "all under 300 ms and 120 MB" : "NOT all under 300 ms and 120 MB");
    return holds ? EXIT_SUCCESS : EXIT_FAILURE;
}
