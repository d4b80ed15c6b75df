#include "tests/language/clipped.h"
#include "tests/language/texts.h"
#include "tests/random_runs.h"

#include "app/window/file_commands.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include "core/sketch/sketch.h"

#include <QAction>
#include <QApplication>
#include <QDockWidget>
#include <QLocale>
#include <QMap>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QRegularExpression>
#include <QScreen>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>

#include <memory>
#include <vector>

using namespace siphonwright;

namespace {

constexpr QSize smallest_screen(1280, 720);

/// What shows a panel or a window of its own.
constexpr const char* panel_actions[] = {"warm-up",         "by-bore",       "on-grades", "sizing",
                                         "propose-layouts", "commissioning", "shelf",     "find",
                                         "end-view"};
constexpr const char* window_actions[] = {"survey",        "parts",     "estimate",     "rules",
                                          "assumptions",   "shortcuts", "find-command", "insert-engine",
                                          "insert-heater", "teaching",  "cautions",     "about"};

/// Words that are no English: units, keys, names of files and codes.
QString withoutCodes(QString text)
{
    static const QRegularExpression codes(QStringLiteral(
        "Siphonwright|siphonwright|[0-9.,]+ "
        "[a-z]+/[a-z]+|<[^>]*>|&[a-z]+;|https?:\\S+|\\b(Ctrl|Shift|Alt|Esc|Escape|"
        "Return|Enter|Home|End|PgUp|PgDown|Del|"
        "Ins|Backspace|Space|Tab|Left|Right|Up|Down|kWh|AWG|mm2|ppm|awg|USD|psi|gal|kPa|SVG|"
        "PDF|PNG|CSV|Menu|Plus|"
        "English|Deutsch|sealant|pipe)\\b|E\\S*pa.ol|Fran.ais|[A-Za-z-]+\\.siphon|[a-z]+(-[0-9a-z.]+)+"));
    return text.remove(codes);
}

bool hasEnglish(const QString& text)
{
    static const QRegularExpression plain(QStringLiteral("[A-Za-z]{3,}"));
    return withoutCodes(text).contains(plain);
}

/// The panels of a window with the least width of each.
QString panelsIn(const QWidget& window)
{
    QStringList out;
    for (const QDockWidget* dock : window.findChildren<QDockWidget*>())
        if (!dock->visibleRegion().isEmpty())
            out << QStringLiteral("%1 from %2").arg(dock->objectName()).arg(dock->minimumSizeHint().width());
    return out.join(QStringLiteral(", "));
}

/// A failed test says no more than a few lines by itself.
void list(const QStringList& wrong)
{
    for (const QString& one : wrong)
        qWarning("%s", qPrintable(one));
}

/// Names, titles and notes are the user's; here they have no letters.
void takeUsersWordsAway(Sketch& sketch)
{
    int n = 0;
    const auto number = [&n] { return std::to_string(++n); };
    for (Port& port : sketch.ports)
        port.name = number();
    for (Heater& heater : sketch.heaters)
        heater.name = number();
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([&](Hose& changed) { changed.name = number(); });
    for (Shared<Area>& area : sketch.areas)
        area.edit([&](Area& changed) { changed.name = number(); });
    if (sketch.engine)
        sketch.engine->name = number();
    sketch.sheet = {};
    sketch.notes.clear();
    sketch.quote = {};
    for (Reading& reading : sketch.readings)
        reading.note.clear();
}

} // namespace

class TestLanguages : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void cleanup();
    void words_fit_on_a_small_screen_data();
    void words_fit_on_a_small_screen();
    void no_word_of_english_is_left();
    void a_choice_of_language_is_kept_and_says_when_it_holds();

private:
    void speak(const QString& code);
    void openWindow();
    /// Shows one thing after the other and has each looked at.
    void look(const std::function<void(const QString& name, const QWidget& window)>& at);
    QAction* action(const char* id) { return window_->actions()[QLatin1String(id)]; }

    QTemporaryDir folder_;
    std::unique_ptr<QTranslator> translator_;
    std::unique_ptr<MainWindow> window_;
};

void TestLanguages::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestLanguages::cleanup()
{
    window_.reset();
    if (translator_)
        QCoreApplication::removeTranslator(translator_.get());
    translator_.reset();
    QLocale::setDefault(QLocale::c());
    QSettings().clear();
}

void TestLanguages::speak(const QString& code)
{
    if (code == QLatin1String("pseudo")) {
        translator_ = std::make_unique<PseudoTranslator>();
    } else {
        translator_ = std::make_unique<language::CoreTranslator>();
        QVERIFY(translator_->load(QStringLiteral(":/translations/siphonwright_") + code));
        QLocale::setDefault(QLocale(code));
    }
    QCoreApplication::installTranslator(translator_.get());
}

void TestLanguages::openWindow()
{
    window_ = std::make_unique<MainWindow>();
    window_->setAnimated(false);
    window_->resize(smallest_screen);
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    window_->files().open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/generator-first-start.siphon"));
    window_->document().apply(QStringLiteral("-"), takeUsersWordsAway);
    QTRY_VERIFY_WITH_TIMEOUT(
        window_->document().analysis().proof && window_->document().analysis().proof->graded, 20000);
}

void TestLanguages::look(const std::function<void(const QString&, const QWidget&)>& at)
{
    constexpr int settled_ms = 30;
    const Sketch& sketch = window_->document().sketch();
    // The details of a part of every kind, and with nothing selected.
    const std::vector<PartRef> parts = {{},
                                        {PartKind::engine, {}, 0},
                                        {PartKind::tank, {}, 0},
                                        {PartKind::port, sketch.ports.front().id, 0},
                                        {PartKind::heater, sketch.heaters.front().id, 0},
                                        {PartKind::hose, sketch.hoses.front()->id, 0}};
    for (const PartRef& part : parts) {
        window_->selection().select(part);
        QTest::qWait(settled_ms);
        at(QStringLiteral("main window, part of kind %1").arg(int(part.kind)), *window_);
    }
    for (const char* id : panel_actions) {
        action(id)->trigger();
        QTest::qWait(settled_ms);
        at(QLatin1String(id), *window_);
        if (action(id)->isCheckable() && action(id)->isChecked())
            action(id)->trigger();
        action("default-layout")->trigger();
    }
    for (const char* id : window_actions) {
        action(id)->trigger();
        QTest::qWait(settled_ms);
        for (QWidget* top : QApplication::topLevelWidgets()) {
            if (top == window_.get() || !top->isVisible() || top->windowType() == Qt::ToolTip)
                continue;
            at(QLatin1String(id), *top);
            for (QTabWidget* tabs : top->findChildren<QTabWidget*>())
                for (int i = 0; i < tabs->count(); ++i) {
                    tabs->setCurrentIndex(i);
                    QTest::qWait(settled_ms);
                    at(QStringLiteral("%1, page %2").arg(QLatin1String(id)).arg(i + 1), *top);
                }
            top->close();
        }
    }
}

void TestLanguages::words_fit_on_a_small_screen_data()
{
    QTest::addColumn<QString>("code");
    // Longer words than any; and of the languages, one where few are wanted.
    for (const char* code : test::someOf(std::vector{"pseudo", "es", "fr", "de"}, 3))
        QTest::newRow(code) << QString::fromLatin1(code);
}

void TestLanguages::words_fit_on_a_small_screen()
{
    QFETCH(QString, code);
    speak(code);
    openWindow();
    QStringList wrong;
    look([&](const QString& name, const QWidget& window) {
        // A busy machine lays out later.
        const bool fits = QTest::qWaitFor([&] {
            return window.width() <= smallest_screen.width() && window.height() <= smallest_screen.height();
        });
        if (!fits)
            wrong << QStringLiteral("%1: %2 x %3 px, %4")
                         .arg(name)
                         .arg(window.width())
                         .arg(window.height())
                         .arg(panelsIn(window));
        for (const QString& one : clippedIn(window))
            wrong << name + QStringLiteral(": ") + one;
    });
    wrong.removeDuplicates();
    list(wrong);
    QVERIFY(wrong.isEmpty());
}

void TestLanguages::no_word_of_english_is_left()
{
    speak(QStringLiteral("pseudo"));
    openWindow();
    static_cast<PseudoTranslator&>(*translator_).forget(); // the names that the sample had
    QStringList wrong;
    QMap<QString, QString> seen; // each text with where it was first
    look([&](const QString& name, const QWidget& window) {
        for (const QString& one : wordsIn(window))
            if (hasEnglish(one) && !seen.contains(one))
                seen.insert(one, name);
    });
    for (auto one = seen.cbegin(); one != seen.cend(); ++one)
        wrong << one.value() + QStringLiteral(": ") + one.key();
    for (const QMenu* menu : window_->menuBar()->findChildren<QMenu*>())
        for (const QAction* one : menu->actions())
            if (hasEnglish(one->text()) || hasEnglish(one->statusTip()))
                wrong << one->text();
    wrong.removeDuplicates();
    list(wrong);
    QVERIFY(wrong.isEmpty());
    QStringList missing = static_cast<const PseudoTranslator&>(*translator_).missing();
    for (const char* own_name : {"&English", "E&spañol", "&Français", "&Deutsch"})
        missing.removeAll(QStringLiteral("Actions: ") + QString::fromUtf8(own_name));
    list(missing);
    QVERIFY(missing.isEmpty());
}

void TestLanguages::a_choice_of_language_is_kept_and_says_when_it_holds()
{
    openWindow();
    QVERIFY(action("language-of-system")->isChecked());
    action("language-de")->trigger();
    QCOMPARE(settings::language.get(), QStringLiteral("de"));
    auto* said = window_->findChild<QMessageBox*>(QStringLiteral("language-changes"));
    QVERIFY(said && said->isVisible());
    said->close();
    window_ = std::make_unique<MainWindow>();
    QVERIFY(action("language-de")->isChecked());
    QVERIFY(!action("language-of-system")->isChecked());
}

QTEST_MAIN(TestLanguages)
#include "test_languages.moc"
