#include "core/air/level_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

constexpr double mm3_per_ml = 1000;
/// Under this a disc lies level, or a straight runs level.
constexpr double level_limit = 1e-9;
/// Depth of the straight piece at the floor and at the top.
constexpr double end_mm = 0.02;
constexpr double least_piece_mm = 1e-7;
/// Of the whole volume, in each straight end piece at least.
constexpr double least_share = 1e-8;
/// Of the whole volume, allowed between the cubic and the exact volume half way between two nodes.
constexpr double allowed_share = 1e-5;
constexpr int deepest = 6;

double chord(double half_bore_mm, double offset_mm)
{
    return 2 * std::sqrt(std::max(0.0, (half_bore_mm - offset_mm) * (half_bore_mm + offset_mm)));
}

double surfaceOfStraight(const Stretch& bore, double level_mm, double a, double b)
{
    const double disc_mm2 = std::numbers::pi * bore.half_bore_mm * bore.half_bore_mm;
    const Section first = bore.section(a);
    const Section last = bore.section(b);
    if (first.k < level_limit)
        return (first.z_mm < level_mm) != (last.z_mm < level_mm) ? disc_mm2 : 0;
    const double from = (level_mm - first.z_mm) / first.k;
    const double to = (level_mm - last.z_mm) / first.k;
    if (std::abs(to - from) < 1e-6 * bore.half_bore_mm)
        return chord(bore.half_bore_mm, (from + to) / 2) / first.k * (b - a);
    const double between =
        std::abs(discAreaOver(2 * bore.half_bore_mm, from) - discAreaOver(2 * bore.half_bore_mm, to));
    return between / std::abs(bore.u_up);
}

/// Chords over k along an arc by the Gauss-Legendre rule of 6 points (Abramowitz and Stegun 1964, table
/// 25.4), with steps that shrink towards both ends, where the chord starts as a square root.
double surfaceOfArc(const Stretch& bore, double level_mm, double a, double b)
{
    constexpr std::array<double, 3> node = {0.238619186083197, 0.661209386466265, 0.932469514203152};
    constexpr std::array<double, 3> weight = {0.467913934572691, 0.360761573048139, 0.171324492379170};
    std::array<double, 4> cuts = {a, a, b, b};
    std::size_t cut = 1;
    for (const double side : {1.0, -1.0}) {
        const auto over = [&](double s) {
            const Section here = bore.section(s);
            return here.z_mm + side * bore.half_bore_mm * here.k - level_mm;
        };
        if ((over(a) < 0) != (over(b) < 0))
            cuts[cut++] = rootBetween(a, b, over);
    }
    std::sort(cuts.begin(), cuts.end());
    double sum = 0;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double from = cuts[i];
        const double along = cuts[i + 1] - from;
        if (!(along > 0))
            continue;
        for (std::size_t j = 0; j < 2 * node.size(); ++j) {
            const double x = (1 + (j % 2 == 0 ? node[j / 2] : -node[j / 2])) / 2;
            const Section here = bore.section(from + along * x * x * (3 - 2 * x));
            if (here.k > level_limit)
                sum += weight[j / 2] / 2 * 6 * x * (1 - x) * along *
                       chord(bore.half_bore_mm, (level_mm - here.z_mm) / here.k) / here.k;
        }
    }
    return sum;
}

} // namespace

/// Lays the nodes of one table.
class LevelTableMaker {
public:
    /// `parts` as seen with up reversed: under a level is over its opposite.
    LevelTableMaker(const std::vector<MonotonePart>& parts, double from_mm, double to_mm)
        : from_mm_(from_mm), to_mm_(to_mm)
    {
        for (const MonotonePart& part : parts) {
            const double a = std::max(from_mm, part.from_mm);
            const double b = std::min(to_mm, part.to_mm);
            if (b - a <= level_limit)
                continue;
            parts_.push_back(part);
            whole_ml_ += std::numbers::pi * part.stretch.half_bore_mm * part.stretch.half_bore_mm * (b - a) /
                         mm3_per_ml;
            for (const double s : {a, b}) {
                const Section end = part.stretch.section(s);
                breaks_.push_back(-end.z_mm - part.stretch.half_bore_mm * end.k);
                breaks_.push_back(-end.z_mm + part.stretch.half_bore_mm * end.k);
            }
        }
        std::sort(breaks_.begin(), breaks_.end());
    }

    std::vector<LevelTable::Piece> pieces()
    {
        if (breaks_.empty())
            return {};
        const double floor = breaks_.front();
        const double top = breaks_.back();
        const double end = std::min(end_mm, (top - floor) / 8);
        Node low = node(floor + end);
        addStraight({floor, 0, 0}, low);
        for (const double at : breaks_) {
            if (at - low.level_mm < least_piece_mm || at > top - end - least_piece_mm)
                continue;
            Node high = node(at);
            add(low, high);
            low = high;
        }
        Node last = node(top - end);
        add(low, last);
        addStraight(last, {top, whole_ml_, 0});
        return std::move(pieces_);
    }

private:
    struct Node {
        double level_mm = 0;
        double liquid_ml = 0;
        double slope = 0;
    };

    /// What lies in a straight end piece may be less than the rounding of the volumes.
    Node node(double level_mm) const
    {
        const double least_ml = least_share * whole_ml_;
        const double under_ml = volumeOver(parts_, -level_mm, from_mm_, to_mm_) / mm3_per_ml;
        return {level_mm, std::clamp(under_ml, least_ml, whole_ml_ - least_ml), 0};
    }

    double surface(double level_mm) const
    {
        double sum = 0;
        for (const MonotonePart& part : parts_) {
            if (part.lowest_mm >= -level_mm || part.highest_mm <= -level_mm)
                continue;
            const double a = std::max(from_mm_, part.from_mm);
            const double b = std::min(to_mm_, part.to_mm);
            sum += part.stretch.radius_mm > 0 ? surfaceOfArc(part.stretch, -level_mm, a, b)
                                              : surfaceOfStraight(part.stretch, -level_mm, a, b);
        }
        return sum / mm3_per_ml;
    }

    void addStraight(const Node& low, const Node& high)
    {
        const double slope = (high.liquid_ml - low.liquid_ml) / (high.level_mm - low.level_mm);
        pieces_.push_back({low.level_mm, high.level_mm, low.liquid_ml, high.liquid_ml, slope, slope});
    }

    void add(Node& low, Node& high)
    {
        // Slopes from inside: where a plumb bore begins, the surface jumps.
        const double inside = 1e-7 * (high.level_mm - low.level_mm);
        low.slope = surface(low.level_mm + inside);
        high.slope = surface(high.level_mm - inside);
        refine(low, high, 0);
    }

    void refine(const Node& low, Node& high, int depth)
    {
        Node middle = node((low.level_mm + high.level_mm) / 2);
        middle.slope = surface(middle.level_mm);
        const double cubic = (low.liquid_ml + high.liquid_ml) / 2 +
                             (high.level_mm - low.level_mm) * (low.slope - high.slope) / 8;
        // Half the piece has a sixteenth of the error.
        if (depth >= deepest || std::abs(cubic - middle.liquid_ml) < 16 * allowed_share * whole_ml_) {
            keep(low, middle);
            keep(middle, high);
            return;
        }
        refine(low, middle, depth + 1);
        refine(middle, high, depth + 1);
    }

    /// A cubic whose end slopes are at most three times the mean rises throughout (Fritsch and Carlson,
    /// SIAM J. Numer. Anal. 17, 1980).
    void keep(const Node& low, Node& high)
    {
        high.liquid_ml = std::max(high.liquid_ml, low.liquid_ml + 1e-3 * least_share * whole_ml_);
        const double mean = (high.liquid_ml - low.liquid_ml) / (high.level_mm - low.level_mm);
        pieces_.push_back({low.level_mm, high.level_mm, low.liquid_ml, high.liquid_ml,
                           std::clamp(low.slope, 0.1 * mean, 3 * mean),
                           std::clamp(high.slope, 0.1 * mean, 3 * mean)});
    }

    std::vector<MonotonePart> parts_;
    std::vector<double> breaks_;
    std::vector<LevelTable::Piece> pieces_;
    double from_mm_ = 0;
    double to_mm_ = 0;
    double whole_ml_ = 0;
};

LevelTable::LevelTable(const std::vector<MonotonePart>& parts, double from_mm, double to_mm)
    : pieces_(LevelTableMaker(parts, from_mm, to_mm).pieces())
{}

LevelTable::LevelTable(const std::vector<double>& levels_mm, const std::vector<double>& volumes_ml)
{
    for (std::size_t i = 0; i + 1 < levels_mm.size() && i + 1 < volumes_ml.size(); ++i) {
        const double slope = (volumes_ml[i + 1] - volumes_ml[i]) / (levels_mm[i + 1] - levels_mm[i]);
        pieces_.push_back({levels_mm[i], levels_mm[i + 1], volumes_ml[i], volumes_ml[i + 1], slope, slope});
    }
}

LiquidUnder LevelTable::under(double level_mm) const
{
    if (pieces_.empty())
        return {};
    if (level_mm <= pieces_.front().low_mm) {
        const Piece& first = pieces_.front();
        return {first.low_ml + first.low_slope * (level_mm - first.low_mm), first.low_slope};
    }
    if (level_mm >= pieces_.back().high_mm) {
        const Piece& last = pieces_.back();
        return {last.high_ml + last.high_slope * (level_mm - last.high_mm), last.high_slope};
    }
    const auto after =
        std::upper_bound(pieces_.begin(), pieces_.end(), level_mm,
                         [](double level, const Piece& piece) { return level < piece.high_mm; });
    const Piece& piece = after == pieces_.end() ? pieces_.back() : *after;
    const double height = piece.high_mm - piece.low_mm;
    const double x = (level_mm - piece.low_mm) / height;
    const double rise = piece.high_ml - piece.low_ml;
    const double a = piece.low_slope * height - rise;
    const double b = rise - piece.high_slope * height;
    return {piece.low_ml + x * (rise + (1 - x) * (a * (1 - x) + b * x)),
            (rise + (1 - 2 * x) * (a * (1 - x) + b * x) + x * (1 - x) * (b - a)) / height};
}

double LevelTable::levelOf(double liquid_ml) const
{
    if (pieces_.empty())
        return 0;
    const Piece& first = pieces_.front();
    const Piece& last = pieces_.back();
    if (liquid_ml <= first.low_ml)
        return first.low_mm + (liquid_ml - first.low_ml) / first.low_slope;
    if (liquid_ml >= last.high_ml)
        return last.high_mm + (liquid_ml - last.high_ml) / last.high_slope;
    return rootBetween(first.low_mm, last.high_mm,
                       [&](double level) { return under(level).liquid_ml - liquid_ml; });
}

} // namespace siphonwright
