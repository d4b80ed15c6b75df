#pragma once

#include "core/sketch/sketch.h"

#include <array>
#include <optional>
#include <string_view>
#include <type_traits>

/// The word that stands for each choice in files and in machine-readable output.
namespace siphonwright {

/// Words of an enum in the order of its values; every enum of the document has one.
template <class E>
struct Words;

#define SIPHONWRIGHT_WORDS(Enum, last, ...)                                                                  \
    template <>                                                                                              \
    struct Words<Enum> {                                                                                     \
        static constexpr auto list = std::to_array<std::string_view>({__VA_ARGS__});                         \
        static_assert(list.size() == static_cast<std::size_t>(Enum::last) + 1);                              \
    }

SIPHONWRIGHT_WORDS(Source, assumed, "measured", "manual", "typical", "assumed");
SIPHONWRIGHT_WORDS(UnitChoice, inch, "metric", "inch");
SIPHONWRIGHT_WORDS(Arrangement, slanted_inline, "inline_3", "inline_4", "inline_5", "inline_6", "vee_6",
                   "vee_8", "vee_12", "vee_16", "horizontal", "slanted_inline");
SIPHONWRIGHT_WORDS(Material, aluminium, "iron", "aluminium");
SIPHONWRIGHT_WORDS(EngineEnd, right, "left", "right");
SIPHONWRIGHT_WORDS(ThermostatSide, inlet, "outlet", "inlet");
SIPHONWRIGHT_WORDS(PortRole, spare, "supply", "return", "sensor", "spare");
SIPHONWRIGHT_WORDS(PortKind, cabin_line, "drain_port", "core_plug", "lower_hose_tee", "head_port",
                   "cabin_line");
SIPHONWRIGHT_WORDS(HeaterThermostat, remote, "inlet", "outlet", "remote");
SIPHONWRIGHT_WORDS(Mounting, engine, "frame", "engine");
SIPHONWRIGHT_WORDS(HoseRole, return_, "supply", "return");
SIPHONWRIGHT_WORDS(NozzleKind, outlet, "inlet", "outlet");
SIPHONWRIGHT_WORDS(BendKind, metal_elbow, "hose", "moulded_elbow", "metal_elbow");
SIPHONWRIGHT_WORDS(InlineKind, reducer, "isolation_valve", "bleed", "drain", "lift_check_valve",
                   "swing_check_valve", "reducer");
SIPHONWRIGHT_WORDS(Glycol, unknown, "none", "ethylene", "propylene", "unknown");
SIPHONWRIGHT_WORDS(FillStart, block_drained, "block_full", "all_empty", "hoses_full", "block_drained");
SIPHONWRIGHT_WORDS(FillBy, below, "filler", "vacuum", "below");
SIPHONWRIGHT_WORDS(SurveyFrom, floor, "frame_rail", "floor");
SIPHONWRIGHT_WORDS(SurveyFacing, down, "front", "rear", "left", "right", "up", "down");
SIPHONWRIGHT_WORDS(ConductorMaterial, aluminium, "copper", "aluminium");
SIPHONWRIGHT_WORDS(PriceUnit, gallon, "each", "m", "ft", "l", "qt", "gal");
SIPHONWRIGHT_WORDS(Hazard, other, "exhaust", "turbo", "heat_shield", "belt", "fan", "shaft", "steering",
                   "suspension", "other");
SIPHONWRIGHT_WORDS(DimensionKind, slope, "horizontal", "vertical", "along", "slope");
SIPHONWRIGHT_WORDS(PartKind, dimension, "none", "engine", "engine_corner", "jacket", "jacket_corner",
                   "thermostat", "tank", "port", "heater", "hose", "hose_point", "hose_end", "inline_part",
                   "clip", "area", "area_corner", "ground", "photo", "dimension");

#undef SIPHONWRIGHT_WORDS

/// Empty for a value that is none of the enum's own.
template <class E>
constexpr std::string_view wordFor(E value)
{
    const auto index = static_cast<std::size_t>(value);
    return index < Words<E>::list.size() ? Words<E>::list[index] : std::string_view{};
}

template <class E>
constexpr std::optional<E> fromWord(std::string_view word)
{
    for (std::size_t i = 0; i < Words<E>::list.size(); ++i) {
        if (Words<E>::list[i] == word)
            return static_cast<E>(i);
    }
    return std::nullopt;
}

} // namespace siphonwright
