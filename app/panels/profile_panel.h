#pragma once

#include "app/document/document.h"
#include "app/drawing/look.h"

#include <QPainterPath>
#include <QWidget>

#include <memory>

class QComboBox;
class QScrollBar;

namespace siphonwright::panels {

/// Height along the hose: crown and bottom of the bore of every hose, side by side in one height scale, with
/// the cold minimum level, the air that high points would hold and the coolant that dips keep. The pointer
/// here and the one on the elevation move together.
class ProfilePanel : public QWidget {
    Q_OBJECT
public:
    ProfilePanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    void setLook(drawing::Look look);

    /// How many times larger heights are drawn than lengths: 1, 2, 5 or 10; 0 fits them into the panel.
    void setExaggeration(int times);
    int exaggeration() const { return exaggeration_; }
    /// What the drawing is stretched by now, in words: "Heights 5 times the lengths".
    QString scaleWords() const;
    QSize sizeHint() const override { return {600, 140}; }
    /// Heights drawn larger need room to be seen in.
    QSize minimumSizeHint() const override
    {
        return {240, exaggeration_ > 1 ? 200 : static_cast<int>(60 + 30 * scale())};
    }

    /// Widget position of a place along a hose's path, at its centreline; and back. Nothing: not shown.
    std::optional<QPointF> positionOf(const Id& hose, double along_mm) const;
    struct Place {
        Id hose;
        double along_mm = 0;
    };
    std::optional<Place> placeAt(const QPointF& at) const;

Q_SIGNALS:
    void exaggerationChanged(int times);

protected:
    void wheelEvent(QWheelEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    double scale() const { return drawing::textScale(font()); }
    double leftMargin() const { return 62 * scale(); }
    static constexpr double right_margin = 22;            ///< with the scroll bar
    double topMargin() const { return 4 + 20 * scale(); } ///< under the hoses' names and the scale
    double bottomMargin() const { return 4 + 16 * scale(); }
    static constexpr double gap = 26;

    struct Sample {
        double along_mm;
        BoreHeights heights;
    };
    /// One hose's strip of the widget.
    struct Strip {
        Id hose;
        HoseRole role = HoseRole::supply;
        std::shared_ptr<const Route> route; ///< that the samples are of
        double length_mm = 0;
        double left = 0;
        double width = 0;
        std::vector<Sample> samples;

        double x(double along_mm) const { return left + width * along_mm / length_mm; }
    };

    void sample();
    void arrange();
    void arrangeHeights();
    void follow();
    void lookAt(double height_mm);
    double worthSeeing() const;
    double roomForHeights() const;
    double y(double height_mm) const;
    QPainterPath between(const Strip& strip, double from_mm, double to_mm, double level_mm, bool over) const;
    void paintNames(QPainter& painter) const;
    void paintScale(QPainter& painter) const;
    void paintStrip(QPainter& painter, const Strip& strip) const;
    void paintHover(QPainter& painter) const;
    double highestBetween(double left, double right) const;
    void paintLevel(QPainter& painter) const;
    void paintLevelName(QPainter& painter) const;

    Document& document_;
    Selection& selection_;
    drawing::Look look_ = drawing::Look::light;
    std::vector<Strip> strips_;
    double lowest_mm_ = 0; ///< of all that is shown
    double highest_mm_ = 1;
    Vec3 sampled_up_; ///< plumb of the samples
    int exaggeration_ = 0;
    double px_per_mm_ = 1;    ///< of heights
    double looked_at_mm_ = 0; ///< height in the middle where not all fit
    QComboBox* times_;
    QScrollBar* scroll_; ///< over the heights that do not fit, mm from the highest
};

} // namespace siphonwright::panels
