#include "app/canvas/part_names.h"

#include <QCoreApplication>

namespace siphonwright {
namespace {

QString text(const char* source)
{
    return QCoreApplication::translate("Canvas", source);
}

template <class Part>
QString named(const Part* part)
{
    return part ? QString::fromStdString(part->name.empty() ? part->id : part->name) : QString();
}

QString nameOnHose(const Sketch& sketch, const PartRef& part)
{
    const Hose* hose = sketch.hose(part.id);
    const QString of = named(hose);
    switch (part.kind) {
    case PartKind::hose_point:
        return text("point %1 of %2").arg(part.index + 1).arg(of);
    case PartKind::hose_end:
        return part.index == 0 ? text("the start of %1").arg(of) : text("the end of %1").arg(of);
    case PartKind::clip:
        return text("clip %1 of %2").arg(part.index + 1).arg(of);
    case PartKind::inline_part:
        if (hose && part.index < hose->parts.size())
            return text("%1 in %2").arg(nameOfInline(hose->parts[part.index].kind), of);
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
        return text("isolation valve");
    case InlineKind::bleed:
        return text("bleed point");
    case InlineKind::drain:
        return text("drain");
    case InlineKind::lift_check_valve:
        return text("lift check valve");
    case InlineKind::swing_check_valve:
        return text("swing check valve");
    case InlineKind::reducer:
        return text("reducer");
    }
    return {};
}

QString nameOfPart(const Sketch& sketch, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::nothing:
        return {};
    case PartKind::engine:
        return text("the engine");
    case PartKind::engine_corner:
        return text("corner %1 of the engine").arg(part.index + 1);
    case PartKind::jacket:
        return text("the water jacket");
    case PartKind::jacket_corner:
        return text("corner %1 of the water jacket").arg(part.index + 1);
    case PartKind::thermostat:
        return text("the thermostat housing");
    case PartKind::tank:
        return text("the surge tank");
    case PartKind::port:
        return named(sketch.port(part.id));
    case PartKind::heater:
        return named(sketch.heater(part.id));
    case PartKind::area:
        return named(sketch.area(part.id));
    case PartKind::area_corner:
        return text("corner %1 of %2").arg(part.index + 1).arg(named(sketch.area(part.id)));
    case PartKind::ground:
        return text("the ground line");
    case PartKind::photo:
        return text("the photo");
    case PartKind::dimension:
        return text("the dimension");
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
        return text("Engine");
    case PartKind::engine_corner:
        return text("Engine, corner %1").arg(part.index + 1);
    case PartKind::jacket:
        return text("Water jacket");
    case PartKind::jacket_corner:
        return text("Water jacket, corner %1").arg(part.index + 1);
    case PartKind::thermostat:
        return text("Thermostat housing");
    case PartKind::tank:
        return text("Surge tank");
    case PartKind::hose_point:
        return text("%1, point %2").arg(of).arg(part.index + 1);
    case PartKind::hose_end:
        return part.index == 0 ? text("%1, start").arg(of) : text("%1, end").arg(of);
    case PartKind::clip:
        return text("%1, clip %2").arg(of).arg(part.index + 1);
    case PartKind::inline_part:
        return hose && part.index < hose->parts.size()
                   ? text("%1, %2 %3").arg(of, nameOfInline(hose->parts[part.index].kind)).arg(part.index + 1)
                   : of;
    case PartKind::area_corner:
        return text("%1, corner %2").arg(named(sketch.area(part.id))).arg(part.index + 1);
    case PartKind::ground:
        return text("Ground line");
    case PartKind::photo:
        return text("Photograph");
    default:
        return nameOfPart(sketch, part);
    }
}

} // namespace siphonwright
