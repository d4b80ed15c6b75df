#pragma once

#include "app/canvas/sockets.h"

namespace siphonwright {

/// A hose that is being drawn, from its first click on, in the order of the clicks.
struct HoseDraft {
    HoseRole role = HoseRole::supply;
    std::optional<Socket> first; ///< the port or nozzle it begins on, if any
    std::vector<Vec3> places;    ///< the clicks after it; without a first socket, the open start is the first
    bool started() const { return first || !places.empty(); }
};

/// Add the draft to a sketch, ended on a port or nozzle or, without one, at its last place. It is stored in
/// the direction of flow whichever way it was drawn. Its bends get the radius that the hose allows, or what
/// fits between the points. @return its id; empty where it has no length or both ends are on one opening.
Id addDraft(Sketch& sketch, const HoseDraft& draft, const std::optional<Socket>& last);

} // namespace siphonwright
