#include "core/running/loop_figures.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <limits>

namespace siphonwright {

double flowByVolume_l_per_min(const Circulation& found)
{
    // Both heads are the same drive, so that their ratio is the density at which mm were counted.
    if (!(found.drive_Pa > 0 && found.drive_mm > 0))
        return 0;
    const double density_kg_per_m3 = found.drive_Pa / (standard_gravity_m_per_s2 * found.drive_mm / 1000);
    return found.flow_kg_per_s / density_kg_per_m3 * 1000 * 60;
}

std::vector<HoseTemperature> temperaturesAlong(const LoopRun& run, HoseRole role)
{
    const Circuit& circuit = run.circuit;
    const bool back = role == HoseRole::return_;
    const std::vector<LoopElement>& stretch = back ? circuit.return_hose : circuit.supply_hose;
    // The order of Circuit::loop().
    std::size_t first = circuit.chamber.size();
    if (!back)
        first += circuit.return_hose.size() + circuit.jacket.size();
    const std::vector<ElementState>& states = run.circulation.elements;
    std::vector<HoseTemperature> out;
    if (stretch.empty() || states.size() < first + stretch.size())
        return out;
    double along_mm = 0;
    out.push_back({along_mm, states[first].start_degC});
    for (std::size_t i = 0; i < stretch.size(); ++i) {
        along_mm += stretch[i].length_m * 1000;
        out.push_back({along_mm, states[first + i].end_degC});
    }
    return out;
}

double temperatureAt(const std::vector<HoseTemperature>& along, double along_mm)
{
    if (along.empty())
        return std::numeric_limits<double>::quiet_NaN();
    const auto after = std::find_if(along.begin(), along.end(),
                                    [&](const HoseTemperature& t) { return t.along_mm >= along_mm; });
    if (after == along.begin())
        return along.front().degC;
    if (after == along.end())
        return along.back().degC;
    const HoseTemperature& before = *(after - 1);
    const double share = (along_mm - before.along_mm) / (after->along_mm - before.along_mm);
    return before.degC + share * (after->degC - before.degC);
}

std::vector<NamedLoss> largestLosses(const LoopRun& run, std::size_t most)
{
    std::vector<NamedLoss> out;
    for (const PartLoss& loss : run.circulation.parts)
        if (loss.part >= 0 && static_cast<std::size_t>(loss.part) < run.circuit.parts.size())
            out.push_back({&run.circuit.parts[static_cast<std::size_t>(loss.part)], loss.share});
    std::stable_sort(out.begin(), out.end(),
                     [](const NamedLoss& a, const NamedLoss& b) { return a.share > b.share; });
    out.resize(std::min(out.size(), most));
    return out;
}

} // namespace siphonwright
