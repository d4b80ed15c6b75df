#pragma once

#include "app/window/actions.h"

namespace siphonwright {

/// What an action waits for.
enum class When {
    always,
    selected,
    several,
    spreadable,
    hose_selected,
    point_fits,
    turnable,
    outlined,
    end_selected,
    can_open,
    engine,
    loop_ends,
    findings,
    finding_selected,
    warm_up,
    keepable,
    kept,
    demonstrating
};

bool possible(When when, const Situation& now);
/// What is missing, in words that follow "cannot be done now:".
QString missingFor(When when);

} // namespace siphonwright
