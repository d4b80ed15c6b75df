#include "core/commissioning/faults_of.h"

#include "core/layout/wording.h"
#include "core/quantity/constants.h"
#include "core/sketch/find.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace siphonwright {
namespace {

using ElementsOf = std::vector<LoopElement> WarmUpLoop::*;

ElementsOf elementsOf(HoseRole role)
{
    return role == HoseRole::supply ? &WarmUpLoop::supply_hose : &WarmUpLoop::return_hose;
}

/// A short place with a share of the bore left.
FaultChange narrowed(HoseRole role, double share, double length_m)
{
    FaultChange change;
    change.loop = [=](WarmUpLoop& loop) {
        LoopElement& element = (loop.*elementsOf(role)).front();
        element.losses.push_back(Loss::hoseEnd(element.bore_m, share * element.bore_m, length_m));
    };
    return change;
}

FaultChange shut(HoseRole role)
{
    FaultChange change;
    change.loop = [role](WarmUpLoop& loop) { (loop.*elementsOf(role)).front().shut = true; };
    return change;
}

FaultChange halfClosed(HoseRole role)
{
    FaultChange change;
    change.loop = [role](WarmUpLoop& loop) {
        LoopElement& element = (loop.*elementsOf(role)).front();
        const double area_m2 = std::numbers::pi / 4 * element.bore_m * element.bore_m;
        element.losses.push_back(Loss::general(30, 1500, 1, element.bore_m, area_m2));
    };
    return change;
}

FaultChange withPocket(HoseRole role, double forward_mm, double backward_mm)
{
    FaultChange change;
    change.loop = [=](WarmUpLoop& loop) {
        LoopElement& element = (loop.*elementsOf(role)).front();
        element.pocket_forward_m = forward_mm * m_per_mm;
        element.pocket_backward_m = backward_mm * m_per_mm;
    };
    return change;
}

FaultChange withPower(double share, double current_factor)
{
    FaultChange change;
    change.loop = [share](WarmUpLoop& loop) {
        if (share > 0)
            loop.heater.rated_W *= share;
        else
            loop.heater.supply_V = 0;
    };
    change.current_factor = current_factor;
    return change;
}

FaultChange withVoltage(double share)
{
    FaultChange change;
    change.loop = [share](WarmUpLoop& loop) { loop.heater.supply_V *= share; };
    change.voltage_factor = share;
    return change;
}

FaultChange alwaysOn()
{
    FaultChange change;
    change.loop = [](WarmUpLoop& loop) { loop.heater.thermostat.place = ThermostatPlace::none; };
    return change;
}

/// The supply hose on the heater's outlet and the return hose on its inlet: the chamber turns over, and each
/// hose ends where the other did.
FaultChange exchangedAtHeater()
{
    FaultChange change;
    change.hoses_exchanged_at_heater = true;
    change.loop = [](WarmUpLoop& loop) {
        double height_m = 0;
        for (LoopElement& element : loop.chamber) {
            height_m += element.rise_m;
            element.rise_m = -element.rise_m;
        }
        loop.supply_hose.back().rise_m += height_m;
        loop.return_hose.front().rise_m += height_m;
    };
    return change;
}

/// Puts the faults of one heater's loop together.
class Faults {
public:
    Faults(const Layout& layout, const Filling& filling, const HeaterLoop& loop)
        : layout_(layout), filling_(filling), loop_(loop), heater_(*loop.heater)
    {}

    std::vector<Fault> all()
    {
        add(FaultKind::none, {}, {}, {{FaultChange{}, 1}});
        for (const ResolvedHose* hose : {loop_.supply, loop_.return_}) {
            addAir(*hose);
            addValves(*hose);
            addHose(*hose);
        }
        addPorts();
        addPlumbing();
        addElectrical();
        addControls();
        return std::move(out_);
    }

private:
    Fault& add(FaultKind kind, PartRef part, const std::string& name, std::vector<FaultCase> cases)
    {
        Fault fault;
        fault.kind = kind;
        fault.id = std::string(faultRow(kind).id);
        if (!part.id.empty() && part.kind != PartKind::heater)
            fault.id += ":" + part.id;
        fault.title = {std::string(faultRow(kind).title), {}, {}};
        if (!name.empty())
            fault.title.words.push_back(name);
        fault.part = std::move(part);
        fault.prior = faultRow(kind).prior;
        fault.cases = std::move(cases);
        out_.push_back(std::move(fault));
        return out_.back();
    }

    const PocketFound* pocketIn(const ResolvedHose& hose, double from_mm, double to_mm) const
    {
        for (const PocketFound& pocket : filling_.pockets)
            if (pocket.hose == hose.id() && pocket.closes_bore && pocket.along_mm >= from_mm &&
                pocket.along_mm <= to_mm)
                return &pocket;
        return nullptr;
    }

    void addAir(const ResolvedHose& hose)
    {
        bool any = false;
        for (const HighPoint& crest : hose.profile.high_points) {
            if (crest.within)
                continue;
            any = true;
            const PocketFound* pocket = pocketIn(hose, crest.from_mm, crest.to_mm);
            const double forward_mm = pocket ? pocket->height_mm : crest.height_mm;
            const double backward_mm = pocket ? pocket->reverse_mm : crest.height_mm;
            airAt(hose, crest.at, forward_mm, backward_mm).prior *= pocket ? 3 : 1;
        }
        if (any)
            return;
        // A hose without a crest traps air where it sags; a bore's height is enough to stop most loops.
        constexpr double seldomer = 0.4; // own choice
        const Vec3 highest = hose->path.line.at(hose.highest_at_mm);
        airAt(hose, highest, hose->bore_mm, hose->bore_mm).prior *= seldomer;
    }

    Fault& airAt(const ResolvedHose& hose, Vec3 at, double forward_mm, double backward_mm)
    {
        Fault& fault = add(FaultKind::air, refOf(*hose->hose), nameOfHose(*hose->hose),
                           {{withPocket(hose.role(), forward_mm, backward_mm), 1}});
        fault.at = at;
        fault.title = {"Air in {a}, {0} up", {{layout_.plumb.height(at), Unit::mm}}, fault.title.words};
        const auto before = std::count_if(out_.begin(), out_.end() - 1, [&](const Fault& one) {
            return one.kind == FaultKind::air && one.part == fault.part;
        });
        if (before > 0)
            fault.id += ":" + std::to_string(before + 1);
        return fault;
    }

    void addValves(const ResolvedHose& hose)
    {
        const bool supply = hose.role() == HoseRole::supply;
        for (std::size_t i = 0; i < hose->hose->parts.size(); ++i) {
            const InlinePart& part = hose->hose->parts[i];
            if (part.kind != InlineKind::isolation_valve)
                continue;
            const PartRef ref = {PartKind::inline_part, hose.id(), i};
            const Vec3 at = alongHose(*hose, part.along_mm);
            const std::string name = nameOfHose(*hose->hose);
            add(supply ? FaultKind::supply_valve_closed : FaultKind::return_valve_closed, ref, name,
                {{shut(hose.role()), 1}})
                .at = at;
            add(FaultKind::valve_half_closed, ref, name, {{halfClosed(hose.role()), 1}}).at = at;
        }
    }

    void addHose(const ResolvedHose& hose)
    {
        const PartRef ref = refOf(*hose->hose);
        const std::string name = nameOfHose(*hose->hose);
        const Vec3 middle = hose->path.line.at(hose->path.line.length() / 2);
        add(FaultKind::hose_collapsed, ref, name, {{narrowed(hose.role(), 0.35, 0.15), 1}}).at = middle;
        add(FaultKind::hose_kinked, ref, name,
            {{narrowed(hose.role(), 0.45, 0.01), 0.5}, {narrowed(hose.role(), 0.25, 0.01), 0.5}})
            .at = middle;
        constexpr double opens_at_mm = 150; // 0.2 psi, from memory
        constexpr double never_mm = 10000;
        add(FaultKind::check_valve, ref, name, {{withPocket(hose.role(), opens_at_mm, never_mm), 1}}).at =
            middle;
    }

    void addPorts()
    {
        for (const auto& [port, role] : {std::pair{loop_.supply_port, HoseRole::supply},
                                         std::pair{loop_.return_port, HoseRole::return_}})
            add(FaultKind::port_blocked, refOf(*port), nameOfPort(*port),
                {{narrowed(role, 0.3, 0.03), 0.5}, {narrowed(role, 0.15, 0.03), 0.5}})
                .at = port->position;
    }

    void addPlumbing()
    {
        const Id supply = loop_.supply->id();
        const Id back = loop_.return_->id();
        const double bore_mm = std::min((*loop_.supply)->bore_mm, (*loop_.return_)->bore_mm);
        double smaller_mm = 0;
        for (const HoseSize& size : hoseSizes())
            if (size.bore_mm < bore_mm - 1)
                smaller_mm = std::max(smaller_mm, size.bore_mm);
        if (smaller_mm > 0)
            add(FaultKind::hose_too_small, {}, {}, {{smaller({supply, back}, smaller_mm), 1}});

        FaultChange swapped;
        swapped.sketch = [=](Sketch& sketch) {
            const Id low = sketch.hose(supply)->from.port;
            const Id high = sketch.hose(back)->to.port;
            byId(sketch.hoses, supply)->edit([&](Hose& hose) { hose.from.port = high; });
            byId(sketch.hoses, back)->edit([&](Hose& hose) { hose.to.port = low; });
        };
        add(FaultKind::ports_swapped, {}, {}, {{swapped, 1}});
        add(FaultKind::flow_reversed, refOf(heater_), {}, {{exchangedAtHeater(), 1}}).at = heater_.position;

        FaultChange low = shut(HoseRole::return_);
        constexpr double usual_fall_mm = 80; // own estimate, where levels are not entered
        const double port_mm = layout_.plumb.height(loop_.return_port->position);
        low.level_mm = layout_.levels.cold_full_mm ? port_mm - *layout_.levels.cold_full_mm : -usual_fall_mm;
        low.level_mm = std::min(low.level_mm, -usual_fall_mm / 2);
        add(FaultKind::low_coolant, {PartKind::tank, {}, 0}, {}, {{low, 1}});

        FaultChange open;
        open.job = [](WarmUpInputs& inputs) {
            inputs.block.loss_W_per_K *= 2.5;
            inputs.block.coolant_L *= 1.5;
        };
        add(FaultKind::engine_thermostat_open, {PartKind::thermostat, {}, 0}, {}, {{open, 1}});
    }

    static FaultChange smaller(std::vector<Id> hoses, double bore_mm)
    {
        FaultChange change;
        change.sketch = [hoses = std::move(hoses), bore_mm](Sketch& sketch) {
            for (const Id& id : hoses)
                byId(sketch.hoses, id)->edit([bore_mm](Hose& hose) {
                    const double share = bore_mm / hose.bore_mm.value.value_or(bore_mm);
                    hose.bore_mm.value = bore_mm;
                    for (HoseEnd* end : {&hose.from, &hose.to})
                        end->bore_mm *= std::min(1.0, share);
                });
        };
        return change;
    }

    void addElectrical()
    {
        const PartRef ref = refOf(heater_);
        const auto electrical = [&](FaultKind kind, std::vector<FaultCase> cases) {
            add(kind, ref, {}, std::move(cases)).at = heater_.position;
        };
        electrical(FaultKind::voltage_half, {{withVoltage(0.5), 1}});
        electrical(FaultKind::voltage_low, {{withVoltage(std::sqrt(3.0) / 2), 1}});
        if (heater_.phases == 3) {
            electrical(FaultKind::phase_missing,
                       {{withPower(0.5, std::sqrt(3.0)), 2.0 / 3}, {withPower(0.5, 0), 1.0 / 3}});
            // One of three elements in delta: one conductor carries its full current, two 1/sqrt(3) of it.
            electrical(FaultKind::element_dead, {{withPower(2.0 / 3, 1.5), 1.0 / 3},
                                                 {withPower(2.0 / 3, std::sqrt(3.0) / 2), 2.0 / 3}});
        } else {
            electrical(FaultKind::element_dead, {{withPower(0, 1), 1}});
        }
        FaultChange dark = withPower(0, 1);
        dark.supplied = false;
        electrical(FaultKind::breaker_tripped, {{dark, 1}});
    }

    void addControls()
    {
        const PartRef ref = refOf(heater_);
        const auto control = [&](FaultKind kind, std::vector<FaultCase> cases) {
            add(kind, ref, {}, std::move(cases)).at = heater_.position;
        };
        control(FaultKind::thermostat_stuck_on, {{alwaysOn(), 1}});
        control(FaultKind::thermostat_stuck_off, {{withPower(0, 1), 1}});
        FaultChange scaled;
        scaled.loop = [](WarmUpLoop& loop) {
            loop.heater.own_convection_W_per_K *= 0.5;
            loop.heater.cut_out.trip_degC -= 25;
            loop.heater.cut_out.reset_degC -= 25;
        };
        control(FaultKind::element_scaled, {{scaled, 1}});
        if (heater_.cut_out) {
            // Tripped before, or worn out and tripping early.
            FaultChange early;
            early.loop = [](WarmUpLoop& loop) {
                loop.heater.cut_out = {CutOutReset::manual, loop.heater.cut_out.trip_degC - 50, 0};
            };
            control(FaultKind::cut_out_tripped, {{withPower(0, 1), 0.6}, {early, 0.4}});
        }
        if (heater_.thermostat == HeaterThermostat::remote)
            control(FaultKind::sensor_off, {{alwaysOn(), 1}});
    }

    const Layout& layout_;
    const Filling& filling_;
    const HeaterLoop& loop_;
    const Heater& heater_;
    std::vector<Fault> out_;
};

} // namespace

std::vector<Fault> faultsOf(const Sketch& sketch, const Layout& layout, const Filling& filling,
                            const Id& heater)
{
    for (const HeaterLoop& loop : loopsOf(sketch, layout)) {
        const bool closed = loop.supply && loop.return_ && loop.supply_port && loop.return_port;
        if (loop.heater->id == heater && closed)
            return Faults(layout, filling, loop).all();
    }
    return {};
}

} // namespace siphonwright
