#include "app/headless/air_json.h"
#include "app/headless/json.h"

#include <utility>

namespace siphonwright::headless {

namespace {

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
    entry["loops"] = loopsJson(file);
    entry["warm_up"] = warmUpJson(file);
    entry["by_bore"] = byBoreJson(file);
    entry["assumptions_changed"] = assumptionsChangedJson(file.sketch);
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
