#pragma once

#include "core/proposing/propose.h"

#include <optional>
#include <stop_token>

/// Whether a whole layout breaks a rule: on the level, filled and warm, and over the grades.
namespace siphonwright {

/// The worst finding of stop or caution that a layout of this heater could mend; nothing where it breaks no
/// rule. What is wrong with another heater and its hoses stays with them.
std::optional<Finding> breaksLive(const Analysis& analysis, const Sketch& sketch, const Id& heater);

/// The rest of the proof, cheapest first: filled, warmed up, over the envelope; then the margins. The same
/// functions as prove(), without its table by bore and bands, which decide nothing here.
struct Verified {
    std::optional<Finding> broken; ///< nothing: it holds
    std::vector<Finding> beside;   ///< stops and cautions beyond layout, or of another heater
    std::optional<SoundGrades> sound;
    std::vector<SagMargin> sag;
    std::vector<Margin> margins;       ///< on the level, and filled and warm
    std::vector<NotJudged> not_judged; ///< on the level
    bool sound_on_grades = false;      ///< nothing is found on a grade that is not found on the level
    std::size_t advices = 0;
};
Verified verify(const Sketch& sketch, const Analysis& level, const Id& heater, const std::stop_token& stop);

} // namespace siphonwright
