#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What is entered for parts list and estimate, kept in the sketch so that a file mailed is whole.
/// Money is whole minor units of the currency (cents), never a fraction. Percentages are thousandths of a
/// percent (8.875 % is 8875) and hours hundredths of an hour, so that what is printed is what was reckoned
/// with. A price or rate without a value is not entered, which is not the same as nothing to pay.
namespace siphonwright {

struct Currency {
    std::string code;     ///< ISO 4217, "USD"; empty: not entered
    std::string symbol;   ///< stands before an amount; empty: the code stands behind it
    int minor_digits = 2; ///< decimals of the minor unit: 0, 2, 3 or 4
    friend bool operator==(const Currency&, const Currency&) = default;
};

/// What a price is for.
enum class PriceUnit { each, metre, foot, litre, quart, gallon };

/// A row of a price list.
struct PricedItem {
    std::string item; ///< key of the parts list: "clamp-27", or "clamp" for one of any size
    std::string description;
    PriceUnit unit = PriceUnit::each;
    std::optional<std::int64_t> price_minor;
    friend bool operator==(const PricedItem&, const PricedItem&) = default;
};

struct PriceList {
    std::string name;
    std::string date; ///< of the prices
    std::vector<PricedItem> items;
    friend bool operator==(const PriceList&, const PriceList&) = default;
};

/// A task of the work and how long it takes.
struct LabourTask {
    std::string id;   ///< of a usual task, or an own one's
    std::string name; ///< of an own task
    std::int64_t hours_hundredths = 0;
    std::int64_t repeat_hundredths = 0; ///< on the second vehicle and every one after it
    bool edited = false;                ///< by the estimator: no longer the usual figure
    friend bool operator==(const LabourTask&, const LabourTask&) = default;
};

/// A length hose is bought in.
struct HoseRoll {
    std::optional<double> bore_mm; ///< left out: hose of any bore
    double length_mm = 15'000;
    friend bool operator==(const HoseRoll&, const HoseRoll&) = default;
};

/// The same job with another heater, estimated beside it.
struct Alternate {
    std::string name;
    std::string heater; ///< id of the heater it stands for; empty: every heater
    std::optional<double> power_W;
    std::string item; ///< key of the price list's row; empty: by its power
    std::optional<std::int64_t> price_minor;
    friend bool operator==(const Alternate&, const Alternate&) = default;
};

struct Quote {
    std::string number;
    std::string revision;
    std::string date;
    std::int64_t validity_days = 30;
    std::string company;  ///< block of text: who estimates
    std::string customer; ///< block of text: for whom, with the address
    std::string exclusions;
    Currency currency;
    std::optional<std::int64_t> tax_thousandths;     ///< of a percent
    std::optional<std::int64_t> mark_up_thousandths; ///< of a percent, on materials
    std::optional<std::int64_t> labour_rate_minor;   ///< for an hour
    std::vector<LabourTask> labour;                  ///< those that differ from the usual ones, and own ones
    std::int64_t vehicles = 1;                       ///< identical
    std::optional<std::int64_t> travel_minor;        ///< for the job
    std::optional<std::int64_t> consumables_minor;   ///< for each vehicle
    std::optional<std::int64_t> disposal_minor;      ///< of old coolant, for each vehicle
    PriceList prices;
    std::vector<HoseRoll> rolls;
    double cut_allowance_mm = 25;    ///< added to each hose; own choice
    bool charge_whole_rolls = false; ///< hose at the rolls it is cut from, not at its cuts
    std::vector<Alternate> alternates;
    friend bool operator==(const Quote&, const Quote&) = default;
};

} // namespace siphonwright
