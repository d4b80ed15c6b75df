#include "app/drawing/ink.h"
#include "app/drawing/slope_words.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

/// The slopes of hoses, written along them as dimensions.
namespace siphonwright::drawing {

namespace {

/// Straights shorter than this on the page are only in the table of hoses.
constexpr double shortest_mm = 9;
constexpr double to_degrees = 180 / 3.14159265358979323846;

/// In the end view what runs across the engine, in the elevation the rest: each slope is said once.
bool belongsHere(const Ink& ink, const Piece& piece)
{
    const bool across = std::abs(piece.u.y) > std::abs(piece.u.x);
    if (ink.style.view.isEnd())
        return across;
    return !across || !ink.style.page->end_beside;
}

/// Beside the straight on either side, from its middle out.
/// \param alone  only where no other hose lies over or under it
std::vector<Spot> spotsAlong(const Ink& ink, const ResolvedHose& hose, const Piece& piece, bool alone)
{
    const double half = hose->outsideDiameter() / 2 + hose->hose->insulation_mm;
    const double angle = readableAngle(unitOf(ink.page(piece.u)));
    const double a = angle / to_degrees;
    const QPointF down(-std::sin(a), std::cos(a));
    std::vector<Spot> spots;
    for (const double share : {0.5, 0.35, 0.65, 0.22, 0.78}) {
        const QPointF at = ink.page(piece.at(piece.length_mm * share));
        if (alone && othersAt(ink, hose, at))
            continue;
        for (const double away_mm : {1.0, 1.9, 2.8}) {
            spots.push_back({at - down * (half + ink.paper(away_mm)), Anchor::centre, angle});
            spots.push_back(
                {at + down * (half + ink.paper(away_mm + ink.style.lettering_mm)), Anchor::centre, angle});
        }
    }
    return spots;
}

} // namespace

QString slopeWords(Vec3 along, const Plumb& plumb)
{
    constexpr double level = 0.001;  // as core/quantity writes slopes
    constexpr double upright = 0.01; // 0.6 degrees, what an eye takes for plumb
    const double rise = dot(along, plumb.up());
    const double run = std::sqrt(std::max(0.0, dot(along, along) - rise * rise));
    if (!(rise * rise + run * run > 0))
        return {};
    if (std::abs(rise) < level * run)
        return tr("level");
    const bool up = rise > 0;
    if (run < upright * std::abs(rise))
        return up ? tr("plumb up") : tr("plumb down");
    const double n = run / std::abs(rise);
    QString steep;
    if (n < 1) {
        steep = numberInWords(std::atan2(std::abs(rise), run) * to_degrees, 0) + QChar(0xb0);
    } else {
        constexpr double in_whole_numbers = 9.95;
        const double tenths = std::round(n * 10);
        const bool whole = n >= in_whole_numbers || std::fmod(tenths, 10) == 0;
        steep = QStringLiteral("1:") + numberInWords(n, whole ? 0 : 1);
    }
    return up ? tr("%1 up").arg(steep) : tr("%1 down").arg(steep);
}

void labelSlopes(Ink& ink)
{
    for (const ResolvedHose& hose : ink.analysis.layout.hoses) {
        if (hose->path.line.empty())
            continue;
        for (const Piece& piece : hose->path.line.pieces()) {
            const QPointF seen = ink.page(piece.u);
            const double on_page = std::hypot(seen.x(), seen.y()) * piece.length_mm * ink.style.scale;
            const bool metal = piece.s + piece.length_mm <= hose->hose_from_mm || piece.s >= hose->hose_to_mm;
            if (piece.radius_mm > 0 || metal || on_page < shortest_mm || !belongsHere(ink, piece))
                continue;
            const QString slope = slopeWords(piece.u, ink.analysis.layout.plumb);
            const std::vector<Spot> alone = spotsAlong(ink, hose, piece, true);
            if (alone.empty()) // where hoses lie over each other it has to say whose it is
                ink.label(spotsAlong(ink, hose, piece, false),
                          QStringLiteral("%1: %2").arg(inWords(nameOfHose(*hose->hose)), slope),
                          ink.palette.ink);
            else
                ink.label(alone, slope, ink.palette.ink);
        }
    }
}

} // namespace siphonwright::drawing
