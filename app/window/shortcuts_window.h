#pragma once

#include <QDialog>
#include <QKeySequence>

class QKeySequenceEdit;
class QLabel;
class QLineEdit;
class QMenuBar;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace siphonwright {

class Actions;
class Keys;

/// Every command with its keys, changeable; the keys of the drawing itself are listed and stay. A key that is
/// taken is named with who has it, and goes over only when told to.
class ShortcutsWindow : public QDialog {
    Q_OBJECT
public:
    ShortcutsWindow(const Actions& actions, Keys& keys, const QMenuBar& menus, QWidget* parent);

    /// Choose a command in the list.
    void choose(const QString& id);

private:
    QWidget* buildEditor();
    void fill(const QMenuBar& menus);
    void filter();
    void refresh();
    void showChosen();
    void keyTyped();
    void say(const QString& sentence, bool problem, bool may_take = false);
    QString chosen() const;

    const Actions& actions_;
    Keys& keys_;
    QLineEdit* filter_;
    QTreeWidget* list_;
    QLabel* title_;
    QKeySequenceEdit* edit_;
    QPushButton* none_;
    QPushButton* standard_;
    QPushButton* all_standard_;
    QLabel* message_;
    QPushButton* take_;
    QKeySequence wanted_; ///< that another command has
};

} // namespace siphonwright
