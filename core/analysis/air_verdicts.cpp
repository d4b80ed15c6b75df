#include "core/analysis/air_verdicts.h"

#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double same_crest_mm = 60; ///< a pocket shifts a little against its crest

bool isHump(const Finding& finding)
{
    return finding.rule == "supply-high-point" || finding.rule == "return-high-point";
}

bool isOnAir(const Finding& finding)
{
    return finding.rule == "air-locked" || finding.rule == "air-weakens-flow" ||
           finding.rule == "not-cleared-by-running";
}

bool stopsByGeometry(const Finding& finding)
{
    return isHump(finding) && finding.severity == Severity::stop && !finding.only_on_grade;
}

/// Air that closes the bore, or a fill that could not be computed.
bool keepsAir(const Filling& filling, const Id& hose)
{
    return !filling.missing.empty() || filling.status != FillStatus::filled ||
           std::any_of(filling.pockets.begin(), filling.pockets.end(), [&](const PocketFound& pocket) {
               return pocket.hose == hose && (pocket.closes_bore || pocket.reverse_mm > 0);
           });
}

std::vector<Grade> envelopeOf(const Site& site)
{
    std::vector<Grade> grades;
    for (const double along : {-1.0, -0.5, 0.0, 0.5, 1.0})
        for (const double across : {-1.0, 0.0, 1.0})
            if (along != 0 || across != 0)
                grades.push_back(
                    {along * site.envelope_along_percent, across * site.envelope_across_percent});
    grades.push_back({site.grade_along_percent, site.grade_across_percent});
    return grades;
}

/// The same drawing with an open bleed more, filled with the valves open: coolant would shut it before the
/// valves are opened one after the other.
Sketch withBleed(const Sketch& sketch, const Id& hose, double along_hose_mm)
{
    Sketch out = sketch;
    out.fill.start = FillStart::all_empty;
    out.fill.by = FillBy::filler;
    for (Shared<Hose>& one : out.hoses)
        if (one->id == hose)
            one.edit([&](Hose& h) {
                InlinePart bleed;
                bleed.kind = InlineKind::bleed;
                bleed.along_mm = along_hose_mm;
                bleed.open = true;
                h.parts.push_back(bleed);
            });
    return out;
}

const BleedCure* cureOf(const Finding& finding, const std::vector<BleedCure>& cures)
{
    const auto found = std::find_if(cures.begin(), cures.end(), [&](const BleedCure& cure) {
        return cure.hose == finding.hose && finding.from_mm && finding.to_mm &&
               cure.along_mm >= *finding.from_mm - same_crest_mm &&
               cure.along_mm <= *finding.to_mm + same_crest_mm;
    });
    return found == cures.end() ? nullptr : &*found;
}

} // namespace

std::vector<Id> hosesFilledClean(const Sketch& sketch, const Layout& level,
                                 const std::vector<Finding>& findings, const Filling& filling,
                                 const std::stop_token& stop, LevelTables* kept)
{
    std::vector<Id> clean;
    const auto consider = [&](const Finding& finding) {
        if (stopsByGeometry(finding) && !keepsAir(filling, finding.hose) &&
            std::find(clean.begin(), clean.end(), finding.hose) == clean.end())
            clean.push_back(finding.hose);
    };
    for (const Finding& fault : findings) {
        consider(fault);
        for (const Finding& detail : fault.details)
            consider(detail);
    }
    const Assumptions assumed(sketch);
    for (const Grade& grade : envelopeOf(sketch.site)) {
        if (clean.empty() || stop.stop_requested())
            break;
        const Filling tilted =
            fillOf(sketch, resolve(sketch, plumbOf(sketch, grade), &level), nullptr, assumed, kept);
        clean.erase(std::remove_if(clean.begin(), clean.end(),
                                   [&](const Id& hose) { return keepsAir(tilted, hose); }),
                    clean.end());
    }
    return stop.stop_requested() ? std::vector<Id>{} : clean;
}

std::vector<BleedCure> bleedCures(const Sketch& sketch, const Layout& level, const Filling& filling,
                                  const std::stop_token& stop, LevelTables* kept)
{
    std::vector<BleedCure> cures;
    const Assumptions assumed(sketch);
    for (const PocketFound& pocket : filling.pockets) {
        const ResolvedHose* hose = level.hose(pocket.hose);
        if (!hose || !pocket.closes_bore || stop.stop_requested())
            continue;
        const double length_mm = (*hose)->hose_to_mm - (*hose)->hose_from_mm;
        const double along_mm = std::clamp(pocket.along_mm - (*hose)->hose_from_mm, 0.0, length_mm);
        const Sketch bled = withBleed(sketch, pocket.hose, along_mm);
        const Filling again = fillOf(bled, resolve(bled, level.plumb, &level), nullptr, assumed, kept);
        if (again.missing.empty() && !again.closedBore(pocket.heater))
            cures.push_back({pocket.hose, nameOfHose(*(*hose)->hose), pocket.along_mm, along_mm});
    }
    return cures;
}

void outrank(std::vector<Finding>& findings, const std::vector<Id>& clean)
{
    for (Finding& finding : findings) {
        if (!stopsByGeometry(finding) || std::find(clean.begin(), clean.end(), finding.hose) == clean.end())
            continue;
        finding.severity = Severity::caution;
        finding.text.pattern += " Filled as planned, none closes the bore.";
        if (finding.fix.quantities.size() == 1)
            finding.fix.pattern = "Fill so every time, or lower the hump by at least {0}.";
    }
}

void adviseBleeds(std::vector<Finding>& findings, const std::vector<BleedCure>& cures)
{
    for (Finding& finding : findings) {
        if (finding.only_on_grade || (!isHump(finding) && !isOnAir(finding)))
            continue;
        const BleedCure* cure = cureOf(finding, cures);
        if (!cure)
            continue;
        const Quantity along{cure->along_hose_mm, Unit::mm};
        if (isHump(finding) && finding.fix.quantities.size() == 1)
            finding.fix = {"Lower the hump by at least {0}. A bleed {1} along {a}, filled with the valves "
                           "open, would let its air "
                           "out; re-routing is the better cure.",
                           {finding.fix.quantities[0], along},
                           {cure->hose_name}};
        else
            finding.fix = {"A bleed {0} along {a}, filled with the valves open, would let it out; re-routing "
                           "is the better cure.",
                           {along},
                           {cure->hose_name}};
    }
}

} // namespace siphonwright
