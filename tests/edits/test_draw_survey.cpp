#include "tests/near.h"

#include "core/geometry/plumb.h"
#include "core/sketch/draw_survey.h"
#include "core/sketch/edits.h"
#include "core/sketch/file.h"
#include "core/sketch/survey_letters.h"
#include "core/sketch/templates.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace siphonwright;

namespace {

SurveyPoint railPoint(double height_mm, double along_mm, double across_mm = 0)
{
    return {height_mm, SurveyFrom::frame_rail, along_mm, across_mm};
}

SurveyPoint floorPoint(double height_mm, double along_mm, double across_mm = 0)
{
    return {height_mm, SurveyFrom::floor, along_mm, across_mm};
}

/// An engine whose jacket's front end is drawn at x = -450.
Sketch drawnEngine(EngineEnd front = EngineEnd::left)
{
    Sketch sketch;
    Engine engine;
    engine.front = front;
    engine.outline = {{-500, -200}, {500, -200}, {500, 700}, {-500, 700}};
    engine.jacket = {{-450, 300}, {450, 300}, {450, 600}, {-450, 600}};
    sketch.engine = engine;
    return sketch;
}

Survey levelSurvey()
{
    Survey survey;
    survey.jacket_lowest = railPoint(280, 100);
    survey.jacket_highest = railPoint(620, 100);
    survey.supply_port =
        SurveyPort{railPoint(300, 60, -140), PortKind::core_plug, "3/8-18", 14.0, SurveyFacing::left, -10};
    survey.return_port = SurveyPort{railPoint(590, 880, 20), {}, "", {}, SurveyFacing::rear, {}};
    survey.thermostat = railPoint(640, -30, 10);
    survey.tank_cap = railPoint(800, -300, 0);
    survey.mark_cold_min = SurveyPoint{740, SurveyFrom::frame_rail, {}, {}};
    survey.mark_cold_full = SurveyPoint{770, SurveyFrom::frame_rail, {}, {}};
    survey.block_length_mm = 920;
    survey.floor_slope_deg = 0;
    survey.rail_slope_deg = 0;
    survey.engine_slope_deg = 0;
    return survey;
}

const Port& portOf(const Sketch& sketch, PortRole role)
{
    return *std::find_if(sketch.ports.begin(), sketch.ports.end(),
                         [role](const Port& port) { return port.role == role; });
}

bool says(const std::vector<Message>& list, const std::string& words)
{
    return std::any_of(list.begin(), list.end(), [&](const Message& one) {
        return format(one, UnitSystem::metric).find(words) != std::string::npos;
    });
}

} // namespace

class TestDrawSurvey : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyLetterIsThereOnceAndCanBeSetAndReadBack()
    {
        Survey survey;
        std::string letters;
        for (const SurveyLetter& letter : surveyLetters()) {
            QVERIFY(letters.find(letter.letter) == std::string::npos);
            letters += letter.letter;
            if (letter.isPoint()) {
                const SurveyPoint point = floorPoint(letter.letter, 10);
                setSurveyPoint(survey, letter.letter, point);
                QVERIFY(surveyPoint(survey, letter.letter) == point);
            } else {
                setSurveyNumber(survey, letter.letter, letter.letter / 10.0);
                QVERIFY(surveyNumber(survey, letter.letter) == letter.letter / 10.0);
            }
        }
        QVERIFY(letters.find_first_of("IOQ") == std::string::npos);
        for (const SurveyLetter& letter : surveyLetters()) {
            setSurveyPoint(survey, letter.letter, {});
            setSurveyNumber(survey, letter.letter, {});
        }
        QVERIFY(survey == Survey{});
    }

    void onTheLevelHeightsAndStationsAreDrawnAsMeasured()
    {
        Sketch sketch = drawnEngine();
        sketch.survey = levelSurvey();
        QVERIFY(drawFromSurvey(sketch));
        const Engine& engine = *sketch.engine;
        // Jacket from 280 to 620, from the front face at x = -450 to 920 behind it.
        QVERIFY(engine.jacket[0] == (Vec2{-450, 280}));
        QVERIFY(engine.jacket[2] == (Vec2{470, 620}));
        QVERIFY(engine.jacket_source == Source::measured);
        const Port& supply = portOf(sketch, PortRole::supply);
        QVERIFY(supply.position == (Vec3{-390, -140, 300}));
        QVERIFY(supply.position_source == Source::measured);
        QVERIFY(supply.kind == PortKind::core_plug);
        QCOMPARE(supply.thread, std::string("3/8-18"));
        QVERIFY(supply.bore_mm == (Fact<double>{14.0, Source::measured}));
        QVERIFY(supply.axis == (Direction{270, -10}));
        QVERIFY(portOf(sketch, PortRole::return_).position == (Vec3{430, 20, 590}));
        QVERIFY(engine.thermostat->position == (Vec3{-480, 10, 640}));
        QVERIFY(sketch.tank->position == (Vec3{-750, 0, 800}));
        QVERIFY(sketch.tank->cold_min_mm == (Fact<double>{740, Source::measured}));
        QVERIFY(sketch.tank->cold_full_mm == (Fact<double>{770, Source::measured}));
        VERIFY_NEAR(engine.mount_angle_deg, 0, 1e-12);
    }

    void withTheFrontAtTheRightEverythingIsTurnedRound()
    {
        Sketch sketch = drawnEngine(EngineEnd::right);
        sketch.survey = levelSurvey();
        QVERIFY(drawFromSurvey(sketch));
        const Port& supply = portOf(sketch, PortRole::supply);
        QVERIFY(supply.position == (Vec3{390, 140, 300}));
        QVERIFY(supply.axis == (Direction{90, -10}));
        QVERIFY(sketch.engine->jacket[0] == (Vec2{-470, 280})); // the front end stays at x = 450
    }

    void aSlopingFloorIsTakenOutOfHeightsMeasuredFromIt()
    {
        // Worked by hand: the floor falls to the rear by tan 2 deg = 0.034921, so by 31.43 mm at station
        // 900; rail and engine are level, the rail 640 over the floor at station 0. What stands 1200 over the
        // floor there stands 1200 - 640 - 31.43 = 528.57 over the rail.
        Sketch sketch = drawnEngine();
        Survey survey;
        survey.floor_slope_deg = 2;
        survey.rail_slope_deg = 0;
        survey.engine_slope_deg = 0;
        survey.rail_over_floor_mm = 640;
        const SurveyAxes axes(survey, sketch);
        const Vec3 at = axes.drawn(floorPoint(1200, 900), {}).value();
        VERIFY_NEAR(at.z, 528.57, 0.005);
        VERIFY_NEAR(at.x, 450, 1e-9);
        // The engine lies rear-high to that floor: mount angle 0 - 2.
        VERIFY_NEAR(axes.mountAngle().value(), -2, 1e-12);
    }

    void theRakeOfTheRailIsTakenOutOfHeightsMeasuredFromIt()
    {
        // Rail 1.5 deg lower at the rear, engine level: at station 1000 along the rail the rail lies
        // 1000 sin 1.5 deg = 26.177 lower and 1000 cos 1.5 deg = 999.657 behind. What stands 500 over it
        // there is drawn 473.823 up.
        Sketch sketch = drawnEngine();
        Survey survey;
        survey.floor_slope_deg = 0;
        survey.rail_slope_deg = 1.5;
        survey.engine_slope_deg = 0;
        const Vec3 at = SurveyAxes(survey, sketch).drawn(railPoint(500, 1000), {}).value();
        VERIFY_NEAR(at.z, 473.823, 0.001);
        VERIFY_NEAR(at.x, -450 + 999.657, 0.001);
    }

    void theDrawingIsSquareToTheEngine()
    {
        // Everything level but the engine, 3 deg lower at its rear: a place level with the rail 1000 behind
        // lies 1000 sin 3 deg = 52.336 over the crankshaft's line through the rail, and 998.630 along it.
        Sketch sketch = drawnEngine();
        Survey survey;
        survey.floor_slope_deg = 0;
        survey.rail_slope_deg = 0;
        survey.engine_slope_deg = 3;
        const SurveyAxes axes(survey, sketch);
        const Vec3 at = axes.drawn(railPoint(0, 1000), {}).value();
        VERIFY_NEAR(at.z, 52.336, 0.001);
        VERIFY_NEAR(at.x, -450 + 998.630, 0.001);
        VERIFY_NEAR(axes.mountAngle().value(), 3, 1e-12);
    }

    void heightsAlongPlumbComeOutAsMeasuredWhateverSlopesAndLeans()
    {
        // Where the floor is the grade that the vehicle stands on, plumb of core/geometry must give back
        // every height difference that the tape read, front left or right.
        for (const EngineEnd front : {EngineEnd::left, EngineEnd::right}) {
            Sketch sketch = drawnEngine(front);
            sketch.engine->lean_deg = 8;
            Survey survey;
            survey.floor_slope_deg = 2.5;
            survey.rail_slope_deg = 1;
            survey.engine_slope_deg = 4;
            survey.rail_over_floor_mm = 700;
            const SurveyAxes axes(survey, sketch);
            Attitude attitude;
            attitude.front_at_left = front == EngineEnd::left;
            attitude.mount_angle_deg = axes.mountAngle().value();
            attitude.lean_deg = 8;
            attitude.grade.along_percent = 100 * std::tan(2.5 * 3.14159265358979323846 / 180);
            const Plumb plumb(attitude);
            VERIFY_NEAR(distance(plumb.up(), axes.up()), 0, 1e-12);
            const Vec3 a = axes.drawn(floorPoint(900, 0, 100), {}).value();
            const Vec3 b = axes.drawn(floorPoint(1400, 0, -80), {}).value();
            VERIFY_NEAR(plumb.height(b) - plumb.height(a), 500, 1e-9);
            VERIFY_NEAR(distance(a, b), std::hypot(500, 180), 1e-9);
            // Rail and floor agree: 700 over the floor is on the rail, at station 0.
            const Vec3 rail = axes.drawn(railPoint(0, 0), {}).value();
            const Vec3 floor = axes.drawn(floorPoint(700, 0), {}).value();
            VERIFY_NEAR(distance(rail, floor), 0, 1e-9);
        }
    }

    void whatIsDrawnIsMeasuredBack()
    {
        Sketch sketch = drawnEngine(EngineEnd::right);
        sketch.engine->lean_deg = -5;
        Survey survey;
        survey.floor_slope_deg = -1;
        survey.rail_slope_deg = 2;
        survey.engine_slope_deg = 3;
        survey.rail_over_floor_mm = 610;
        const SurveyAxes axes(survey, sketch);
        for (const SurveyPoint& point : {railPoint(-120, 333, 44), floorPoint(1010, -250, -60)}) {
            const SurveyPoint back = axes.measured(axes.drawn(point, {}).value(), point.from).value();
            VERIFY_NEAR(*back.height_mm, *point.height_mm, 1e-9);
            VERIFY_NEAR(*back.along_mm, *point.along_mm, 1e-9);
            VERIFY_NEAR(*back.across_mm, *point.across_mm, 1e-9);
        }
    }

    void aTanksMarkIsALevelPlaneThroughItsPlace()
    {
        // Engine and floor 5 deg down at the rear. The mark is read 60 mm under the cap on one plumb line:
        // the plane through the tank's place at the drawn height must lie 60 mm under it, along plumb.
        Sketch sketch = drawnEngine();
        Survey survey;
        survey.floor_slope_deg = 5;
        survey.rail_slope_deg = 5;
        survey.engine_slope_deg = 5;
        survey.tank_cap = railPoint(800, -300, 40);
        survey.mark_cold_min = SurveyPoint{740, SurveyFrom::frame_rail, {}, {}};
        sketch.survey = survey;
        QVERIFY(drawFromSurvey(sketch));
        const SurveyAxes axes(survey, sketch);
        const Vec3 cap = sketch.tank->position;
        const Vec3 mark = {cap.x, cap.y, *sketch.tank->cold_min_mm.value};
        VERIFY_NEAR(dot(cap - mark, axes.up()), 60, 1e-9);
    }

    void whatWasNotMeasuredStaysTypicalAndIsListed()
    {
        Sketch sketch;
        sketch.survey = Survey{};
        sketch.survey->jacket_lowest = railPoint(250, 0);
        sketch.survey->supply_port =
            SurveyPort{SurveyPoint{270, SurveyFrom::frame_rail, {}, {}}, {}, "", {}, {}, {}};
        QVERIFY(drawFromSurvey(sketch));
        QVERIFY(sketch.engine.has_value());
        QVERIFY(sketch.engine->jacket_source != Source::measured);
        const auto [low, high] =
            std::minmax_element(sketch.engine->jacket.begin(), sketch.engine->jacket.end(),
                                [](Vec2 a, Vec2 b) { return a.z < b.z; });
        VERIFY_NEAR(low->z, 250, 1e-9);
        VERIFY_NEAR(high->z - low->z, 310, 1e-9); // the template's own
        const Port& supply = portOf(sketch, PortRole::supply);
        VERIFY_NEAR(supply.position.z, 270, 1e-9);
        QVERIFY(supply.position_source == Source::typical); // its station is not known
        QVERIFY(supply.bore_mm.source == Source::typical);
        QVERIFY(!sketch.ground_z_mm);
        const SurveyReport report = reportOn(sketch);
        QVERIFY(says(report.not_measured, "B, Jacket, highest point: height and station not measured."));
        QVERIFY(says(report.not_measured, "C, Supply port: station and across not measured."));
        QVERIFY(says(report.not_measured, "Supply port: kind, thread, bore and direction not noted."));
        QVERIFY(says(report.not_measured, "lowest ride height needs M"));
        QVERIFY(says(report.taken, "the floor is taken as level"));
        QVERIFY(!says(report.not_measured, "A, Jacket"));
    }

    void groundIsDrawnWhereItLiesAtLowestRideHeight()
    {
        Sketch sketch = drawnEngine();
        sketch.survey = levelSurvey();
        sketch.survey->rail_over_floor_mm = 700;
        sketch.survey->ride_drop_mm = 80;
        QVERIFY(drawFromSurvey(sketch));
        VERIFY_NEAR(sketch.ground_z_mm.value(), -620, 1e-9);
    }

    void fromTheFloorAloneTheFloorIsTheDatum()
    {
        Sketch sketch = drawnEngine();
        sketch.survey = Survey{};
        sketch.survey->jacket_lowest = floorPoint(900, 0);
        sketch.survey->jacket_highest = floorPoint(1250, 0);
        QVERIFY(drawFromSurvey(sketch));
        VERIFY_NEAR(sketch.engine->jacket[0].z, 900, 1e-9);
        QVERIFY(says(reportOn(sketch).taken, "datum is the floor"));
    }

    void measurementsThatContradictEachOtherAreSaid()
    {
        Sketch sketch = drawnEngine();
        sketch.survey = levelSurvey();
        // By C and D: 820 along, 160 across, 290 up, so 884.4 apart.
        sketch.survey->ports_apart_mm = 884;
        QVERIFY(reportOn(sketch).disagree.empty());
        sketch.survey->ports_apart_mm = 840;
        QVERIFY(says(reportOn(sketch).disagree, "884.4 mm apart, by N 840 mm"));
        sketch.survey->mark_cold_full->height_mm = 730;
        QVERIFY(says(reportOn(sketch).disagree, "G is not under H"));
    }

    void factsOfCoolantVoltageAndThermostatAreMarkedMeasured()
    {
        Sketch sketch = drawnEngine();
        addHeater(sketch, heaterTemplates().front().heater);
        sketch.survey = Survey{};
        sketch.survey->supply_V = 236;
        sketch.survey->glycol = Glycol::propylene;
        sketch.survey->glycol_percent = 42;
        sketch.survey->thermostat_side = ThermostatSide::inlet;
        QVERIFY(drawFromSurvey(sketch));
        QVERIFY(sketch.heaters[0].actual_V == (Fact<double>{236, Source::measured}));
        QVERIFY(sketch.coolant.glycol == Glycol::propylene);
        QVERIFY(sketch.coolant.volume_percent == (Fact<double>{42, Source::measured}));
        QVERIFY(sketch.engine->thermostat->side ==
                (Fact<ThermostatSide>{ThermostatSide::inlet, Source::measured}));
    }

    void drawingTwiceChangesNothingMore()
    {
        Sketch sketch = drawnEngine();
        sketch.survey = levelSurvey();
        sketch.survey->floor_slope_deg = 1;
        sketch.survey->engine_slope_deg = 4;
        QVERIFY(drawFromSurvey(sketch));
        const Sketch once = sketch;
        QVERIFY(drawFromSurvey(sketch));
        QVERIFY(std::holds_alternative<std::string>(writeSketch(sketch)));
        VERIFY_NEAR(distance(sketch.ports[0].position, once.ports[0].position), 0, 1e-9);
        VERIFY_NEAR(sketch.engine->jacket[2].x, once.engine->jacket[2].x, 1e-9);
        VERIFY_NEAR(sketch.engine->jacket[2].z, once.engine->jacket[2].z, 1e-9);
        VERIFY_NEAR(*sketch.tank->cold_min_mm.value, *once.tank->cold_min_mm.value, 1e-9);
    }

    void withoutASurveyNothingChanges()
    {
        Sketch sketch = drawnEngine();
        const Sketch before = sketch;
        QVERIFY(!drawFromSurvey(sketch));
        QVERIFY(sketch == before);
    }
};

QTEST_APPLESS_MAIN(TestDrawSurvey)
#include "test_draw_survey.moc"
