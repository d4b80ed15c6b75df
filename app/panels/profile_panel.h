#pragma once

#include "app/document/document.h"

#include <QPainterPath>
#include <QWidget>

namespace siphonwright::panels {

/// Height along the hose: crown and bottom of the bore of every hose, side by side in one height scale, with
/// the cold minimum level, the air that high points would hold and the coolant that dips keep. The pointer
/// here and the one on the elevation move together.
class ProfilePanel : public QWidget {
    Q_OBJECT
public:
    ProfilePanel(Document& document, Selection& selection, QWidget* parent = nullptr);

    void setDark(bool dark);
    QSize sizeHint() const override { return {600, 140}; }
    QSize minimumSizeHint() const override { return {240, 90}; }

    /// Widget position of a place along a hose's path, at its centreline; and back. Nothing: not shown.
    std::optional<QPointF> positionOf(const Id& hose, double along_mm) const;
    struct Place {
        Id hose;
        double along_mm = 0;
    };
    std::optional<Place> placeAt(const QPointF& at) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Sample {
        double along_mm;
        BoreHeights heights;
    };
    /// One hose's strip of the widget.
    struct Strip {
        Id hose;
        HoseRole role = HoseRole::supply;
        double length_mm = 0;
        double left = 0;
        double width = 0;
        std::vector<Sample> samples;

        double x(double along_mm) const { return left + width * along_mm / length_mm; }
    };

    void sample();
    void arrange();
    double y(double height_mm) const;
    QPainterPath between(const Strip& strip, double from_mm, double to_mm, double level_mm, bool over) const;
    void paintScale(QPainter& painter) const;
    void paintStrip(QPainter& painter, const Strip& strip) const;
    void paintHover(QPainter& painter) const;
    void paintLevel(QPainter& painter) const;

    Document& document_;
    Selection& selection_;
    bool dark_ = false;
    std::vector<Strip> strips_;
    double lowest_mm_ = 0;
    double highest_mm_ = 1;
};

} // namespace siphonwright::panels
