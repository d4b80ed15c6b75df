#pragma once

#include <QByteArray>

#include <optional>

namespace siphonwright::photo {

/// What the markers of a JPEG file tell before anything is decoded (ITU-T T.81, annex B).
struct JpegMarks {
    bool progressive = false; ///< decoding one keeps all of its coefficients in memory
    bool ends = false;        ///< there is an end of image after the picture's data begin
};

/// Walk the segments up to the picture's data. Nothing: they do not hang together.
std::optional<JpegMarks> jpegMarks(const QByteArray& file);

} // namespace siphonwright::photo
