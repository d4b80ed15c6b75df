#include "tests/near.h"

#include "core/geometry/plumb.h"

#include <cmath>

using namespace siphonwright;

/// Expected heights are worked by hand from the sine and cosine of the one angle in play.
class TestPlumb : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void withNothingTiltedHeightIsZ()
    {
        VERIFY_NEAR(Plumb().height({250, 40, 310}), 310, 0);
        VERIFY_NEAR(Plumb(Attitude{}).height({250, 40, 310}), 310, 0);
    }

    void noseUpLiftsTheFrontByTheSineOfTheGrade()
    {
        // 3 %: sin(atan 0.03) = 0.03 / sqrt(1.0009) = 0.0299865.
        Attitude attitude;
        attitude.grade.along_percent = 3;
        VERIFY_NEAR(Plumb(attitude).height({-100, 0, 0}), 2.99865, 1e-5);
        attitude.front_at_left = false;
        VERIFY_NEAR(Plumb(attitude).height({100, 0, 0}), 2.99865, 1e-5);
        // Turned end for end in the vehicle, the engine's front is the low end.
        attitude.heading_deg = 180;
        VERIFY_NEAR(Plumb(attitude).height({100, 0, 0}), -2.99865, 1e-5);
    }

    void mountAngleLowersTheRear()
    {
        // sin 3 deg = 0.0523360, cos 3 deg = 0.9986295.
        Attitude attitude;
        attitude.mount_angle_deg = 3;
        VERIFY_NEAR(Plumb(attitude).height({100, 0, 0}), -5.23360, 1e-5);
        VERIFY_NEAR(Plumb(attitude).height({0, 0, 100}), 99.86295, 1e-5);
        attitude.front_at_left = false;
        VERIFY_NEAR(Plumb(attitude).height({100, 0, 0}), 5.23360, 1e-5);
    }

    void leanBringsTheTopToTheEnginesOwnRight()
    {
        // sin 10 deg = 0.1736482, cos 10 deg = 0.9848078. Front to the left, right is behind the drawing.
        Attitude attitude;
        attitude.lean_deg = 10;
        VERIFY_NEAR(Plumb(attitude).height({0, 100, 0}), -17.36482, 1e-5);
        VERIFY_NEAR(Plumb(attitude).height({0, 0, 100}), 98.48078, 1e-5);
        attitude.front_at_left = false;
        VERIFY_NEAR(Plumb(attitude).height({0, 100, 0}), 17.36482, 1e-5);
    }

    void anEngineAcrossTheVehicleFeelsTheCrossGradeAlongItsLength()
    {
        // Front towards the vehicle's right, right side up 4 %: 0.04 / sqrt(1.0016) = 0.0399680.
        Attitude attitude;
        attitude.heading_deg = 90;
        attitude.grade.across_percent = 4;
        VERIFY_NEAR(Plumb(attitude).height({-100, 0, 0}), 3.99680, 1e-5);
        VERIFY_NEAR(Plumb(attitude).height({0, 100, 0}), 0, 1e-9);
        // Nose up 3 % then lifts its left side, which is towards the viewer.
        attitude.grade.across_percent = 0;
        attitude.grade.along_percent = 3;
        VERIFY_NEAR(Plumb(attitude).height({0, -100, 0}), 2.99865, 1e-5);
    }

    void aLevelReadsEachOfTwoGradesByItself()
    {
        Attitude attitude;
        attitude.grade.along_percent = 8;
        attitude.grade.across_percent = 5;
        const Plumb plumb(attitude);
        VERIFY_NEAR(std::tan(std::asin(plumb.height({-1, 0, 0}))), 0.08, 1e-12);
        VERIFY_NEAR(std::tan(std::asin(plumb.height({0, 1, 0}))), 0.05, 1e-12);
        VERIFY_NEAR(length(plumb.up()), 1, 1e-15);
    }

    void mountAngleAndGradeAlongAddUp()
    {
        // 1 in 20 is 2.862405 deg: nose-down ground levels an engine mounted front up by as much.
        Attitude attitude;
        attitude.grade.along_percent = -5;
        attitude.mount_angle_deg = 2.8624052261;
        VERIFY_NEAR(Plumb(attitude).height({1000, 0, 0}), 0, 1e-6);
        VERIFY_NEAR(Plumb(attitude).height({0, 0, 1000}), 1000, 1e-6);
    }

    void leanIsTakenAfterMountAngle()
    {
        // Stood on its rear the long axis is plumb, and turning about it lifts nothing.
        Attitude attitude;
        attitude.mount_angle_deg = 90;
        attitude.lean_deg = 30;
        VERIFY_NEAR(Plumb(attitude).height({-100, 0, 0}), 100, 1e-9);
        VERIFY_NEAR(Plumb(attitude).height({0, 70, 40}), 0, 1e-9);
    }

    void absurdAnglesStillGiveAUnitVector()
    {
        Attitude attitude;
        attitude.grade.along_percent = 1e300;
        attitude.grade.across_percent = -1e300;
        attitude.lean_deg = 1e18;
        VERIFY_NEAR(length(Plumb(attitude).up()), 1, 1e-12);
    }
};

QTEST_APPLESS_MAIN(TestPlumb)
#include "test_plumb.moc"
