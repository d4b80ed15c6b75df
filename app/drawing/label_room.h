#pragma once

#include "app/drawing/ink.h"

#include "core/layout/place_labels.h"

#include <optional>
#include <vector>

/// Where labels may stand, and what each place costs.
namespace siphonwright::drawing {

/// What a label has to choose from.
struct LabelSet {
    LabelWish wish;
    std::vector<Spot> spots; ///< one per place
};

struct TextKind {
    bool letter = false;     ///< of the key: it says nothing by itself, so that it has to stand closer
    bool brief = false;      ///< a letter or a number: it has to stand more apart
    bool over_lines = false; ///< found by LabelRoom
};

/// Upright box round a turned one.
QRectF around(const LabelBox& box);

/// The room that is left for labels. On a page, which is looked at for longer than it takes to draw, more is
/// asked of a place: a text without a line stands nearest to what it is of, and a line crosses no other and
/// runs through nothing else that has a name.
class LabelRoom {
public:
    /// \param named  what has a name
    LabelRoom(const Ink& ink, Named named);

    LabelBox boxFor(const Spot& spot, double width) const;
    /// Nothing: it would hide what must be seen or read, or is out of sight.
    std::optional<LabelPlace> placeAt(const LabelBox& box, double cost, const std::optional<Led>& led,
                                      TextKind kind) const;
    bool hidesLines(const LabelBox& box) const;
    /// Places round what a label is of, on a leader line.
    std::vector<Spot> spotsRound(const Led& led, double width) const;
    /// Places all over the drawing, the nearest first, for what finds no good one round itself.
    std::vector<Spot> spotsFurther(const Led& led, double width) const;
    /// A free box of the drawing, from its lower left corner on; null where there is none.
    QRectF freeBox(const QSizeF& size) const;
    /// Where there is none: over thin lines alone, as few as can be; null where there is no such box either.
    QRectF boxOverLines(const QSizeF& size) const;

private:
    QPointF endOf(const Led& led, QPointF from) const;
    bool addLeader(LabelPlace& place, const Led& led, const QRectF& outer, TextKind kind) const;
    bool standsBy(const QRectF& outer, const Led& led, double far, TextKind kind) const;
    bool namesAnother(const LabelBox& box, const Led& led, bool letter) const;
    bool standsByAnother(const QRectF& outer, const Led& led) const;
    bool misleads(const LabelLeader& leader) const;
    double crossingCost(const LabelLeader& leader, const Led& led) const;
    int hosesCrossed(const LabelLeader& leader, const ResolvedHose& own) const;

    const Ink& ink_;
    Named named_;
    bool any_thin_; ///< lines there are at all
    bool any_broad_;
};

} // namespace siphonwright::drawing
