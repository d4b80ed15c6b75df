#pragma once

#include <optional>
#include <string>
#include <vector>

/// What is kept of the work at the vehicle: steps ticked, readings taken, when a heater turned on and off.
/// Times are ISO 8601 ("2026-11-25T06:30:00Z", or without a zone where all are of one place); they are
/// always passed in. Every member here is a key of the file format under the same name.
namespace siphonwright {

/// A step of the checklist that was done.
struct Tick {
    std::string step; ///< id of the step, see core/commissioning/checklist.h
    std::string time; ///< ISO 8601
    std::string by;   ///< by whom, free text
    std::string note;
    std::string override_reason; ///< why it was done before what makes it safe; empty: in order
    friend bool operator==(const Tick&, const Tick&) = default;
};

/// A heater seen or heard to turn on or off.
struct SwitchSeen {
    std::string time; ///< ISO 8601
    std::string heater;
    bool on = true;
    friend bool operator==(const SwitchSeen&, const SwitchSeen&) = default;
};

/// The checklist as worked so far.
struct Checklist {
    std::vector<Tick> ticks;          ///< in the order in which they were ticked, a step once
    std::vector<SwitchSeen> switched; ///< by time; a heater's first "on" is when it was energised
    friend bool operator==(const Checklist&, const Checklist&) = default;
};

/// What was read at the vehicle at one time. What was not read is nothing, never zero.
struct Reading {
    std::string time;   ///< ISO 8601
    std::string heater; ///< id
    std::optional<double> ambient_degC;
    std::optional<double> inlet_degC;        ///< metal at the heater's inlet
    std::optional<double> outlet_degC;       ///< metal at the heater's outlet
    std::optional<double> hose_surface_degC; ///< rubber of the return hose at the engine, by infrared
    std::optional<double> engine_degC;       ///< of the block, beside the return port
    std::optional<double> current_A;         ///< in one conductor
    std::optional<double> voltage_V;         ///< at the heater while it is on
    std::optional<double> coolant_level_mm;  ///< over the cold full mark; under it is negative
    std::optional<bool> energised;           ///< whether power was on at the heater's supply
    std::string note;
    friend bool operator==(const Reading&, const Reading&) = default;
};

} // namespace siphonwright
