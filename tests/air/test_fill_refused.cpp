#include "tests/air/worked_loop.h"
#include "tests/near.h"

#include "core/air/purge.h"

#include <functional>
#include <limits>
#include <string>
#include <vector>

using namespace siphonwright;
using siphonwright::test::workedFill;

namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

struct SpoiledFill {
    const char* name;
    const char* message;
    std::function<void(FillRequest&)> spoil;
};

std::vector<SpoiledFill> spoiledLoops()
{
    const char* const hose = "a hose has no length";
    const char* const bore = "a hose has no bore";
    const char* const opening = "an opening has no bore";
    const char* const chamber = "a chamber has no volume";
    return {
        {"no line", hose, [](FillRequest& r) { r.loops[0].supply.line = {}; }},
        {"no line back", hose, [](FillRequest& r) { r.loops[0].return_hose.line = {}; }},
        {"no bores", bore, [](FillRequest& r) { r.loops[0].supply.bores.clear(); }},
        {"a bore of nothing", bore, [](FillRequest& r) { r.loops[0].return_hose.bores[0].bore_mm = 0; }},
        {"a bore of no end", bore, [](FillRequest& r) { r.loops[0].supply.bores[0].bore_mm = infinite; }},
        {"a bore wider than a yard", bore, [](FillRequest& r) { r.loops[0].supply.bores[0].bore_mm = 1e6; }},
        {"a port without bore", opening, [](FillRequest& r) { r.loops[0].return_port.bore_mm = 0; }},
        {"a port that points nowhere", opening, [](FillRequest& r) { r.loops[0].inlet.axis.x = no_number; }},
        {"a chamber without bore", chamber, [](FillRequest& r) { r.loops[0].chamber.bore_mm = no_number; }},
        {"a chamber of no height", chamber,
         [](FillRequest& r) { r.loops[0].chamber.top = r.loops[0].chamber.bottom; }},
        {"a chamber of no end", chamber, [](FillRequest& r) { r.loops[0].chamber.top.z = infinite; }},
        {"a valve nowhere", "a valve has no place",
         [](FillRequest& r) {
             r.loops[0].valves = {{LoopPart::supply, no_number}};
         }},
        {"a bleed nowhere", "a bleed has no place",
         [](FillRequest& r) {
             r.loops[0].bleeds = {{LoopPart::supply, no_number}};
         }},
        {"an element nowhere", "the element has no height",
         [](FillRequest& r) { r.loops[0].element_top_mm = no_number; }},
        {"a jacket of one level", "the jacket's volume needs two levels",
         [](FillRequest& r) { r.jacket.pop_back(); }},
        {"a jacket that does not rise", "the jacket's volume must rise with its level",
         [](FillRequest& r) {
             r.jacket = {{0, 0}, {0, 100}};
         }},
        {"a jacket that does not widen", "the jacket's volume must rise with its level",
         [](FillRequest& r) {
             r.jacket = {{0, 100}, {10, 100}};
         }},
        {"a jacket without level", "the jacket's volume must rise with its level",
         [](FillRequest& r) { r.jacket[0].level_mm = no_number; }},
        {"a jacket without volume", "the jacket's volume must rise with its level",
         [](FillRequest& r) { r.jacket[0].volume_ml = -infinite; }},
    };
}

std::vector<SpoiledFill> spoiledWishes()
{
    const char* const level = "the target level is no number";
    const char* const pressures = "density and pressures must be over zero";
    return {
        {"no target", level, [](FillRequest& r) { r.target_level_mm = no_number; }},
        {"drained to nowhere", level, [](FillRequest& r) { r.drained_to_mm = infinite; }},
        {"no density", pressures, [](FillRequest& r) { r.density_kg_per_m3 = 0; }},
        {"no atmosphere", pressures, [](FillRequest& r) { r.atmosphere_Pa = no_number; }},
        {"a vacuum under nothing", pressures, [](FillRequest& r) { r.vacuum_Pa = -1; }},
        {"less than no air", "the air in pre-filled hoses must not be under zero",
         [](FillRequest& r) { r.prefilled_air_ml = -1; }},
        {"air without end", "the air in pre-filled hoses must not be under zero",
         [](FillRequest& r) { r.prefilled_air_ml = infinite; }},
        {"a vacuum over the atmosphere", "the vacuum must lie under the atmosphere",
         [](FillRequest& r) {
             r.method = FillMethod::under_vacuum;
             r.vacuum_Pa = 2e5;
         }},
        {"fed from below where no loop is", "there is no loop to feed",
         [](FillRequest& r) {
             r.method = FillMethod::from_below;
             r.feed_loop = 1;
         }},
        {"a valve of a loop that is not there", "there is no such valve",
         [](FillRequest& r) {
             r.then_open = {{1, 0}};
         }},
        {"a valve that is not there", "there is no such valve",
         [](FillRequest& r) {
             r.then_open = {{0, 0}};
         }},
    };
}

} // namespace

class TestFillRefused : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatCannotBeFilledIsRefusedAndSaid();
    void withoutLoopsTheJacketAloneIsFilled();
    void whatIsNotFilledIsNeitherPurgedNorCooled();
    void aWishThatNoPumpFulfilsIsRefused();
    void coolantThatDoesNotShrinkStaysWhereItIs();
    void inSmallPoursItEndsTheSame();
};

void TestFillRefused::whatCannotBeFilledIsRefusedAndSaid()
{
    for (const auto& rows : {spoiledLoops(), spoiledWishes()})
        for (const SpoiledFill& row : rows) {
            FillRequest request = workedFill();
            row.spoil(request);
            const FillResult result = fill(request);
            QVERIFY2(result.status == FillStatus::bad_input, row.name);
            QVERIFY2(result.message == row.message, row.name);
            QVERIFY2(result.events.empty() && result.poured_ml == 0, row.name);
        }
}

// The jacket holds 10 ml per mm.
void TestFillRefused::withoutLoopsTheJacketAloneIsFilled()
{
    FillRequest request = workedFill();
    request.loops.clear();
    const FillResult result = fill(request);
    QVERIFY(result.status == FillStatus::filled);
    VERIFY_NEAR(result.jacket_level_mm, 900, 1e-6);
    VERIFY_NEAR(result.poured_ml, 9000, 1);
    QCOMPARE(result.coolant_ml, 0.0);
}

void TestFillRefused::whatIsNotFilledIsNeitherPurgedNorCooled()
{
    const PurgeResult purged = purge(Filled{}, PurgeRequest{});
    QVERIFY(purged.status == FillStatus::bad_input);
    QCOMPARE(purged.message, std::string("nothing has been filled"));
    QVERIFY(purged.pockets.empty());
    const CooledDown cooled = coolDown(Filled{}, 0.98);
    QVERIFY(cooled.status == FillStatus::bad_input);
    QCOMPARE(cooled.message, std::string("nothing has been filled"));
}

void TestFillRefused::aWishThatNoPumpFulfilsIsRefused()
{
    const FillResult filled = fill(workedFill());
    QVERIFY(filled.status == FillStatus::filled);
    const auto refused = [&](const PurgeRequest& request) {
        const PurgeResult result = purge(filled.end, request);
        return result.status == FillStatus::bad_input ? result.message : std::string("taken");
    };
    PurgeRequest request;
    request.top_up_level_mm = no_number;
    QCOMPARE(refused(request), std::string("the level is no number"));
    for (const double shrinks_to : {0.5, 1.001, no_number}) {
        request = {};
        request.shrinks_to = shrinks_to;
        QCOMPARE(refused(request), std::string("coolant shrinks to between half and all of its volume"));
        QCOMPARE(coolDown(filled.end, shrinks_to).message, refused(request));
    }
    for (const double flow_l_per_min : {-1.0, no_number, infinite}) {
        request = {};
        request.flows = {{flow_l_per_min, FlowSense::forward}};
        QCOMPARE(refused(request), std::string("a pump's flow must not be under zero"));
    }
}

void TestFillRefused::coolantThatDoesNotShrinkStaysWhereItIs()
{
    const FillResult filled = fill(workedFill());
    const CooledDown cooled = coolDown(filled.end, 1);
    QVERIFY(cooled.status == FillStatus::filled);
    VERIFY_NEAR(cooled.jacket_level_mm, filled.jacket_level_mm, 1e-9);
}

void TestFillRefused::inSmallPoursItEndsTheSame()
{
    FillRequest request = workedFill();
    const FillResult at_once = fill(request);
    request.most_step_ml = 100;
    const FillResult slowly = fill(request);
    QVERIFY(slowly.status == FillStatus::filled);
    QVERIFY(slowly.pours > 50);
    VERIFY_NEAR(slowly.poured_ml, at_once.poured_ml, 0.1);
    VERIFY_NEAR(slowly.coolant_ml, at_once.coolant_ml, 0.1);
}

QTEST_APPLESS_MAIN(TestFillRefused)
#include "test_fill_refused.moc"
