// A sketch from a file: refused with a place and two halves of a sentence, or read to a sketch that is within
// its limits, and that written reads back as the same value and is written alike.

#include "tests/fuzz/require.h"

#include "core/sketch/file.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

using namespace siphonwright;
using fuzz::require;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto read = readSketch(text);
    if (const auto* problems = std::get_if<Problems>(&read)) {
        require(!problems->empty(), "a sketch or a problem");
        for (const Problem& problem : *problems)
            require(!problem.found.empty() && !problem.allowed.empty() && problem.text().size() < 40'000,
                    "what stands there, and what may");
        return 0;
    }
    const auto& sketch = std::get<Sketch>(read);
    require(problemsIn(sketch).empty(), "what was read is within its limits");
    const auto written = writeSketch(sketch);
    const auto* kept = std::get_if<std::string>(&written);
    require(kept != nullptr, "what was read can be written");
    const auto again = readSketch(*kept);
    const auto* same = std::get_if<Sketch>(&again);
    require(same != nullptr && *same == sketch, "a written sketch reads back");
    const auto rewritten = writeSketch(*same);
    require(rewritten == written, "and is written alike");
    return 0;
}
