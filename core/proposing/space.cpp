#include "core/proposing/propose.h"

#include <algorithm>

namespace siphonwright {
namespace {

constexpr double past_ends_mm = 200; ///< of the jacket, along the engine
constexpr double beside_mm = 450;    ///< out from the jacket's side: to the frame and past it
constexpr double under_mm = 800;     ///< under the jacket where the ground is not entered

HangingSpace round(Vec3 at)
{
    const Vec3 off{300, 200, 200};
    return {at - off, at + off};
}

} // namespace

HangingSpace spaceUnder(const Sketch& sketch, const Id& heater)
{
    const Heater* drawn = sketch.heater(heater);
    const Vec3 at = drawn ? drawn->position : Vec3{};
    if (!sketch.engine || sketch.engine->jacket.empty())
        return round(at);
    const Engine& engine = *sketch.engine;
    const auto [left, right] = std::minmax_element(engine.jacket.begin(), engine.jacket.end(),
                                                   [](Vec2 a, Vec2 b) { return a.x < b.x; });
    const auto low = std::min_element(engine.jacket.begin(), engine.jacket.end(),
                                      [](Vec2 a, Vec2 b) { return a.z < b.z; });
    const double near_mm = std::min(engine.jacket_y_from_mm, engine.jacket_y_to_mm);
    const double far_mm = std::max(engine.jacket_y_from_mm, engine.jacket_y_to_mm);
    HangingSpace out;
    out.least = {left->x - past_ends_mm, near_mm - beside_mm,
                 std::min(sketch.ground_z_mm.value_or(low->z - under_mm), low->z)};
    out.most = {right->x + past_ends_mm, far_mm + beside_mm, low->z};
    // A heater that is drawn beside the engine stays on its side.
    if (at.y < near_mm)
        out.most.y = near_mm;
    else if (at.y > far_mm)
        out.least.y = far_mm;
    return out;
}

} // namespace siphonwright
