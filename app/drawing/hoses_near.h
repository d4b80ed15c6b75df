#pragma once

#include "core/geometry/projection.h"
#include "core/layout/layout.h"

#include <QPointF>

#include <cstddef>
#include <cstdint>
#include <limits>
#include <unordered_map>
#include <vector>

namespace siphonwright::drawing {

/// The pieces of all hoses by where a view shows them, so that what lies round a balloon is found without
/// walking the hoses.
class HosesNear {
public:
    /// @param radius  of a balloon, drawing mm
    HosesNear(const Layout& layout, const Projection& view, double radius);

    /// How far hoses reach into the room of a balloon that stands at a place (painter axes), as a length:
    /// its room is 1.6 of its radius. Once it is `most` or more it may be too little.
    double overlap(QPointF at, double most = std::numeric_limits<double>::infinity()) const;

private:
    struct Part {
        const Piece* piece = nullptr;
        std::size_t hose = 0;
        QPointF middle;
        double half_mm = 0;
    };
    void add(const Part& part, double reach_mm);
    double gapTo(const Part& part, QPointF at) const;
    std::int64_t cellOf(double at) const;
    static std::int64_t key(std::int64_t x, std::int64_t y) { return x * 4'000'037 + y; }

    Projection view_;
    double radius_;
    std::vector<double> reach_mm_;                                     ///< by hose: how near it counts
    std::vector<Part> parts_;                                          ///< hose by hose
    std::vector<std::size_t> large_;                                   ///< by their place in parts_
    std::unordered_map<std::int64_t, std::vector<std::size_t>> cells_; ///< every part that counts in a square
};

} // namespace siphonwright::drawing
