#include "core/geometry/droop.h"

#include <algorithm>
#include <limits>

namespace siphonwright {

namespace {

/// The place along a centreline nearest to a corner: the middle of its bend, or itself on a straight.
double placeOf(const Centreline& line, const std::vector<Corner>& corners, std::size_t corner)
{
    for (const Bend& bend : line.bends()) {
        if (bend.corner == corner)
            return bend.s;
    }
    double best = 0;
    double nearest = std::numeric_limits<double>::infinity();
    for (const Piece& piece : line.pieces()) {
        const double along = piece.radius_mm > 0 ? 0 : dot(corners[corner].at - piece.start, piece.u);
        const double t = std::clamp(along, 0.0, piece.length_mm);
        const double gap = distance(piece.at(t), corners[corner].at);
        if (gap < nearest) {
            nearest = gap;
            best = piece.s + t;
        }
    }
    return best;
}

/// One corner made to sag by itself.
class Sagging {
public:
    Sagging(const std::vector<Corner>& corners, std::size_t corner, const Plumb& plumb,
            const PathOfCorners& path_of, double least_mm)
        : drawn_(corners[corner].at),
          corners_(corners),
          corner_(corner),
          plumb_(plumb),
          path_of_(path_of),
          least_mm_(least_mm)
    {}

    bool traps(double sag_mm)
    {
        corners_[corner_].at = drawn_ - plumb_.up() * sag_mm;
        return hasTrap(path_of_(corners_), plumb_, least_mm_);
    }

    /// The least sag that traps, if it is less than `limit_mm`.
    std::optional<double> least(double limit_mm)
    {
        constexpr double resolution_mm = 0.01;
        for (int step_mm = 0; step_mm < limit_mm; ++step_mm) {
            double low = step_mm;
            double high = std::min(low + 1, limit_mm);
            if (!traps(high))
                continue;
            while (high - low > resolution_mm) {
                const double middle = (low + high) / 2;
                (traps(middle) ? high : low) = middle;
            }
            return high;
        }
        return std::nullopt;
    }

private:
    Vec3 drawn_;
    std::vector<Corner> corners_;
    std::size_t corner_;
    const Plumb& plumb_;
    const PathOfCorners& path_of_;
    double least_mm_;
};

} // namespace

Droop droopMargin(const std::vector<Corner>& corners, std::size_t first, std::size_t end, const Plumb& plumb,
                  const PathOfCorners& path_of, double least_mm)
{
    Droop droop;
    const Path drawn = path_of(corners);
    if (hasTrap(drawn, plumb, least_mm)) {
        droop.already_trapped = true;
        droop.already_humps = hasHump(drawn, plumb, least_mm);
        return droop;
    }
    for (std::size_t i = first; i < std::min(end, corners.size()); ++i) {
        const double limit = droop.margin_mm.value_or(droop_limit_mm);
        const std::optional<double> least = Sagging(corners, i, plumb, path_of, least_mm).least(limit);
        if (least && *least < droop.margin_mm.value_or(droop_limit_mm + 1)) {
            droop.margin_mm = least;
            droop.corner = i;
        }
    }
    droop.more_than_150 = !droop.margin_mm;
    if (droop.margin_mm)
        droop.along_mm = placeOf(drawn.line, corners, droop.corner);
    return droop;
}

Droop droopMargin(const std::vector<Corner>& corners, double bore_mm, const Plumb& plumb, double least_mm)
{
    const PathOfCorners path_of = [bore_mm](const std::vector<Corner>& moved) {
        Path path;
        path.line = Centreline(moved);
        path.bores = {{0, path.line.length(), bore_mm}};
        return path;
    };
    return droopMargin(corners, 1, corners.empty() ? 0 : corners.size() - 1, plumb, path_of, least_mm);
}

} // namespace siphonwright
