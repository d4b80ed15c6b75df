#include "core/quantity/units.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <array>

namespace siphonwright {
namespace {

constexpr double ml_per_cubic_inch = mm_per_inch * mm_per_inch * mm_per_inch / 1000;
constexpr double ml_per_gallon = 231 * ml_per_cubic_inch;
constexpr double ml_per_quart = ml_per_gallon / 4;
constexpr double ml_per_pint = ml_per_gallon / 8;
constexpr double ml_per_fluid_ounce = ml_per_gallon / 128;
constexpr double kg_per_pound = 0.45359237;
constexpr double kPa_per_psi = kg_per_pound * 9.80665 / (mm_per_inch * mm_per_inch) * 1000;
constexpr double m_per_s_per_mph = 1609.344 / 3600;
/// Ohms per km for one ohm per 1000 ft.
constexpr double per_km_of_per_kft = 1 / 0.3048;

constexpr Shown inches = {" in", mm_per_inch, 0, 4};

constexpr std::array<UnitForm, 28> forms = {{
    {Unit::none, "", {"", 1, 0, 3}, {"", 1, 0, 3}, "a plain number such as 3 or 1.5"},
    {Unit::mm, "mm", {" mm"}, inches, "a length such as 19 mm, 1.9 cm, 3/4 in or 2 ft 3 1/2 in"},
    {Unit::head, "mm_head", {" mm"}, {" in", mm_per_inch, 0, 2}, "a head such as 9 mm or 0.35 in"},
    {Unit::ml,
     "ml",
     {" ml", 1, 0, 0},
     {" fl oz", ml_per_fluid_ounce},
     "a volume such as 250 ml, 1.2 l, 8 fl oz or 2 qt"},
    {Unit::litre, "l", {" l"}, {" qt", ml_per_quart / 1000}, "a volume such as 12 l, 500 ml, 2 qt or 3 gal"},
    {Unit::kg, "kg", {" kg"}, {" lb", kg_per_pound}, "a mass such as 450 kg or 990 lb"},
    {Unit::degC, "degC", {" °C"}, {" °F", 5.0 / 9, -32}, "a temperature such as 82 °C or 180 °F"},
    {Unit::kelvin, "K", {" K"}, {" °F", 5.0 / 9}, "a temperature difference such as 5 K or 9 °F"},
    {Unit::watt, "W", {" W", 1, 0, 0}, {" W", 1, 0, 0}, "a power such as 1500 W or 1.5 kW"},
    {Unit::kWh, "kWh", {" kWh"}, {" kWh"}, "an energy such as 12 kWh"},
    {Unit::volt, "V", {" V"}, {" V"}, "a voltage such as 120 V"},
    {Unit::ampere, "A", {" A"}, {" A"}, "a current such as 12.5 A"},
    {Unit::kPa, "kPa", {" kPa"}, {" psi", kPa_per_psi}, "a pressure such as 103 kPa, 1 bar or 15 psi"},
    {Unit::Pa, "Pa", {" Pa"}, {" Pa"}, "a pressure such as 88 Pa"},
    {Unit::m_per_s,
     "m/s",
     {" m/s", 1, 0, 2},
     {" mph", m_per_s_per_mph},
     "a speed such as 4 m/s, 15 km/h or 9 mph"},
    {Unit::percent, "%", {" %"}, {" %"}, "a percentage such as 50 %"},
    {Unit::degree, "deg", {"°"}, {"°"}, "an angle such as 15 or 15°"},
    {Unit::metre, "m", {" m"}, {" ft", 0.3048, 0, 0}, "an altitude such as 1200 m or 3900 ft"},
    {Unit::bores, "bore", {" bores"}, {" bores"}, "a number of bores such as 6"},
    {Unit::ratio, "ratio", {" %", 0.01}, {" %", 0.01}, "a share such as 70 % or 0.7"},
    {Unit::slope, "slope", {"", 1, 0, 4}, {"", 1, 0, 4}, "a slope such as 1 in 50, 1:50 or 2 %"},
    {Unit::hour, "h", {" h", 1, 0, 2}, {" h", 1, 0, 2}, "a time such as 24 h, 90 min or 2 days"},
    {Unit::l_per_min,
     "l/min",
     {" l/min", 1, 0, 2},
     {" gal/min", ml_per_gallon / 1000, 0, 2},
     "a flow such as 3.5 l/min or 0.9 gal/min"},
    {Unit::ohm, "ohm", {" Ω", 1, 0, 3}, {" Ω", 1, 0, 3}, "a resistance such as 0.35 Ω"},
    {Unit::ohm_per_km,
     "ohm/km",
     {" Ω/km", 1, 0, 3},
     {" Ω/kft", per_km_of_per_kft, 0, 3},
     "a resistance by length such as 4.61 Ω/km or 1.24 Ω/kft"},
    {Unit::mm2, "mm2", {" mm²", 1, 0, 2}, {" mm²", 1, 0, 2}, "a section such as 2.5 mm²"},
    {Unit::ppm, "ppm", {" ppm"}, {" ppm"}, "a share such as 40 ppm or 40 mg/l"},
    {Unit::W_per_K, "W/K", {" W/K"}, {" W/°F", 9.0 / 5}, "a loss such as 18 W/K or 10 W/°F"},
}};

constexpr bool inEnumOrder()
{
    for (std::size_t i = 0; i < forms.size(); ++i)
        if (static_cast<std::size_t>(forms[i].unit) != i)
            return false;
    return true;
}
static_assert(inEnumOrder());

struct WordRow {
    Unit unit;
    std::string_view word;
    UnitWord meaning;
};

constexpr std::array words = {
    WordRow{Unit::mm, "mm", {1}},
    WordRow{Unit::mm, "cm", {10}},
    WordRow{Unit::mm, "m", {1000}},
    WordRow{Unit::mm, "in", {mm_per_inch}},
    WordRow{Unit::mm, "inch", {mm_per_inch}},
    WordRow{Unit::mm, "inches", {mm_per_inch}},
    WordRow{Unit::mm, "\"", {mm_per_inch}},
    WordRow{Unit::mm, "''", {mm_per_inch}},
    WordRow{Unit::mm, "ft", {mm_per_foot}},
    WordRow{Unit::mm, "foot", {mm_per_foot}},
    WordRow{Unit::mm, "feet", {mm_per_foot}},
    WordRow{Unit::mm, "'", {mm_per_foot}},
    WordRow{Unit::head, "mm", {1}},
    WordRow{Unit::head, "in", {mm_per_inch}},
    WordRow{Unit::ml, "ml", {1}},
    WordRow{Unit::ml, "cc", {1}},
    WordRow{Unit::ml, "cm3", {1}},
    WordRow{Unit::ml, "l", {1000}},
    WordRow{Unit::ml, "litre", {1000}},
    WordRow{Unit::ml, "litres", {1000}},
    WordRow{Unit::ml, "liter", {1000}},
    WordRow{Unit::ml, "liters", {1000}},
    WordRow{Unit::ml, "floz", {ml_per_fluid_ounce}},
    WordRow{Unit::ml, "oz", {ml_per_fluid_ounce}},
    WordRow{Unit::ml, "pt", {ml_per_pint}},
    WordRow{Unit::ml, "qt", {ml_per_quart}},
    WordRow{Unit::ml, "quart", {ml_per_quart}},
    WordRow{Unit::ml, "quarts", {ml_per_quart}},
    WordRow{Unit::ml, "gal", {ml_per_gallon}},
    WordRow{Unit::kg, "kg", {1}},
    WordRow{Unit::kg, "g", {0.001}},
    WordRow{Unit::kg, "t", {1000}},
    WordRow{Unit::kg, "lb", {kg_per_pound}},
    WordRow{Unit::kg, "lbs", {kg_per_pound}},
    WordRow{Unit::degC, "c", {1}},
    WordRow{Unit::degC, "degc", {1}},
    WordRow{Unit::degC, "celsius", {1}},
    WordRow{Unit::degC, "f", {5.0 / 9, -32}},
    WordRow{Unit::degC, "degf", {5.0 / 9, -32}},
    WordRow{Unit::degC, "fahrenheit", {5.0 / 9, -32}},
    WordRow{Unit::degC, "k", {1, -zero_degC_in_K}},
    WordRow{Unit::kelvin, "k", {1}},
    WordRow{Unit::kelvin, "c", {1}},
    WordRow{Unit::kelvin, "degc", {1}},
    WordRow{Unit::kelvin, "f", {5.0 / 9}},
    WordRow{Unit::kelvin, "degf", {5.0 / 9}},
    WordRow{Unit::watt, "w", {1}},
    WordRow{Unit::watt, "kw", {1000}},
    WordRow{Unit::kWh, "kwh", {1}},
    WordRow{Unit::volt, "v", {1}},
    WordRow{Unit::volt, "kv", {1000}},
    WordRow{Unit::ampere, "a", {1}},
    WordRow{Unit::ampere, "amp", {1}},
    WordRow{Unit::ampere, "amps", {1}},
    WordRow{Unit::kPa, "kpa", {1}},
    WordRow{Unit::kPa, "pa", {0.001}},
    WordRow{Unit::kPa, "bar", {100}},
    WordRow{Unit::kPa, "mbar", {0.1}},
    WordRow{Unit::kPa, "psi", {kPa_per_psi}},
    WordRow{Unit::Pa, "pa", {1}},
    WordRow{Unit::Pa, "kpa", {1000}},
    WordRow{Unit::m_per_s, "m/s", {1}},
    WordRow{Unit::m_per_s, "km/h", {1 / 3.6}},
    WordRow{Unit::m_per_s, "mph", {m_per_s_per_mph}},
    WordRow{Unit::percent, "%", {1}},
    WordRow{Unit::degree, "deg", {1}},
    WordRow{Unit::metre, "m", {1}},
    WordRow{Unit::metre, "km", {1000}},
    WordRow{Unit::metre, "ft", {0.3048}},
    WordRow{Unit::metre, "'", {0.3048}},
    WordRow{Unit::bores, "bore", {1}},
    WordRow{Unit::bores, "bores", {1}},
    WordRow{Unit::bores, "d", {1}},
    WordRow{Unit::ratio, "%", {0.01}},
    WordRow{Unit::slope, "%", {0.01}},
    WordRow{Unit::hour, "h", {1}},
    WordRow{Unit::hour, "hour", {1}},
    WordRow{Unit::hour, "hours", {1}},
    WordRow{Unit::hour, "min", {1.0 / 60}},
    WordRow{Unit::hour, "d", {24}},
    WordRow{Unit::hour, "day", {24}},
    WordRow{Unit::hour, "days", {24}},
    WordRow{Unit::l_per_min, "l/min", {1}},
    WordRow{Unit::l_per_min, "gal/min", {ml_per_gallon / 1000}},
    WordRow{Unit::l_per_min, "gpm", {ml_per_gallon / 1000}},
    WordRow{Unit::ohm, "Ω", {1}},
    WordRow{Unit::ohm, "ohm", {1}},
    WordRow{Unit::ohm_per_km, "Ω/km", {1}},
    WordRow{Unit::ohm_per_km, "Ω/kft", {per_km_of_per_kft}},
    WordRow{Unit::mm2, "mm²", {1}},
    WordRow{Unit::mm2, "mm2", {1}},
    WordRow{Unit::mm2, "sqmm", {1}},
    WordRow{Unit::ppm, "ppm", {1}},
    WordRow{Unit::ppm, "mg/l", {1}},
    WordRow{Unit::W_per_K, "w/k", {1}},
    WordRow{Unit::W_per_K, "w/°f", {9.0 / 5}},
    WordRow{Unit::W_per_K, "w/degf", {9.0 / 5}},
};

} // namespace

const UnitForm& formOf(Unit unit)
{
    const auto index = static_cast<std::size_t>(unit);
    return index < forms.size() ? forms[index] : forms[0];
}

const Shown& shownIn(Unit unit, UnitSystem system)
{
    const UnitForm& form = formOf(unit);
    return system == UnitSystem::metric ? form.metric : form.inch;
}

std::optional<UnitWord> findUnitWord(Unit unit, std::string_view word)
{
    // Both volumes take the same words; the table holds them once, in ml.
    const bool in_litres = unit == Unit::litre;
    const Unit listed = in_litres ? Unit::ml : unit;
    const auto* const found = std::find_if(words.begin(), words.end(), [&](const WordRow& row) {
        return row.unit == listed && row.word == word;
    });
    if (found == words.end())
        return std::nullopt;
    UnitWord meaning = found->meaning;
    if (in_litres)
        meaning.size /= 1000;
    return meaning;
}

} // namespace siphonwright
