#include "app/survey/survey_access.h"

#include "app/panels/access.h"

namespace siphonwright::survey {

namespace {

struct SurveyText {
    Q_DECLARE_TR_FUNCTIONS(siphonwright::survey::SurveyText)
};

/// What is read where nothing was entered yet.
template <class T>
const T& none()
{
    static const T empty{};
    return empty;
}

void addPort(panels::Form& form, const QString& name, std::optional<SurveyPort> Survey::*port)
{
    panels::Fields<SurveyPort> fields(surveyPortAccess(port));
    fields.heading(name);
    fields.choice(
        SurveyText::tr("Kind"),
        {SurveyText::tr("drain port"), SurveyText::tr("core plug"), SurveyText::tr("lower hose tee"),
         SurveyText::tr("head or manifold port"), SurveyText::tr("cabin heater line")},
        [](auto& p) -> auto& { return p.kind; });
    fields.text(
        SurveyText::tr("Thread"), [](auto& p) -> auto& { return p.thread; });
    fields.quantity(
        SurveyText::tr("Bore"), Unit::mm, [](auto& p) -> auto& { return p.bore_mm; });
    fields.last().least = 0.5;
    fields.last().most = 300;
    fields.choice(
        SurveyText::tr("Points to"),
        {SurveyText::tr("front"), SurveyText::tr("rear"), SurveyText::tr("left side"),
         SurveyText::tr("right side"), SurveyText::tr("up"), SurveyText::tr("down")},
        [](auto& p) -> auto& { return p.facing; });
    fields.quantity(
        SurveyText::tr("Tilted up by"), Unit::degree, [](auto& p) -> auto& { return p.tilt_deg; });
    fields.last().least = -90;
    fields.last().most = 90;
    for (panels::Field& row : fields.take())
        form.push_back(std::move(row));
}

} // namespace

panels::Access<Survey> surveyAccess()
{
    return {[](const Sketch& sketch) { return sketch.survey ? &*sketch.survey : &none<Survey>(); },
            [](Sketch& sketch, const std::function<void(Survey&)>& change) {
                Survey survey = sketch.survey.value_or(Survey{});
                change(survey);
                if (survey == Survey{})
                    sketch.survey.reset();
                else
                    sketch.survey = std::move(survey);
            }};
}

panels::Access<SurveyPort> surveyPortAccess(std::optional<SurveyPort> Survey::*port)
{
    return {[port](const Sketch& sketch) {
                return sketch.survey && *sketch.survey.*port ? &*(*sketch.survey.*port) : &none<SurveyPort>();
            },
            [port](Sketch& sketch, const std::function<void(SurveyPort&)>& change) {
                surveyAccess().change(sketch, [&](Survey& survey) {
                    SurveyPort now = (survey.*port).value_or(SurveyPort{});
                    change(now);
                    if (now == SurveyPort{})
                        (survey.*port).reset();
                    else
                        survey.*port = std::move(now);
                });
            }};
}

panels::Form surveyForm()
{
    panels::Fields<Survey> fields(surveyAccess());
    fields.text(
        SurveyText::tr("Measured by"), [](auto& s) -> auto& { return s.by; });
    fields.text(
        SurveyText::tr("Date"), [](auto& s) -> auto& { return s.date; });
    panels::Form form = fields.take();
    addPort(form, SurveyText::tr("Supply port"), &Survey::supply_port);
    addPort(form, SurveyText::tr("Return port"), &Survey::return_port);
    panels::Fields<Survey> rest(surveyAccess());
    rest.heading(SurveyText::tr("Engine and bay"));
    rest.choice(
        SurveyText::tr("Thermostat on the"), {SurveyText::tr("outlet side"), SurveyText::tr("inlet side")},
        [](auto& s) -> auto& { return s.thermostat_side; });
    rest.quantity(
        SurveyText::tr("Supply voltage"), Unit::volt, [](auto& s) -> auto& { return s.supply_V; });
    rest.last().least = 0;
    rest.last().most = 100'000;
    rest.choice(
        SurveyText::tr("Antifreeze in it now"),
        {SurveyText::tr("none, plain water"), SurveyText::tr("ethylene glycol"),
         SurveyText::tr("propylene glycol"), SurveyText::tr("not known")},
        [](auto& s) -> auto& { return s.glycol; });
    rest.quantity(
        SurveyText::tr("By volume"), Unit::percent, [](auto& s) -> auto& { return s.glycol_percent; });
    rest.last().least = 0;
    rest.last().most = 100;
    rest.text(
        SurveyText::tr("Colour"), [](auto& s) -> auto& { return s.coolant_colour; });
    rest.heading(SurveyText::tr("Notes"));
    rest.text(
        QString(), [](auto& s) -> auto& { return s.notes; }, panels::Field::Kind::paragraph);
    for (panels::Field& row : rest.take())
        form.push_back(std::move(row));
    return form;
}

} // namespace siphonwright::survey
