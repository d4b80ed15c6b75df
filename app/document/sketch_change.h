#pragma once

#include "core/sketch/sketch.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace siphonwright {

/// What an edit changed and nothing else, so that a long history takes little memory: the members of a sketch
/// that differ, and of a list that kept its length the elements that differ.
class SketchChange {
public:
    SketchChange(const Sketch& before, const Sketch& after);

    /// Make the sketch after the edit of the one before it.
    void redo(Sketch& sketch) const;
    /// Make the sketch before the edit of the one after it.
    void undo(Sketch& sketch) const;
    bool isNothing() const { return parts_.empty(); }
    /// Memory that it takes. What two changes in a row share is counted in both.
    std::size_t bytes() const { return bytes_; }

    struct Part {
        Part() = default;
        virtual ~Part() = default;
        Part(const Part&) = delete;
        Part& operator=(const Part&) = delete;
        virtual void put(Sketch& sketch, bool after) const = 0;
        virtual std::size_t bytes() const = 0;
    };

private:
    std::vector<std::unique_ptr<Part>> parts_;
    std::size_t bytes_ = 0;
};

} // namespace siphonwright
