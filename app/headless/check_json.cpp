#include "app/headless/air_json.h"
#include "app/headless/commands.h"

#include "core/sketch/words.h"

#include <nlohmann/json.hpp>

#include <cmath>

/// The machine-readable form of a check. Keys may be added; these stay.
namespace siphonwright::headless {

namespace {

using Json = nlohmann::ordered_json;

Json number(const std::optional<double>& value)
{
    return value && std::isfinite(*value) ? Json(*value) : Json(nullptr);
}

/// The id of what has one, else the word for what there is only one of.
Json partName(const PartRef& part)
{
    if (!part.id.empty())
        return part.id;
    switch (part.kind) {
    case PartKind::engine:
    case PartKind::engine_corner:
        return "engine";
    case PartKind::jacket:
    case PartKind::jacket_corner:
        return "jacket";
    case PartKind::thermostat:
        return "thermostat";
    case PartKind::tank:
        return "tank";
    case PartKind::ground:
        return "ground";
    case PartKind::photo:
        return "photo";
    default:
        return nullptr;
    }
}

Json gradeJson(const std::optional<Grade>& grade)
{
    if (!grade)
        return nullptr;
    return {{"along_percent", grade->along_percent}, {"across_percent", grade->across_percent}};
}

Json unconfirmedJson(const std::vector<Unconfirmed>& facts)
{
    Json list = Json::array();
    for (const Unconfirmed& one : facts)
        list.push_back({{"fact", one.fact},
                        {"part", partName(one.part)},
                        {"source", Words<Source>::list[std::size_t(one.source)]}});
    return list;
}

Json findingJson(const Finding& finding)
{
    Json entry;
    entry["rule"] = finding.rule;
    entry["severity"] = nameOf(finding.severity);
    entry["part"] = partName(finding.part);
    entry["hose"] = finding.hose.empty() ? Json(nullptr) : Json(finding.hose);
    entry["along_mm"] = number(finding.along_mm);
    entry["x_mm"] = finding.at ? number(finding.at->x) : Json(nullptr);
    entry["z_mm"] = finding.at ? number(finding.at->z) : Json(nullptr);
    entry["measured"] = number(finding.measured);
    entry["limit"] = number(finding.limit);
    entry["unit"] = nameOf(finding.unit);
    entry["text"] = format(finding.text, UnitSystem::metric);
    entry["only_on_grade"] = gradeJson(finding.only_on_grade);
    entry["rests_on"] = unconfirmedJson(finding.rests_on);
    Json details = Json::array();
    for (const Finding& detail : finding.details)
        details.push_back(findingJson(detail));
    entry["details"] = std::move(details);
    return entry;
}

Json hoseJson(const ResolvedHose& hose, const std::optional<Proof>& proof)
{
    constexpr double degrees = 180 / 3.14159265358979323846;
    Json entry;
    entry["id"] = hose.id();
    entry["role"] = Words<HoseRole>::list[std::size_t(hose.role())];
    entry["length_mm"] = number(hose->length_mm);
    entry["cut_length_mm"] = number(hose->cut_length_mm);
    entry["rise_mm"] = number(hose.rise_mm);
    entry["bore_mm"] = hose->bore_known ? number(hose->bore_mm) : Json(nullptr);
    entry["volume_ml"] = number(hose->volume_ml);
    const Droop* droop = proof ? proof->sagOf(hose.id()) : nullptr;
    entry["droop_margin_mm"] = droop ? number(droop->margin_mm) : Json(nullptr);
    entry["droop_along_mm"] = droop && droop->margin_mm ? number(droop->along_mm) : Json(nullptr);
    Json bends = Json::array();
    for (const Bend& bend : hose->path.line.bends())
        bends.push_back({{"angle_deg", bend.angle_rad * degrees}, {"radius_mm", bend.radius_mm}});
    entry["bends"] = std::move(bends);
    Json high_points = Json::array();
    for (const HighPoint& high : hose.profile.high_points)
        high_points.push_back({{"along_mm", high.along_mm},
                               {"z_mm", high.z_mm},
                               {"height_mm", high.height_mm},
                               {"trapped_ml", high.trapped_ml}});
    entry["high_points"] = std::move(high_points);
    Json dips = Json::array();
    for (const Dip& dip : hose.profile.dips)
        dips.push_back({{"along_mm", dip.along_mm},
                        {"z_mm", dip.z_mm},
                        {"depth_mm", dip.depth_mm},
                        {"held_ml", dip.held_ml}});
    entry["dips"] = std::move(dips);
    return entry;
}

/// Nothing where the level itself is not sound.
Json soundJson(const std::optional<Proof>& proof)
{
    if (!proof || !proof->sound)
        return nullptr;
    return {{"low", proof->sound->low_percent}, {"high", proof->sound->high_percent}};
}

Json fileJson(const Checked& file)
{
    Json entry;
    entry["file"] = file.file.toStdString();
    if (!file.problems.isEmpty()) {
        entry["error"] = file.problems.join(QLatin1Char('\n')).toStdString();
        return entry;
    }
    Json findings = Json::array();
    for (const Finding& finding : file.analysis.findings)
        findings.push_back(findingJson(finding));
    entry["findings"] = std::move(findings);
    Json not_judged = Json::array();
    for (const NotJudged& one : file.analysis.not_judged)
        not_judged.push_back({{"rule", one.rule}, {"part", partName(one.part)}, {"missing", one.missing}});
    entry["not_judged"] = std::move(not_judged);
    Json hoses = Json::array();
    for (const ResolvedHose& hose : file.analysis.layout.hoses)
        hoses.push_back(hoseJson(hose, file.analysis.proof));
    entry["hoses"] = std::move(hoses);
    entry["sound_grade_percent"] = soundJson(file.analysis.proof);
    Json margins = Json::array();
    for (const Margin& margin : file.analysis.margins)
        margins.push_back({{"rule", margin.rule},
                           {"part", partName(margin.part)},
                           {"measured", number(margin.measured)},
                           {"limit", number(margin.limit)},
                           {"left", number(margin.left)},
                           {"unit", nameOf(margin.unit)}});
    entry["margins"] = std::move(margins);
    entry["air"] = airJson(file.analysis.proof->filling);
    entry["fill"] = fillJson(file.analysis.proof->filling);
    entry["unconfirmed"] = unconfirmedJson(file.analysis.unconfirmed);
    Json off = Json::array();
    for (const LimitChange& change : file.sketch.limits)
        if (change.off)
            off.push_back({{"rule", change.rule}, {"reason", change.reason}});
    entry["switched_off"] = std::move(off);
    return entry;
}

} // namespace

std::string jsonOf(const std::vector<Checked>& files)
{
    Json all = Json::array();
    for (const Checked& file : files)
        all.push_back(fileJson(file));
    // File names need not be UTF-8; what cannot be written is replaced, never thrown.
    return all.dump(2, ' ', false, Json::error_handler_t::replace);
}

} // namespace siphonwright::headless
