#include "tests/near.h"
#include "tests/running_view/warm_loop.h"
#include "tests/sheet/text_recorder.h"

#include "app/drawing/elevation.h"
#include "app/drawing/running_words.h"

#include "core/running/loop_figures.h"
#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QPainter>
#include <QTest>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double per_mm = 10; // device units per millimetre of the device

drawing::Style styleOf(double scale)
{
    drawing::Style style;
    style.scale = scale;
    return style;
}

/// Paint a sketch whole, at a scale, on a device that takes down what is written.
std::vector<WrittenText> textsOf(const Sketch& sketch, const Analysis& analysis, const drawing::Style& style)
{
    const QRectF box = drawing::boundsOf(sketch, analysis).adjusted(-500, -300, 500, 300);
    TextRecorder recorder((box.size() * style.scale * per_mm).toSize());
    QPainter painter(&recorder);
    painter.scale(style.scale * per_mm, style.scale * per_mm);
    painter.translate(-box.topLeft());
    painter.setClipRect(box);
    drawing::paintElevation(painter, sketch, analysis, style);
    painter.end();
    return recorder.texts();
}

bool written(const std::vector<WrittenText>& texts, const QString& text)
{
    return std::any_of(texts.begin(), texts.end(), [&](const WrittenText& one) { return one.text == text; });
}

/// Takes down polygons of four corners in the painter's own units: arrowheads, tip first.
class ArrowRecorder : public QPaintDevice {
public:
    struct Arrow {
        QPointF tip;
        QPointF way;
    };
    QPaintEngine* paintEngine() const override { return &engine_; }
    std::vector<Arrow> arrows;

protected:
    int metric(PaintDeviceMetric metric) const override
    {
        return metric == PdmWidth || metric == PdmHeight ? 4000
               : metric == PdmDevicePixelRatio           ? 1
               : metric == PdmDpiX || metric == PdmDpiY || metric == PdmPhysicalDpiX ||
                       metric == PdmPhysicalDpiY
                   ? 96
                   : QPaintDevice::metric(metric);
    }

private:
    class Engine : public QPaintEngine {
    public:
        explicit Engine(std::vector<Arrow>& into) : QPaintEngine(AllFeatures), into_(into) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState&) override {}
        void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
        void drawTextItem(const QPointF&, const QTextItem&) override {}
        void drawPath(const QPainterPath&) override {}
        void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override
        {
            if (count == 4 && mode != PolylineMode)
                into_.push_back({points[0], points[0] - points[2]});
        }
        Type type() const override { return User; }

    private:
        std::vector<Arrow>& into_;
    };
    mutable Engine engine_{arrows};
};

/// Arrows in the upright part of the sound loop's supply hose, at x 100 from z 300 to z 0.
std::vector<QPointF> supplyArrows(const Sketch& sketch, const Analysis& analysis, const drawing::Style& style)
{
    ArrowRecorder recorder;
    QPainter painter(&recorder);
    painter.translate(1000, 1500);
    drawing::paintElevation(painter, sketch, analysis, style);
    painter.end();
    std::vector<QPointF> ways;
    for (const ArrowRecorder::Arrow& arrow : recorder.arrows)
        if (std::abs(arrow.tip.x() - 100) < 0.01 && arrow.tip.y() > -300 && arrow.tip.y() < 0)
            ways.push_back(arrow.way);
    return ways;
}

double luminance(const QColor& colour)
{
    return 0.2126 * colour.redF() + 0.7152 * colour.greenF() + 0.0722 * colour.blueF();
}

} // namespace

class TestRunningInk : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theFiguresStandOnTheDrawing();
    void theFiguresFollowTheUnits();
    void theFiguresCanBeHidden();
    void aLoopThatDoesNotRunIsSaidInWords();
    void aLoopWithoutItsFactsShowsNoFigures();
    void amongSeveralHeatersTheFiguresAreNamed();
    void arrowsGrowWithTheFlow();
    void arrowsFollowTheFlow();
    void theRampRunsOneWayInGrey();
    void tintedHosesComeWithAScale();
    void tintShowsWhereTheCoolantIsHot();
    void noTextLiesOnAnother_data();
    void noTextLiesOnAnother();
};

void TestRunningInk::theFiguresStandOnTheDrawing()
{
    const Sketch sketch = warmLoop();
    const Analysis analysis = analyse(sketch);
    const Circulation& found = analysis.running.loops.at(0).circulation;
    const auto say = [](double value, Unit unit) {
        return QString::fromStdString(format(value, unit, UnitSystem::metric));
    };
    const std::vector<WrittenText> texts = textsOf(sketch, analysis, styleOf(0.1));
    QVERIFY(written(texts, say(flowByVolume_l_per_min(found), Unit::l_per_min)));
    QVERIFY(written(texts, QStringLiteral("in %1, out %2")
                               .arg(say(found.heater_inlet_degC, Unit::degC),
                                    say(found.heater_outlet_degC, Unit::degC))));
    QVERIFY(written(texts, QStringLiteral("%1 drives, %1 resists").arg(say(found.drive_mm, Unit::head))));
    QVERIFY(written(texts, QStringLiteral("at 40 °C block")));
}

void TestRunningInk::theFiguresFollowTheUnits()
{
    const Sketch sketch = warmLoop();
    drawing::Style style = styleOf(0.1);
    style.units = UnitSystem::inch;
    QString all;
    for (const WrittenText& text : textsOf(sketch, analyse(sketch), style))
        all += text.text + QLatin1Char('\n');
    QVERIFY(all.contains(QStringLiteral(" gal/min")));
    QVERIFY(all.contains(QStringLiteral("at 104 °F block"))); // 40 degC
    QVERIFY(all.contains(QStringLiteral(" in drives, ")));
}

void TestRunningInk::theFiguresCanBeHidden()
{
    const Sketch sketch = warmLoop();
    drawing::Style style = styleOf(0.1);
    style.running = false;
    QVERIFY(!written(textsOf(sketch, analyse(sketch), style), QStringLiteral("at 40 °C block")));
}

void TestRunningInk::aLoopThatDoesNotRunIsSaidInWords()
{
    const auto first = [](CirculationStatus status, double flow) {
        LoopRun run;
        run.circulation.status = status;
        run.circulation.flow_kg_per_s = flow;
        run.circulation.drive_Pa = 10.2;
        run.circulation.drive_mm = 1;
        return drawing::runningLines(run, 40, UnitSystem::metric).first();
    };
    QCOMPARE(first(CirculationStatus::stalled, 0), QStringLiteral("stalled"));
    QCOMPARE(first(CirculationStatus::closed, 0), QStringLiteral("a valve is shut"));
    QCOMPARE(first(CirculationStatus::boiling, 0), QStringLiteral("boils"));
    QVERIFY(first(CirculationStatus::reverse, -0.02).startsWith(QStringLiteral("runs backward, ")));
    LoopRun stalled;
    stalled.circulation.status = CirculationStatus::stalled;
    QVERIFY(
        drawing::runningLines(stalled, 40, UnitSystem::metric).contains(QStringLiteral("nothing drives it")));
}

void TestRunningInk::aLoopWithoutItsFactsShowsNoFigures()
{
    Sketch sketch = warmLoop();
    sketch.heaters[0].power_W.value.reset();
    QVERIFY(!written(textsOf(sketch, analyse(sketch), styleOf(0.1)), QStringLiteral("at 40 °C block")));
}

void TestRunningInk::amongSeveralHeatersTheFiguresAreNamed()
{
    Sketch sketch = warmLoop();
    const auto count = [&sketch] {
        const std::vector<WrittenText> texts = textsOf(sketch, analyse(sketch), styleOf(0.1));
        return std::count_if(texts.begin(), texts.end(), [](const WrittenText& one) {
            return one.text == QStringLiteral("Tank heater");
        });
    };
    QCOMPARE(count(), 1);
    Heater second = sketch.heaters[0];
    second.id = "heater-2";
    second.name = "Spare";
    second.position.x = 1800;
    sketch.heaters.push_back(second);
    QCOMPARE(count(), 2);
}

void TestRunningInk::arrowsGrowWithTheFlow()
{
    double last = 0;
    for (const double flow : {0.2, 0.5, 1.0, 2.0, 4.0, 8.0}) {
        QVERIFY(drawing::arrowSize_mm(flow) > last + 0.1);
        last = drawing::arrowSize_mm(flow);
    }
    const Sketch sketch = warmLoop();
    Analysis analysis = analyse(sketch);
    const std::vector<QPointF> as_it_is = supplyArrows(sketch, analysis, styleOf(1));
    QVERIFY(!as_it_is.empty());
    analysis.running.loops.at(0).circulation.flow_kg_per_s *= 4;
    const std::vector<QPointF> fourfold = supplyArrows(sketch, analysis, styleOf(1));
    QCOMPARE(fourfold.size(), as_it_is.size());
    QVERIFY(fourfold[0].y() > as_it_is[0].y() * 1.2);
}

void TestRunningInk::arrowsFollowTheFlow()
{
    const Sketch sketch = warmLoop();
    Analysis analysis = analyse(sketch);
    Circulation& found = analysis.running.loops.at(0).circulation;
    for (const QPointF& way : supplyArrows(sketch, analysis, styleOf(1)))
        QVERIFY(way.y() > 0); // forward: down to the heater
    found.flow_kg_per_s = -found.flow_kg_per_s;
    const std::vector<QPointF> backward = supplyArrows(sketch, analysis, styleOf(1));
    QVERIFY(!backward.empty());
    for (const QPointF& way : backward)
        QVERIFY(way.y() < 0);
    found.flow_kg_per_s = 0;
    QVERIFY(supplyArrows(sketch, analysis, styleOf(1)).empty());
}

void TestRunningInk::theRampRunsOneWayInGrey()
{
    const drawing::Palette palettes[] = {drawing::Palette::light(), drawing::Palette::dark(),
                                         drawing::Palette::paper()};
    for (const drawing::Palette& palette : palettes) {
        const double way = luminance(palette.hot) > luminance(palette.cold) ? 1 : -1;
        for (int i = 1; i <= 50; ++i)
            QVERIFY(way * (luminance(drawing::temperatureColour(palette, i / 50.0)) -
                           luminance(drawing::temperatureColour(palette, (i - 1) / 50.0))) >
                    0.004);
        QVERIFY(std::abs(luminance(palette.hot) - luminance(palette.cold)) > 0.5);
    }
}

void TestRunningInk::tintedHosesComeWithAScale()
{
    const Sketch sketch = warmLoop();
    const Analysis analysis = analyse(sketch);
    drawing::Style style = styleOf(0.1);
    const QString title = QStringLiteral("Coolant in the hoses");
    QVERIFY(!written(textsOf(sketch, analysis, style), title));
    style.tint = true;
    const std::vector<WrittenText> texts = textsOf(sketch, analysis, style);
    QVERIFY(written(texts, title));
    const Circulation& found = analysis.running.loops.at(0).circulation;
    const auto whole = [](double degC) {
        return QString::fromStdString(format(degC, Unit::degC, UnitSystem::metric));
    };
    QVERIFY(written(texts, whole(std::floor(found.heater_inlet_degC / 5) * 5)));
    QVERIFY(written(texts, whole(std::ceil(found.heater_outlet_degC / 5) * 5)));
}

void TestRunningInk::tintShowsWhereTheCoolantIsHot()
{
    const Sketch sketch = warmLoop();
    const Analysis analysis = analyse(sketch);
    QImage image(1400, 1400, QImage::Format_RGB32);
    drawing::Style style = styleOf(1);
    style.tint = true;
    style.labels = false;
    style.balloons = false;
    image.fill(style.palette.ground);
    QPainter painter(&image);
    painter.translate(100, 1000);
    drawing::paintElevation(painter, sketch, analysis, style);
    painter.end();
    // Beside the centreline and between arrows: the return at z 400 over the heater, the supply at its end.
    const auto lightest = [&](QRect within) {
        double most = 0;
        for (int y = within.top(); y <= within.bottom(); ++y)
            for (int x = within.left(); x <= within.right(); ++x)
                most = std::max(most, luminance(image.pixelColor(x, y)));
        return most;
    };
    const double back = lightest({100 + 1030 + 3, 1000 - 410, 3, 20});
    const double down = lightest({100 + 700, 1000 + 40 - 7, 20, 3});
    QVERIFY2(back < down - 0.05, qPrintable(QStringLiteral("%1 %2").arg(back).arg(down)));
}

void TestRunningInk::noTextLiesOnAnother_data()
{
    QTest::addColumn<QString>("file");
    QTest::addColumn<double>("scale");
    QTest::addColumn<bool>("inch");
    const QDir folder(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    for (const QString& name : folder.entryList({QStringLiteral("*.siphon")}))
        for (const double scale : {0.05, 0.1, 0.2})
            for (const bool inch : {false, true})
                QTest::addRow("%s 1:%d %s", qPrintable(name), int(1 / scale + 0.5), inch ? "inch" : "mm")
                    << folder.filePath(name) << scale << inch;
}

void TestRunningInk::noTextLiesOnAnother()
{
    QFETCH(QString, file);
    QFETCH(double, scale);
    QFETCH(bool, inch);
    QFile from(file);
    QVERIFY(from.open(QIODevice::ReadOnly));
    const auto read = readSketch(from.readAll().toStdString());
    QVERIFY(std::holds_alternative<Sketch>(read));
    const Sketch& sketch = std::get<Sketch>(read);
    drawing::Style style = styleOf(scale);
    style.tint = true;
    style.units = inch ? UnitSystem::inch : UnitSystem::metric;
    const std::vector<WrittenText> texts = textsOf(sketch, analyse(sketch), style);
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            QVERIFY2(!texts[i].box.intersects(texts[k].box) || !texts[i].area.intersects(texts[k].area),
                     qPrintable(texts[i].text + QStringLiteral(" | ") + texts[k].text));
}

QTEST_MAIN(TestRunningInk)
#include "test_running_ink.moc"
