#include "core/sketch/format/utf8.h"

#include <algorithm>

namespace siphonwright {

namespace {

bool between(unsigned char byte, unsigned char from, unsigned char to)
{
    return byte >= from && byte <= to;
}

/// Length of the well-formed character at the front, after the Unicode Standard, table 3-7; 0 if none.
std::size_t characterLength(std::string_view text)
{
    const auto byte = [text](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : static_cast<unsigned char>(0);
    };
    const auto tail = [&byte](std::size_t i) { return between(byte(i), 0x80, 0xBF); };
    const unsigned char first = byte(0);
    if (first < 0x80)
        return 1;
    if (between(first, 0xC2, 0xDF))
        return tail(1) ? 2 : 0;
    if (between(first, 0xE0, 0xEF)) {
        // Neither an overlong form (E0 80..9F) nor half of a surrogate pair (ED A0..BF).
        const unsigned char from = first == 0xE0 ? 0xA0 : 0x80;
        const unsigned char to = first == 0xED ? 0x9F : 0xBF;
        return between(byte(1), from, to) && tail(2) ? 3 : 0;
    }
    if (between(first, 0xF0, 0xF4)) {
        // Neither overlong (F0 80..8F) nor past U+10FFFF (F4 90..BF).
        const unsigned char from = first == 0xF0 ? 0x90 : 0x80;
        const unsigned char to = first == 0xF4 ? 0x8F : 0xBF;
        return between(byte(1), from, to) && tail(2) && tail(3) ? 4 : 0;
    }
    return 0;
}

} // namespace

std::size_t firstNotUtf8(std::string_view text)
{
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t length = characterLength(text.substr(at));
        if (length == 0)
            break;
        at += length;
    }
    return at;
}

std::size_t characterCount(std::string_view text)
{
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

} // namespace siphonwright
