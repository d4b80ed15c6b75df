#pragma once

#include "core/geometry/vec.h"
#include "core/sketch/dimension.h"
#include "core/sketch/quote.h"
#include "core/sketch/record.h"
#include "core/sketch/shared.h"
#include "core/sketch/supply.h"
#include "core/sketch/survey.h"

#include <optional>
#include <string>
#include <vector>

/// The document: a plain value that can be copied, compared, written and read back to an equal value.
/// Lengths in mm in the drawing's axes (core/geometry/vec.h); other units are named. Every member here is a
/// key of the file format under the same name.
namespace siphonwright {

/// Where an entered fact comes from. Template values are typical until somebody confirms them.
enum class Source { measured, manual, typical, assumed };
constexpr bool isConfirmed(Source source)
{
    return source == Source::measured || source == Source::manual;
}

/// A fact that a verdict can hang on. No value means: not entered, so what needs it is not judged.
template <class T>
struct Fact {
    std::optional<T> value;
    Source source = Source::assumed;

    bool known() const { return value.has_value(); }
    friend bool operator==(const Fact&, const Fact&) = default;
};

enum class UnitChoice { metric, inch };

/// Title block, after the data fields of ISO 7200.
struct SheetDetails {
    std::string title;
    std::string supplementary_title;
    std::string identification_number;
    std::string revision;
    std::string date_of_issue;
    std::string legal_owner;
    std::string department;
    std::string technical_reference;
    std::string creator;
    std::string approver;
    std::string document_type;
    std::string customer;
    std::string vehicle;
    std::string vehicle_serial;  ///< of the unit: vehicle, set or boat
    std::string revision_change; ///< what this revision changed, in a line
    friend bool operator==(const SheetDetails&, const SheetDetails&) = default;
};

enum class Arrangement {
    inline_3,
    inline_4,
    inline_5,
    inline_6,
    vee_6,
    vee_8,
    vee_12,
    vee_16,
    horizontal,
    slanted_inline
};
enum class Material { iron, aluminium };
enum class EngineEnd { left, right };        ///< as seen on the drawing
enum class ThermostatSide { outlet, inlet }; ///< of the engine's coolant circuit

struct ThermostatHousing {
    Vec3 position;
    Source position_source = Source::assumed;
    Fact<ThermostatSide> side;
    Fact<bool> bleed_hole;
    friend bool operator==(const ThermostatHousing&, const ThermostatHousing&) = default;
};

struct Engine {
    std::string name;
    std::string serial_number; ///< from its plate
    Arrangement arrangement = Arrangement::inline_6;
    std::vector<Vec2> outline;      ///< side outline, closed polygon
    std::vector<Vec2> jacket;       ///< water jacket's side outline, closed polygon; its lowest and highest
                                    ///< points are the jacket's levels
    double jacket_y_from_mm = -150; ///< the jacket's depth range
    double jacket_y_to_mm = 150;
    Source jacket_source = Source::assumed;
    Fact<double> displacement_l;
    Fact<double> mass_kg;
    Fact<Material> material;
    Fact<double> coolant_volume_l;
    EngineEnd front = EngineEnd::left;
    int heading_deg = 0;        ///< 0, 90, 180 or 270: engine front clockwise from vehicle front
    double mount_angle_deg = 0; ///< positive: rear lower
    double lean_deg = 0;        ///< positive: top towards the engine's right side
    std::optional<ThermostatHousing> thermostat;
    friend bool operator==(const Engine&, const Engine&) = default;
};

/// Filler or surge tank. The coolant level is a level plane through it at these z, above the position's x, y.
struct SurgeTank {
    Vec3 position;
    Source position_source = Source::assumed;
    Fact<double> cold_min_mm;
    Fact<double> cold_full_mm;
    Fact<double> hot_mm;
    friend bool operator==(const SurgeTank&, const SurgeTank&) = default;
};

/// A direction by two angles, see direction() in core/geometry/vec.h.
struct Direction {
    double azimuth_deg = 0;
    double elevation_deg = 0;
    friend bool operator==(const Direction&, const Direction&) = default;
};

/// An elbow or angled adapter screwed on after the straight part of a stub.
struct StubElbow {
    Direction direction;   ///< where the hose leaves
    double radius_mm = 20; ///< centreline radius
    double leg_mm = 30;    ///< from the corner to the hose end's stop
    friend bool operator==(const StubElbow&, const StubElbow&) = default;
};

/// The straight metal part between an opening and the hose: along its axis, then perhaps an elbow.
struct Stub {
    double length_mm = 30;
    std::optional<StubElbow> elbow;
    friend bool operator==(const Stub&, const Stub&) = default;
};

enum class PortRole { supply, return_, sensor, spare };
enum class PortKind { drain_port, core_plug, lower_hose_tee, head_port, cabin_line };

struct Port {
    Id id;
    std::string name;
    PortRole role = PortRole::spare;
    PortKind kind = PortKind::drain_port;
    std::optional<bool> cabin_line_open; ///< shut-off of a cabin heater line; nothing: not known
    Vec3 position;                       ///< where coolant enters or leaves the engine
    Source position_source = Source::assumed;
    Direction axis; ///< where the thread points, out of the engine
    Stub stub;
    std::string thread;
    Fact<double> bore_mm;
    friend bool operator==(const Port&, const Port&) = default;
};

enum class HeaterThermostat { inlet, outlet, remote };
enum class Mounting { frame, engine };

/// Positions a heater's manual allows.
struct AllowedPositions {
    bool vertical = true;
    bool horizontal = false;
    bool inclined = false;
    friend bool operator==(const AllowedPositions&, const AllowedPositions&) = default;
};

/// A heater's nozzle in the heater's own axes (upright heater: same as the drawing's), from its centre.
struct Nozzle {
    Vec3 offset;
    Direction axis;
    Stub stub;
    std::string thread;
    Fact<double> bore_mm;
    friend bool operator==(const Nozzle&, const Nozzle&) = default;
};

struct CutOut {
    double trip_degC = 110;
    bool manual_reset = true;
    friend bool operator==(const CutOut&, const CutOut&) = default;
};

/// A tank heater: an upright cylinder about its centre, tilted in the drawing plane, then turned about z.
struct Heater {
    Id id;
    std::string name;
    std::string serial_number; ///< from its plate
    Vec3 position;             ///< of the body's centre
    Source position_source = Source::assumed;
    double tilt_deg = 0; ///< from upright, positive to the right: 0 vertical, +-90 horizontal
    double turn_deg = 0; ///< about z after the tilt, from +x towards +y
    Fact<AllowedPositions> allowed_positions;
    double length_mm = 300; ///< body along its axis
    double diameter_mm = 90;
    double chamber_bottom_mm = -140; ///< along the axis from the centre
    double chamber_top_mm = 140;
    double chamber_bore_mm = 80;
    Fact<double> element_top_mm; ///< along the axis from the centre: coolant must stand over it
    Nozzle inlet;
    Nozzle outlet;
    Fact<double> power_W;
    Fact<double> rated_V;
    Fact<double> actual_V;
    int phases = 1; ///< 1 or 3
    HeaterThermostat thermostat = HeaterThermostat::inlet;
    Fact<double> on_degC;
    Fact<double> off_degC;
    std::optional<CutOut> cut_out;
    Fact<double> chamber_volume_ml;
    Fact<double> manual_min_bore_mm;
    Fact<double> manual_min_drop_mm;
    Fact<Mounting> mounting;
    friend bool operator==(const Heater&, const Heater&) = default;
};

enum class HoseRole { supply, return_ };
enum class NozzleKind { inlet, outlet };

/// What a hose's end is pushed onto: a port, a heater's nozzle, or nothing yet.
struct HoseEnd {
    Id port;   ///< empty unless on a port
    Id heater; ///< empty unless on a heater
    NozzleKind nozzle = NozzleKind::inlet;
    Vec3 open_at;              ///< where an end that is on nothing lies
    double bore_mm = 15;       ///< of the hose end (barb) itself
    double engagement_mm = 30; ///< length pushed over it

    bool connected() const { return !port.empty() || !heater.empty(); }
    friend bool operator==(const HoseEnd&, const HoseEnd&) = default;
};

enum class BendKind { hose, moulded_elbow, metal_elbow };

struct RoutePoint {
    Vec3 at;
    double radius_mm = 100; ///< centreline bend radius
    BendKind bend = BendKind::hose;
    friend bool operator==(const RoutePoint&, const RoutePoint&) = default;
};

enum class InlineKind { isolation_valve, bleed, drain, lift_check_valve, swing_check_valve, reducer };

/// A part in a hose at a distance along it from where the hose starts.
struct InlinePart {
    InlineKind kind = InlineKind::isolation_valve;
    double along_mm = 0;
    double length_mm = 60;
    double bore_mm = 15; ///< its own bore; a reducer: the bore from here on
    bool open = true;    ///< valves and bleeds
    friend bool operator==(const InlinePart&, const InlinePart&) = default;
};

/// A hose in the direction of flow: supply from engine to heater, return from heater to engine.
struct Hose {
    Id id;
    std::string name;
    HoseRole role = HoseRole::supply;
    HoseEnd from;
    HoseEnd to;
    std::vector<RoutePoint> points; ///< between the ends
    Fact<double> bore_mm;
    double wall_mm = 4;
    Fact<double> min_bend_radius_mm; ///< to the inside of the bend; not entered: by bores
    double insulation_mm = 0;
    std::vector<double> clips_mm; ///< distances along from where the hose starts
    std::vector<InlinePart> parts;
    friend bool operator==(const Hose&, const Hose&) = default;
};

enum class Glycol { none, ethylene, propylene, unknown };

struct Coolant {
    Glycol glycol = Glycol::ethylene;
    Fact<double> volume_percent;
    Fact<double> cap_pressure_kPa; ///< over ambient
    std::string water;             ///< "distilled", "tap", ...
    std::string technology;
    std::string colour;
    friend bool operator==(const Coolant&, const Coolant&) = default;
};

struct Site {
    Fact<double> ambient_degC;
    Fact<double> coldest_ambient_degC;
    Fact<double> wind_m_per_s;
    double grade_along_percent = 0; ///< where it usually stands: nose-up, and the right side up
    double grade_across_percent = 0;
    double envelope_along_percent = 3; ///< judged up to these grades, up and down, left and right
    double envelope_across_percent = 2;
    Fact<double> altitude_m;
    friend bool operator==(const Site&, const Site&) = default;
};

enum class Hazard { exhaust, turbo, heat_shield, belt, fan, shaft, steering, suspension, other };

/// Something hot or moving that hoses keep clear of.
struct Area {
    Id id;
    std::string name;
    Hazard what = Hazard::exhaust;
    std::vector<Vec2> outline;
    std::optional<double> y_from_mm; ///< depth not known unless both are
    std::optional<double> y_to_mm;
    std::optional<double> clearance_mm; ///< nothing: the rule's own
    friend bool operator==(const Area&, const Area&) = default;
};

/// A photograph under the drawing, kept inside the file.
struct Photo {
    std::string data_base64;
    Vec2 top_left;
    double mm_per_pixel = 1;
    double rotation_deg = 0;
    double opacity = 0.5;
    bool locked = false;
    friend bool operator==(const Photo&, const Photo&) = default;
};

/// A rule's limit changed for this job, with the reason (usually the heater's or engine's manual).
struct LimitChange {
    std::string rule;
    std::optional<double> advice;
    std::optional<double> caution;
    std::optional<double> stop;
    bool off = false; ///< the rule is not judged at all
    std::string reason;
    friend bool operator==(const LimitChange&, const LimitChange&) = default;
};

/// An assumed figure replaced for this job, with the reason.
struct AssumptionChange {
    std::string assumption; ///< its id
    double value = 0;       ///< in the assumption's own unit
    std::string reason;
    friend bool operator==(const AssumptionChange&, const AssumptionChange&) = default;
};

/// What a warm-up is computed for.
struct WarmUpPlan {
    std::optional<double> start_degC; ///< of engine and coolant; nothing: the ambient temperature
    double target_degC = 32;          ///< of the block; 90 degF is stand-by practice (NFPA 110, from memory)
    double hours = 24;
    friend bool operator==(const WarmUpPlan&, const WarmUpPlan&) = default;
};

/// Block full and new hoses empty is the usual retrofit. Pre-filled: hoses and heater chamber are filled with
/// coolant before they are connected to the full block. Drained: some coolant was let out of the block before
/// the new, empty hoses were connected.
enum class FillStart { block_full, all_empty, hoses_full, block_drained };
enum class FillBy { filler, vacuum, below };

/// How the job is filled.
struct FillPlan {
    FillStart start = FillStart::block_full;
    FillBy by = FillBy::filler;
    double short_by_ml = 0;     ///< less coolant than would reach the level
    Fact<double> pump_head_kPa; ///< of the engine's pump between the loop's two ports; not entered: assumed
    /// Pre-filled: air that gets into each hose where it is pushed on; not entered: none.
    std::optional<double> hose_air_ml;
    /// Drained: coolant that was let out of the engine; not entered: down to the top of the lower port's
    /// bore.
    std::optional<double> drained_l;
    friend bool operator==(const FillPlan&, const FillPlan&) = default;
};

struct Sketch {
    SheetDetails sheet;
    UnitChoice units = UnitChoice::metric;
    std::optional<Engine> engine;
    std::optional<SurgeTank> tank;
    std::vector<Port> ports;
    std::vector<Heater> heaters;
    std::vector<Shared<Hose>> hoses;
    Coolant coolant;
    Site site;
    std::vector<Shared<Area>> areas;
    std::optional<double> ground_z_mm; ///< ground at lowest ride height
    std::optional<Shared<Photo>> photo;
    std::vector<Reading> readings;
    Checklist checklist;
    std::string notes;
    std::vector<LimitChange> limits;
    std::vector<AssumptionChange> assumptions;
    WarmUpPlan plan;
    FillPlan fill;
    std::optional<Survey> survey;
    Supply supply;
    CoolantPlan coolant_plan;
    std::optional<Shared<Quote>> quote; ///< nothing: no estimate was begun
    std::vector<Dimension> dimensions;
    friend bool operator==(const Sketch&, const Sketch&) = default;

    const Port* port(const Id& id) const;
    const Heater* heater(const Id& id) const;
    const Hose* hose(const Id& id) const;
    const Area* area(const Id& id) const;
};

} // namespace siphonwright
