#pragma once

#include "tests/sketch/edited_sketch.h"
#include "tests/sound_loop.h"

#include "core/sketch/file.h"

#include <fstream>
#include <sstream>
#include <string>
#include <variant>
#include <vector>

namespace siphonwright::test {

/// Random valid sketches by number: near the sound loop or one of the samples, or any that the format allows.
class RandomJobs {
public:
    explicit RandomJobs(const std::string& samples)
    {
        bases_.push_back(soundLoop());
        for (const char* name :
             {"sound-bus", "generator-two-heaters", "vee-crossing", "clear-tube-rig", "supply-hump"}) {
            std::ifstream file(samples + "/" + name + ".siphon", std::ios::binary);
            std::ostringstream text;
            text << file.rdbuf();
            auto read = readSketch(text.str());
            if (auto* sketch = std::get_if<Sketch>(&read))
                bases_.push_back(std::move(*sketch));
        }
    }

    std::size_t bases() const { return bases_.size(); }

    Sketch number(unsigned number) const
    {
        RandomChoices choices(number);
        return sketchNear(bases_[number % bases_.size()], choices);
    }

private:
    std::vector<Sketch> bases_;
};

} // namespace siphonwright::test
