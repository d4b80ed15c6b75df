#include "tests/near.h"
#include "tests/random_runs.h"
#include "tests/read_sample.h"
#include "tests/sound_loop.h"

#include "core/proposing/propose.h"

#include <QTest>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <stop_token>
#include <string>
#include <thread>

using namespace siphonwright;

namespace {

/// A space of 400 x 200 x 150 mm about where the heater hangs.
HangingSpace spaceAbout(const Sketch& sketch)
{
    const Vec3 at = sketch.heaters.front().position;
    return {at - Vec3{200, 100, 75}, at + Vec3{200, 100, 75}};
}

/// Stops and cautions of a whole proof that a layout could mend, as text.
QStringList broken(const Sketch& sketch)
{
    QStringList out;
    for (const Finding& finding : proved(sketch).findings)
        if (finding.severity > Severity::advice && !beyondLayout(finding.rule))
            out << QString::fromStdString(finding.rule + ": " + format(finding.text, UnitSystem::metric));
    return out;
}

bool hasRule(const Analysis& analysis, const std::string& rule)
{
    return std::any_of(analysis.findings.begin(), analysis.findings.end(),
                       [&](const Finding& finding) { return finding.rule == rule; });
}

/// A wall of something in the way, right through the drawing's depth.
Area wall(Vec2 least, Vec2 most)
{
    Area area;
    area.id = "area-9";
    area.name = "Bulkhead";
    area.what = Hazard::other;
    area.outline = {least, {most.x, least.z}, most, {least.x, most.z}};
    area.y_from_mm = -3000;
    area.y_to_mm = 3000;
    return area;
}

bool names(const Proposals& proposals, const std::string& rule)
{
    return std::any_of(proposals.in_conflict.begin(), proposals.in_conflict.end(),
                       [&](const RuleInWay& way) { return way.rule == rule; });
}

void rowPerSample()
{
    QTest::addColumn<QString>("name");
    for (const QString& name : test::someOf(test::sampleNames(), 3))
        QTest::newRow(qPrintable(name)) << name;
}

} // namespace

class TestPropose : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aProposalForASampleBreaksNoRule_data() { rowPerSample(); }
    void aProposalForASampleBreaksNoRule();
    void theDrawnPlaceOfASampleGivesAProposalOrNamesRules_data() { rowPerSample(); }
    void theDrawnPlaceOfASampleGivesAProposalOrNamesRules();
    void proposalsAreRankedByTheirKey();
    void aProposalHasValvesClipsAndItsOldNames();
    void theOtherHeaterIsLeftAlone();
    void onlyStockBoresAreTaken();
    void theHeaterStaysInItsSpace();
    void theUsualSpaceIsUnderTheJacketOnTheHeatersSide();
    void portsWithRolesAreKeptUnlessTheyBreakARule();
    void anElbowThatPointsUpIsTurned();
    void aProposalSaysWhatItMoves();
    void aLoopIsProposedForAHeaterWithoutHoses();
    void anAreaThatBlocksEverythingIsNamed();
    void rulesThatContradictEachOtherAreNamed();
    void whatNoLayoutMendsIsSaidBeside();
    void whatIsMissingIsSaid();
    void proposalsAreTheSameEachTime();
    void aStoppedSearchEndsAtOnce();
    void aSearchStoppedOnItsWayEnds();
};

void TestPropose::aProposalForASampleBreaksNoRule()
{
    QFETCH(const QString, name);
    const Sketch sketch = test::sampleOf(name);
    ProposeOptions options;
    options.space = spaceAbout(sketch);
    options.how_many = 1;
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    QVERIFY(found.in_conflict.empty());
    for (const Proposal& proposal : found.best_first) {
        QCOMPARE(broken(proposal.sketch), QStringList());
        QVERIFY(proposal.sound);
        QVERIFY(!proposal.sag.empty());
        QVERIFY(proposal.flow_l_per_min > 0);
        const Analysis analysis = analyse(proposal.sketch);
        QVERIFY(!hasRule(analysis, "unsupported-span"));
        QVERIFY(!hasRule(analysis, "valve-missing"));
        double length_mm = 0;
        for (const ResolvedHose& hose : analysis.layout.hoses)
            if (hose->hose->from.heater == proposal.heater || hose->hose->to.heater == proposal.heater)
                length_mm += hose->length_mm;
        VERIFY_NEAR(proposal.length_mm, length_mm, 1e-6);
    }
}

void TestPropose::theDrawnPlaceOfASampleGivesAProposalOrNamesRules()
{
    QFETCH(const QString, name);
    const Sketch sketch = test::sampleOf(name);
    ProposeOptions options;
    options.how_many = 1;
    const Proposals found = propose(sketch, options);
    QCOMPARE(found.best_first.empty(), !found.in_conflict.empty());
    for (const Proposal& proposal : found.best_first) {
        QCOMPARE(broken(proposal.sketch), QStringList());
        QCOMPARE(proposal.heater_at == sketch.heaters.front().position, true);
    }
}

void TestPropose::proposalsAreRankedByTheirKey()
{
    const Sketch sketch = test::soundLoop();
    ProposeOptions options;
    options.space = spaceAbout(sketch);
    options.how_many = 4;
    const Proposals found = propose(sketch, options);
    QVERIFY(found.best_first.size() >= 3);
    for (std::size_t i = 0; i < found.best_first.size(); ++i) {
        const Proposal& one = found.best_first[i];
        // The key as the header states it: metres x bore / 19.05 mm / square root of l/min.
        VERIFY_NEAR(one.key, one.length_mm / 1000 * one.bore_mm / 19.05 / std::sqrt(one.flow_l_per_min),
                    1e-9);
        if (i > 0 && found.best_first[i - 1].sound_over_envelope == one.sound_over_envelope)
            QVERIFY(found.best_first[i - 1].key <= one.key);
    }
}

void TestPropose::aProposalHasValvesClipsAndItsOldNames()
{
    Sketch sketch = test::soundLoop();
    sketch.hoses[0].edit([](Hose& hose) { hose.name = "Cold side"; });
    const Proposals found = propose(sketch);
    QVERIFY(!found.best_first.empty());
    const Sketch& proposed = found.best_first.front().sketch;
    QCOMPARE(proposed.hoses.size(), std::size_t{2});
    QCOMPARE(proposed.hoses[0]->name, std::string("Cold side"));
    QCOMPARE(proposed.hoses[0]->id, sketch.hoses[0]->id);
    for (const Shared<Hose>& hose : proposed.hoses) {
        QCOMPARE(hose->parts.size(), std::size_t{1});
        QCOMPARE(hose->parts.front().kind, InlineKind::isolation_valve);
        QVERIFY(hose->parts.front().open);
        // A clip and a valve cannot be in one place.
        for (const double clip_mm : hose->clips_mm)
            QVERIFY(std::abs(clip_mm - hose->parts.front().along_mm) > hose->parts.front().length_mm / 2);
    }
    QVERIFY(!proposed.hoses[0]->clips_mm.empty());
}

void TestPropose::theOtherHeaterIsLeftAlone()
{
    const Sketch sketch = test::sampleOf(QStringLiteral("generator-two-heaters"));
    ProposeOptions options;
    options.heater = sketch.heaters[1].id;
    options.how_many = 1;
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    const Sketch& proposed = found.best_first.front().sketch;
    QCOMPARE(proposed.heaters[0] == sketch.heaters[0], true);
    QCOMPARE(proposed.hoses.size(), sketch.hoses.size());
    for (std::size_t i = 0; i < sketch.hoses.size(); ++i) {
        const Hose& hose = *sketch.hoses[i];
        QCOMPARE(proposed.hoses[i]->id, hose.id);
        if (hose.from.heater != options.heater && hose.to.heater != options.heater)
            QVERIFY(proposed.hoses[i].same(sketch.hoses[i]));
    }
}

void TestPropose::onlyStockBoresAreTaken()
{
    ProposeOptions options;
    options.stock_bores_mm = {12.7, 22.2, -1, std::nan("")}; // the manual asks for 15 mm
    const Proposals found = propose(test::soundLoop(), options);
    QVERIFY(!found.best_first.empty());
    for (const Proposal& proposal : found.best_first)
        QCOMPARE(proposal.bore_mm, 22.2);
}

void TestPropose::theHeaterStaysInItsSpace()
{
    const Sketch sketch = test::soundLoop();
    ProposeOptions options;
    options.space = HangingSpace{{900, -50, 60}, {1100, 50, 80}};
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    for (const Proposal& proposal : found.best_first) {
        QVERIFY(proposal.heater_at.x >= 900 && proposal.heater_at.x <= 1100);
        QVERIFY(std::abs(proposal.heater_at.y) <= 50);
        QVERIFY(proposal.heater_at.z >= 60 && proposal.heater_at.z <= 80);
    }
}

void TestPropose::theUsualSpaceIsUnderTheJacketOnTheHeatersSide()
{
    // Jacket x 0..900, y -150..150, lowest at z 400; ground at z -300.
    Sketch sketch = test::soundLoop();
    const HangingSpace both = spaceUnder(sketch, "heater-1");
    QCOMPARE(both == (HangingSpace{{-200, -600, -300}, {1100, 600, 400}}), true);
    sketch.heaters[0].position.y = -300;
    QCOMPARE(spaceUnder(sketch, "heater-1").most.y, -150.0);
    ProposeOptions options;
    options.space = spaceUnder(sketch, "heater-1");
    options.how_many = 1;
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    QCOMPARE(broken(found.best_first.front().sketch), QStringList());
}

void TestPropose::portsWithRolesAreKeptUnlessTheyBreakARule()
{
    Sketch sketch = test::soundLoop();
    Port nearer = sketch.ports[0];
    nearer.id = "port-3";
    nearer.role = PortRole::spare;
    nearer.position = {400, 0, 440};
    sketch.ports.push_back(nearer);
    const Proposals kept = propose(sketch);
    QVERIFY(!kept.best_first.empty());
    for (const Proposal& proposal : kept.best_first)
        QCOMPARE(proposal.supply_port, std::string("port-1"));
    sketch.ports[0].position.z = 700; // too high for a supply
    const Proposals other = propose(sketch);
    QVERIFY(!other.best_first.empty());
    const Proposal& best = other.best_first.front();
    QCOMPARE(best.supply_port, std::string("port-3"));
    QCOMPARE(best.sketch.port("port-3")->role, PortRole::supply);
    QCOMPARE(best.sketch.port("port-1")->role, PortRole::spare);
}

void TestPropose::anElbowThatPointsUpIsTurned()
{
    // Hoses cannot come down to this elbow without a hump; turned about its stub it still makes a right
    // angle.
    const Sketch sketch = test::sampleOf(QStringLiteral("above-level"));
    const Port& drawn = *sketch.port("port-3");
    QCOMPARE(drawn.stub.elbow->direction.elevation_deg, 90.0);
    const Proposals found = propose(sketch);
    QVERIFY(!found.best_first.empty());
    const Port& turned = *found.best_first.front().sketch.port("port-3");
    QVERIFY(turned.stub.elbow->direction.elevation_deg < 0);
    const Direction& to = turned.stub.elbow->direction;
    const Vec3 axis = direction(turned.axis.azimuth_deg, turned.axis.elevation_deg);
    VERIFY_NEAR(dot(axis, direction(to.azimuth_deg, to.elevation_deg)), 0.0, 0.002);
    const std::vector<Message>& changes = found.best_first.front().changes;
    QCOMPARE(changes.size(), std::size_t{1});
    QVERIFY(format(changes.front(), UnitSystem::metric)
                .starts_with("Turn the elbow on Head port so that it leads down"));
}

void TestPropose::aProposalSaysWhatItMoves()
{
    Sketch sketch = test::soundLoop();
    ProposeOptions options;
    options.space = HangingSpace{{1100, 20, 70}, {1100, 20, 70}};
    options.how_many = 1;
    options.stock_bores_mm = {25.4};
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    const Proposal& best = found.best_first.front();
    QStringList changes;
    for (const Message& change : best.changes)
        changes << QString::fromStdString(format(change, UnitSystem::metric));
    // The heater was at (1030, 0, 80).
    QVERIFY(changes.contains(
        QStringLiteral("Move Heater heater-1 70 mm to the right, 20 mm away from you, 10 mm down.")));
    QVERIFY(
        changes.contains(QStringLiteral("Use hose of 25.4 mm bore, with hose ends and valves to match.")));
}

void TestPropose::aLoopIsProposedForAHeaterWithoutHoses()
{
    Sketch sketch = test::soundLoop();
    sketch.hoses.clear();
    const Proposals found = propose(sketch);
    QVERIFY(!found.best_first.empty());
    const Sketch& proposed = found.best_first.front().sketch;
    QCOMPARE(proposed.hoses.size(), std::size_t{2});
    QVERIFY(proposed.hoses[0]->id != proposed.hoses[1]->id);
    QCOMPARE(broken(proposed), QStringList());
}

void TestPropose::anAreaThatBlocksEverythingIsNamed()
{
    Sketch sketch = test::soundLoop();
    sketch.areas.push_back(Shared<Area>(wall({-2000, 270}, {3000, 330}))); // between heater and engine
    const Proposals found = propose(sketch);
    QVERIFY(found.best_first.empty());
    QVERIFY(!found.in_conflict.empty());
    QCOMPARE(found.in_conflict.front().rule, std::string("keep-clear"));
    QCOMPARE(found.in_conflict.front().part.id, std::string("area-9"));
    QVERIFY(found.in_conflict.front().removed > 0);
    const std::string words = format(found.in_conflict.front().text, UnitSystem::metric);
    QVERIFY2(words.find("Bulkhead") != std::string::npos, words.c_str());
    QVERIFY2(words.find("Too near something hot or moving") != std::string::npos, words.c_str());
}

void TestPropose::rulesThatContradictEachOtherAreNamed()
{
    Sketch sketch = test::soundLoop();
    sketch.heaters[0].manual_min_drop_mm.value =
        250; // to be had only 50 mm nearer the ground than its rule lets
    ProposeOptions options;
    options.space = HangingSpace{{1000, 0, -150}, {1060, 0, 100}};
    const Proposals found = propose(sketch, options);
    QVERIFY(found.best_first.empty());
    QVERIFY(names(found, "heater-drop"));
    QVERIFY(names(found, "ground-clearance"));
}

void TestPropose::whatNoLayoutMendsIsSaidBeside()
{
    Sketch sketch = test::soundLoop();
    sketch.coolant.volume_percent.value = 20; // freezes at about -8 degC, and it gets to -25
    const Proposals found = propose(sketch);
    QVERIFY(!found.best_first.empty());
    QVERIFY(std::any_of(found.beside.begin(), found.beside.end(),
                        [](const Finding& finding) { return finding.rule == "freeze-margin"; }));
}

void TestPropose::whatIsMissingIsSaid()
{
    Sketch sketch = test::soundLoop();
    sketch.ports.clear();
    QVERIFY(!propose(sketch).missing.empty());
    sketch = test::soundLoop();
    sketch.heaters.clear();
    QVERIFY(!propose(sketch).missing.empty());
    ProposeOptions options;
    options.heater = "heater-7";
    QVERIFY(!propose(test::soundLoop(), options).missing.empty());
    QVERIFY(!propose(Sketch{}).missing.empty());
    options.heater.clear();
    options.space = HangingSpace{{100, 0, 0}, {0, 0, 0}};
    QVERIFY(!propose(test::soundLoop(), options).missing.empty());
    options.space = HangingSpace{{0, 0, 0}, {std::nan(""), 0, 0}};
    QVERIFY(!propose(test::soundLoop(), options).missing.empty());
}

void TestPropose::proposalsAreTheSameEachTime()
{
    const Sketch sketch = test::sampleOf(QStringLiteral("supply-hump"));
    ProposeOptions options;
    options.space = spaceAbout(sketch);
    options.how_many = 2;
    const Proposals first = propose(sketch, options);
    const Proposals second = propose(sketch, options);
    QCOMPARE(first.best_first.size(), second.best_first.size());
    for (std::size_t i = 0; i < first.best_first.size(); ++i) {
        QCOMPARE(first.best_first[i].sketch == second.best_first[i].sketch, true);
        QVERIFY(first.best_first[i].key == second.best_first[i].key); // bit by bit
    }
}

void TestPropose::aStoppedSearchEndsAtOnce()
{
    std::stop_source source;
    source.request_stop();
    ProposeOptions options;
    options.space = spaceAbout(test::soundLoop());
    const Proposals found = propose(test::soundLoop(), options, source.get_token());
    QVERIFY(found.stopped);
    QVERIFY(found.best_first.empty());
    QVERIFY(found.in_conflict.empty());
    QCOMPARE(found.places, std::size_t{0});
}

void TestPropose::aSearchStoppedOnItsWayEnds()
{
    const Sketch sketch = test::sampleOf(QStringLiteral("generator-two-heaters"));
    ProposeOptions options;
    options.space = spaceAbout(sketch);
    options.how_many = 1000; // would prove for minutes
    Proposals found;
    std::jthread search([&](const std::stop_token& stop) { found = propose(sketch, options, stop); });
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
    search.request_stop();
    search.join();
    QVERIFY(found.stopped);
}

QTEST_APPLESS_MAIN(TestPropose)
#include "test_propose.moc"
