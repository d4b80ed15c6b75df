#pragma once

#include "app/drawing/elevation.h"
#include "app/drawing/text.h"

#include <QCoreApplication>
#include <QPen>

#include <initializer_list>

class QPainter;
class QPainterPath;

/// A few primitives that the small drawings of the rules are made of.
namespace siphonwright::rules {

/// The space of one drawing, mm on the device: x to the right, z up, the origin at its lower left corner.
constexpr double drawing_width_mm = 84;
constexpr double drawing_height_mm = 60;

struct At {
    double x = 0;
    double z = 0;
};
using Points = std::initializer_list<At>;

using drawing::Anchor;

/// Draws in the lines and inks of the elevation. The painter's axes are the drawing's page: x right, y down,
/// the origin at the upper left, in millimetres of the device.
class Pencil {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::rules)

public:
    Pencil(QPainter& painter, const drawing::Palette& palette) : painter_(painter), palette_(palette) {}

    // The engine side.
    void engine(At low, At high); ///< a block with its jacket's band inside
    void engine() { engine({8, 27}, {60, 48}); }
    void port(At at);
    void thermostat(At at, const char* caption = nullptr);
    void sensor(At at, const char* caption = nullptr);
    void tank(At low, double width, double level_z);

    // The loop.
    /// 10 mm wide and 18 mm long, its outlet on top at {0, 11}, its inlet at the lower left at {-8, -6}.
    void heater(At centre, double turned_deg = 0, double size = 1);
    /// Corners are rounded by a radius; the return carries a chain line in its bore, as on the elevation.
    void supply(Points points, double bore = 1.7, double corner = 4)
    {
        hose(points, palette_.supply, false, bore, corner);
    }
    void back(Points points, double bore = 1.7) { hose(points, palette_.return_, true, bore, 4); }
    void pipe(Points points) { hose(points, palette_.faint, false, 1.2, 4); } ///< of another circuit
    void valve(At at, bool upright, bool open = true);
    void checkValve(At at, bool upright);
    void clip(At at, double hangs_from_z);
    void drain(At at);

    // What a case is about.
    void level(double z, const char* caption);
    void plainLevel(double z, double from_x, double to_x); ///< a dashed help line
    void air(At centre, double width, double height, double caption_above = 1.2);
    void lying(At centre, double width, double height); ///< coolant that stays
    void ice(At centre);
    void drops(At at);
    void heat(At at); ///< waves over something hot
    void shake(At at);
    void arrow(At from, At to);
    void bar(At from, At to); ///< a thick line of ink: a frame rail, a bracket
    void ground(double z);
    void hot(At low, At high, const char* caption); ///< something to keep clear of
    void ring(At centre, double radius);            ///< here it is
    void dimension(At from, At to, const char* caption);
    void beaker(At low, double share, const char* caption); ///< a glass of antifreeze and water
    void thermometer(At low, double share, double mark, const char* caption);
    void text(At at, const char* words, Anchor anchor = Anchor::left);

    /// The verdict in the corner: a cross and "Wrong", or a tick and "Right".
    void verdict(bool right);

private:
    QPointF page(At at) const { return {at.x, drawing_height_mm - at.z}; }
    QRectF box(At low, At high) const { return {page({low.x, high.z}), page({high.x, low.z})}; }
    QPen pen(const QColor& colour, double width_mm, Qt::PenStyle style = Qt::SolidLine) const;
    void hose(Points points, const QColor& colour, bool chained, double bore, double corner);
    void tube(const QPainterPath& path, const QColor& colour, bool chained, double bore);
    void head(QPointF tip, QPointF direction, const QColor& colour);

    QPainter& painter_;
    const drawing::Palette& palette_;
};

} // namespace siphonwright::rules
