#include "app/window/end_view_commands.h"

#include "app/window/actions.h"
#include "app/window/settings.h"

#include <QSplitter>

namespace siphonwright {

Projection endBeside(bool third_angle)
{
    return Projection(third_angle ? Projection::From::from_right : Projection::From::from_left);
}

EndViewCommands::EndViewCommands(Document& document, Selection& selection, ElevationView& elevation,
                                 Actions& actions, QSplitter& stage)
    : QObject(&stage),
      elevation_(elevation),
      stage_(stage),
      view_(new ElevationView(document, selection, &stage, endBeside(settings::third_angle.get())))
{
    view_->setVisible(settings::end_view.get());
    stage_.insertWidget(1, view_);
    stage_.setStretchFactor(0, 3);
    stage_.setStretchFactor(1, 2);
    elevation_.setPartner(view_);
    connect(view_, &ElevationView::contextMenuWanted, &elevation_, &ElevationView::contextMenuWanted);
    elevation_.setLevelled(settings::end_view_level.get());
    const auto toggle = [&](const char* id, const Setting<bool>& setting, auto act) {
        QAction* action = actions[QString::fromLatin1(id)];
        action->setChecked(setting.get());
        connect(action, &QAction::toggled, this, [&setting, act](bool on) {
            setting.set(on);
            act(on);
        });
    };
    toggle("end-view", settings::end_view, [this](bool on) { show(on); });
    toggle("end-view-level", settings::end_view_level, [this](bool on) { elevation_.setLevelled(on); });
    toggle("third-angle", settings::third_angle, [this](bool on) { setThirdAngle(on); });
}

void EndViewCommands::show(bool on)
{
    view_->setVisible(on);
    if (on) {
        QList<int> sizes = stage_.sizes();
        const int room = sizes[0] + sizes[1];
        sizes[0] = room * 3 / 5;
        sizes[1] = room - sizes[0];
        stage_.setSizes(sizes);
        view_->zoomToFit();
    } else if (view_->hasFocus()) {
        elevation_.setFocus();
    }
    QMetaObject::invokeMethod(&elevation_, &ElevationView::zoomToFit, Qt::QueuedConnection);
}

void EndViewCommands::setThirdAngle(bool on)
{
    view_->setView(endBeside(on));
}

} // namespace siphonwright
