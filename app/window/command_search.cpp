#include "app/window/command_search.h"

#include "app/window/actions.h"
#include "app/window/menu_places.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright {

namespace {

/// How well a command answers: 0 its words begin with what was typed, 1 a word of them does, 2 it is
/// somewhere in them, 3 it is in the menu's name or the tip; -1 not at all.
int rankOf(const QString& words, const QString& about, const QString& typed)
{
    if (typed.isEmpty())
        return 0;
    if (words.startsWith(typed, Qt::CaseInsensitive))
        return 0;
    const QStringList wanted = typed.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    int worst = 1;
    for (const QString& word : wanted) {
        int rank = -1;
        if ((QLatin1Char(' ') + words).contains(QLatin1Char(' ') + word, Qt::CaseInsensitive))
            rank = 1;
        else if (words.contains(word, Qt::CaseInsensitive))
            rank = 2;
        else if (about.contains(word, Qt::CaseInsensitive))
            rank = 3;
        if (rank < 0)
            return -1;
        worst = std::max(worst, rank);
    }
    return worst;
}

} // namespace

CommandSearch::CommandSearch(const Actions& actions, const QMenuBar& menus, QWidget* parent)
    : QDialog(parent), line_(new QLineEdit(this)), found_(new QTreeWidget(this)), note_(new QLabel(this))
{
    setObjectName(QStringLiteral("command-search"));
    setWindowTitle(tr("Find a command"));
    setAttribute(Qt::WA_DeleteOnClose);
    line_->setPlaceholderText(tr("What do you want to do?"));
    line_->setAccessibleName(tr("Words of the command"));
    line_->setClearButtonEnabled(true);
    line_->installEventFilter(this);
    found_->setAccessibleName(tr("Commands that match"));
    found_->setColumnCount(3);
    found_->setHeaderHidden(true);
    found_->setRootIsDecorated(false);
    found_->setUniformRowHeights(true);
    found_->setFocusPolicy(Qt::NoFocus); // the arrow keys go to it from the line
    // The command itself comes first: what is beside it may be shortened, and is told whole by its tip.
    found_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    found_->header()->setSectionResizeMode(1, QHeaderView::Stretch);
    found_->header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    found_->header()->setStretchLastSection(false);
    note_->setProperty("role", QStringLiteral("faint"));
    note_->setWordWrap(true);
    auto* column = new QVBoxLayout(this);
    column->addWidget(line_);
    column->addWidget(found_, 1);
    column->addWidget(note_);
    collect(actions, menus);
    list();
    connect(line_, &QLineEdit::textChanged, this, &CommandSearch::list);
    connect(line_, &QLineEdit::returnPressed, this, &CommandSearch::run);
    connect(found_, &QTreeWidget::itemClicked, this, &CommandSearch::run);
    const int em = fontMetrics().height();
    resize(std::min(46 * em, parent->width() - 40), std::min(28 * em, parent->height() - 80));
    line_->setFocus();
}

void CommandSearch::collect(const Actions& actions, const QMenuBar& menus)
{
    const QHash<const QAction*, QString> places = menuPlaces(menus);
    const auto add = [&](QAction* action, const QString& place, const QString& why_not) {
        if (!action->text().isEmpty() && action->isVisible())
            commands_.push_back(Command{action, wordsOf(*action), place, why_not});
    };
    for (const QString& id : actions.ids()) {
        QAction* action = actions[id];
        if (id == QLatin1String("find-command"))
            continue;
        const QString why = action->isEnabled()           ? QString()
                            : id == QLatin1String("undo") ? tr("nothing to undo")
                            : id == QLatin1String("redo") ? tr("nothing to redo")
                                                          : actions.whyNot(id);
        add(action, places.value(action, tr("Tools")), why);
    }
    // Panels, and whatever else stands in the menus alone.
    std::vector<std::pair<QString, QAction*>> others;
    for (auto at = places.begin(); at != places.end(); ++at)
        if (!actions.ids().contains(at.key()->objectName()))
            others.emplace_back(at.value() + at.key()->text(), const_cast<QAction*>(at.key()));
    std::sort(others.begin(), others.end());
    for (const auto& [key, action] : others)
        add(action, places.value(action), {});
}

void CommandSearch::list()
{
    found_->clear();
    const QString typed = line_->text().simplified();
    std::vector<std::pair<int, std::size_t>> ranked;
    for (std::size_t i = 0; i < commands_.size(); ++i) {
        const Command& command = commands_[i];
        if (!command.action)
            continue;
        const int rank =
            rankOf(command.words, command.place + QLatin1Char(' ') + command.action->statusTip(), typed);
        if (rank >= 0)
            ranked.emplace_back(rank, i);
    }
    std::sort(ranked.begin(), ranked.end());
    for (const auto& [rank, i] : ranked) {
        const Command& command = commands_[i];
        const bool can = command.action->isEnabled();
        const QString place = can                         ? command.place
                              : command.why_not.isEmpty() ? tr("not now")
                                                          : tr("not now: %1").arg(command.why_not);
        auto* item = new QTreeWidgetItem(
            found_, {command.words, place, command.action->shortcut().toString(QKeySequence::NativeText)});
        item->setData(0, Qt::UserRole, static_cast<qulonglong>(i));
        item->setToolTip(0, command.action->statusTip());
        item->setToolTip(1, place);
        for (int column = 0; column < 3; ++column)
            if (column > 0 || !can)
                item->setForeground(column, palette().color(QPalette::PlaceholderText));
    }
    found_->setCurrentItem(found_->topLevelItem(0));
    note_->setText(found_->topLevelItemCount() == 0 ? tr("No command has these words.")
                                                    : tr("Up and down choose, Enter runs, Escape closes."));
}

void CommandSearch::run()
{
    const QTreeWidgetItem* item = found_->currentItem();
    if (!item)
        return;
    const Command& command = commands_[static_cast<std::size_t>(item->data(0, Qt::UserRole).toULongLong())];
    if (!command.action)
        return;
    if (!command.action->isEnabled()) {
        note_->setText(command.why_not.isEmpty()
                           ? tr("“%1” cannot be done now.").arg(command.words)
                           : tr("“%1” cannot be done now: %2.").arg(command.words, command.why_not));
        return;
    }
    // After this window has gone, so that what opens gets the focus.
    QMetaObject::invokeMethod(command.action, &QAction::trigger, Qt::QueuedConnection);
    close();
}

bool CommandSearch::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == line_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown) {
            const int count = found_->topLevelItemCount();
            const int step = key == Qt::Key_Up       ? -1
                             : key == Qt::Key_Down   ? 1
                             : key == Qt::Key_PageUp ? -10
                                                     : 10;
            const int now = found_->indexOfTopLevelItem(found_->currentItem());
            if (count > 0)
                found_->setCurrentItem(found_->topLevelItem(std::clamp(now + step, 0, count - 1)));
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace siphonwright
