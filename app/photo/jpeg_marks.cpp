#include "app/photo/jpeg_marks.h"

namespace siphonwright::photo {
namespace {

constexpr int mark = 0xFF;
constexpr int progressive_frame = 0xC2;
constexpr int start_of_scan = 0xDA;
constexpr int first_without_length = 0xD0; // restarts, start and end of image
constexpr int last_without_length = 0xD9;

int byteAt(const QByteArray& file, qsizetype at)
{
    return static_cast<unsigned char>(file[at]);
}

} // namespace

std::optional<JpegMarks> jpegMarks(const QByteArray& file)
{
    JpegMarks marks;
    qsizetype at = 2; // after the start of image
    while (at + 3 < file.size()) {
        if (byteAt(file, at) != mark)
            return std::nullopt;
        const int kind = byteAt(file, at + 1);
        if (kind == mark) { // filling between segments
            ++at;
            continue;
        }
        if (kind == start_of_scan) {
            marks.ends = file.indexOf("\xFF\xD9", at) >= 0;
            return marks;
        }
        marks.progressive = marks.progressive || kind == progressive_frame;
        const bool plain = kind >= first_without_length && kind <= last_without_length;
        at += plain ? 2 : 2 + 256 * byteAt(file, at + 2) + byteAt(file, at + 3);
    }
    return std::nullopt;
}

} // namespace siphonwright::photo
