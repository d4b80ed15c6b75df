#pragma once

#include "app/canvas/elevation_view.h"

#include <QObject>

class QSplitter;

namespace siphonwright {

class Actions;

/// The end view beside the elevation: shows and hides it, keeps both level, and remembers what was chosen.
class EndViewCommands : public QObject {
    Q_OBJECT
public:
    EndViewCommands(Document& document, Selection& selection, ElevationView& elevation, Actions& actions,
                    QSplitter& stage);

    ElevationView& view() { return *view_; }

private:
    void show(bool on);
    void setThirdAngle(bool on);

    ElevationView& elevation_;
    QSplitter& stage_;
    ElevationView* view_;
};

/// The end that is looked at when the end view stands at the elevation's right: in first-angle projection the
/// left end, in third-angle projection the right one.
Projection endBeside(bool third_angle);

} // namespace siphonwright
