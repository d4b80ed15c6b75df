#include "tests/benchmark/timing.h"

#include "app/canvas/elevation_view.h"

#include <QApplication>
#include <QEvent>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QThread>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdlib>
#include <ctime>
#include <string>
#include <utility>
#include <vector>

/// How long a frame takes while one point of a very large drawing is dragged: 200 hoses with 2,000 points
/// each, in the real elevation on an offscreen screen, by the mouse. A frame is a move of the mouse and all
/// that comes of it until the elevation is painted and nothing waits any more; results that arrive from
/// beside the window count with the frame that they arrive in. Moves come 60 times a second, as from a hand.
namespace {

using namespace siphonwright;

constexpr int frame_width_px = 1280;
constexpr int frame_height_px = 720;
constexpr double tick_us = 1e6 / 60;

double wall_us()
{
    const std::chrono::duration<double, std::micro> now = std::chrono::steady_clock::now().time_since_epoch();
    return now.count();
}

double cpuOf(clockid_t clock)
{
    timespec now{};
    clock_gettime(clock, &now);
    return double(now.tv_sec) * 1e6 + double(now.tv_nsec) * 1e-3;
}

Sketch large(int hoses, int points)
{
    Sketch sketch;
    for (int i = 0; i < hoses; ++i) {
        Hose hose;
        hose.id = "hose-" + std::to_string(i + 1);
        hose.role = i % 2 == 0 ? HoseRole::supply : HoseRole::return_;
        hose.bore_mm.value = 19.05;
        const double z = 60.0 * i;
        const auto at = [&](int k) { return Vec3{40.0 * k, 0, z + 1.2 * k + 8 * std::sin(0.1 * k + i)}; };
        hose.from.open_at = at(0);
        hose.to.open_at = at(points + 1);
        for (int k = 1; k <= points; ++k)
            hose.points.push_back({at(k), 300, BendKind::hose});
        sketch.hoses.push_back(Shared<Hose>(std::move(hose)));
    }
    return sketch;
}

/// Counts how often a widget is painted.
class Painted : public QObject {
public:
    using QObject::QObject;
    int count = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        count += event->type() == QEvent::Paint ? 1 : 0;
        return QObject::eventFilter(watched, event);
    }
};

/// The window of a drawing with the mouse over it.
class Window {
public:
    explicit Window(Sketch sketch) : view_(document_, selection_)
    {
        view_.resize(frame_width_px, frame_height_px);
        view_.installEventFilter(&painted_);
        document_.reset(std::move(sketch));
        document_.startProving();
        view_.show();
        view_.zoomToFit();
        settle();
    }

    Document& document() { return document_; }
    ElevationView& view() { return view_; }
    int painted() const { return painted_.count; }

    void mouse(QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons held)
    {
        QMouseEvent event(type, at, view_.mapToGlobal(at), button, held, Qt::NoModifier);
        QCoreApplication::sendEvent(&view_, &event);
    }
    static void settle() { QCoreApplication::processEvents(); }

private:
    Document document_;
    Selection selection_;
    ElevationView view_;
    Painted painted_;
};

struct Frames {
    std::vector<double> wall_us;
    std::vector<double> cpu_us; ///< of the window's own thread
    double all_cpu_us = 0;      ///< of all threads, on the whole
};

/// Take hold of a point and move it round in a small circle.
Frames drag(Window& window, Vec2 point, int frames)
{
    Frames out;
    const QPointF from = window.view().toScreen(point);
    window.mouse(QEvent::MouseMove, from, Qt::NoButton, Qt::NoButton);
    window.mouse(QEvent::MouseButtonPress, from, Qt::LeftButton, Qt::LeftButton);
    Window::settle();
    constexpr double circle_px = 25;
    constexpr double turn_rad = 0.11;
    const double all_before_us = cpuOf(CLOCK_PROCESS_CPUTIME_ID);
    for (int i = 1; i <= frames; ++i) {
        const double a = turn_rad * i;
        const QPointF to = from + QPointF(std::sin(a), 1 - std::cos(a)) * circle_px;
        const int painted = window.painted();
        const double start_us = wall_us();
        const double cpu_us = cpuOf(CLOCK_THREAD_CPUTIME_ID);
        window.mouse(QEvent::MouseMove, to, Qt::NoButton, Qt::LeftButton);
        Window::settle();
        out.cpu_us.push_back(cpuOf(CLOCK_THREAD_CPUTIME_ID) - cpu_us);
        out.wall_us.push_back(wall_us() - start_us);
        if (window.painted() == painted)
            std::printf("  frame %d was not painted\n", i);
        if (out.wall_us.back() < tick_us)
            QThread::usleep(static_cast<unsigned long>(tick_us - out.wall_us.back()));
    }
    out.all_cpu_us = cpuOf(CLOCK_PROCESS_CPUTIME_ID) - all_before_us;
    window.mouse(QEvent::MouseButtonRelease, from, Qt::LeftButton, Qt::NoButton);
    Window::settle();
    return out;
}

/// What the window is held up by while a drawing that was let go is judged, drawn anew and proven.
Frames settling(const Window& window)
{
    constexpr double patience_us = 5e6;
    Frames out;
    const double start_us = wall_us();
    while (wall_us() - start_us < patience_us) {
        const double from_us = wall_us();
        const double cpu_us = cpuOf(CLOCK_THREAD_CPUTIME_ID);
        window.settle();
        out.cpu_us.push_back(cpuOf(CLOCK_THREAD_CPUTIME_ID) - cpu_us);
        out.wall_us.push_back(wall_us() - from_us);
        QThread::usleep(2000);
    }
    return out;
}

void sayWorst(const char* what, const Frames& frames, double reference_us)
{
    for (const auto& [name, took_us] :
         {std::pair(", wall", &frames.wall_us), std::pair(", CPU", &frames.cpu_us)})
        timing::line((what + std::string(name)).c_str(), timing::quantile(*took_us, 1), reference_us);
}

void say(const char* what, const std::vector<double>& frames_us, double reference_us)
{
    for (const auto& [name, share] :
         {std::pair("median", 0.5), std::pair("95th percentile", 0.95), std::pair("worst", 1.0)})
        timing::line((std::string("  frame, ") + what + ", " + name).c_str(),
                     timing::quantile(frames_us, share), reference_us);
}

void measure(int hoses, int points, int frames, double reference_us)
{
    std::printf("%d hoses with %d points\n", hoses, points);
    std::fflush(stdout);
    Sketch sketch = large(hoses, points);
    const Vec3 point = sketch.hoses[std::size_t(hoses) / 2]->points[std::size_t(points) / 2].at;
    Window window(std::move(sketch));
    const Frames first = drag(window, {point.x, point.z}, 8); // makes the picture that is kept
    sayWorst("  worst of the first frames", first, reference_us);
    sayWorst("  longest hold-up after them", settling(window), reference_us);
    const Frames all = drag(window, {point.x, point.z}, frames);
    say("wall", all.wall_us, reference_us);
    say("CPU", all.cpu_us, reference_us);
    timing::line("  CPU of all threads for each frame", all.all_cpu_us / frames, reference_us);
    const auto within = std::count_if(all.wall_us.begin(), all.wall_us.end(),
                                      [](double took_us) { return took_us <= tick_us; });
    std::printf("    %d of %d frames within 1/60 s\n", int(within), frames);
}

} // namespace

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const double reference_us = timing::reference_us();
    const auto number = [&](int i, int usual) { return argc > i ? std::atoi(argv[i]) : usual; };
    const int frames = number(3, 300);
    measure(number(1, 200), number(2, 2000), frames, reference_us);
    if (argc == 1)
        for (const auto& [hoses, points] : {std::pair(20, 200), std::pair(10, 50)})
            measure(hoses, points, 60, reference_us);
    return 0;
}
