#include "tests/air/worked_loop.h"
#include "tests/near.h"

#include "core/air/purge.h"

#include <QFile>

#include <cmath>
#include <limits>
#include <numbers>

using namespace siphonwright;
using siphonwright::test::hose;
using siphonwright::test::workedFill;

namespace {

double sineOf(double degrees)
{
    return std::sin(degrees * std::numbers::pi / 180);
}

/// Fields of a line of comma-separated values, of which a quoted one may hold commas.
QStringList fieldsOf(const QString& line)
{
    QStringList fields(QString{});
    bool quoted = false;
    for (const QChar c : line) {
        if (c == u'"')
            quoted = !quoted;
        else if (c == u',' && !quoted)
            fields.append(QString());
        else
            fields.last().append(c);
    }
    return fields;
}

PurgeRequest pumped(double flow_l_per_min)
{
    PurgeRequest request;
    request.flows = {{flow_l_per_min, FlowSense::forward}};
    request.top_up_level_mm = 900;
    return request;
}

} // namespace

class TestPurge : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void clearingVelocitiesAreThePublishedOnes_data()
    {
        QTest::addColumn<QString>("formula");
        QTest::addColumn<double>("bore_mm");
        QTest::addColumn<double>("fall_deg");
        QTest::addColumn<double>("expected");
        QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/tests/air/data/clearing.csv"));
        QVERIFY(file.open(QIODevice::ReadOnly | QIODevice::Text));
        file.readLine(); // names of the columns
        for (int row = 1; !file.atEnd(); ++row) {
            const QStringList fields = fieldsOf(QString::fromUtf8(file.readLine()).trimmed());
            QCOMPARE(fields.size(), 6);
            QTest::addRow("row %d, %s", row, qPrintable(fields[0]))
                << fields[0] << fields[1].toDouble() << fields[2].toDouble() << fields[3].toDouble();
        }
    }

    void clearingVelocitiesAreThePublishedOnes()
    {
        QFETCH(QString, formula);
        QFETCH(double, bore_mm);
        QFETCH(double, fall_deg);
        QFETCH(double, expected);
        const double sine = sineOf(fall_deg);
        double actual = 0;
        if (formula == QLatin1String("kalinske_bliss_flow"))
            actual = clearingFlowKalinskeBliss(bore_mm, sine) * 60000;
        else if (formula == QLatin1String("escarameia_large_pocket"))
            actual = clearingEscarameia(bore_mm, sine, 1000);
        else if (formula == QLatin1String("wisner"))
            actual = clearingWisner(bore_mm, sine);
        else
            QFAIL("a formula that is not known");
        VERIFY_NEAR(actual, expected, 1e-4 * expected);
    }

    void aSmallPocketClearsAtALowerVelocityAfterEscarameia()
    {
        // a = 0.45, 0.50, 0.57, 0.61 by n = 4 V/(pi D^3): from memory of Escarameia 2007. Level, so V = a
        // sqrt(g D); a bore of 20 mm holds pi D^3/4 = 6.283 ml at n = 1.
        const double scale = std::sqrt(9.80665 * 0.020);
        VERIFY_NEAR(clearingEscarameia(20, 0, 0.05 * 6.283), 0.45 * scale, 1e-9);
        VERIFY_NEAR(clearingEscarameia(20, 0, 0.10 * 6.283), 0.50 * scale, 1e-9);
        VERIFY_NEAR(clearingEscarameia(20, 0, 0.20 * 6.283), 0.57 * scale, 1e-9);
        VERIFY_NEAR(clearingEscarameia(20, 0, 6.283), 0.61 * scale, 1e-9);
    }

    void kentsFormIsThatGiven()
    {
        // V/sqrt(g D) = 0.55 + 0.5 sqrt(sin): Kent 1952 as corrected by later authors, from memory. 30 deg.
        VERIFY_NEAR(clearingKent(25.4, 0.5), (0.55 + 0.5 * std::sqrt(0.5)) * std::sqrt(9.80665 * 0.0254),
                    1e-9);
    }

    void naturalCirculationNeverClearsAPocket()
    {
        // 0.02 to 0.1 m/s in hoses of 16 to 38 mm, at falls from 5 degrees up.
        for (const double bore_mm : {16.0, 19.05, 25.4, 38.1}) {
            for (const double fall_deg : {5.0, 30.0, 90.0})
                QVERIFY(clearingRange(bore_mm, sineOf(fall_deg), 100).least_m_per_s > 0.1);
        }
    }

    void theCriticalHeadIsThatOfACircularChannel()
    {
        // y + A/2T of a 19 mm bore at 5, 10 and 15 g/s of coolant of 1068 kg/m3: 4.3, 6.2, 7.7 mm (own
        // calculation from the definition of critical flow, A^3/T = Q^2/g).
        VERIFY_NEAR(criticalHead(19, 0.005 / 1068), 4.3, 0.05);
        VERIFY_NEAR(criticalHead(19, 0.010 / 1068), 6.2, 0.05);
        VERIFY_NEAR(criticalHead(19, 0.015 / 1068), 7.7, 0.05);
        VERIFY_NEAR(criticalHead(19, 0), 0, 0);
        QVERIFY(criticalHead(19, 1) <= 19);
    }

    void aPocketTakesItsHeight()
    {
        // A pocket's head loss is in essence its vertical height (May, Allen and Nelson 2018, Int. J.
        // Hydraulic Eng. 7(3):51-57). Behind a crest over a long straight fall the pocket of V ml less what
        // lies over the crest's floor is V/A long, and its height that times the fall's sine: the hoof at its
        // lower surface counts as half.
        FillRequest request = workedFill();
        request.loops[0].supply = hose({{{0, 0, 300}, 0}, {{120, 0, 600}, 0}, {{400, 0, 120}, 0}}, 19.05);
        const FillResult result = fill(request);
        const AirPocket pocket = airPockets(result.end).front();
        const Path& supply = request.loops[0].supply;
        const double crest = std::hypot(120, 300);
        const double floor = 600 - 19.05 / 2;
        double gas = 0;
        for (const std::size_t i : pocket.cells)
            gas += result.end.state.cells[i].gas;
        const double pressure = result.end.state.atmosphere_mm + 900 - floor;
        const double before_ml = boreVolumeOver(supply, Plumb(), floor, 0, crest);
        const double area = std::numbers::pi / 4 * 19.05 * 19.05;
        const double along = (gas / pressure - before_ml) * 1000 / area;
        const double sine = 480 / std::hypot(280, 480);
        VERIFY_NEAR(pocket.forward_mm, floor - (600 - along * sine), 0.01);
    }

    void moreFlowRaisesTheUpstreamSurfaceByItsCriticalHead()
    {
        const FillResult result = fill(workedFill());
        const AirPocket pocket = airPockets(result.end).front();
        const double at_rest = pocketHead(result.end, pocket, FlowSense::forward, 0);
        const double flowing = pocketHead(result.end, pocket, FlowSense::forward, 0.010 / 1068);
        // The upstream surface lies higher by E_c, and what no longer fits there lies farther down.
        QVERIFY(flowing > at_rest + 6);
        QVERIFY(flowing < at_rest + 30);
    }

    void aStrongPumpClearsTheHoseButNotTheChamberAndItsVolumeIsToppedUp()
    {
        const Filled filled = fill(workedFill()).end;
        const double gas_ml = airPockets(filled).front().gas_ml;
        const PurgeResult result = purge(filled, pumped(12));
        QCOMPARE(result.status, FillStatus::filled);
        QCOMPARE(result.pockets.size(), std::size_t{2});
        QCOMPARE(result.pockets[0].verdict, Clearing::cleared);
        QCOMPARE(result.pockets[1].verdict, Clearing::stays);
        VERIFY_NEAR(result.topped_up_ml, gas_ml, 1e-3);
        VERIFY_NEAR(result.lowest_level_mm, 900 - gas_ml / 10, 0.02); // the jacket holds 10 ml per mm
        QCOMPARE(airPockets(result.end).size(), std::size_t{1});
        QCOMPARE(airPockets(result.end)[0].part, LoopPart::chamber);
    }

    void betweenTheFormsItMayClearAndUnderThemItStays()
    {
        const Filled filled = fill(workedFill()).end;
        const ClearingRange range = purge(filled, pumped(1)).pockets.at(0).clears;
        const double area = std::numbers::pi / 4 * 0.01905 * 0.01905;
        const double between = (range.least_m_per_s + range.greatest_m_per_s) / 2 * area * 60000;
        QCOMPARE(purge(filled, pumped(between)).pockets.at(0).verdict, Clearing::may_clear);
        QCOMPARE(purge(filled, pumped(1)).pockets.at(0).verdict, Clearing::stays);
        QCOMPARE(airPockets(purge(filled, pumped(between)).end).size(), std::size_t{2});
        PurgeRequest hopeful = pumped(between);
        hopeful.take_what_may_clear = true;
        QCOMPARE(airPockets(purge(filled, hopeful).end).size(), std::size_t{1});
    }

    void coolantThatShrinksLowersTheLevelByItsVolume()
    {
        // Filled without air: everything that goes is missing from the jacket, 10 ml per mm.
        FillRequest request = workedFill();
        FillLoop& loop = request.loops[0];
        loop.supply = hose({{{0, 0, 300}, 0}, {{400, 0, 120}, 0}}, 19.05);
        loop.return_hose = hose({{{430, 0, 345}, 0}, {{430, 0, 500}, 100}, {{100, 0, 750}, 0}}, 19.05);
        loop.outlet.axis = {0, 0, 1};
        const FillResult result = fill(request);
        const CooledDown cold = coolDown(result.end, 0.99);
        QCOMPARE(cold.status, FillStatus::filled);
        VERIFY_NEAR(cold.jacket_level_mm, 900 - 0.01 * (9000 + result.coolant_ml) / 10, 1e-4);
    }

    void whatMakesNoSenseIsRefused()
    {
        const Filled filled = fill(workedFill()).end;
        const double nan = std::numeric_limits<double>::quiet_NaN();
        QCOMPARE(purge(filled, pumped(nan)).status, FillStatus::bad_input);
        QCOMPARE(purge(filled, pumped(-1)).status, FillStatus::bad_input);
        QCOMPARE(purge({}, pumped(10)).status, FillStatus::bad_input);
        QCOMPARE(coolDown(filled, nan).status, FillStatus::bad_input);
        QCOMPARE(coolDown(filled, 1.1).status, FillStatus::bad_input);
        QVERIFY(!coolDown(filled, 0).message.empty());
        FillRequest request = workedFill();
        request.target_level_mm = nan;
        QCOMPARE(fill(request).status, FillStatus::bad_input);
        request = workedFill();
        request.loops[0].supply.line = Centreline();
        QCOMPARE(fill(request).status, FillStatus::bad_input);
        request = workedFill();
        request.jacket = {{0, 0}, {100, -5}};
        QVERIFY(!fill(request).message.empty());
        request = workedFill();
        request.loops[0].inlet.bore_mm = nan;
        QCOMPARE(fill(request).status, FillStatus::bad_input);
        request = workedFill();
        request.density_kg_per_m3 = 0;
        QCOMPARE(fill(request).status, FillStatus::bad_input);
    }
};

QTEST_APPLESS_MAIN(TestPurge)
#include "test_purge.moc"
