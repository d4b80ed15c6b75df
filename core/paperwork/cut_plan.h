#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

/// Which cuts come off which roll, so that least hose is bought: the one-dimensional cutting stock problem
/// with rolls of several lengths, as many of each as are wanted. Whole hundredths of a millimetre, so that
/// sums are exact.
///
/// Up to `most_cuts_exact` cuts the least length is found exactly, by dynamic programming over sets of cuts
/// (elementary; 3^(n-1) steps). Above, first fit decreasing (Johnson, 1973, from memory) is tried with each
/// length of roll and each roll then exchanged for the shortest that holds its cuts; where that meets the
/// lower bound it is the least all the same.
namespace siphonwright {

constexpr std::size_t most_cuts_exact = 14;
constexpr std::size_t most_cuts = 20'000;
constexpr std::int64_t hundredths_per_mm = 100;

struct CutRoll {
    std::int64_t length = 0;       ///< of the roll, hundredths of a mm
    std::vector<std::size_t> cuts; ///< which of the asked ones, longest first
    std::int64_t left = 0;         ///< what is left over
};

enum class CutStatus {
    least,      ///< no other way needs less hose
    near_least, ///< a good way; the least lies between the bound and this
    nothing_to_cut,
    no_rolls,     ///< no length to buy was entered
    cut_too_long, ///< longer than the longest roll
    bad_input     ///< a length not over 0, or too many
};

struct CutPlan {
    CutStatus status = CutStatus::nothing_to_cut;
    std::string message;             ///< why there is no plan; empty where there is one
    std::vector<CutRoll> rolls;      ///< longest first
    std::int64_t bought = 0;         ///< length of all rolls
    std::int64_t cut = 0;            ///< length of all cuts
    std::int64_t least_possible = 0; ///< no plan buys less
    std::size_t too_long = 0;        ///< with cut_too_long: which cut

    bool planned() const { return status == CutStatus::least || status == CutStatus::near_least; }
    std::int64_t waste() const { return bought - cut; }
};

/// \param cuts, rolls lengths in hundredths of a mm, each over 0 and at most 1e9 (10 km)
CutPlan planCuts(const std::vector<std::int64_t>& cuts, const std::vector<std::int64_t>& rolls);

/// A length in mm as hundredths, rounded up so that a cut is never too short. \return 0 for what is not a
/// length over 0 of at most 10 km
std::int64_t hundredthsOf(double length_mm);

} // namespace siphonwright
