#include "app/canvas/canvas.h"

#include "app/language/in_words.h"

#include <QGuiApplication>
#include <QScreen>

namespace siphonwright {

UnitSystem Canvas::units() const
{
    return sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
}

QString Canvas::length(double mm) const
{
    return inWords(mm, Unit::mm, units());
}

bool Canvas::apply(const QString& text, const std::function<void(Sketch&)>& edit, int gesture)
{
    applying = true;
    const bool changed = document.apply(text, edit, gesture);
    applying = false;
    return changed;
}

Snapped Canvas::snap(Vec2 raw, const SnapScene& scene, const Pointer& pointer) const
{
    if (pointer.keyboard || !snapping || pointer.modifiers.testFlag(Qt::AltModifier))
        return {raw, {}};
    const double zoom = viewport.zoom();
    return siphonwright::snap(raw, scene, snap_settings.choice, snapSpacing(zoom, units()),
                              snap_reach_px / zoom);
}

double Canvas::nudgeStep(bool fine) const
{
    constexpr double inch_mm = 25.4;
    if (units() == UnitSystem::inch)
        return fine ? inch_mm / 16 : inch_mm / 4;
    return fine ? 1 : 5;
}

drawing::Style Canvas::style() const
{
    constexpr double inch_mm = 25.4;
    constexpr double usual_dpi = 96;
    const QScreen* screen = QGuiApplication::primaryScreen();
    const double px_per_mm = (screen ? screen->logicalDotsPerInch() : usual_dpi) / inch_mm;
    drawing::Style out;
    out.palette = palette;
    out.scale = viewport.zoom() / px_per_mm;
    out.units = units();
    out.view = view();
    out.running = running && !view().isEnd(); // said once, in the side elevation
    out.tint = tinted;
    out.highlighted_finding = selection.finding();
    out.lettering_mm *= lettering * text_scale;
    out.contents = contents.get();
    out.photo = picture();
    out.findings = findings_shown;
    out.balloons = findings_shown;
    return out;
}

const drawing::Balloons& Canvas::balloons() const
{
    return kept_balloons.of(document.analysis(), style(), viewport.transform().inverted().mapRect(area));
}

} // namespace siphonwright
