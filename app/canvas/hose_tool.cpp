#include "app/canvas/hose_tool.h"

#include "app/canvas/dimensions.h"
#include "app/canvas/overlay.h"
#include "app/canvas/plane.h"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>
#include <vector>

namespace siphonwright {
HoseTool::HoseTool(Canvas& canvas, HoseRole role) : Tool(canvas)
{
    draft_.role = role;
}

double HoseTool::depthOfLast() const
{
    if (!draft_.places.empty())
        return draft_.places.back().y;
    return draft_.first ? draft_.first->stop.y : 0;
}

Vec3 HoseTool::placeFor(const Pointer& pointer)
{
    const Snapped snapped = canvas_.snap(
        pointer.at, sceneFor(canvas_.sketch(), canvas_.layout(), draft_, canvas_.snap_settings.slope),
        pointer);
    guides_ = snapped.guides;
    return {snapped.at.x, depthOfLast(), snapped.at.z};
}

void HoseTool::moved(const Pointer& pointer)
{
    at_ = pointer;
    pointed_ = true;
    target_ = socketAt(canvas_.sketch(), canvas_.viewport, pointer.screen);
    next_ = placeFor(pointer);
    if (target_)
        guides_.clear();
}

void HoseTool::pressed(const Pointer& pointer)
{
    constexpr double same_mm = 0.01;
    moved(pointer);
    if (target_ && draft_.started()) {
        finish(target_);
    } else if (target_) {
        draft_.first = target_;
    } else if (draft_.places.empty() || distance(draft_.places.back(), next_) > same_mm) {
        draft_.places.push_back(next_);
    }
}

void HoseTool::doubleClicked(const Pointer&)
{
    // The first click of the two has put the last point; the second only ends the hose there.
    if (draft_.started())
        finish(std::nullopt);
}

void HoseTool::finish(const std::optional<Socket>& last)
{
    Id id;
    const HoseDraft draft = draft_;
    const QString step = draft.role == HoseRole::supply ? tr("Draw a supply hose") : tr("Draw a return hose");
    canvas_.apply(step, [&](Sketch& sketch) { id = addDraft(sketch, draft, last); });
    if (id.empty())
        return;
    draft_ = {};
    draft_.role = draft.role;
    canvas_.selection.select({PartKind::hose, id, 0});
    canvas_.done = true;
}

void HoseTool::takeBack()
{
    if (!draft_.places.empty())
        draft_.places.pop_back();
    else
        draft_.first.reset();
}

bool HoseTool::key(const QKeyEvent& event)
{
    switch (event.key()) {
    case Qt::Key_Backspace:
        takeBack();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        // At a new place of the cross-hair Enter is a click; on the last point it ends the hose.
        if (!draft_.started() || (at_.keyboard && (target_ || draft_.places.empty() ||
                                                   distance(draft_.places.back(), next_) > 0.01)))
            return false;
        finish(std::nullopt);
        return true;
    default:
        return false;
    }
}

bool HoseTool::walk(bool)
{
    return !canvas_.sketch().ports.empty() || !canvas_.sketch().heaters.empty();
}

/// Where the hose may begin or end, likeliest first: what carries its kind of coolant, a supply hose from the
/// engine and a return hose from the heater, and then the other of the two.
std::vector<Socket> HoseTool::likelyFirst() const
{
    std::vector<Socket> out = socketsOf(canvas_.sketch());
    const bool supply = draft_.role == HoseRole::supply;
    const bool from_heater = draft_.first && !draft_.first->end.heater.empty();
    const bool wants_heater = draft_.started() ? !from_heater : !supply;
    const auto rank = [&](const Socket& socket) {
        const bool heater = !socket.end.heater.empty();
        const Port* port = canvas_.sketch().port(socket.end.port);
        const bool matches = heater ? socket.end.nozzle == (supply ? NozzleKind::inlet : NozzleKind::outlet)
                                    : port && port->role == (supply ? PortRole::supply : PortRole::return_);
        return (matches ? 0 : 2) + (heater == wants_heater ? 0 : 1);
    };
    if (draft_.first)
        std::erase_if(out, [this](const Socket& socket) { return socket.sameAs(draft_.first->end); });
    std::stable_sort(out.begin(), out.end(),
                     [&](const Socket& a, const Socket& b) { return rank(a) < rank(b); });
    return out;
}

std::optional<Vec2> HoseTool::nextStop(Vec2 from, bool forward) const
{
    const std::vector<Socket> sockets = likelyFirst();
    if (sockets.empty())
        return std::nullopt;
    const auto here = std::find_if(sockets.begin(), sockets.end(), [&](const Socket& s) {
        return std::abs(s.stop.x - from.x) < same_place_mm && std::abs(s.stop.z - from.z) < same_place_mm;
    });
    if (here == sockets.end())
        return flatInElevation(forward ? sockets.front().stop : sockets.back().stop);
    const auto count = static_cast<std::ptrdiff_t>(sockets.size());
    const std::ptrdiff_t next = (here - sockets.begin() + (forward ? 1 : count - 1)) % count;
    return flatInElevation(sockets[static_cast<std::size_t>(next)].stop);
}

bool HoseTool::cancel()
{
    const bool busy = draft_.started();
    draft_.first.reset();
    draft_.places.clear();
    guides_.clear();
    return busy;
}

void HoseTool::documentChanged()
{
    // The port that the hose begins on may be gone or moved.
    if (draft_.first) {
        const std::vector<Socket> sockets = socketsOf(canvas_.sketch());
        const auto same = std::find_if(sockets.begin(), sockets.end(),
                                       [&](const Socket& s) { return s.sameAs(draft_.first->end); });
        if (same == sockets.end())
            cancel();
        else
            draft_.first = *same;
    }
    target_.reset();
}

std::optional<ResolvedHose> HoseTool::preview() const
{
    if (!draft_.started() || !pointed_)
        return std::nullopt;
    HoseDraft draft = draft_;
    if (!target_)
        draft.places.push_back(next_);
    Sketch trial = canvas_.sketch();
    const Id id = addDraft(trial, draft, target_);
    if (id.empty())
        return std::nullopt;
    const Layout layout = resolve(trial, canvas_.layout().plumb, &canvas_.layout());
    const ResolvedHose* hose = layout.hose(id);
    if (!hose || (*hose)->path.line.empty())
        return std::nullopt;
    return *hose;
}

void HoseTool::paint(QPainter& painter) const
{
    for (const Socket& socket : socketsOf(canvas_.sketch()))
        overlay::paintHandle(painter, canvas_, {{}, flatInElevation(socket.stop), HandleShape::round, false},
                             false, target_ && target_->sameAs(socket.end));
    QStringList lines;
    const std::optional<ResolvedHose> hose = preview();
    if (hose)
        overlay::paintGhostHose(painter, canvas_, (*hose)->path.line, (*hose)->outsideDiameter());
    for (const Vec3& place : draft_.places)
        overlay::paintHandle(painter, canvas_, {{}, flatInElevation(place), HandleShape::square, false}, true,
                             false);
    if (!pointed_)
        return;
    overlay::paintGuides(painter, canvas_, guides_);
    if (at_.keyboard)
        overlay::paintCrosshair(painter, canvas_, at_.at);
    if (target_)
        overlay::paintTarget(painter, canvas_, target_->stop);
    const Vec3 end = target_ ? target_->stop : next_;
    lines.append(tr("Height %1").arg(canvas_.length(canvas_.layout().plumb.height(end))));
    if (draft_.started()) {
        const Vec3 before = draft_.places.empty() ? draft_.first->stop : draft_.places.back();
        lines.append(tr("This piece %1").arg(slopeBetween(canvas_, before, end)));
    }
    if (hose) {
        lines.append(tr("Length %1").arg(canvas_.length((*hose)->length_mm)));
        lines += trapsOf(canvas_, hose->profile);
    }
    overlay::paintDimensions(painter, canvas_, at_.screen, overlay::guideWords(guides_) + lines);
}

QString HoseTool::hint() const
{
    const QString role = draft_.role == HoseRole::supply ? tr("supply hose") : tr("return hose");
    if (!draft_.started() && target_)
        return tr("Click to begin the %1 at %2.").arg(role, target_->name);
    if (!draft_.started())
        return tr("Click a port or nozzle to begin the %1, or an empty place to leave its end open; Tab and "
                  "arrow keys aim too.")
            .arg(role);
    if (target_ && draft_.first && draft_.first->sameAs(target_->end))
        return tr("The %1 begins here; it ends on another port or nozzle.").arg(role);
    if (target_)
        return tr("Click to end the %1 on %2.").arg(role, target_->name);
    return tr("Click to put a point; a port, a nozzle or a double-click ends the %1. Backspace takes a point "
              "back, Escape gives up.")
        .arg(role);
}

} // namespace siphonwright
