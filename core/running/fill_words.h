#pragma once

#include "core/quantity/quantity.h"
#include "core/running/filling.h"

#include <optional>
#include <string>
#include <vector>

/// What happens while the drawn loops are filled, and what air stays, in plain sentences: for screen, command
/// line and demonstration alike.
namespace siphonwright {

/// A sentence for the moment at which it becomes true.
struct FillLine {
    double poured_ml = 0;  ///< since the start
    double level_mm = 0;   ///< of the jacket, along plumb
    std::size_t order = 0; ///< of its event
    bool begins = false;   ///< it is seen to begin; the others are of what ends or opens again
    Message text;
};

/// How it begins: "The engine is full, the valves are shut and the new hoses empty."
Message beginningOf(const FillPlanOf& plan);

/// "Coolant spills over the hump in Supply hose, 412 mm up, toward Tank heater; the air behind it is sealed."
/// Heights are along plumb from the drawing's zero. `plan` is what the event's fill was asked for, `network`
/// what it was cut into, `then` a state soon after it; without one nothing is said of what is sealed.
Message textOf(const FillEvent& event, const FillNetwork& network, const FillPlanOf& plan,
               const FillFrame* then = nullptr);

/// All of a fill, in order, but for what passes at a change of bore; what would be said twice at one moment
/// (a bleed on a crest) is said once. Frames, where the fill kept some, tell what is sealed.
std::vector<FillLine> linesOf(const FillResult& filled, const FillPlanOf& plan);

/// How filling ended: "Filled to 640 mm: 2.1 l in hoses and chambers."
Message endOf(const Filling& filling);

/// "71 ml of air stay in Supply hose, 310 mm up: they close the bore and take 125 mm of head."
Message textOf(const PocketFound& pocket, const Sketch& sketch, const Plumb& plumb);

/// Whether running the engine takes a pocket away, with the velocities.
Message clearingOf(const PocketFound& pocket);

/// What a pocket lies in: a hose or a heater's chamber, by name.
std::string placeOf(const PocketFound& pocket, const Sketch& sketch);

/// What is poured back once the engine has run and cooled down again.
Message topUpOf(const Filling& filling);

/// Where the level falls to at the coldest ambient; nothing where that is not entered.
std::optional<Message> coldestOf(const Filling& filling, const Sketch& sketch);

/// That coolant does not cover a heater's element.
Message baredOf(const LoopAir& air, const Sketch& sketch);

/// Flow through a heater's hoses with the engine running, and its direction.
Message runningOf(const LoopAir& air, const Sketch& sketch);

} // namespace siphonwright
