#pragma once

#include "core/layout/layout.h"
#include "core/physics/loop_resistance.h"
#include "core/running/circuit.h"

#include <string>
#include <vector>

namespace siphonwright {

/// Makes a hose's path into elements and names the parts that lose pressure along it.
class PathElements {
public:
    /// `parts` is added to; a loss's part is its index there.
    PathElements(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                 std::vector<CircuitPart>& parts);

    /// The path from opening to opening, in the hose's direction of flow.
    std::vector<LoopElement> of(const ResolvedHose& hose);

private:
    void layStretches();
    void addBends();
    void addInlineParts();
    void addOpening(std::size_t end);
    void addHoseEnd(std::size_t end);
    void add(double along_mm, Loss loss, Assumed factor, int part);
    int named(PartRef part, std::string name);
    LoopElement& at(double along_mm);

    const Sketch& sketch_;
    const Layout& layout_;
    const Assumptions& assumed_;
    std::vector<CircuitPart>& parts_;
    const Route* route_ = nullptr;
    std::vector<LoopElement> elements_;
    std::vector<double> ends_mm_; ///< along the path, of each element
};

} // namespace siphonwright
