#pragma once

#include <QWidget>

class QDockWidget;

namespace siphonwright {

/// The title of a panel that stands at its side, so that its height is left to what it shows: a name read
/// upwards, and the buttons that float and close the panel. A name that has no room whole is left out: the
/// panel's tab says it, and the tool tip.
class SideTitle : public QWidget {
    Q_OBJECT
public:
    explicit SideTitle(QDockWidget& dock);
    QSize sizeHint() const override { return minimumSizeHint(); }
    QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void sizeButtons();

    QDockWidget& dock_;
};

/// While the dock floats it has a window's frame, which names it and moves it.
void putTitleAtSide(QDockWidget& dock);

} // namespace siphonwright
