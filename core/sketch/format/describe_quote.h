#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

constexpr double most_minor = 1e12; ///< whole numbers up to 2^53 survive JSON

constexpr Field money(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(-most_minor, most_minor, "minor units of the currency");
}
constexpr Field percentage(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(0, 1'000'000, "thousandths of a percent");
}
constexpr Field hours(std::string_view name, std::string_view meaning)
{
    return Field{name, meaning}.within(0, 1'000'000, "hundredths of an hour");
}

template <class V, Is<Currency> T>
void describe(V& v, T& currency)
{
    v.object("currency", "What money is counted in");
    v(Field{"code", "After ISO 4217"}.text(0, 20), currency.code);
    v(Field{"symbol", "Stands before an amount; left out: the code stands behind it"}.text(0, 20),
      currency.symbol);
    v(Field{"minor_digits", "Decimals of the minor unit"}.oneOf({0, 2, 3, 4}), currency.minor_digits);
}

template <class V, Is<PricedItem> T>
void describe(V& v, T& priced)
{
    v.object("priced_item", "A row of a price list");
    v(Field{"item", "Key of the parts list, or its kind alone for one of any size"}.text(1, 200).needed(),
      priced.item);
    v(Field{"description", "In words"}.text(0, 500), priced.description);
    v(Field{"unit", "What the price is for"}, priced.unit);
    v(money("price_minor", "Left out: not priced"), priced.price_minor);
}

template <class V, Is<PriceList> T>
void describe(V& v, T& list)
{
    v.object("price_list", "Prices of the parts");
    v(Field{"name", "Which list"}, list.name);
    v(Field{"date", "Of the prices"}, list.date);
    v(Field{"items", "Its rows"}.items(0, 5000), list.items);
}

template <class V, Is<LabourTask> T>
void describe(V& v, T& task)
{
    v.object("labour_task", "A task of the work and how long it takes");
    v(identity("id", "Of a usual task, or an own one's"), task.id);
    v(Field{"name", "Of an own task"}.text(0, 500), task.name);
    v(hours("hours_hundredths", "On the first vehicle"), task.hours_hundredths);
    v(hours("repeat_hundredths", "On every further vehicle"), task.repeat_hundredths);
    v(Field{"edited", "Whether the estimator has put it in"}, task.edited);
}

template <class V, Is<HoseRoll> T>
void describe(V& v, T& roll)
{
    v.object("hose_roll", "A length hose is bought in");
    v(bore("bore_mm", "Left out: hose of any bore"), roll.bore_mm);
    v(Field{"length_mm", "Its length"}.within(1, 1'000'000, "mm"), roll.length_mm);
}

template <class V, Is<Alternate> T>
void describe(V& v, T& alternate)
{
    v.object("alternate", "The same job with another heater, estimated beside it");
    v(Field{"name", "What it is called"}.text(0, 500), alternate.name);
    v(Field{"heater", "Id of the heater it stands for; left out: every heater"}.text(0, 200),
      alternate.heater);
    v(Field{"power_W", "Of the other heater"}.within(0, 1e6, "W"), alternate.power_W);
    v(Field{"item", "Key of the price list's row; left out: by its power"}.text(0, 200), alternate.item);
    v(money("price_minor", "Left out: from the price list"), alternate.price_minor);
}

template <class V, Is<Quote> T>
void describe(V& v, T& quote)
{
    v.object("quote", "What is entered for parts list and estimate");
    v(Field{"number", "Number of the estimate"}.text(0, 200), quote.number);
    v(Field{"revision", "Revision of the estimate"}.text(0, 200), quote.revision);
    v(Field{"date", "Date of the estimate"}.text(0, 200), quote.date);
    v(Field{"validity_days", "How long it holds"}.within(0, 3650, "days"), quote.validity_days);
    v(Field{"company", "Who estimates"}.text(0, 2000), quote.company);
    v(Field{"customer", "For whom, with the address"}.text(0, 2000), quote.customer);
    v(Field{"exclusions", "What is not included"}.text(0, 5000), quote.exclusions);
    v(Field{"currency", "What money is counted in"}, quote.currency);
    v(percentage("tax_thousandths", "Tax; left out: not entered"), quote.tax_thousandths);
    v(percentage("mark_up_thousandths", "Mark-up on materials; left out: not entered"),
      quote.mark_up_thousandths);
    v(money("labour_rate_minor", "For an hour; left out: not entered"), quote.labour_rate_minor);
    v(Field{"labour", "Tasks that differ from the usual ones, and own ones"}.items(0, 200), quote.labour);
    v(Field{"vehicles", "How many identical ones"}.within(1, 10'000), quote.vehicles);
    v(money("travel_minor", "Travel for the job; left out: not entered"), quote.travel_minor);
    v(money("consumables_minor", "For each vehicle; left out: not entered"), quote.consumables_minor);
    v(money("disposal_minor", "Of old coolant, for each vehicle; left out: not entered"),
      quote.disposal_minor);
    v(Field{"prices", "Price list"}, quote.prices);
    v(Field{"rolls", "Lengths hose is bought in"}.items(0, 50), quote.rolls);
    v(Field{"cut_allowance_mm", "Added to each hose"}.within(0, 10'000, "mm"), quote.cut_allowance_mm);
    v(Field{"charge_whole_rolls", "Hose at the rolls it is cut from, not at its cuts"},
      quote.charge_whole_rolls);
    v(Field{"alternates", "Other heaters side by side"}.items(0, 6), quote.alternates);
}

} // namespace siphonwright
