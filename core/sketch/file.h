#pragma once

#include "core/sketch/sketch.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Sketches as text: JSON with a format version. Writing then reading gives an equal sketch; numbers survive
/// exactly. Reading never throws and never half-loads.
namespace siphonwright {

constexpr int format_version = 1;
constexpr std::size_t largest_file_bytes = 32u << 20;
/// What judging a sketch takes grows with one count times the other, so that they are bounded over all hoses
/// and over all areas too. Own choice: far over what is drawn, and within seconds to judge.
constexpr std::size_t most_route_points = 10'000;
constexpr std::size_t most_area_corners = 10'000;

/// One thing wrong with a file.
struct Problem {
    std::string path;         ///< JSON pointer to it ("/hoses/0/points/3/radius_mm"), or "line 3, column 7"
    std::string found;        ///< what stands there
    std::string allowed;      ///< what may stand there
    std::string text() const; ///< one sentence out of the three
    friend bool operator==(const Problem&, const Problem&) = default;
};
using Problems = std::vector<Problem>;

/// A sketch, or at least one problem (at most 50 are listed).
std::variant<Sketch, Problems> readSketch(std::string_view text);

/// JSON text, indented, keys in the order of the format, ending in a newline. Every number must be finite:
/// a sketch that could not be read again is reported as problems instead of being written.
std::variant<std::string, Problems> writeSketch(const Sketch& sketch);

/// What a sketch must be over and above its types: ids unique, references that lead somewhere, outlines of
/// three points or more, numbers within range, counts within bounds. Empty: none.
Problems problemsIn(const Sketch& sketch);

/// JSON Schema (draft 2020-12) of the format, made from the same description that reads and writes it.
std::string sketchSchema();

} // namespace siphonwright
