#pragma once

#include "core/analysis/analysis.h"

#include <functional>
#include <initializer_list>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

/// Ways to cure a finding, before they are tried: what to change, by how much, and the words for it.
namespace siphonwright {

/// A finding on its drawing.
struct CureCase {
    const Sketch& sketch;
    const Analysis& analysis;
    const Finding& finding;
    const std::stop_token& stop;

    const ResolvedHose* hose() const; ///< that the finding lies on, or that is its part
    const Heater* heater() const;     ///< its part, or on its hose
};

/// Changes the sketch by an amount and says so; false where that cannot be done.
using CureChange = std::function<bool(Sketch& sketch, double amount, Message& words)>;

struct Cure {
    PartRef part; ///< what it changes
    CureChange change;
    /// Amounts to try in this order; the first that holds is taken. Empty: mm, the smallest that holds up to
    /// most_mm.
    std::vector<double> amounts;
    double most_mm = 600;
};

void addCure(std::vector<Cure>& cures, PartRef part, CureChange change, std::vector<double> amounts,
             double most_mm = 600);

/// Cures by what they change, the least change first.
void addHoseCures(const CureCase& of,
                  std::vector<Cure>& cures); ///< routes: humps, dips, slope, bends, clearance
void addHeaterCures(const CureCase& of,
                    std::vector<Cure>& cures);                   ///< the heater's place and how it is turned
void addPartCures(const CureCase& of, std::vector<Cure>& cures); ///< valves, clips, bores
void addPortCures(const CureCase& of, std::vector<Cure>& cures); ///< other ports, open ends

/// How closely ways are looked for: over a grid too where the short list gives nothing, or not.
enum class Ways { short_list, grid_too };
/// Lay a hose anew between its ends (hose_search.h); false where no sound way is found.
bool layAnew(Sketch& sketch, const Id& hose, Ways ways, const std::stop_token& stop);
/// Lay both hoses of a heater anew.
bool layBothAnew(Sketch& sketch, const Id& heater, const std::stop_token& stop);

/// Is a rule one of these?
bool isOneOf(const std::string& rule, std::initializer_list<std::string_view> rules);

} // namespace siphonwright
