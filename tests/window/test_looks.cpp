#include "app/panels/findings_panel.h"
#include "app/window/file_commands.h"
#include "app/window/look.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"

#include <QAbstractButton>
#include <QDir>
#include <QDockWidget>
#include <QLabel>
#include <QMenuBar>
#include <QPainter>
#include <QScreen>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QToolBar>
#include <QToolButton>

#include <cmath>

using namespace siphonwright;

Q_DECLARE_METATYPE(siphonwright::drawing::Look)

namespace {

bool showsText(const QAbstractButton& button)
{
    const auto* tool = qobject_cast<const QToolButton*>(&button);
    return !button.text().isEmpty() && !(tool && tool->toolButtonStyle() == Qt::ToolButtonIconOnly);
}

struct Named {
    const char* name;
    QColor colour;
};

/// Everything that words are written in.
std::vector<Named> inksOf(const drawing::Palette& p)
{
    return {{"text", p.text},     {"faint", p.faint},   {"supply", p.supply}, {"return", p.return_},
            {"held", p.held},     {"level", p.level},   {"stop", p.stop},     {"caution", p.caution},
            {"advice", p.advice}, {"accent", p.accent}, {"ink", p.ink},       {"clear", p.keep_clear}};
}

QColor over(const QColor& film, const QColor& ground)
{
    const auto mix = [&](float above, float below) {
        return above * film.alphaF() + below * (1 - film.alphaF());
    };
    return QColor::fromRgbF(mix(film.redF(), ground.redF()), mix(film.greenF(), ground.greenF()),
                            mix(film.blueF(), ground.blueF()));
}

constexpr drawing::Look all_looks[] = {drawing::Look::light, drawing::Look::dark, drawing::Look::contrast,
                                       drawing::Look::contrast_dark};

} // namespace

class TestLooks : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup() { window_.reset(); }
    void the_contrast_ratio_is_that_of_wcag();
    void words_stand_off_their_ground_data();
    void words_stand_off_their_ground();
    void lines_of_high_contrast_stand_off_too_data();
    void lines_of_high_contrast_stand_off_too();
    void every_icon_is_drawn_at_16_px_in_each_look();
    void every_tool_and_main_action_has_an_icon();
    void a_look_is_chosen_kept_and_left_by_its_key();
    void a_dark_look_of_an_older_version_is_kept();
    void text_grows_in_widgets_and_on_the_drawing_and_is_kept();
    void nothing_is_clipped_at_200_percent_data();
    void nothing_is_clipped_at_200_percent();
    void the_layout_is_remembered_and_can_be_put_back();
    void a_window_of_a_larger_screen_comes_back_whole();
    void a_damaged_layout_does_no_harm();

private:
    void trigger(const char* id) { window_->actions()[QLatin1String(id)]->trigger(); }
    QDockWidget* dock(const char* name) { return window_->findChild<QDockWidget*>(QLatin1String(name)); }
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

void TestLooks::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestLooks::init()
{
    QSettings().clear();
    again();
}

void TestLooks::the_contrast_ratio_is_that_of_wcag()
{
    // WCAG 2.1, definition of "contrast ratio": from 1 to 21.
    QCOMPARE(look::contrastRatio(Qt::black, Qt::white), 21.0);
    QCOMPARE(look::contrastRatio(Qt::white, Qt::white), 1.0);
    // #767676 on white is the lightest grey with 4.5:1: by the formula (1.05)/(0.1812 + 0.05) = 4.54.
    const double grey = look::contrastRatio(QColor(0x76, 0x76, 0x76), Qt::white);
    QVERIFY(std::abs(grey - 4.54) < 0.005);
}

void TestLooks::words_stand_off_their_ground_data()
{
    QTest::addColumn<drawing::Look>("look");
    QTest::addColumn<double>("least"); // WCAG 2.1: 1.4.3 (AA) and 1.4.6 (AAA)
    QTest::newRow("light") << drawing::Look::light << 4.5;
    QTest::newRow("dark") << drawing::Look::dark << 4.5;
    QTest::newRow("high contrast") << drawing::Look::contrast << 7.0;
    QTest::newRow("high contrast, dark") << drawing::Look::contrast_dark << 7.0;
}

void TestLooks::words_stand_off_their_ground()
{
    QFETCH(drawing::Look, look);
    QFETCH(double, least);
    look::apply(look, 1);
    const drawing::Palette p = drawing::paletteOf(look);
    const auto judge = [&](const char* what, const QColor& ink, const char* where, const QColor& ground) {
        const double ratio = look::contrastRatio(ink, ground);
        QVERIFY2(
            ratio >= least,
            qPrintable(
                QStringLiteral("%1 on %2: %3").arg(QLatin1String(what), QLatin1String(where)).arg(ratio)));
    };
    const QColor panel = QApplication::palette().color(QPalette::Window);
    for (const Named& ink : inksOf(p)) {
        judge(ink.name, ink.colour, "paper", p.ground);
        judge(ink.name, ink.colour, "panel", panel);
    }
    for (const QColor& fill : {p.engine_fill, p.heater_fill, over(p.jacket_fill, p.engine_fill)})
        judge("text", p.text, "a fill", fill);
    judge("faint", p.faint, "engine", p.engine_fill);
    const QPalette widgets = QApplication::palette();
    for (const auto& [ink, ground] :
         std::initializer_list<std::pair<QPalette::ColorRole, QPalette::ColorRole>>{
             {QPalette::Text, QPalette::Base},
             {QPalette::Text, QPalette::AlternateBase},
             {QPalette::ButtonText, QPalette::Button},
             {QPalette::HighlightedText, QPalette::Highlight},
             {QPalette::ToolTipText, QPalette::ToolTipBase},
             {QPalette::PlaceholderText, QPalette::Base},
             {QPalette::Link, QPalette::Window}})
        judge("role", widgets.color(ink), "its ground", widgets.color(ground));
}

void TestLooks::lines_of_high_contrast_stand_off_too_data()
{
    QTest::addColumn<drawing::Look>("look");
    QTest::newRow("black on white") << drawing::Look::contrast;
    QTest::newRow("white on black") << drawing::Look::contrast_dark;
}

void TestLooks::lines_of_high_contrast_stand_off_too()
{
    QFETCH(drawing::Look, look);
    constexpr double least = 4.5;
    look::apply(look, 1);
    const drawing::Palette p = drawing::paletteOf(look);
    for (const Named& ink : inksOf(p))
        for (const QColor& ground :
             {p.ground, p.engine_fill, p.heater_fill, over(p.jacket_fill, p.engine_fill)})
            QVERIFY2(look::contrastRatio(ink.colour, ground) >= least, ink.name);
    // Lines round fields.
    QVERIFY(look::contrastRatio(QApplication::palette().color(QPalette::Mid), p.ground) >= least);
}

void TestLooks::every_icon_is_drawn_at_16_px_in_each_look()
{
    const QStringList files = QDir(QStringLiteral(":/icons")).entryList({QStringLiteral("*.svg")});
    QVERIFY(files.size() > 40);
    for (const drawing::Look one : all_looks) {
        const QColor ground = drawing::paletteOf(one).ground;
        for (const QString& file : files) {
            const QIcon icon = look::icon(QFileInfo(file).completeBaseName(), one);
            QImage drawn(16, 16, QImage::Format_RGB32);
            drawn.fill(ground);
            QPainter painter(&drawn);
            icon.paint(&painter, drawn.rect());
            painter.end();
            int plain = 0; // pixels that stand off as a graphical object has to, WCAG 2.1, 1.4.11: 3:1
            for (int y = 0; y < 16; ++y)
                for (int x = 0; x < 16; ++x)
                    plain += look::contrastRatio(drawn.pixelColor(x, y), ground) >= 3;
            // One line from side to side is 16; a block of ink would be no drawing.
            QVERIFY2(plain >= 16 && plain <= 170, qPrintable(QStringLiteral("%1: %2").arg(file).arg(plain)));
        }
    }
}

void TestLooks::every_tool_and_main_action_has_an_icon()
{
    for (const QAction* action : window_->findChild<QToolBar*>(QStringLiteral("tools"))->actions())
        QVERIFY2(action->isSeparator() || !action->icon().isNull(), qPrintable(action->text()));
    for (const char* id : {"new",           "open",          "save",
                           "save-as",       "export",        "preview",
                           "print",         "delete",        "zoom-in",
                           "zoom-out",      "rules",         "assumptions",
                           "warm-up",       "survey",        "parts",
                           "estimate",      "commissioning", "demonstrate",
                           "find-command",  "shortcuts",     "first-steps",
                           "cautions",      "about",         "insert-engine",
                           "insert-heater", "high-contrast", "high-contrast-dark"})
        QVERIFY2(!window_->actions()[QLatin1String(id)]->icon().isNull(), id);
}

void TestLooks::a_look_is_chosen_kept_and_left_by_its_key()
{
    trigger("high-contrast");
    QCOMPARE(window_->look(), drawing::Look::contrast);
    QVERIFY(window_->actions()[QStringLiteral("high-contrast")]->isChecked());
    QVERIFY(!window_->actions()[QStringLiteral("light")]->isChecked());
    QCOMPARE(QApplication::palette().color(QPalette::WindowText), QColor(Qt::black));
    again();
    QCOMPARE(window_->look(), drawing::Look::contrast);
    trigger("high-contrast-dark");
    QCOMPARE(window_->look(), drawing::Look::contrast_dark);
    QCOMPARE(QApplication::palette().color(QPalette::WindowText), QColor(Qt::white));
    QCOMPARE(QApplication::palette().color(QPalette::Window), QColor(Qt::black));
    trigger("dark");
    QCOMPARE(window_->look(), drawing::Look::dark);
    trigger("dark");
    QCOMPARE(window_->look(), drawing::Look::light);
    trigger("look-of-desktop");
    QVERIFY(window_->actions()[QStringLiteral("look-of-desktop")]->isChecked());
    QVERIFY(!window_->actions()[QStringLiteral("light")]->isChecked());
}

void TestLooks::a_dark_look_of_an_older_version_is_kept()
{
    QSettings().setValue(QStringLiteral("look/dark"), true);
    again();
    QCOMPARE(window_->look(), drawing::Look::dark);
    trigger("light");
    again();
    QCOMPARE(window_->look(), drawing::Look::light);
}

void TestLooks::text_grows_in_widgets_and_on_the_drawing_and_is_kept()
{
    window_->files().startFromTemplate("in-line-6");
    const int label = window_->menuBar()->fontMetrics().height();
    trigger("text-200");
    QVERIFY(std::abs(window_->menuBar()->fontMetrics().height() - 2 * label) <= 1);
    QCOMPARE(window_->view().font().pixelSize(), 2 * drawing::usual_text_px);
    QVERIFY(window_->actions()[QStringLiteral("text-200")]->isChecked());
    QVERIFY(!window_->actions()[QStringLiteral("text-100")]->isChecked());
    again();
    QCOMPARE(window_->textScale(), 2.0);
    trigger("text-100");
    QVERIFY(std::abs(window_->menuBar()->fontMetrics().height() - label) <= 1);
}

void TestLooks::nothing_is_clipped_at_200_percent_data()
{
    QTest::addColumn<QString>("panel"); // the action that shows it
    for (const char* id : {"warm-up", "by-bore", "on-grades", "sizing", "commissioning"})
        QTest::newRow(id) << QString::fromLatin1(id);
}

/// The first text of the window without the room that it asks for: a word on a button, a one-line
/// label, or the window itself beyond 1280 x 720; empty where all have it.
[[nodiscard]] QString clippedIn(const MainWindow& window)
{
    if (window.width() > 1280 || window.height() > 720)
        return QStringLiteral("window %1 x %2").arg(window.width()).arg(window.height());
    for (const QAbstractButton* button : window.findChildren<QAbstractButton*>())
        if (!button->visibleRegion().isEmpty() && showsText(*button) &&
            button->width() < button->fontMetrics().horizontalAdvance(button->text()))
            return button->text();
    for (const QLabel* words : window.findChildren<QLabel*>())
        if (!words->visibleRegion().isEmpty() && !words->text().isEmpty() &&
            words->textFormat() != Qt::RichText && words->height() < words->fontMetrics().ascent())
            return words->text();
    return {};
}

void TestLooks::nothing_is_clipped_at_200_percent()
{
    QFETCH(QString, panel);
    window_->resize(1280, 720);
    // A copy of its own: of a file that another test has open the window would ask first.
    const QString file = folder_.filePath(panel + QStringLiteral(".siphon"));
    QVERIFY(QFile::copy(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/above-level.siphon"), file));
    window_->files().open(file);
    trigger("text-200");
    window_->actions()[panel]->trigger();
    QTest::qWait(100);
    // Long texts are wrapped when what they say is known, and the panels laid out anew after that: on a
    // busy machine later.
    QTRY_COMPARE_WITH_TIMEOUT(clippedIn(*window_), QString(), 30000);
}

void TestLooks::the_layout_is_remembered_and_can_be_put_back()
{
    window_->resize(1100, 680);
    dock("findings")->hide();
    window_->addDockWidget(Qt::LeftDockWidgetArea, dock("details"));
    QVERIFY(window_->close());
    again();
    QVERIFY(!dock("findings")->isVisible());
    QCOMPARE(window_->dockWidgetArea(dock("details")), Qt::LeftDockWidgetArea);
    trigger("default-layout");
    QVERIFY(dock("findings")->isVisible());
    QVERIFY(!dock("commissioning")->isVisible());
    QCOMPARE(window_->dockWidgetArea(dock("details")), Qt::RightDockWidgetArea);
    QVERIFY(window_->width() <= window_->screen()->availableGeometry().width());
}

void TestLooks::a_window_of_a_larger_screen_comes_back_whole()
{
    const QRect room = window_->screen()->availableGeometry();
    window_->resize(room.width() + 900, room.height() + 700);
    window_->move(room.right() - 60, room.bottom() - 60);
    QVERIFY(window_->close());
    again();
    QTRY_VERIFY2(room.contains(window_->frameGeometry()), qPrintable(QStringLiteral("%1 x %2 at %3, %4")
                                                                         .arg(window_->width())
                                                                         .arg(window_->height())
                                                                         .arg(window_->x())
                                                                         .arg(window_->y())));
}

void TestLooks::a_damaged_layout_does_no_harm()
{
    settings::layout.set(QByteArray("no layout at all"));
    settings::geometry.set(QByteArray("nor a geometry"));
    again();
    QVERIFY(dock("findings")->isVisible());
    QVERIFY(window_->view().isVisible());
}

QTEST_MAIN(TestLooks)
#include "test_looks.moc"
