#include "app/window/command_search.h"
#include "app/window/file_commands.h"
#include "app/window/first_steps.h"
#include "app/window/gallery.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include "core/sketch/templates.h"

#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QTreeWidget>

#include <set>

using namespace siphonwright;

class TestGuidance : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void a_command_is_found_by_its_words_and_run_by_enter();
    void a_command_that_cannot_run_says_why();
    void every_command_of_the_table_can_be_found();
    void every_engine_and_heater_has_a_picture_of_its_own();
    void an_engine_is_chosen_by_its_picture_with_the_keyboard();
    void a_heater_is_placed_from_its_picture();
    void the_first_sketch_leads_to_a_saved_file();
    void a_step_is_skipped_and_the_strip_left_and_begun_again();
    void the_first_start_offers_the_first_sketch_once();
    void a_first_drawing_has_the_units_of_the_locale_data();
    void a_first_drawing_has_the_units_of_the_locale();

private:
    void trigger(const char* id) { window_->actions()[QLatin1String(id)]->trigger(); }
    template <class T>
    T* shown() const
    {
        for (T* one : window_->findChildren<T*>())
            if (one->isVisible())
                return one;
        return nullptr;
    }
    FirstSteps* strip() const { return window_->findChild<FirstSteps*>(); }
    QString sentence() const
    {
        return strip()->findChild<QLabel*>(QStringLiteral("first-steps-sentence"))->text();
    }
    template <class T>
    void press(const char* name)
    {
        QTest::mouseClick(window_->findChild<T*>(QLatin1String(name)), Qt::LeftButton);
    }
    void chooseFirstPicture()
    {
        QTRY_VERIFY(shown<TemplateGallery>());
        QTest::keyClick(shown<TemplateGallery>()->findChild<QListWidget*>(), Qt::Key_Return);
        QTRY_VERIFY(!shown<TemplateGallery>());
    }
    void again()
    {
        window_.reset();
        window_ = std::make_unique<MainWindow>();
        window_->show();
        QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestGuidance::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestGuidance::init()
{
    QSettings().clear();
    again();
}

void TestGuidance::a_command_is_found_by_its_words_and_run_by_enter()
{
    QTest::keyClick(window_.get(), Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    QTRY_VERIFY(shown<CommandSearch>());
    auto* line = shown<CommandSearch>()->findChild<QLineEdit*>();
    auto* found = shown<CommandSearch>()->findChild<QTreeWidget*>();
    QTest::keyClicks(line, QStringLiteral("contrast"));
    QCOMPARE(found->currentItem()->text(0), QStringLiteral("High contrast"));
    QCOMPARE(found->currentItem()->text(1), QStringLiteral("View › Look"));
    line->clear();
    QTest::keyClicks(line, QStringLiteral("table by bore"));
    QCOMPARE(found->currentItem()->text(2), QStringLiteral("Shift+W"));
    line->clear();
    QTest::keyClicks(line, QStringLiteral("grid"));
    QVERIFY(window_->actions()[QStringLiteral("grid")]->isChecked());
    QTest::keyClick(line, Qt::Key_Return);
    QTRY_VERIFY(!window_->actions()[QStringLiteral("grid")]->isChecked());
    QTRY_VERIFY(!shown<CommandSearch>());
}

void TestGuidance::a_command_that_cannot_run_says_why()
{
    window_->files().startNew();
    trigger("find-command");
    auto* search = shown<CommandSearch>();
    QVERIFY(search);
    auto* line = search->findChild<QLineEdit*>();
    QTest::keyClicks(line, QStringLiteral("delete"));
    QCOMPARE(search->findChild<QTreeWidget*>()->currentItem()->text(1),
             QStringLiteral("not now: nothing is selected"));
    QTest::keyClick(line, Qt::Key_Return);
    QVERIFY(search->isVisible());
    QVERIFY(search->findChild<QLabel*>()->text().contains(QStringLiteral("nothing is selected")));
    line->setText(QStringLiteral("no such words at all"));
    QCOMPARE(search->findChild<QTreeWidget*>()->topLevelItemCount(), 0);
    QTest::keyClick(line, Qt::Key_Return);
    QTest::keyClick(line, Qt::Key_Escape);
    QTRY_VERIFY(!shown<CommandSearch>());
}

void TestGuidance::every_command_of_the_table_can_be_found()
{
    trigger("find-command");
    std::set<QString> listed;
    auto* found = shown<CommandSearch>()->findChild<QTreeWidget*>();
    for (int i = 0; i < found->topLevelItemCount(); ++i)
        listed.insert(found->topLevelItem(i)->text(0));
    for (const QString& id : window_->actions().ids()) {
        QString words = window_->actions()[id]->text();
        words.remove(QLatin1Char('&')).remove(QStringLiteral("…"));
        QVERIFY2(listed.count(words) == 1 || id == QLatin1String("find-command"), qPrintable(words));
    }
    QVERIFY(listed.count(QStringLiteral("Run profile")) == 1); // a panel
}

void TestGuidance::every_engine_and_heater_has_a_picture_of_its_own()
{
    std::vector<Sketch> sketches;
    for (const EngineTemplate& engine : engineTemplates())
        sketches.push_back(sketchOf(engine));
    for (const HeaterTemplate& heater : heaterTemplates())
        sketches.push_back(sketchOf(heater));
    for (const drawing::Look look : {drawing::Look::light, drawing::Look::dark, drawing::Look::contrast}) {
        std::set<QByteArray> seen;
        const QColor ground = drawing::paletteOf(look).ground;
        for (const Sketch& sketch : sketches) {
            const QImage drawn = pictureOf(sketch, {210, 150}, 0.1, 1, look).toImage();
            int ink = 0;
            for (int y = 0; y < drawn.height(); ++y)
                for (int x = 0; x < drawn.width(); ++x)
                    ink += drawn.pixelColor(x, y) != ground;
            QVERIFY2(ink > 100, qPrintable(QString::number(ink)));
            seen.insert(QByteArray(reinterpret_cast<const char*>(drawn.constBits()), drawn.sizeInBytes()));
        }
        QVERIFY(seen.size() + 1 >= sketches.size()); // two heaters may differ in power alone
    }
    for (const EngineTemplate& engine : engineTemplates())
        QVERIFY(captionOf(engine, UnitSystem::metric).contains(QStringLiteral(" l"), Qt::CaseInsensitive));
    for (const HeaterTemplate& heater : heaterTemplates())
        QVERIFY(captionOf(heater, UnitSystem::inch).contains(QStringLiteral("W, ")));
}

void TestGuidance::an_engine_is_chosen_by_its_picture_with_the_keyboard()
{
    trigger("new-from-template");
    QTRY_VERIFY(shown<TemplateGallery>());
    auto* list = shown<TemplateGallery>()->findChild<QListWidget*>();
    QCOMPARE(list->count(), int(engineTemplates().size()));
    QVERIFY(list->hasFocus() || !shown<TemplateGallery>()->isActiveWindow());
    QTest::keyClick(list, Qt::Key_Right);
    QTest::keyClick(list, Qt::Key_Return);
    QTRY_VERIFY(!shown<TemplateGallery>());
    QVERIFY(window_->document().sketch().engine);
    QCOMPARE(window_->document().sketch().engine->arrangement, engineTemplates()[1].engine.arrangement);
    QVERIFY(!window_->isWindowModified());
}

void TestGuidance::a_heater_is_placed_from_its_picture()
{
    window_->files().startFromTemplate("in-line-4");
    trigger("insert-heater");
    QTRY_VERIFY(shown<TemplateGallery>());
    auto* list = shown<TemplateGallery>()->findChild<QListWidget*>();
    list->setCurrentRow(2);
    QTest::keyClick(list, Qt::Key_Return);
    QCOMPARE(window_->document().sketch().heaters.size(), std::size_t(1));
    QCOMPARE(window_->document().sketch().heaters.front().power_W.value,
             heaterTemplates()[2].heater.power_W.value);
    trigger("insert-heater");
    QTRY_VERIFY(shown<TemplateGallery>());
    QTest::keyClick(shown<TemplateGallery>(), Qt::Key_Escape);
    QCOMPARE(window_->document().sketch().heaters.size(), std::size_t(1));
}

void TestGuidance::the_first_sketch_leads_to_a_saved_file()
{
    window_->files().startNew();
    QVERIFY(strip()->isVisible());
    QVERIFY(sentence().contains(QStringLiteral("engine")));
    press<QPushButton>("first-steps-do");
    chooseFirstPicture(); // with its ports, so that the heater is next
    QVERIFY2(sentence().contains(QStringLiteral("heater")), qPrintable(sentence()));
    press<QPushButton>("first-steps-do");
    chooseFirstPicture();
    QVERIFY2(sentence().contains(QStringLiteral("supply hose")), qPrintable(sentence()));
    press<QPushButton>("first-steps-do");
    QCOMPARE(window_->view().tool(), ToolKind::supply_hose);
    trigger("insert-supply-hose");
    QVERIFY2(sentence().contains(QStringLiteral("return hose")), qPrintable(sentence()));
    trigger("insert-return-hose");
    QVERIFY2(sentence().contains(QStringLiteral("isolation valve")), qPrintable(sentence()));
    press<QPushButton>("first-steps-do");
    QCOMPARE(window_->view().tool(), ToolKind::valve);
    for (const Shared<Hose>& hose : std::vector<Shared<Hose>>(window_->document().sketch().hoses)) {
        window_->selection().select({PartKind::hose, hose->id, 0});
        window_->view().setTool(ToolKind::select); // as the tool itself does when its valve is in
        trigger("insert-valve");
        // The next hose wants one too, after the last the tool stays away.
        const bool last = hose->id == window_->document().sketch().hoses.back()->id;
        QTRY_COMPARE(window_->view().tool(), last ? ToolKind::select : ToolKind::valve);
    }
    QVERIFY2(sentence().contains(QStringLiteral("findings")), qPrintable(sentence()));
    press<QPushButton>("first-steps-do");
    QCOMPARE(window_->selection().finding(), 0);
    // The step stays until what stops the job or warns is cured; here it is skipped.
    QVERIFY(window_->document().analysis().count(Severity::caution) > 0);
    QVERIFY2(sentence().contains(QStringLiteral("findings")), qPrintable(sentence()));
    press<QPushButton>("first-steps-skip");
    QVERIFY2(sentence().contains(QStringLiteral("Save")), qPrintable(sentence()));
    press<QPushButton>("first-steps-do");
    QTRY_VERIFY(shown<QFileDialog>());
    shown<QFileDialog>()->reject();
    QCOMPARE(window_->document().save(folder_.filePath(QStringLiteral("first.siphon"))), QStringList());
    QVERIFY2(sentence().contains(QStringLiteral("whole sketch")), qPrintable(sentence()));
    // A hose taken away is a step to do again.
    window_->document().undoStack().undo();
    window_->document().undoStack().undo();
    QVERIFY2(sentence().contains(QStringLiteral("isolation valve")), qPrintable(sentence()));
}

void TestGuidance::a_step_is_skipped_and_the_strip_left_and_begun_again()
{
    window_->files().startNew();
    const QString first = sentence();
    press<QPushButton>("first-steps-skip");
    QVERIFY(sentence() != first);
    QVERIFY(
        !strip()->findChild<QPushButton*>(QStringLiteral("first-steps-do"))->isEnabled()); // no engine yet
    press<QToolButton>("first-steps-close");
    QVERIFY(!strip()->isVisible());
    window_->files().startNew();
    QVERIFY(!strip()->isVisible()); // who has left it is not asked again
    trigger("first-steps");
    QVERIFY(strip()->isVisible());
    QCOMPARE(sentence(), first);
    // Also beside a drawing whose loop is drawn: only what is left to do comes.
    window_->files().open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon"));
    QVERIFY(!strip()->isVisible());
    trigger("first-steps");
    QVERIFY(strip()->isVisible());
    QVERIFY(sentence() != first);
}

void TestGuidance::the_first_start_offers_the_first_sketch_once()
{
    window_->files().startWelcome();
    QVERIFY(strip()->isVisible());
    QVERIFY(sentence().contains(QStringLiteral("works")));
    press<QPushButton>("first-steps-do");
    QVERIFY(!window_->document().sketch().engine);
    QVERIFY(sentence().contains(QStringLiteral("Place an engine")));
    press<QToolButton>("first-steps-close");
    again();
    window_->files().startWelcome();
    QVERIFY(!strip()->isVisible());
}

void TestGuidance::a_first_drawing_has_the_units_of_the_locale_data()
{
    QTest::addColumn<QLocale>("locale");
    QTest::addColumn<bool>("inch");
    QTest::newRow("United States") << QLocale(QLocale::English, QLocale::UnitedStates) << true;
    QTest::newRow("Canada") << QLocale(QLocale::English, QLocale::Canada) << false;
    QTest::newRow("Germany") << QLocale(QLocale::German, QLocale::Germany) << false;
    QTest::newRow("United Kingdom") << QLocale(QLocale::English, QLocale::UnitedKingdom) << false;
}

void TestGuidance::a_first_drawing_has_the_units_of_the_locale()
{
    QFETCH(QLocale, locale);
    QFETCH(bool, inch);
    const QLocale before;
    QLocale::setDefault(locale);
    window_->files().startWelcome();
    QLocale::setDefault(before);
    QCOMPARE(window_->document().sketch().units == UnitChoice::inch, inch);
    QVERIFY(!window_->document().isModified());
    // Whoever chose otherwise keeps it.
    trigger(inch ? "metric" : "inch");
    again();
    QLocale::setDefault(locale);
    window_->files().startWelcome();
    QLocale::setDefault(before);
    QCOMPARE(window_->document().sketch().units == UnitChoice::inch, !inch);
}

QTEST_MAIN(TestGuidance)
#include "test_guidance.moc"
