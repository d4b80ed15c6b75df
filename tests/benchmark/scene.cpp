#include "tests/benchmark/timing.h"

#include "app/canvas/elevation_view.h"

#include "core/sketch/edits.h"

#include <QApplication>
#include <QImage>

#include <cmath>
#include <cstdlib>

/// How long one step of a drag takes on a very large drawing: 200 hoses with 2,000 points each, one point
/// moved, judged and drawn, by the real elevation on an offscreen screen. 60 frames a second are 16.7 ms.
namespace {

using namespace siphonwright;

constexpr int frame_width_px = 1280;
constexpr int frame_height_px = 720;

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

/// One drag step after another: document (edit and analysis) and view (paint) apart, and both.
void drag(const char* what, int hoses, int points, double reference_us)
{
    Document document;
    Selection selection;
    ElevationView view(document, selection);
    view.resize(frame_width_px, frame_height_px);
    document.reset(large(hoses, points));
    view.show();
    view.zoomToFit();
    QImage frame(view.size(), QImage::Format_ARGB32_Premultiplied);
    view.render(&frame);
    selection.select({PartKind::hose_point, "hose-1", std::size_t(points / 2)});
    const int gesture = document.beginGesture();
    double by_mm = 1;
    const auto edit = [&] {
        by_mm = -by_mm;
        document.apply(
            QStringLiteral("Move"),
            [&](Sketch& sketch) {
                move(sketch, {PartKind::hose_point, "hose-1", std::size_t(points / 2)}, {0, 0, by_mm});
            },
            gesture);
    };
    const auto paint = [&] { view.render(&frame); };
    std::printf("%s\n", what);
    std::fflush(stdout);
    constexpr int steps = 5;
    timing::line("  edit and analysis", timing::median_us(steps, edit), reference_us);
    timing::line("  frame", timing::median_us(steps, paint), reference_us);
    const double whole_us = timing::median_us(steps, [&] {
        edit();
        paint();
    });
    timing::line("  step of a drag", whole_us, reference_us);
    std::printf("    %.1f frames a second\n", 1e6 / whole_us);
}

} // namespace

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const double reference_us = timing::reference_us();
    drag("10 hoses with 50 points", 10, 50, reference_us);
    drag("20 hoses with 200 points", 20, 200, reference_us);
    drag("200 hoses with 2,000 points", argc > 1 ? std::atoi(argv[1]) : 200, 2000, reference_us);
    return 0;
}
