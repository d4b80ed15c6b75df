#pragma once

#include "app/drawing/line_table.h"

#include "core/layout/layout.h"
#include "core/quantity/quantity.h"

#include <QPointF>
#include <QString>

#include <optional>
#include <utility>
#include <vector>

class QPainter;

/// A hose laid out flat, to cut and mark it by: clips, bends and what sits in it as distances from one end.
namespace siphonwright::paper {

/// Distances are taken from the hose's own cut end at A, over the hose end that it is pushed onto.
struct StripMark {
    enum class What { clip, part, bend };
    What what = What::clip;
    double from_mm = 0;
    double to_mm = 0; ///< of a bend; otherwise as from_mm
    QString text;
};

/// How a straight rises or falls from A to B: "1:12 up".
struct StripSlope {
    double from_mm = 0;
    double to_mm = 0;
    QString text;
};

struct HoseStrip {
    double length_mm = 0;  ///< as drawn: with what is pushed on at both ends, without allowance
    double on_at_a_mm = 0; ///< pushed on
    double on_at_b_mm = 0;
    std::vector<StripMark> marks;   ///< in order
    std::vector<StripSlope> slopes; ///< in order
    std::vector<double> along_mm;   ///< of the heights
    std::vector<double> crown_mm;   ///< top of the bore over the datum, along plumb
    std::vector<double> invert_mm;
};

HoseStrip stripOf(const ResolvedHose& hose, const Plumb& plumb, UnitSystem units);

/// A text under the bar, read from the right as running dimensions are (ISO 129), with a line up to its
/// place.
struct StripLabel {
    double at = 0; ///< the place on the bar
    double x = 0;  ///< middle of the text: moved aside as far as its neighbours make it
    QString text;
};
std::vector<StripLabel> labelsUnder(const HoseStrip& strip, double left, double width, double lettering);

/// What they take under the bar.
double heightOf(const std::vector<StripLabel>& labels, double lettering);

/// The slopes over the strip, the strip over its labels, and the height of its bore over the datum along it.
struct StripInk {
    double left = 0;
    double width = 0;
    double top = 0;
    double lettering = drawing::small_text_mm;
    UnitSystem units = UnitSystem::metric;
    /// Of a run profile: how high it is on paper, and which heights over the datum that shows, so that
    /// several are to one scale; nothing: the hose's own.
    double profile_mm = 22;
    std::optional<std::pair<double, double>> heights_mm = {};
};
constexpr double strip_slopes_mm = 3.8; ///< row over the bar
constexpr double strip_bar_mm = 5;
constexpr double strip_profile_mm = 22;
void paintStrip(QPainter& painter, const HoseStrip& strip, const std::vector<StripLabel>& labels,
                const StripInk& ink);
/// Top and bottom of the bore along the strip, over the datum; the highest and lowest are named.
void paintRunProfile(QPainter& painter, const HoseStrip& strip, const StripInk& ink);

} // namespace siphonwright::paper
