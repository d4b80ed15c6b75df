#include "app/demonstration/votes.h"
#include "app/window/demonstration_commands.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include <QDockWidget>
#include <QLabel>
#include <QMenuBar>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

using namespace siphonwright;
using namespace siphonwright::demonstration;

/// A presenter at the real window.
class TestDemonstrating : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void the_keys_play_step_and_leave();
    void findings_are_hidden_until_asked_for();
    void hands_are_counted_before_it_is_revealed();
    void the_full_screen_clears_the_stage_and_escape_brings_it_back();
    void a_second_drawing_follows_the_same_clock();
    void dragging_the_hump_away_while_it_plays_makes_it_circulate();

private:
    QString sample(const char* name) const
    {
        return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name));
    }
    QAction* action(const char* id) { return window_->actions()[QLatin1String(id)]; }
    Player& player() { return window_->demonstration().player(); }
    DemonstrationBar& bar() { return window_->demonstration().bar(); }
    void key(Qt::Key key) { QTest::keyClick(&window_->view(), key); }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestDemonstrating::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestDemonstrating::init()
{
    QSettings().clear();
    window_ = std::make_unique<MainWindow>();
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    QCOMPARE(window_->document().open(sample("supply-hump")), QStringList());
}

void TestDemonstrating::the_keys_play_step_and_leave()
{
    QVERIFY(!action("demo-findings")->isEnabled());
    action("demonstrate")->trigger();
    QVERIFY(bar().isVisible());
    QVERIFY(action("demo-findings")->isEnabled());
    const std::string was = window_->document().sketch().notes;
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    QCOMPARE(player().index(), std::size_t(2));
    key(Qt::Key_Left);
    QCOMPARE(player().index(), std::size_t(1));
    key(Qt::Key_PageDown);
    QVERIFY(player().index() > 1);
    QVERIFY(player().moment()->event);
    key(Qt::Key_Space);
    QVERIFY(player().playing());
    key(Qt::Key_Space);
    QVERIFY(!player().playing());
    key(Qt::Key_Home);
    QCOMPARE(player().index(), std::size_t(0));
    key(Qt::Key_H);
    QVERIFY(bar().findingsHidden());
    QCOMPARE(window_->view().tool(), ToolKind::select); // H is the heater's key otherwise
    key(Qt::Key_Escape);
    QVERIFY(!bar().isVisible());
    QVERIFY(!player().active());
    QVERIFY(!window_->document().isModified());
}

void TestDemonstrating::findings_are_hidden_until_asked_for()
{
    auto* findings = window_->findChild<QDockWidget*>(QStringLiteral("findings"));
    QVERIFY(findings->isVisible());
    action("demonstrate")->trigger();
    const QImage open = window_->view().grab().toImage();
    action("demo-findings")->trigger();
    QVERIFY(!findings->isVisible());
    QVERIFY(action("demo-findings")->isChecked());
    QVERIFY(window_->view().grab().toImage() != open);
    action("demo-findings")->trigger();
    QVERIFY(findings->isVisible());
    action("demo-findings")->trigger();
    action("demonstrate")->trigger(); // leaving brings all back
    QVERIFY(findings->isVisible());
}

void TestDemonstrating::hands_are_counted_before_it_is_revealed()
{
    action("demonstrate")->trigger();
    action("demo-findings")->trigger();
    action("demo-ask")->trigger();
    Votes& votes = bar().votes();
    QVERIFY(votes.isVisible());
    const auto press = [&](const char* id) {
        QTest::mouseClick(votes.findChild<QAbstractButton*>(QLatin1String(id)), Qt::LeftButton);
    };
    for (const char* id : {"yes-more", "yes-more", "no-more", "yes-less", "no-less", "no-less"})
        press(id);
    QCOMPARE(votes.yes(), 1);
    QCOMPARE(votes.no(), 0);
    auto* answer = votes.findChild<QLabel*>(QStringLiteral("votes-answer"));
    QVERIFY(answer->text().isEmpty());
    press("votes-reveal");
    QVERIFY(answer->text().contains(QStringLiteral("irculate")));
    QVERIFY(!bar().findingsHidden());
}

void TestDemonstrating::the_full_screen_clears_the_stage_and_escape_brings_it_back()
{
    action("demonstrate")->trigger();
    auto* words = bar().findChild<QLabel*>(QStringLiteral("demonstration-words"));
    const int height = QFontMetrics(words->font()).height();
    action("demo-full-screen")->trigger();
    QVERIFY(window_->isFullScreen());
    QVERIFY(!window_->menuBar()->isVisible());
    QVERIFY(!window_->findChild<QDockWidget*>(QStringLiteral("details"))->isVisible());
    QVERIFY(QFontMetrics(words->font()).height() > 1.5 * height);
    key(Qt::Key_Escape);
    QVERIFY(!window_->isFullScreen());
    QVERIFY(window_->menuBar()->isVisible());
    QVERIFY(window_->findChild<QDockWidget*>(QStringLiteral("details"))->isVisible());
    QVERIFY(player().active());
    key(Qt::Key_Escape);
    QVERIFY(!player().active());
}

void TestDemonstrating::a_second_drawing_follows_the_same_clock()
{
    action("demonstrate")->trigger();
    window_->demonstration().openBeside(sample("sound-bus"));
    Beside* beside = window_->demonstration().beside();
    QVERIFY(beside && beside->isVisible());
    player().goTo(player().demonstration().momentAt({PhaseKind::energised, 0, 1800}));
    QCOMPARE(beside->moment()->phase, PhaseKind::energised);
    QCOMPARE(beside->moment()->clock_s, player().moment()->clock_s);
    player().toStart();
    QCOMPARE(beside->moment()->phase, PhaseKind::fill);
    // It shows what the first one shows: findings and verdict, unless they are hidden.
    auto* verdict = beside->findChild<QLabel*>(QStringLiteral("beside-verdict"));
    QVERIFY(verdict && verdict->isVisible());
    QVERIFY2(verdict->text().startsWith(QStringLiteral("It circulates")), qPrintable(verdict->text()));
    action("demo-findings")->trigger();
    QVERIFY(!verdict->isVisible());
    action("demo-findings")->trigger();
    QVERIFY(verdict->isVisible());
    action("demonstrate")->trigger();
    QVERIFY(!window_->demonstration().beside());
}

void TestDemonstrating::dragging_the_hump_away_while_it_plays_makes_it_circulate()
{
    action("demonstrate")->trigger();
    player().goTo(player().demonstration().momentAt({PhaseKind::energised, 0, 7200}));
    const Place before = player().demonstration().placeOf(player().index());
    Document fixed;
    QCOMPARE(fixed.open(sample("sound-bus")), QStringList());
    window_->document().apply(QStringLiteral("Fix"), [&](Sketch& sketch) { sketch = fixed.sketch(); });
    QTRY_VERIFY(player().demonstration().circulates);
    const Place after = player().demonstration().placeOf(player().index());
    QCOMPARE(after.phase, before.phase);
    QCOMPARE(after.clock_s, before.clock_s);
    QVERIFY(player().moment()->contents.loops.front().flow > 0);
}

QTEST_MAIN(TestDemonstrating)
#include "test_demonstrating.moc"
