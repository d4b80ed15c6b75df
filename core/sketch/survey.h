#pragma once

#include <optional>
#include <string>

/// What was measured at the vehicle before anything is drawn, as it was measured. What was not measured has
/// no value. drawFromSurvey() in core/sketch/draw_survey.h turns it into the drawing.
///
/// Everything runs along the engine's length, whichever way the engine stands in the vehicle. Station 0 is
/// the front face of the block; the frame rail is its upper edge (or a straight edge laid on the mounts).
/// Lengths in mm; heights with the tape held plumb.
namespace siphonwright {

enum class PortKind;
enum class ThermostatSide;
enum class Glycol;

enum class SurveyFrom { frame_rail, floor };

/// One lettered place.
struct SurveyPoint {
    std::optional<double> height_mm; ///< over the frame rail, negative under it, or over the floor
    SurveyFrom from = SurveyFrom::frame_rail;
    std::optional<double> along_mm;  ///< station along the frame rail, positive towards the engine's rear
    std::optional<double> across_mm; ///< out from the crankshaft, positive to the engine's right side
    friend bool operator==(const SurveyPoint&, const SurveyPoint&) = default;
};

/// Where an opening points, as the engine stands: its own front, rear, left and right side.
enum class SurveyFacing { front, rear, left, right, up, down };

struct SurveyPort {
    std::optional<SurveyPoint> at; ///< middle of the opening
    std::optional<PortKind> kind;
    std::string thread;
    std::optional<double> bore_mm;
    std::optional<SurveyFacing> facing;
    std::optional<double> tilt_deg; ///< over the horizontal, of one that points to a side
    friend bool operator==(const SurveyPort&, const SurveyPort&) = default;
};

struct Survey {
    std::string by;
    std::string date; ///< ISO 8601
    std::optional<SurveyPoint> jacket_lowest;
    std::optional<SurveyPoint> jacket_highest;
    std::optional<SurveyPort> supply_port;
    std::optional<SurveyPort> return_port;
    std::optional<SurveyPoint> thermostat;
    std::optional<SurveyPoint> tank_cap;
    std::optional<SurveyPoint> mark_cold_min;
    std::optional<SurveyPoint> mark_cold_full;
    std::optional<SurveyPoint> mark_hot;
    std::optional<double> block_length_mm;    ///< front face to rear face of the block
    std::optional<double> rail_over_floor_mm; ///< at station 0
    std::optional<double> ride_drop_mm;       ///< how much further the frame sinks at lowest ride height
    std::optional<double> ports_apart_mm;     ///< straight from opening to opening: a check of the others
    /// By inclinometer; positive: higher at the engine's front.
    std::optional<double> floor_slope_deg;
    std::optional<double> rail_slope_deg;
    std::optional<double> engine_slope_deg; ///< of the crankshaft's line
    std::optional<ThermostatSide> thermostat_side;
    std::optional<double> supply_V; ///< at the bay
    std::optional<Glycol> glycol;   ///< in it now
    std::optional<double> glycol_percent;
    std::string coolant_colour;
    std::string notes;
    friend bool operator==(const Survey&, const Survey&) = default;
};

} // namespace siphonwright
