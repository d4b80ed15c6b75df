#pragma once

#include "app/document/document.h"
#include "app/drawing/elevation.h"

#include <QWidget>

#include <functional>
#include <memory>

namespace siphonwright {

class Tool;

/// What a click does now.
enum class ToolKind {
    select,
    supply_hose,
    return_hose,
    port,
    heater,
    valve,
    bleed,
    clip,
    area,
    tank,
    photo_scale,
    photo_level,
    photo_straighten
};

/// The side elevation on the screen: rulers, grid, the drawing, handles and the pointer's tool. Holds no
/// truth of its own but pan and zoom.
class ElevationView : public QWidget {
    Q_OBJECT
public:
    ElevationView(Document& document, Selection& selection, QWidget* parent = nullptr);
    ~ElevationView() override;

    void setTool(ToolKind kind);
    ToolKind tool() const;
    /// What the next placing tool puts down, by template id (heater) ; empty: the first.
    void setHeaterTemplate(const std::string& id);

    /// Screen position (widget pixels) of a drawing point and back.
    QPointF toScreen(Vec2 p) const;
    Vec2 toDrawing(QPointF screen) const;
    /// Pixels per drawing millimetre.
    double zoom() const;

    void setSnapping(bool on);
    void setGridShown(bool on);
    void setRunningShown(bool on);
    void setTinted(bool on);
    void setDark(bool on);

    /// Draw this moment's coolant and air instead of what would stay; null: no more.
    void setContents(std::shared_ptr<const drawing::Contents> contents);
    void setFindingsShown(bool on);
    /// Larger letters, to be read from the back of a room.
    void setLettering(double times_usual);

public Q_SLOTS:
    void zoomToFit();
    void zoomToSelection();
    void zoomIn();
    void zoomOut();
    void deleteSelected();
    /// Bring a finding's place into view.
    void showFinding(int index);
    /// Bring a place into sight.
    void showPlace(Vec2 at);

Q_SIGNALS:
    void toolChanged();
    void hint(const QString& text); ///< what a click will do, for the status line
    void pointerAt(siphonwright::Vec2 at);
    /// What tool() needs of the photograph was pointed at: two points, or four corners.
    void photoPointsPicked(const std::vector<siphonwright::Vec2>& points);
    void contextMenuWanted(const siphonwright::PartRef& part, const QPoint& global);

protected:
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    struct State;
    void act(const std::function<void(Tool&)>& action);
    void moveCrosshair(Vec2 to);
    bool crosshairKey(const QKeyEvent& event);
    bool panKey(const QKeyEvent& event);
    void documentChanged();
    void refresh();
    std::unique_ptr<State> state_;
};

} // namespace siphonwright
