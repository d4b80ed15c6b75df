#include "core/paperwork/estimate.h"

#include "core/paperwork/money.h"
#include "core/sketch/words.h"

#include <algorithm>

namespace siphonwright {
namespace {

constexpr std::int64_t whole_percent = 100'000; ///< thousandths of a percent in one whole
constexpr const char* no_mark_up = "The mark-up on materials is not entered.";
constexpr const char* not_final = "The prices of materials are not final.";
constexpr const char* too_large = "The amounts are too large to reckon with.";

Message plainText(std::string_view words)
{
    return {"{a}", {}, {std::string(words)}};
}

/// The row of a price list with this key; null: none.
const PricedItem* pricedAs(const PriceList& prices, std::string_view key)
{
    const auto found = std::find_if(prices.items.begin(), prices.items.end(), [&](const PricedItem& priced) {
        return !key.empty() && priced.item == key;
    });
    return found == prices.items.end() ? nullptr : &*found;
}

/// Builds an estimate line by line; an amount that 64 bits do not hold refuses the whole.
class Estimator {
public:
    Estimator(const Sketch& sketch, const PartsList& parts, const Alternate* alternate)
        : sketch_(sketch), quote_(quoteOf(sketch)), parts_(parts), alternate_(alternate)
    {}

    Estimate estimate()
    {
        if (quote_.currency.code.empty() && quote_.currency.symbol.empty())
            miss("The currency is not entered.");
        if (!quote_.mark_up_thousandths)
            miss(no_mark_up);
        for (const PartRow& row : parts_.rows)
            addMaterial(row);
        addLabour();
        addOther("Travel", quote_.travel_minor, 1);
        addOther("Consumables", quote_.consumables_minor, quote_.vehicles);
        addOther("Disposal of old coolant", quote_.disposal_minor, quote_.vehicles);
        addUp();
        if (refused_) {
            Estimate none;
            none.status = EstimateStatus::refused;
            none.message = too_large;
            return none;
        }
        out_.status = out_.missing.empty() ? EstimateStatus::complete : EstimateStatus::incomplete;
        return std::move(out_);
    }

private:
    void miss(std::string what) { out_.missing.push_back(std::move(what)); }

    /// The value, or nothing of use and the whole refused.
    std::int64_t held(std::optional<std::int64_t> value)
    {
        refused_ = refused_ || !value;
        return value.value_or(0);
    }
    void add(std::int64_t& total, std::int64_t amount) { total = held(sumOf(total, amount)); }

    bool isReplaced(const PartRow& row) const
    {
        return alternate_ && row.kind == ItemKind::heater &&
               (alternate_->heater.empty() ||
                std::any_of(row.used.begin(), row.used.end(),
                            [&](const UsedAt& used) { return used.part.id == alternate_->heater; }));
    }

    void addMaterial(const PartRow& row)
    {
        if (!isReplaced(row))
            return addRow(row, row.thousandths);
        // One heater of several of a kind may be the other one.
        const std::int64_t others = alternate_->heater.empty()
                                        ? row.thousandths.value_or(0)
                                        : std::min(one_heater, row.thousandths.value_or(0));
        if (row.thousandths.value_or(0) > others)
            addRow(row, *row.thousandths - others);
        addAlternate(row, others);
    }

    void addRow(const PartRow& row, std::optional<std::int64_t> thousandths)
    {
        if (thousandths == 0)
            return; // clips that the spacing rule wants and nobody drew
        EstimateLine line;
        line.number = row.number;
        line.item = row.item;
        line.text = plainText(nameOf(row.kind));
        line.size = row.size;
        line.unit = std::string(wordFor(row.unit));
        if (thousandths)
            line.thousandths = held(productOf(*thousandths, quote_.vehicles));
        const std::optional<std::int64_t> all = line.thousandths;
        showInOwnUnits(line, row.unit);
        const PricedItem* priced = row.missing.empty() ? priceOf(quote_.prices, row) : nullptr;
        if (!row.missing.empty())
            line.missing = row.missing;
        else if (!priced || !priced->price_minor)
            line.missing = "not priced";
        else
            takePrice(line, row, *priced, all);
        finish(std::move(line));
    }

    /// Until a price says in what it is bought, hose and coolant read as the sketch's own units have them.
    void showInOwnUnits(EstimateLine& line, PriceUnit unit) const
    {
        if (!line.thousandths || sketch_.units != UnitChoice::inch || unit == PriceUnit::each)
            return;
        const PriceUnit own = unit == PriceUnit::metre ? PriceUnit::foot : PriceUnit::quart;
        line.thousandths = converted(*line.thousandths, unit, own);
        line.unit = std::string(wordFor(own));
    }

    void takePrice(EstimateLine& line, const PartRow& row, const PricedItem& priced,
                   std::optional<std::int64_t> quantity)
    {
        if (row.kind == ItemKind::hose && quote_.charge_whole_rolls)
            quantity = rollsOf(row);
        if (!quantity) {
            line.missing = "quantity not known";
            return;
        }
        const std::optional<std::int64_t> in_unit = converted(*quantity, row.unit, priced.unit);
        if (!in_unit) {
            line.missing =
                "priced by \"" + std::string(wordFor(priced.unit)) + "\", which is no measure of it";
            return;
        }
        line.thousandths = in_unit;
        line.unit = std::string(wordFor(priced.unit));
        line.list_minor = priced.price_minor;
    }

    /// The length of the rolls that a row's hose is cut from, thousandths of a metre.
    std::optional<std::int64_t> rollsOf(const PartRow& row) const
    {
        for (const BorePlan& bore : cutPlansOf(sketch_, parts_)) {
            const std::vector<Quantity>& size = row.size.quantities; // bore and wall
            const bool same = bore.bore_mm && size.size() == 2 && *bore.bore_mm == size[0].value &&
                              bore.wall_mm == size[1].value;
            if (same && bore.plan.planned())
                return (bore.plan.bought + hundredths_per_mm - 1) / hundredths_per_mm;
        }
        return std::nullopt;
    }

    void addAlternate(const PartRow& row, std::int64_t thousandths)
    {
        EstimateLine line;
        line.number = row.number;
        line.item = alternate_->item;
        line.text = {"Tank heater: {a}", {}, {alternate_->name}};
        line.thousandths = held(productOf(thousandths, quote_.vehicles));
        line.unit = std::string(wordFor(PriceUnit::each));
        if (alternate_->power_W)
            line.size = {"{0}", {{*alternate_->power_W, Unit::watt}}, {}};
        line.list_minor = alternate_->price_minor;
        if (!line.list_minor) {
            line.item = alternateKey(row);
            const PricedItem* priced = pricedAs(quote_.prices, line.item);
            if (priced && priced->unit == PriceUnit::each)
                line.list_minor = priced->price_minor;
        }
        if (!line.list_minor)
            line.missing = "not priced";
        finish(std::move(line));
    }

    /// The price key of the other heater: entered, or by its power at the drawn one's voltage.
    std::string alternateKey(const PartRow& row) const
    {
        if (!alternate_->item.empty() || !alternate_->power_W || row.used.empty())
            return alternate_->item;
        const Heater* drawn =
            sketch_.heater(alternate_->heater.empty() ? row.used.front().part.id : alternate_->heater);
        if (!drawn)
            return {};
        Heater other = *drawn;
        other.power_W.value = alternate_->power_W;
        return heaterKey(other);
    }

    /// Amounts of a material at its list price.
    void finish(EstimateLine line)
    {
        if (line.list_minor && line.thousandths) {
            const std::int64_t mark_up = quote_.mark_up_thousandths.value_or(0);
            line.list_amount_minor = held(shareOf(*line.thousandths, *line.list_minor, thousand));
            line.price_minor =
                held(sumOf(*line.list_minor, held(shareOf(*line.list_minor, mark_up, whole_percent))));
            line.amount_minor = held(shareOf(*line.thousandths, *line.price_minor, thousand));
            add(out_.list_minor, *line.list_amount_minor);
            add(out_.materials_minor, *line.amount_minor);
        }
        if (!line.amount_minor)
            miss("Item " + std::to_string(line.number) + ", " + format(line.text, UnitSystem::metric) + ": " +
                 line.missing + ".");
        out_.lines.push_back(std::move(line));
    }

    void addLabour()
    {
        const std::vector<JobTask> tasks = tasksOf(sketch_);
        if (!quote_.labour_rate_minor && !tasks.empty())
            miss("The labour rate is not entered.");
        for (const JobTask& task : tasks) {
            EstimateLine line;
            line.group = LineGroup::labour;
            line.task = task.id;
            line.text = plainText(task.name);
            line.unit = "h";
            const std::int64_t repeats = held(productOf(task.repeat_hundredths, quote_.vehicles - 1));
            const std::int64_t hundredths = held(sumOf(task.hours_hundredths, repeats));
            line.thousandths = held(productOf(hundredths, thousand / 100));
            line.price_minor = quote_.labour_rate_minor;
            if (line.price_minor) {
                line.amount_minor = held(shareOf(*line.thousandths, *line.price_minor, thousand));
                add(out_.labour_minor, *line.amount_minor);
            } else {
                line.missing = "labour rate not entered";
            }
            out_.lines.push_back(std::move(line));
        }
    }

    void addOther(std::string_view name, const std::optional<std::int64_t>& price_minor, std::int64_t times)
    {
        EstimateLine line;
        line.group = LineGroup::other;
        line.text = plainText(name);
        line.thousandths = held(productOf(times, thousand));
        line.unit = std::string(wordFor(PriceUnit::each));
        line.price_minor = price_minor;
        if (price_minor) {
            line.amount_minor = held(productOf(times, *price_minor));
            add(out_.other_minor, *line.amount_minor);
        } else {
            line.missing = "not entered";
            miss(std::string(name) + ": not entered.");
        }
        out_.lines.push_back(std::move(line));
    }

    void addUp()
    {
        add(out_.subtotal_minor, out_.materials_minor);
        add(out_.subtotal_minor, out_.labour_minor);
        add(out_.subtotal_minor, out_.other_minor);
        if (quote_.tax_thousandths)
            out_.tax_minor = held(shareOf(out_.subtotal_minor, *quote_.tax_thousandths, whole_percent));
        else
            miss("The tax is not entered.");
        add(out_.total_minor, out_.subtotal_minor);
        add(out_.total_minor, out_.tax_minor);
    }

    static constexpr std::int64_t thousand = 1000;
    static constexpr std::int64_t one_heater = thousand;

    const Sketch& sketch_;
    const Quote& quote_;
    const PartsList& parts_;
    const Alternate* alternate_;
    Estimate out_;
    bool refused_ = false;
};

} // namespace

const PricedItem* priceOf(const PriceList& prices, const PartRow& row)
{
    const PricedItem* own = pricedAs(prices, row.item);
    return own || row.item.empty() ? own : pricedAs(prices, keyOf(row.kind));
}

Estimate forCustomer(Estimate estimate)
{
    for (EstimateLine& line : estimate.lines) {
        line.list_minor.reset();
        line.list_amount_minor.reset();
    }
    estimate.list_minor = 0;
    std::replace(estimate.missing.begin(), estimate.missing.end(), std::string(no_mark_up),
                 std::string(not_final));
    return estimate;
}

Estimate estimateOf(const Sketch& sketch, const PartsList& parts, const Alternate* alternate)
{
    return Estimator(sketch, parts, alternate).estimate();
}

} // namespace siphonwright
