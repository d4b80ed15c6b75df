#include "tests/near.h"

#include "core/sketch/edits.h"

using namespace siphonwright;

namespace {

bool samePlace(Vec3 a, Vec3 b)
{
    return test::near(distance(a, b), 0, 1e-9);
}

} // namespace

class TestPose : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void heaterAxesTiltThenTurn();
    void orientationHasFiveDegreesOfGrace_data();
    void orientationHasFiveDegreesOfGrace();
};

void TestPose::heaterAxesTiltThenTurn()
{
    Heater heater;
    heater.position = {10, 20, 30};
    heater.tilt_deg = 90; // its top lies to the right
    QVERIFY(samePlace(heaterPoint(heater, {0, 0, 100}), {110, 20, 30}));
    QVERIFY(samePlace(heaterPoint(heater, {100, 0, 0}), {10, 20, -70}));
    heater.turn_deg = 90; // then away from the viewer
    QVERIFY(samePlace(heaterPoint(heater, {0, 0, 100}), {10, 120, 30}));
    QVERIFY(samePlace(heaterPoint(heater, {0, 100, 0}), {-90, 20, 30}));
    heater.outlet.offset = {0, 0, 100};
    heater.outlet.axis = {0, 90};
    const Opening opening = nozzleOpening(heater, NozzleKind::outlet);
    QVERIFY(samePlace(opening.at, {10, 120, 30}));
    QVERIFY(samePlace(opening.axis, {0, 1, 0}));
}

void TestPose::orientationHasFiveDegreesOfGrace_data()
{
    QTest::addColumn<double>("tilt_deg");
    QTest::addColumn<Orientation>("expected");
    const auto row = [](double tilt_deg, Orientation expected) {
        QTest::addRow("%g", tilt_deg) << tilt_deg << expected;
    };
    row(0, Orientation::vertical);
    row(-5, Orientation::vertical);
    row(5.1, Orientation::inclined);
    row(-84.9, Orientation::inclined);
    row(85, Orientation::horizontal);
    row(-95, Orientation::horizontal);
    row(95.1, Orientation::inverted);
    row(180, Orientation::inverted);
    row(270, Orientation::horizontal);
    row(358, Orientation::vertical);
}

void TestPose::orientationHasFiveDegreesOfGrace()
{
    QFETCH(double, tilt_deg);
    Heater heater;
    heater.tilt_deg = tilt_deg;
    QTEST(orientationOf(heater), "expected");
}

QTEST_APPLESS_MAIN(TestPose)
#include "test_pose.moc"
