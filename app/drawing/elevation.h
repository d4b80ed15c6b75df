#pragma once

#include "core/analysis/analysis.h"
#include "core/geometry/projection.h"

#include <QColor>
#include <QFont>
#include <QLineF>
#include <QRectF>
#include <QString>

#include <optional>
#include <utility>
#include <vector>

class QPainter;

/// The stateless painter of the side elevation and of the end view, in millimetres of the real thing.
///
/// One set of functions draws the screen, the preview, print, PDF, SVG and PNG, so that they cannot disagree.
/// The painter's transformation maps a view's millimetres (x right, z UP, so painter y is -z: pass points
/// through toPage()) to the device; Style::view says which way the drawing is looked at. Line widths and text
/// heights are given in millimetres ON PAPER (or screen) and divided by the scale, so a 0.35 mm line is 0.35
/// mm at any scale.
namespace siphonwright::drawing {

/// Drawing axes to painter axes: {x, -z}.
inline QPointF toPage(Vec2 p)
{
    return {p.x, -p.z};
}
inline QPointF toPage(Vec3 p, const Projection& view = {})
{
    return toPage(view.flat(p));
}
inline Vec2 fromPage(QPointF p)
{
    return {p.x(), -p.y()};
}

struct Balloons;
struct Contents;
class HoseLayer;
struct Picture;

enum class Anchor { left, centre, right };

/// Text at a place, as it was found for it.
struct PlacedName {
    QPointF at; ///< painter axes
    Anchor anchor = Anchor::left;
    double angle_deg = 0;
    QString text;
    QColor colour;
    bool on_lines = false;             ///< it stands on ground of its own
    std::optional<QLineF> leader = {}; ///< to what it is of
};

/// Names and figures of a view with their places; and a key, which says the names that have no good one.
struct PlacedNames {
    std::vector<PlacedName> names;
    std::vector<PlacedName> key;
    /// What a key beside the view would have to hold for no name to be lost or stand at a poor place; no
    /// rows: none is needed, or the one that is there will do.
    std::size_t rows_wanted = 0;
    double row_mm = 0;      ///< the broadest of those, on the device
    std::size_t unsaid = 0; ///< names that are neither in the view nor in the key
};

/// Room for a key beside a view, painter axes; null: it has to be in the view.
struct KeyRoom {
    QRectF box;
    double column_mm = 0; ///< of its columns, on the device
};

/// What a page that the view stands on adds to it.
struct OnPage {
    /// Thin lines across the view, from what is written beside it to what that is of; painter axes.
    std::vector<QLineF> guides;
    QRectF visible; ///< what of the drawing the page shows, painter axes
    /// Item numbers of the parts list, written behind names: "[3]".
    std::vector<std::pair<PartRef, std::size_t>> items;
    /// An end view stands beside it, which says what runs across the engine.
    bool end_beside = false;
    KeyRoom key = {};
    /// Small things that no balloon hides, painter axes.
    std::vector<QRectF> unhidden = {};
    /// Placed before, by placeNames(); null: they are placed now.
    const PlacedNames* names = nullptr;
};

/// Ink and ground. Nothing is said by colour alone: supply and return also differ in line treatment, severity
/// also in shape.
struct Palette {
    QColor ground, grid, grid_strong, ink, faint, engine_fill, jacket_fill, heater_fill, supply, return_, air,
        held, level, stop, caution, advice, accent, text, keep_clear;
    /// Coolant from coldest to hottest; lightness runs one way, so that it reads in grey.
    QColor cold, tepid, hot;
    static Palette light();
    static Palette dark();
    static Palette paper(); ///< black and white
};

/// How the photograph is drawn: as a layer that lies under the rest; or mixed with the ground and cut to what
/// is seen, in colour or grey, for paper and files, where neither opacity nor a clip can be relied on.
enum class PhotoAs { layer, flat, flat_grey };

struct Style {
    Palette palette = Palette::light();
    Projection view;           ///< from where the drawing is seen
    double scale = 1;          ///< millimetres on the device per drawing millimetre (1:10 is 0.1)
    double lettering_mm = 2.5; ///< text height on the device
    UnitSystem units = UnitSystem::metric;
    bool fills = true;    ///< tinted areas; off for plain line work
    bool labels = true;   ///< names, sizes, level captions
    bool balloons = true; ///< numbered balloons of the findings
    bool running = true;  ///< each heater's flow, temperatures and heads; arrows by flow
    bool tint = false;    ///< hoses by the coolant's temperature, with a scale
    int highlighted_finding = -1;
    bool findings = true; ///< air that would stay, undersized stretches, margins
    /// What is in the bores at one moment of a demonstration, instead of what would stay in them.
    const Contents* contents = nullptr;
    /// The sketch's photograph, decoded; null: it is not drawn.
    const Picture* photo = nullptr;
    PhotoAs photo_as = PhotoAs::layer;
    /// On a page: heights are named beside the view, so not in it; and a name that would have to stand on a
    /// hose is left out. Null: on the screen.
    const OnPage* page = nullptr;
};

/// Everything, back to front: photograph, keep-clear areas, ground, engine, jacket, levels, thermostat, tank,
/// heaters, ports, hoses with flow arrows and sizes, trapped air and held coolant to scale, undersized
/// stretches, running figures, balloons. Draws nothing for what the sketch does not have.
/// `layer` is a view's: hoses that did not change are taken from it in a very large drawing; null: all are
/// drawn. `balloons` as they have been placed (balloon_places.h); null: they are placed now.
void paintElevation(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Style& style,
                    HoseLayer* layer = nullptr, const Balloons* balloons = nullptr);

/// Where paintElevation would write names and figures.
PlacedNames placeNames(const Sketch& sketch, const Analysis& analysis, const Style& style);

/// Less air than this is drawn, but not worth words.
constexpr double least_named_ml = 2;

/// Height of a row of the key, as a multiple of its lettering.
constexpr double key_row = 1.7;

/// Colour of a temperature on the way from coldest (0) to hottest (1).
QColor temperatureColour(const Palette& palette, double share);

/// Bounding box of all that paintElevation would draw but labels and the endless level lines, painter axes.
QRectF boundsOf(const Sketch& sketch, const Analysis& analysis, const Projection& view = {});

/// Where each finding's balloon stands (its centre, painter axes), in the order of analysis.findings; placed
/// beside their points without lying on each other. NaN for a finding that has no place on the drawing, and
/// for one that shares another's where hundreds crowd (balloon_places.h).
/// Radius: balloonRadius(style).
std::vector<QPointF> balloonPlaces(const Analysis& analysis, const Style& style);
double balloonRadius(const Style& style);

/// Text whose capitals have an exact height in mm on the device, its baseline at a point (painter axes).
void paintText(QPainter& painter, const Style& style, QPointF at, const QString& text, Anchor anchor,
               const QColor& colour, double angle_deg = 0);

/// The program's lettering, loaded once from the resources.
QFont lettering();

} // namespace siphonwright::drawing
