#pragma once

#include <QRectF>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <unordered_map>
#include <vector>

namespace siphonwright::drawing {

/// Whether two areas share more than an edge: QRectF::intersects() of those that are not turned inside out,
/// compiled where it is asked. Labels ask it ten thousands of times a frame.
inline bool meet(const QRectF& a, const QRectF& b)
{
    return std::max(a.left(), b.left()) < std::min(a.right(), b.right()) &&
           std::max(a.top(), b.top()) < std::min(a.bottom(), b.bottom());
}

/// Small areas that lines and texts take on the drawing, found again by where they are: a label asks for what
/// lies under it without walking all of them. A few are looked through one by one, in their order.
class LineField {
public:
    struct Area {
        QRectF area;
        bool broad = false; ///< of a hose
        bool operator==(const Area& other) const = default;
    };

    /// @param cell  side of a square of the grid in drawing mm; larger areas are looked through one by one
    explicit LineField(double cell = 1) : cell_(cell) {}

    void add(const QRectF& area, bool broad = false);
    const std::vector<Area>& areas() const { return areas_; }
    /// Whether there is any area of hoses, or of other lines.
    bool hasBroad() const { return broad_ > 0; }
    bool hasThin() const { return areas_.size() > broad_; }
    bool hits(const QRectF& area) const;
    /// How much of an area is taken; what is taken twice counts twice. Square drawing mm.
    double covered(const QRectF& area) const;
    /// Show every area that may touch this one until `look` says that it has seen enough.
    /// @return whether it did.
    template <class Look>
    bool near(const QRectF& area, Look look) const;

private:
    static constexpr std::size_t few = 400;
    /// Over so many cells it is quicker to look at every area.
    static constexpr double most_cells = 10'000;

    static std::int64_t cellOf(double at, double cell)
    {
        constexpr double far = 1e9;
        return static_cast<std::int64_t>(std::floor(std::clamp(at / cell, -far, far)));
    }
    std::int64_t key(std::int64_t x, std::int64_t y) const { return x * 4'000'037 + y; }

    double cell_;
    std::vector<Area> areas_;
    std::size_t broad_ = 0;          ///< how many of them are
    std::vector<std::size_t> large_; ///< by their places in areas_
    std::unordered_map<std::int64_t, std::vector<std::size_t>> cells_;
};

template <class Look>
bool LineField::near(const QRectF& area, Look look) const
{
    const double cells = (area.width() / cell_ + 2) * (area.height() / cell_ + 2);
    if (areas_.size() <= few || !(cells <= most_cells))
        return std::any_of(areas_.begin(), areas_.end(), look);
    const auto shown = [&](std::size_t i) { return look(areas_[i]); };
    if (std::any_of(large_.begin(), large_.end(), shown))
        return true;
    // An area is in its centre's cell and reaches half a cell out of it at most.
    const double half = cell_ / 2;
    const std::int64_t right = cellOf(area.right() + half, cell_);
    const std::int64_t low = cellOf(area.bottom() + half, cell_);
    for (std::int64_t x = cellOf(area.left() - half, cell_); x <= right; ++x)
        for (std::int64_t y = cellOf(area.top() - half, cell_); y <= low; ++y)
            if (const auto found = cells_.find(key(x, y));
                found != cells_.end() && std::any_of(found->second.begin(), found->second.end(), shown))
                return true;
    return false;
}

} // namespace siphonwright::drawing
