#include "app/headless/json.h"

#include "core/sketch/words.h"

#include <cmath>

namespace siphonwright::headless {

Json number(const std::optional<double>& value)
{
    return value && std::isfinite(*value) ? Json(*value) : Json(nullptr);
}

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

namespace {

Json gradeJson(const std::optional<Grade>& grade)
{
    if (!grade)
        return nullptr;
    return {{"along_percent", grade->along_percent}, {"across_percent", grade->across_percent}};
}

} // namespace

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

} // namespace siphonwright::headless
