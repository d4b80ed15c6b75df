#pragma once

#include "app/sheet/plan.h"
#include "app/sheet/words.h"

/// The end view beside the elevation, where depth matters.
namespace siphonwright::sheet {

/// The end seen when the end view stands at the elevation's right (ISO 5456-2): the left end in first-angle
/// projection, the right end in third-angle projection.
Projection endOf(const Options& options);

/// Do ports or hoses lie farther apart across the engine than the thickest hose is thick? Then the side
/// elevation alone does not tell where they run.
bool depthMatters(const Sketch& sketch, const Analysis& analysis);

/// Beside the elevation's own caption, which ends at `taken_to_mm`.
void paintEndCaption(const Page& page, const Plan& plan, double taken_to_mm);

/// The symbol of ISO 5456-2 in a cell of the title block: a frustum and its end, in the places that the
/// projection gives them.
void paintProjectionSymbol(const Page& page, const QRectF& cell);

/// Says that the end view was left out, and why.
Section viewsSection(bool end_left_out);

} // namespace siphonwright::sheet
