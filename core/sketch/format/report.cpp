#include "core/sketch/format/report.h"

#include "core/sketch/format/json_text.h"
#include "core/sketch/format/utf8.h"

namespace siphonwright {

namespace {

constexpr std::size_t longest_shown = 40; // bytes of a value in a message
constexpr std::size_t longest_step = 200; // bytes of a key in a path

/// Cut at a whole character, so that the message stays UTF-8.
std::string_view beginning(std::string_view text, std::size_t bytes)
{
    text = text.substr(0, bytes);
    return text.substr(0, firstNotUtf8(text));
}

} // namespace

void Report::addAt(std::string path, std::string found, std::string allowed)
{
    if (problems_.size() < most_problems)
        problems_.push_back(Problem{std::move(path), std::move(found), std::move(allowed)});
}

Report::Step::Step(Report& report, std::string_view key)
    : report_(report), length_before_(report.path_.size())
{
    report.path_ += pointerStep(key);
}

Report::Step::Step(Report& report, std::size_t index) : report_(report), length_before_(report.path_.size())
{
    report.path_ += pointerStep(index);
}

Report::Step::~Step()
{
    report_.path_.resize(length_before_);
}

std::string pointerStep(std::string_view key)
{
    std::string step = "/";
    const bool whole = key.size() <= longest_step;
    for (const char c : whole ? key : beginning(key, longest_step)) {
        if (c == '~')
            step += "~0";
        else if (c == '/')
            step += "~1";
        else
            step += c;
    }
    return whole ? step : step + "…";
}

std::string pointerStep(std::size_t index)
{
    return "/" + jsonNumber(static_cast<double>(index));
}

std::string inQuotes(std::string_view text)
{
    if (text.size() <= longest_shown)
        return jsonString(text);
    std::string shown = jsonString(beginning(text, longest_shown));
    shown.pop_back();
    return shown + "…\"";
}

} // namespace siphonwright
