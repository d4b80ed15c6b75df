#pragma once

#include "app/panels/field.h"

/// How the survey is read and changed: it comes with the first entry and goes with the last.
namespace siphonwright::survey {

panels::Access<Survey> surveyAccess();
panels::Access<SurveyPort> surveyPortAccess(std::optional<SurveyPort> Survey::*port);

/// All but the lettered places: who and when, ports, thermostat, voltage, coolant, notes.
panels::Form surveyForm();

} // namespace siphonwright::survey
