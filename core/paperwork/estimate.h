#pragma once

#include "core/paperwork/cut_plan.h"
#include "core/paperwork/labour.h"
#include "core/paperwork/parts.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What a job costs, in whole minor units of one currency.
///
/// Each line is rounded to the minor unit, half away from zero, before anything is added, so that the lines
/// as printed sum to the totals as printed:
///
///     price of a line     = list price + mark-up              rounded
///     amount of a line    = quantity * price                  rounded; quantities in thousandths of a unit
///     labour of a task    = (first + repeat * (vehicles - 1)) hours * rate    rounded
///     subtotal            = sum of the lines' amounts
///     tax                 = subtotal * tax                    rounded
///     total               = subtotal + tax
///
/// The mark-up shown to the estimator is the difference between what the materials are sold for and what they
/// list at. A line without a price is no line of nothing: it is listed as missing and the estimate is marked
/// incomplete.
namespace siphonwright {

enum class LineGroup { materials, labour, other };

struct EstimateLine {
    LineGroup group = LineGroup::materials;
    std::size_t number = 0; ///< item number in the parts list; 0: none
    std::string task;       ///< id of the labour task; empty: none
    std::string item;       ///< price key of a material
    Message text;           ///< what it is
    Message size;
    std::optional<std::int64_t> thousandths; ///< quantity of units, for all vehicles
    std::string unit;                        ///< "each", "m", "ft", "h", ...
    std::optional<std::int64_t> list_minor;  ///< for a unit, before mark-up
    std::optional<std::int64_t> list_amount_minor;
    std::optional<std::int64_t> price_minor; ///< for a unit, as sold
    std::optional<std::int64_t> amount_minor;
    std::string missing; ///< why there is no amount; empty where there is one
};

enum class EstimateStatus {
    complete,
    incomplete, ///< the totals are of what is priced only
    refused     ///< nothing in it holds; the message says why
};

struct Estimate {
    EstimateStatus status = EstimateStatus::incomplete;
    std::string message; ///< why refused
    std::vector<EstimateLine> lines;
    std::int64_t list_minor = 0;      ///< materials at list price
    std::int64_t materials_minor = 0; ///< materials as sold
    std::int64_t labour_minor = 0;
    std::int64_t other_minor = 0;
    std::int64_t subtotal_minor = 0;
    std::int64_t tax_minor = 0;
    std::int64_t total_minor = 0;
    std::vector<std::string> missing; ///< what is not priced or not entered, one sentence each

    std::int64_t markUpMinor() const { return materials_minor - list_minor; }
};

/// The hose of one bore and wall, all vehicles' cuts together, and the rolls they come off.
struct BorePlan {
    std::optional<double> bore_mm; ///< nothing: not entered, so not planned
    double wall_mm = 0;
    std::vector<HoseCut> cuts; ///< of all vehicles, in the order the plan numbers them
    CutPlan plan;
};
std::vector<BorePlan> cutPlansOf(const Sketch& sketch, const PartsList& parts);

/// The price of a row of the parts list: by its item key, else by its kind alone; null: not priced.
const PricedItem* priceOf(const PriceList& prices, const PartRow& row);

/// \param alternate nothing: as drawn; else the other heater to estimate with
Estimate estimateOf(const Sketch& sketch, const PartsList& parts, const Alternate* alternate = nullptr);

/// What a customer is shown: prices as sold, nothing of list prices and mark-up.
Estimate forCustomer(Estimate estimate);

/// A quantity of metres or litres in the unit a price is for, thousandths, rounded up; nothing where one is
/// no measure of the other. Foot 0.3048 m; US quart 231/4 and gallon 231 cubic inches.
std::optional<std::int64_t> converted(std::int64_t thousandths, PriceUnit from, PriceUnit to);

} // namespace siphonwright
