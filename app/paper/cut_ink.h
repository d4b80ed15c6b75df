#pragma once

#include "app/drawing/line_table.h"

#include "core/paperwork/estimate.h"

#include <QColor>
#include <QPointF>
#include <QString>

#include <vector>

class QPainter;

/// The cut plan as bars, one for rolls that are cut alike: the same on the screen and on paper.
namespace siphonwright::paper {

/// Rolls that are cut alike.
struct RollsAlike {
    std::int64_t rolls = 0;
    CutRoll roll;
};
std::vector<RollsAlike> rollsAlike(const BorePlan& bore);

struct CutInk {
    QColor ink;
    QColor fill; ///< of a cut
    QColor faint;
    double lettering = 2; ///< height of capitals, in the painter's unit, as are all lengths here
    double label_width = 30;
    double bar_width = 120;
    double bar_height = 6;
    double line = drawing::thin_mm;
};

/// One bar with its label to the left, the cuts in it and what is left over; `longest` is the length that a
/// full bar stands for. Hundredths of a mm.
void paintRoll(QPainter& painter, QPointF top_left, const RollsAlike& alike, const BorePlan& bore,
               std::int64_t longest, UnitSystem units, const CutInk& ink);

/// Whether each cut of a roll has room for its length in the bar.
bool lengthsFit(const RollsAlike& alike, const BorePlan& bore, std::int64_t longest, UnitSystem units,
                const CutInk& ink);
/// "3 × Supply hose, 1130 mm; Return hose, 670 mm"
QString cutsText(const RollsAlike& alike, const BorePlan& bore, UnitSystem units);

/// "Hose, bore 19.1 mm: 1.8 m off 2 m of rolls, the least there is; 0.2 m left over."
QString planText(const BorePlan& bore, UnitSystem units);
std::int64_t longestRoll(const std::vector<BorePlan>& plans);

} // namespace siphonwright::paper
