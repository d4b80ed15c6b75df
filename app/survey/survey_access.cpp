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
        siphonwright::survey::SurveyText::tr("Kind"),
        {siphonwright::survey::SurveyText::tr("drain port"),
         siphonwright::survey::SurveyText::tr("core plug"),
         siphonwright::survey::SurveyText::tr("lower hose tee"),
         siphonwright::survey::SurveyText::tr("head or manifold port"),
         siphonwright::survey::SurveyText::tr("cabin heater line")},
        [](auto& p) -> auto& { return p.kind; });
    fields.text(
        siphonwright::survey::SurveyText::tr("Thread"), [](auto& p) -> auto& { return p.thread; });
    fields.quantity(
        siphonwright::survey::SurveyText::tr("Bore"), Unit::mm, [](auto& p) -> auto& { return p.bore_mm; });
    fields.last().least = 0.5;
    fields.last().most = 300;
    fields.choice(
        siphonwright::survey::SurveyText::tr("Points to"),
        {siphonwright::survey::SurveyText::tr("front"), siphonwright::survey::SurveyText::tr("rear"),
         siphonwright::survey::SurveyText::tr("left side"),
         siphonwright::survey::SurveyText::tr("right side"), siphonwright::survey::SurveyText::tr("up"),
         siphonwright::survey::SurveyText::tr("down")},
        [](auto& p) -> auto& { return p.facing; });
    fields.quantity(
        siphonwright::survey::SurveyText::tr("Tilted up by"), Unit::degree,
        [](auto& p) -> auto& { return p.tilt_deg; });
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
        siphonwright::survey::SurveyText::tr("Measured by"), [](auto& s) -> auto& { return s.by; });
    fields.text(
        siphonwright::survey::SurveyText::tr("Date"), [](auto& s) -> auto& { return s.date; });
    panels::Form form = fields.take();
    addPort(form, siphonwright::survey::SurveyText::tr("Supply port"), &Survey::supply_port);
    addPort(form, siphonwright::survey::SurveyText::tr("Return port"), &Survey::return_port);
    panels::Fields<Survey> rest(surveyAccess());
    rest.heading(siphonwright::survey::SurveyText::tr("Engine and bay"));
    rest.choice(
        siphonwright::survey::SurveyText::tr("Thermostat on the"),
        {siphonwright::survey::SurveyText::tr("outlet side"),
         siphonwright::survey::SurveyText::tr("inlet side")},
        [](auto& s) -> auto& { return s.thermostat_side; });
    rest.quantity(
        siphonwright::survey::SurveyText::tr("Supply voltage"), Unit::volt,
        [](auto& s) -> auto& { return s.supply_V; });
    rest.last().least = 0;
    rest.last().most = 100'000;
    rest.choice(
        siphonwright::survey::SurveyText::tr("Antifreeze in it now"),
        {siphonwright::survey::SurveyText::tr("none, plain water"),
         siphonwright::survey::SurveyText::tr("ethylene glycol"),
         siphonwright::survey::SurveyText::tr("propylene glycol"),
         siphonwright::survey::SurveyText::tr("not known")},
        [](auto& s) -> auto& { return s.glycol; });
    rest.quantity(
        siphonwright::survey::SurveyText::tr("By volume"), Unit::percent,
        [](auto& s) -> auto& { return s.glycol_percent; });
    rest.last().least = 0;
    rest.last().most = 100;
    rest.text(
        siphonwright::survey::SurveyText::tr("Colour"), [](auto& s) -> auto& { return s.coolant_colour; });
    rest.heading(siphonwright::survey::SurveyText::tr("Notes"));
    rest.text(
        QString(), [](auto& s) -> auto& { return s.notes; }, panels::Field::Kind::paragraph);
    for (panels::Field& row : rest.take())
        form.push_back(std::move(row));
    return form;
}

} // namespace siphonwright::survey
