#include "app/language/in_words.h"
#include "app/panels/access.h"
#include "app/photo/store_picture.h"

#include "core/sketch/photo_edits.h"

namespace siphonwright::panels {

namespace {

const Photo* photoOf(const Sketch& sketch)
{
    return sketch.photo ? &**sketch.photo : nullptr;
}

Access<Photo> photoAccess()
{
    return {&photoOf, [](Sketch& sketch, const std::function<void(Photo&)>& change) {
                if (sketch.photo)
                    sketch.photo->edit(change);
            }};
}

/// A quantity that is not a member but follows from some.
Field derived(const QString& label, Unit unit, const std::function<double(const Photo&)>& read,
              const std::function<void(Sketch&, double)>& write)
{
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = label;
    row.unit = unit;
    row.number = [read](const Sketch& sketch) -> std::optional<double> {
        const Photo* photo = photoOf(sketch);
        return photo ? std::optional(read(*photo)) : std::nullopt;
    };
    row.set_number = [write](Sketch& sketch, std::optional<double> value) {
        if (value && sketch.photo)
            write(sketch, *value);
    };
    return row;
}

Field widthRow()
{
    const auto width = [](const Photo& photo) {
        return photo.mm_per_pixel * photo::storedSize(photo).width();
    };
    Field row = derived(FormText::tr("Width"), Unit::mm, width, [width](Sketch& sketch, double wanted_mm) {
        const double now_mm = width(**sketch.photo);
        if (now_mm > 0)
            scalePhotoAbout(sketch, photo::middleOf(**sketch.photo), wanted_mm / now_mm);
    });
    row.least = 1;
    row.most = 100'000;
    row.tip = FormText::tr("Of the whole picture. Scale by two points sets it from a length in the picture.");
    return row;
}

Field turnRow()
{
    Field row = derived(
        FormText::tr("Turned clockwise"), Unit::degree, [](const Photo& photo) { return photo.rotation_deg; },
        [](Sketch& sketch, double wanted_deg) {
            const Photo& photo = **sketch.photo;
            turnPhotoAbout(sketch, photo::middleOf(photo), wanted_deg - photo.rotation_deg);
        });
    row.least = -180;
    row.most = 180;
    row.tip = FormText::tr("About its middle. Level by two points sets it from something level.");
    return row;
}

Field fadeRow()
{
    Field row = derived(
        FormText::tr("Faded"), Unit::percent, [](const Photo& photo) { return 100 * (1 - photo.opacity); },
        [](Sketch& sketch, double percent) {
            sketch.photo->edit([percent](Photo& photo) { photo.opacity = 1 - percent / 100; });
        });
    row.least = 0;
    row.most = 100;
    row.stock = {{FormText::tr("as taken"), 0},
                 {FormText::tr("a little"), 25},
                 {FormText::tr("by half"), 50},
                 {FormText::tr("much"), 75},
                 {FormText::tr("not to be seen"), 100}};
    return row;
}

QString remarkOn(const Photo& photo)
{
    const QSize size = photo::storedSize(photo);
    if (!size.isValid())
        return FormText::tr(
            "The picture in this file cannot be read. Remove it, or put another in its place.");
    return FormText::tr("%1 × %2 pixels, %3 kB of this file, one pixel is %4 mm.")
        .arg(size.width())
        .arg(size.height())
        .arg((photo.data_base64.size() + 999) / 1000)
        .arg(withDecimalSign(QString::number(photo.mm_per_pixel, 'g', 3)));
}

} // namespace

Form photoForm()
{
    Fields<Photo> fields(photoAccess());
    fields.quantity(
        FormText::tr("Left corner, along"), Unit::mm, [](auto& p) -> auto& { return p.top_left.x; });
    fields.quantity(
        FormText::tr("Top corner over datum"), Unit::mm, [](auto& p) -> auto& { return p.top_left.z; });
    fields.add(widthRow());
    fields.add(turnRow());
    fields.add(fadeRow());
    fields.choice(
        FormText::tr("Locked"), {FormText::tr("no"), FormText::tr("yes")},
        [](auto& p) -> auto& { return p.locked; });
    fields.last().tip = FormText::tr("A locked photo stays where it is while you draw over it");
    fields.remark([](const Photo& photo, const Sketch&) { return remarkOn(photo); });
    return fields.take();
}

} // namespace siphonwright::panels
