#pragma once

#include "core/sketch/file.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace siphonwright {

constexpr std::size_t most_problems = 50;

/// Collects problems, each at the place in the file that is being looked at.
class Report {
public:
    void add(std::string found, std::string allowed) { addAt(path_, std::move(found), std::move(allowed)); }
    void addAt(std::string path, std::string found, std::string allowed);
    bool empty() const { return problems_.empty(); }
    Problems take() { return std::move(problems_); }

    /// While it lives, the place is this much deeper.
    class Step {
    public:
        Step(Report& report, std::string_view key);
        Step(Report& report, std::size_t index);
        ~Step();
        Step(const Step&) = delete;
        Step& operator=(const Step&) = delete;

    private:
        Report& report_;
        std::size_t length_before_;
    };

private:
    std::string path_;
    Problems problems_;
};

/// "/" and the key as JSON pointers write it (RFC 6901: ~ is ~0, / is ~1).
std::string pointerStep(std::string_view key);
std::string pointerStep(std::size_t index);

/// The beginning of a text in quotes, short enough for a message.
std::string inQuotes(std::string_view text);

} // namespace siphonwright
