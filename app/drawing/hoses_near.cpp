#include "app/drawing/hoses_near.h"

#include "app/drawing/elevation.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace siphonwright::drawing {
namespace {

constexpr double room_radii = 1.6;   ///< of a balloon's radius
constexpr double square_radii = 4;   ///< side of a square of the grid, in radii
constexpr double most_squares = 100; ///< a piece that lies in more of them is looked at every time
constexpr double small_radii = 0.1;  ///< in radii: a piece so short is as near as its middle

} // namespace

HosesNear::HosesNear(const Layout& layout, const Projection& view, double radius)
    : view_(view), radius_(radius)
{
    for (const ResolvedHose& hose : layout.hoses) {
        reach_mm_.push_back(room_radii * radius + hose->outsideDiameter() / 2);
        for (const Piece& piece : hose->path.line.pieces())
            add({&piece, reach_mm_.size() - 1, toPage(piece.at(piece.length_mm / 2), view),
                 piece.length_mm / 2},
                reach_mm_.back());
    }
}

std::int64_t HosesNear::cellOf(double at) const
{
    constexpr double far = 1e9;
    return static_cast<std::int64_t>(std::floor(std::clamp(at / (square_radii * radius_), -far, far)));
}

void HosesNear::add(const Part& part, double reach_mm)
{
    const double wide =
        part.half_mm + reach_mm; // a piece goes no farther from its middle than half its length
    const double across = 2 * wide / (square_radii * radius_) + 1;
    if (!(across * across <= most_squares)) {
        large_.push_back(parts_.size());
    } else {
        const std::int64_t right = cellOf(part.middle.x() + wide);
        const std::int64_t low = cellOf(part.middle.y() + wide);
        for (std::int64_t x = cellOf(part.middle.x() - wide); x <= right; ++x)
            for (std::int64_t y = cellOf(part.middle.y() - wide); y <= low; ++y)
                cells_[key(x, y)].push_back(parts_.size());
    }
    parts_.push_back(part);
}

double HosesNear::gapTo(const Part& part, QPointF at) const
{
    const double t = part.half_mm < small_radii / 2 * radius_ ? part.half_mm
                                                              : nearestSeen(view_, *part.piece, fromPage(at));
    const QPointF nearest = toPage(part.piece->at(t), view_);
    return std::hypot(nearest.x() - at.x(), nearest.y() - at.y());
}

double HosesNear::overlap(QPointF at, double most) const
{
    const auto found = cells_.find(key(cellOf(at.x()), cellOf(at.y())));
    std::vector<std::size_t> both;
    const std::vector<std::size_t>* near_by = &large_;
    if (found != cells_.end() && large_.empty()) {
        near_by = &found->second;
    } else if (found != cells_.end()) {
        std::merge(large_.begin(), large_.end(), found->second.begin(), found->second.end(),
                   std::back_inserter(both));
        near_by = &both;
    }
    double sum = 0;
    for (std::size_t i = 0; i < near_by->size() && sum < most;) {
        const std::size_t hose = parts_[(*near_by)[i]].hose;
        double gap = reach_mm_[hose];
        for (; i < near_by->size() && parts_[(*near_by)[i]].hose == hose; ++i) {
            const Part& part = parts_[(*near_by)[i]];
            const QPointF off = part.middle - at;
            const double within = gap + part.half_mm; // else no place of it is as near
            if (QPointF::dotProduct(off, off) < within * within)
                gap = std::min(gap, gapTo(part, at));
        }
        sum += reach_mm_[hose] - gap;
    }
    return sum;
}

} // namespace siphonwright::drawing
