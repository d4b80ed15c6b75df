#pragma once

#include "app/canvas/snap.h"
#include "app/document/document.h"
#include "app/drawing/look.h"

#include "core/sketch/group_edits.h"

#include <QWidget>

#include <functional>
#include <memory>

class QNativeGestureEvent;
class QTouchEvent;

namespace siphonwright {

namespace drawing {
struct Ghost;
}

class Tool;
struct Pointer;
struct ShelfPart;

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
    dimension,
    box,
    photo_scale,
    photo_level,
    photo_straighten
};

/// The side elevation on the screen: rulers, grid, the drawing, handles and the pointer's tool. Holds no
/// truth of its own but pan and zoom.
class ElevationView : public QWidget {
    Q_OBJECT
public:
    ElevationView(Document& document, Selection& selection, QWidget* parent = nullptr, Projection view = {});
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
    void setSnapTo(SnapKind kind, bool on);
    void setSnapSlope(double slope); ///< of the constant rise, over length
    void setGridShown(bool on);
    void setRunningShown(bool on);
    void setTinted(bool on);
    void setLook(drawing::Look look);

    /// From where it is seen; the drawing then fits in again.
    void setView(const Projection& view);
    const Projection& view() const;
    /// A second view of the same drawing: from now on it shows what this one is told to show. Kept level, one
    /// height stands at one place on both.
    void setPartner(ElevationView* partner);
    void setLevelled(bool on);

    /// Draw this moment's coolant and air instead of what would stay; null: no more.
    void setContents(std::shared_ptr<const drawing::Contents> contents);
    void setFindingsShown(bool on);
    /// A part's box on the widget, pixels; empty where it is nowhere.
    QRectF rectOf(const PartRef& part) const;
    /// What a click there would select, widget pixels.
    PartRef partAt(QPointF screen) const;
    /// In the order that the keyboard goes through them.
    std::vector<PartRef> things() const;
    std::size_t thingCount() const;
    Document& document() const;
    Selection& selection() const;
    /// Lay what is not there yet over the drawing, and bring it into sight; null: no more.
    void setGhost(std::shared_ptr<const drawing::Ghost> ghost);
    /// Let a rectangle be drawn, and hand over its lowest left and highest right corner.
    void askForBox(const QString& hint, std::function<void(Vec2, Vec2)> take);
    /// Larger letters, to be read from the back of a room.
    void setLettering(double times_usual);
    /// Larger text everywhere: letters of the drawing, rulers and words at the pointer.
    void setTextScale(double times_usual);

public Q_SLOTS:
    /// Put a part from the shelf down in the middle of what is in sight, or into the selected hose.
    void placeInMiddle(const siphonwright::ShelfPart& part);

    void zoomToFit();
    void zoomToSelection();
    void zoomIn();
    void zoomOut();
    void deleteSelected();
    void selectEverything();
    void copy();
    void cut();
    void paste();     ///< where the pointer is, else beside what is there
    void duplicate(); ///< beside; a valve, bleed or clip on its hose
    void alignSelected(siphonwright::Alignment alignment);
    void distributeSelected(siphonwright::SpreadAlong spread);
    void turnSelected(double clockwise_deg);
    void connectSelected(); ///< a hose's end to the nearest opening, again: to the next
    void keepSelected();    ///< while Tab goes on
    void enterOutline();
    void openOrCloseSelected(); ///< valves, bleeds and drains
    void addPointHere();        ///< where the menu was opened, else in the middle of what is selected
    void addHere(siphonwright::ToolKind what);
    void bringToMiddle(const siphonwright::PartRef& part);
    /// Bring a finding's place into view.
    void showFinding(int index);
    /// Bring a place into sight.
    void showPlace(Vec2 at);

Q_SIGNALS:
    void heightsMoved(); ///< zoom or height of the paper is another
    void toolChanged();
    void hint(const QString& text); ///< what a click will do, for the status line
    void pointerAt(siphonwright::Vec2 at);
    void told(const QString& text); ///< what has just been done, or why not
    void refused(const QString& sentence, const QStringList& details);
    void detailsWanted();
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
    void timerEvent(QTimerEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    struct State;
    void putDown(const Sketch& copied, Vec3 delta, const QString& undo_text);
    std::optional<double> placeOnHose() const;
    bool gesture(QEvent* event);
    bool nativeGesture(const QNativeGestureEvent& event);
    void touch(const QTouchEvent& event);
    void movePaper(QPointF first, QPointF second);
    void oneFinger(QPointF at);
    void fingersLifted(QPointF at);
    void takeUp(const ShelfPart& part);
    void layDown(const ShelfPart& part, const Pointer& at);
    void act(const std::function<void(Tool&)>& action);
    void moveCrosshair(Vec2 to);
    double coarseStep() const;
    QString keysHint() const;
    bool crosshairKey(const QKeyEvent& event);
    bool panKey(const QKeyEvent& event);
    void documentChanged();
    void refresh();
    void paintGhost(QPainter& painter) const;
    template <class Value>
    void tellPartner(void (ElevationView::*set)(Value), const Value& value);
    ElevationView* levelPartner() const;
    void fitAlone();
    void keepLevel();
    void paintCaption(QPainter& painter) const;
    std::unique_ptr<State> state_;
};

} // namespace siphonwright
