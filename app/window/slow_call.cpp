#include "app/window/slow_call.h"

#include "app/window/plain_box.h"

#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace siphonwright {

QString SlowCall::going() const
{
    return what_ == What::saving ? tr("%1 is being saved…").arg(name_) : tr("%1 is being opened…").arg(name_);
}

QString SlowCall::unanswered() const
{
    return what_ == What::saving ? tr("%1 is not saved yet: its place does not answer.").arg(name_)
                                 : tr("%1 is not open yet: its place does not answer.").arg(name_);
}

QString SlowCall::whatThen() const
{
    return what_ == What::saving
               ? tr("A network drive may be busy or gone. This closes by itself when the drawing is saved "
                    "after "
                    "all. If you save in another place, or stop waiting, the file there stays as it was, and "
                    "your drawing stays on the table.")
               : tr("A network drive may be busy or gone. This closes by itself when the file is read after "
                    "all. "
                    "If you stop waiting, the drawing on the table stays as it is.");
}

SlowCall::End SlowCall::wait(const IsDone& is_done, QWidget& window) const
{
    if (is_done(patience_.unseen))
        return End::done;
    static constexpr std::chrono::milliseconds at_once{0};
    QMessageBox box(QMessageBox::Information, tr("Siphonwright"), going(), QMessageBox::NoButton, &window);
    box.setObjectName(QStringLiteral("slow-call"));
    box.setInformativeText(tr("This closes by itself when it is done."));
    showPlainText(box);
    const QPushButton* elsewhere =
        what_ == What::saving ? box.addButton(tr("Save &as…"), QMessageBox::ActionRole) : nullptr;
    QPushButton* stop = box.addButton(tr("&Stop waiting"), QMessageBox::RejectRole);
    box.setDefaultButton(stop);
    QTimer look;
    constexpr int look_ms = 50;
    QObject::connect(&look, &QTimer::timeout, &box, [&is_done, &box] {
        if (is_done(at_once))
            box.done(0);
    });
    look.start(look_ms);
    QTimer::singleShot(patience_.unanswered - patience_.unseen, &box, [this, &box] {
        box.setIcon(QMessageBox::Warning);
        box.setText(unanswered());
        box.setInformativeText(whatThen());
    });
    box.exec();
    if (elsewhere && box.clickedButton() == elsewhere)
        return End::elsewhere;
    return is_done(at_once) ? End::done : End::given_up;
}

} // namespace siphonwright
