#pragma once

#include <QDialog>
#include <QPointer>

class QAction;
class QLabel;
class QLineEdit;
class QMenuBar;
class QTreeWidget;

namespace siphonwright {

class Actions;

/// A line to type in and the commands whose words match under it, each with its place in the menus and its
/// keys; Enter runs one. What cannot be done now is listed with the reason.
class CommandSearch : public QDialog {
    Q_OBJECT
public:
    CommandSearch(const Actions& actions, const QMenuBar& menus, QWidget* parent);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Command {
        QPointer<QAction> action;
        QString words;
        QString place;
        QString why_not; ///< of one that cannot be done now
    };
    void collect(const Actions& actions, const QMenuBar& menus);
    void list();
    void run();

    std::vector<Command> commands_;
    QLineEdit* line_;
    QTreeWidget* found_;
    QLabel* note_;
};

} // namespace siphonwright
