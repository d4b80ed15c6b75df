#include "core/layout/wording.h"
#include "core/paperwork/coolant_mix.h"
#include "core/paperwork/part_rows.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <numbers>

/// Heaters, what is screwed into ports and nozzles, and what the new hoses are filled with.
namespace siphonwright {
namespace {

/// What an end is pushed onto.
struct Onto {
    ItemKind kind = ItemKind::adapter;
    std::string thread;
    Vec3 axis;
    const Stub* stub = nullptr;
    PartRef part;
    std::string name;
};

ItemKind adapterOf(PortKind kind)
{
    switch (kind) {
    case PortKind::core_plug:
        return ItemKind::core_plug_adapter;
    case PortKind::lower_hose_tee:
        return ItemKind::radiator_hose_tee;
    case PortKind::cabin_line:
        return ItemKind::cabin_line_tee;
    case PortKind::drain_port:
    case PortKind::head_port:
        break;
    }
    return ItemKind::adapter;
}

std::optional<Onto> ontoOf(const Sketch& sketch, const HoseEnd& end)
{
    if (const Port* port = sketch.port(end.port))
        return Onto{
            adapterOf(port->kind), port->thread, direction(port->axis.azimuth_deg, port->axis.elevation_deg),
            &port->stub,           refOf(*port), nameOfPort(*port)};
    const Heater* heater = sketch.heater(end.heater);
    if (!heater)
        return std::nullopt;
    const bool inlet = end.nozzle == NozzleKind::inlet;
    const Nozzle& nozzle = inlet ? heater->inlet : heater->outlet;
    return Onto{
        ItemKind::adapter, nozzle.thread,  direction(nozzle.axis.azimuth_deg, nozzle.axis.elevation_deg),
        &nozzle.stub,      refOf(*heater), nameOfHeater(*heater) + (inlet ? ", inlet" : ", outlet")};
}

ItemOf adapterItem(const Onto& onto, const HoseEnd& end)
{
    ItemOf item;
    item.kind = onto.kind;
    if (onto.thread.empty()) {
        const bool tee = onto.kind == ItemKind::radiator_hose_tee || onto.kind == ItemKind::cabin_line_tee;
        item.missing = tee ? "size of the line not entered" : "thread not entered";
        item.size = {"to hose end of passage {0}", {{end.bore_mm, Unit::mm}}, {}};
        return item;
    }
    item.size_key = onto.thread + "-" + sizeKey(end.bore_mm);
    item.size = {"{a} to hose end of passage {0}", {{end.bore_mm, Unit::mm}}, {onto.thread}};
    return item;
}

void addElbow(const Onto& onto, const HoseEnd& end, PartRows& rows)
{
    if (!onto.stub->elbow)
        return;
    const Direction& towards = onto.stub->elbow->direction;
    const double cosine = dot(onto.axis, direction(towards.azimuth_deg, towards.elevation_deg));
    const double angle_deg = std::round(std::acos(std::clamp(cosine, -1.0, 1.0)) * 180 / std::numbers::pi);
    ItemOf item = sizedItem(ItemKind::elbow, end.bore_mm, {});
    item.size = {"passage {0}, {1}", {{end.bore_mm, Unit::mm}, {angle_deg, Unit::degree}}, {}};
    rows.count(item, usedAt(onto.part, onto.name)).notes = noteOfAngle(angle_deg);
}

/// The hose's bore where it is pushed onto an end: reducers change it on the way.
std::optional<double> boreAt(const Hose& hose, const HoseEnd& end)
{
    std::optional<double> bore_mm = hose.bore_mm.value;
    double last_mm = 0;
    for (const InlinePart& part : hose.parts)
        if (&end == &hose.to && part.kind == InlineKind::reducer && part.along_mm >= last_mm) {
            last_mm = part.along_mm;
            bore_mm = part.bore_mm;
        }
    return bore_mm;
}

ItemOf heaterItem(const Heater& heater)
{
    ItemOf item;
    item.kind = ItemKind::heater;
    if (!heater.power_W.known() || !heater.rated_V.known()) {
        item.missing = heater.power_W.known()   ? "rated voltage not entered"
                       : heater.rated_V.known() ? "power not entered"
                                                : "power and rated voltage not entered";
        return item;
    }
    item.size_key = exactText(*heater.power_W.value) + "W-" + exactText(*heater.rated_V.value) + "V";
    item.size = {"{0}, {1}", {{*heater.power_W.value, Unit::watt}, {*heater.rated_V.value, Unit::volt}}, {}};
    if (heater.phases == 3) {
        item.size_key += "-3ph";
        item.size.pattern = "{0}, {1}, three phases";
    }
    return item;
}

/// What the new hoses and chambers hold, ml; nothing, and why, where it is not known.
std::optional<double> newVolume(const Sketch& sketch, const Layout& layout, std::string& missing,
                                std::vector<Message>& notes)
{
    double volume_ml = 0;
    for (const ResolvedHose& hose : layout.hoses) {
        if (!hose->bore_known) {
            missing = "bore of " + nameOfHose(*hose->hose) + " not entered";
            return std::nullopt;
        }
        volume_ml += hose->volume_ml;
    }
    for (const Heater& heater : sketch.heaters) {
        const double drawn_ml = std::numbers::pi / 4 * heater.chamber_bore_mm * heater.chamber_bore_mm *
                                std::max(0.0, heater.chamber_top_mm - heater.chamber_bottom_mm) * ml_per_mm3;
        volume_ml += heater.chamber_volume_ml.value.value_or(drawn_ml);
        if (!heater.chamber_volume_ml.known())
            notes.push_back({"Chamber volume of {a} is not entered: taken from its drawn chamber.",
                             {},
                             {nameOfHeater(heater)}});
    }
    return volume_ml;
}

ItemOf antifreezeItem(Glycol glycol)
{
    ItemOf item;
    item.kind = ItemKind::antifreeze;
    if (glycol == Glycol::ethylene || glycol == Glycol::propylene) {
        const std::string word = glycol == Glycol::ethylene ? "ethylene" : "propylene";
        item.size_key = word;
        item.size = {"{a} glycol", {}, {word}};
    } else {
        item.missing = "kind of antifreeze not entered";
    }
    return item;
}

} // namespace

std::string heaterKey(const Heater& heater)
{
    const ItemOf item = heaterItem(heater);
    return item.missing.empty() ? std::string(keyOf(item.kind)) + "-" + item.size_key : std::string();
}

void addHeaters(const Sketch& sketch, PartRows& rows)
{
    for (const Heater& heater : sketch.heaters) {
        const UsedAt used = usedAt(refOf(heater), nameOfHeater(heater));
        rows.count(heaterItem(heater), used);
        PartRow& kit = rows.count({ItemKind::mounting_kit, {}, {}, {}}, used);
        kit.notes = {{"Brackets, bolts and washers as the heater's manual has them.", {}, {}}};
    }
}

void addConnections(const Sketch& sketch, PartRows& rows)
{
    std::int64_t threads = 0;
    for (const Shared<Hose>& hose : sketch.hoses) {
        for (const HoseEnd* end : {&hose->from, &hose->to}) {
            const std::optional<Onto> onto = ontoOf(sketch, *end);
            if (!onto)
                continue;
            rows.count(adapterItem(*onto, *end), usedAt(onto->part, onto->name));
            addElbow(*onto, *end, rows);
            ItemOf end_item = sizedItem(ItemKind::hose_end, end->bore_mm, {});
            end_item.size = ofPassage(boreAt(*hose, *end), end->bore_mm);
            PartRow& barb = rows.count(end_item, usedAt(onto->part, onto->name));
            barb.notes = {{"Not needed where adapter or nozzle has its own.", {}, {}}};
            ++threads;
        }
    }
    if (threads == 0)
        return;
    PartRow& sealant = rows.row({ItemKind::sealant, {}, {}, {}});
    sealant.thousandths = one_piece;
    sealant.notes = {{"One container, for {0} threads; fit for coolant.",
                      {{static_cast<double>(threads), Unit::none}},
                      {}}};
}

namespace {

/// Where another mixture is wanted: what the plan for it takes, new parts and all.
bool addPlannedCoolant(const Sketch& sketch, const Layout& layout, PartRows& rows)
{
    if (!sketch.coolant_plan.wanted_percent)
        return false;
    const CoolantMix mix = coolantMixOf(sketch, layout, Assumptions(sketch));
    const bool reached =
        mix.plan && (mix.plan->outcome == MixOutcome::fill || mix.plan->outcome == MixOutcome::drain ||
                     mix.plan->outcome == MixOutcome::rounds);
    if (!reached)
        return false;
    constexpr double thousandths_per_l = 1000;
    const auto add = [&](const ItemOf& item, double litres) {
        PartRow& row = rows.row(item);
        row.notes = {{"To come to {0} of antifreeze in {1}; drain {2} first.",
                      {{mix.plan->percent, Unit::percent},
                       {mix.plan->filled_l, Unit::litre},
                       {mix.plan->drain_l, Unit::litre}},
                      {}}};
        row.thousandths = static_cast<std::int64_t>(std::ceil(litres * thousandths_per_l - 1e-6));
    };
    if (mix.plan->antifreeze_l > 0)
        add(antifreezeItem(wantedGlycol(sketch)), mix.plan->antifreeze_l);
    if (mix.plan->water_l > 0)
        add({ItemKind::distilled_water, {}, {}, {}}, mix.plan->water_l);
    return true;
}

} // namespace

void addCoolant(const Sketch& sketch, const Layout& layout, PartRows& rows)
{
    if (sketch.hoses.empty() && sketch.heaters.empty())
        return;
    if (addPlannedCoolant(sketch, layout, rows))
        return;
    std::string missing;
    std::vector<Message> notes{
        {"Fills the new hoses and heater only: top up what is lost in the work.", {}, {}}};
    const std::optional<double> volume_ml = newVolume(sketch, layout, missing, notes);
    const bool plain = sketch.coolant.glycol == Glycol::none;
    const std::optional<double> percent =
        plain ? std::optional<double>(0) : sketch.coolant.volume_percent.value;
    if (missing.empty() && !percent)
        missing = "share of antifreeze not entered";
    const auto add = [&](ItemOf item, double share) {
        // A kind that is not entered is said before a quantity that is not known.
        if (item.missing.empty() && !missing.empty())
            item.missing = missing;
        PartRow& row = rows.row(item);
        row.notes = notes;
        row.thousandths.reset();
        if (volume_ml && percent)
            row.thousandths = static_cast<std::int64_t>(std::ceil(*volume_ml * share - 1e-6));
    };
    if (!plain)
        add(antifreezeItem(sketch.coolant.glycol), percent.value_or(0) / 100);
    add({ItemKind::distilled_water, {}, {}, {}}, 1 - percent.value_or(0) / 100);
}

} // namespace siphonwright
