#pragma once

#include <span>
#include <string_view>

/// What can be wrong with a heater that was just fitted, how likely that is beforehand, and how one makes
/// sure.
///
/// Priors are our own choice, as weights against each other, after common practice with no published source;
/// this table is where they are edited.
namespace siphonwright {

enum class FaultKind {
    none,
    air,
    supply_valve_closed,
    return_valve_closed,
    valve_half_closed,
    hose_collapsed,
    hose_too_small,
    ports_swapped,
    flow_reversed,
    low_coolant,
    voltage_half,
    voltage_low,
    phase_missing,
    element_dead,
    thermostat_stuck_on,
    thermostat_stuck_off,
    element_scaled,
    cut_out_tripped,
    breaker_tripped,
    port_blocked,
    hose_kinked,
    check_valve,
    engine_thermostat_open,
    sensor_off,
    count
};

/// One row: {a} stands for the part's name.
struct FaultRow {
    FaultKind kind;
    std::string_view id;    ///< stable, used in --json
    std::string_view title; ///< "Air in {a}"
    double prior;           ///< weight
    std::string_view check; ///< what makes sure of it, whatever the readings say
    std::string_view fix;
};

std::span<const FaultRow> faultBook();
const FaultRow& faultRow(FaultKind kind);

} // namespace siphonwright
