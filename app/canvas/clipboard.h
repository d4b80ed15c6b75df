#pragma once

#include "core/sketch/file.h"

#include <QStringList>

#include <optional>

class QMimeData;

/// Parts on the clipboard: a sketch of their own in the text of the file format, under a MIME type of its
/// own, so that they can be put down in another window or another run of the program.
namespace siphonwright {

constexpr char parts_mime_type[] = "application/vnd.siphonwright.parts+json";

/// To be given to the clipboard; null with the reasons where it cannot be written.
QMimeData* mimeDataOf(const Sketch& copied, QStringList& problems);

struct ClipboardParts {
    std::optional<Sketch> sketch;
    QStringList problems; ///< empty with no sketch: there is nothing of ours
};
/// Null is an empty clipboard.
ClipboardParts partsFrom(const QMimeData* data);

QStringList sentencesOf(const Problems& problems);

} // namespace siphonwright
