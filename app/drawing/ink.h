#pragma once

#include "app/drawing/crossings.h"
#include "app/drawing/elevation.h"
#include "app/drawing/line_field.h"
#include "app/drawing/line_table.h"

#include <QLineF>
#include <QPainter>
#include <QPen>
#include <QPolygonF>

#include <memory>
#include <optional>
#include <utility>
#include <vector>

/// What the parts of the elevation's painter share: pens in millimetres of paper, hatching, labels that keep
/// out of each other's way.
namespace siphonwright::drawing {

/// Dashes of what is not there yet, mm on the device.
constexpr double ghost_dash_mm = 1.6;
constexpr double ghost_gap_mm = 1;

class BalloonPictures;

/// A place where a label may stand: on its baseline.
struct Spot {
    QPointF at;
    Anchor anchor = Anchor::left;
    double angle_deg = 0;
};

/// What a label is of: where, and within what distance it stands beside it and needs no line.
struct Led {
    QPointF to;
    double beside = 0;
    bool large = false;    ///< no point: it may be led to anywhere in it
    QString where = {};    ///< that in words, for a name that has no room; empty: its height
    bool in_place = false; ///< stands at its own spots or nowhere on the drawing
    /// What is large has an outline: on a page a text without a line stands in it or close by, and a line
    /// ends a little within it.
    QPolygonF area = {};
    /// On a page: places within the outline where nothing lies over it; found when all is drawn.
    std::vector<QPointF> seen = {};
    const ResolvedHose* hose = nullptr; ///< that it is the name of
    bool hidden = false;                ///< not to be seen: said in words alone, on a page
};

/// What has a name in a view, by what is said of it.
struct Named {
    std::vector<QPointF> points;
    std::vector<QPolygonF> areas;
};

struct LabelSet;
class Ink;

/// To something large, by its outline.
Led ledTo(const Ink& ink, const QPolygonF& outline);

class Ink {
public:
    Ink(QPainter& to, const Sketch& what, const Analysis& judged, const Style& how);

    QPainter& painter;
    const Sketch& sketch;
    const Analysis& analysis;
    const Style& style;
    const Palette& palette;
    const QRectF visible; ///< what of the drawing the device shows
    const double pixel;   ///< of the device, in drawing millimetres
    bool ghost = false;   ///< what is not there yet: outlines are dashed

    /// Whether a hose is drawn here; if not, it is in a picture kept from before (hose_layer.h).
    bool draws(const ResolvedHose& hose) const;
    std::vector<bool> left_out; ///< by the hose's place in the layout; empty: none
    /// Crossings of the hoses that are drawn here; over a picture also those with hoses in it.
    std::vector<Crossing> crossings(double gap_mm) const;
    SeenRuns* runs = nullptr;                    ///< kept from one frame to the next; null: none are
    BalloonPictures* balloon_pictures = nullptr; ///< likewise
    /// A hose's centreline as the view shows it, and a box round that; of the layout's own hoses.
    struct SeenLine {
        QPolygonF line;
        QRectF box;
    };
    const SeenLine& seenLine(const ResolvedHose& hose) const;
    /// A line with as many points as the device can show.
    QPolygonF shown(const QPolygonF& line) const;

    /// A point or direction of space in painter axes.
    QPointF page(Vec3 p) const { return toPage(p, style.view); }
    /// Millimetres on the device in drawing millimetres.
    double paper(double device_mm) const { return device_mm / style.scale; }
    QPen pen(const QColor& colour, double width_mm, Qt::PenStyle line = Qt::SolidLine) const;
    /// Long dash, dot: centrelines, the datum.
    QPen chainPen(const QColor& colour, double width_mm) const;
    /// Over a photograph a tint, so that it shows through.
    QBrush fill(const QColor& colour) const;
    void line(QPointF a, QPointF b) const { painter.drawLine(a, b); }
    /// A filled arrowhead with its tip at a point.
    void arrowhead(QPointF tip, QPointF direction, double length_mm, const QColor& colour) const;
    /// Parallel lines inside a polygon. Computed, not clipped: a clip is not kept by every device.
    void hatch(const QPolygonF& area, double spacing_mm, double angle_deg, const QPen& with) const;

    /// Keep labels out of an area: never write on what must be seen.
    void reserve(const QRectF& area);
    /// The same for what must be read: no leader line runs through it either.
    void reserveText(const QRectF& area);
    /// The same for a line that is drawn after the labels.
    void reserveLine(const QPolygonF& line);
    /// A line that leads to a dot: on a page no leader line crosses it or runs through the dot.
    void keepLeader(QPointF from, QPointF dot);
    /// Write on lines only if there is nowhere else; on broad ones, which are hoses, least of all.
    void avoid(const QPolygonF& line, double half_width);
    /// The same for a line that runs across the view: on a page a name in a gap of it reads as its own.
    void avoidAcross(const QPolygonF& line);
    /// The same for a closed outline, which on a page counts as much as a hose: it must not have gaps.
    void avoidOutline(QPolygonF outline);
    /// What colour is under a label that hides lines, and that there are lines all over (hatching).
    void groundOf(const QPolygonF& area, const QColor& colour, bool hatched);
    /// On a page: what is drawn here hides what was drawn before.
    void cover(const QPolygonF& outline);
    /// Whether some room round a place of an area is the area's own: within it, and nothing drawn after it
    /// lies over it. An area that was not covered with itself was drawn before all that was.
    bool seenAt(const QPolygonF& area, QPointF at) const;
    /// Whether an area is in sight and free of text and what must be read; free of lines too, if wanted.
    bool isFree(const QRectF& area, bool of_lines) const;
    /// How much of an area lines and hoses take, mm2 of the device.
    double covered_mm2(const QRectF& area) const;
    struct Ground {
        QPolygonF area;
        QColor colour;
        bool hatched = false;
    };
    /// What labels keep off and stand on.
    struct Room {
        LineField taken;
        LineField texts; ///< among those taken
        LineField lines;
        std::vector<Ground> grounds;
        bool same(const Room& other) const;
    };
    /// Of what was drawn here.
    const Room& room() const { return room_; }
    /// Keep off what another has drawn and written, too.
    void keepOff(std::shared_ptr<const Room> room) { under_ = std::move(room); }
    /// The same for a picture kept from before, over which all else is drawn.
    void standOver(std::shared_ptr<const Room> room);
    /// Write at the first spot that is free and in sight; failing that, at the first that hides no other
    /// text; not at all if there is none.
    bool labelNow(const std::vector<Spot>& spots, const QString& text, const QColor& colour);
    /// Two that belong together: both at their spots, clear of lines too, or neither.
    bool labelTwo(const Spot& spot, const QString& text, const Spot& other, const QString& other_text,
                  const QColor& colour);
    /// The same when everything is drawn and has reserved its place; all that wait are placed together, so
    /// that each gets the best place that the others leave it. A label of something that it may come to stand
    /// far from is led to it by a thin line.
    void label(std::vector<Spot> spots, const QString& text, const QColor& colour,
               const std::optional<Led>& led = {});
    /// Likewise, with the choice of place before all labels that wait.
    void labelFirst(std::vector<Spot> spots, const QString& text, const QColor& colour,
                    const std::optional<Led>& led = {});
    void writeLabels();
    /// By writeLabels.
    const PlacedNames& placed() const { return placed_; }
    /// A part's name with its item number behind it, where the page has one.
    QString numbered(const QString& name, const PartRef& part) const;

private:
    struct Waiting {
        std::vector<Spot> spots;
        QString text;
        QColor colour;
        std::optional<Led> led;
        bool first = false;
    };
    /// Each a place, or none; sets are what there was to choose from.
    void placeWaiting(std::vector<LabelSet>& sets, std::vector<std::optional<std::size_t>>& chosen) const;
    Named named() const;
    /// Where what waits for its name is seen; in an end view what is hidden waits no longer.
    void findSeen();
    /// Names that have no good place stand in a key, with a letter each in their place (label_key.cpp).
    /// @return whether names were put there
    bool moveToKey(const std::vector<LabelSet>& sets, const std::vector<std::optional<std::size_t>>& chosen);
    bool placeKey(const std::vector<std::size_t>& names);
    void addToKey(const std::vector<std::size_t>& names, const QRectF& box, int columns);
    std::size_t placesInKey() const; ///< beside the view
    QPointF placeInKey(std::size_t row) const;
    std::optional<PlacedName> apart(const QString& text);
    void orderKey(const std::vector<std::optional<std::size_t>>& chosen);
    /// What the key says, and what is said apart.
    void sayKey(const std::vector<std::optional<std::size_t>>& chosen, PlacedNames& placed);
    PlacedNames placeLabelsNow();
    void leadTo(QPointF from, QPointF to, const QColor& colour) const;
    QRectF boxOf(const Spot& spot, const QString& text) const;
    void write(const Spot& spot, const QString& text, const QColor& colour, bool hides) const;
    QColor groundAt(QPointF at) const;
    bool onHatching(const QRectF& area) const;
    /// Pieces of a line whose boxes are not much larger than it is.
    std::vector<QRectF> piecesOf(const QPolygonF& line, double half_width) const;
    /// Show every one of a field's areas that may touch this one, another's that is kept off too, until
    /// `look` says that it has seen enough. @return whether it did.
    template <class Look>
    bool near(LineField Room::*field, const QRectF& area, Look look) const
    {
        return (room_.*field).near(area, look) || (under_ && ((*under_).*field).near(area, look));
    }
    bool hits(LineField Room::*field, const QRectF& area) const;
    friend class LabelRoom;

    Room room_;
    std::shared_ptr<const Room> under_; ///< of another; null: none
    bool over_picture_ = false;
    std::vector<Waiting> waiting_;
    mutable std::vector<SeenLine> seen_lines_; ///< by the hose's place in the layout; found when asked for
    LineField across_;                         ///< on a page: lines across the view
    std::vector<QPolygonF> covers_;            ///< on a page, back to front
    std::vector<QLineF> leaders_;              ///< on a page, drawn otherwise than labels'
    std::vector<QPointF> dots_;                ///< what they lead to
    /// A name without a good place, with its letter.
    struct KeyRow {
        std::size_t name = 0; ///< of those that wait
        QPointF at;
        QString letter;
        QString said;
        int block = 0;
    };
    std::vector<KeyRow> key_;
    int key_blocks_ = 0;        ///< in the view, 1 at most
    std::size_t left_dear_ = 0; ///< names that stand at poor places, as the key has no room
    PlacedNames placed_;
};

/// Unit vector of a, and a turned by 90 degrees (painter axes).
QPointF unitOf(QPointF a);
inline QPointF turned(QPointF a)
{
    return {-a.y(), a.x()};
}
/// The angle at which text along a direction is read from below or from the right.
double readableAngle(QPointF direction);

// The parts, back to front.
void paintPhoto(Ink& ink);
void paintKeepClear(Ink& ink);
void paintGroundAndDatum(Ink& ink);
void paintEngine(Ink& ink);
void paintLevels(Ink& ink);
void paintTank(Ink& ink);
void paintHeaters(Ink& ink);
void paintPorts(Ink& ink);
void paintHoses(Ink& ink);
void paintPockets(Ink& ink);
/// Whether filling was computed to leave air somewhere: it may be another with every analysis.
bool leavesAir(const Ink& ink);
void paintUndersized(Ink& ink);
void paintHoseParts(Ink& ink);
/// On a page: the slope of each straight that is long enough to be written along.
void labelSlopes(Ink& ink);
/// Does another hose lie over or close by a place of a view?
bool othersAt(const Ink& ink, const ResolvedHose& hose, QPointF at);
/// "Supply hose, 420 mm along it".
QString placeWords(const Ink& ink, const Route& route, double along_mm);
/// The item number of an in-line part; what it is its symbol says.
void labelInlinePart(Ink& ink, const ResolvedHose& hose, std::size_t index);
void paintSagMargins(Ink& ink);
void paintPlumbArrow(Ink& ink);
void paintTemperatureScale(Ink& ink);
void paintRunningFigures(Ink& ink);

// What is in them at one moment: style.contents, which these need.
void paintJacketContents(Ink& ink, const QPolygonF& jacket);
void paintTankContents(Ink& ink, const QRectF& body);
void paintChamberContents(Ink& ink, const Heater& heater);
void paintBoreContents(Ink& ink);
void labelTemperatures(Ink& ink);
struct Balloons;
void paintBalloons(Ink& ink, const Balloons& balloons);
void reserveBalloonLines(Ink& ink, const Balloons& balloons);
/// Dimensions come last as well, and their text is never written over.
void reserveDimensions(Ink& ink);
void paintDimensions(Ink& ink);
void labelEngine(Ink& ink);

// What only an end view has.
void paintEndAxes(Ink& ink, const Engine& engine);
void paintUnknownDepth(Ink& ink, const Area& area);
void labelSides(Ink& ink, const Engine& engine);

/// The loop that a hose belongs to, if how it runs is to be shown and was computed.
const LoopRun* runOf(const Ink& ink, const ResolvedHose& hose);
/// What the colours of tinted hoses stand for.
struct TemperatureRange {
    double low_degC = 0;
    double high_degC = 0;
};
/// Of all hoses, on round figures; nothing when hoses are not tinted or nothing flows.
std::optional<TemperatureRange> temperatureRange(const Ink& ink);

/// A hose's centreline between two places along its path, as a view shows it.
QPolygonF trace(const Centreline& line, double from_mm, double to_mm, const Projection& view = {});
/// A heater's body as a view shows it, from its side, its end or between, and its chamber.
QPolygonF heaterBody(const Heater& heater, const Projection& view = {});
QPolygonF heaterChamber(const Heater& heater, const Projection& view = {});
/// The tank's body; its size is not part of the sketch, so it is drawn round its marks.
QRectF tankBody(const SurgeTank& tank, const Projection& view = {});
/// Where a point of the view's plane has a height along plumb, so far to the right (painter axes).
QPointF onLevel(const Plumb& plumb, double height_mm, double x, const Projection& view = {});

} // namespace siphonwright::drawing
