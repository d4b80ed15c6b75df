#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/sketch.h"

#include <string_view>
#include <vector>

/// The letters of a survey: what each stands for on the form, in the panel and in sentences. I, O and Q are
/// left out: on paper they look like figures.
namespace siphonwright {

struct SurveyLetter {
    char letter;
    std::string_view what; ///< "Jacket, lowest point"
    std::string_view how;  ///< a hint for who measures
    Unit unit = Unit::mm;
    /// Which columns are asked for. A letter with neither is one length or angle.
    bool height = false;
    bool along = false;
    bool across = false;

    bool isPoint() const { return height; }
};
const std::vector<SurveyLetter>& surveyLetters();
/// Null for what is no letter.
const SurveyLetter* surveyLetter(char letter);

/// The place of a letter; nothing where it was not measured or is none.
std::optional<SurveyPoint> surveyPoint(const Survey& survey, char letter);
/// Puts one in; nothing measured in it takes it out.
void setSurveyPoint(Survey& survey, char letter, const SurveyPoint& point);

/// A letter's one length (mm) or slope (degrees).
std::optional<double> surveyNumber(const Survey& survey, char letter);
void setSurveyNumber(Survey& survey, char letter, std::optional<double> value);

} // namespace siphonwright
