#include "tests/near.h"
#include "tests/sound_loop.h"

#include "app/window/edit_commands.h"
#include "app/window/find_bar.h"
#include "app/window/main_window.h"
#include "app/window/shelf.h"

#include <QClipboard>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Sketch named()
{
    Sketch sketch = soundLoop();
    sketch.heaters[0].name = "Tank heater";
    sketch.hoses[supply_hose].edit([](Hose& hose) { hose.name = "Supply hose"; });
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.name = "Return hose"; });
    return sketch;
}

const PartRef heater{PartKind::heater, "heater-1", 0};

} // namespace

class TestEditCommands : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void aPartIsFoundByItsNameAndBroughtToTheMiddle();
    void whatMatchesIsGoneThroughWithArrows();
    void findingNothingIsSaidAndEscapeGoesBack();
    void keysInTheFindBarDoNotReachTheDrawing();
    void enterOnTheDrawingGoesIntoTheDetails();
    void renamingGoesToTheName();
    void theMenuOfAHeaterHasWhatSuitsOne();
    void theMenuOfAValveOpensAndClosesIt();
    void theMenuOfSeveralLinesThemUp();
    void theMenuKeyOpensTheMenuAtThePart_data();
    void theMenuKeyOpensTheMenuAtThePart();
    void copyAndPasteGoFromWindowToWindow();
    void badClipboardDataIsToldInWords();
    void theShelfPutsAPartDownWithEnter();
    void aNameTypedIsNotTakenForAShortcut();
    void theDetailsSayHowManyAreSelected();

private:
    void trigger(const char* id) { window_->actions()[QLatin1String(id)]->trigger(); }
    QMenu* menu() const { return window_->findChild<QMenu*>(QStringLiteral("part-menu")); }
    QStringList openMenu()
    {
        delete menu();
        QContextMenuEvent event(QContextMenuEvent::Keyboard, QPoint(), QPoint());
        QCoreApplication::sendEvent(&window_->view(), &event);
        QStringList ids;
        for (const QAction* action : menu()->actions())
            if (!action->objectName().isEmpty())
                ids << action->objectName();
        return ids;
    }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
};

void TestEditCommands::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestEditCommands::init()
{
    QSettings().clear();
    window_ = std::make_unique<MainWindow>();
    window_->document().reset(named());
    window_->show();
    window_->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(window_.get()));
    window_->view().setFocus();
}

void TestEditCommands::aPartIsFoundByItsNameAndBroughtToTheMiddle()
{
    trigger("find");
    FindBar& bar = window_->edits().findBar();
    QVERIFY(bar.isVisible() && bar.line().hasFocus());
    QTest::keyClicks(&bar.line(), QStringLiteral("return point"));
    QCOMPARE(bar.list().count(), 1);
    QCOMPARE(bar.list().item(0)->text(), QStringLiteral("Return hose, point 1"));
    QTest::keyClick(&bar.line(), Qt::Key_Return);
    QVERIFY(!bar.isVisible());
    QVERIFY((window_->selection().part() == PartRef{PartKind::hose_point, "hose-2", 0}));
    const QPointF at = window_->view().toScreen({1030, 690});
    VERIFY_NEAR(at.x(), (window_->view().width() + 26) / 2.0, 1);
    VERIFY_NEAR(at.y(), (window_->view().height() + 26) / 2.0, 1);
    QVERIFY(window_->view().hasFocus());
}

void TestEditCommands::whatMatchesIsGoneThroughWithArrows()
{
    trigger("find");
    FindBar& bar = window_->edits().findBar();
    QTest::keyClicks(&bar.line(), QStringLiteral("valve"));
    // One in each hose.
    QCOMPARE(bar.list().count(), 2);
    QTest::keyClick(&bar.line(), Qt::Key_Down);
    QTest::keyClick(&bar.line(), Qt::Key_Return);
    QVERIFY((window_->selection().part() == PartRef{PartKind::inline_part, "hose-2", 0}));
}

void TestEditCommands::findingNothingIsSaidAndEscapeGoesBack()
{
    window_->selection().select(heater);
    trigger("find");
    FindBar& bar = window_->edits().findBar();
    QTest::keyClicks(&bar.line(), QStringLiteral("chimney"));
    QCOMPARE(bar.list().count(), 0);
    QTest::keyClick(&bar.line(), Qt::Key_Return);
    QVERIFY(bar.isVisible());
    QTest::keyClick(&bar.line(), Qt::Key_Escape);
    QVERIFY(!bar.isVisible());
    QVERIFY(window_->view().hasFocus());
    QVERIFY(window_->selection().part() == heater);
}

void TestEditCommands::keysInTheFindBarDoNotReachTheDrawing()
{
    window_->selection().select(heater);
    trigger("find");
    FindBar& bar = window_->edits().findBar();
    for (const Qt::Key key : {Qt::Key_Up, Qt::Key_Delete, Qt::Key_Left, Qt::Key_Insert})
        QTest::keyClick(&bar.line(), key);
    QTest::keyClick(&bar.line(), Qt::Key_Tab);
    QVERIFY(bar.list().hasFocus());
    QTest::keyClick(&bar.list(), Qt::Key_Tab);
    QVERIFY(bar.line().hasFocus());
    QTest::mouseClick(&bar, Qt::LeftButton, {}, QPoint(2, 2));
    QVERIFY(window_->document().sketch() == named());
    QVERIFY(window_->selection().part() == heater);
}

void TestEditCommands::enterOnTheDrawingGoesIntoTheDetails()
{
    auto* dock = window_->findChild<QDockWidget*>(QStringLiteral("details"));
    for (const PartRef& part : {heater, PartRef{PartKind::engine, {}, 0}}) {
        window_->view().setFocus();
        window_->selection().select(part);
        dock->hide();
        QTest::keyClick(&window_->view(), Qt::Key_Return);
        QVERIFY(dock->isVisible());
        QVERIFY(dock->isAncestorOf(QApplication::focusWidget()));
    }
    trigger("go-to-drawing");
    QVERIFY(window_->view().hasFocus());
}

void TestEditCommands::renamingGoesToTheName()
{
    window_->selection().select(heater);
    trigger("rename");
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    QVERIFY(line);
    QCOMPARE(line->selectedText(), QStringLiteral("Tank heater"));
    QTest::keyClicks(line, QStringLiteral("Left heater"));
    QTest::keyClick(line, Qt::Key_Return);
    QCOMPARE(window_->document().sketch().heaters[0].name, std::string("Left heater"));
}

void TestEditCommands::theMenuOfAHeaterHasWhatSuitsOne()
{
    window_->selection().select(heater);
    const QStringList ids = openMenu();
    for (const char* id : {"details", "rename", "turn", "duplicate", "copy", "delete", "fit-selection"})
        QVERIFY2(ids.contains(QLatin1String(id)), id);
    for (const char* id : {"valve-here", "open-or-close", "align-left", "corners"})
        QVERIFY2(!ids.contains(QLatin1String(id)), id);
    window_->selection().select({});
    const QStringList ground = openMenu();
    QVERIFY(ground.contains(QStringLiteral("paste")) && ground.contains(QStringLiteral("heater")));
    QVERIFY(!ground.contains(QStringLiteral("delete")));
}

void TestEditCommands::theMenuOfAValveOpensAndClosesIt()
{
    window_->selection().select({PartKind::inline_part, "hose-1", 0});
    const QStringList ids = openMenu();
    QVERIFY(ids.contains(QStringLiteral("open-or-close")) && ids.contains(QStringLiteral("point-here")));
    trigger("open-or-close");
    QVERIFY(!window_->document().sketch().hoses[supply_hose]->parts[0].open);
}

void TestEditCommands::theMenuOfSeveralLinesThemUp()
{
    window_->selection().selectAll({heater, {PartKind::hose_point, "hose-1", 0}});
    openMenu();
    const auto sub_menus = menu()->findChildren<QMenu*>();
    QCOMPARE(sub_menus.size(), 1);
    QVERIFY(sub_menus[0]->actions().contains(window_->actions()[QStringLiteral("align-left")]));
    QVERIFY(window_->actions()[QStringLiteral("align-left")]->isEnabled());
    QVERIFY(!window_->actions()[QStringLiteral("spread-x")]->isEnabled());
    trigger("align-left");
    QCOMPARE(window_->document().undoStack().count(), 1);
}

void TestEditCommands::theMenuKeyOpensTheMenuAtThePart_data()
{
    QTest::addColumn<int>("key");
    QTest::addColumn<int>("modifiers");
    QTest::newRow("the menu key") << int(Qt::Key_Menu) << int(Qt::NoModifier);
    QTest::newRow("Shift and F10") << int(Qt::Key_F10) << int(Qt::ShiftModifier);
}

void TestEditCommands::theMenuKeyOpensTheMenuAtThePart()
{
    QFETCH(int, key);
    QFETCH(int, modifiers);
    window_->selection().select(heater);
    QTest::keyClick(&window_->view(), Qt::Key(key), Qt::KeyboardModifiers(modifiers));
    QVERIFY(menu() && menu()->isVisible());
    const QPointF at = window_->view().toScreen({1030, 80});
    const QPoint wanted = window_->view().mapToGlobal(at.toPoint());
    QVERIFY((menu()->pos() - wanted).manhattanLength() < 400); // pushed aside at most by the screen's edge
    QVERIFY(menu()->activeAction());
    QCOMPARE(window_->findChildren<QMenu*>(QStringLiteral("part-menu")).size(), 1);
}

void TestEditCommands::copyAndPasteGoFromWindowToWindow()
{
    window_->selection().selectAll({heater, {PartKind::hose, "hose-2", 0}});
    trigger("copy");
    MainWindow other;
    other.document().reset(Sketch());
    other.actions()[QStringLiteral("paste")]->trigger();
    QCOMPARE(other.document().sketch().heaters.size(), std::size_t(1));
    QCOMPARE(other.document().sketch().heaters[0].name, std::string("Tank heater"));
    QCOMPARE(other.document().sketch().hoses[0]->from.heater, Id("heater-1"));
    trigger("duplicate");
    QCOMPARE(window_->document().sketch().heaters[1].name, std::string("Tank heater 2"));
}

void TestEditCommands::badClipboardDataIsToldInWords()
{
    auto* data = new QMimeData;
    data->setData(QStringLiteral("application/vnd.siphonwright.parts+json"), "{\"format\": 3}");
    QGuiApplication::clipboard()->setMimeData(data);
    trigger("paste");
    auto* box = window_->findChild<QMessageBox*>();
    QTRY_VERIFY(box && box->isVisible());
    QVERIFY(box->text().contains(QStringLiteral("clipboard")));
    box->close();
    QVERIFY(window_->document().sketch() == named());
}

void TestEditCommands::theShelfPutsAPartDownWithEnter()
{
    trigger("shelf");
    auto* shelf = window_->findChild<Shelf*>();
    QVERIFY(shelf && shelf->isVisible() && shelf->hasFocus());
    const QList<QListWidgetItem*> areas =
        shelf->findItems(QStringLiteral("Keep-clear area"), Qt::MatchExactly);
    QCOMPARE(areas.size(), 1);
    shelf->setCurrentItem(areas[0]);
    QTest::keyClick(shelf, Qt::Key_Return);
    QCOMPARE(window_->document().sketch().areas.size(), std::size_t(1));
    QVERIFY(window_->view().hasFocus());
    for (int row = 0; row < shelf->count(); ++row)
        if (shelf->item(row)->flags() != Qt::NoItemFlags)
            QVERIFY2(!shelf->item(row)->icon().isNull(), qPrintable(shelf->item(row)->text()));
}

void TestEditCommands::aNameTypedIsNotTakenForAShortcut()
{
    window_->selection().select(heater);
    trigger("rename");
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("ml.,jo"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QCOMPARE(window_->document().sketch().heaters[0].name, std::string("ml.,jo"));
    QCOMPARE(window_->document().sketch().heaters[0].tilt_deg, 0.0);
}

void TestEditCommands::theDetailsSayHowManyAreSelected()
{
    window_->selection().selectAll({{PartKind::hose, "hose-1", 0}, {PartKind::hose, "hose-2", 0}, heater});
    auto* title = window_->findChild<QLabel*>(QStringLiteral("details-title"));
    QCOMPARE(title->text(), QStringLiteral("Heater: Tank heater, and 2 more selected"));
}

QTEST_MAIN(TestEditCommands)
#include "test_edit_commands.moc"
