#include "app/assumptions/assumption_window.h"
#include "app/rules/rule_browser.h"
#include "app/window/file_commands.h"
#include "app/window/first_steps.h"
#include "app/window/insertions.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include "core/sketch/templates.h"

#include <QAbstractButton>
#include <QDialog>
#include <QDockWidget>
#include <QFile>
#include <QMessageBox>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>

using namespace siphonwright;

class TestWindow : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void a_drawing_saved_and_opened_again_is_equal();
    void a_bad_file_shows_a_message_and_keeps_the_drawing_data();
    void a_bad_file_shows_a_message_and_keeps_the_drawing();
    void unsaved_work_is_asked_for_before_a_new_drawing();
    void recent_files_are_the_existing_ones_latest_first();
    void units_switch_from_the_menu_and_back_by_undo();
    void a_loop_is_inserted_without_the_mouse();
    void actions_know_when_they_can_be_done();
    void shortcuts_are_unique();
    void the_rules_open_from_the_menu_and_from_a_finding();
    void the_page_on_air_locks_opens_a_lesson_by_a_click();
    void running_figures_and_tint_are_remembered();
    void the_assumptions_open_from_the_menu();
    void the_elevation_stays_large_at_1280_by_720();
    void the_first_steps_go_away_when_the_loop_is_drawn();
    void what_is_not_in_sight_is_built_when_it_is_wanted_data();
    void what_is_not_in_sight_is_built_when_it_is_wanted();

private:
    QString inFolder(const char* name) const { return folder_.filePath(QLatin1String(name)); }
    QMessageBox* box() const { return window_->findChild<QMessageBox*>(); }
    void press(QMessageBox::StandardButton button)
    {
        QTRY_VERIFY(box());
        QMessageBox* shown = box();
        QTest::mouseClick(shown->button(button), Qt::LeftButton);
        QTRY_VERIFY(!box());
    }
    void trigger(const char* id) { window_->actions()[QLatin1String(id)]->trigger(); }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestWindow::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestWindow::init()
{
    QSettings().clear();
    window_ = std::make_unique<MainWindow>();
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
}

void TestWindow::cleanup()
{
    window_.reset();
}

void TestWindow::a_drawing_saved_and_opened_again_is_equal()
{
    window_->files().startFromTemplate("in-line-6");
    QVERIFY(window_->document().sketch().engine);
    window_->document().apply(QStringLiteral("name"), [](Sketch& s) { s.sheet.title = "Bay 4"; });
    QVERIFY(window_->isWindowModified());
    const Sketch drawn = window_->document().sketch();
    QCOMPARE(window_->document().save(inFolder("bay.siphon")), QStringList());
    QVERIFY(!window_->isWindowModified());
    window_->files().startNew();
    QVERIFY(!window_->document().sketch().engine);
    window_->files().open(inFolder("bay.siphon"));
    QCOMPARE(window_->document().sketch(), drawn);
    QVERIFY(window_->windowTitle().startsWith(QStringLiteral("bay.siphon")));
}

void TestWindow::a_bad_file_shows_a_message_and_keeps_the_drawing_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::newRow("empty") << QByteArray();
    QTest::newRow("truncated") << QByteArray("{\"format\":");
    QTest::newRow("not a sketch") << QByteArray("[1, 2]");
    QTest::newRow("not a number") << QByteArray("{\"ground_z_mm\": NaN}");
}

void TestWindow::a_bad_file_shows_a_message_and_keeps_the_drawing()
{
    QFETCH(QByteArray, bytes);
    QFile file(inFolder("bad.siphon"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    window_->files().startFromTemplate("vee-8");
    const Sketch before = window_->document().sketch();
    window_->files().open(file.fileName());
    QTRY_VERIFY(box());
    QVERIFY(box()->text().contains(QStringLiteral("bad.siphon")));
    QVERIFY(!box()->informativeText().isEmpty());
    press(QMessageBox::Ok);
    QCOMPARE(window_->document().sketch(), before);
    QVERIFY(!recentFiles().contains(file.fileName()));
}

void TestWindow::unsaved_work_is_asked_for_before_a_new_drawing()
{
    window_->document().apply(QStringLiteral("note"), [](Sketch& s) { s.notes = "measured twice"; });
    window_->files().startNew();
    press(QMessageBox::Cancel);
    QCOMPARE(window_->document().sketch().notes, std::string("measured twice"));
    window_->close();
    QVERIFY(window_->isVisible());
    press(QMessageBox::Cancel);
    QVERIFY(window_->isVisible());
    window_->files().startNew();
    press(QMessageBox::Discard);
    QVERIFY(window_->document().sketch().notes.empty());
}

void TestWindow::recent_files_are_the_existing_ones_latest_first()
{
    for (const char* name : {"one.siphon", "two.siphon", "three.siphon"}) {
        QCOMPARE(window_->document().save(inFolder(name)), QStringList());
        rememberFile(inFolder(name));
    }
    QVERIFY(QFile::remove(inFolder("two.siphon")));
    QCOMPARE(recentFiles(), QStringList({inFolder("three.siphon"), inFolder("one.siphon")}));
    rememberFile(inFolder("one.siphon"));
    QCOMPARE(recentFiles(), QStringList({inFolder("one.siphon"), inFolder("three.siphon")}));
}

void TestWindow::units_switch_from_the_menu_and_back_by_undo()
{
    window_->files().startNew();
    QCOMPARE(window_->document().sketch().units, UnitChoice::metric);
    trigger("inch");
    QCOMPARE(window_->document().sketch().units, UnitChoice::inch);
    QVERIFY(window_->actions()[QStringLiteral("inch")]->isChecked());
    window_->document().undoStack().undo();
    QCOMPARE(window_->document().sketch().units, UnitChoice::metric);
    QVERIFY(window_->actions()[QStringLiteral("metric")]->isChecked());
}

void TestWindow::a_loop_is_inserted_without_the_mouse()
{
    window_->files().startNew();
    window_->document().apply(QStringLiteral("engine"), [](Sketch& s) {
        insertEngine(s, "in-line-4");
        s.ports.clear();
        insertHeater(s, heaterTemplates().front().id);
    });
    trigger("insert-supply-port");
    trigger("insert-return-port");
    trigger("insert-supply-hose");
    trigger("insert-return-hose");
    const Sketch& sketch = window_->document().sketch();
    QCOMPARE(sketch.hoses.size(), std::size_t(2));
    for (const Shared<Hose>& hose : sketch.hoses) {
        QVERIFY(hose->from.connected());
        QVERIFY(hose->to.connected());
    }
    QCOMPARE(window_->selection().part().kind, PartKind::hose);
    trigger("insert-point");
    QCOMPARE(window_->selection().part().kind, PartKind::hose_point);
    trigger("delete");
    QVERIFY(window_->document().sketch().hoses.back()->points.empty());
}

void TestWindow::actions_know_when_they_can_be_done()
{
    window_->files().startNew();
    QVERIFY(!window_->actions()[QStringLiteral("delete")]->isEnabled());
    QVERIFY(!window_->actions()[QStringLiteral("insert-supply-port")]->isEnabled());
    window_->files().startFromTemplate("in-line-6");
    QVERIFY(window_->actions()[QStringLiteral("insert-supply-port")]->isEnabled());
    window_->selection().select({PartKind::engine, {}, 0});
    QVERIFY(window_->actions()[QStringLiteral("delete")]->isEnabled());
}

void TestWindow::shortcuts_are_unique()
{
    QStringList seen;
    for (const QAction* action : window_->actions().all()) {
        const QString shortcut = action->shortcut().toString();
        QVERIFY2(shortcut.isEmpty() || !seen.contains(shortcut), qPrintable(shortcut));
        seen.append(shortcut);
        QVERIFY(!action->toolTip().isEmpty());
    }
}

void TestWindow::the_page_on_air_locks_opens_a_lesson_by_a_click()
{
    trigger("teaching");
    auto* page = window_->findChild<QTextBrowser*>();
    QVERIFY(page && page->isVisible());
    QVERIFY(page->toPlainText().contains(QStringLiteral("Answer key")));
    Q_EMIT page->anchorClicked(QUrl(QStringLiteral("sample:air-lock-lesson-2")));
    QCOMPARE(QString::fromStdString(window_->document().sketch().sheet.supplementary_title),
             QStringLiteral("Lesson 2: half fixed"));
    trigger("teaching");
    QCOMPARE(window_->findChildren<QTextBrowser*>().size(), 1);
    window_->findChild<QDialog*>(QStringLiteral("teaching"))->close();
}

void TestWindow::the_rules_open_from_the_menu_and_from_a_finding()
{
    const auto browser = [this] { return window_->findChild<rules::RuleBrowser*>(); };
    QVERIFY(!browser());
    trigger("rules");
    QTRY_VERIFY(browser() && browser()->isVisible());
    QVERIFY(!window_->actions()[QStringLiteral("about-rule")]->isEnabled());
    window_->files().open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/above-level.siphon"));
    window_->selection().selectFinding(0);
    QVERIFY(window_->actions()[QStringLiteral("about-rule")]->isEnabled());
    trigger("about-rule");
    QCOMPARE(browser()->currentRule(),
             QString::fromStdString(window_->document().analysis().findings.front().rule));
    browser()->close();
    trigger("rules");
    QVERIFY(browser()->isVisible());
}

void TestWindow::running_figures_and_tint_are_remembered()
{
    const auto& actions = window_->actions();
    QVERIFY(actions[QStringLiteral("running-figures")]->isChecked());
    QVERIFY(!actions[QStringLiteral("tint-hoses")]->isChecked());
    trigger("running-figures");
    trigger("tint-hoses");
    window_ = std::make_unique<MainWindow>();
    QVERIFY(!window_->actions()[QStringLiteral("running-figures")]->isChecked());
    QVERIFY(window_->actions()[QStringLiteral("tint-hoses")]->isChecked());
}

void TestWindow::the_assumptions_open_from_the_menu()
{
    trigger("assumptions");
    auto* assumptions = window_->findChild<assumptions::AssumptionWindow*>();
    QVERIFY(assumptions && assumptions->isVisible());
    trigger("assumptions");
    QCOMPARE(window_->findChildren<assumptions::AssumptionWindow*>().size(), 1);
}

void TestWindow::the_elevation_stays_large_at_1280_by_720()
{
    window_->resize(1280, 720);
    window_->files().startFromTemplate("in-line-6");
    QTest::qWait(50);
    QVERIFY2(window_->view().width() >= 900, qPrintable(QString::number(window_->view().width())));
    QVERIFY2(window_->view().height() >= 440, qPrintable(QString::number(window_->view().height())));
    QCOMPARE_LE(window_->findChild<QDockWidget*>(QStringLiteral("findings"))->width(), 350);
}

void TestWindow::the_first_steps_go_away_when_the_loop_is_drawn()
{
    window_->files().startNew();
    auto* steps = window_->findChild<FirstSteps*>();
    QVERIFY(steps->isVisible());
    window_->files().open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon"));
    QTRY_VERIFY(!steps->isVisible()); // a file is read beside the window
    window_->files().startNew();
    QVERIFY(steps->isVisible());
}

void TestWindow::what_is_not_in_sight_is_built_when_it_is_wanted_data()
{
    QTest::addColumn<QString>("action");
    QTest::addColumn<QString>("dock");
    QTest::addColumn<QString>("part"); // of what is built
    QTest::newRow("size") << "sizing"
                          << "sizing"
                          << "sizing-subjects";
    QTest::newRow("by bore") << "by-bore"
                             << "by-bore"
                             << "bore-table";
    QTest::newRow("on grades") << "on-grades"
                               << "on-grades"
                               << "grade-table";
    QTest::newRow("layouts") << "propose-layouts"
                             << "layouts"
                             << "layout-propose";
    QTest::newRow("commissioning") << "commissioning"
                                   << "commissioning"
                                   << "commissioning-tab-0";
}

/// So that a start pays for what is seen alone; by the menu, by the tab, and where the window was left so.
void TestWindow::what_is_not_in_sight_is_built_when_it_is_wanted()
{
    QFETCH(QString, action);
    QFETCH(QString, dock);
    QFETCH(QString, part);
    const auto built = [&] { return window_->findChild<QWidget*>(part); };
    QTest::qWait(100);
    QVERIFY(!built());
    trigger(action.toLatin1().constData());
    QTRY_VERIFY(built() && built()->isVisible());
    window_->close();

    window_ = std::make_unique<MainWindow>();
    window_->show();
    QTRY_VERIFY(built() && built()->isVisible());
    QSettings().clear();

    window_ = std::make_unique<MainWindow>();
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    QVERIFY(!built());
    auto* place = window_->findChild<QDockWidget*>(dock);
    place->show();
    place->raise();
    QTRY_VERIFY(built() && built()->isVisible());
}

QTEST_MAIN(TestWindow)
#include "test_window.moc"
