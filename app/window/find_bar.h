#pragma once

#include "app/canvas/elevation_view.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QListWidget;

namespace siphonwright {

/// Finds parts of the drawing by name: a small bar in the corner of the elevation. What matches is listed
/// and shown as one goes through the list; Enter selects it and brings it to the middle, Escape goes back.
class FindBar : public QFrame {
    Q_OBJECT
public:
    explicit FindBar(ElevationView& view);

    void open();
    QLineEdit& line() { return *line_; }
    QListWidget& list() { return *list_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent*) override {} ///< what the bar does not know must not reach the drawing

private:
    bool keyIn(int key);
    void fill();
    void choose();
    void close();
    void place();

    ElevationView& view_;
    QLineEdit* line_;
    QListWidget* list_;
    QLabel* none_;
    std::vector<PartRef> found_;
};

} // namespace siphonwright
