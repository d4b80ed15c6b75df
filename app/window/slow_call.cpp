#include "app/window/slow_call.h"

#include "app/window/plain_box.h"

#include <QGuiApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>

namespace siphonwright {

QString SlowCall::going() const
{
    switch (what_) {
    case What::saving:
        return tr("%1 is being saved…").arg(name_);
    case What::writing:
        return tr("%1 is being written…").arg(name_);
    case What::opening:
    case What::opening_logo:
        break;
    }
    return tr("%1 is being opened…").arg(name_);
}

QString SlowCall::unanswered() const
{
    switch (what_) {
    case What::saving:
        return tr("%1 is not saved yet: its place does not answer.").arg(name_);
    case What::writing:
        return tr("%1 is not written yet: its place does not answer.").arg(name_);
    case What::opening:
    case What::opening_logo:
        break;
    }
    return tr("%1 is not open yet: its place does not answer.").arg(name_);
}

QString SlowCall::whatThen() const
{
    switch (what_) {
    case What::saving:
        return tr(
            "A network drive may be busy or gone. This closes by itself when the drawing is saved after "
            "all. If you save in another place, or stop waiting, the file there stays as it was, and "
            "your drawing stays on the table.");
    case What::writing:
        return tr("A network drive may be busy or gone. This closes by itself when the file is written after "
                  "all. If you stop waiting, what stands there stays as it was; write it again in another "
                  "place.");
    case What::opening_logo:
        return tr("A network drive may be busy or gone. This closes by itself when the logo is read after "
                  "all. If you stop waiting, the sheet is made without it.");
    case What::opening:
        break;
    }
    return tr("A network drive may be busy or gone. This closes by itself when the file is read after all. "
              "If you stop waiting, the drawing on the table stays as it is.");
}

SlowCall::End SlowCall::wait(const IsDone& is_done, QWidget& window) const
{
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const bool soon = is_done(patience_.unseen);
    QGuiApplication::restoreOverrideCursor();
    if (soon)
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
