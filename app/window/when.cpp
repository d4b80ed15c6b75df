#include "app/window/when.h"

#include "app/canvas/hit.h"
#include "app/canvas/new_part.h"

#include "core/sketch/edits.h"

namespace siphonwright {

bool possible(When when, const Situation& now)
{
    switch (when) {
    case When::always:
        return true;
    case When::selected:
        return now.selected;
    case When::several:
        return now.several;
    case When::spreadable:
        return now.spreadable;
    case When::hose_selected:
        return now.hose_selected;
    case When::point_fits:
        return now.point_fits;
    case When::turnable:
        return now.turnable;
    case When::outlined:
        return now.outlined;
    case When::end_selected:
        return now.end_selected;
    case When::can_open:
        return now.can_open;
    case When::engine:
        return now.engine;
    case When::loop_ends:
        return now.loop_ends;
    case When::findings:
        return now.findings;
    case When::finding_selected:
        return now.finding_selected;
    case When::warm_up:
        return now.warm_up;
    case When::keepable:
        return now.may_keep_curve;
    case When::kept:
        return now.kept_curves;
    case When::demonstrating:
        return now.demonstrating;
    }
    return false;
}

QString missingFor(When when)
{
    switch (when) {
    case When::always:
        return {};
    case When::selected:
        return Actions::tr("nothing is selected");
    case When::several:
        return Actions::tr("several parts have to be selected");
    case When::spreadable:
        return Actions::tr("at least three parts have to be selected");
    case When::point_fits:
        return Actions::tr("no hose or outline is selected");
    case When::turnable:
        return Actions::tr("no heater or port is selected");
    case When::outlined:
        return Actions::tr("nothing with corners is selected");
    case When::end_selected:
        return Actions::tr("no end of a hose is selected");
    case When::can_open:
        return Actions::tr("no valve, bleed or drain is selected");
    case When::hose_selected:
        return Actions::tr("no hose is selected");
    case When::engine:
        return Actions::tr("there is no engine yet");
    case When::loop_ends:
        return Actions::tr("a port and a heater come first");
    case When::findings:
        return Actions::tr("there is no finding");
    case When::finding_selected:
        return Actions::tr("no finding is selected");
    case When::warm_up:
        return Actions::tr("there is no warm-up yet");
    case When::keepable:
        return Actions::tr("there is no warm-up to keep, or it is kept");
    case When::kept:
        return Actions::tr("no curve is kept");
    case When::demonstrating:
        return Actions::tr("only while demonstrating");
    }
    return {};
}

Situation situationOf(const Document& document, const Selection& selection)
{
    const Sketch& sketch = document.sketch();
    Situation now;
    now.selected = selection.part().kind != PartKind::nothing && exists(sketch, selection.part());
    now.several = selection.parts().size() > 1;
    now.spreadable = selection.parts().size() > 2;
    const PartRef& part = selection.part();
    now.outlined = now.selected && hasCorners(part.kind);
    now.point_fits = now.selected && (outlineOf(sketch, part) || sketch.hose(part.id));
    now.end_selected = now.selected && (part.kind == PartKind::hose_end || part.kind == PartKind::hose);
    for (const PartRef& one : selection.parts()) {
        now.turnable = now.turnable || one.kind == PartKind::heater || one.kind == PartKind::port;
        const Hose* hose = one.kind == PartKind::inline_part ? sketch.hose(one.id) : nullptr;
        now.can_open =
            now.can_open || (hose && one.index < hose->parts.size() && canOpen(hose->parts[one.index].kind));
    }
    now.hose_selected = sketch.hose(selection.part().id) != nullptr;
    now.engine = sketch.engine.has_value();
    now.loop_ends = !sketch.ports.empty() && !sketch.heaters.empty();
    now.findings = !document.analysis().findings.empty();
    now.finding_selected = selection.finding() >= 0 && static_cast<std::size_t>(selection.finding()) <
                                                           document.analysis().findings.size();
    return now;
}

} // namespace siphonwright
