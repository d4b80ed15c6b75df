#include "app/commissioning/commissioning_panel.h"
#include "app/panels/findings_panel.h"
#include "app/panels/grade_strip.h"
#include "app/panels/profile_panel.h"
#include "app/rules/rule_browser.h"
#include "app/warming/warm_up_panel.h"
#include "app/window/demonstration_commands.h"
#include "app/window/look.h"
#include "app/window/main_window.h"
#include "app/window/settings.h"
#include "app/window/shelf.h"
#include "app/window/survey_commands.h"

#include <QDockWidget>
#include <QResizeEvent>
#include <QScreen>
#include <QStyleHints>
#include <QToolBar>
#include <QToolButton>

#include <algorithm>
#include <cmath>

/// How the window looks and where its parts stand.
namespace siphonwright {

namespace {

struct LookAction {
    const char* id; ///< of the action, and what is remembered
    drawing::Look look;
};
constexpr LookAction look_actions[] = {
    {"light", drawing::Look::light},
    {"dark", drawing::Look::dark},
    {"high-contrast", drawing::Look::contrast},
    {"high-contrast-dark", drawing::Look::contrast_dark},
};

constexpr int text_percents[] = {100, 125, 150, 175, 200};
constexpr int layout_version = 1; ///< rises when docks or toolbars change their names

/// What was remembered; nothing: as the desktop.
std::optional<drawing::Look> chosenLook()
{
    QString name = settings::look.get();
    // Versions before this one knew dark alone.
    if (const QString before = QStringLiteral("look/dark"); name.isEmpty() && QSettings().contains(before))
        name = QSettings().value(before).toBool() ? QStringLiteral("dark") : QStringLiteral("light");
    for (const LookAction& one : look_actions)
        if (name == QLatin1String(one.id))
            return one.look;
    return std::nullopt;
}

} // namespace

void MainWindow::connectAppearance()
{
    for (const LookAction& one : look_actions) {
        const QString id = QString::fromLatin1(one.id);
        connect((*actions_)[id], &QAction::triggered, this, [this, id] {
            // A second press of a look's key leaves it again.
            const bool leaves = settings::look.get() == id && id != QLatin1String("light");
            chooseLook(leaves ? QStringLiteral("light") : id);
        });
    }
    connect((*actions_)[QStringLiteral("look-of-desktop")], &QAction::triggered, this,
            [this] { chooseLook(QStringLiteral("desktop")); });
    for (const int percent : text_percents)
        connect((*actions_)[QStringLiteral("text-%1").arg(percent)], &QAction::triggered, this,
                [this, percent] {
                    settings::text_percent.set(percent);
                    applyLook();
                    sizePanels();
                });
    connect((*actions_)[QStringLiteral("default-layout")], &QAction::triggered, this,
            &MainWindow::useDefaultLayout);
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    connect(QGuiApplication::styleHints(), &QStyleHints::colorSchemeChanged, this, [this] {
        desktop_look_ = look::ofDesktop();
        applyLook();
    });
#endif
}

void MainWindow::chooseLook(const QString& name)
{
    settings::look.set(name);
    applyLook();
}

double MainWindow::textScale()
{
    return std::clamp(settings::text_percent.get(), text_percents[0], text_percents[4]) / 100.0;
}

drawing::Look MainWindow::look() const
{
    return chosenLook().value_or(desktop_look_);
}

/// Before there are any widgets, which would each be looked at again. The style sheet comes when all are
/// there: under it each move of a widget into a layout costs as much. @return the desktop's look
drawing::Look MainWindow::dressProgram()
{
    const drawing::Look of_desktop = look::ofDesktop();
    look::dress(chosenLook().value_or(of_desktop), textScale());
    return of_desktop;
}

void MainWindow::applyLook()
{
    const drawing::Look now = look();
    look::apply(now, textScale());
    actions_->setLook(now);
    view_->setLook(now);
    view_->setTextScale(textScale());
    findings_->setLook(now);
    profile_->setLook(now);
    warm_up_->setLook(now);
    if (commissioning_->built())
        commissioning_->built()->setLook(now);
    grade_->setLook(now);
    shelf_->setLook(now);
    demonstration_->setLook(now);
    survey_->setLook(now);
    if (rules_)
        rules_->setLook(now);
    (*actions_)[QStringLiteral("look-of-desktop")]->setChecked(!chosenLook());
    for (const LookAction& one : look_actions)
        (*actions_)[QString::fromLatin1(one.id)]->setChecked(chosenLook() == one.look);
    for (const int percent : text_percents)
        (*actions_)[QStringLiteral("text-%1").arg(percent)]->setChecked(
            percent == static_cast<int>(std::lround(100 * textScale())));
    arrangeTools();
}

/// Larger text needs larger icons.
void MainWindow::arrangeTools()
{
    auto* bar = findChild<QToolBar*>(QStringLiteral("tools"));
    const int icon_px = static_cast<int>(std::lround(20 * textScale()));
    bar->setIconSize({icon_px, icon_px});
    writeOnTools(true);
    tools_with_words_px_ = bar->sizeHint().width();
    writeOnTools(tools_with_words_px_ <= width());
}

/// Where words beside the icons leave a tool no room, there are icons alone.
void MainWindow::writeOnTools(bool words)
{
    auto* bar = findChild<QToolBar*>(QStringLiteral("tools"));
    bar->setToolButtonStyle(words ? Qt::ToolButtonTextBesideIcon : Qt::ToolButtonIconOnly);
    for (const char* id : {"undo", "redo", "fit"})
        static_cast<QToolButton*>(bar->widgetForAction((*actions_)[QString::fromLatin1(id)]))
            ->setToolButtonStyle(Qt::ToolButtonIconOnly);
}

void MainWindow::resizeEvent(QResizeEvent* event)
{
    QMainWindow::resizeEvent(event);
    if (tools_with_words_px_ > 0)
        writeOnTools(tools_with_words_px_ <= width());
}

void MainWindow::sizePanels()
{
    const auto dock = [this](const char* name) { return findChild<QDockWidget*>(QString::fromLatin1(name)); };
    // As wide as the widest form, so that the drawing does not move with the selection; it needs room too.
    const int width_px = static_cast<int>(352 * (0.6 + 0.4 * textScale()));
    resizeDocks({dock("findings"), dock("details")}, {width_px, width_px}, Qt::Horizontal);
    resizeDocks({dock("findings"), dock("details")}, {260, 340}, Qt::Vertical);
    resizeDocks({dock("profile")}, {90}, Qt::Vertical);
}

void MainWindow::restoreLayout()
{
    resize(1280, 720);
    default_layout_ = saveState(layout_version);
    restoreGeometry(settings::geometry.get());
    if (settings::layout.get().isEmpty()) // once the window has its size
        QMetaObject::invokeMethod(this, &MainWindow::sizePanels, Qt::QueuedConnection);
    // A layout of another version, or a damaged one, is left alone.
    if (!restoreState(settings::layout.get(), layout_version))
        restoreState(settings::layout.get());
    keepOnScreen();
    // Once more when its frame is known.
    QMetaObject::invokeMethod(this, &MainWindow::keepOnScreen, Qt::QueuedConnection);
}

/// A window remembered from a larger screen, or from one that is gone, comes back whole.
void MainWindow::keepOnScreen()
{
    const QScreen* shown_on = screen();
    if (!shown_on || isMaximized() || isFullScreen())
        return;
    const QRect room = shown_on->availableGeometry();
    const QSize frame = frameGeometry().size() - size();
    const QSize fits = size().boundedTo(room.size() - frame);
    if (fits != size())
        resize(fits);
    const QRect now = frameGeometry();
    const QPoint at(std::clamp(now.x(), room.left(), std::max(room.left(), room.right() + 1 - now.width())),
                    std::clamp(now.y(), room.top(), std::max(room.top(), room.bottom() + 1 - now.height())));
    if (at != pos())
        move(at);
}

void MainWindow::rememberLayout() const
{
    settings::geometry.set(saveGeometry());
    settings::layout.set(saveState(layout_version));
}

void MainWindow::useDefaultLayout()
{
    if (isMaximized() || isFullScreen())
        showNormal();
    resize(1280, 720);
    restoreState(default_layout_, layout_version);
    sizePanels();
    keepOnScreen();
    view_->setFocus();
}

} // namespace siphonwright
