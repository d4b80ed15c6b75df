#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/paperwork/csv.h"
#include "core/paperwork/parts_csv.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

PartsList partsOf(const Sketch& sketch)
{
    return siphonwright::partsOf(sketch, resolve(sketch, plumbOf(sketch)));
}

const PartRow* find(const PartsList& parts, ItemKind kind)
{
    const auto found = std::find_if(parts.rows.begin(), parts.rows.end(),
                                    [&](const PartRow& row) { return row.kind == kind; });
    return found == parts.rows.end() ? nullptr : &*found;
}

std::int64_t thousandths(const PartsList& parts, ItemKind kind)
{
    std::int64_t sum = 0;
    for (const PartRow& row : parts.rows)
        sum += row.kind == kind ? row.thousandths.value_or(-1) : 0;
    return sum;
}

std::string wordsOf(const Message& message)
{
    return format(message, UnitSystem::metric);
}

} // namespace

class TestParts : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aSoundLoopIsCounted();
    void rowsAreNumberedAndSayWhereTheyAreUsed();
    void coolantFillsHosesAndChamber();
    void anotherMixtureIsBoughtAsItsPlanHasIt();
    void aBoreNotEnteredIsSaidAndNotGuessed();
    void unknownFactsOfHeaterAndCoolantAreSaid();
    void anOpenEndIsNotCounted();
    void clipsThatTheSpacingRuleWantsAreSaid();
    void aReducerPartsTheHose();
    void whatSitsInAHosePartsIt();
    void aHoseEndIsForAHose();
    void elbowsAreCountedByAngle();
    void eachKindOfPortHasItsOwnAdapter();
    void twoHeatersAreTwoPieces();
    void insulationFollowsTheHose();
    void theTableReadsBackAsText();
    void anEmptyDrawingHasNoParts();
};

// By hand, soundLoop(): each of two hoses has two ends and a valve, so four pushed-on ends and eight clamps.
// Over the hose: 19 + 2 * 4 = 27 mm. Supply hose: 450 + 860 - 2 * 150 + 150 pi/2 = 1245.62 mm stop to stop,
// 60 engagement, up to the next 5 mm: 1310, 25 allowance: 1335 mm. Return hose: straights 430 and hypot(200,
// 10) = 200.25, a turn of 90 deg - atan(10/200) = 87.138 deg: less 2 * 150 tan(43.569 deg) = 285.39, more 150
// * 1.52084 = 228.13, that is 572.99; with 60: 632.99, up to 635, with 25: 660 mm.
void TestParts::aSoundLoopIsCounted()
{
    const PartsList parts = partsOf(soundLoop());
    QCOMPARE(thousandths(parts, ItemKind::heater), 1000);
    QCOMPARE(thousandths(parts, ItemKind::mounting_kit), 1000);
    QCOMPARE(thousandths(parts, ItemKind::hose), 1335 + 660);
    QCOMPARE(thousandths(parts, ItemKind::hose_end), 4000);
    QCOMPARE(thousandths(parts, ItemKind::adapter), 4000);
    QCOMPARE(thousandths(parts, ItemKind::isolation_valve), 2000);
    QCOMPARE(thousandths(parts, ItemKind::clamp), 16'000);
    QCOMPARE(thousandths(parts, ItemKind::clip), 3000);
    QCOMPARE(thousandths(parts, ItemKind::sealant), 1000);
    QCOMPARE(find(parts, ItemKind::clamp)->item, std::string("clamp-27"));
    QCOMPARE(find(parts, ItemKind::hose)->item, std::string("hose-19"));
    QCOMPARE(find(parts, ItemKind::heater)->item, std::string("heater-1500W-120V"));
    QCOMPARE(find(parts, ItemKind::heater)->item, heaterKey(soundLoop().heaters[0]));
    QCOMPARE(parts.cuts.size(), std::size_t{2});
    QCOMPARE(parts.cuts[0].length_mm, 1335.0);
    QCOMPARE(parts.cuts[1].length_mm, 660.0);
    QVERIFY(!find(parts, ItemKind::elbow));
    QVERIFY(!find(parts, ItemKind::insulation));
}

void TestParts::rowsAreNumberedAndSayWhereTheyAreUsed()
{
    const PartsList parts = partsOf(soundLoop());
    for (std::size_t i = 0; i < parts.rows.size(); ++i)
        QCOMPARE(parts.rows[i].number, i + 1);
    const PartRow* valve = find(parts, ItemKind::isolation_valve);
    QCOMPARE(valve->used.size(), std::size_t{2});
    QCOMPARE(valve->used[0].part, (PartRef{PartKind::inline_part, "hose-1", 0}));
    QCOMPARE(wordsOf(valve->used[1].name), std::string("Return hose hose-2, 500 mm from A"));
    QVERIFY(!find(parts, ItemKind::clamp)->notes.empty()); // two an end is practice, and says so
}

// By hand: bore area pi/4 * 19^2 = 283.529 mm2; 1245.62 + 573.00 mm hold 515.63 ml; the chamber
// pi/4 * 80^2 * 280 = 1407.43 ml; half of 1923.06 is 961.53, up to 962 ml.
void TestParts::coolantFillsHosesAndChamber()
{
    Sketch sketch = soundLoop();
    PartsList parts = partsOf(sketch);
    QCOMPARE(thousandths(parts, ItemKind::antifreeze), 962);
    QCOMPARE(thousandths(parts, ItemKind::distilled_water), 962);
    QCOMPARE(find(parts, ItemKind::antifreeze)->item, std::string("antifreeze-ethylene"));
    // 900 ml entered: 1415.63; 40 % are 566.25, up to 567; 60 % are 849.38, up to 850.
    sketch.heaters[0].chamber_volume_ml.value = 900;
    sketch.coolant.volume_percent.value = 40;
    parts = partsOf(sketch);
    QCOMPARE(thousandths(parts, ItemKind::antifreeze), 567);
    QCOMPARE(thousandths(parts, ItemKind::distilled_water), 850);
    sketch.coolant.glycol = Glycol::none;
    parts = partsOf(sketch);
    QVERIFY(!find(parts, ItemKind::antifreeze));
    QCOMPARE(thousandths(parts, ItemKind::distilled_water), 1416);
}

/// By hand, with V in at share p, N empty and w wanted: drain V - w (V + N)/p where only water is added.
void TestParts::anotherMixtureIsBoughtAsItsPlanHasIt()
{
    Sketch sketch = soundLoop();
    sketch.coolant.volume_percent.value = 60;
    sketch.coolant_plan.system_l = 30;
    sketch.coolant_plan.wanted_percent = 50;
    const PartsList parts = partsOf(sketch);
    const double empty_l = [&] {
        Sketch as_it_is = sketch;
        as_it_is.coolant_plan.wanted_percent.reset();
        const PartsList now = partsOf(as_it_is);
        return double(thousandths(now, ItemKind::antifreeze) + thousandths(now, ItemKind::distilled_water)) /
               1000;
    }();
    const double drain_l = std::max(0.0, 30 - 0.5 * (30 + empty_l) / 0.6);
    QVERIFY(drain_l > 1);
    VERIFY_NEAR(double(thousandths(parts, ItemKind::distilled_water)) / 1000, drain_l + empty_l, 0.01);
    QVERIFY(!find(parts, ItemKind::antifreeze));
    QVERIFY(wordsOf(find(parts, ItemKind::distilled_water)->notes[0]).find("drain") != std::string::npos);
}

void TestParts::aBoreNotEnteredIsSaidAndNotGuessed()
{
    Sketch sketch = soundLoop();
    sketch.hoses[supply_hose].edit([](Hose& hose) { hose.bore_mm.value.reset(); });
    const PartsList parts = partsOf(sketch);
    int unsized = 0;
    for (const PartRow& row : parts.rows) {
        const bool of_hose =
            row.kind == ItemKind::hose || row.kind == ItemKind::clamp || row.kind == ItemKind::clip;
        if (!of_hose || row.missing.empty())
            continue;
        ++unsized;
        QVERIFY(row.item.empty()); // no price can be found for it
        QVERIFY(row.size.pattern.empty());
        QVERIFY(row.missing.find("bore not entered") != std::string::npos);
    }
    QCOMPARE(unsized, 3);
    QVERIFY(!parts.cuts[0].bore_mm);
    QCOMPARE(parts.cuts[1].bore_mm, std::optional<double>(19));
    // Its volume is not known either, so neither is the coolant's.
    const PartRow* water = find(parts, ItemKind::distilled_water);
    QVERIFY(!water->thousandths);
    QCOMPARE(water->missing, std::string("bore of Supply hose hose-1 not entered"));
}

void TestParts::unknownFactsOfHeaterAndCoolantAreSaid()
{
    Sketch sketch = soundLoop();
    sketch.heaters[0].rated_V.value.reset();
    sketch.coolant.glycol = Glycol::unknown;
    sketch.coolant.volume_percent.value.reset();
    const PartsList parts = partsOf(sketch);
    QCOMPARE(find(parts, ItemKind::heater)->missing, std::string("rated voltage not entered"));
    QVERIFY(heaterKey(sketch.heaters[0]).empty());
    QCOMPARE(find(parts, ItemKind::antifreeze)->missing, std::string("kind of antifreeze not entered"));
    QVERIFY(!find(parts, ItemKind::antifreeze)->thousandths);
    QCOMPARE(find(parts, ItemKind::distilled_water)->missing, std::string("share of antifreeze not entered"));
    QCOMPARE(find(parts, ItemKind::adapter)->missing, std::string("thread not entered"));
}

void TestParts::anOpenEndIsNotCounted()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) {
        hose.to = {};
        hose.to.open_at = {830, 0, 700};
    });
    const PartsList parts = partsOf(sketch);
    QCOMPARE(thousandths(parts, ItemKind::clamp), 14'000);
    QCOMPARE(thousandths(parts, ItemKind::adapter), 3000);
    QCOMPARE(parts.not_counted.size(), std::size_t{1});
    QVERIFY(wordsOf(parts.not_counted[0]).find("Return hose hose-2") != std::string::npos);
}

// By hand: the supply hose runs 710 mm level to its end, and the last 30 degrees of its bend, 150 pi/6 = 78.5
// mm, are near level too. 788.5 mm at a clip every 300 mm ask for 2 clips, every 400 mm for 1.
void TestParts::clipsThatTheSpacingRuleWantsAreSaid()
{
    Sketch sketch = soundLoop();
    sketch.hoses[supply_hose].edit([](Hose& hose) { hose.clips_mm.clear(); });
    PartsList parts = partsOf(sketch);
    const PartRow* clips = find(parts, ItemKind::clip);
    QCOMPARE(clips->thousandths, std::optional<std::int64_t>(0));
    QCOMPARE(wordsOf(clips->notes.at(0)),
             std::string("Supply hose hose-1 wants 2 more than are drawn, by the spacing rule."));
    sketch.limits = {{"unsupported-span", 400, {}, {}, false, "test"}};
    parts = partsOf(sketch);
    QVERIFY(wordsOf(find(parts, ItemKind::clip)->notes.at(0)).find("one more") != std::string::npos);
    sketch.limits = {{"unsupported-span", {}, {}, {}, true, "test"}};
    parts = partsOf(sketch);
    QVERIFY(!find(parts, ItemKind::clip)); // switched off: nothing is wanted
}

// By hand: the first 500 mm of 1245.62 of 19 mm bore, the rest of 16. The reducer is 60 mm over all, 30 of
// it in either hose, so that their ends meet at its middle: 500 + 30 = 530, with 25: 555; 745.62 + 30 =
// 775.62, up to 780, with 25: 805. Both together are the hose in one piece, with its allowance twice. Clamps:
// start and valve on 19 mm (27 mm over all) 1 + 2 ends, one at the reducer; the other side of it and the end
// on 16 (24 mm over all).
void TestParts::aReducerPartsTheHose()
{
    Sketch sketch = soundLoop();
    sketch.hoses[supply_hose].edit([](Hose& hose) {
        InlinePart reducer;
        reducer.kind = InlineKind::reducer;
        reducer.along_mm = 500;
        reducer.bore_mm = 16;
        hose.parts.push_back(reducer);
    });
    const PartsList parts = partsOf(sketch);
    QCOMPARE(parts.cuts.size(), std::size_t{3});
    QCOMPARE(parts.cuts[0].length_mm, 555.0);
    QCOMPARE(parts.cuts[1].length_mm, 805.0);
    QCOMPARE(parts.cuts[1].bore_mm, std::optional<double>(16));
    const PartRow* reducer = find(parts, ItemKind::reducer);
    QCOMPARE(reducer->item, std::string("reducer-19-16"));
    for (const PartRow& row : parts.rows) {
        if (row.item == "clamp-27")
            QCOMPARE(row.thousandths, std::optional<std::int64_t>((4 + 4) * 2000));
        if (row.item == "clamp-24")
            QCOMPARE(row.thousandths, std::optional<std::int64_t>(2 * 2000));
    }
    QCOMPARE(thousandths(parts, ItemKind::clamp), 20'000);
}

// By hand, from the cut end at A, 30 mm over the hose end: the valve's middle is at 130 mm. Of its 90 mm 30
// are in the hose on either side, so its stops are 15 mm from the middle. A drain of 40 mm has no body left
// between its stops: the hose is cut at its middle. A metal elbow at the hose's only bend reaches over its
// arc, that starts at 450 - 150 = 300 mm and is 150 pi/2 = 235.62 mm long.
void TestParts::whatSitsInAHosePartsIt()
{
    Sketch sketch = soundLoop();
    sketch.hoses[supply_hose].edit([](Hose& hose) {
        hose.parts[0].length_mm = 90;
        InlinePart drain;
        drain.kind = InlineKind::drain;
        drain.along_mm = 700;
        drain.length_mm = 40;
        hose.parts.push_back(drain);
        hose.points[0].bend = BendKind::metal_elbow;
    });
    const PartsList parts = partsOf(sketch);
    QCOMPARE(parts.cuts.size(), std::size_t{2}); // each comes off the roll in one
    QCOMPARE(parts.cuts[0].length_mm, 1335.0);
    const std::vector<HosePart>& parted = parts.cuts[0].parts;
    QCOMPARE(parted.size(), std::size_t{3});
    QVERIFY(parted[0].kind == ItemKind::isolation_valve);
    VERIFY_NEAR(parted[0].from_mm, 115, 1e-9);
    VERIFY_NEAR(parted[0].to_mm, 145, 1e-9);
    QVERIFY(parted[1].kind == ItemKind::elbow);
    VERIFY_NEAR(parted[1].from_mm, 330, 0.01);
    VERIFY_NEAR(parted[1].to_mm, 565.62, 0.01);
    QVERIFY(parted[2].kind == ItemKind::drain);
    VERIFY_NEAR(parted[2].from_mm, 730, 1e-9);
    VERIFY_NEAR(parted[2].to_mm, 730, 1e-9);
}

void TestParts::aHoseEndIsForAHose()
{
    Sketch sketch = soundLoop();
    const PartsList parts = partsOf(sketch);
    QCOMPARE(wordsOf(find(parts, ItemKind::hose_end)->size), std::string("for hose of 19 mm, passage 15 mm"));
    QCOMPARE(wordsOf(find(parts, ItemKind::isolation_valve)->size),
             std::string("for hose of 19 mm, passage 19 mm"));
    sketch.hoses[supply_hose].edit([](Hose& hose) { hose.bore_mm.value.reset(); });
    QCOMPARE(wordsOf(find(partsOf(sketch), ItemKind::hose_end)->size), std::string("passage 15 mm"));
}

void TestParts::elbowsAreCountedByAngle()
{
    Sketch sketch = soundLoop();
    // The supply port points down; an elbow to the right turns 90 degrees, one half-way 45.
    sketch.ports[0].stub.elbow = StubElbow{{0, 0}, 20, 30};
    sketch.ports[1].stub.elbow = StubElbow{{0, 45}, 20, 30};
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.points[0].bend = BendKind::metal_elbow; });
    const PartsList parts = partsOf(sketch);
    QCOMPARE(thousandths(parts, ItemKind::elbow), 3000);
    std::vector<std::string> sizes;
    for (const PartRow& row : parts.rows)
        if (row.kind == ItemKind::elbow)
            sizes.push_back(wordsOf(row.size));
    QCOMPARE(sizes.size(), std::size_t{3});
    QCOMPARE(sizes[0], std::string("passage 15 mm, 90°"));
    QCOMPARE(sizes[1], std::string("passage 15 mm, 45°"));
    // A metal elbow in the hose is pushed into it twice: four clamps more.
    QCOMPARE(thousandths(parts, ItemKind::clamp), 20'000);
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.points[0].bend = BendKind::moulded_elbow; });
    QCOMPARE(thousandths(partsOf(sketch), ItemKind::moulded_elbow), 1000);
    QCOMPARE(thousandths(partsOf(sketch), ItemKind::clamp), 16'000);
}

void TestParts::eachKindOfPortHasItsOwnAdapter()
{
    Sketch sketch = soundLoop();
    sketch.ports[0].kind = PortKind::core_plug;
    sketch.ports[0].thread = "1-1/2 in plug";
    sketch.ports[1].kind = PortKind::lower_hose_tee;
    sketch.heaters[0].inlet.thread = "3/4-14";
    const PartsList parts = partsOf(sketch);
    QCOMPARE(find(parts, ItemKind::core_plug_adapter)->item,
             std::string("core-plug-adapter-1-1/2 in plug-15"));
    QCOMPARE(find(parts, ItemKind::radiator_hose_tee)->missing, std::string("size of the line not entered"));
    QCOMPARE(thousandths(parts, ItemKind::adapter), 2000); // inlet and outlet of the heater
    sketch.ports[1].kind = PortKind::cabin_line;
    const PartsList with_line = partsOf(sketch);
    QVERIFY(find(with_line, ItemKind::cabin_line_tee));
}

void TestParts::twoHeatersAreTwoPieces()
{
    Sketch sketch = soundLoop();
    sketch.heaters.push_back(sketch.heaters[0]);
    sketch.heaters[1].id = "heater-2";
    const PartsList parts = partsOf(sketch);
    QCOMPARE(thousandths(parts, ItemKind::heater), 2000);
    QCOMPARE(find(parts, ItemKind::heater)->used.size(), std::size_t{2});
}

// By hand: 1245.62 up to the next 5 mm is 1250; over the hose 27 mm.
void TestParts::insulationFollowsTheHose()
{
    Sketch sketch = soundLoop();
    sketch.hoses[supply_hose].edit([](Hose& hose) { hose.insulation_mm = 13; });
    const PartsList parts = partsOf(sketch);
    QCOMPARE(thousandths(parts, ItemKind::insulation), 1250);
    QCOMPARE(find(parts, ItemKind::insulation)->item, std::string("insulation-27-13"));
}

void TestParts::theTableReadsBackAsText()
{
    Sketch sketch = soundLoop();
    sketch.hoses[supply_hose].edit([](Hose& hose) { hose.name = "Hose \"low\", long\nand round"; });
    Quote quote;
    quote.vehicles = 2;
    quote.currency.code = "USD";
    quote.prices.items = {{"clamp", "", PriceUnit::each, 295}};
    sketch.quote = Shared<Quote>(quote);
    const PartsList parts = partsOf(sketch);
    const auto table = readCsv(csvOf(parts, sketch, UnitSystem::metric));
    const auto* rows = std::get_if<std::vector<CsvRow>>(&table);
    QVERIFY(rows != nullptr);
    QCOMPARE(rows->size(), parts.rows.size() + 1);
    const PartRow* clamps = find(parts, ItemKind::clamp);
    const CsvRow& line = rows->at(clamps->number);
    // 16 on each of two vehicles at 2.95: 94.40.
    const std::vector<std::string> expected{"7",    "clamp-27", "Hose clamp", "27 mm", "32",
                                            "each", "2.95",     "94.40",      "USD",   ""};
    for (std::size_t i = 0; i < expected.size(); ++i)
        QCOMPARE(line[i].text, expected[i]);
    QVERIFY(line[10].text.find("\"low\", long\nand round") != std::string::npos);
    // What is not priced can be written out as a list to fill in.
    const PriceList wanted = pricesWanted(parts, quote.prices);
    QCOMPARE(wanted.items.size(), parts.rows.size() - 2); // all but the clamps and the unsized adapters
    QVERIFY(std::none_of(wanted.items.begin(), wanted.items.end(),
                         [](const PricedItem& item) { return item.price_minor.has_value(); }));
}

void TestParts::anEmptyDrawingHasNoParts()
{
    const PartsList parts = partsOf(Sketch{});
    QVERIFY(parts.rows.empty());
    QVERIFY(parts.cuts.empty());
}

QTEST_APPLESS_MAIN(TestParts)
#include "test_parts.moc"
