#pragma once

#include "app/drawing/elevation.h"

#include "core/geometry/projection.h"
#include "core/geometry/vec.h"

#include <QRectF>

#include <optional>
#include <vector>

namespace siphonwright::drawing {

/// Where the findings' balloons stand. Up to most_balloons of them stand by themselves. Where more are in
/// sight, near ones share the balloon of the first of them, the worst, which says how many more it stands
/// for; out of sight none are laid out.
struct Balloons {
    std::vector<QPointF> places; ///< by finding: centre in painter axes; NaN for one that has no balloon
    std::vector<int> more;       ///< by finding: how many others its balloon stands for
};
constexpr std::size_t most_balloons = 60;

/// @param visible  what of the drawing is in sight, painter axes; null: everything
Balloons balloonsOf(const Analysis& analysis, const Style& style, const QRectF& visible = {});

/// Balloons of a view. In a drawing so large that they do not keep off hoses they are placed anew only when
/// a finding, the paper or what is highlighted is another.
class KeptBalloons {
public:
    const Balloons& of(const Analysis& analysis, const Style& style, const QRectF& visible);

private:
    struct Key {
        double radius = 0;
        Projection view;
        int highlighted = -1;
        QRectF visible;
        std::vector<std::optional<Vec3>> points;
        std::vector<Vec3> openings;
        bool operator==(const Key& other) const = default;
    };
    Key key_;
    Balloons balloons_;
};

} // namespace siphonwright::drawing
