#pragma once

#include "app/paper/pages.h"
#include "app/sheet/inset.h"

#include <vector>

/// What is set into the room that the drawing leaves, so that a reader who has only page 1 can cut the hoses,
/// hang the heater and sign.
namespace siphonwright::paper {

using sheet::Inset;

/// In order of need: revisions and sign-off, run profile, hoses laid flat, ports and threads, how the heater
/// hangs, the tag. They keep what they need of the sketch.
std::vector<Inset> insetsOf(const Sketch& sketch, const Layout& layout);

// One kind each.
Inset insetToSign(const Job& job);
Inset insetOfRuns(const Job& job, const Layout& layout);
/// How to read them first, then each hose.
std::vector<Inset> insetsOfHoses(const Job& job, const Layout& layout);
Inset insetOfEnds(const Job& job);
Inset insetOfHeaters(const Job& job, const Layout& layout);
Inset insetTag(const Job& job);

} // namespace siphonwright::paper
