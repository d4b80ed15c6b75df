#include "tests/sound_loop.h"

#include "core/paperwork/estimate.h"

#include <QTest>

#include <algorithm>
#include <limits>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

PartRow pieces(std::size_t number, ItemKind kind, std::string item, std::int64_t count)
{
    PartRow row;
    row.number = number;
    row.kind = kind;
    row.item = std::move(item);
    row.thousandths = count * 1000;
    return row;
}

/// 8 clamps and 2.480 m of hose.
PartsList twoRows()
{
    PartsList parts;
    PartRow hose = pieces(2, ItemKind::hose, "hose-19.05", 0);
    hose.thousandths = 2480;
    hose.unit = PriceUnit::metre;
    parts.rows = {pieces(1, ItemKind::clamp, "clamp-27.05", 8), hose};
    return parts;
}

Quote sheetOne()
{
    Quote quote;
    quote.currency.code = "USD";
    quote.mark_up_thousandths = 25'000;
    quote.tax_thousandths = 8875;
    quote.labour_rate_minor = 9500;
    quote.labour = {{"own-1", "The work", 125, 75, true}};
    quote.travel_minor = 6000;
    quote.consumables_minor = 1500;
    quote.disposal_minor = 0;
    quote.prices.items = {{"clamp-27.05", "", PriceUnit::each, 295},
                          {"hose-19.05", "", PriceUnit::foot, 410}};
    return quote;
}

Sketch sketchOf(const Quote& quote)
{
    Sketch sketch;
    sketch.quote = Shared<Quote>(quote);
    return sketch;
}

std::int64_t sumOfLines(const Estimate& estimate)
{
    std::int64_t sum = 0;
    for (const EstimateLine& line : estimate.lines)
        sum += line.amount_minor.value_or(0);
    return sum;
}

const EstimateLine& lineOf(const Estimate& estimate, std::size_t number)
{
    return *std::find_if(estimate.lines.begin(), estimate.lines.end(),
                         [&](const EstimateLine& line) { return line.number == number; });
}

bool misses(const Estimate& estimate, std::string_view words)
{
    return std::any_of(estimate.missing.begin(), estimate.missing.end(),
                       [&](const std::string& missing) { return missing.find(words) != std::string::npos; });
}

} // namespace

class TestEstimate : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aSheetWorkedByHandForOneVehicle();
    void theSameForThreeVehicles();
    void aCurrencyWithoutMinorUnits();
    void everyPrintedLineAddsUp();
    void whatIsNotPricedIsListedAndNeverNothing();
    void ratesNotEnteredAreListed();
    void theCustomerSeesNeitherListPriceNorMarkUp();
    void anotherHeaterIsEstimatedBeside();
    void oneOfTwoHeatersMayBeTheOther();
    void aPriceOfTheKindServesAnySize();
    void aPriceForTheWrongMeasureIsNoPrice();
    void quantitiesAreConvertedUpwards();
    void hoseCanBeChargedByWholeRolls();
    void cutsOfAllVehiclesArePlannedTogether();
    void amountsTooLargeAreRefused();
    void usualHoursFollowTheDrawing();
    void hoursAreEditedAndForgotten();
};

// By hand, source own arithmetic. Clamps: list 2.95, mark-up 25 % 0.7375 to 0.74, sold at 3.69; 8 * 2.95 =
// 23.60 and 8 * 3.69 = 29.52. Hose: 2.480 m / 0.3048 = 8.13648 ft, up to 8.137; list 4.10, mark-up 1.025 to
// 1.03, sold at 5.13; 8.137 * 4.10 = 33.3617 to 33.36, 8.137 * 5.13 = 41.74281 to 41.74.
//   materials  29.52 + 41.74               71.26      (list 23.60 + 33.36 = 56.96, mark-up 14.30)
//   labour     1.25 h * 95.00             118.75
//   other      60.00 + 15.00 + 0           75.00
//   subtotal                              265.01
//   tax        8.875 % = 23.5196375        23.52
//   total                                 288.53
void TestEstimate::aSheetWorkedByHandForOneVehicle()
{
    const Estimate estimate = estimateOf(sketchOf(sheetOne()), twoRows());
    QCOMPARE(estimate.status, EstimateStatus::complete);
    QCOMPARE(lineOf(estimate, 1).price_minor, std::optional<std::int64_t>(369));
    QCOMPARE(lineOf(estimate, 1).amount_minor, std::optional<std::int64_t>(2952));
    QCOMPARE(lineOf(estimate, 2).thousandths, std::optional<std::int64_t>(8137));
    QCOMPARE(lineOf(estimate, 2).unit, std::string("ft"));
    QCOMPARE(lineOf(estimate, 2).list_amount_minor, std::optional<std::int64_t>(3336));
    QCOMPARE(lineOf(estimate, 2).price_minor, std::optional<std::int64_t>(513));
    QCOMPARE(estimate.list_minor, 5696);
    QCOMPARE(estimate.materials_minor, 7126);
    QCOMPARE(estimate.markUpMinor(), 1430);
    QCOMPARE(estimate.labour_minor, 11'875);
    QCOMPARE(estimate.other_minor, 7500);
    QCOMPARE(estimate.subtotal_minor, 26'501);
    QCOMPARE(estimate.tax_minor, 2352);
    QCOMPARE(estimate.total_minor, 28'853);
}

// By hand: 24 clamps * 3.69 = 88.56; 7.440 m / 0.3048 = 24.40945 ft, up to 24.410, * 5.13 = 125.2233 to
// 125.22; labour 1.25 + 2 * 0.75 = 2.75 h * 95.00 = 261.25; other 60.00 + 3 * 15.00 = 105.00; subtotal
// 580.03; tax 51.4776625 to 51.48; total 631.51.
void TestEstimate::theSameForThreeVehicles()
{
    Quote quote = sheetOne();
    quote.vehicles = 3;
    const Estimate estimate = estimateOf(sketchOf(quote), twoRows());
    QCOMPARE(lineOf(estimate, 2).thousandths, std::optional<std::int64_t>(24'410));
    QCOMPARE(estimate.materials_minor, 8856 + 12'522);
    QCOMPARE(estimate.labour_minor, 26'125);
    QCOMPARE(estimate.other_minor, 10'500);
    QCOMPARE(estimate.subtotal_minor, 58'003);
    QCOMPARE(estimate.tax_minor, 5148);
    QCOMPARE(estimate.total_minor, 63'151);
}

// By hand, yen: list 333, mark-up 10 % 33.3 to 33, sold at 366; 1.5 m at 366 = 549; tax 10 % 54.9 to 55; 604.
void TestEstimate::aCurrencyWithoutMinorUnits()
{
    Quote quote;
    quote.currency = {"JPY", "", 0};
    quote.mark_up_thousandths = 10'000;
    quote.tax_thousandths = 10'000;
    quote.travel_minor = quote.consumables_minor = quote.disposal_minor = 0;
    quote.prices.items = {{"hose-19.05", "", PriceUnit::metre, 333}};
    PartsList parts = twoRows();
    parts.rows.erase(parts.rows.begin());
    parts.rows[0].thousandths = 1500;
    const Estimate estimate = estimateOf(sketchOf(quote), parts);
    QCOMPARE(estimate.status, EstimateStatus::complete);
    QCOMPARE(estimate.subtotal_minor, 549);
    QCOMPARE(estimate.list_minor, 500); // 499.5
    QCOMPARE(estimate.total_minor, 604);
}

void TestEstimate::everyPrintedLineAddsUp()
{
    for (std::int64_t step = 0; step < 400; ++step) {
        Quote quote = sheetOne();
        quote.vehicles = 1 + step % 7;
        quote.mark_up_thousandths = step * 137;
        quote.prices.items[0].price_minor = 101 + step * 3;
        quote.prices.items[1].price_minor = 77 + step * 5;
        const Estimate estimate = estimateOf(sketchOf(quote), twoRows());
        QCOMPARE(sumOfLines(estimate), estimate.subtotal_minor);
        QCOMPARE(estimate.materials_minor + estimate.labour_minor + estimate.other_minor,
                 estimate.subtotal_minor);
        QCOMPARE(estimate.subtotal_minor + estimate.tax_minor, estimate.total_minor);
        QCOMPARE(sumOfLines(forCustomer(estimate)), estimate.subtotal_minor);
    }
}

void TestEstimate::whatIsNotPricedIsListedAndNeverNothing()
{
    Quote quote = sheetOne();
    quote.prices.items.erase(quote.prices.items.begin());
    PartsList parts = twoRows();
    PartRow unsized = pieces(3, ItemKind::adapter, "", 2);
    unsized.missing = "thread not entered";
    parts.rows.push_back(unsized);
    const Estimate estimate = estimateOf(sketchOf(quote), parts);
    QCOMPARE(estimate.status, EstimateStatus::incomplete);
    QCOMPARE(estimate.missing.size(), std::size_t{2});
    QVERIFY(misses(estimate, "Item 1, Hose clamp: not priced."));
    QVERIFY(misses(estimate, "Item 3, Adapter: thread not entered."));
    QVERIFY(!lineOf(estimate, 1).amount_minor);
    QCOMPARE(estimate.materials_minor, 4174);
    // A price of nothing is a price.
    quote.prices.items.push_back({"clamp-27.05", "", PriceUnit::each, 0});
    parts.rows.pop_back();
    QCOMPARE(estimateOf(sketchOf(quote), parts).status, EstimateStatus::complete);
}

void TestEstimate::ratesNotEnteredAreListed()
{
    Quote quote;
    quote.labour = {{"own-1", "The work", 125, 75, true}};
    const Estimate estimate = estimateOf(sketchOf(quote), {});
    QCOMPARE(estimate.status, EstimateStatus::incomplete);
    for (const char* what :
         {"currency", "mark-up", "labour rate", "Travel", "Consumables", "Disposal", "tax"})
        QVERIFY2(misses(estimate, what), what);
    QCOMPARE(estimate.missing.size(), std::size_t{7});
}

void TestEstimate::theCustomerSeesNeitherListPriceNorMarkUp()
{
    Quote quote = sheetOne();
    quote.mark_up_thousandths.reset();
    const Estimate shown = forCustomer(estimateOf(sketchOf(quote), twoRows()));
    for (const EstimateLine& line : shown.lines)
        QVERIFY(!line.list_minor && !line.list_amount_minor);
    QCOMPARE(shown.list_minor, 0);
    QVERIFY(!misses(shown, "ark-up"));
    QVERIFY(misses(shown, "not final"));
    QCOMPARE(shown.status, EstimateStatus::incomplete);
}

// By hand: 1500 W at 400.00 with 25 %: 500.00; the other at 520.00: 650.00.
void TestEstimate::anotherHeaterIsEstimatedBeside()
{
    Sketch sketch = soundLoop();
    Quote quote = sheetOne();
    quote.labour.clear();
    quote.prices.items = {{"heater-1500W-120V", "", PriceUnit::each, 40'000},
                          {"heater-2000W-120V", "", PriceUnit::each, 52'000}};
    sketch.quote = Shared<Quote>(quote);
    PartsList parts;
    parts.rows = {pieces(1, ItemKind::heater, "heater-1500W-120V", 1)};
    parts.rows[0].used = {{{PartKind::heater, "heater-1", 0}, {}}};
    const Estimate drawn = estimateOf(sketch, parts);
    QCOMPARE(drawn.materials_minor, 50'000);

    Alternate other;
    other.name = "2000 W";
    other.power_W = 2000;
    QCOMPARE(estimateOf(sketch, parts, &other).materials_minor, 65'000); // found by its power
    other.price_minor = 60'000;
    QCOMPARE(estimateOf(sketch, parts, &other).materials_minor, 75'000); // the price entered rules
    other.price_minor.reset();
    other.item = "heater-9";
    const Estimate unpriced = estimateOf(sketch, parts, &other);
    QVERIFY(misses(unpriced, "Tank heater: 2000 W: not priced."));
    QCOMPARE(unpriced.materials_minor, 0);
    QCOMPARE(unpriced.labour_minor, drawn.labour_minor);
}

void TestEstimate::oneOfTwoHeatersMayBeTheOther()
{
    Sketch sketch = soundLoop();
    Quote quote = sheetOne();
    quote.mark_up_thousandths = 0;
    quote.prices.items = {{"heater-1500W-120V", "", PriceUnit::each, 40'000}};
    sketch.quote = Shared<Quote>(quote);
    PartsList parts;
    parts.rows = {pieces(1, ItemKind::heater, "heater-1500W-120V", 2)};
    parts.rows[0].used = {{{PartKind::heater, "heater-1", 0}, {}}, {{PartKind::heater, "heater-2", 0}, {}}};
    Alternate other;
    other.heater = "heater-2";
    other.price_minor = 10'000;
    QCOMPARE(estimateOf(sketch, parts, &other).materials_minor, 50'000);
    other.heater.clear();
    QCOMPARE(estimateOf(sketch, parts, &other).materials_minor, 20'000);
}

void TestEstimate::aPriceOfTheKindServesAnySize()
{
    Quote quote = sheetOne();
    quote.prices.items[0].item = "clamp";
    QCOMPARE(estimateOf(sketchOf(quote), twoRows()).total_minor, 28'853);
    quote.prices.items.push_back({"clamp-27.05", "", PriceUnit::each, 0});
    QCOMPARE(lineOf(estimateOf(sketchOf(quote), twoRows()), 1).amount_minor, std::optional<std::int64_t>(0));
}

void TestEstimate::aPriceForTheWrongMeasureIsNoPrice()
{
    Quote quote = sheetOne();
    quote.prices.items[1].unit = PriceUnit::litre;
    const Estimate estimate = estimateOf(sketchOf(quote), twoRows());
    QCOMPARE(estimate.status, EstimateStatus::incomplete);
    QVERIFY(misses(estimate, "no measure"));
}

// By hand: 1 m = 3.28084 ft, up to 3.281; 1 ft = 0.3048 m, up to 0.305; 1 l = 1.05669 qt, up to 1.057; 10 l =
// 2.64172 gal, up to 2.642; 1 gal = 3.785411784 l, up to 3.786; 1 gal = 4 qt exactly.
void TestEstimate::quantitiesAreConvertedUpwards()
{
    using Number = std::optional<std::int64_t>;
    QCOMPARE(converted(1000, PriceUnit::metre, PriceUnit::foot), Number(3281));
    QCOMPARE(converted(1000, PriceUnit::foot, PriceUnit::metre), Number(305));
    QCOMPARE(converted(1000, PriceUnit::litre, PriceUnit::quart), Number(1057));
    QCOMPARE(converted(10'000, PriceUnit::litre, PriceUnit::gallon), Number(2642));
    QCOMPARE(converted(1000, PriceUnit::gallon, PriceUnit::litre), Number(3786));
    QCOMPARE(converted(1000, PriceUnit::gallon, PriceUnit::quart), Number(4000));
    QCOMPARE(converted(1234, PriceUnit::each, PriceUnit::each), Number(1234));
    QVERIFY(!converted(1, PriceUnit::each, PriceUnit::metre));
    QVERIFY(!converted(1, PriceUnit::litre, PriceUnit::metre));
}

// By hand, soundLoop(): 1335 and 660 mm. Off rolls of 2 m they take one roll of 2 m, not 1.995.
void TestEstimate::hoseCanBeChargedByWholeRolls()
{
    Sketch sketch = soundLoop();
    Quote quote;
    quote.mark_up_thousandths = 0;
    quote.prices.items = {{"hose-19", "", PriceUnit::metre, 1000}};
    quote.rolls = {{19, 2000}};
    sketch.quote = Shared<Quote>(quote);
    const PartsList parts = partsOf(sketch, resolve(sketch, plumbOf(sketch)));
    QCOMPARE(estimateOf(sketch, parts).materials_minor, 1995);
    sketch.quote->edit([](Quote& changed) { changed.charge_whole_rolls = true; });
    QCOMPARE(estimateOf(sketch, parts).materials_minor, 2000);
    // No roll that holds the cut: the quantity is not known, and no price is made up.
    sketch.quote->edit([](Quote& changed) { changed.rolls[0].length_mm = 1000; });
    const Estimate none = estimateOf(sketch, parts);
    QCOMPARE(none.materials_minor, 0);
    QVERIFY(misses(none, "Hose: quantity not known."));
}

void TestEstimate::cutsOfAllVehiclesArePlannedTogether()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.bore_mm.value = 25; });
    Quote quote;
    quote.vehicles = 3;
    quote.rolls = {{19, 5000}, {std::nullopt, 3000}};
    sketch.quote = Shared<Quote>(quote);
    const PartsList parts = partsOf(sketch, resolve(sketch, plumbOf(sketch)));
    const std::vector<BorePlan> plans = cutPlansOf(sketch, parts);
    QCOMPARE(plans.size(), std::size_t{2});
    // Three of 1335 mm: 4005 of one roll of 5 m, or of two of 3 m. The 25 mm bore has the 3 m roll alone.
    QCOMPARE(plans[0].cuts.size(), std::size_t{3});
    QCOMPARE(plans[0].plan.bought, std::int64_t{500'000});
    QCOMPARE(plans[1].plan.bought, std::int64_t{300'000});
}

void TestEstimate::amountsTooLargeAreRefused()
{
    Quote quote = sheetOne();
    quote.prices.items[0].price_minor = std::numeric_limits<std::int64_t>::max() / 100;
    const Estimate estimate = estimateOf(sketchOf(quote), twoRows());
    QCOMPARE(estimate.status, EstimateStatus::refused);
    QVERIFY(!estimate.message.empty());
    QVERIFY(estimate.lines.empty());
    QCOMPARE(estimate.total_minor, 0);
}

// Own estimate, times what is drawn: one heater, two ports, two hoses, two valves.
void TestEstimate::usualHoursFollowTheDrawing()
{
    const std::vector<JobTask> tasks = tasksOf(soundLoop());
    QCOMPARE(tasks.size(), std::size_t{9});
    std::int64_t hours = 0;
    for (const JobTask& task : tasks) {
        QVERIFY(task.usual);
        hours += task.hours_hundredths;
        QVERIFY(task.repeat_hundredths <= task.hours_hundredths);
    }
    // 1.00 + 1.25 + 2 * 0.50 + 2 * 0.75 + 2 * 0.15 + 1.50 + 1.25 + 1.00 + 0.25
    QCOMPARE(hours, 905);
    QVERIFY(tasksOf(Sketch{}).empty());
}

void TestEstimate::hoursAreEditedAndForgotten()
{
    Sketch sketch = soundLoop();
    QVERIFY(setHours(sketch, "fill", 300, 200));
    const auto fill = [&] {
        const std::vector<JobTask> tasks = tasksOf(sketch);
        return *std::find_if(tasks.begin(), tasks.end(),
                             [](const JobTask& task) { return task.id == "fill"; });
    };
    QCOMPARE(fill().hours_hundredths, 300);
    QVERIFY(!fill().usual);
    QVERIFY(forgetHours(sketch, "fill"));
    QCOMPARE(fill().hours_hundredths, 125);
    QVERIFY(fill().usual);
    QVERIFY(!forgetHours(sketch, "fill"));
    QVERIFY(!setHours(sketch, "no-such-task", 1, 1));
    const std::string own = addOwnTask(sketch, "Move the horn");
    QVERIFY(own != addOwnTask(sketch, "Another"));
    QVERIFY(setHours(sketch, own, 50, 40));
    const JobTask moved = *(tasksOf(sketch).end() - 2);
    QCOMPARE(moved.name, std::string("Move the horn"));
    QCOMPARE(moved.repeat_hundredths, 40);
    QVERIFY(moved.own);
}

QTEST_APPLESS_MAIN(TestEstimate)
#include "test_estimate.moc"
