#include "tests/commissioning/job.h"
#include "tests/near.h"

#include <QTest>

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Fault faultIn(const std::vector<Fault>& faults, FaultKind kind)
{
    return *std::find_if(faults.begin(), faults.end(), [kind](const Fault& one) { return one.kind == kind; });
}

/// What the instruments read with a fault's first case, nominal figures.
Course courseWith(const char* sample, FaultKind kind)
{
    const Sketch sketch = sampleJob(sample);
    return courseOf(sketch, "heater-1", faultIn(faultsIn(sketch, "heater-1"), kind).cases.front().change);
}

/// The same, read without noise and diagnosed. \param change of the readings
template <class Change>
Diagnosis diagnosedWith(const char* sample, FaultKind kind, Change&& change)
{
    std::vector<Reading> readings = readingsOf(courseWith(sample, kind), "heater-1", nullptr);
    for (Reading& reading : readings)
        change(reading);
    return diagnose(withReadings(sampleJob(sample), "heater-1", std::move(readings)));
}
Diagnosis diagnosedWith(const char* sample, FaultKind kind)
{
    return diagnosedWith(sample, kind, [](Reading&) {});
}

constexpr std::size_t last = read_at_min.size() - 1;

double power_W(const Course& course)
{
    return course.meanOf(last, Channel::current) * course.meanOf(last, Channel::voltage);
}

QString wordsOf(const Message& message)
{
    return QString::fromStdString(format(message, UnitSystem::metric));
}

} // namespace

class TestDiagnosis : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anAirLockedReturnStaysColdWhileTheOutletIsHotAndTheHeaterCycles();
    void aDeadElementDrawsNoCurrentAndWarmsNothing();
    void halfTheVoltageGivesAQuarterOfThePower();
    void aMissingPhaseHalvesThePowerOfThreeElements();
    void exchangedHosesRunBackward();
    void aJobThatRunsAsDrawnIsFoundSound();
    void aFaultBuiltInIsFound_data();
    void aFaultBuiltInIsFound();
    void closedValvesOfSupplyAndReturnAreSaidToLookAlike();
    void aNextReadingTellsTheTwoLikeliestApart();
    void whereNoInstrumentTellsItSaysWhatToLookAt();
    void aLowLevelTellsLowCoolantFromAClosedValve();
    void noVoltageTellsABreakerFromADeadElement();
    void readingsThatNothingExplainsAreSaidToBe();
    void aLimitBrokenAtOnceIsNeverCalledNothingWrong();
    void aJobDrawnToPassALimitIsNotCalledSound();
    void valvesAreSuspectedOnlyWhereSomeAreDrawn();
    void probabilitiesSumToOneAndRepeatToTheBit();
    void withoutReadingsOrTheTimeOfEnergisingItSaysSo();
    void readingsOfAnotherHeaterAreNotTaken();
    void nonsenseReadingsGiveFiniteProbabilities();
    void aStopEndsIt();
};

// Common practice, no published source: a return that stays cold with a hot outlet is an air lock.
void TestDiagnosis::anAirLockedReturnStaysColdWhileTheOutletIsHotAndTheHeaterCycles()
{
    const Sketch sketch = sampleJob("supply-hump");
    const Course sound = courseWith("supply-hump", FaultKind::none);
    const Course locked = courseWith("supply-hump", FaultKind::air);
    const double air_degC = *sketch.site.ambient_degC.value;
    QVERIFY(locked.meanOf(last, Channel::hose_surface) < air_degC + 1);
    QVERIFY(sound.meanOf(last, Channel::hose_surface) > air_degC + 2);
    QVERIFY(locked.meanOf(last, Channel::outlet) > air_degC + 40);
    QVERIFY(locked.meanOf(last, Channel::engine) < air_degC + 0.5);
    CourseRequest watched;
    watched.heater = "heater-1";
    watched.samples = 0;
    watched.times_s = {12 * 3600.0};
    watched.watched_to_s = 12 * 3600.0;
    const SimulatedJob job(sketch, watched);
    const Fault air = faultIn(faultsIn(sketch, "heater-1"), FaultKind::air);
    QVERIFY(job.run(air.cases.front().change).starts.front() > 3);
}

void TestDiagnosis::aDeadElementDrawsNoCurrentAndWarmsNothing()
{
    const Course dead = courseWith("sound-bus", FaultKind::element_dead);
    QCOMPARE(dead.meanOf(last, Channel::current), 0.0);
    VERIFY_NEAR(dead.meanOf(last, Channel::outlet), *sampleJob("sound-bus").site.ambient_degC.value, 0.01);
}

// P = V^2/R (elementary).
void TestDiagnosis::halfTheVoltageGivesAQuarterOfThePower()
{
    const Course whole = courseWith("sound-bus", FaultKind::none);
    const Course half = courseWith("sound-bus", FaultKind::voltage_half);
    VERIFY_NEAR(power_W(half) / power_W(whole), 0.25, 1e-9);
    VERIFY_NEAR(half.meanOf(last, Channel::current) / whole.meanOf(last, Channel::current), 0.5, 1e-9);
}

// Delta: one element keeps its voltage, two in series share it: P/3 + P/6. Star: two in series across the
// line voltage: 3 V^2/(2 R) of 3 V^2/R. Half either way, and sqrt(3)/2 of the current in the two conductors
// left (elementary).
void TestDiagnosis::aMissingPhaseHalvesThePowerOfThreeElements()
{
    const Course whole = courseWith("generator-two-heaters", FaultKind::none);
    const Course missing = courseWith("generator-two-heaters", FaultKind::phase_missing);
    VERIFY_NEAR(whole.meanOf(last, Channel::current), 4000 / (std::sqrt(3.0) * 480), 1e-6);
    VERIFY_NEAR(missing.meanOf(last, Channel::current) / whole.meanOf(last, Channel::current),
                std::sqrt(3.0) / 2, 1e-9);
    const double rise =
        whole.meanOf(last, Channel::engine) - *sampleJob("generator-two-heaters").site.ambient_degC.value;
    const double rise_left =
        missing.meanOf(last, Channel::engine) - *sampleJob("generator-two-heaters").site.ambient_degC.value;
    QVERIFY(rise_left > 0.35 * rise && rise_left < 0.65 * rise);
}

// Warm coolant rises out of the upper nozzle into what should be the supply (elementary); the real return
// hose, now on the lower nozzle, stays as cold as the engine.
void TestDiagnosis::exchangedHosesRunBackward()
{
    const Course sound = courseWith("sound-bus", FaultKind::none);
    const Course exchanged = courseWith("sound-bus", FaultKind::flow_reversed);
    QVERIFY(exchanged.meanOf(last, Channel::hose_surface) < sound.meanOf(last, Channel::hose_surface) - 2);
    QVERIFY(exchanged.meanOf(last, Channel::outlet) > exchanged.meanOf(last, Channel::inlet) + 10);
}

void TestDiagnosis::aJobThatRunsAsDrawnIsFoundSound()
{
    const Diagnosis found = diagnosedWith("sound-bus", FaultKind::none);
    QCOMPARE(found.best()->fault.kind, FaultKind::none);
    QVERIFY(!found.nothing_fits && !found.stops());
    QVERIFY(found.groups.front().probability > 0.5);
    QCOMPARE(found.shareOf(found.groups.front()), std::optional(found.groups.front().probability));
}

void TestDiagnosis::aFaultBuiltInIsFound_data()
{
    QTest::addColumn<QString>("sample");
    QTest::addColumn<int>("kind");
    const auto row = [](const char* sample, FaultKind kind) {
        QTest::addRow("%s in %s", faultRow(kind).id.data(), sample) << QString::fromUtf8(sample) << int(kind);
    };
    for (const FaultKind kind : {FaultKind::ports_swapped, FaultKind::voltage_half, FaultKind::voltage_low,
                                 FaultKind::supply_valve_closed})
        row("sound-bus", kind);
    row("supply-hump", FaultKind::air);
    row("generator-two-heaters", FaultKind::phase_missing);
    row("generator-two-heaters", FaultKind::element_dead);
}

void TestDiagnosis::aFaultBuiltInIsFound()
{
    QFETCH(QString, sample);
    QFETCH(int, kind);
    const Diagnosis found = diagnosedWith(sample.toUtf8().constData(), FaultKind(kind));
    QCOMPARE(found.placeOf(FaultKind(kind)), std::optional<std::size_t>(0));
    QVERIFY(found.groups.front().probability > 0.5);
    QVERIFY(!found.nothing_fits);
    QVERIFY(!found.best()->why.pattern.empty());
}

void TestDiagnosis::closedValvesOfSupplyAndReturnAreSaidToLookAlike()
{
    const Diagnosis found = diagnosedWith("sound-bus", FaultKind::supply_valve_closed);
    QCOMPARE(found.placeOf(FaultKind::supply_valve_closed), found.placeOf(FaultKind::return_valve_closed));
    QVERIFY(found.groups.front().members.size() > 1);
}

void TestDiagnosis::aNextReadingTellsTheTwoLikeliestApart()
{
    std::vector<Reading> readings = readingsOf(courseWith("sound-bus", FaultKind::none), "heater-1", nullptr);
    for (Reading& reading : readings) { // the current alone was read
        const std::optional<double> current_A = reading.current_A;
        reading = {reading.time, reading.heater, {}, {}, {}, {}, {}, current_A, {}, {}, {}, {}};
    }
    const Diagnosis found = diagnose(withReadings(sampleJob("sound-bus"), "heater-1", std::move(readings)));
    QVERIFY(found.groups.size() > 1);
    QVERIFY(found.next && found.next->channel);
    QVERIFY(std::abs(found.next->if_first - found.next->if_second) >
            instrumentSpread(*found.next->channel, found.next->if_first));
    QVERIFY(wordsOf(found.next->words).contains(QStringLiteral("means")));
}

void TestDiagnosis::whereNoInstrumentTellsItSaysWhatToLookAt()
{
    const Sketch sketch = sampleJob("sound-bus");
    const Diagnosis found = diagnosedWith("sound-bus", FaultKind::supply_valve_closed);
    for (const Suspect& one : found.groups.front().members)
        QVERIFY(!one.check.pattern.empty());
    QVERIFY(wordsOf(found.groups.front().members.front().check).contains(QStringLiteral("handle")));
}

void TestDiagnosis::aLowLevelTellsLowCoolantFromAClosedValve()
{
    const Diagnosis found = diagnosedWith("sound-bus", FaultKind::low_coolant,
                                          [](Reading& reading) { reading.coolant_level_mm = -150; });
    QCOMPARE(found.best()->fault.kind, FaultKind::low_coolant);
    const Diagnosis full = diagnosedWith("sound-bus", FaultKind::low_coolant,
                                         [](Reading& reading) { reading.coolant_level_mm = 0; });
    QVERIFY(full.best()->fault.kind != FaultKind::low_coolant);
    QVERIFY(full.placeOf(FaultKind::low_coolant) != std::optional<std::size_t>(0));
}

void TestDiagnosis::noVoltageTellsABreakerFromADeadElement()
{
    const Diagnosis dark = diagnosedWith("sound-bus", FaultKind::element_dead, [](Reading& reading) {
        reading.voltage_V = 0;
        reading.energised = false;
    });
    QCOMPARE(dark.best()->fault.kind, FaultKind::breaker_tripped);
    const Diagnosis live = diagnosedWith("sound-bus", FaultKind::element_dead, [](Reading& reading) {
        reading.voltage_V = 120;
        reading.energised = true;
    });
    QCOMPARE(live.placeOf(FaultKind::element_dead), std::optional<std::size_t>(0));
    QVERIFY(live.placeOf(FaultKind::breaker_tripped) != std::optional<std::size_t>(0));
    // A dead element and a thermostat stuck off are told apart by no such reading.
    QCOMPARE(live.placeOf(FaultKind::element_dead), live.placeOf(FaultKind::thermostat_stuck_off));
}

void TestDiagnosis::readingsThatNothingExplainsAreSaidToBe()
{
    const Diagnosis found = diagnosedWith("sound-bus", FaultKind::none, [](Reading& reading) {
        reading.inlet_degC = 90;
        reading.outlet_degC = 5;
    });
    QVERIFY(found.nothing_fits && found.stops());
    QVERIFY(!found.groups.empty());
    QCOMPARE(found.placeOf(FaultKind::none), std::nullopt);
    for (const SuspectGroup& group : found.groups)
        QCOMPARE(found.shareOf(group), std::nullopt);
    QVERIFY(found.next && !found.next->channel);
}

// Hot at the moment of turning on: no fault can have done that, and all of them give the same figures.
void TestDiagnosis::aLimitBrokenAtOnceIsNeverCalledNothingWrong()
{
    Reading reading;
    reading.time = clock(0);
    reading.heater = "heater-1";
    reading.outlet_degC = 88;
    const Diagnosis found = diagnose(withReadings(sampleJob("sound-bus"), "heater-1", {reading}));
    QVERIFY(found.missing.empty() && found.stops());
    QCOMPARE(found.evidence.broken_limits.size(), std::size_t(1));
    QVERIFY(wordsOf(found.evidence.broken_limits.front()).contains(QStringLiteral("88")));
    QCOMPARE(found.placeOf(FaultKind::none), std::nullopt);
}

// A job that its drawing lets pass the limit: the readings fit it, and yet something is wrong.
void TestDiagnosis::aJobDrawnToPassALimitIsNotCalledSound()
{
    Sketch sketch = sampleJob("sound-bus");
    sketch.limits.push_back({"outlet-over-limit", {}, {}, 10, false, "The heater's manual"});
    std::vector<Reading> readings = readingsOf(courseWith("sound-bus", FaultKind::none), "heater-1", nullptr);
    const Diagnosis found = diagnose(withReadings(std::move(sketch), "heater-1", std::move(readings)));
    QVERIFY(!found.nothing_fits);
    QCOMPARE(found.best()->fault.kind, FaultKind::none);
    QVERIFY(found.stops());
    QVERIFY(!wordsOf(found.best()->fault.title).contains(QStringLiteral("Nothing wrong")));
    QVERIFY(wordsOf(found.best()->fix).contains(QStringLiteral("Heater off")));
}

void TestDiagnosis::valvesAreSuspectedOnlyWhereSomeAreDrawn()
{
    Sketch sketch = sampleJob("sound-bus");
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([](Hose& one) { one.parts.clear(); });
    for (const Fault& fault : faultsIn(sketch, "heater-1")) {
        QVERIFY(fault.kind != FaultKind::supply_valve_closed && fault.kind != FaultKind::valve_half_closed);
        QVERIFY(fault.kind != FaultKind::phase_missing); // one phase alone
        QVERIFY(fault.kind != FaultKind::sensor_off);    // its thermostat is at the inlet
    }
}

void TestDiagnosis::probabilitiesSumToOneAndRepeatToTheBit()
{
    const Diagnosis once = diagnosedWith("supply-hump", FaultKind::air);
    const Diagnosis again = diagnosedWith("supply-hump", FaultKind::air);
    double sum = 0;
    QCOMPARE(once.groups.size(), again.groups.size());
    for (std::size_t i = 0; i < once.groups.size(); ++i) {
        QVERIFY(once.groups[i].probability == again.groups[i].probability);
        sum += once.groups[i].probability;
    }
    VERIFY_NEAR(sum, 1, 1e-9);
}

void TestDiagnosis::withoutReadingsOrTheTimeOfEnergisingItSaysSo()
{
    Sketch sketch = sampleJob("sound-bus");
    QVERIFY(diagnose(sketch).missing.find("energised") != std::string::npos);
    sketch.checklist.ticks = {{"energise", clock(0), "", "", ""}};
    QVERIFY(diagnose(sketch).missing.find("no readings") != std::string::npos);
    QVERIFY(diagnose(Sketch{}).missing.find("no heater") != std::string::npos);
}

void TestDiagnosis::readingsOfAnotherHeaterAreNotTaken()
{
    Sketch sketch = sampleJob("generator-two-heaters");
    sketch.checklist.switched = {{clock(0), "heater-1", true}};
    sketch.readings = {{clock(30), "heater-2", {}, {}, 40, {}, {}, {}, {}, {}, {}, {}}};
    QVERIFY(evidenceOf(sketch, "heater-1").readings.empty());
    QVERIFY(!evidenceOf(sketch, "heater-1").missing.empty());
}

void TestDiagnosis::nonsenseReadingsGiveFiniteProbabilities()
{
    // The limits of the format, a far future, and nothing read at all.
    Reading most{"9999-12-31T23:59:59Z", "heater-1", 1000, 1000, 1000, 1000, 1000, 1e5, 1e5, 1e4, false, ""};
    Reading least{clock(0), "heater-1", -100, -100, -100, -100, -100, 0, 0, -1e4, true, ""};
    Reading nothing;
    nothing.time = clock(1);
    for (const std::vector<Reading>& readings :
         {std::vector{most}, std::vector{least}, std::vector{nothing}, std::vector{least, nothing, most},
          std::vector<Reading>(1000, least)}) {
        const Diagnosis found = diagnose(withReadings(sampleJob("sound-bus"), "heater-1", readings));
        double sum = 0;
        for (const SuspectGroup& group : found.groups) {
            QVERIFY(std::isfinite(group.probability) && group.probability >= 0);
            sum += group.probability;
        }
        if (found.missing.empty() && !found.nothing_fits)
            VERIFY_NEAR(sum, 1, 1e-9);
        QVERIFY(found.evidence.readings.size() <= most_readings);
    }
}

void TestDiagnosis::aStopEndsIt()
{
    std::stop_source source;
    source.request_stop();
    const Sketch sketch = withReadings(sampleJob("sound-bus"), "heater-1",
                                       {{clock(30), "heater-1", {}, {}, 40, {}, {}, {}, {}, {}, {}, {}}});
    QVERIFY(!diagnose(sketch, {}, source.get_token()).missing.empty());
}

QTEST_APPLESS_MAIN(TestDiagnosis)
#include "test_diagnosis.moc"
