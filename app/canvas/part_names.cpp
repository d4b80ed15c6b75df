#include "app/canvas/part_names.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

namespace siphonwright {
namespace {

template <class Part>
QString named(const Part* part)
{
    return part ? inWords(part->name.empty() ? part->id : part->name) : QString();
}

QString nameOnHose(const Sketch& sketch, const PartRef& part)
{
    const Hose* hose = sketch.hose(part.id);
    const QString of = named(hose);
    switch (part.kind) {
    case PartKind::hose_point:
        return tr("point %1 of %2").arg(part.index + 1).arg(of);
    case PartKind::hose_end:
        return part.index == 0 ? tr("the start of %1").arg(of) : tr("the end of %1").arg(of);
    case PartKind::clip:
        return tr("clip %1 of %2").arg(part.index + 1).arg(of);
    case PartKind::inline_part:
        if (hose && part.index < hose->parts.size())
            return tr("%1 in %2").arg(nameOfInline(hose->parts[part.index].kind), of);
        return of;
    default:
        return of;
    }
}

} // namespace

QString nameOfInline(InlineKind kind)
{
    switch (kind) {
    case InlineKind::isolation_valve:
        return tr("isolation valve");
    case InlineKind::bleed:
        return tr("bleed point");
    case InlineKind::drain:
        return tr("drain");
    case InlineKind::lift_check_valve:
        return tr("lift check valve");
    case InlineKind::swing_check_valve:
        return tr("swing check valve");
    case InlineKind::reducer:
        return tr("reducer");
    }
    return {};
}

QString nameOfPart(const Sketch& sketch, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::nothing:
        return {};
    case PartKind::engine:
        return tr("the engine");
    case PartKind::engine_corner:
        return tr("corner %1 of the engine").arg(part.index + 1);
    case PartKind::jacket:
        return tr("the water jacket");
    case PartKind::jacket_corner:
        return tr("corner %1 of the water jacket").arg(part.index + 1);
    case PartKind::thermostat:
        return tr("the thermostat housing");
    case PartKind::tank:
        return tr("the surge tank");
    case PartKind::port:
        return named(sketch.port(part.id));
    case PartKind::heater:
        return named(sketch.heater(part.id));
    case PartKind::area:
        return named(sketch.area(part.id));
    case PartKind::area_corner:
        return tr("corner %1 of %2").arg(part.index + 1).arg(named(sketch.area(part.id)));
    case PartKind::ground:
        return tr("the ground line");
    case PartKind::photo:
        return tr("the photo");
    case PartKind::dimension:
        return tr("the dimension");
    default:
        return nameOnHose(sketch, part);
    }
}

QString spokenName(const Sketch& sketch, const PartRef& part)
{
    const Hose* hose = sketch.hose(part.id);
    const QString of = named(hose);
    switch (part.kind) {
    case PartKind::engine:
        return tr("Engine");
    case PartKind::engine_corner:
        return tr("Engine, corner %1").arg(part.index + 1);
    case PartKind::jacket:
        return tr("Water jacket");
    case PartKind::jacket_corner:
        return tr("Water jacket, corner %1").arg(part.index + 1);
    case PartKind::thermostat:
        return tr("Thermostat housing");
    case PartKind::tank:
        return tr("Surge tank");
    case PartKind::hose_point:
        return tr("%1, point %2").arg(of).arg(part.index + 1);
    case PartKind::hose_end:
        return part.index == 0 ? tr("%1, start").arg(of) : tr("%1, end").arg(of);
    case PartKind::clip:
        return tr("%1, clip %2").arg(of).arg(part.index + 1);
    case PartKind::inline_part:
        return hose && part.index < hose->parts.size()
                   ? tr("%1, %2 %3").arg(of, nameOfInline(hose->parts[part.index].kind)).arg(part.index + 1)
                   : of;
    case PartKind::area_corner:
        return tr("%1, corner %2").arg(named(sketch.area(part.id))).arg(part.index + 1);
    case PartKind::ground:
        return tr("Ground line");
    case PartKind::photo:
        return tr("Photograph");
    default:
        return nameOfPart(sketch, part);
    }
}

} // namespace siphonwright
