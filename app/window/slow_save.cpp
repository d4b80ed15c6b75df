#include "app/window/slow_save.h"

#include "app/window/plain_box.h"

#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace siphonwright {

SlowSave::End SlowSave::wait(QWidget& window)
{
    if (save_.isDone(patience_.unseen))
        return End::done;
    QMessageBox box(QMessageBox::Information, tr("Siphonwright"), tr("%1 is being saved…").arg(name_),
                    QMessageBox::NoButton, &window);
    box.setObjectName(QStringLiteral("slow-save"));
    box.setInformativeText(tr("This closes by itself when it is done."));
    showPlainText(box);
    const QPushButton* elsewhere = box.addButton(tr("Save &as…"), QMessageBox::ActionRole);
    QPushButton* stop = box.addButton(tr("&Stop waiting"), QMessageBox::RejectRole);
    box.setDefaultButton(stop);
    QTimer look;
    constexpr int look_ms = 50;
    QObject::connect(&look, &QTimer::timeout, &box, [this, &box] {
        if (save_.isDone())
            box.done(0);
    });
    look.start(look_ms);
    QTimer::singleShot(patience_.unanswered - patience_.unseen, &box, [this, &box] {
        box.setIcon(QMessageBox::Warning);
        box.setText(tr("%1 is not saved yet: its place does not answer.").arg(name_));
        box.setInformativeText(
            tr("A network drive may be busy or gone. This closes by itself when the drawing is saved after "
               "all. If you save in another place, or stop waiting, the file there stays as it was, and your "
               "drawing stays on the table."));
    });
    box.exec();
    if (box.clickedButton() == elsewhere)
        return End::elsewhere;
    return save_.isDone() ? End::done : End::given_up;
}

} // namespace siphonwright
