#include "app/window/part_menu.h"

#include "app/canvas/hit.h"
#include "app/window/actions.h"

#include <QCoreApplication>
#include <QMenu>

#include <initializer_list>

namespace siphonwright {
namespace {

/// Those that can be done now; the others would only be in the way.
void add(QMenu& menu, const Actions& actions, std::initializer_list<const char*> ids)
{
    bool first = true;
    for (const char* id : ids) {
        QAction* action = actions[QString::fromLatin1(id)];
        if (!action->isEnabled())
            continue;
        if (first && !menu.isEmpty())
            menu.addSeparator();
        first = false;
        menu.addAction(action);
    }
}

void addAligning(QMenu& menu, const Actions& actions)
{
    QMenu* align = menu.addMenu(QCoreApplication::translate("PartMenu", "&Align"));
    align->setToolTipsVisible(true);
    for (const char* id :
         {"align-left", "align-middle-x", "align-right", "align-top", "align-middle-z", "align-bottom"})
        align->addAction(actions[QString::fromLatin1(id)]);
    align->addSeparator();
    for (const char* id : {"spread-x", "spread-z"})
        align->addAction(actions[QString::fromLatin1(id)]);
}

QMenu* menuOfGround(const Actions& actions, QWidget* parent)
{
    auto* menu = new QMenu(parent);
    add(*menu, actions, {"supply-hose", "return-hose", "port", "heater", "valve", "area"});
    add(*menu, actions, {"paste", "select-all", "find"});
    add(*menu, actions, {"fit"});
    return menu;
}

} // namespace

void addEditing(QMenu& menu, const Actions& actions)
{
    const auto add_all = [&actions](QMenu& to, std::initializer_list<const char*> ids) {
        for (const char* id : ids)
            to.addAction(actions[QString::fromLatin1(id)]);
        to.addSeparator();
    };
    add_all(menu, {"cut", "copy", "paste", "duplicate", "delete"});
    add_all(menu, {"select-all", "select-next", "select-previous", "keep-selected", "find", "go-to-drawing"});
    addAligning(menu, actions);
    QMenu* part = menu.addMenu(QCoreApplication::translate("PartMenu", "Selected &part"));
    part->setToolTipsVisible(true);
    add_all(*part, {"details", "rename"});
    add_all(*part, {"turn", "turn-back", "open-or-close", "connect", "corners"});
    add_all(*part, {"point-here", "valve-here", "bleed-here", "clip-here"});
    menu.addSeparator();
}

QMenu* partMenu(const Actions& actions, const Document& document, const Selection& selection, QWidget* parent)
{
    if (selection.parts().empty()) {
        QMenu* menu = menuOfGround(actions, parent);
        add(*menu, actions, {"about-rule"});
        return menu;
    }
    auto* menu = new QMenu(parent);
    const bool several = selection.parts().size() > 1;
    if (!several)
        add(*menu, actions, {"details"});
    const bool has_name =
        document.sketch().port(selection.part().id) || document.sketch().heater(selection.part().id) ||
        document.sketch().area(selection.part().id) || document.sketch().hose(selection.part().id) ||
        selection.part().kind == PartKind::engine;
    if (!several && has_name && ownerOf(selection.part()) == selection.part())
        menu->addAction(actions[QStringLiteral("rename")]);
    if (selection.part().kind == PartKind::photo)
        add(*menu, actions, {"photo-straighten", "photo-scale", "photo-level", "photo-lock"});
    add(*menu, actions, {"open-or-close", "turn", "turn-back"});
    if (!several) {
        add(*menu, actions, {"point-here", "valve-here", "bleed-here", "clip-here"});
        add(*menu, actions, {"connect", "corners"});
    } else {
        menu->addSeparator();
        addAligning(*menu, actions);
    }
    add(*menu, actions, {"cut", "copy", "paste", "duplicate", "delete"});
    add(*menu, actions, {"fit-selection"});
    add(*menu, actions, {"about-rule"});
    return menu;
}

} // namespace siphonwright
