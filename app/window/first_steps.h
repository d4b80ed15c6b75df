#pragma once

#include "app/document/document.h"

#include <QFrame>

class QPushButton;

namespace siphonwright {

class Actions;

/// The steps of a first drawing in a strip over the elevation, each a button that starts it. Goes away when
/// the loop is drawn or the strip is closed.
class FirstSteps : public QFrame {
    Q_OBJECT
public:
    FirstSteps(Document& document, const Actions& actions, QMenu& engines, QMenu& heaters, QWidget* parent);

    /// Show the strip again, as for a new drawing.
    void restart();

private:
    struct Step {
        QPushButton* button;
        QString text;
        bool (*done)(const Sketch&);
    };
    void addStep(const QString& text, const QString& what, bool (*done)(const Sketch&), QMenu* menu,
                 QAction* action);
    void refresh();

    Document& document_;
    std::vector<Step> steps_;
    bool closed_ = false;
};

} // namespace siphonwright
