#include "core/geometry/relief.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace siphonwright {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
/// Where two stretches of bore meet, to rounding.
constexpr double same_place_mm = 1e-9;
/// Change of direction between two pieces under which they are tangent.
constexpr double tangent_limit = 1e-6;
/// As for the centreline: far over any drawing, and its squares stay finite.
constexpr double greatest_bore_mm = 1e9;

double soundBore(double bore_mm)
{
    return bore_mm > 0 ? std::min(bore_mm, greatest_bore_mm) : 0;
}

/// The horizontal part of a direction.
double levelPart(Vec3 direction, Vec3 up)
{
    return length(cross(up, direction));
}

/// A bend too tight for its bore: its disc sections cross.
struct TightBend {
    double from_mm = 0; ///< where its crown is held, half a bore beyond its ends
    double to_mm = 0;
    double half_bore_mm = 0;
    double floor_mm = 0;
    double cap_mm = infinite;
    std::size_t arc = 0; ///< the piece the cap is for
};

/// What turns upward between the tangents before and after, over [from, to] with its middle at height z.
std::optional<TightBend> upwardBend(Vec3 before, Vec3 after, Vec3 up, double z_mm, double half_bore_mm)
{
    if (half_bore_mm <= 0 || dot(after, up) <= dot(before, up))
        return std::nullopt;
    TightBend bend;
    bend.half_bore_mm = half_bore_mm;
    bend.floor_mm = z_mm + half_bore_mm * std::max(levelPart(before, up), levelPart(after, up));
    return bend;
}

/// The corner between piece i and the next, if it is sharp and turns upward.
std::optional<TightBend> tightCorner(const Path& path, Vec3 up, std::size_t i)
{
    const std::vector<Piece>& pieces = path.line.pieces();
    if (i + 1 >= pieces.size())
        return std::nullopt;
    const Piece& next = pieces[i + 1];
    const Vec3 before = pieces[i].tangent(pieces[i].length_mm);
    if (distance(before, next.u) < tangent_limit)
        return std::nullopt;
    const double half = path.boreAt(next.s) / 2;
    std::optional<TightBend> bend = upwardBend(before, next.u, up, dot(next.start, up), half);
    if (bend) {
        bend->from_mm = next.s - half;
        bend->to_mm = next.s + half;
        bend->arc = pieces.size();
    }
    return bend;
}

/// Piece i, if it is an arc of under half a bore and turns upward.
std::optional<TightBend> tightArc(const Path& path, Vec3 up, std::size_t i)
{
    const Piece& arc = path.line.pieces()[i];
    if (arc.radius_mm <= 0)
        return std::nullopt;
    const double half = path.boreAt(arc.s + arc.length_mm / 2) / 2;
    if (arc.radius_mm >= half)
        return std::nullopt;
    const Vec3 after = arc.tangent(arc.length_mm);
    std::optional<TightBend> bend = upwardBend(arc.u, after, up, dot(arc.at(arc.length_mm / 2), up), half);
    if (bend) {
        bend->from_mm = arc.s - half;
        bend->to_mm = arc.s + arc.length_mm + half;
        bend->arc = i;
        bend->cap_mm = std::max(dot(arc.start, up) + half * levelPart(arc.u, up),
                                dot(arc.at(arc.length_mm), up) + half * levelPart(after, up));
    }
    return bend;
}

void limit(Stretch& stretch, const TightBend& bend, bool on_its_arc)
{
    stretch.floor_mm = std::max(stretch.floor_mm, bend.floor_mm);
    if (on_its_arc && stretch.half_bore_mm <= bend.half_bore_mm)
        stretch.cap_mm = std::min(stretch.cap_mm, bend.cap_mm);
}

Stretch wholePiece(const Piece& piece, Vec3 up)
{
    Stretch stretch;
    stretch.from_mm = piece.s;
    stretch.to_mm = piece.s + piece.length_mm;
    stretch.piece_mm = piece.s;
    stretch.radius_mm = piece.radius_mm;
    stretch.start_mm = dot(piece.start, up);
    stretch.u_up = dot(piece.u, up);
    stretch.n_up = dot(piece.n, up);
    stretch.k_straight = levelPart(piece.u, up);
    return stretch;
}

/// The bores as stretches that cover the whole length in order, whatever was given. A stretch without length
/// stays: it is an opening with a bore of its own.
std::vector<BoreSpan> coveringSpans(const Path& path)
{
    const double end = path.line.length();
    std::vector<BoreSpan> spans = path.bores;
    if (spans.empty())
        spans.push_back({0, end, 0});
    double reached = 0;
    for (BoreSpan& span : spans) {
        reached = std::isfinite(span.from_mm) ? std::clamp(span.from_mm, reached, end) : reached;
        span.from_mm = reached;
        span.bore_mm = soundBore(span.bore_mm);
    }
    spans.front().from_mm = 0;
    for (std::size_t i = 0; i < spans.size(); ++i)
        spans[i].to_mm = i + 1 < spans.size() ? spans[i + 1].from_mm : end;
    return spans;
}

std::vector<Stretch> cutAtBores(const Path& path, Vec3 up)
{
    const std::vector<BoreSpan> spans = coveringSpans(path);
    const std::vector<Piece>& pieces = path.line.pieces();
    std::vector<Stretch> result;
    result.reserve(pieces.size() + spans.size() + 2);
    std::size_t first = 0;
    for (const Piece& piece : pieces) {
        const Stretch whole = wholePiece(piece, up);
        while (first + 1 < spans.size() && spans[first].to_mm < whole.from_mm)
            ++first;
        for (std::size_t i = first; i < spans.size() && spans[i].from_mm <= whole.to_mm; ++i) {
            Stretch part = whole;
            part.from_mm = std::max(whole.from_mm, spans[i].from_mm);
            part.to_mm = std::min(whole.to_mm, spans[i].to_mm);
            part.half_bore_mm = spans[i].bore_mm / 2;
            const bool opening = spans[i].from_mm >= spans[i].to_mm;
            if (part.to_mm > part.from_mm || (opening && part.to_mm >= part.from_mm))
                result.push_back(part);
        }
    }
    return result;
}

std::vector<TightBend> tightBendsOf(const Path& path, Vec3 up)
{
    std::vector<TightBend> bends;
    for (std::size_t i = 0; i < path.line.pieces().size(); ++i) {
        if (const auto arc = tightArc(path, up, i))
            bends.push_back(*arc);
        if (const auto corner = tightCorner(path, up, i))
            bends.push_back(*corner);
    }
    return bends;
}

std::vector<Stretch> cutAt(const std::vector<Stretch>& stretches, const std::vector<double>& places)
{
    std::vector<Stretch> result;
    result.reserve(stretches.size() + places.size());
    for (Stretch rest : stretches) {
        auto place = std::upper_bound(places.begin(), places.end(), rest.from_mm);
        for (; place != places.end() && *place < rest.to_mm; ++place) {
            if (*place <= rest.from_mm)
                continue;
            Stretch part = rest;
            part.to_mm = *place;
            result.push_back(part);
            rest.from_mm = *place;
        }
        result.push_back(rest);
    }
    return result;
}

void holdCrowns(std::vector<Stretch>& stretches, const Path& path, const std::vector<TightBend>& bends)
{
    std::vector<double> places;
    for (const TightBend& bend : bends) {
        places.push_back(bend.from_mm);
        places.push_back(bend.to_mm);
    }
    std::sort(places.begin(), places.end());
    stretches = cutAt(stretches, places);
    for (const TightBend& bend : bends) {
        const double arc_from =
            bend.arc < path.line.pieces().size() ? path.line.pieces()[bend.arc].s : infinite;
        auto part = std::lower_bound(stretches.begin(), stretches.end(), bend.from_mm,
                                     [](const Stretch& a, double s) { return a.from_mm < s; });
        for (; part != stretches.end() && part->to_mm <= bend.to_mm; ++part)
            limit(*part, bend, part->piece_mm == arc_from);
    }
}

} // namespace

double Path::boreAt(double s) const
{
    double bore_mm = infinite;
    double from = -infinite;
    for (std::size_t i = 0; i < bores.size(); ++i) {
        if (i > 0)
            from = std::max(from, bores[i].from_mm);
        const double to = i + 1 < bores.size() ? std::max(from, bores[i + 1].from_mm) : infinite;
        if (s >= from - same_place_mm && s <= to + same_place_mm)
            bore_mm = std::min(bore_mm, soundBore(bores[i].bore_mm));
    }
    return std::isfinite(bore_mm) ? bore_mm : 0;
}

Section Stretch::section(double s) const
{
    const double t = s - piece_mm;
    if (radius_mm <= 0)
        return {start_mm + u_up * t, k_straight};
    const double sine_half = std::sin(t / radius_mm / 2);
    const double cosine_half = std::cos(t / radius_mm / 2);
    const double sine = 2 * sine_half * cosine_half;
    const double versine = 2 * sine_half * sine_half;
    const double t_up = u_up * (1 - versine) + n_up * sine;
    return {start_mm + radius_mm * (u_up * sine + n_up * versine),
            std::sqrt(std::max(0.0, (1 - t_up) * (1 + t_up)))};
}

double Stretch::slope(double s) const
{
    if (radius_mm <= 0)
        return u_up;
    const double a = (s - piece_mm) / radius_mm;
    return u_up * std::cos(a) + n_up * std::sin(a);
}

double Stretch::crown(double s) const
{
    const Section here = section(s);
    return std::max(floor_mm, std::min(cap_mm, here.z_mm + half_bore_mm * here.k));
}

TurningPlaces turningPlaces(const Stretch& stretch)
{
    TurningPlaces places;
    if (stretch.radius_mm <= 0)
        return places;
    const bool tight = stretch.half_bore_mm > stretch.radius_mm;
    if (!tight && stretch.slope(stretch.from_mm) * stretch.slope(stretch.to_mm) >= 0)
        return places;
    // Along the arc t_z = steepest cos w, w being the angle from the steepest place. Crown and invert turn
    // where t_z = 0; in a tight arc also where (D/2) |t_z'| = k, and k has a kink where the arc is plumb.
    const double steepest = std::hypot(stretch.u_up, stretch.n_up);
    const double phase = std::atan2(stretch.n_up, stretch.u_up);
    double angles[8] = {std::numbers::pi / 2, -std::numbers::pi / 2};
    int count = 2;
    if (tight && steepest > 0) {
        angles[count++] = 0;
        angles[count++] = std::numbers::pi;
        const double ratio = stretch.half_bore_mm / stretch.radius_mm;
        const double level = std::max(0.0, 1 - steepest * steepest);
        const double sine = std::sqrt(level / (ratio * ratio - 1)) / steepest;
        if (sine < 1) {
            const double w = std::asin(sine);
            for (const double angle : {w, -w, std::numbers::pi - w, w - std::numbers::pi})
                angles[count++] = angle;
        }
    }
    for (int i = 0; i < count; ++i) {
        double a = angles[i] + phase;
        a -= 2 * std::numbers::pi * std::floor(a / (2 * std::numbers::pi));
        const double s = stretch.piece_mm + stretch.radius_mm * a;
        if (s > stretch.from_mm && s < stretch.to_mm)
            places.s[places.count++] = s;
    }
    std::sort(places.s, places.s + places.count);
    return places;
}

std::vector<Stretch> stretchesOf(const Path& path, Vec3 up, TightBends tight_bends)
{
    std::vector<Stretch> stretches = cutAtBores(path, up);
    if (tight_bends == TightBends::limit_crown) {
        const std::vector<TightBend> bends = tightBendsOf(path, up);
        if (!bends.empty())
            holdCrowns(stretches, path, bends);
    }
    return stretches;
}

double crownAt(const Path& path, Vec3 up, double s)
{
    const std::vector<Piece>& pieces = path.line.pieces();
    if (pieces.empty())
        return 0;
    s = std::clamp(s, 0.0, path.line.length());
    const std::size_t here = path.line.pieceAt(s);
    Stretch stretch = wholePiece(pieces[here], up);
    stretch.half_bore_mm = path.boreAt(s) / 2;

    double reach = 0;
    for (const BoreSpan& span : path.bores)
        reach = std::max(reach, soundBore(span.bore_mm) / 2);
    const auto consider = [&](const std::optional<TightBend>& bend, std::size_t piece) {
        if (bend && s >= bend->from_mm && s <= bend->to_mm)
            limit(stretch, *bend, bend->arc == here && piece == here);
    };
    for (std::size_t i = here + 1; i-- > 0 && s - (pieces[i].s + pieces[i].length_mm) <= reach;) {
        consider(tightArc(path, up, i), i);
        if (i < here)
            consider(tightCorner(path, up, i), i);
    }
    for (std::size_t i = here; i < pieces.size() && pieces[i].s - s <= reach; ++i) {
        if (i > here)
            consider(tightArc(path, up, i), i);
        consider(tightCorner(path, up, i), i);
    }
    return stretch.crown(s);
}

} // namespace siphonwright
