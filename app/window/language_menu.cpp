#include "app/window/language_menu.h"

#include "app/language/language.h"
#include "app/window/actions.h"
#include "app/window/settings.h"

#include <QAction>
#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>
#include <QMessageBox>
#include <QWidget>

namespace siphonwright {

namespace {

void choose(const QString& code, QWidget& window)
{
    if (settings::language.get() == code)
        return;
    settings::language.set(code);
    auto* box =
        new QMessageBox(QMessageBox::Information, QCoreApplication::applicationName(),
                        QCoreApplication::translate(
                            "siphonwright", "The language changes when Siphonwright is started again."),
                        QMessageBox::Ok, &window);
    box->setObjectName(QStringLiteral("language-changes"));
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

} // namespace

void fillLanguageMenu(QMenu& menu, Actions& actions, QWidget& window)
{
    auto* group = new QActionGroup(&menu);
    const auto add = [&](const QString& id, const QString& code) {
        QAction* action = actions[id];
        action->setChecked(settings::language.get() == code);
        group->addAction(action);
        menu.addAction(action);
        QObject::connect(action, &QAction::triggered, &window, [code, &window] { choose(code, window); });
    };
    add(QStringLiteral("language-of-system"), {});
    for (const language::Language& one : language::languages()) {
        const QString code = QString::fromLatin1(one.code);
        add(QStringLiteral("language-") + code, code);
    }
}

} // namespace siphonwright
