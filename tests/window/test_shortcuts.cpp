#include "app/window/keys.h"
#include "app/window/main_window.h"
#include "app/window/shortcuts_window.h"

#include <QKeySequenceEdit>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace siphonwright;

class TestShortcuts : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void a_key_is_changed_kept_and_put_back();
    void a_taken_key_is_named_and_goes_over_only_when_told();
    void a_key_of_the_drawing_is_refused();
    void all_keys_go_back_to_default_after_a_question();
    void no_two_commands_ever_share_a_key();
    void a_kept_key_goes_before_a_later_standard();

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
    template <class T>
    void press(const char* name)
    {
        QTest::mouseClick(window_->findChild<T*>(QLatin1String(name)), Qt::LeftButton);
    }
    ShortcutsWindow* openShortcuts(const char* id)
    {
        trigger("shortcuts");
        auto* window = shown<ShortcutsWindow>();
        if (window)
            window->choose(QLatin1String(id));
        return window;
    }
    static void type(ShortcutsWindow& window, const char* keys)
    {
        window.findChild<QKeySequenceEdit*>()->setKeySequence(QKeySequence(QLatin1String(keys)));
    }
    static QString messageOf(const ShortcutsWindow& window)
    {
        return window.findChild<QLabel*>(QStringLiteral("shortcut-message"))->text();
    }
    QKeySequence keyOf(const char* id) { return window_->actions()[QLatin1String(id)]->shortcut(); }
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

void TestShortcuts::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestShortcuts::init()
{
    QSettings().clear();
    again();
}

void TestShortcuts::a_key_is_changed_kept_and_put_back()
{
    auto* window = openShortcuts("rules");
    QVERIFY(window);
    type(*window, "Ctrl+Alt+B");
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+Alt+B")));
    QVERIFY(window_->actions()[QStringLiteral("rules")]->toolTip().contains(QStringLiteral("Ctrl+Alt+B")));
    again();
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+Alt+B")));
    QVERIFY(!window_->keys().isStandard(QStringLiteral("rules")));
    window = openShortcuts("rules");
    for (QPushButton* button : window->findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("&Back to default"))
            QTest::mouseClick(button, Qt::LeftButton);
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+R")));
    again();
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+R")));
}

void TestShortcuts::a_taken_key_is_named_and_goes_over_only_when_told()
{
    auto* window = openShortcuts("rules");
    type(*window, "Ctrl+K");
    QVERIFY2(messageOf(*window).contains(QStringLiteral("Keep this curve")), qPrintable(messageOf(*window)));
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+R")));
    QCOMPARE(keyOf("keep-curve"), QKeySequence(QStringLiteral("Ctrl+K")));
    press<QPushButton>("take-keys");
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+K")));
    QVERIFY(keyOf("keep-curve").isEmpty());
    again();
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+K")));
    QVERIFY(keyOf("keep-curve").isEmpty());
}

void TestShortcuts::a_key_of_the_drawing_is_refused()
{
    auto* window = openShortcuts("rules");
    for (const char* key : {"Esc", "Space", "Left", "Shift+Up", "Return"}) {
        type(*window, key);
        QVERIFY2(messageOf(*window).contains(QStringLiteral("belongs to the drawing")), key);
        QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+R")));
    }
    QVERIFY(!Keys::isOfDrawing(QKeySequence(QStringLiteral("Ctrl+Left"))));
}

void TestShortcuts::all_keys_go_back_to_default_after_a_question()
{
    window_->keys().take(QStringLiteral("rules"), QKeySequence(QStringLiteral("Ctrl+K")));
    window_->keys().give(QStringLiteral("save"), {});
    QVERIFY(keyOf("save").isEmpty());
    auto* window = openShortcuts("save");
    const auto ask = [&] {
        for (QPushButton* button : window->findChildren<QPushButton*>())
            if (button->text().startsWith(QStringLiteral("&All back")))
                QTest::mouseClick(button, Qt::LeftButton);
        return window->findChild<QMessageBox*>();
    };
    QTest::mouseClick(ask()->button(QMessageBox::Cancel), Qt::LeftButton);
    QVERIFY(keyOf("save").isEmpty());
    QTRY_VERIFY(!window->findChild<QMessageBox*>());
    QTest::mouseClick(ask()->button(QMessageBox::Reset), Qt::LeftButton);
    QCOMPARE(keyOf("save"), QKeySequence(QStringLiteral("Ctrl+S")));
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+R")));
    QCOMPARE(keyOf("keep-curve"), QKeySequence(QStringLiteral("Ctrl+K")));
    for (const QString& id : window_->actions().ids())
        QVERIFY2(window_->keys().isStandard(id), qPrintable(id));
}

void TestShortcuts::no_two_commands_ever_share_a_key()
{
    window_->keys().take(QStringLiteral("rules"), QKeySequence(QStringLiteral("Ctrl+Y")));
    window_->keys().take(QStringLiteral("grid"), QKeySequence(QStringLiteral("Ctrl+R")));
    window_->keys().reset(QStringLiteral("rules")); // whose standard the grid has now
    again();
    QStringList seen;
    for (const QString& id : window_->actions().ids())
        for (const QKeySequence& key : window_->actions()[id]->shortcuts()) {
            QVERIFY2(!seen.contains(key.toString()), qPrintable(key.toString()));
            seen.append(key.toString());
        }
    QCOMPARE(keyOf("grid"), QKeySequence(QStringLiteral("Ctrl+R")));
}

void TestShortcuts::a_kept_key_goes_before_a_later_standard()
{
    // As if "save" had got Ctrl+S in a version after the one in which the user gave it to "rules".
    QSettings().setValue(QStringLiteral("keys/rules"), QStringLiteral("Ctrl+S"));
    again();
    QCOMPARE(keyOf("rules"), QKeySequence(QStringLiteral("Ctrl+S")));
    QVERIFY(keyOf("save").isEmpty());
}

QTEST_MAIN(TestShortcuts)
#include "test_shortcuts.moc"
