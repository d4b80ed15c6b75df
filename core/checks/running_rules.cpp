#include "core/checks/judges.h"

#include <array>

namespace siphonwright {
namespace {

constexpr std::string_view trade = "common practice, no published source";
constexpr std::string_view balance =
    "the balance of driving and resisting heads, computed from the drawing (core/physics/circulation.h)";
constexpr std::optional<double> none = std::nullopt;

constexpr std::array running_rules = {
    Rule{"stalled",
         "Loop stalls",
         balance,
         "A heater whose coolant stands still overheats while the engine stays cold.",
         "Raise the return port over the heater, lower the heater, and lead the return so that it rises.",
         Sense::over,
         Unit::none,
         {},
         Tilt::shifts,
         judges::stalled,
         Needs::circulation},
    Rule{"reverse-circulation",
         "Loop runs backward",
         balance,
         "Warm coolant that leaves by the supply hose comes to the engine at its lowest port and drives "
         "little.",
         "Lead the return straight up from the outlet and the supply straight down to the inlet.",
         Sense::over,
         Unit::none,
         {},
         Tilt::shifts,
         judges::reverseCirculation,
         Needs::circulation},
    Rule{"part-takes-loss",
         "One part takes much of the loop's head",
         "own choice: 30 %; losses after Hooper (1981, 1988)",
         "The loop has a few millimetres of head; a part that takes a third of it rules the flow.",
         "Use a part with a larger bore.",
         Sense::over,
         Unit::ratio,
         {none, 0.3, none},
         Tilt::same,
         judges::partTakesLoss,
         Needs::circulation},
    Rule{"much-power",
         "Much power for heaters without a pump",
         "own choice: 5 kW in all",
         "So much heat is hard to carry away by a few millimetres of head.",
         "Consider a heater with a pump.",
         Sense::over,
         Unit::watt,
         {5000, none, none},
         Tilt::same,
         judges::muchPower},
    Rule{"outlet-over-limit",
         "Coolant leaves the heater too hot",
         trade,
         "Coolant hotter than 180 degF at the outlet boils on the element and ages hoses and coolant.",
         "Let more coolant flow: a larger bore, shorter hoses, a lower heater, ports farther apart.",
         Sense::over,
         Unit::degC,
         {none, none, 82.2},
         Tilt::same,
         judges::outletOverLimit,
         Needs::warm_up},
    Rule{"boiling-margin",
         "Close to boiling",
         "own choice: 5 K; boiling point after Raoult's law",
         "Steam drives the coolant out of the chamber and bares the element.",
         "Let more coolant flow, and check the pressure cap.",
         Sense::under,
         Unit::kelvin,
         {none, none, 5},
         Tilt::same,
         judges::boilingMargin,
         Needs::warm_up},
    Rule{"bore-starves-flow",
         "Hose starves the flow",
         "computed: the smallest stock bore with which outlet and cycles keep to their limits",
         "A hose too small for this heater and these heights lets too little through.",
         "Use a larger hose and larger hose ends.",
         Sense::under,
         Unit::mm,
         {},
         Tilt::same,
         judges::boreStarvesFlow,
         Needs::warm_up},
    Rule{"cycles-over-4",
         "Heater cycles too often",
         trade,
         "A heater that turns itself off and on warms itself, not the engine, and wears out its thermostat.",
         "Choose ports farther apart, a larger bore, or a smaller heater.",
         Sense::over,
         Unit::none,
         {none, 4, none},
         Tilt::same,
         judges::cyclesOver4,
         Needs::warm_up},
    Rule{"target-not-reached",
         "Engine does not get warm enough",
         "computed from heat loss and power",
         "In this cold and wind the engine loses what the heater gives before it is warm enough.",
         "Take a larger heater, keep the wind off the engine, or be content with less.",
         Sense::under,
         Unit::degC,
         {},
         Tilt::same,
         judges::targetNotReached,
         Needs::warm_up},
};

} // namespace

std::span<const Rule> runningRules()
{
    return running_rules;
}

} // namespace siphonwright
