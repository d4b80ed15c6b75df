#pragma once

#include "app/drawing/contents.h"
#include "app/drawing/elevation.h"

#include "core/quantity/quantity.h"

#include <optional>
#include <vector>

/// One moment of a demonstration, and the one function that paints it: screen, files and command line alike.
namespace siphonwright::demonstration {

enum class PhaseKind {
    fill,
    engine_runs,
    topped_up, ///< stopped, cooled and topped up
    energised
};

struct Moment {
    PhaseKind phase = PhaseKind::fill;
    drawing::Contents contents;
    Message words;             ///< what is happening now, in plain words
    std::vector<Message> more; ///< said after them
    bool event = false;        ///< something happens here that was not so the moment before
    double clock_s = 0; ///< since the phase began: of the process when energised, of the show otherwise
    double poured_ml = 0;
};

/// The elevation with coolant and air where they are. The painter's transformation is that of
/// drawing::paintElevation.
void paintMoment(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Moment& moment,
                 const drawing::Style& style);

/// "Filling", "Engine running", ...
QString titleOf(PhaseKind phase);
/// The moment's words in the sketch's units.
QString wordsOf(const Moment& moment, UnitSystem units);
QString wordsOf(const std::vector<Message>& sentences, UnitSystem units);
/// "1 h 20 min"; empty where the clock means nothing.
QString clockOf(const Moment& moment);

} // namespace siphonwright::demonstration
