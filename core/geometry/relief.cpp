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
    double from_mm = 0; ///< the bend itself, along the path
    double to_mm = 0;
    double half_bore_mm = 0;
    double floor_mm = 0; ///< held from half a bore before to half a bore after it
    double cap_mm = infinite;

    double heldFrom() const { return from_mm - half_bore_mm; }
    double heldTo() const { return to_mm + half_bore_mm; }
};

/// What turns upward between the tangents before and after, with its middle at height z.
std::optional<TightBend> upwardBend(Vec3 before, Vec3 after, Vec3 up, double z_mm, double half_bore_mm)
{
    if (half_bore_mm <= 0 || dot(after, up) <= dot(before, up))
        return std::nullopt;
    TightBend bend;
    bend.half_bore_mm = half_bore_mm;
    bend.floor_mm = z_mm + half_bore_mm * std::max(levelPart(before, up), levelPart(after, up));
    return bend;
}

/// Whether the corner between piece i and the next is sharp.
bool endsInCorner(const Path& path, std::size_t i)
{
    const std::vector<Piece>& pieces = path.line.pieces();
    return i + 1 < pieces.size() &&
           !(distance(pieces[i].tangent(pieces[i].length_mm), pieces[i + 1].u) < tangent_limit);
}

/// The corner between piece i and the next, if it is sharp and turns upward.
void addTightCorner(const Path& path, Vec3 up, std::size_t i, std::vector<TightBend>& bends)
{
    if (!endsInCorner(path, i))
        return;
    const Piece& next = path.line.pieces()[i + 1];
    const Vec3 before = path.line.pieces()[i].tangent(path.line.pieces()[i].length_mm);
    const double half = path.boreAt(next.s) / 2;
    std::optional<TightBend> bend = upwardBend(before, next.u, up, dot(next.start, up), half);
    if (!bend)
        return;
    bend->from_mm = next.s;
    bend->to_mm = next.s;
    bends.push_back(*bend);
}

/// The part of an arc from a to b along it, if it turns upward there.
void addTightPart(const Piece& arc, Vec3 up, double half_bore_mm, double a, double b,
                  std::vector<TightBend>& bends)
{
    const Vec3 before = arc.tangent(a);
    const Vec3 after = arc.tangent(b);
    std::optional<TightBend> bend = upwardBend(before, after, up, dot(arc.at((a + b) / 2), up), half_bore_mm);
    if (!bend)
        return;
    bend->from_mm = arc.s + a;
    bend->to_mm = arc.s + b;
    bend->cap_mm = std::max(dot(arc.at(a), up) + half_bore_mm * levelPart(before, up),
                            dot(arc.at(b), up) + half_bore_mm * levelPart(after, up));
    bends.push_back(*bend);
}

double halfBoreOn(const Path& path, const Piece& arc)
{
    return path.boreAt(arc.s + arc.length_mm / 2) / 2;
}

/// Whether piece i is an arc of under half a bore.
bool isTightArc(const Path& path, std::size_t i)
{
    const Piece& arc = path.line.pieces()[i];
    return arc.radius_mm > 0 && !(arc.radius_mm >= halfBoreOn(path, arc));
}

/// Piece i, if it is an arc of under half a bore and turns upward; an arc that passes its steepest place
/// turns upward on one side of it and downward on the other.
void addTightArc(const Path& path, Vec3 up, std::size_t i, std::vector<TightBend>& bends)
{
    if (!isTightArc(path, i))
        return;
    const Piece& arc = path.line.pieces()[i];
    const double half = halfBoreOn(path, arc);
    const double phase = std::atan2(dot(arc.n, up), dot(arc.u, up));
    const double steepest = arc.radius_mm * (phase < 0 ? phase + std::numbers::pi : phase);
    if (steepest > 0 && steepest < arc.length_mm) {
        addTightPart(arc, up, half, 0, steepest, bends);
        addTightPart(arc, up, half, steepest, arc.length_mm, bends);
    } else {
        addTightPart(arc, up, half, 0, arc.length_mm, bends);
    }
}

/// Limit the crown of a stretch that a bend's floor covers; the cap holds on the bend itself.
void limit(Stretch& stretch, const TightBend& bend, bool on_bend)
{
    stretch.floor_mm = std::max(stretch.floor_mm, bend.floor_mm);
    if (on_bend && stretch.half_bore_mm <= bend.half_bore_mm)
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

/// Pieces that are tight arcs or end in a sharp corner, whichever way they turn.
std::vector<std::size_t> tightPiecesOf(const Path& path)
{
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < path.line.pieces().size(); ++i)
        if (isTightArc(path, i) || endsInCorner(path, i))
            out.push_back(i);
    return out;
}

std::vector<TightBend> tightBendsOf(const Path& path, Vec3 up, const std::vector<std::size_t>& tight)
{
    std::vector<TightBend> bends;
    for (const std::size_t i : tight) {
        addTightArc(path, up, i, bends);
        addTightCorner(path, up, i, bends);
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

void holdCrowns(std::vector<Stretch>& stretches, const std::vector<TightBend>& bends)
{
    std::vector<double> places;
    for (const TightBend& bend : bends)
        places.insert(places.end(), {bend.heldFrom(), bend.from_mm, bend.to_mm, bend.heldTo()});
    std::sort(places.begin(), places.end());
    stretches = cutAt(stretches, places);
    for (const TightBend& bend : bends) {
        auto part = std::lower_bound(stretches.begin(), stretches.end(), bend.heldFrom(),
                                     [](const Stretch& a, double s) { return a.from_mm < s; });
        for (; part != stretches.end() && part->to_mm <= bend.heldTo(); ++part)
            limit(*part, bend, part->from_mm >= bend.from_mm && part->to_mm <= bend.to_mm);
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
    if (t == 0)
        return {start_mm, std::sqrt(std::max(0.0, (1 - u_up) * (1 + u_up)))};
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

namespace {

/// Whether an arc climbs, or falls, all along the stretch so plainly that no angle need be taken: the slope
/// u cos a + n sin a keeps u's sign while |u| cos a > |n| sin a, with cos a >= 1 - a^2/2 and sin a <= a.
bool plainlyOneWay(const Stretch& stretch)
{
    constexpr double rounding = 1e-9;
    const double a = (stretch.to_mm - stretch.piece_mm) / stretch.radius_mm;
    return std::abs(stretch.u_up) * (1 - a * a / 2) > std::abs(stretch.n_up) * a + rounding;
}

} // namespace

TurningPlaces turningPlaces(const Stretch& stretch)
{
    TurningPlaces places;
    if (stretch.radius_mm <= 0)
        return places;
    const bool tight = stretch.half_bore_mm > stretch.radius_mm;
    if (!tight && plainlyOneWay(stretch))
        return places;
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
        const std::vector<TightBend> bends = tightBendsOf(path, up, tightPiecesOf(path));
        if (!bends.empty())
            holdCrowns(stretches, bends);
    }
    return stretches;
}

Relief reliefOf(const Path& path, Vec3 up)
{
    Relief out;
    out.up = cutAtBores(path, up);
    out.down = out.up;
    for (Stretch& stretch : out.down) {
        stretch.start_mm = -stretch.start_mm;
        stretch.u_up = -stretch.u_up;
        stretch.n_up = -stretch.n_up;
    }
    const std::vector<std::size_t> tight = tightPiecesOf(path);
    out.mirrored = tight.empty();
    if (const std::vector<TightBend> bends = tightBendsOf(path, up, tight); !bends.empty())
        holdCrowns(out.up, bends);
    if (const std::vector<TightBend> bends = tightBendsOf(path, up * -1, tight); !bends.empty())
        holdCrowns(out.down, bends);
    return out;
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
    std::vector<TightBend> bends;
    for (std::size_t i = here + 1; i-- > 0 && s - (pieces[i].s + pieces[i].length_mm) <= reach;) {
        addTightArc(path, up, i, bends);
        if (i < here)
            addTightCorner(path, up, i, bends);
    }
    for (std::size_t i = here; i < pieces.size() && pieces[i].s - s <= reach; ++i) {
        if (i > here)
            addTightArc(path, up, i, bends);
        addTightCorner(path, up, i, bends);
    }
    for (const TightBend& bend : bends) {
        if (s >= bend.heldFrom() && s <= bend.heldTo())
            limit(stretch, bend, s >= bend.from_mm && s <= bend.to_mm);
    }
    return stretch.crown(s);
}

} // namespace siphonwright
