#include "tests/near.h"

#include "core/geometry/droop.h"

using namespace siphonwright;

class TestDroop : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aStraightFallSagsThreeBelowItsEnd()
    {
        // Sharp, falling 50 to the corner and 50 more to the end: once the corner stands 3 mm under the end
        // the invert there is 3 mm under its rim (the same k on both: the second leg's, which is the
        // flatter).
        const std::vector<Corner> corners = {{{0, 0, 0}, 0}, {{500, 0, -50}, 0}, {{1000, 0, -100}, 0}};
        const Droop droop = droopMargin(corners, 19, Plumb());
        QVERIFY(droop.margin_mm.has_value());
        VERIFY_NEAR(*droop.margin_mm, 53, 0.011);
        QCOMPARE(droop.corner, std::size_t(1));
        VERIFY_NEAR(droop.along_mm, std::hypot(500.0, 50.0), 1e-6);
        QVERIFY(!droop.already_trapped && !droop.more_than_150);
    }

    void theWeakestCornerCounts()
    {
        // The second corner stands only 10 over the end, the first 60 over it and 50 over the second.
        const std::vector<Corner> corners = {
            {{0, 0, 100}, 0}, {{300, 0, 60}, 0}, {{600, 0, 10}, 0}, {{900, 0, 0}, 0}};
        const Droop droop = droopMargin(corners, 19, Plumb());
        VERIFY_NEAR(droop.margin_mm.value_or(-1), 13, 0.011);
        QCOMPARE(droop.corner, std::size_t(2));
        // Held where it is weak, the hose stands on its other corner.
        const auto path_of = [](const std::vector<Corner>& moved) {
            Path path;
            path.line = Centreline(moved);
            path.bores = {{0, path.line.length(), 19}};
            return path;
        };
        const Droop held = droopMargin(corners, 1, 2, Plumb(), path_of);
        VERIFY_NEAR(held.margin_mm.value_or(-1), 53, 0.011);
        QCOMPARE(held.corner, std::size_t(1));
    }

    void sagIsAlongPlumb()
    {
        // Nose up 10 % tilts the fall of 1 in 10 to level: 3 mm of sag, less the 0.0 of its two equal legs.
        const std::vector<Corner> corners = {{{0, 0, 0}, 0}, {{500, 0, 50}, 0}, {{1000, 0, 100}, 0}};
        Attitude attitude;
        attitude.grade.along_percent = 10;
        const Droop droop = droopMargin(corners, 19, Plumb(attitude));
        VERIFY_NEAR(droop.margin_mm.value_or(-1), 3, 0.011);
    }

    void aTrapThatIsThereHasNoMargin()
    {
        const Droop droop = droopMargin({{{0, 0, 0}, 0}, {{300, 0, 40}, 50}, {{600, 0, 0}, 0}}, 19, Plumb());
        QVERIFY(droop.already_trapped);
        QVERIFY(!droop.margin_mm.has_value());
        QVERIFY(!droop.more_than_150);
        QVERIFY(droop.already_humps);
        const Droop dip = droopMargin({{{0, 0, 40}, 0}, {{300, 0, 0}, 50}, {{600, 0, 40}, 0}}, 19, Plumb());
        QVERIFY(dip.already_trapped && !dip.already_humps); // which keeps coolant, and no air
    }

    void aSteepFallNeverTraps()
    {
        const Droop droop =
            droopMargin({{{0, 0, 0}, 0}, {{300, 0, -400}, 50}, {{600, 0, -800}, 0}}, 19, Plumb());
        QVERIFY(droop.more_than_150);
        QVERIFY(!droop.margin_mm.has_value());
        QVERIFY(!droop.already_trapped);
    }

    void nothingToSagIsMoreThanEnough()
    {
        QVERIFY(droopMargin({}, 19, Plumb()).more_than_150);
        QVERIFY(droopMargin({{{0, 0, 0}, 0}, {{9, 0, 0}, 0}}, 19, Plumb()).more_than_150);
    }
};

QTEST_APPLESS_MAIN(TestDroop)
#include "test_droop.moc"
