#include "core/air/level_table.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

/// Depth of the straight piece at the floor and at the top.
constexpr double end_mm = 0.02;
constexpr double least_piece_mm = 1e-7;
/// Of the whole volume, in each straight end piece at least.
constexpr double least_share = 1e-8;
/// Of the whole volume, allowed between the cubic and the exact volume half way between two nodes.
constexpr double allowed_share = 1e-5;
constexpr int deepest = 6;
/// An error that is nothing at the ends and in the middle is at most about so much of its slope there.
constexpr double slope_share = 1.0 / 8;

} // namespace

/// Lays the nodes of one table.
class LevelTableMaker {
public:
    explicit LevelTableMaker(const std::vector<BorePart>& bore) : parts_(bore)
    {
        for (const BorePart& part : parts_) {
            whole_ml_ += part.whole_ml();
            any_plumb_ = any_plumb_ || part.plumb();
            breaks_.insert(breaks_.end(), part.breaks_mm(), part.breaks_mm() + BorePart::breaks);
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
        LiquidUnder sum;
        for (const BorePart& part : parts_) {
            const LiquidUnder under = part.under(level_mm);
            sum.liquid_ml += under.liquid_ml;
            sum.ml_per_mm += under.ml_per_mm;
        }
        return {level_mm, std::clamp(sum.liquid_ml, least_ml, whole_ml_ - least_ml), sum.ml_per_mm};
    }

    void addStraight(const Node& low, const Node& high)
    {
        const double slope = (high.liquid_ml - low.liquid_ml) / (high.level_mm - low.level_mm);
        pieces_.emplace_back(low.level_mm, high.level_mm, low.liquid_ml, high.liquid_ml, slope, slope);
    }

    void add(Node& low, Node& high)
    {
        const double slope_after = high.slope;
        if (any_plumb_) {
            // Slopes from inside: where a plumb bore begins, the surface jumps.
            const double inside = 1e-7 * (high.level_mm - low.level_mm);
            low.slope = node(low.level_mm + inside).slope;
            high.slope = node(high.level_mm - inside).slope;
        }
        refine(low, high, 0);
        high.slope = slope_after;
    }

    void refine(const Node& low, Node& high, int depth)
    {
        const double allowed_ml = allowed_share * whole_ml_;
        if (high.liquid_ml - low.liquid_ml < allowed_ml) {
            keep(low, high);
            return;
        }
        Node middle = node((low.level_mm + high.level_mm) / 2);
        const double cubic = (low.liquid_ml + high.liquid_ml) / 2 +
                             (high.level_mm - low.level_mm) * (low.slope - high.slope) / 8;
        // A level bore is as wide over its middle as under it: there the cubic is right, and its slope is
        // not.
        const double height = high.level_mm - low.level_mm;
        const double slope = 1.5 * (high.liquid_ml - low.liquid_ml) / height - (low.slope + high.slope) / 4;
        const double off_ml =
            std::abs(cubic - middle.liquid_ml) + std::abs(slope - middle.slope) * height * slope_share;
        // Half the piece has a sixteenth of the error.
        if (depth >= deepest || off_ml < 16 * allowed_ml) {
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
        pieces_.emplace_back(low.level_mm, high.level_mm, low.liquid_ml, high.liquid_ml,
                             std::clamp(low.slope, 0.1 * mean, 3 * mean),
                             std::clamp(high.slope, 0.1 * mean, 3 * mean));
    }

    const std::vector<BorePart>& parts_;
    std::vector<double> breaks_;
    std::vector<LevelTable::Piece> pieces_;
    double whole_ml_ = 0;
    bool any_plumb_ = false;
};

LevelTable::LevelTable(const std::vector<BorePart>& bore)
{
    std::vector<Piece> pieces = LevelTableMaker(bore).pieces();
    if (!pieces.empty())
        pieces_ = std::make_shared<const std::vector<Piece>>(std::move(pieces));
}

LevelTable::LevelTable(const std::vector<double>& levels_mm, const std::vector<double>& volumes_ml)
{
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i + 1 < levels_mm.size() && i + 1 < volumes_ml.size(); ++i) {
        const double slope = (volumes_ml[i + 1] - volumes_ml[i]) / (levels_mm[i + 1] - levels_mm[i]);
        pieces.emplace_back(levels_mm[i], levels_mm[i + 1], volumes_ml[i], volumes_ml[i + 1], slope, slope);
    }
    if (!pieces.empty())
        pieces_ = std::make_shared<const std::vector<Piece>>(std::move(pieces));
}

LiquidUnder LevelTable::underElsewhere(double level_mm, std::size_t& near) const
{
    if (!pieces_)
        return {};
    const Piece& first = pieces_->front();
    const Piece& last = pieces_->back();
    if (level_mm <= first.low_mm)
        return {first.low_ml + first.low_slope * (level_mm - first.low_mm), first.low_slope};
    if (level_mm >= last.high_mm)
        return {last.high_ml + last.high_slope * (level_mm - last.high_mm), last.high_slope};
    const auto piece = std::upper_bound(pieces_->begin(), pieces_->end(), level_mm,
                                        [](double level, const Piece& one) { return level < one.high_mm; });
    near = static_cast<std::size_t>(piece - pieces_->begin());
    return piece->under(level_mm);
}

double LevelTable::levelOf(double liquid_ml) const
{
    if (!pieces_)
        return 0;
    const Piece& first = pieces_->front();
    const Piece& last = pieces_->back();
    if (liquid_ml <= first.low_ml)
        return first.low_mm + (liquid_ml - first.low_ml) / first.low_slope;
    if (liquid_ml >= last.high_ml)
        return last.high_mm + (liquid_ml - last.high_ml) / last.high_slope;
    const auto piece = std::upper_bound(pieces_->begin(), pieces_->end(), liquid_ml,
                                        [](double liquid, const Piece& one) { return liquid < one.high_ml; });
    return rootBetween(piece->low_mm, piece->high_mm,
                       [&](double level) { return piece->under(level).liquid_ml - liquid_ml; });
}

} // namespace siphonwright
