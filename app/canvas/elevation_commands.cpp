#include "app/canvas/clipboard.h"
#include "app/canvas/drag.h"
#include "app/canvas/group.h"
#include "app/canvas/new_part.h"
#include "app/canvas/part_names.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/select_tool.h"
#include "app/canvas/shape.h"
#include "app/canvas/view_state.h"

#include "core/sketch/copy_parts.h"
#include "core/sketch/file.h"

#include <QClipboard>
#include <QGuiApplication>

#include <algorithm>

/// What the window's actions do on the drawing.
namespace siphonwright {
namespace {

/// What a part covers, painter axes.
QRectF pageOf(const Canvas& canvas, const PartRef& part, double around_mm)
{
    QPolygonF points;
    const auto add = [&](const std::vector<Vec2>& outline) {
        for (const Vec2& p : outline)
            points.append(drawing::toPage(p));
    };
    const Projection& view = canvas.view();
    if (const std::vector<Vec2> outline = outlineSeen(canvas, part);
        part == ownerOf(part) && !outline.empty())
        add(outline);
    else if (const Heater* heater = part.kind == PartKind::heater ? canvas.sketch().heater(part.id) : nullptr)
        add(bodyOf(*heater, view));
    else if (part.kind == PartKind::tank && canvas.sketch().tank)
        add(bodyOf(*canvas.sketch().tank, view));
    else if (part.kind == PartKind::photo)
        add(photoFrame(canvas));
    else if (const ResolvedHose* hose = part.kind == PartKind::hose ? canvas.layout().hose(part.id) : nullptr)
        for (const Piece& piece : (*hose)->path.line.pieces())
            points << drawing::toPage(piece.start, view) << drawing::toPage(piece.at(piece.length_mm), view);
    else if (const std::optional<Vec2> at = placeOf(canvas, part))
        add({{at->x - around_mm, at->z - around_mm}, {at->x + around_mm, at->z + around_mm}});
    return points.isEmpty() ? QRectF()
                            : points.boundingRect().adjusted(-around_mm, -around_mm, around_mm, around_mm);
}

/// A part in a hose once more, as far on as keeps the two apart, back where the hose ends before that.
PartRef addAnother(Sketch& sketch, const Layout& layout, const PartRef& part)
{
    constexpr double apart_mm = 40;
    const Hose* hose = sketch.hose(part.id);
    const ResolvedHose* resolved = layout.hose(part.id);
    if (!hose || !resolved)
        return {};
    const bool clip = part.kind == PartKind::clip;
    InlinePart copied;
    if (!clip)
        copied = hose->parts.at(part.index);
    double along_mm = clip ? hose->clips_mm.at(part.index) : copied.along_mm;
    const double step_mm = apart_mm + (clip ? 0 : copied.length_mm);
    along_mm += along_mm + step_mm <= (*resolved)->length_mm ? step_mm : -step_mm;
    along_mm = std::max(0.0, along_mm);
    const std::size_t index = clip ? hose->clips_mm.size() : hose->parts.size();
    copied.along_mm = along_mm;
    const bool added = clip ? addClip(sketch, part.id, along_mm) : addInlinePart(sketch, part.id, copied);
    return added ? PartRef{part.kind, part.id, index} : PartRef();
}

InlinePart* openable(Hose& hose, const PartRef& part)
{
    if (part.kind != PartKind::inline_part || part.index >= hose.parts.size())
        return nullptr;
    InlinePart& found = hose.parts[part.index];
    return canOpen(found.kind) ? &found : nullptr;
}

} // namespace

QRectF ElevationView::rectOf(const PartRef& part) const
{
    constexpr double half_px = 8;
    const QRectF page = pageOf(state_->canvas, part, half_px / zoom());
    return page.isEmpty() ? QRectF() : state_->canvas.viewport.transform().mapRect(page);
}

PartRef ElevationView::partAt(QPointF screen) const
{
    return hitTest(state_->canvas, screen).part;
}

std::vector<PartRef> ElevationView::things() const
{
    const PartRef& part = state_->canvas.selection.part();
    std::vector<PartRef> out = walkOrder(state_->canvas.sketch(), {});
    // Corners are there while one goes round their outline.
    if (ownerOf(part).kind != part.kind && outlineOf(state_->canvas.sketch(), part))
        for (const PartRef& corner : walkOrder(state_->canvas.sketch(), part))
            out.push_back(corner);
    return out;
}

std::size_t ElevationView::thingCount() const
{
    const PartRef& part = state_->canvas.selection.part();
    const std::vector<Vec2>* corners =
        ownerOf(part).kind != part.kind ? outlineOf(state_->canvas.sketch(), part) : nullptr;
    return walkLength(state_->canvas.sketch()) + (corners ? corners->size() : 0);
}

Document& ElevationView::document() const
{
    return state_->canvas.document;
}

Selection& ElevationView::selection() const
{
    return state_->canvas.selection;
}

void ElevationView::zoomToSelection()
{
    constexpr double around_mm = 60;
    QRectF page;
    for (const PartRef& part : state_->canvas.selection.parts())
        page |= pageOf(state_->canvas, part, around_mm);
    if (page.isEmpty())
        return;
    state_->canvas.viewport.fit(page, state_->canvas.area);
    update();
}

void ElevationView::bringToMiddle(const PartRef& part)
{
    if (const std::optional<Vec2> at = placeOf(state_->canvas, part))
        state_->canvas.viewport.pan(state_->canvas.area.center() - toScreen(*at));
    update();
}

void ElevationView::selectEverything()
{
    setTool(ToolKind::select);
    selection().selectAll(wholesOf(state_->canvas.sketch()));
}

void ElevationView::copy()
{
    const Sketch copied = copyOf(state_->canvas.sketch(), selection().parts());
    const std::vector<PartRef> wholes = wholesOf(copied);
    if (wholes.empty()) {
        Q_EMIT told(tr("Nothing selected that can be copied."));
        return;
    }
    QStringList problems;
    if (QMimeData* carried = mimeDataOf(copied, problems)) {
        QGuiApplication::clipboard()->setMimeData(carried);
        Q_EMIT told(tr("Copied %1.").arg(nameOfParts(copied, wholes)));
    } else {
        Q_EMIT refused(tr("This could not be copied."), problems);
    }
}

void ElevationView::cut()
{
    const std::vector<PartRef> wholes = wholesOf(copyOf(state_->canvas.sketch(), selection().parts()));
    if (!wholes.empty())
        copy();
    if (wholes.empty() || !partsFrom(QGuiApplication::clipboard()->mimeData()).sketch)
        return;
    const QString name = nameOfParts(state_->canvas.sketch(), wholes);
    state_->tool->putAway();
    state_->canvas.apply(tr("Cut %1").arg(name), [&](Sketch& sketch) { remove(sketch, wholes); });
    selection().select({});
    Q_EMIT told(tr("Cut %1; Ctrl+V puts it down again.").arg(name));
}

void ElevationView::paste()
{
    const ClipboardParts found = partsFrom(QGuiApplication::clipboard()->mimeData());
    if (!found.sketch) {
        if (found.problems.isEmpty())
            Q_EMIT told(tr("There are no parts on the clipboard."));
        else
            Q_EMIT refused(tr("What is on the clipboard cannot be put on the drawing. Nothing was changed."),
                           found.problems);
        return;
    }
    const Sketch& copied = *found.sketch;
    Vec3 delta;
    std::vector<PartRef> placed = wholesOf(copied);
    if (state_->canvas.sketch().engine)
        std::erase(placed, PartRef{PartKind::engine, {}, 0});
    const std::optional<PartBox> box = boxOf(copied, placed);
    const std::optional<QPointF> at =
        state_->menu_on ? std::optional(toScreen(state_->menu_at)) : state_->pointer;
    if (box && at && state_->canvas.area.contains(*at)) {
        const Vec2 to = toDrawing(*at);
        const double step_mm = state_->canvas.nudgeStep(false);
        const Vec2 by = {to.x - box->middle().x, to.z - box->middle().z};
        delta = {std::round(by.x / step_mm) * step_mm, 0, std::round(by.z / step_mm) * step_mm};
    }
    putDown(copied, delta, tr("Paste %1"));
}

void ElevationView::duplicate()
{
    const std::vector<PartRef> parts = selection().parts();
    if (parts.empty())
        return;
    if (!std::all_of(parts.begin(), parts.end(), liesAlongHose)) {
        putDown(copyOf(state_->canvas.sketch(), parts), {}, tr("Duplicate %1"));
        return;
    }
    std::vector<PartRef> added;
    state_->canvas.apply(tr("Duplicate %1").arg(nameOfParts(state_->canvas.sketch(), parts)),
                         [&](Sketch& sketch) {
                             for (const PartRef& part : parts)
                                 added.push_back(addAnother(sketch, state_->canvas.layout(), part));
                         });
    selection().selectAll(added);
}

/// Put a copy down, moved by delta and on from there until it lies on nothing that is the same; all or
/// nothing.
void ElevationView::putDown(const Sketch& copied, Vec3 delta, const QString& undo_text)
{
    Sketch moved = copied;
    siphonwright::move(moved, wholesOf(moved), delta);
    delta = delta + besideOthers(state_->canvas.sketch(), moved);
    Sketch after = state_->canvas.sketch();
    const Pasted pasted = siphonwright::paste(after, copied, delta);
    if (const Problems problems = problemsIn(after); !problems.empty()) {
        Q_EMIT refused(tr("These parts do not fit into this drawing. Nothing was changed."),
                       sentencesOf(problems));
        return;
    }
    if (!pasted.parts.empty()) {
        state_->tool->putAway();
        setTool(ToolKind::select);
        const QString name = nameOfParts(after, pasted.parts);
        state_->canvas.apply(undo_text.arg(name), [&](Sketch& sketch) { sketch = after; });
        selection().selectAll(pasted.parts);
        if (const std::optional<Vec2> at = placeOf(state_->canvas, pasted.parts.front()))
            showPlace(*at);
    }
    if (pasted.engine_left_out)
        Q_EMIT told(tr("The drawing has an engine already, so the copied one was left out."));
    else if (pasted.tank_left_out)
        Q_EMIT told(tr("The drawing has a surge tank already, so the copied one was left out."));
    else
        Q_EMIT told(tr("Put down %1.").arg(nameOfParts(after, pasted.parts)));
}

void ElevationView::deleteSelected()
{
    if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        select->deleteSelected();
    refresh();
}

void ElevationView::alignSelected(Alignment alignment)
{
    const std::vector<PartRef> parts = selection().parts();
    const bool moved = state_->canvas.apply(tr("Align %1").arg(nameOfParts(state_->canvas.sketch(), parts)),
                                            [&](Sketch& sketch) { align(sketch, parts, alignment); });
    if (!moved)
        Q_EMIT told(tr("They are in line already."));
}

void ElevationView::distributeSelected(SpreadAlong spread)
{
    const std::vector<PartRef> parts = selection().parts();
    const bool moved =
        state_->canvas.apply(tr("Space %1 evenly").arg(nameOfParts(state_->canvas.sketch(), parts)),
                             [&](Sketch& sketch) { distribute(sketch, parts, spread); });
    if (!moved)
        Q_EMIT told(tr("They are evenly spaced already, or fewer than three can be moved."));
}

void ElevationView::turnSelected(double clockwise_deg)
{
    if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        select->turnSelected(clockwise_deg);
    refresh();
}

void ElevationView::connectSelected()
{
    if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        select->connectToNext();
    refresh();
}

void ElevationView::keepSelected()
{
    if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        if (const int kept = select->keepSelected(); kept > 0)
            Q_EMIT told(tr("Kept %1; Tab goes on to the next.").arg(kept));
    refresh();
}

void ElevationView::enterOutline()
{
    if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        select->enterOutline();
    refresh();
}

void ElevationView::openOrCloseSelected()
{
    const std::vector<PartRef> parts = selection().parts();
    state_->canvas.apply(tr("Open or close %1").arg(nameOfParts(state_->canvas.sketch(), parts)),
                         [&](Sketch& sketch) {
                             for (const PartRef& part : parts)
                                 for (Shared<Hose>& hose : sketch.hoses)
                                     if (hose->id == part.id)
                                         hose.edit([&](Hose& changed) {
                                             if (InlinePart* found = openable(changed, part))
                                                 found->open = !found->open;
                                         });
                         });
}

/// Along the path of the selected hose: where the menu was opened, else at what is selected on it, else in
/// its middle.
std::optional<double> ElevationView::placeOnHose() const
{
    const PartRef part = state_->canvas.selection.part();
    const ResolvedHose* resolved = state_->canvas.layout().hose(part.id);
    if (ownerOf(part).kind != PartKind::hose || !resolved || (*resolved)->path.line.empty())
        return std::nullopt;
    const Route& route = **resolved;
    double s = (route.hose_from_mm + route.hose_to_mm) / 2;
    if (state_->menu_on && state_->menu_on->part == part && state_->menu_on->along_mm)
        s = *state_->menu_on->along_mm;
    else if (const std::optional<Vec2> at = placeOf(state_->canvas, part); at && part != ownerOf(part))
        s = route.path.line.nearestInElevation(*at).s;
    return std::clamp(s, route.hose_from_mm, route.hose_to_mm);
}

void ElevationView::addPointHere()
{
    const PartRef part = selection().part();
    const bool by_pointer = state_->menu_on && state_->menu_on->part == part;
    const bool on_hose = (by_pointer && part.kind == PartKind::hose) || liesAlongHose(part);
    PartRef added;
    if (const std::optional<double> s = on_hose ? placeOnHose() : std::nullopt)
        added = insertHosePoint(state_->canvas, part.id, *s);
    else if (by_pointer && hasCorners(part.kind))
        added = insertCorner(state_->canvas, part, state_->menu_at);
    else if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        select->insertPointByKey();
    if (added.kind != PartKind::nothing)
        selection().select(added);
    refresh();
}

void ElevationView::addHere(ToolKind what)
{
    const PartRef part = selection().part();
    const std::optional<double> s = placeOnHose();
    if (!s)
        return;
    const double along_mm = std::round(*s - (*state_->canvas.layout().hose(part.id))->hose_from_mm);
    const PartRef added = putOnHose(state_->canvas, what, part.id, along_mm);
    if (added.kind != PartKind::nothing)
        selection().select(added);
    refresh();
}

} // namespace siphonwright
