#include "core/geometry/profile.h"

#include "core/geometry/relief.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace siphonwright {

namespace {

/// A crest is level within this.
constexpr double plateau_mm = 0.01;
/// A crown that lies at the sill but for rounding is not over it.
constexpr double rounding_mm = 1e-9;

/// A place between which and the next the crown is monotone, or jumps if the stretch is another one.
struct Node {
    double s = 0;
    double crown_mm = 0;
    std::size_t stretch = 0;
};

/// A stretch's sections at both its ends.
struct EndSections {
    Section from;
    Section to;
};

std::vector<EndSections> endsOf(const std::vector<Stretch>& stretches)
{
    std::vector<EndSections> out;
    out.reserve(stretches.size());
    for (const Stretch& part : stretches)
        out.push_back({part.section(part.from_mm), part.section(part.to_mm)});
    return out;
}

/// Seen with up reversed.
std::vector<EndSections> fromBelow(std::vector<EndSections> ends)
{
    for (EndSections& one : ends) {
        one.from.z_mm = -one.from.z_mm;
        one.to.z_mm = -one.to.z_mm;
    }
    return ends;
}

std::vector<Node> nodesOf(const std::vector<Stretch>& stretches, const std::vector<EndSections>& ends)
{
    std::vector<Node> nodes;
    nodes.reserve(3 * stretches.size());
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const Stretch& part = stretches[i];
        nodes.push_back({part.from_mm, part.crownAt(ends[i].from), i});
        const TurningPlaces places = turningPlaces(part);
        for (int k = 0; k < places.count; ++k)
            nodes.push_back({places.s[k], part.crown(places.s[k]), i});
        if (part.to_mm > part.from_mm)
            nodes.push_back({part.to_mm, part.crownAt(ends[i].to), i});
    }
    return nodes;
}

/// For each node the lowest crown from there back to the nearest place that stops it, or to the path's end.
/// One pass: `order` walks the nodes, and those that a higher one has passed are never looked at again.
template <typename Stops>
std::vector<double> lowestBefore(const std::vector<Node>& nodes, bool from_start, Stops stops)
{
    struct Wall {
        double crown_mm = 0;
        double lowest_mm = 0;
    };
    std::vector<double> lowest(nodes.size());
    std::vector<Wall> walls;
    walls.reserve(nodes.size());
    for (std::size_t step = 0; step < nodes.size(); ++step) {
        const std::size_t i = from_start ? step : nodes.size() - 1 - step;
        double low = nodes[i].crown_mm;
        while (!walls.empty() && !stops(walls.back().crown_mm, nodes[i].crown_mm)) {
            low = std::min(low, walls.back().lowest_mm);
            walls.pop_back();
        }
        lowest[i] = low;
        walls.push_back({nodes[i].crown_mm, low});
    }
    return lowest;
}

/// The nodes of a path with the walk outward from a crest.
class Crests {
public:
    Crests(const Path& path, Vec3 up, std::vector<Stretch> stretches, const std::vector<EndSections>& ends)
        : path_(&path), up_(up), stretches_(std::move(stretches)), nodes_(nodesOf(stretches_, ends))
    {}

    /// Crests of at least this height in order along the path, without their volumes and owners.
    std::vector<HighPoint> find(double least_mm) const
    {
        // Of equal crests the one nearest the path's start owns the hump.
        const auto left = lowestBefore(nodes_, true, [](double wall, double crown) { return wall >= crown; });
        const auto right =
            lowestBefore(nodes_, false, [](double wall, double crown) { return wall > crown; });
        std::vector<HighPoint> result;
        for (std::size_t i = 0; i < nodes_.size(); ++i) {
            const double sill = std::max(left[i], right[i]);
            const double height = nodes_[i].crown_mm - sill;
            if (height > 2 * rounding_mm && height >= least_mm)
                addCrest(i, sill, result);
        }
        return result;
    }

    void takeVolumes(std::vector<HighPoint>& crests) const
    {
        if (crests.empty())
            return;
        const std::vector<MonotonePart> parts = monotonePartsOf(stretchesUnder(crests));
        for (HighPoint& crest : crests)
            crest.trapped_ml = volumeOver(parts, crest.sill_mm, crest.from_mm, crest.to_mm) / mm3_per_ml;
    }

private:
    /// Those stretches that any of the crests reaches over, in order.
    std::vector<Stretch> stretchesUnder(const std::vector<HighPoint>& crests) const
    {
        std::vector<int> begun(stretches_.size() + 1,
                               0); // crests that begin here, less those that have ended
        for (const HighPoint& crest : crests) {
            const auto first = std::lower_bound(stretches_.begin(), stretches_.end(), crest.from_mm,
                                                [](const Stretch& part, double s) { return part.to_mm < s; });
            const auto last =
                std::lower_bound(first, stretches_.end(), crest.to_mm,
                                 [](const Stretch& part, double s) { return part.from_mm < s; });
            ++begun[static_cast<std::size_t>(first - stretches_.begin())];
            --begun[static_cast<std::size_t>(last - stretches_.begin())];
        }
        std::vector<Stretch> out;
        int open = 0;
        for (std::size_t i = 0; i < stretches_.size(); ++i) {
            open += begun[i];
            if (open > 0)
                out.push_back(stretches_[i]);
        }
        return out;
    }

    /// Last and first node of the stretch round i where the crown is at least, or over, a level.
    template <typename Holds>
    std::size_t firstNode(std::size_t i, Holds holds) const
    {
        while (i > 0 && holds(nodes_[i - 1].crown_mm))
            --i;
        return i;
    }
    template <typename Holds>
    std::size_t lastNode(std::size_t i, Holds holds) const
    {
        while (i + 1 < nodes_.size() && holds(nodes_[i + 1].crown_mm))
            ++i;
        return i;
    }

    /// Where between two neighbouring nodes the crown passes a level.
    double passes(const Node& a, const Node& b, double level_mm) const
    {
        if (a.stretch != b.stretch || a.s >= b.s)
            return b.s;
        const Stretch& part = stretches_[a.stretch];
        return rootBetween(a.s, b.s, [&](double s) { return part.crown(s) - level_mm; });
    }

    void addCrest(std::size_t top, double sill, std::vector<HighPoint>& result) const
    {
        const double crown = nodes_[top].crown_mm;
        const auto is_level = [&](double other) { return other >= crown - plateau_mm; };
        const std::size_t first = firstNode(top, is_level);
        const std::size_t last = lastNode(top, is_level);
        if (first == 0 || last + 1 == nodes_.size())
            return;
        for (std::size_t i = first; i <= last; ++i) {
            if (nodes_[i].crown_mm > crown)
                return;
        }
        const double level_from = passes(nodes_[first - 1], nodes_[first], crown - plateau_mm);
        const double level_to = passes(nodes_[last], nodes_[last + 1], crown - plateau_mm);

        const double edge = sill + rounding_mm;
        const auto is_over = [&](double other) { return other > edge; };
        const std::size_t over_first = firstNode(top, is_over);
        const std::size_t over_last = lastNode(top, is_over);
        HighPoint crest;
        crest.along_mm = (level_from + level_to) / 2;
        crest.at = path_->line.at(crest.along_mm);
        crest.z_mm = dot(crest.at, up_);
        crest.crown_mm = crown;
        crest.sill_mm = sill;
        crest.height_mm = crown - sill;
        crest.from_mm = passes(nodes_[over_first - 1], nodes_[over_first], edge);
        crest.to_mm = passes(nodes_[over_last], nodes_[over_last + 1], edge);
        result.push_back(crest);
    }

    const Path* path_;
    Vec3 up_;
    std::vector<Stretch> stretches_;
    std::vector<Node> nodes_;
};

/// A crest inside the stretch of others belongs to the one whose stretch is longest.
void nameOwners(std::vector<HighPoint>& crests)
{
    for (HighPoint& crest : crests) {
        double longest = 0;
        for (std::size_t i = 0; i < crests.size(); ++i) {
            const HighPoint& other = crests[i];
            const bool inside = crest.along_mm > other.from_mm && crest.along_mm < other.to_mm;
            if (&other == &crest || !inside || other.to_mm - other.from_mm <= longest)
                continue;
            longest = other.to_mm - other.from_mm;
            crest.within = i;
        }
    }
}

/// The crests and, with up reversed, the hollows.
struct CrestsAndHollows {
    Crests crests;
    Crests hollows;
};

CrestsAndHollows bothOf(const Path& path, Vec3 up)
{
    Relief relief = reliefOf(path, up);
    const std::vector<EndSections> ends = endsOf(relief.up);
    const std::vector<EndSections> below = relief.mirrored ? fromBelow(ends) : endsOf(relief.down);
    return {Crests(path, up, std::move(relief.up), ends),
            Crests(path, up * -1, std::move(relief.down), below)};
}

std::vector<HighPoint> highPointsOf(const Crests& crests, double least_mm)
{
    std::vector<HighPoint> result = crests.find(least_mm);
    crests.takeVolumes(result);
    nameOwners(result);
    return result;
}

/// A crest seen with up turned round is a hollow.
Dip turnedRound(const HighPoint& crest)
{
    Dip dip;
    dip.along_mm = crest.along_mm;
    dip.z_mm = -crest.z_mm;
    dip.invert_mm = -crest.crown_mm;
    dip.depth_mm = crest.height_mm;
    dip.rim_mm = -crest.sill_mm;
    dip.from_mm = crest.from_mm;
    dip.to_mm = crest.to_mm;
    dip.held_ml = crest.trapped_ml;
    dip.within = crest.within;
    dip.at = crest.at;
    return dip;
}

} // namespace

BoreHeights heightsAt(const Path& path, const Plumb& plumb, double s)
{
    BoreHeights heights;
    if (path.line.empty())
        return heights;
    heights.centre_mm = plumb.height(path.line.at(s));
    heights.crown_mm = crownAt(path, plumb.up(), s);
    heights.invert_mm = -crownAt(path, plumb.up() * -1, s);
    return heights;
}

Profile profileOf(const Path& path, const Plumb& plumb, double least_mm)
{
    const CrestsAndHollows both = bothOf(path, plumb.up());
    Profile profile;
    profile.high_points = highPointsOf(both.crests, least_mm);
    const std::vector<HighPoint> hollows = highPointsOf(both.hollows, least_mm);
    profile.dips.reserve(hollows.size());
    std::transform(hollows.begin(), hollows.end(), std::back_inserter(profile.dips), turnedRound);
    return profile;
}

bool hasTrap(const Path& path, const Plumb& plumb, double least_mm)
{
    const CrestsAndHollows both = bothOf(path, plumb.up());
    return !both.crests.find(least_mm).empty() || !both.hollows.find(least_mm).empty();
}

bool hasHump(const Path& path, const Plumb& plumb, double least_mm)
{
    return !bothOf(path, plumb.up()).crests.find(least_mm).empty();
}

} // namespace siphonwright
