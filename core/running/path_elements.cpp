#include "core/running/path_elements.h"

#include "core/layout/wording.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <variant>

namespace siphonwright {
namespace {

/// A bend by its angle: screwed elbows are made for 90 and 45 degrees, and a mitre is a hose that kinks. What
/// turns by less than 45 degrees loses in proportion (own choice): a stub that is a little askew loses
/// little.
Loss fittingBend(double angle_rad, double bore_m, bool mitre)
{
    if (angle_rad < 67.5 * rad_per_deg) {
        Loss loss = Loss::elbow45(bore_m);
        auto& K = std::get<loss_form::Local>(loss.form);
        const double share = std::clamp(angle_rad / (45 * rad_per_deg), 1e-6, 1.0);
        K.constant *= share;
        K.per_reynolds *= share;
        return loss;
    }
    return mitre ? Loss::mitre90(bore_m) : Loss::elbow90(bore_m);
}

std::string inlineName(const InlinePart& part, const Hose& hose)
{
    const char* kind = "part";
    switch (part.kind) {
    case InlineKind::isolation_valve:
        kind = "isolation valve";
        break;
    case InlineKind::bleed:
        kind = "bleed";
        break;
    case InlineKind::drain:
        kind = "drain";
        break;
    case InlineKind::lift_check_valve:
    case InlineKind::swing_check_valve:
        kind = "check valve";
        break;
    case InlineKind::reducer:
        kind = "reducer";
        break;
    }
    return std::string("the ") + kind + " in " + nameOfHose(hose);
}

/// What an in-line part loses by itself; what its narrower bore loses comes on top.
Loss ownLoss(InlineKind kind, double bore_m)
{
    switch (kind) {
    case InlineKind::isolation_valve:
        return Loss::ballValve(bore_m);
    case InlineKind::lift_check_valve:
        return Loss::liftCheck(bore_m);
    case InlineKind::swing_check_valve:
        return Loss::swingCheck(bore_m);
    case InlineKind::bleed:
    case InlineKind::drain:
    case InlineKind::reducer:
        break;
    }
    return Loss::teeRun(bore_m);
}

} // namespace

PathElements::PathElements(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                           std::vector<CircuitPart>& parts)
    : sketch_(sketch), layout_(layout), assumed_(assumed), parts_(parts)
{}

std::vector<LoopElement> PathElements::of(const ResolvedHose& hose)
{
    route_ = hose.route.get();
    elements_.clear();
    ends_mm_.clear();
    layStretches();
    addOpening(0);
    addHoseEnd(0);
    addBends();
    addInlineParts();
    addHoseEnd(1);
    addOpening(1);
    return std::move(elements_);
}

/// One element for each straight and arc, cut where the bore changes.
void PathElements::layStretches()
{
    const int part = named({PartKind::hose, route_->hose->id, 0}, nameOfHose(*route_->hose));
    const Plumb& plumb = layout_.plumb;
    const double roughness_m = assumed_[Assumed::roughness] * m_per_mm;
    std::vector<double> cuts_mm;
    for (const Piece& piece : route_->path.line.pieces())
        cuts_mm.push_back(piece.s + piece.length_mm);
    for (const BoreSpan& span : route_->path.bores)
        cuts_mm.push_back(std::min(span.to_mm, route_->path.line.length()));
    std::sort(cuts_mm.begin(), cuts_mm.end());
    double from_mm = 0;
    for (const double to_mm : cuts_mm) {
        constexpr double nothing_mm = 1e-6;
        if (to_mm - from_mm < nothing_mm)
            continue;
        LoopElement element;
        element.length_m = (to_mm - from_mm) * m_per_mm;
        element.rise_m =
            (plumb.height(route_->path.line.at(to_mm)) - plumb.height(route_->path.line.at(from_mm))) *
            m_per_mm;
        element.bore_m = route_->path.boreAt((from_mm + to_mm) / 2) * m_per_mm;
        Loss wall = Loss::wall(element.length_m, element.bore_m, roughness_m);
        wall.part = part;
        element.losses.push_back(wall);
        elements_.push_back(std::move(element));
        ends_mm_.push_back(to_mm);
        from_mm = to_mm;
    }
}

LoopElement& PathElements::at(double along_mm)
{
    const auto after = std::upper_bound(ends_mm_.begin(), ends_mm_.end(), along_mm);
    const auto index = static_cast<std::size_t>(after - ends_mm_.begin());
    return elements_[std::min(index, elements_.size() - 1)];
}

int PathElements::named(PartRef part, std::string name)
{
    const auto known =
        std::find_if(parts_.begin(), parts_.end(), [&](const CircuitPart& one) { return one.part == part; });
    if (known != parts_.end())
        return static_cast<int>(known - parts_.begin());
    CircuitPart fresh;
    fresh.part = std::move(part);
    fresh.name = std::move(name);
    parts_.push_back(std::move(fresh));
    return static_cast<int>(parts_.size()) - 1;
}

void PathElements::add(double along_mm, Loss loss, Assumed factor, int part)
{
    loss.factor = assumed_[factor];
    loss.part = part;
    at(along_mm).losses.push_back(loss);
}

void PathElements::addBends()
{
    const int part = named({PartKind::hose, route_->hose->id, 0}, {});
    for (std::size_t i = 0; i < route_->bends.size(); ++i) {
        const Bend& bend = route_->bends[i];
        const double bore_m = route_->path.boreAt(bend.s) * m_per_mm;
        const double radius_m = bend.radius_mm * m_per_mm;
        const bool kinked = radius_m < bore_m / 2;
        if (route_->bend_kinds[i] == BendKind::metal_elbow || kinked)
            add(bend.s, fittingBend(bend.angle_rad, bore_m, kinked), Assumed::fitting_loss, part);
        else
            add(bend.s, Loss::hoseBend(bend.angle_rad, radius_m, bore_m), Assumed::fitting_loss, part);
    }
}

void PathElements::addInlineParts()
{
    const Hose& hose = *route_->hose;
    for (std::size_t i = 0; i < hose.parts.size(); ++i) {
        const InlinePart& inline_part = hose.parts[i];
        const double along_mm =
            std::clamp(route_->hose_from_mm + inline_part.along_mm, route_->hose_from_mm, route_->hose_to_mm);
        const int part = named({PartKind::inline_part, hose.id, i}, inlineName(inline_part, hose));
        constexpr double before_mm = 1e-3; // a reducer changes the bore at its own place
        const double hose_bore_m = route_->path.boreAt(along_mm - before_mm) * m_per_mm;
        const double bore_m = inline_part.bore_mm * m_per_mm;
        if (inline_part.kind == InlineKind::reducer) {
            if (bore_m != hose_bore_m)
                add(along_mm - before_mm, Loss::step(hose_bore_m, bore_m), Assumed::fitting_loss, part);
            continue;
        }
        add(along_mm, ownLoss(inline_part.kind, bore_m), Assumed::fitting_loss, part);
        if (bore_m < hose_bore_m)
            add(along_mm, Loss::hoseEnd(hose_bore_m, bore_m, inline_part.length_mm * m_per_mm),
                Assumed::hose_end_loss, part);
        if (inline_part.kind == InlineKind::isolation_valve && !inline_part.open)
            at(along_mm).shut = true;
    }
}

/// Into or out of jacket and chamber. Flow enters the path at end 0 and leaves it at end 1.
void PathElements::addOpening(std::size_t end)
{
    const HoseEnd& on = end == 0 ? route_->hose->from : route_->hose->to;
    const double along_mm = end == 0 ? 0 : route_->path.line.length();
    const double bore_m = at(along_mm).bore_m;
    if (const Port* port = sketch_.port(on.port)) {
        const int part = named({PartKind::port, port->id, 0}, nameOfPort(*port));
        if (port->kind == PortKind::lower_hose_tee)
            add(along_mm, Loss::teeBranch(bore_m), Assumed::fitting_loss, part);
        else
            add(along_mm, end == 0 ? Loss::entrance(bore_m) : Loss::exit(bore_m), Assumed::fitting_loss,
                part);
        if (port->kind == PortKind::cabin_line && port->cabin_line_open == false)
            at(along_mm).shut = true;
        return;
    }
    if (const Heater* heater = sketch_.heater(on.heater)) {
        const int part = named({PartKind::heater, heater->id, 0}, nameOfHeater(*heater));
        add(along_mm, end == 0 ? Loss::entrance(bore_m) : Loss::exit(bore_m), Assumed::fitting_loss, part);
    }
}

void PathElements::addHoseEnd(std::size_t end)
{
    const HoseEnd& on = end == 0 ? route_->hose->from : route_->hose->to;
    const double along_mm = end == 0 ? route_->hose_from_mm : route_->hose_to_mm;
    constexpr double inside_mm = 1e-3;
    const double within_mm = end == 0 ? along_mm + inside_mm : along_mm - inside_mm;
    const double hose_bore_m = route_->path.boreAt(within_mm) * m_per_mm;
    const int part = named({PartKind::hose_end, route_->hose->id, end},
                           std::string("the hose end at the ") + (end == 0 ? "start" : "end") + " of " +
                               nameOfHose(*route_->hose));
    const double own_bore_m = std::min(on.bore_mm * m_per_mm, hose_bore_m);
    add(within_mm, Loss::hoseEnd(hose_bore_m, own_bore_m, on.engagement_mm * m_per_mm),
        Assumed::hose_end_loss, part);
}

} // namespace siphonwright
