#include "core/sketch/format/json_text.h"

#include <array>
#include <charconv>
#include <cmath>

namespace siphonwright {

std::string jsonNumber(double value)
{
    // Negative zero needs its point: without it, readers take it for the integer 0.
    if (value == 0)
        return std::signbit(value) ? "-0.0" : "0";
    const double size = std::abs(value);
    const auto format =
        size >= 1e-6 && size < 1e15 ? std::chars_format::fixed : std::chars_format::scientific;
    std::array<char, 64> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format);
    return error == std::errc() ? std::string(buffer.data(), end) : std::string("null");
}

std::string jsonString(std::string_view text)
{
    constexpr std::string_view hex = "0123456789abcdef";
    std::string out = "\"";
    out.reserve(text.size() + 2);
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            out += '\\';
            out += c;
        } else if (c == '\n') {
            out += "\\n";
        } else if (c == '\t') {
            out += "\\t";
        } else if (byte < 0x20 || byte == 0x7F) {
            out += "\\u00";
            out += hex[byte >> 4U];
            out += hex[byte & 0xFU];
        } else {
            out += c;
        }
    }
    return out + '"';
}

void JsonText::newLine()
{
    text_ += '\n';
    text_.append(2 * levels_.size(), ' ');
}

void JsonText::separate()
{
    if (after_key_ || levels_.empty()) {
        after_key_ = false;
        return;
    }
    Level& level = levels_.back();
    if (!level.empty)
        text_ += level.shape == Shape::line ? ", " : ",";
    level.empty = false;
    if (level.shape == Shape::block)
        newLine();
}

void JsonText::key(std::string_view name)
{
    separate();
    text_ += jsonString(name);
    text_ += ": ";
    after_key_ = true;
}

void JsonText::raw(std::string_view text)
{
    separate();
    text_ += text;
}

void JsonText::begin(char bracket, Shape shape)
{
    separate();
    text_ += bracket;
    const bool inside_line = !levels_.empty() && levels_.back().shape == Shape::line;
    levels_.push_back(Level{inside_line ? Shape::line : shape, true});
}

void JsonText::end(char bracket)
{
    const Level level = levels_.back();
    levels_.pop_back();
    if (level.shape == Shape::block && !level.empty)
        newLine();
    text_ += bracket;
}

std::string JsonText::take()
{
    text_ += '\n';
    return std::move(text_);
}

} // namespace siphonwright
