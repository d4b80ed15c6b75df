#include "core/sketch/survey_letters.h"

#include <algorithm>

namespace siphonwright {
namespace {

constexpr auto place = [](char letter, std::string_view what, std::string_view how, bool across) {
    return SurveyLetter{letter, what, how, Unit::mm, true, true, across};
};

/// The member that holds a letter's place; null for what has none or lies in a port.
template <class S>
auto* placeOf(S& survey, char letter)
{
    switch (letter) {
    case 'A':
        return &survey.jacket_lowest;
    case 'B':
        return &survey.jacket_highest;
    case 'E':
        return &survey.thermostat;
    case 'F':
        return &survey.tank_cap;
    case 'G':
        return &survey.mark_cold_min;
    case 'H':
        return &survey.mark_cold_full;
    case 'J':
        return &survey.mark_hot;
    default:
        return static_cast<decltype(&survey.thermostat)>(nullptr);
    }
}

template <class S>
auto* numberOf(S& survey, char letter)
{
    switch (letter) {
    case 'K':
        return &survey.block_length_mm;
    case 'L':
        return &survey.rail_over_floor_mm;
    case 'M':
        return &survey.ride_drop_mm;
    case 'N':
        return &survey.ports_apart_mm;
    case 'P':
        return &survey.floor_slope_deg;
    case 'R':
        return &survey.rail_slope_deg;
    case 'S':
        return &survey.engine_slope_deg;
    default:
        return static_cast<decltype(&survey.block_length_mm)>(nullptr);
    }
}

std::optional<SurveyPort>* portOf(Survey& survey, char letter)
{
    return letter == 'C' ? &survey.supply_port : letter == 'D' ? &survey.return_port : nullptr;
}

} // namespace

const std::vector<SurveyLetter>& surveyLetters()
{
    static const std::vector<SurveyLetter> all = {
        place('A', "Jacket, lowest point", "underside of the water jacket", false),
        place('B', "Jacket, highest point", "top of the head's jacket", false),
        place('C', "Supply port", "middle of the opening", true),
        place('D', "Return port", "middle of the opening", true),
        place('E', "Thermostat housing", "middle of the housing", true),
        place('F', "Tank cap", "sealing face of the filler or surge tank", true),
        {'G', "Tank mark, cold minimum", "beside the cap", Unit::mm, true, false, false},
        {'H', "Tank mark, cold full", "beside the cap", Unit::mm, true, false, false},
        {'J', "Tank mark, hot", "beside the cap", Unit::mm, true, false, false},
        {'K', "Block, front face to rear face", "along the block", Unit::mm},
        {'L', "Frame rail over the floor", "upper edge, at the block's front face", Unit::mm},
        {'M', "Frame sinks further by", "to lowest ride height", Unit::mm},
        {'N', "Supply port to return port", "straight, tape from opening to opening", Unit::mm},
        {'P', "Slope of the floor", "inclinometer; + is higher at the engine's front", Unit::degree},
        {'R', "Slope of the frame rail", "likewise", Unit::degree},
        {'S', "Slope of the engine", "on a machined face along the crankshaft", Unit::degree},
    };
    return all;
}

const SurveyLetter* surveyLetter(char letter)
{
    const std::vector<SurveyLetter>& all = surveyLetters();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [letter](const SurveyLetter& one) { return one.letter == letter; });
    return found == all.end() ? nullptr : &*found;
}

std::optional<SurveyPoint> surveyPoint(const Survey& survey, char letter)
{
    if (letter == 'C')
        return survey.supply_port ? survey.supply_port->at : std::nullopt;
    if (letter == 'D')
        return survey.return_port ? survey.return_port->at : std::nullopt;
    const auto* held = placeOf(survey, letter);
    return held ? *held : std::nullopt;
}

void setSurveyPoint(Survey& survey, char letter, const SurveyPoint& point)
{
    const bool measured = point.height_mm || point.along_mm || point.across_mm;
    const std::optional<SurveyPoint> value = measured ? std::optional(point) : std::nullopt;
    if (std::optional<SurveyPort>* port = portOf(survey, letter)) {
        if (!*port && !measured)
            return;
        if (!*port)
            port->emplace();
        (*port)->at = value;
        if (**port == SurveyPort{})
            port->reset();
    } else if (auto* held = placeOf(survey, letter)) {
        *held = value;
    }
}

std::optional<double> surveyNumber(const Survey& survey, char letter)
{
    const auto* held = numberOf(survey, letter);
    return held ? *held : std::nullopt;
}

void setSurveyNumber(Survey& survey, char letter, std::optional<double> value)
{
    if (auto* held = numberOf(survey, letter))
        *held = value;
}

} // namespace siphonwright
