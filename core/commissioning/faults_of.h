#pragma once

#include "core/commissioning/fault_book.h"
#include "core/commissioning/simulated.h"
#include "core/running/filling.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

namespace siphonwright {

/// One way in which a fault may show, with its share of the fault.
struct FaultCase {
    FaultChange change;
    double weight = 1;
};

/// A fault that this drawing can have.
struct Fault {
    FaultKind kind = FaultKind::none;
    std::string id;         ///< kind's id, and where: "air:hose-2", "hose-kinked:hose-1"
    Message title;          ///< "Air in Return hose, 310 mm up"
    PartRef part;           ///< nothing: the whole job
    std::optional<Vec3> at; ///< where it is, in drawing axes
    double prior = 1;       ///< weight
    std::vector<FaultCase> cases;
};

/// All faults that a heater's loop can have as it is drawn, "nothing wrong" first: air only at crests that
/// are drawn (and, where a hose has none, where it would sag), valves only where there are some, a phase only
/// of three. Where the fill leaves air at a crest, that is likelier. Empty where the loop is not closed.
///
/// What each is made of, by our own estimate: a half-closed valve K = 30 + 1500/Re (from memory, a ball at
/// half its turn); a kink leaves 45 or 25 % of the bore over 10 mm, a collapsed hose 35 % over 150 mm, a
/// blocked port 30 or 15 %; a spring check valve takes 150 mm of head; an engine thermostat stuck open lets
/// the radiator lose 1.5 times what the engine does; a scaled element mixes half as well and its cut-out
/// comes 25 K early. One phase missing halves the power of three elements in delta as in star, since two of
/// them, or two thirds of their voltage squared, are left (elementary).
std::vector<Fault> faultsOf(const Sketch& sketch, const Layout& layout, const Filling& filling,
                            const Id& heater);

} // namespace siphonwright
