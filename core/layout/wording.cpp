#include "core/layout/wording.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <string_view>

namespace siphonwright {
namespace {

bool contains(std::string_view text, std::string_view lower_case_word)
{
    const auto same = [](char a, char b) {
        return static_cast<char>(std::tolower(static_cast<unsigned char>(a))) == b;
    };
    return std::search(text.begin(), text.end(), lower_case_word.begin(), lower_case_word.end(), same) !=
           text.end();
}

/// What a name says a part is, in the languages of the program, in small letters.
constexpr std::array<std::string_view, 5> hose_words = {"hose", "schlauch", "manguera", "durite", "tuyau"};
constexpr std::array<std::string_view, 5> heater_words = {"heater", "heizger", "heizung", "calentador",
                                                          "chauff"};

/// A name that stands on its own in a sentence: led by `kind` unless it says one of `words` itself.
std::string named(const std::string& name, const Id& id, std::string_view kind,
                  const std::array<std::string_view, 5>& words)
{
    const std::string& own = name.empty() ? id : name;
    const bool says_it = !name.empty() && std::any_of(words.begin(), words.end(), [&](std::string_view word) {
        return contains(name, word);
    });
    return says_it ? own : std::string(kind) + " " + own;
}

} // namespace

std::string nameOfHose(const Hose& hose)
{
    return named(hose.name, hose.id, hose.role == HoseRole::supply ? "Supply hose" : "Return hose",
                 hose_words);
}

std::string nameOfPort(const Port& port)
{
    return port.name.empty() ? "Port " + port.id : port.name;
}

std::string nameOfHeater(const Heater& heater)
{
    return named(heater.name, heater.id, "Heater", heater_words);
}

std::string nameOfArea(const Area& area)
{
    return area.name.empty() ? "Area " + area.id : area.name;
}

double enough(double length_mm)
{
    return std::max(1.0, std::ceil(length_mm - 1e-6));
}

PartRef refOf(const Hose& hose)
{
    return {PartKind::hose, hose.id, 0};
}

PartRef refOf(const Port& port)
{
    return {PartKind::port, port.id, 0};
}

PartRef refOf(const Heater& heater)
{
    return {PartKind::heater, heater.id, 0};
}

} // namespace siphonwright
