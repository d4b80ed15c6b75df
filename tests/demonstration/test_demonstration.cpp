#include "tests/near.h"
#include "tests/sheet/text_recorder.h"

#include "app/demonstration/export.h"
#include "app/demonstration/player.h"

#include <QImageReader>
#include <QPainter>
#include <QSignalSpy>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::demonstration;

/// What is played: moments, their words, clock and files.
class TestDemonstration : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void the_supply_hump_spills_and_seals_in_plain_words();
    void the_air_that_stays_is_named_on_the_drawing();
    void air_follows_a_hose_while_it_is_dragged();
    void what_is_drawn_is_what_was_poured();
    void every_bore_is_full_of_liquid_and_gas_together();
    void a_sound_loop_keeps_no_air_and_circulates();
    void air_that_is_not_cleared_keeps_the_return_cold();
    void of_several_heaters_each_is_told_by_name();
    void prefilled_hoses_begin_full_and_circulate();
    void scrubbing_there_and_back_gives_the_same_picture();
    void the_clock_plays_to_the_end_and_stops();
    void the_heater_goes_by_at_the_chosen_speed();
    void an_edit_while_it_plays_keeps_the_moment();
    void without_a_loop_it_says_what_is_missing();
    void a_moment_is_written_as_png_and_svg();
    void the_sequence_is_numbered();
    void the_handout_has_one_page_with_six_moments();

private:
    void open(const char* sample)
    {
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(sample))),
                 QStringList());
        shown_ = demonstrate(document_->sketch(), document_->analysis().layout);
        QVERIFY2(!shown_.moments.empty(), shown_.missing.c_str());
    }
    bool said(const QString& words) const
    {
        return std::any_of(shown_.moments.begin(), shown_.moments.end(), [&](const Moment& moment) {
            return wordsOf(moment, UnitSystem::metric).contains(words);
        });
    }
    QImage picture(const Moment& moment) const
    {
        QImage image(900, 600, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(3, 3);
        paintCaptioned(painter, QRectF(0, 0, 300, 200), document_->sketch(), document_->analysis(), moment,
                       {});
        return image;
    }

    std::unique_ptr<Document> document_;
    Demonstration shown_;
    QTemporaryDir folder_;
};

void TestDemonstration::init()
{
    document_ = std::make_unique<Document>();
}

void TestDemonstration::the_supply_hump_spills_and_seals_in_plain_words()
{
    open("supply-hump");
    QVERIFY(said(QStringLiteral("Coolant spills over the hump in Supply hose")));
    QVERIFY(said(QStringLiteral("sealed.")));
    QVERIFY(said(QStringLiteral("of air stays, most of it in Supply hose.")));
}

void TestDemonstration::the_air_that_stays_is_named_on_the_drawing()
{
    open("supply-hump");
    ProofOptions options;
    options.bands = false;
    const Analysis analysis = proved(document_->sketch(), options);
    test::TextRecorder page(QSize(1600, 1200));
    QPainter painter(&page);
    constexpr double px_per_drawn_mm = 0.8;
    painter.translate(800, 600);
    painter.scale(px_per_drawn_mm, px_per_drawn_mm);
    drawing::Style style;
    style.scale = px_per_drawn_mm / (96 / 25.4);
    drawing::paintElevation(painter, document_->sketch(), analysis, style);
    painter.end();
    const std::vector<PocketFound>& pockets = analysis.proof->filling.pockets;
    const auto largest =
        std::max_element(pockets.begin(), pockets.end(), [](const PocketFound& a, const PocketFound& b) {
            return a.volume_ml < b.volume_ml;
        });
    QVERIFY(largest != pockets.end());
    const QString words = QString::fromStdString(format(largest->volume_ml, Unit::ml, UnitSystem::metric)) +
                          QStringLiteral(" of air, locks the loop");
    QVERIFY(std::any_of(page.texts().begin(), page.texts().end(),
                        [&](const test::WrittenText& one) { return one.text == words; }));
}

void TestDemonstration::air_follows_a_hose_while_it_is_dragged()
{
    open("supply-hump");
    document_->startProving();
    QTRY_VERIFY(document_->proofIsCurrent());
    const auto air_ml = [this] {
        double sum_ml = 0;
        for (const PocketFound& pocket : document_->analysis().proof->filling.pockets)
            sum_ml += pocket.volume_ml;
        return sum_ml;
    };
    QVERIFY(air_ml() > 50);
    Document fixed;
    QCOMPARE(fixed.open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon")), QStringList());
    document_->apply(QStringLiteral("Fix"), [&](Sketch& sketch) { sketch = fixed.sketch(); });
    QVERIFY(!document_->proofIsCurrent()); // before its proof has come
    VERIFY_NEAR(air_ml(), 0, 1);
}

void TestDemonstration::what_is_drawn_is_what_was_poured()
{
    // Nothing leaks: what is in jacket, hoses and chambers differs from the start by what was poured since.
    for (const char* sample : {"supply-hump", "sound-bus", "generator-two-heaters"}) {
        open(sample);
        const auto held = [](const Moment& moment) {
            double sum_ml = 0;
            for (const CellView& cell : moment.contents.frame->cells)
                sum_ml += cell.liquid_ml;
            return sum_ml;
        };
        const Moment& first = shown_.moments.front();
        for (const Moment& moment : shown_.moments)
            VERIFY_NEAR(held(moment) - held(first), moment.poured_ml - first.poured_ml, 1e-3);
    }
}

void TestDemonstration::every_bore_is_full_of_liquid_and_gas_together()
{
    open("supply-hump");
    for (const Moment& moment : shown_.moments)
        for (std::size_t i = 1; i < moment.contents.frame->cells.size(); ++i) {
            const CellView& cell = moment.contents.frame->cells[i];
            VERIFY_NEAR(cell.liquid_ml + cell.gas_ml, moment.contents.network->cells[i].capacity_ml, 1e-3);
        }
}

void TestDemonstration::a_sound_loop_keeps_no_air_and_circulates()
{
    open("sound-bus");
    QVERIFY(said(QStringLiteral("no air stays")));
    QVERIFY(shown_.circulates);
    QVERIFY(said(QStringLiteral("Coolant goes round")));
    QVERIFY(shown_.moments.back().contents.loops.front().temperatures.has_value());
}

void TestDemonstration::air_that_is_not_cleared_keeps_the_return_cold()
{
    open("supply-hump");
    QVERIFY(shown_.circulates); // the engine's pump clears this hump
    QVERIFY(wordsOf(shown_.verdict, UnitSystem::metric)
                .endsWith(QStringLiteral("Without the engine's run air would lock it.")));
    shown_ = demonstrate(document_->sketch(), document_->analysis().layout, false);
    QVERIFY(!shown_.circulates);
    QVERIFY(said(QStringLiteral("Nothing goes round")));
    const drawing::LoopTemperatures& end = *shown_.moments.back().contents.loops.front().temperatures;
    QVERIFY(end.return_port < end.outlet - 10);
}

void TestDemonstration::of_several_heaters_each_is_told_by_name()
{
    open("generator-two-heaters");
    QCOMPARE(shown_.verdict.size(), std::size_t(2));
    const QString verdict = wordsOf(shown_.verdict, UnitSystem::metric);
    const QString last = wordsOf(shown_.moments.back(), UnitSystem::metric);
    for (const char* name : {"Tank heater A, near side", "Tank heater B, far side"}) {
        QVERIFY2(verdict.contains(QLatin1String(name) + QStringLiteral(" circulates")), qPrintable(verdict));
        QVERIFY2(last.contains(QLatin1String(name) + QLatin1Char(':')), qPrintable(last));
    }
}

void TestDemonstration::prefilled_hoses_begin_full_and_circulate()
{
    QCOMPARE(document_->open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/supply-hump.siphon")),
             QStringList());
    document_->apply(QStringLiteral("pre-filled"),
                     [](Sketch& sketch) { sketch.fill.start = FillStart::hoses_full; });
    shown_ = demonstrate(document_->sketch(), document_->analysis().layout, false);
    QVERIFY(!shown_.moments.empty());
    QVERIFY(wordsOf(shown_.moments.front(), UnitSystem::metric)
                .contains(QStringLiteral("filled before they were connected")));
    for (const CellView& cell : shown_.moments.front().contents.frame->cells)
        VERIFY_NEAR(cell.gas_ml, 0, 1e-6);
    QVERIFY(said(QStringLiteral("no air stays")));
    QVERIFY(shown_.circulates); // filled from empty it does not, see above
}

void TestDemonstration::scrubbing_there_and_back_gives_the_same_picture()
{
    open("supply-hump");
    Player player(*document_);
    player.begin();
    const std::size_t places[] = {10, 60, player.demonstration().moments.size() - 5};
    std::vector<QImage> there;
    for (const std::size_t place : places) {
        player.goTo(place);
        there.push_back(picture(*player.moment()));
    }
    for (std::size_t i = std::size(places); i-- > 0;) {
        player.goTo(places[i]);
        QCOMPARE(picture(*player.moment()), there[i]);
    }
    QVERIFY(there[0] != there[1]);
    QVERIFY(there[1] != there[2]);
}

void TestDemonstration::the_clock_plays_to_the_end_and_stops()
{
    open("supply-hump");
    Player player(*document_);
    player.begin();
    player.setPlaying(true);
    player.advance(1.7);
    QVERIFY(player.index() > 0);
    QVERIFY(player.playing());
    player.advance(3600);
    QCOMPARE(player.index() + 1, player.demonstration().moments.size());
    QVERIFY(!player.playing());
    player.setPlaying(true); // from the end it starts again
    QCOMPARE(player.index(), std::size_t(0));
}

void TestDemonstration::the_heater_goes_by_at_the_chosen_speed()
{
    open("sound-bus");
    Player player(*document_);
    player.begin();
    player.goTo(player.demonstration().momentAt({PhaseKind::energised, 0, 0}));
    player.setSpeed(60);
    const double before_s = player.moment()->clock_s;
    player.advance(10); // 10 s at 60 times are 10 min
    VERIFY_NEAR(player.moment()->clock_s - before_s, 600, 21);
    player.setSpeed(5000);
    VERIFY_NEAR(player.speed(), 600, 1e-9);
}

void TestDemonstration::an_edit_while_it_plays_keeps_the_moment()
{
    open("supply-hump");
    Player player(*document_);
    player.begin();
    player.goTo(player.demonstration().momentAt({PhaseKind::energised, 0, 3600}));
    const double clock_s = player.moment()->clock_s;
    QSignalSpy remade(&player, &Player::remade);
    document_->apply(QStringLiteral("wider"), [](Sketch& sketch) {
        sketch.hoses[0].edit([](Hose& hose) { hose.bore_mm.value = 25; });
    });
    QTRY_VERIFY(!remade.isEmpty());
    QCOMPARE(player.moment()->phase, PhaseKind::energised);
    VERIFY_NEAR(player.moment()->clock_s, clock_s, 1e-9);
    VERIFY_NEAR(document_->sketch().hoses[0]->bore_mm.value.value(), 25, 1e-9);
}

void TestDemonstration::without_a_loop_it_says_what_is_missing()
{
    const Demonstration none = demonstrate(document_->sketch(), document_->analysis().layout);
    QVERIFY(none.moments.empty());
    QVERIFY(!none.missing.empty());
}

void TestDemonstration::a_moment_is_written_as_png_and_svg()
{
    open("supply-hump");
    const Moment& moment = shown_.moments[shown_.moments.size() / 3];
    const QString png = folder_.filePath(QStringLiteral("moment.png"));
    const QString svg = folder_.filePath(QStringLiteral("moment.svg"));
    for (const QString& path : {png, svg})
        QCOMPARE(exportMoment(path, document_->sketch(), document_->analysis(), moment, {}), QStringList());
    QCOMPARE(QImage(png).size(), QSize(1920, 1080));
    QSvgRenderer renderer;
    QVERIFY(renderer.load(svg));
    QImage drawn(1920, 1080, QImage::Format_RGB32);
    drawn.fill(Qt::white);
    QPainter painter(&drawn);
    renderer.render(&painter);
    painter.end();
    QSet<QRgb> colours;
    for (int x = 0; x < drawn.width(); x += 3)
        for (int y = 0; y < drawn.height(); y += 3)
            colours.insert(drawn.pixel(x, y));
    QVERIFY(colours.size() > 20);
    QVERIFY(!exportMoment(folder_.filePath(QStringLiteral("moment.gif")), document_->sketch(),
                          document_->analysis(), moment, {})
                 .isEmpty());
}

void TestDemonstration::the_sequence_is_numbered()
{
    open("supply-hump");
    const QDir folder(folder_.filePath(QStringLiteral("pictures")));
    QCOMPARE(makeFolder(folder.path()), QStringList());
    QCOMPARE(exportSequence(folder.path(), document_->sketch(), document_->analysis(), shown_, {}, 400),
             QStringList());
    const QStringList names = folder.entryList({QStringLiteral("*.png")}, QDir::Files, QDir::Name);
    QVERIFY(names.size() >= 4);
    for (qsizetype i = 0; i < names.size(); ++i)
        QCOMPARE(names[i], QStringLiteral("moment-%1.png").arg(i + 1, 4, 10, QLatin1Char('0')));
    QVERIFY(!QImage(folder.filePath(names.last())).isNull());
    QVERIFY(!makeFolder(folder.filePath(names.last())).isEmpty());
}

void TestDemonstration::the_handout_has_one_page_with_six_moments()
{
    open("supply-hump");
    QCOMPARE(sixMoments(shown_).size(), std::size_t(6));
    const QString path = folder_.filePath(QStringLiteral("handout.pdf"));
    QCOMPARE(exportHandout(path, document_->sketch(), document_->analysis(), shown_), QStringList());
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray pdf = file.readAll();
    QVERIFY(pdf.startsWith("%PDF-"));
    QCOMPARE(pdf.count("/Type /Page\n"), 1);
}

QTEST_MAIN(TestDemonstration)
#include "test_demonstration.moc"
