#include "app/sheet/views.h"

#include "app/drawing/seen.h"
#include "app/photo/picture_cache.h"
#include "app/sheet/end_view.h"

#include <QPainter>
#include <QPainterPath>

namespace siphonwright::sheet {

namespace {

drawing::Style styleOf(const Sketch& sketch, const Options& options, const Plan& plan)
{
    drawing::Style style;
    style.palette = paletteOf(options);
    style.scale = 1.0 / plan.denominator;
    style.lettering_mm = plan.lettering_mm;
    style.units = unitsOf(sketch);
    const bool tells = !options.student;
    style.running = options.running && tells;
    style.tint = options.tint && tells;
    style.findings = tells;
    style.balloons = tells;
    return style;
}

drawing::Style endStyleOf(const Sketch& sketch, const Options& options, const Plan& plan)
{
    drawing::Style style = styleOf(sketch, options, plan);
    style.view = endOf(options);
    style.running = false; // said once, in the elevation; so are the findings
    style.balloons = false;
    style.tint = false;
    return style;
}

drawing::KeyRoom keyRoom(const PlannedKey& key, QPointF origin, int denominator)
{
    return key.box.isNull() ? drawing::KeyRoom{}
                            : drawing::KeyRoom{seenOn(key.box, origin, denominator), key.column_mm};
}

drawing::OnPage elevationOn(const Sketch& sketch, const Analysis& analysis, const Plan& plan)
{
    std::vector<QRectF> areas;
    for (const Shared<Area>& area : sketch.areas)
        areas.push_back(drawing::pageOf(drawing::areaSeen(*area, {})).boundingRect());
    return {guidesOf(sketch, analysis, plan),
            seenOn(plan.view, plan.origin, plan.denominator),
            itemNumbers(sketch, analysis),
            !plan.end.isNull(),
            keyRoom(plan.key, plan.origin, plan.denominator),
            std::move(areas)};
}

/// Items and heights are said in the elevation.
drawing::OnPage endOn(const Plan& plan)
{
    return {{},
            seenOn(plan.end, plan.end_origin, plan.denominator),
            {},
            false,
            keyRoom(plan.end_key, plan.end_origin, plan.denominator)};
}

void paintView(const Page& page, const drawing::Style& style, const QRectF& box, const PlannedKey& key,
               QPointF origin)
{
    QPainterPath room;
    room.addRect(box);
    if (!key.box.isNull())
        room.addRect(key.box);
    page.painter.save();
    page.painter.setClipPath(room, Qt::IntersectClip);
    page.painter.translate(origin);
    page.painter.scale(style.scale, style.scale);
    drawing::paintElevation(page.painter, page.sketch, page.analysis, style);
    page.painter.restore();
}

} // namespace

ViewNames placeNames(const Sketch& sketch, const Analysis& analysis, const Options& options, const Plan& plan)
{
    ViewNames names;
    drawing::Style style = styleOf(sketch, options, plan);
    drawing::OnPage on_page = elevationOn(sketch, analysis, plan);
    style.page = &on_page;
    names.elevation = drawing::placeNames(sketch, analysis, style);
    if (plan.end.isNull())
        return names;
    style = endStyleOf(sketch, options, plan);
    on_page = endOn(plan);
    style.page = &on_page;
    names.end = drawing::placeNames(sketch, analysis, style);
    return names;
}

void paintViews(const Page& page, const Plan& plan, const ViewNames& names)
{
    drawing::Style style = styleOf(page.sketch, page.options, plan);
    drawing::OnPage on_page = elevationOn(page.sketch, page.analysis, plan);
    on_page.names = &names.elevation;
    style.page = &on_page;
    const bool with_photo = page.options.photo && page.sketch.photo;
    const drawing::Picture photo = with_photo ? photo::decoded(**page.sketch.photo) : drawing::Picture();
    style.photo = with_photo ? &photo : nullptr;
    style.photo_as = page.options.colour ? drawing::PhotoAs::flat : drawing::PhotoAs::flat_grey;
    paintView(page, style, plan.view, plan.key, plan.origin);
    if (plan.end.isNull())
        return;
    style = endStyleOf(page.sketch, page.options, plan);
    on_page = endOn(plan);
    on_page.names = &names.end;
    style.page = &on_page;
    paintView(page, style, plan.end, plan.end_key, plan.end_origin);
}

} // namespace siphonwright::sheet
