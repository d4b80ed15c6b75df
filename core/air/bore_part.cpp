#include "core/air/bore_part.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// Under this a disc lies level.
constexpr double level_limit = 1e-9;
/// Offsets at the ends of a straight that differ by less, in half bores, are one.
constexpr double level_straight = 1e-4;
/// An arc is halved while k changes more along it, so often at most.
constexpr double most_k_ratio = 2;
constexpr int most_arc_halvings = 12;
/// Shorter parts hold nothing, mm.
constexpr double no_length_mm = 1e-9;

/// Arc cosine within 2e-8 (Abramowitz and Stegun 1964, 4.4.46).
double arcCosine(double x)
{
    const double a = std::abs(x);
    const double series =
        1.5707963050 +
        a * (-0.2145988016 +
             a * (0.0889789874 +
                  a * (-0.0501743046 +
                       a * (0.0308918810 + a * (-0.0170881256 + a * (0.0066700901 - a * 0.0012624911))))));
    const double arc = std::sqrt(std::max(0.0, 1 - a)) * series;
    return x < 0 ? std::numbers::pi - arc : arc;
}

/// Integral of the disc's area under an offset from its lowest point up to it, mm3; the disc is full over it.
double integralOfAreaUnder(double half_bore_mm, double offset_mm)
{
    const double r = half_bore_mm;
    if (offset_mm <= -r)
        return 0;
    if (offset_mm >= r)
        return std::numbers::pi * r * r * offset_mm;
    const double chord = std::sqrt((r - offset_mm) * (r + offset_mm));
    const double over =
        r * r * (offset_mm * std::atan2(chord, offset_mm) - chord) + chord * chord * chord / 3;
    return std::numbers::pi * r * r * offset_mm - over;
}

double areaUnder(double half_bore_mm, double offset_mm)
{
    return std::numbers::pi * half_bore_mm * half_bore_mm - discAreaOver(2 * half_bore_mm, offset_mm);
}

double chordAt(double half_bore_mm, double offset_mm)
{
    return 2 * std::sqrt(std::max(0.0, (half_bore_mm - offset_mm) * (half_bore_mm + offset_mm)));
}

/// Gauss-Legendre's ten places of a stretch from 0 to 1, moved towards both ends, where the area starts as
/// the power 3/2 of the distance and the chord as its root: by x^2 (3 - 2x).
struct Gauss {
    static constexpr std::size_t size = 10;
    std::array<double, size> place;
    std::array<double, size> weight;
};

constexpr Gauss gauss = [] {
    constexpr std::array<double, 5> node = {0.148874338981631, 0.433395394129247, 0.679409568299024,
                                            0.865063366688985, 0.973906528517172};
    constexpr std::array<double, 5> weight = {0.295524224714753, 0.269266719309996, 0.219086362515982,
                                              0.149451349150581, 0.066671344308688};
    Gauss moved = {};
    for (std::size_t i = 0; i < Gauss::size; ++i) {
        const double x = (1 + (i % 2 == 0 ? node[i / 2] : -node[i / 2])) / 2;
        moved.place[i] = x * x * (3 - 2 * x);
        moved.weight[i] = weight[i / 2] * 6 * x * (1 - x);
    }
    return moved;
}();

/// Where an arc is steepest; before its start for a straight.
double steepestPlace(const Stretch& stretch)
{
    if (stretch.radius_mm <= 0)
        return stretch.from_mm - 1;
    const double angle = std::atan2(stretch.n_up, stretch.u_up);
    return stretch.piece_mm + stretch.radius_mm * (angle < 0 ? angle + std::numbers::pi : angle);
}

} // namespace

BorePart::BorePart(const MonotonePart& part, double from_mm, double to_mm)
    : half_bore_mm_(part.stretch.half_bore_mm), length_mm_(to_mm - from_mm)
{
    const Stretch& stretch = part.stretch;
    const Section first = stretch.section(from_mm);
    const Section last = stretch.section(to_mm);
    first_ = {first.z_mm, first.k};
    last_ = {last.z_mm, last.k};
    whole_ml_ = std::numbers::pi * half_bore_mm_ * half_bore_mm_ * length_mm_ / mm3_per_ml;
    for (int i = 0; i < breaks; ++i) {
        const At& end = i < 2 ? first_ : last_;
        breaks_mm_[i] = end.z_mm + (i % 2 == 0 ? -1 : 1) * half_bore_mm_ * end.k;
    }
    lowest_mm_ = *std::min_element(breaks_mm_, breaks_mm_ + breaks);
    highest_mm_ = *std::max_element(breaks_mm_, breaks_mm_ + breaks);
    radius_mm_ = stretch.radius_mm;
    plumb_ = radius_mm_ <= 0 && first_.k < level_limit;
    if (radius_mm_ <= 0)
        return;
    const double middle = (from_mm + to_mm) / 2;
    const double angle = (middle - stretch.piece_mm) / radius_mm_;
    const double sine = std::sin(angle);
    const double cosine = std::cos(angle);
    middle_mm_ = stretch.section(middle).z_mm;
    u_up_ = stretch.u_up * cosine + stretch.n_up * sine;
    n_up_ = stretch.n_up * cosine - stretch.u_up * sine;
    end_ = std::tan(length_mm_ / radius_mm_ / 4);
}

/// Of an arc, at the tangent of half the angle from its middle: no sine has to be asked for.
inline BorePart::At BorePart::section(double t) const
{
    const double over = 1 / (1 + t * t);
    const double sine = 2 * t * over;
    const double versine = 2 * t * t * over;
    const double t_up = u_up_ * (1 - versine) + n_up_ * sine;
    return {middle_mm_ + radius_mm_ * (u_up_ * sine + n_up_ * versine),
            std::sqrt(std::max(0.0, (1 - t_up) * (1 + t_up)))};
}

LiquidUnder BorePart::under(double level_mm) const
{
    if (level_mm <= lowest_mm_)
        return {};
    if (level_mm >= highest_mm_)
        return {whole_ml_, 0};
    return radius_mm_ > 0 ? underOfArc(level_mm) : underOfStraight(level_mm);
}

LiquidUnder BorePart::underOfStraight(double level_mm) const
{
    const double r = half_bore_mm_;
    if (plumb_) {
        const double height_mm = std::abs(last_.z_mm - first_.z_mm);
        const double share = (level_mm - lowest_mm_) / height_mm;
        return {whole_ml_ * share, whole_ml_ / height_mm};
    }
    const double a = (level_mm - first_.z_mm) / first_.k;
    const double b = (level_mm - last_.z_mm) / first_.k;
    if (std::abs(b - a) < level_straight * r) {
        const double middle = std::clamp((a + b) / 2, -r, r);
        return {areaUnder(r, middle) * length_mm_ / mm3_per_ml,
                chordAt(r, middle) / first_.k * length_mm_ / mm3_per_ml};
    }
    const double per_offset = length_mm_ / (b - a) / mm3_per_ml;
    return {per_offset * (integralOfAreaUnder(r, b) - integralOfAreaUnder(r, a)),
            per_offset * (areaUnder(r, b) - areaUnder(r, a)) / first_.k};
}

/// Where the crown (side 1) or the invert (-1) of an arc passes a level.
///
/// With y the upward part of the radius there and m that of the arc's plane, R y + side r k = h, h being the
/// level over the arc's centre, and k^2 = 1 - m^2 + y^2: a quadratic in y. Tight bends are searched.
double BorePart::passes(double level_mm, double side) const
{
    const double r = half_bore_mm_;
    const double steep = u_up_ * u_up_ + n_up_ * n_up_;
    const double h = level_mm - middle_mm_ - radius_mm_ * n_up_;
    const double squares = radius_mm_ * radius_mm_ - r * r;
    const double root = h * h + (1 - steep) * squares;
    const double y = (h * radius_mm_ - side * r * std::sqrt(std::max(0.0, root))) / squares;
    // At the middle y = -n_up and the slope of the centreline is u_up, which keeps its sign along the part.
    const double slope = std::copysign(std::sqrt(std::max(0.0, steep - y * y)), u_up_);
    const double sine = (u_up_ * y + n_up_ * slope) / steep;
    const double cosine = (u_up_ * slope - n_up_ * y) / steep;
    const double place = sine / (1 + cosine);
    if (squares > 0 && root >= 0 && std::isfinite(place))
        return std::clamp(place, -end_, end_);
    return rootBetween(-end_, end_, [&](double t) {
        const At here = section(t);
        return here.z_mm + side * half_bore_mm_ * here.k - level_mm;
    });
}

LiquidUnder BorePart::underOfArc(double level_mm) const
{
    std::array<double, 4> cuts = {-end_, -end_, end_, end_};
    std::size_t cut = 1;
    for (const int side : {0, 1}) {
        if ((breaks_mm_[side] < level_mm) != (breaks_mm_[2 + side] < level_mm))
            cuts[cut++] = passes(level_mm, side == 0 ? -1 : 1);
    }
    if (cuts[1] > cuts[2])
        std::swap(cuts[1], cuts[2]);
    LiquidUnder sum;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        if (!(cuts[i + 1] > cuts[i]))
            continue;
        const LiquidUnder part = cutOfArc(level_mm, cuts[i], cuts[i + 1], most_arc_halvings);
        sum.liquid_ml += part.liquid_ml;
        sum.ml_per_mm += part.ml_per_mm;
    }
    return sum;
}

/// Part of an arc that is full, empty, or cut by the level throughout.
LiquidUnder BorePart::cutOfArc(double level_mm, double from, double to, int halvings) const
{
    const double r = half_bore_mm_;
    const double along = to - from;
    const At middle = section((from + to) / 2);
    if (middle.z_mm + r * middle.k <= level_mm) {
        const double length_mm = 2 * radius_mm_ * (std::atan(to) - std::atan(from));
        return {std::numbers::pi * r * r * length_mm / mm3_per_ml, 0};
    }
    if (middle.z_mm - r * middle.k >= level_mm)
        return {};
    const double k_from = section(from).k;
    const double k_to = section(to).k;
    // Near a plumb place the offset of the chord changes as 1 / k.
    if (halvings > 0 && most_k_ratio * std::min(k_from, k_to) < std::max(k_from, k_to)) {
        const LiquidUnder before = cutOfArc(level_mm, from, (from + to) / 2, halvings - 1);
        const LiquidUnder after = cutOfArc(level_mm, (from + to) / 2, to, halvings - 1);
        return {before.liquid_ml + after.liquid_ml, before.ml_per_mm + after.ml_per_mm};
    }
    // Without a branch, and summed up afterwards, so that the places can be reckoned side by side.
    std::array<double, Gauss::size> areas;
    std::array<double, Gauss::size> surfaces;
    for (std::size_t i = 0; i < Gauss::size; ++i) {
        const double t = from + along * gauss.place[i];
        const At here = section(t);
        const double share = gauss.weight[i] / (1 + t * t);
        const double per_k = 1 / here.k;
        const double offset = std::clamp((level_mm - here.z_mm) * per_k / r, -1.0, 1.0);
        const double half_chord = std::sqrt((1 - offset) * (1 + offset));
        const double cut = share * (std::numbers::pi - arcCosine(offset) + offset * half_chord);
        const double whole = here.z_mm < level_mm ? share * std::numbers::pi : 0;
        areas[i] = here.k < level_limit ? whole : cut;
        surfaces[i] = here.k < level_limit ? 0 : share * 2 * half_chord * per_k;
    }
    double area = 0;
    double surface = 0;
    for (std::size_t i = 0; i < Gauss::size; ++i) {
        area += areas[i];
        surface += surfaces[i];
    }
    const double mm = along * radius_mm_;
    return {mm * area * r * r / mm3_per_ml, mm * surface * r / mm3_per_ml};
}

std::uint64_t BorePart::mixedInto(std::uint64_t mark) const
{
    constexpr std::uint64_t odd = 0x9E3779B97F4A7C15; // 2^64 over the golden mean (Knuth, from memory)
    for (const double number :
         {length_mm_, half_bore_mm_, lowest_mm_, highest_mm_, radius_mm_, u_up_, n_up_}) {
        mark = (mark ^ std::bit_cast<std::uint64_t>(number)) * odd;
        mark ^= mark >> 29;
    }
    return mark;
}

std::vector<BorePart> borePartsOf(const std::vector<MonotonePart>& parts, double from_mm, double to_mm)
{
    std::vector<BorePart> bore;
    const auto add = [&bore](const MonotonePart& part, double a, double b) {
        if (b - a > no_length_mm)
            bore.emplace_back(part, a, b);
    };
    for (const MonotonePart& part : parts) {
        const double a = std::max(from_mm, part.from_mm);
        const double b = std::min(to_mm, part.to_mm);
        const double steepest = steepestPlace(part.stretch);
        if (steepest > a && steepest < b) {
            add(part, a, steepest);
            add(part, steepest, b);
        } else {
            add(part, a, b);
        }
    }
    return bore;
}

} // namespace siphonwright
