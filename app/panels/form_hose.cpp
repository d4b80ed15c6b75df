#include "app/language/in_words.h"
#include "app/panels/access.h"

#include "core/sketch/edits.h"
#include "core/sketch/templates.h"

namespace siphonwright::panels {

namespace {

Access<RoutePoint> pointAccess(const Id& id, std::size_t index)
{
    const Access<Hose> hose = hoseAccess(id);
    return {[hose, index](const Sketch& sketch) {
                const Hose* found = hose.read(sketch);
                return found && index < found->points.size() ? &found->points[index] : nullptr;
            },
            [hose, index](Sketch& sketch, const std::function<void(RoutePoint&)>& change) {
                hose.change(sketch, [&](Hose& h) {
                    if (index < h.points.size())
                        change(h.points[index]);
                });
            }};
}

Access<InlinePart> inlineAccess(const Id& id, std::size_t index)
{
    const Access<Hose> hose = hoseAccess(id);
    return {[hose, index](const Sketch& sketch) {
                const Hose* found = hose.read(sketch);
                return found && index < found->parts.size() ? &found->parts[index] : nullptr;
            },
            [hose, index](Sketch& sketch, const std::function<void(InlinePart&)>& change) {
                hose.change(sketch, [&](Hose& h) {
                    if (index < h.parts.size())
                        change(h.parts[index]);
                });
            }};
}

QStringList inlineWords()
{
    return {FormText::tr("isolation valve"),  FormText::tr("bleed point"),       FormText::tr("drain"),
            FormText::tr("lift check valve"), FormText::tr("swing check valve"), FormText::tr("reducer")};
}

/// What an end is on, picked from all openings of the drawing: connecting without the mouse.
Field connectionField(const Sketch& sketch, const Id& id, std::size_t end)
{
    const std::vector<EndChoice> ends = endChoices(sketch);
    const Access<Hose> access = hoseAccess(id);
    Field row;
    row.kind = Field::Kind::choice;
    row.label = end == 0 ? FormText::tr("From") : FormText::tr("To");
    row.tip = FormText::tr("What this end is pushed onto");
    for (const EndChoice& choice : ends)
        row.choices.append(choice.name);
    row.choice = [access, ends, end](const Sketch& now) {
        const Hose* hose = access.read(now);
        if (!hose)
            return -1;
        const HoseEnd& on = end == 0 ? hose->from : hose->to;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            const HoseEnd& candidate = ends[i].end;
            if (candidate.port == on.port && candidate.heater == on.heater &&
                (on.heater.empty() || candidate.nozzle == on.nozzle))
                return static_cast<int>(i);
        }
        return -1;
    };
    row.set_choice = [access, ends, id, end](Sketch& now, int index) {
        const Hose* hose = access.read(now);
        if (!hose || index < 0 || static_cast<std::size_t>(index) >= ends.size())
            return;
        HoseEnd to = ends[static_cast<std::size_t>(index)].end;
        // An end that is let go stays where it is.
        if (const auto was = positionOf(now, {PartKind::hose_end, id, end}))
            to.open_at = *was;
        connect(now, id, end, to);
    };
    return row;
}

template <class Of>
void addEndRows(Fields<Hose>& fields, Of of)
{
    fields
        .quantity(
            FormText::tr("Bore of hose end"), Unit::mm, [of](auto& h) -> auto& { return of(h).bore_mm; })
        .least = 0.1;
    fields
        .quantity(
            FormText::tr("Pushed on by"), Unit::mm, [of](auto& h) -> auto& { return of(h).engagement_mm; })
        .least = 0;
}

void addLinks(Form& form, const Hose& hose)
{
    form.push_back(linkTo(FormText::tr("Start of hose"), {PartKind::hose_end, hose.id, 0}));
    form.push_back(linkTo(FormText::tr("End of hose"), {PartKind::hose_end, hose.id, 1}));
    for (std::size_t i = 0; i < hose.points.size(); ++i)
        form.push_back(linkTo(FormText::tr("Point %1").arg(i + 1), {PartKind::hose_point, hose.id, i}));
    for (std::size_t i = 0; i < hose.parts.size(); ++i)
        form.push_back(linkTo(FormText::tr("In-line part %1: %2")
                                  .arg(i + 1)
                                  .arg(inlineWords().value(static_cast<int>(hose.parts[i].kind))),
                              {PartKind::inline_part, hose.id, i}));
    for (std::size_t i = 0; i < hose.clips_mm.size(); ++i)
        form.push_back(linkTo(FormText::tr("Clip %1").arg(i + 1), {PartKind::clip, hose.id, i}));
}

} // namespace

Form hoseForm(const Sketch& sketch, const Id& id)
{
    Fields<Hose> fields(hoseAccess(id));
    fields.text(
        FormText::tr("Name"), [](auto& h) -> auto& { return h.name; });
    fields.choice(
        FormText::tr("Carries coolant"),
        {FormText::tr("to the heater (supply)"), FormText::tr("to the engine (return)")},
        [](auto& h) -> auto& { return h.role; });
    Field& bore = fields.quantity(
        FormText::tr("Bore"), Unit::mm, [](auto& h) -> auto& { return h.bore_mm; });
    bore.least = 1;
    for (const HoseSize& size : hoseSizes())
        bore.stock.emplace_back(inWords(size.title), size.bore_mm);
    fields
        .quantity(
            FormText::tr("Wall"), Unit::mm, [](auto& h) -> auto& { return h.wall_mm; })
        .least = 0;
    Field& radius = fields.quantity(
        FormText::tr("Least bend radius"), Unit::mm, [](auto& h) -> auto& { return h.min_bend_radius_mm; });
    radius.least = 0;
    radius.tip = FormText::tr("To the inside of the bend; not entered: judged by bores");
    fields
        .quantity(
            FormText::tr("Insulation"), Unit::mm, [](auto& h) -> auto& { return h.insulation_mm; })
        .least = 0;
    Form form = fields.take();
    form.push_back(connectionField(sketch, id, 0));
    form.push_back(connectionField(sketch, id, 1));
    if (const Hose* hose = sketch.hose(id))
        addLinks(form, *hose);
    return form;
}

Form hoseEndForm(const Sketch& sketch, const Id& id, std::size_t end)
{
    Fields<Hose> fields(hoseAccess(id));
    Form form;
    form.push_back(connectionField(sketch, id, end));
    const Hose* hose = sketch.hose(id);
    const bool open = hose && !(end == 0 ? hose->from : hose->to).connected();
    const auto add = [&](auto of) {
        addEndRows(fields, of);
        if (!open)
            return;
        fields.quantity(
            positionLabels().value(0), Unit::mm, [of](auto& h) -> auto& { return of(h).open_at.x; });
        fields.quantity(
            positionLabels().value(1), Unit::mm, [of](auto& h) -> auto& { return of(h).open_at.z; });
        fields.quantity(
            positionLabels().value(2), Unit::mm, [of](auto& h) -> auto& { return of(h).open_at.y; });
    };
    if (end == 0)
        add([](auto& h) -> auto& { return h.from; });
    else
        add([](auto& h) -> auto& { return h.to; });
    for (Field& row : fields.take())
        form.push_back(std::move(row));
    form.push_back(linkTo(FormText::tr("Whole hose"), {PartKind::hose, id, 0}));
    return form;
}

Form hosePointForm(const Id& id, std::size_t index)
{
    Fields<RoutePoint> fields(pointAccess(id, index));
    fields.position(
        positionLabels(), [](auto& p) -> auto& { return p.at; });
    fields
        .quantity(
            FormText::tr("Bend radius"), Unit::mm, [](auto& p) -> auto& { return p.radius_mm; })
        .least = 0;
    fields.last().tip = FormText::tr("To the hose's centreline");
    fields.choice(
        FormText::tr("Bend is"),
        {FormText::tr("the hose itself"), FormText::tr("a moulded elbow"), FormText::tr("a metal elbow")},
        [](auto& p) -> auto& { return p.bend; });
    Form form = fields.take();
    form.push_back(linkTo(FormText::tr("Whole hose"), {PartKind::hose, id, 0}));
    return form;
}

Form inlinePartForm(const Id& id, std::size_t index)
{
    Fields<InlinePart> fields(inlineAccess(id, index));
    fields.choice(
        FormText::tr("Part"), inlineWords(), [](auto& p) -> auto& { return p.kind; });
    fields
        .quantity(
            FormText::tr("Along the hose"), Unit::mm, [](auto& p) -> auto& { return p.along_mm; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Length"), Unit::mm, [](auto& p) -> auto& { return p.length_mm; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Bore"), Unit::mm, [](auto& p) -> auto& { return p.bore_mm; })
        .least = 0.1;
    fields.last().tip = FormText::tr("Its own bore; for a reducer the bore from here on");
    fields.choice(
        FormText::tr("State"), {FormText::tr("closed"), FormText::tr("open")},
        [](auto& p) -> auto& { return p.open; });
    Form form = fields.take();
    form.push_back(linkTo(FormText::tr("Whole hose"), {PartKind::hose, id, 0}));
    return form;
}

Form clipForm(const Id& id, std::size_t index)
{
    const Access<Hose> hose = hoseAccess(id);
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = FormText::tr("Along the hose");
    row.unit = Unit::mm;
    row.least = 0;
    row.number = [hose, index](const Sketch& sketch) -> std::optional<double> {
        const Hose* found = hose.read(sketch);
        return found && index < found->clips_mm.size() ? std::optional(found->clips_mm[index]) : std::nullopt;
    };
    row.set_number = [hose, index](Sketch& sketch, std::optional<double> value) {
        hose.change(sketch, [&](Hose& h) {
            if (value && index < h.clips_mm.size())
                h.clips_mm[index] = *value;
        });
    };
    return {row, linkTo(FormText::tr("Whole hose"), {PartKind::hose, id, 0})};
}

} // namespace siphonwright::panels
