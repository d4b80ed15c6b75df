#include "app/panels/access.h"

namespace siphonwright::panels {

namespace {

void addSheet(Fields<Sketch>& fields)
{
    fields.heading(FormText::tr("Sheet"));
    fields.text(
        FormText::tr("Title"), [](auto& s) -> auto& { return s.sheet.title; });
    fields.text(
        FormText::tr("Second title"), [](auto& s) -> auto& { return s.sheet.supplementary_title; });
    fields.text(
        FormText::tr("Vehicle or set"), [](auto& s) -> auto& { return s.sheet.vehicle; });
    fields.text(
        FormText::tr("Its serial number"), [](auto& s) -> auto& { return s.sheet.vehicle_serial; });
    fields.text(
        FormText::tr("Customer"), [](auto& s) -> auto& { return s.sheet.customer; });
    fields.text(
        FormText::tr("Number"), [](auto& s) -> auto& { return s.sheet.identification_number; });
    fields.text(
        FormText::tr("Revision"), [](auto& s) -> auto& { return s.sheet.revision; });
    fields.text(
        FormText::tr("Changed in it"), [](auto& s) -> auto& { return s.sheet.revision_change; });
    fields.text(
        FormText::tr("Date of issue"), [](auto& s) -> auto& { return s.sheet.date_of_issue; });
    fields.text(
        FormText::tr("Drawn by"), [](auto& s) -> auto& { return s.sheet.creator; });
    fields.last().tip = FormText::tr("Remembered for the next new drawing");
    fields.text(
        FormText::tr("Approved by"), [](auto& s) -> auto& { return s.sheet.approver; });
    fields.last().tip = FormText::tr("Remembered for the next new drawing");
    fields.text(
        FormText::tr("Owner"), [](auto& s) -> auto& { return s.sheet.legal_owner; });
    fields.last().tip = FormText::tr("Remembered for the next new drawing");
    fields.text(
        FormText::tr("Department"), [](auto& s) -> auto& { return s.sheet.department; });
    fields.last().tip = FormText::tr("Remembered for the next new drawing");
    fields.text(
        FormText::tr("Reference"), [](auto& s) -> auto& { return s.sheet.technical_reference; });
    fields.last().tip = FormText::tr("Remembered for the next new drawing");
    fields.text(
        FormText::tr("Document type"), [](auto& s) -> auto& { return s.sheet.document_type; });
    fields.last().tip = FormText::tr("Remembered for the next new drawing");
}

void addCoolant(Fields<Sketch>& fields)
{
    fields.heading(FormText::tr("Coolant"));
    fields.choice(
        FormText::tr("Antifreeze"),
        {FormText::tr("none, plain water"), FormText::tr("ethylene glycol"), FormText::tr("propylene glycol"),
         FormText::tr("not known")},
        [](auto& s) -> auto& { return s.coolant.glycol; });
    Field& share = fields.quantity(
        FormText::tr("Antifreeze by volume"), Unit::percent,
        [](auto& s) -> auto& { return s.coolant.volume_percent; });
    share.least = 0;
    share.most = 100;
    fields
        .quantity(
            FormText::tr("Cap pressure"), Unit::kPa,
            [](auto& s) -> auto& { return s.coolant.cap_pressure_kPa; })
        .least = 0;
    fields.text(
        FormText::tr("Water"), [](auto& s) -> auto& { return s.coolant.water; });
    fields.text(
        FormText::tr("Technology"), [](auto& s) -> auto& { return s.coolant.technology; });
    fields.text(
        FormText::tr("Colour"), [](auto& s) -> auto& { return s.coolant.colour; });
}

void addSite(Fields<Sketch>& fields)
{
    fields.heading(FormText::tr("Site"));
    fields.quantity(
        FormText::tr("Ambient"), Unit::degC, [](auto& s) -> auto& { return s.site.ambient_degC; });
    fields.quantity(
        FormText::tr("Coldest ambient"), Unit::degC,
        [](auto& s) -> auto& { return s.site.coldest_ambient_degC; });
    fields
        .quantity(
            FormText::tr("Wind"), Unit::m_per_s, [](auto& s) -> auto& { return s.site.wind_m_per_s; })
        .least = 0;
    fields.quantity(
        FormText::tr("Grade, nose up"), Unit::percent,
        [](auto& s) -> auto& { return s.site.grade_along_percent; });
    fields.quantity(
        FormText::tr("Grade, right side up"), Unit::percent,
        [](auto& s) -> auto& { return s.site.grade_across_percent; });
    fields
        .quantity(
            FormText::tr("Judged nose up and down to"), Unit::percent,
            [](auto& s) -> auto& { return s.site.envelope_along_percent; })
        .least = 0;
    fields.last().most = 30;
    fields
        .quantity(
            FormText::tr("Judged left and right to"), Unit::percent,
            [](auto& s) -> auto& { return s.site.envelope_across_percent; })
        .least = 0;
    fields.last().most = 30;
    fields.quantity(
        FormText::tr("Altitude"), Unit::metre, [](auto& s) -> auto& { return s.site.altitude_m; });
    fields.quantity(
        FormText::tr("Ground over datum"), Unit::mm, [](auto& s) -> auto& { return s.ground_z_mm; });
}

void addFilling(Fields<Sketch>& fields)
{
    fields.heading(FormText::tr("Filling"));
    fields.choice(
        FormText::tr("Full before"),
        {FormText::tr("block; hoses empty"), FormText::tr("nothing; drained"),
         FormText::tr("block and hoses"), FormText::tr("block, partly drained")},
        [](auto& s) -> auto& { return s.fill.start; });
    fields.last().tip =
        FormText::tr("Block and hoses: hoses and heater are filled before they are connected");
    fields.choice(
        FormText::tr("Filled"),
        {FormText::tr("at the filler"), FormText::tr("under vacuum"), FormText::tr("from below")},
        [](auto& s) -> auto& { return s.fill.by; });
    fields
        .quantity(
            FormText::tr("Air in each pre-filled hose"), Unit::ml,
            [](auto& s) -> auto& { return s.fill.hose_air_ml; })
        .least = 0;
    fields.last().most = 10'000;
    fields.last().tip =
        FormText::tr("Gets in where the hose is pushed on. Counts only for hoses filled before "
                     "they are connected; empty: none.");
    fields
        .quantity(
            FormText::tr("Coolant let out of the block"), Unit::litre,
            [](auto& s) -> auto& { return s.fill.drained_l; })
        .least = 0;
    fields.last().most = 10'000;
    fields.last().tip =
        FormText::tr("Before the new hoses are connected. Counts only for a block that is partly drained; "
                     "empty: down to the top of the lower port.");
    fields
        .quantity(
            FormText::tr("Coolant short by"), Unit::ml, [](auto& s) -> auto& { return s.fill.short_by_ml; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Head of the engine's pump"), Unit::kPa,
            [](auto& s) -> auto& { return s.fill.pump_head_kPa; })
        .least = 0;
    fields.last().most = 500;
}

} // namespace

Form sheetForm()
{
    Fields<Sketch> fields(sketchAccess());
    fields.choice(
        FormText::tr("Units"), {FormText::tr("mm and °C"), FormText::tr("inch and °F")},
        [](auto& s) -> auto& { return s.units; });
    addSheet(fields);
    addCoolant(fields);
    addSite(fields);
    addFilling(fields);
    fields.heading(FormText::tr("Notes"));
    fields.text(
        QString(), [](auto& s) -> auto& { return s.notes; }, Field::Kind::paragraph);
    return fields.take();
}

} // namespace siphonwright::panels
