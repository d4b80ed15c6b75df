#include "app/window/about.h"
#include "app/window/command_search.h"
#include "app/window/file_commands.h"
#include "app/window/first_steps.h"
#include "app/window/gallery.h"
#include "app/window/insertions.h"
#include "app/window/keys.h"
#include "app/window/main_window.h"
#include "app/window/shortcuts_window.h"
#include "app/window/teaching.h"

#include <QMenuBar>

/// What helps to find one's way: search over commands, shortcuts, templates by picture, the first sketch.
namespace siphonwright {

void MainWindow::connectGuidance()
{
    const auto on = [this](const char* id, auto act) {
        connect((*actions_)[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    on("find-command", [this] {
        auto* search = new CommandSearch(*actions_, *menuBar(), this);
        const QPoint top = mapToGlobal(QPoint((width() - search->width()) / 2, menuBar()->height()));
        search->move(top);
        search->open();
    });
    on("shortcuts", [this] { (new ShortcutsWindow(*actions_, *keys_, *menuBar(), this))->open(); });
    on("cautions", [this] { showCautions(*this); });
    on("teaching",
       [this] { showTeaching(*this, [this](const QString& name) { files_->startSample(name); }); });
    on("about", [this] { showAbout(*this); });
    on("first-steps", [this] { first_steps_->begin(); });
    on("new-from-template", [this] {
        TemplateGallery* gallery = showGallery(TemplateKind::engines, tr("New drawing with an engine"));
        connect(gallery, &TemplateGallery::chosen, this,
                [this](const QString& id) { files_->startFromTemplate(id.toStdString()); });
    });
    on("insert-engine", [this] {
        TemplateGallery* gallery = showGallery(TemplateKind::engines, tr("Place an engine"));
        connect(gallery, &TemplateGallery::chosen, this, [this](const QString& id) {
            insert(tr("Place engine"),
                   [id](Sketch& sketch) { return insertEngine(sketch, id.toStdString()); });
            view_->zoomToFit();
        });
    });
    on("insert-heater", [this] {
        TemplateGallery* gallery = showGallery(TemplateKind::heaters, tr("Place a heater"));
        connect(gallery, &TemplateGallery::chosen, this, [this](const QString& id) {
            view_->setHeaterTemplate(id.toStdString());
            insert(tr("Place heater"),
                   [id](Sketch& sketch) { return insertHeater(sketch, id.toStdString()); });
        });
    });
}

TemplateGallery* MainWindow::showGallery(TemplateKind kind, const QString& title)
{
    const UnitSystem units =
        document_.sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    auto* gallery = new TemplateGallery(kind, title, look(), units, this);
    connect(gallery, &TemplateGallery::airCooledChosen, this, [this] { refuseAirCooled(*this); });
    gallery->open();
    return gallery;
}

} // namespace siphonwright
