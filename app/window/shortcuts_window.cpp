#include "app/window/shortcuts_window.h"

#include "app/panels/wrapped_row.h"
#include "app/window/actions.h"
#include "app/window/keys.h"
#include "app/window/menu_places.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeySequenceEdit>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace siphonwright {

namespace {

struct DrawingKey {
    const char* keys;
    const char* does;
};
// What the elevation does by itself while it has the focus.
constexpr DrawingKey drawing_keys[] = {
    {QT_TRANSLATE_NOOP("DrawingKeys", "Arrow keys"),
     QT_TRANSLATE_NOOP("DrawingKeys", "Nudge what is selected, move the cross-hair, or move the paper")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Shift + arrow keys"), QT_TRANSLATE_NOOP("DrawingKeys", "A fine step")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Tab, Shift+Tab"),
     QT_TRANSLATE_NOOP("DrawingKeys", "Next and previous point of what is selected, or place to put it")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Enter"),
     QT_TRANSLATE_NOOP("DrawingKeys", "Put down at the cross-hair; finish a hose")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Backspace"),
     QT_TRANSLATE_NOOP("DrawingKeys", "Take the last point of a hose back")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Escape"),
     QT_TRANSLATE_NOOP("DrawingKeys", "Stop what was begun; back to selecting")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Space + drag, middle button"),
     QT_TRANSLATE_NOOP("DrawingKeys", "Move the paper")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Wheel"), QT_TRANSLATE_NOOP("DrawingKeys", "Zoom to the pointer")},
    {QT_TRANSLATE_NOOP("DrawingKeys", "Alt while dragging"), QT_TRANSLATE_NOOP("DrawingKeys", "No snapping")},
};

QString textOf(const QList<QKeySequence>& keys)
{
    return QKeySequence::listToString(keys, QKeySequence::NativeText)
        .replace(QLatin1Char(';'), QLatin1Char(','));
}

} // namespace

ShortcutsWindow::ShortcutsWindow(const Actions& actions, Keys& keys, const QMenuBar& menus, QWidget* parent)
    : QDialog(parent),
      actions_(actions),
      keys_(keys),
      filter_(new QLineEdit(this)),
      list_(new QTreeWidget(this))
{
    setObjectName(QStringLiteral("shortcuts"));
    setWindowTitle(tr("Shortcuts"));
    setAttribute(Qt::WA_DeleteOnClose);
    filter_->setPlaceholderText(tr("Find by words or keys"));
    filter_->setAccessibleName(tr("Find a command by its words or keys"));
    filter_->setClearButtonEnabled(true);
    list_->setAccessibleName(tr("Commands and their keys"));
    list_->setHeaderLabels({tr("Command"), tr("Keys"), tr("What it does")});
    list_->setRootIsDecorated(false);
    list_->setUniformRowHeights(true);
    list_->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    list_->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    list_->header()->setStretchLastSection(false);
    list_->header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    auto* column = new QVBoxLayout(this);
    column->addWidget(filter_);
    column->addWidget(list_, 1);
    column->addWidget(buildEditor());
    fill(menus);
    connect(filter_, &QLineEdit::textChanged, this, &ShortcutsWindow::filter);
    connect(list_, &QTreeWidget::currentItemChanged, this, &ShortcutsWindow::showChosen);
    connect(&keys_, &Keys::changed, this, &ShortcutsWindow::refresh);
    refresh();
    showChosen();
    const int em = fontMetrics().height();
    const QSize room = parent->size() - QSize(40, 60);
    resize(QSize(60 * em, 38 * em).boundedTo(room));
}

QWidget* ShortcutsWindow::buildEditor()
{
    auto* editor = new QWidget(this);
    title_ = new QLabel(editor);
    title_->setProperty("role", QStringLiteral("title"));
    title_->setWordWrap(true);
    edit_ = new QKeySequenceEdit(editor);
    edit_->setAccessibleName(tr("New keys: press them here"));
    none_ = new QPushButton(tr("&No keys"), editor);
    standard_ = new QPushButton(tr("&Back to default"), editor);
    all_standard_ = new QPushButton(tr("&All back to default…"), editor);
    message_ = new QLabel(editor);
    message_->setObjectName(QStringLiteral("shortcut-message"));
    message_->setWordWrap(true);
    take_ = new QPushButton(tr("&Take them from there"), editor);
    take_->setObjectName(QStringLiteral("take-keys"));
    for (QPushButton* button : {none_, standard_, all_standard_, take_})
        button->setAutoDefault(false); // Enter is a key like others in the field beside them
    auto* row = new panels::WrappedRow;
    row->addWidget(edit_);
    row->addWidget(none_);
    row->addWidget(standard_);
    row->addWidget(all_standard_);
    auto* notes = new QHBoxLayout;
    notes->addWidget(message_, 1);
    notes->addWidget(take_);
    auto* column = new QVBoxLayout(editor);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(title_);
    column->addLayout(row);
    column->addLayout(notes);
    connect(edit_, &QKeySequenceEdit::keySequenceChanged, this, &ShortcutsWindow::keyTyped);
    connect(none_, &QPushButton::clicked, this, [this] {
        keys_.give(chosen(), {});
        showChosen();
    });
    connect(standard_, &QPushButton::clicked, this, [this] {
        const QString id = chosen();
        keys_.reset(id);
        showChosen();
        if (!keys_.isStandard(id))
            say(tr("Its default keys are with another command now."), true);
    });
    connect(take_, &QPushButton::clicked, this, [this] {
        keys_.take(chosen(), wanted_);
        showChosen();
    });
    connect(all_standard_, &QPushButton::clicked, this, [this] {
        auto* box = new QMessageBox(QMessageBox::Question, windowTitle(),
                                    tr("Put the keys of all commands back to their defaults?"),
                                    QMessageBox::Reset | QMessageBox::Cancel, this);
        box->setAttribute(Qt::WA_DeleteOnClose);
        connect(box, &QMessageBox::buttonClicked, this, [this, box](QAbstractButton* pressed) {
            if (box->standardButton(pressed) == QMessageBox::Reset)
                keys_.resetAll();
            showChosen();
        });
        box->open();
    });
    return editor;
}

void ShortcutsWindow::fill(const QMenuBar& menus)
{
    const QHash<const QAction*, QString> places = menuPlaces(menus);
    for (const QString& id : actions_.ids()) {
        const QAction* action = actions_[id];
        const QString place = places.value(action, tr("Tools"));
        auto* item =
            new QTreeWidgetItem(list_, {tr("%1 › %2").arg(place, wordsOf(*action)), {}, action->statusTip()});
        item->setData(0, Qt::UserRole, id);
    }
    for (const DrawingKey& key : drawing_keys)
        new QTreeWidgetItem(list_,
                            {tr("On the drawing"), QCoreApplication::translate("DrawingKeys", key.keys),
                             QCoreApplication::translate("DrawingKeys", key.does)});
    list_->setCurrentItem(list_->topLevelItem(0));
}

void ShortcutsWindow::filter()
{
    const QString wanted = filter_->text().simplified();
    for (int i = 0; i < list_->topLevelItemCount(); ++i) {
        QTreeWidgetItem* item = list_->topLevelItem(i);
        bool found = false;
        for (int column = 0; column < 3; ++column)
            found = found || item->text(column).contains(wanted, Qt::CaseInsensitive);
        item->setHidden(!found);
    }
}

void ShortcutsWindow::refresh()
{
    for (int i = 0; i < list_->topLevelItemCount(); ++i) {
        QTreeWidgetItem* item = list_->topLevelItem(i);
        const QString id = item->data(0, Qt::UserRole).toString();
        if (id.isEmpty())
            continue;
        const QString keys = textOf(actions_[id]->shortcuts());
        const bool standard = keys_.isStandard(id);
        item->setText(1, standard ? keys : tr("%1 (changed)").arg(keys.isEmpty() ? tr("none") : keys));
        QFont font = item->font(1);
        font.setBold(!standard);
        item->setFont(1, font);
    }
}

QString ShortcutsWindow::chosen() const
{
    const QTreeWidgetItem* item = list_->currentItem();
    return item ? item->data(0, Qt::UserRole).toString() : QString();
}

void ShortcutsWindow::choose(const QString& id)
{
    for (int i = 0; i < list_->topLevelItemCount(); ++i)
        if (list_->topLevelItem(i)->data(0, Qt::UserRole).toString() == id)
            list_->setCurrentItem(list_->topLevelItem(i));
}

void ShortcutsWindow::showChosen()
{
    const QString id = chosen();
    const QSignalBlocker quiet(edit_);
    edit_->setKeySequence(id.isEmpty() ? QKeySequence() : actions_[id]->shortcut());
    for (QWidget* widget : std::initializer_list<QWidget*>{edit_, none_})
        widget->setEnabled(!id.isEmpty());
    standard_->setEnabled(!id.isEmpty() && !keys_.isStandard(id));
    title_->setText(id.isEmpty() ? tr("The drawing's own keys cannot be changed.")
                                 : tr("Keys for “%1”").arg(wordsOf(*actions_[id])));
    const QString standard = id.isEmpty() ? QString() : textOf(keys_.standard(id));
    say(id.isEmpty() ? QString()
                     : tr("Press the new keys in the field. Default: %1.")
                           .arg(standard.isEmpty() ? tr("none") : standard),
        false);
}

void ShortcutsWindow::keyTyped()
{
    const QString id = chosen();
    const QKeySequence typed = edit_->keySequence();
    if (id.isEmpty() || typed.isEmpty())
        return;
    const QKeySequence key(typed[0]); // one press; what follows it begins anew
    {
        const QSignalBlocker quiet(edit_);
        edit_->setKeySequence(key);
    }
    const QString shown = key.toString(QKeySequence::NativeText);
    if (Keys::isOfDrawing(key)) {
        say(tr("%1 belongs to the drawing: choose other keys.").arg(shown), true);
        return;
    }
    if (keys_.give(id, key)) {
        say(tr("%1 now runs “%2”.").arg(shown, wordsOf(*actions_[id])), false);
        standard_->setEnabled(!keys_.isStandard(id));
        return;
    }
    wanted_ = key;
    say(tr("%1 runs “%2” already. Nothing was changed.").arg(shown, wordsOf(*actions_[keys_.holderOf(key)])),
        true, true);
}

void ShortcutsWindow::say(const QString& sentence, bool problem, bool may_take)
{
    message_->setProperty("role", problem ? QStringLiteral("problem") : QStringLiteral("faint"));
    message_->style()->unpolish(message_);
    message_->style()->polish(message_);
    message_->setText(sentence);
    take_->setVisible(may_take);
}

} // namespace siphonwright
