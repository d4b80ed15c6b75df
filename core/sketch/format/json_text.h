#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace siphonwright {

/// Shortest JSON number that reads back to the same double; negative zero keeps its sign. Finite only.
std::string jsonNumber(double value);
/// A UTF-8 text as a JSON string, quotes included.
std::string jsonString(std::string_view text);

/// Builds indented JSON text, keys in the order they are given.
class JsonText {
public:
    enum class Shape { block, line }; ///< one item a line, or all in the line where it begins

    void key(std::string_view name);
    void number(double value) { raw(jsonNumber(value)); }
    void boolean(bool value) { raw(value ? "true" : "false"); }
    void string(std::string_view value) { raw(jsonString(value)); }
    void beginObject(Shape shape = Shape::block) { begin('{', shape); }
    void endObject() { end('}'); }
    void beginList(Shape shape = Shape::block) { begin('[', shape); }
    void endList() { end(']'); }

    /// The finished text, ending in a newline.
    std::string take();

private:
    struct Level {
        Shape shape;
        bool empty;
    };
    void raw(std::string_view text);
    void begin(char bracket, Shape shape);
    void end(char bracket);
    void separate();
    void newLine();

    std::string text_;
    std::vector<Level> levels_;
    bool after_key_ = false;
};

} // namespace siphonwright
