#pragma once

#include "core/sketch/format/describe_dimension.h"
#include "core/sketch/format/describe_engine.h"
#include "core/sketch/format/describe_heater.h"
#include "core/sketch/format/describe_hose.h"
#include "core/sketch/format/describe_job.h"
#include "core/sketch/format/describe_quote.h"
#include "core/sketch/format/describe_record.h"
#include "core/sketch/format/describe_supply.h"
#include "core/sketch/format/describe_survey.h"

namespace siphonwright {

constexpr std::string_view format_name = "siphonwright"; ///< under the key "format"

template <class V, Is<Sketch> T>
void describe(V& v, T& sketch)
{
    v.object("sketch", "A coolant heater installation in side elevation; lengths in mm");
    v(Field{"sheet", "Title block"}, sketch.sheet);
    v(Field{"units", "What people see; the file itself is always metric"}, sketch.units);
    v(Field{"engine", "Left out: none yet"}, sketch.engine);
    v(Field{"tank", "Left out: none yet"}, sketch.tank);
    v(Field{"ports", "Openings into the engine"}, sketch.ports);
    v(Field{"heaters", "Heaters"}, sketch.heaters);
    v(Field{"hoses", "Hoses"}.items(0, 500), sketch.hoses);
    v(Field{"coolant", "Coolant"}, sketch.coolant);
    v(Field{"site", "Site"}, sketch.site);
    v(Field{"areas", "What hoses keep clear of"}, sketch.areas);
    v(coordinate("ground_z_mm", "Ground at lowest ride height"), sketch.ground_z_mm);
    v(Field{"photo", "Left out: none"}, sketch.photo);
    v(Field{"readings", "What was read at the vehicle"}, sketch.readings);
    v(Field{"checklist", "The work at the vehicle, as far as it is done"}, sketch.checklist);
    v(Field{"notes", "In words"}, sketch.notes);
    v(Field{"limits", "Limits changed for this job"}, sketch.limits);
    v(Field{"assumptions", "Assumed figures replaced for this job"}, sketch.assumptions);
    v(Field{"plan", "What a warm-up is computed for"}, sketch.plan);
    v(Field{"fill", "How the job is filled"}, sketch.fill);
    v(Field{"survey", "Left out: nothing was measured before drawing"}, sketch.survey);
    v(Field{"supply", "Electrical supply; left out: nothing entered"}, sketch.supply);
    v(Field{"coolant_plan", "The coolant that is wanted; left out: nothing entered"}, sketch.coolant_plan);
    v(Field{"quote", "For parts list and estimate; left out: none begun"}, sketch.quote);
    v(Field{"dimensions", "Dimensions that were drawn"}.items(0, 1000), sketch.dimensions);
}

} // namespace siphonwright
