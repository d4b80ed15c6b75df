#include "app/headless/json.h"

#include "core/sketch/words.h"

namespace siphonwright::headless {

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

} // namespace siphonwright::headless
