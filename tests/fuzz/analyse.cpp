// The whole of analyse, by sketches that the bytes choose: a sensible one with members changed, or any that
// the format allows. It is within its limits, every figure is a number, another analysis to lend routes
// changes nothing, and it can be written and read.

#include "tests/analysis/every_number.h"
#include "tests/fuzz/require.h"
#include "tests/sketch/edited_sketch.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/sketch/file.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <variant>

using namespace siphonwright;
using fuzz::require;

namespace {

/// Choices as the bytes have them; the first of each where there are no more.
class ByteChoices {
public:
    ByteChoices(const std::uint8_t* data, std::size_t size) : data_(data), left_(size) {}

    std::size_t upTo(std::size_t most)
    {
        const std::size_t drawn = most < 256 ? next() : next() * 256 + next();
        return drawn % (most + 1);
    }
    std::int64_t whole(std::int64_t least, std::int64_t most)
    {
        return static_cast<std::int64_t>(std::lround(between(double(least), double(most))));
    }
    double between(double least, double most)
    {
        const std::size_t high = next();
        return least + (most - least) * (double(high * 256 + next()) / 65535);
    }

private:
    std::size_t next()
    {
        if (left_ == 0)
            return 0;
        --left_;
        return *data_++;
    }
    const std::uint8_t* data_;
    std::size_t left_;
};

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const Sketch base = test::soundLoop();
    static const Analysis of_base = analyse(base);
    ByteChoices choices(data, size);
    Grade grade;
    if (choices.upTo(3) == 3)
        grade = {choices.between(-30, 30), choices.between(-30, 30)};
    const Sketch sketch = test::sketchNear(base, choices);
    const Problems problems = problemsIn(sketch);
    require(problems.empty(), "the sketch is valid", problems.empty() ? "" : problems.front().path);
    const test::Figures figures(analyse(sketch, nullptr, grade));
    require(figures.noNumberAt().empty(), "every figure is a number", figures.noNumberAt());
    const test::Figures again(analyse(sketch, &of_base, grade));
    require(figures.digest() == again.digest(), "an analysis before changes nothing");
    return 0;
}
