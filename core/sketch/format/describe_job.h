#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<SheetDetails> T>
void describe(V& v, T& sheet)
{
    v.object("sheet_details", "Title block, after the data fields of ISO 7200");
    v(Field{"title", "Title"}, sheet.title);
    v(Field{"supplementary_title", "Second line of the title"}, sheet.supplementary_title);
    v(Field{"identification_number", "Number of the drawing"}, sheet.identification_number);
    v(Field{"revision", "Revision index"}, sheet.revision);
    v(Field{"date_of_issue", "Date of issue"}, sheet.date_of_issue);
    v(Field{"legal_owner", "Legal owner"}, sheet.legal_owner);
    v(Field{"department", "Responsible department"}, sheet.department);
    v(Field{"technical_reference", "Whom to ask"}, sheet.technical_reference);
    v(Field{"creator", "Who drew it"}, sheet.creator);
    v(Field{"approver", "Who approved it"}, sheet.approver);
    v(Field{"document_type", "Kind of document"}, sheet.document_type);
    v(Field{"customer", "For whom"}, sheet.customer);
    v(Field{"vehicle", "For which vehicle or set"}, sheet.vehicle);
    v(Field{"vehicle_serial", "Serial number of that vehicle or set"}, sheet.vehicle_serial);
    v(Field{"revision_change", "What this revision changed"}, sheet.revision_change);
}

template <class V, Is<Coolant> T>
void describe(V& v, T& coolant)
{
    v.object("coolant", "What the engine is filled with");
    v(Field{"glycol", "Kind of glycol"}, coolant.glycol);
    v(Field{"volume_percent", "Antifreeze by volume"}.within(0, 100, "%"), coolant.volume_percent);
    v(Field{"cap_pressure_kPa", "Of the pressure cap, over ambient"}.within(0, 1000, "kPa"),
      coolant.cap_pressure_kPa);
    v(Field{"water", "Kind of water"}, coolant.water);
    v(Field{"technology", "Kind of inhibitor"}, coolant.technology);
    v(Field{"colour", "Colour"}, coolant.colour);
}

template <class V, Is<Site> T>
void describe(V& v, T& site)
{
    v.object("site", "Where the vehicle or set stands");
    v(Field{"ambient_degC", "Usual cold-start temperature"}.within(-100, 100, "degC"), site.ambient_degC);
    v(Field{"coldest_ambient_degC", "Coldest temperature"}.within(-100, 100, "degC"),
      site.coldest_ambient_degC);
    v(Field{"wind_m_per_s", "Wind"}.within(0, 200, "m/s"), site.wind_m_per_s);
    v(Field{"grade_along_percent", "Grade lengthways"}.within(-100, 100, "%"), site.grade_along_percent);
    v(Field{"grade_across_percent", "Grade across"}.within(-100, 100, "%"), site.grade_across_percent);
    v(Field{"envelope_along_percent", "Judged on grades lengthways up to this, nose up and down"}.within(
          0, 30, "%"),
      site.envelope_along_percent);
    v(Field{"envelope_across_percent", "Judged on grades across up to this, to either side"}.within(0, 30,
                                                                                                    "%"),
      site.envelope_across_percent);
    v(Field{"altitude_m", "Height over the sea"}.within(-1000, 20'000, "m"), site.altitude_m);
}

template <class V, Is<Area> T>
void describe(V& v, T& area)
{
    v.object("area", "Something hot or moving that hoses keep clear of");
    v(identity("id", "Unique in the sketch"), area.id);
    v(Field{"name", "What people call it"}, area.name);
    v(Field{"what", "What it is"}.needed(), area.what);
    v(outline("outline", "Side outline, a closed polygon"), area.outline);
    v(coordinate("y_from_mm", "Where its depth begins; not known unless both are"), area.y_from_mm);
    v(coordinate("y_to_mm", "Where its depth ends"), area.y_to_mm);
    v(extent("clearance_mm", "Distance to keep; left out: the rule's own"), area.clearance_mm);
}

template <class V, Is<Photo> T>
void describe(V& v, T& photo)
{
    v.object("photo", "A photograph under the drawing");
    // A picture may be as large as the file itself.
    v(Field{"data_base64", "The image file in Base64"}.text(1, largest_file_bytes).needed(),
      photo.data_base64);
    v(Field{"top_left", "Where its top left corner lies"}.needed(), photo.top_left);
    v(Field{"mm_per_pixel", "Scale"}.within(1e-6, 100'000, "mm"), photo.mm_per_pixel);
    v(angle("rotation_deg", "Clockwise"), photo.rotation_deg);
    v(Field{"opacity", "0 invisible, 1 opaque"}.within(0, 1), photo.opacity);
    v(Field{"locked", "Whether it stays put while one draws"}, photo.locked);
}

template <class V, Is<LimitChange> T>
void describe(V& v, T& change)
{
    v.object("limit_change", "A rule's limit changed for this job");
    v(identity("rule", "Id of the rule"), change.rule);
    v(Field{"advice", "Limit for advice, in the rule's unit"}.within(-1e9, 1e9), change.advice);
    v(Field{"caution", "Limit for a caution, in the rule's unit"}.within(-1e9, 1e9), change.caution);
    v(Field{"stop", "Limit for a stop, in the rule's unit"}.within(-1e9, 1e9), change.stop);
    v(Field{"off", "The rule is not judged at all"}, change.off);
    v(Field{"reason", "Why, usually which manual"}, change.reason);
}

template <class V, Is<AssumptionChange> T>
void describe(V& v, T& change)
{
    v.object("assumption_change", "An assumed figure replaced for this job");
    v(identity("assumption", "Id of the assumption"), change.assumption);
    v(Field{"value", "In the assumption's own unit"}.within(-1e9, 1e9).needed(), change.value);
    v(Field{"reason", "Why"}, change.reason);
}

template <class V, Is<WarmUpPlan> T>
void describe(V& v, T& plan)
{
    v.object("warm_up_plan", "What a warm-up is computed for");
    v(temperature("start_degC", "Of engine and coolant; left out: the ambient temperature"), plan.start_degC);
    v(temperature("target_degC", "Of the engine block"), plan.target_degC);
    v(Field{"hours", "How long"}.within(0.1, 240, "h"), plan.hours);
}

template <class V, Is<FillPlan> T>
void describe(V& v, T& plan)
{
    v.object("fill_plan", "How the job is filled");
    v(Field{"start", "What is full before"}, plan.start);
    v(Field{"by", "Where coolant is filled in"}, plan.by);
    v(Field{"short_by_ml", "Less coolant than would reach the level"}.within(0, 1e6, "ml"), plan.short_by_ml);
    v(Field{"pump_head_kPa", "Head of the engine's pump between the loop's two ports"}.within(0, 500, "kPa"),
      plan.pump_head_kPa);
    v(Field{"hose_air_ml", "Air that gets into each pre-filled hose where it is pushed on; left out: none"}
          .within(0, 10'000, "ml"),
      plan.hose_air_ml);
    v(Field{"drained_l",
            "Drained block: coolant let out of it; left out: down to the top of the lower port's bore"}
          .within(0, 10'000, "l"),
      plan.drained_l);
}

} // namespace siphonwright
