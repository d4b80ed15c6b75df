#include "app/window/first_steps.h"

#include "app/window/actions.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>

#include <algorithm>

namespace siphonwright {

namespace {

bool hasRole(const Sketch& sketch, HoseRole role)
{
    return std::any_of(sketch.hoses.begin(), sketch.hoses.end(),
                       [role](const Shared<Hose>& hose) { return hose->role == role; });
}

bool hasPort(const Sketch& sketch, PortRole role)
{
    return std::any_of(sketch.ports.begin(), sketch.ports.end(),
                       [role](const Port& port) { return port.role == role; });
}

} // namespace

FirstSteps::FirstSteps(Document& document, const Actions& actions, QMenu& engines, QMenu& heaters,
                       QWidget* parent)
    : QFrame(parent), document_(document)
{
    setObjectName(QStringLiteral("first-steps"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 4, 6, 4);
    row->setSpacing(14);
    auto* title = new QLabel(tr("First steps"), this);
    title->setProperty("role", QStringLiteral("title"));
    row->addWidget(title);
    addStep(
        tr("Engine"), tr("Place an engine"), [](const Sketch& s) { return s.engine.has_value(); }, &engines,
        nullptr);
    addStep(
        tr("Supply port"), tr("Mark a supply port, low at the front"),
        [](const Sketch& s) { return hasPort(s, PortRole::supply); }, nullptr,
        actions[QStringLiteral("insert-supply-port")]);
    addStep(
        tr("Return port"), tr("Mark a return port, high at the rear"),
        [](const Sketch& s) { return hasPort(s, PortRole::return_); }, nullptr,
        actions[QStringLiteral("insert-return-port")]);
    addStep(
        tr("Heater"), tr("Place a heater, well under the jacket"),
        [](const Sketch& s) { return !s.heaters.empty(); }, &heaters, nullptr);
    addStep(
        tr("Supply hose"), tr("Draw the supply hose"),
        [](const Sketch& s) { return hasRole(s, HoseRole::supply); }, nullptr,
        actions[QStringLiteral("supply-hose")]);
    addStep(
        tr("Return hose"), tr("Draw the return hose"),
        [](const Sketch& s) { return hasRole(s, HoseRole::return_); }, nullptr,
        actions[QStringLiteral("return-hose")]);
    row->addStretch();
    auto* close = new QToolButton(this);
    close->setText(QStringLiteral("×"));
    close->setToolTip(tr("Close the first steps; Help shows them again"));
    close->setAccessibleName(tr("Close the first steps"));
    row->addWidget(close);
    connect(close, &QToolButton::clicked, this, [this] {
        closed_ = true;
        refresh();
    });
    connect(&document_, &Document::changed, this, &FirstSteps::refresh);
    refresh();
}

void FirstSteps::addStep(const QString& text, const QString& what, bool (*done)(const Sketch&), QMenu* menu,
                         QAction* action)
{
    auto* button = new QPushButton(this);
    button->setProperty("role", QStringLiteral("link"));
    button->setCursor(Qt::PointingHandCursor);
    button->setToolTip(what);
    button->setAccessibleName(what);
    if (menu)
        connect(button, &QPushButton::clicked, this,
                [button, menu] { menu->popup(button->mapToGlobal(button->rect().bottomLeft())); });
    if (action)
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
    layout()->addWidget(button);
    Step step{button, text, done};
    steps_.push_back(step);
}

void FirstSteps::restart()
{
    closed_ = false;
    refresh();
}

void FirstSteps::refresh()
{
    bool all_done = true;
    int number = 0;
    for (const Step& step : steps_) {
        const bool done = step.done(document_.sketch());
        all_done = all_done && done;
        ++number;
        step.button->setText(done ? tr("✓  %1").arg(step.text) : tr("%1.  %2").arg(number).arg(step.text));
        step.button->setEnabled(!done);
    }
    setVisible(!closed_ && !all_done);
}

} // namespace siphonwright
