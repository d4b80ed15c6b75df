#include "core/commissioning/fault_book.h"

#include <array>
#include <cstddef>

namespace siphonwright {
namespace {

using enum FaultKind;

constexpr std::array<FaultRow, static_cast<std::size_t>(FaultKind::count)> book = {{
    {none, "none", "Nothing wrong: it runs as drawn", 8,
     "Take another reading in half an hour and see whether it still fits.", "Nothing to do."},
    {air, "air", "Air in {a}", 3,
     "Heater off and locked out, system cold: open a bleed or loosen the hose at its crest; air comes first, "
     "then coolant.",
     "Let the air out at the crest, top up, and give the hose a rise all the way."},
    {supply_valve_closed, "supply-valve-closed", "The valve in {a} is closed", 1.5,
     "Heater off first. Look at the handle: across the hose means closed.", "Open it fully, then energise."},
    {return_valve_closed, "return-valve-closed", "The valve in {a} is closed", 1.5,
     "Heater off first. Look at the handle: across the hose means closed.", "Open it fully, then energise."},
    {valve_half_closed, "valve-half-closed", "The valve in {a} is half closed", 0.7,
     "Look at the handle: it has to lie along the hose.", "Open it fully."},
    {hose_collapsed, "hose-collapsed", "{a} has collapsed inside", 0.4,
     "Heater off, cold: press the hose between two fingers along its length; a soft or flat place gives way.",
     "Replace the hose."},
    {hose_too_small, "hose-too-small", "Hoses are a size smaller than drawn", 0.6,
     "Read the size printed on the hose, and measure the bore of a hose end.", "Fit the drawn size."},
    {ports_swapped, "ports-swapped", "The ports at the engine are swapped", 0.8,
     "Follow the hose from the heater's inlet: it has to lead to the low port.", "Change the hoses over."},
    {flow_reversed, "flow-reversed", "The hoses at the heater are exchanged, the flow runs backward", 0.8,
     "Follow the hose from the heater's upper nozzle: it has to lead to the high port.",
     "Change the hoses over at the heater."},
    {low_coolant, "low-coolant", "Coolant is under the return port", 1.5,
     "Cold: look at the level in the surge tank; under the mark means low.",
     "Power off. Find the leak, fill, bleed, top up."},
    {voltage_half, "voltage-half", "The supply has half the heater's voltage", 0.9,
     "An electrician compares the voltage at the heater with its rating plate.",
     "Have the heater supplied with its rated voltage."},
    {voltage_low, "voltage-low", "The supply is a phase voltage: 0.87 of what is drawn", 0.7,
     "An electrician compares the voltage at the heater with its rating plate.",
     "Have it supplied with its rated voltage, or take a heater made for this one."},
    {phase_missing, "phase-missing", "One phase is missing", 1,
     "An electrician measures the current in each of the three conductors.",
     "Have fuse, contactor and terminals looked at."},
    {element_dead, "element-dead", "The element is dead", 1,
     "Locked out: measure the resistance across the element; open means dead.", "Replace the element."},
    {thermostat_stuck_on, "thermostat-stuck-on", "The thermostat is stuck on", 0.5,
     "Watch whether it ever turns off above its point.", "Replace the thermostat."},
    {thermostat_stuck_off, "thermostat-stuck-off", "The thermostat is stuck off", 0.8,
     "Locked out and cold: measure across the thermostat; open below its turn-on point means stuck.",
     "Replace the thermostat."},
    {element_scaled, "element-scaled", "The element is scaled", 0.5,
     "Drain and take the element out: a crust is scale. The other readings hardly show it.",
     "Replace the element; flush; deionised or distilled water only."},
    {cut_out_tripped, "cut-out-tripped", "The over-temperature cut-out has tripped", 1,
     "Locked out: measure across the cut-out; open means tripped. Find out why before it is reset.",
     "Mend what made it hot, then reset it."},
    {breaker_tripped, "breaker-tripped", "The breaker or the ground-fault device has tripped", 1.2,
     "Look at the breaker and the ground-fault device. An electrician measures insulation before it is "
     "reset.",
     "Have the fault to ground found first."},
    {port_blocked, "port-blocked", "Scale or sediment blocks {a}", 0.8,
     "Cold and drained: probe the opening through the fitting.", "Clean the opening, flush the engine."},
    {hose_kinked, "hose-kinked", "{a} is kinked", 0.8,
     "Follow the hose by eye and hand, behind brackets too.", "Reroute with a larger bend, or an elbow."},
    {check_valve, "check-valve", "There is a check valve in {a}", 0.5,
     "Look for an arrow on a fitting in the hose.", "Take it out: a few mm of head do not open it."},
    {engine_thermostat_open, "engine-thermostat-open", "The engine's own thermostat is stuck open", 0.6,
     "Feel the upper radiator hose: warm with the engine cold means that it lets coolant through.",
     "Replace the engine's thermostat."},
    {sensor_off, "sensor-off", "The remote sensor hangs in the air", 0.6,
     "Look at the sensor: it has to sit tight on the engine, away from the return port.", "Fasten it."},
}};

} // namespace

std::span<const FaultRow> faultBook()
{
    return book;
}

const FaultRow& faultRow(FaultKind kind)
{
    return book[static_cast<std::size_t>(kind)];
}

} // namespace siphonwright
