#include "app/canvas/dimension_ends.h"
#include "app/drawing/dimension_shape.h"
#include "app/panels/access.h"

#include "core/sketch/find.h"

namespace siphonwright::panels {

namespace {

QString measuredNow(const Dimension& dimension, const Sketch& sketch)
{
    const MeasuredDimension measured = measure(dimension, sketch, resolve(sketch, plumbOf(sketch)));
    const QString value = drawing::dimensionText(measured, unitsOf(sketch));
    return measured.stretch ? FormText::tr("Measures %1 along the hose").arg(value)
                            : FormText::tr("Measures %1").arg(value);
}

} // namespace

Form dimensionForm(const Id& id)
{
    Fields<Dimension> fields(dimensionAccess(id));
    fields.remark([](const Dimension& d, const Sketch& sketch) { return measuredNow(d, sketch); });
    fields.remark([](const Dimension& d, const Sketch& sketch) {
        return FormText::tr("From %1").arg(nameOfEnd(sketch, d.from));
    });
    fields.remark([](const Dimension& d, const Sketch& sketch) {
        return FormText::tr("To %1").arg(nameOfEnd(sketch, d.to));
    });
    fields.choice(
        FormText::tr("Kind"),
        {FormText::tr("horizontal"), FormText::tr("vertical"), FormText::tr("along"), FormText::tr("slope")},
        [](auto& d) -> auto& { return d.kind; });
    fields
        .quantity(
            FormText::tr("Line aside"), Unit::mm, [](auto& d) -> auto& { return d.aside_mm; })
        .tip =
        FormText::tr("From the line between its ends: up, right, or left of the way; negative: opposite");
    return fields.take();
}

} // namespace siphonwright::panels
