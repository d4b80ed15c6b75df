#pragma once

#include "tests/sheet/recording_device.h"

#include "app/sheet/sheet.h"

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QTransform>

#include <vector>

namespace siphonwright::test {

/// A text as it came to stand on the page.
struct WrittenText {
    QString text;
    QRectF box;     ///< round its ink, device units
    QPolygonF area; ///< its ink, turned as it is
};

/// Takes down every text with the box of its ink; everything else is let go.
class TextRecorder : public RecordingDevice {
public:
    explicit TextRecorder(QSize size) : RecordingDevice(size), engine_(texts_) {}

    QPaintEngine* paintEngine() const override { return &engine_; }
    const std::vector<WrittenText>& texts() const { return texts_; }

private:
    class Engine : public QPaintEngine {
    public:
        explicit Engine(std::vector<WrittenText>& texts) : QPaintEngine(AllFeatures), texts_(texts) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState& changed) override
        {
            if (changed.state() & DirtyTransform)
                transform_ = changed.transform();
        }
        void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
        void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
        void drawPath(const QPainterPath&) override {}
        void drawTextItem(const QPointF& at, const QTextItem& item) override
        {
            const QRectF ink = QFontMetricsF(item.font()).tightBoundingRect(item.text());
            const QRectF placed = ink.translated(at);
            texts_.push_back({item.text(), transform_.mapRect(placed), transform_.map(QPolygonF(placed))});
        }
        Type type() const override { return User; }

    private:
        std::vector<WrittenText>& texts_;
        QTransform transform_;
    };

    std::vector<WrittenText> texts_;
    mutable Engine engine_;
};

/// What is written on a page, 10 device units to the millimetre.
inline std::vector<WrittenText> textsOn(const sheet::FurtherPage& page)
{
    TextRecorder recorder((page.layout.fullRect(QPageLayout::Millimeter).size() * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    page.paint(painter);
    painter.end();
    return recorder.texts();
}

/// All that stands on pages, with this between one text and the next.
inline QString wordsOn(const std::vector<sheet::FurtherPage>& pages, QLatin1Char between)
{
    QString words;
    for (const sheet::FurtherPage& page : pages)
        for (const WrittenText& text : textsOn(page))
            words += text.text + between;
    return words;
}

} // namespace siphonwright::test
