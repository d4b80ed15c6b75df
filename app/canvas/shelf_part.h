#pragma once

#include "app/canvas/elevation_view.h"

#include <QMimeData>

#include <optional>
#include <string>

namespace siphonwright {

/// A part on its way from the shelf to the drawing.
struct ShelfPart {
    enum class What { engine, heater, port, tank, valve, bleed, clip, area };
    What what = What::heater;
    std::string template_id; ///< of an engine or heater
};

/// Null where the data is something else.
std::optional<ShelfPart> shelfPartFrom(const QMimeData* data);
/// For a drag; the receiver of the drag owns it.
QMimeData* mimeDataOf(const ShelfPart& part);

/// The tool that puts it down; none for an engine and an area, which are put down as they are.
std::optional<ToolKind> toolFor(const ShelfPart& part);

} // namespace siphonwright
