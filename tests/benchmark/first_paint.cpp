// Linked to a program beside its own main(): says on standard output when its first window has been painted,
// what computing it took and what memory at most by then and two seconds later, when it ends.

#include <QApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QFile>
#include <QTimer>
#include <QWidget>

#include <cstdio>
#include <cstdlib>
#include <ctime>

namespace {

/// Peak of resident memory, MB; 0 where the system does not tell.
double peakMegabytes()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0;
    const QList<QByteArray> lines = status.readAll().split('\n');
    for (const QByteArray& line : lines) {
        if (line.startsWith("VmHWM:"))
            return line.simplified().split(' ').value(1).toDouble() / 1024;
    }
    return 0;
}

void say(const char* what)
{
    QElapsedTimer now;
    now.start();
    // Computing time beside the hour: on a busy machine it is what the start would take on a quiet one.
    const double computed_ms = 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
    std::printf("%s %lld %.1f %.0f\n", what, static_cast<long long>(now.msecsSinceReference()),
                peakMegabytes(), computed_ms);
    std::fflush(stdout);
}

class FirstPaint : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* object, QEvent* event) override
    {
        const auto* widget = qobject_cast<QWidget*>(object);
        if (event->type() != QEvent::Paint || !widget || !widget->window()->isVisible())
            return false;
        qApp->removeEventFilter(this);
        // All that waits to be painted with it is, before the program comes back to its events.
        QTimer::singleShot(0, this, [] {
            say("painted");
            constexpr int settled_ms = 2000;
            QTimer::singleShot(settled_ms, qApp, [] {
                say("settled");
                std::_Exit(EXIT_SUCCESS);
            });
        });
        return false;
    }
};

void watch()
{
    qApp->installEventFilter(new FirstPaint(qApp));
}

} // namespace

Q_COREAPP_STARTUP_FUNCTION(watch)
