#pragma once

#include "app/commissioning/diagnoser.h"
#include "app/drawing/look.h"

#include <QWidget>

class QPainter;

namespace siphonwright::drawing {
struct Palette;
}

namespace siphonwright::commissioning {

/// Readings over time, as marks on what the drawing would give: a line and its band for each temperature that
/// was read. Lines differ by dashes and marks by shape, not by colour alone.
class ReadingChart : public QWidget {
    Q_OBJECT
public:
    explicit ReadingChart(QWidget* parent = nullptr);

    void setLook(drawing::Look look);
    void setUnits(UnitSystem units);
    void show(Outcome outcome, bool of_before);
    void clear();
    QSize sizeHint() const override { return {320, 220}; }
    QSize minimumSizeHint() const override { return {240, 200}; }

    void paint(QPainter& painter, const QRectF& room, const drawing::Palette& ink) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<Outcome> outcome_;
    bool of_before_ = false;
    drawing::Look look_ = drawing::Look::light;
    UnitSystem units_ = UnitSystem::metric;
};

} // namespace siphonwright::commissioning
