#include "core/layout/place_labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>

namespace siphonwright {
namespace {

using Chosen = std::vector<std::optional<std::size_t>>;

struct Axes {
    Vec2 along;
    Vec2 across;
};

Axes axesOf(const LabelBox& box)
{
    if (box.angle_rad == 0) // most: what lines and texts take is asked for ten thousands of times
        return {{1, 0}, {0, 1}};
    const double c = std::cos(box.angle_rad);
    const double s = std::sin(box.angle_rad);
    return {{c, s}, {-s, c}};
}

double dot2(Vec2 a, Vec2 b)
{
    return a.x * b.x + a.z * b.z;
}

/// Half of a box's extent along a direction.
double reach(const LabelBox& box, const Axes& axes, Vec2 direction)
{
    return box.half_along * std::abs(dot2(axes.along, direction)) +
           box.half_across * std::abs(dot2(axes.across, direction));
}

bool overlap(const LabelBox& a, const Axes& of_a, const LabelBox& b, const Axes& of_b)
{
    const Vec2 between{b.centre.x - a.centre.x, b.centre.z - a.centre.z};
    const std::array<Vec2, 4> directions{of_a.along, of_a.across, of_b.along, of_b.across};
    return std::none_of(directions.begin(), directions.end(), [&](Vec2 way) {
        return std::abs(dot2(between, way)) >= reach(a, of_a, way) + reach(b, of_b, way);
    });
}

bool crosses(const LabelLeader& line, const LabelBox& box, const Axes& axes)
{
    const auto local = [&](Vec2 p) {
        const Vec2 off{p.x - box.centre.x, p.z - box.centre.z};
        return Vec2{dot2(off, axes.along), dot2(off, axes.across)};
    };
    const Vec2 from = local(line.from);
    const Vec2 to = local(line.to);
    // Most boxes lie wholly on one side of the line: that is seen without a division.
    const Vec2 way{to.x - from.x, to.z - from.z};
    if (std::abs(from.x * way.z - from.z * way.x) >
        box.half_along * std::abs(way.z) + box.half_across * std::abs(way.x))
        return false;
    double enter = 0;
    double leave = 1;
    const auto clip = [&](double start, double by, double half) {
        if (std::abs(by) < 1e-12)
            return std::abs(start) < half;
        const double a = (-half - start) / by;
        const double b = (half - start) / by;
        enter = std::max(enter, std::min(a, b));
        leave = std::min(leave, std::max(a, b));
        return enter < leave;
    };
    return clip(from.x, way.x, box.half_along) && clip(from.z, way.z, box.half_across);
}

/// What is asked of a place again and again: where its box and its leader lie.
struct Extent {
    Axes axes;
    Vec2 low;
    Vec2 high;

    explicit Extent(const LabelPlace& place) : axes(axesOf(place.box))
    {
        constexpr double rounding = 1e-6;
        const Vec2 at = place.box.centre;
        const double wide = reach(place.box, axes, {1, 0}) + rounding;
        const double tall = reach(place.box, axes, {0, 1}) + rounding;
        low = {at.x - wide, at.z - tall};
        high = {at.x + wide, at.z + tall};
        if (!place.leader)
            return;
        for (const Vec2 end : {place.leader->from, place.leader->to}) {
            low = {std::min(low.x, end.x), std::min(low.z, end.z)};
            high = {std::max(high.x, end.x), std::max(high.z, end.z)};
        }
    }
    bool meets(const Extent& other) const
    {
        return low.x <= other.high.x && other.low.x <= high.x && low.z <= other.high.z &&
               other.low.z <= high.z;
    }
};

bool inTheWay(const LabelPlace& a, const Extent& of_a, const LabelPlace& b, const Extent& of_b)
{
    return of_a.meets(of_b) && (overlap(a.box, of_a.axes, b.box, of_b.axes) ||
                                (a.leader && crosses(*a.leader, b.box, of_b.axes)) ||
                                (b.leader && crosses(*b.leader, a.box, of_a.axes)) ||
                                (a.leader && b.leader && crosses(*a.leader, *b.leader)));
}

class Placer {
public:
    Placer(const std::vector<LabelWish>& wishes, std::size_t starts)
        : wishes_(wishes), starts_(starts), chosen_(wishes.size())
    {
        for (const LabelWish& wish : wishes) {
            extents_.emplace_back(wish.places.begin(), wish.places.end());
            std::vector<std::size_t> order(wish.places.size());
            std::iota(order.begin(), order.end(), std::size_t{0});
            std::stable_sort(order.begin(), order.end(), [&wish](std::size_t a, std::size_t b) {
                return wish.places[a].cost < wish.places[b].cost;
            });
            by_cost_.push_back(std::move(order));
        }
    }

    /// The best of what several first choices come to: which label chooses first decides much. One that found
    /// no place is the first to choose from then on.
    Chosen place()
    {
        Chosen best;
        double least = std::numeric_limits<double>::infinity();
        std::vector<std::size_t> found_none(wishes_.size());
        for (std::size_t start = 0; start < starts_; ++start) {
            placeFrom(turnOf(start, found_none));
            double cost = 0;
            for (std::size_t label = 0; label < wishes_.size(); ++label) {
                cost += costOf(label);
                found_none[label] += chosen_[label] || wishes_[label].places.empty() ? 0 : 1;
            }
            if (cost < least) {
                least = cost;
                best = chosen_;
            }
        }
        return best;
    }

private:
    /// Who has least to choose from first; at another start, whose best place costs most, or others.
    std::vector<std::size_t> turnOf(std::size_t start, const std::vector<std::size_t>& found_none) const
    {
        std::vector<std::size_t> turn(wishes_.size());
        std::iota(turn.begin(), turn.end(), std::size_t{0});
        const auto least = [this](std::size_t label) {
            return by_cost_[label].empty() ? 0 : wishes_[label].places[by_cost_[label].front()].cost;
        };
        const auto fewer = [this](std::size_t a, std::size_t b) {
            return wishes_[a].places.size() < wishes_[b].places.size();
        };
        std::stable_sort(turn.begin(), turn.end(), [&](std::size_t a, std::size_t b) {
            return start == 1 ? least(a) > least(b) : fewer(a, b);
        });
        constexpr std::size_t step = 5;
        if (start > 1 && !turn.empty())
            std::rotate(turn.begin(), turn.begin() + std::ptrdiff_t((start - 1) * step % turn.size()),
                        turn.end());
        std::stable_sort(turn.begin(), turn.end(),
                         [&](std::size_t a, std::size_t b) { return found_none[a] > found_none[b]; });
        return turn;
    }

    void placeFrom(const std::vector<std::size_t>& turn)
    {
        std::fill(chosen_.begin(), chosen_.end(), std::nullopt);
        for (const std::size_t label : turn)
            chosen_[label] = firstFree(label);
        // Each sweep looks at every place of every label against every other.
        constexpr std::size_t many = 60;
        const int sweeps = turn.size() > many ? 1 : 3;
        for (int sweep = 0; sweep < sweeps; ++sweep) {
            bool better = false;
            for (const std::size_t label : turn)
                better = improve(label) || better;
            if (!better)
                break;
        }
    }

    const LabelPlace& placeOf(std::size_t label) const { return wishes_[label].places[*chosen_[label]]; }

    double costOf(std::size_t label) const
    {
        return chosen_[label] ? placeOf(label).cost : wishes_[label].left_out;
    }

    std::vector<std::size_t> blockers(std::size_t label, std::size_t place, std::size_t most) const
    {
        std::vector<std::size_t> found;
        for (std::size_t other = 0; other < chosen_.size() && found.size() <= most; ++other)
            if (other != label && chosen_[other] &&
                inTheWay(wishes_[label].places[place], extents_[label][place], placeOf(other),
                         extents_[other][*chosen_[other]]))
                found.push_back(other);
        return found;
    }

    std::optional<std::size_t> firstFree(std::size_t label) const
    {
        for (const std::size_t i : by_cost_[label])
            if (blockers(label, i, 0).empty())
                return i;
        return std::nullopt;
    }

    /// Take a better place, those in the way moving elsewhere, if that is less in all.
    bool improve(std::size_t label)
    {
        // More for who has no place yet, where there is time for it.
        const std::size_t most_moved = chosen_[label] || starts_ == 1 ? 2 : 5;
        constexpr double least_gain = 1e-9;
        const double now = costOf(label);
        for (const std::size_t i : by_cost_[label]) {
            const LabelPlace& place = wishes_[label].places[i];
            if (!(place.cost < now - least_gain))
                return false;
            const std::vector<std::size_t> moved = blockers(label, i, most_moved);
            if (moved.size() > most_moved)
                continue;
            const Chosen before = chosen_;
            double was = now;
            for (const std::size_t other : moved) {
                was += costOf(other);
                chosen_[other] = std::nullopt;
            }
            chosen_[label] = i;
            double is = place.cost;
            for (const std::size_t other : moved) {
                chosen_[other] = firstFree(other);
                is += costOf(other);
            }
            if (is < was - least_gain)
                return true;
            chosen_ = before;
        }
        return false;
    }

    const std::vector<LabelWish>& wishes_;
    const std::size_t starts_;
    std::vector<std::vector<std::size_t>> by_cost_;
    std::vector<std::vector<Extent>> extents_; ///< by label and place
    Chosen chosen_;
};

} // namespace

bool overlap(const LabelBox& a, const LabelBox& b)
{
    const Vec2 between{b.centre.x - a.centre.x, b.centre.z - a.centre.z};
    const double far = a.half_along + a.half_across + b.half_along + b.half_across;
    if (std::abs(between.x) >= far || std::abs(between.z) >= far)
        return false;
    return overlap(a, axesOf(a), b, axesOf(b));
}

bool crosses(const LabelLeader& line, const LabelBox& box)
{
    const double far = box.half_along + box.half_across;
    if (std::max(line.from.x, line.to.x) < box.centre.x - far ||
        std::min(line.from.x, line.to.x) > box.centre.x + far ||
        std::max(line.from.z, line.to.z) < box.centre.z - far ||
        std::min(line.from.z, line.to.z) > box.centre.z + far)
        return false;
    return crosses(line, box, axesOf(box));
}

bool crosses(const LabelLeader& a, const LabelLeader& b)
{
    const auto side = [](const LabelLeader& line, Vec2 p) {
        return (line.to.x - line.from.x) * (p.z - line.from.z) -
               (line.to.z - line.from.z) * (p.x - line.from.x);
    };
    return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0;
}

std::vector<std::optional<std::size_t>> placeLabels(const std::vector<LabelWish>& wishes, std::size_t starts)
{
    return Placer(wishes, std::max<std::size_t>(starts, 1)).place();
}

} // namespace siphonwright
