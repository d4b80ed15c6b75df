#pragma once

#include "tests/sheet/recording_device.h"

#include <QFontMetricsF>
#include <QLineF>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainterPath>
#include <QPen>
#include <QPolygonF>
#include <QString>
#include <QTransform>

#include <cmath>
#include <vector>

namespace siphonwright::test {

/// One thing that came onto the page, in order: a text's ink, a stroke between two points, or ground that
/// hides what is under it.
struct Inked {
    enum class What { text, stroke, fill };
    What what = What::text;
    QPolygonF area; ///< device units
    QRectF box;
    QString text;
    double width = 0;    ///< of a stroke
    double capitals = 0; ///< height of a text's capitals
    QLineF line = {};    ///< of a stroke, the whole of it
};

/// Takes down texts, strokes and opaque fills with the places that they take. Dashes count as lines; of a
/// clip its box is regarded.
class InkRecorder : public RecordingDevice {
public:
    explicit InkRecorder(QSize size) : RecordingDevice(size), engine_(inked_) {}

    QPaintEngine* paintEngine() const override { return &engine_; }
    const std::vector<Inked>& inked() const { return inked_; }

private:
    class Engine : public QPaintEngine {
    public:
        explicit Engine(std::vector<Inked>& inked) : QPaintEngine(AllFeatures), inked_(inked) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState& changed) override
        {
            if (changed.state() & DirtyTransform)
                transform_ = changed.transform();
            if (changed.state() & DirtyPen)
                pen_ = changed.pen();
            if (changed.state() & DirtyBrush)
                brush_ = changed.brush();
            if (changed.state() & DirtyClipPath)
                clip_ = transform_.mapRect(changed.clipPath().boundingRect());
            if (changed.state() & DirtyClipRegion)
                clip_ = transform_.mapRect(QRectF(changed.clipRegion().boundingRect()));
            if (changed.state() & DirtyClipEnabled && !changed.isClipEnabled())
                clip_ = QRectF();
        }
        void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
        void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override
        {
            QPolygonF shape;
            for (int i = 0; i < count; ++i)
                shape << points[i];
            add(shape, mode != PolylineMode);
        }
        void drawPath(const QPainterPath& path) override
        {
            for (const QPolygonF& shape : path.toSubpathPolygons())
                add(shape, true);
        }
        void drawTextItem(const QPointF& at, const QTextItem& item) override
        {
            const QRectF ink = QFontMetricsF(item.font()).tightBoundingRect(item.text()).translated(at);
            const QPolygonF area = transform_.map(QPolygonF(ink));
            const double capitals =
                QFontMetricsF(item.font()).capHeight() * std::sqrt(std::abs(transform_.determinant()));
            inked_.push_back({Inked::What::text, area, area.boundingRect(), item.text(), 0, capitals});
        }
        Type type() const override { return User; }

    private:
        void add(const QPolygonF& shape, bool filled)
        {
            const QPolygonF on_device = transform_.map(shape);
            if (filled && brush_.style() == Qt::SolidPattern && brush_.color().alpha() == 255)
                keep({Inked::What::fill, on_device, on_device.boundingRect(), {}, 0, 0});
            if (pen_.style() == Qt::NoPen)
                return;
            const double width = pen_.widthF() * std::sqrt(std::abs(transform_.determinant()));
            for (qsizetype i = 0; i + 1 < on_device.size(); ++i)
                addStroke(on_device[i], on_device[i + 1], width);
            if (filled && on_device.size() > 2 && on_device.first() != on_device.last())
                addStroke(on_device.last(), on_device.first(), width);
        }
        void addStroke(QPointF a, QPointF b, double width)
        {
            const QPointF way = b - a;
            const double length = std::hypot(way.x(), way.y());
            if (!(length > 0))
                return;
            const QPointF side = QPointF(-way.y(), way.x()) * (width / 2 / length);
            const QPolygonF area({a + side, b + side, b - side, a - side});
            keep({Inked::What::stroke, area, area.boundingRect(), {}, width, 0, QLineF(a, b)});
        }
        /// What the clip leaves of it.
        void keep(Inked one)
        {
            if (!clip_.isNull()) {
                one.area = one.area.intersected(QPolygonF(clip_));
                one.box = one.area.boundingRect();
            }
            if (!one.area.isEmpty())
                inked_.push_back(std::move(one));
        }

        std::vector<Inked>& inked_;
        QTransform transform_;
        QPen pen_;
        QBrush brush_;
        QRectF clip_;
    };

    std::vector<Inked> inked_;
    mutable Engine engine_;
};

} // namespace siphonwright::test
