#include "tests/near.h"
#include "tests/random_runs.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QTest>

#include <algorithm>
#include <variant>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// Findings one by one, in the rule book's order.
std::vector<Finding> apart(const std::vector<Finding>& faults, bool with_grades)
{
    std::vector<Finding> out;
    const auto add = [&](Finding finding) {
        finding.details.clear();
        if (with_grades || !finding.only_on_grade)
            out.push_back(std::move(finding));
    };
    for (const Finding& fault : faults) {
        add(fault);
        for (const Finding& detail : fault.details)
            add(detail);
    }
    std::stable_sort(out.begin(), out.end(), [](const Finding& a, const Finding& b) {
        return std::tuple(a.rule, a.part, a.along_mm) < std::tuple(b.rule, b.part, b.along_mm);
    });
    return out;
}

std::vector<Sketch> samples()
{
    std::vector<Sketch> out;
    const QDir folder(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    const QStringList all = folder.entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name);
    for (const QString& name : someOf(all, 3)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        auto read = readSketch(file.readAll().toStdString());
        if (std::holds_alternative<Sketch>(read))
            out.push_back(std::get<Sketch>(std::move(read)));
    }
    return out;
}

const Finding* findingOf(const Analysis& analysis, const std::string& rule)
{
    const auto found = std::find_if(analysis.findings.begin(), analysis.findings.end(),
                                    [&](const Finding& finding) { return finding.rule == rule; });
    return found == analysis.findings.end() ? nullptr : &*found;
}

const Margin* marginOf(const Analysis& analysis, const std::string& rule)
{
    const auto found = std::find_if(analysis.margins.begin(), analysis.margins.end(),
                                    [&](const Margin& margin) { return margin.rule == rule; });
    return found == analysis.margins.end() ? nullptr : &*found;
}

bool restsOn(const Finding& finding, const std::string& fact)
{
    return std::any_of(finding.rests_on.begin(), finding.rests_on.end(),
                       [&](const Unconfirmed& one) { return one.fact.find(fact) != std::string::npos; });
}

} // namespace

class TestProof : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aProofAddsToWhatIsFoundOnTheLevelAndChangesNothing();
    void aProofIsTheSameEveryTime();
    void aStoppedProofIsNone();
    void theTableOverStockPowersComesWhereItIsAskedFor();
    void aFindingSaysWhichFactsNobodyHasConfirmed();
    void aFactThatIsMeasuredIsNotAskedFor();
    void levelsRestOnTheTanksPlaceOnlyWhereTheyTurnAboutIt();
    void unconfirmedFactsAreListedOnceForTheWholeSketch();
    void whatIsLeftIsAsMeasured();
    void theTightestPlaceCounts();
    void aBrokenRuleHasNoMarginWhereItIsBroken();
};

void TestProof::aProofAddsToWhatIsFoundOnTheLevelAndChangesNothing()
{
    const std::vector<Sketch> all = samples();
    QVERIFY(!all.empty());
    std::size_t on_grade = 0;
    for (const Sketch& sketch : all) {
        const Analysis level = analyse(sketch);
        std::optional<Proof> proof = prove(sketch, level);
        QVERIFY(proof);
        on_grade += proof->on_grade.size();
        QVERIFY(proof->filled_clean.empty()); // no sample is filled under vacuum
        const std::size_t added = proof->on_grade.size() + proof->found.size();
        const Analysis whole = withProof(level, std::move(*proof));
        const std::vector<Finding> after = apart(whole.findings, false);
        for (const Finding& before : apart(level.findings, true))
            QCOMPARE(std::count_if(after.begin(), after.end(),
                                   [&](const Finding& one) {
                                       return one.rule == before.rule && one.part == before.part &&
                                              one.along_mm == before.along_mm &&
                                              one.severity == before.severity && one.text == before.text;
                                   }),
                     std::ptrdiff_t(1));
        QCOMPARE(apart(whole.findings, true).size(), apart(level.findings, true).size() + added);
        QVERIFY(std::equal(level.not_judged.begin(), level.not_judged.end(), whole.not_judged.begin()));
        QVERIFY(std::equal(level.margins.begin(), level.margins.end(), whole.margins.begin()));
        QVERIFY(whole.stopped() || !level.stopped());
    }
    QVERIFY(on_grade > 0);
}

void TestProof::aProofIsTheSameEveryTime()
{
    for (const Sketch& sketch : samples()) {
        const Analysis level = analyse(sketch);
        const std::optional<Proof> first = prove(sketch, level);
        const std::optional<Proof> second = prove(sketch, level);
        QVERIFY(first->on_grade == second->on_grade);
        QVERIFY(first->sound == second->sound);
    }
}

void TestProof::aStoppedProofIsNone()
{
    const Sketch sketch = soundLoop();
    std::stop_source source;
    source.request_stop();
    QVERIFY(!prove(sketch, analyse(sketch), {}, source.get_token()));
    QVERIFY(prove(sketch, analyse(sketch)));
}

void TestProof::theTableOverStockPowersComesWhereItIsAskedFor()
{
    const Sketch sketch = soundLoop();
    const Analysis level = analyse(sketch);
    const std::optional<Proof> without = prove(sketch, level);
    QVERIFY(without->by_power.empty() && !without->powers_in);
    ProofOptions options;
    options.powers = true;
    int with_powers = 0;
    options.so_far = [&](const Proof& proof) { with_powers += proof.powers_in ? 1 : 0; };
    const std::optional<Proof> with = prove(sketch, level, options);
    QVERIFY(with->powers_in && with_powers > 0);
    // The heater as drawn does what the warm-up beside it says.
    const auto drawn = std::find_if(with->by_power.begin(), with->by_power.end(),
                                    [](const PowerRow& row) { return row.drawn; });
    QVERIFY(drawn != with->by_power.end() && drawn->target_h && with->warm_up.result.target_s);
    VERIFY_NEAR(*drawn->target_h, *with->warm_up.result.target_s / 3600, 1e-9);
    // And nothing else of the proof hangs on it.
    QCOMPARE(with->found.size(), without->found.size());
}

void TestProof::aFindingSaysWhichFactsNobodyHasConfirmed()
{
    Sketch s = soundLoop();
    s.heaters[0].position.z = 120; // drop of 130 mm
    s.heaters[0].position_source = Source::typical;
    s.engine->jacket_source = Source::assumed;
    const Analysis analysis = analyse(s);
    const Finding* finding = findingOf(analysis, "heater-drop");
    QVERIFY(finding);
    QVERIFY(restsOn(*finding, "water jacket"));
    QVERIFY(restsOn(*finding, "the place of Heater"));
    QVERIFY(std::any_of(finding->rests_on.begin(), finding->rests_on.end(), [](const Unconfirmed& one) {
        return one.part == PartRef{PartKind::heater, "heater-1", 0} && one.source == Source::typical;
    }));
}

void TestProof::aFactThatIsMeasuredIsNotAskedFor()
{
    Sketch s = soundLoop();
    s.heaters[0].position.z = 120;
    s.heaters[0].position_source = Source::measured;
    s.engine->jacket_source = Source::assumed;
    const Analysis jacket_open = analyse(s);
    QVERIFY(!restsOn(*findingOf(jacket_open, "heater-drop"), "the place of Heater"));
    QVERIFY(restsOn(*findingOf(jacket_open, "heater-drop"), "water jacket"));
    s.engine->jacket_source = Source::manual;
    QVERIFY(findingOf(analyse(s), "heater-drop")->rests_on.empty());
}

void TestProof::levelsRestOnTheTanksPlaceOnlyWhereTheyTurnAboutIt()
{
    Sketch s = soundLoop();
    s.tank->position_source = Source::typical;
    s.tank->cold_min_mm.value = 500;
    s.tank->cold_full_mm.value = 600;
    const Analysis square = analyse(s);
    QVERIFY(findingOf(square, "above-coolant-level"));
    QVERIFY(!restsOn(*findingOf(square, "above-coolant-level"), "surge tank"));
    s.engine->mount_angle_deg = 2;
    const Analysis leaning = analyse(s);
    QVERIFY(restsOn(*findingOf(leaning, "above-coolant-level"), "surge tank"));
}

void TestProof::unconfirmedFactsAreListedOnceForTheWholeSketch()
{
    const Analysis analysis = analyse(soundLoop());
    const auto jackets =
        std::count_if(analysis.unconfirmed.begin(), analysis.unconfirmed.end(), [](const Unconfirmed& one) {
            return one.fact.find("water jacket") != std::string::npos;
        });
    QCOMPARE(jackets, std::ptrdiff_t{1});
}

void TestProof::whatIsLeftIsAsMeasured()
{
    const Analysis analysis = analyse(soundLoop());
    const Margin* drop = marginOf(analysis, "heater-drop");
    QVERIFY(drop);
    VERIFY_NEAR(drop->measured, 170, 1e-9); // jacket from z 400, heater up to z 230
    VERIFY_NEAR(drop->limit, 152.4, 1e-9);
    VERIFY_NEAR(drop->left, 17.6, 1e-9);
    QCOMPARE(drop->unit, Unit::mm);
    QCOMPARE(drop->part, PartRef({PartKind::heater, "heater-1", 0}));
    const Margin* freezing = marginOf(analysis, "freeze-margin");
    QVERIFY(freezing);
    VERIFY_NEAR(freezing->left, freezing->measured - 5, 1e-9);
    const Margin* ground = marginOf(analysis, "ground-clearance");
    QVERIFY(ground);
    VERIFY_NEAR(ground->left, 30, 1e-9); // the heater ends at z -70, the ground is at z -300
    QVERIFY(!marginOf(analysis, "mounted-on-engine"));
}

void TestProof::theTightestPlaceCounts()
{
    Sketch s = soundLoop();
    Area belt;
    belt.id = "area-1";
    belt.what = Hazard::belt;
    belt.outline = {{500, 100}, {600, 100}, {600, 200}, {500, 200}};
    belt.y_from_mm = -50;
    belt.y_to_mm = 50;
    Area shaft = belt;
    shaft.id = "area-2";
    for (Vec2& corner : shaft.outline)
        corner.z -= 40;
    s.areas = {Shared<Area>(belt), Shared<Area>(shaft)};
    const Analysis analysis = analyse(s);
    const Margin* clear = marginOf(analysis, "keep-clear");
    QVERIFY(clear);
    VERIFY_NEAR(clear->measured, 60 + 40 - 13.5, 1e-9); // z 60 over the hose's outside at z -26.5
    VERIFY_NEAR(clear->left, 36.5, 1e-9);
    QCOMPARE(clear->part, PartRef({PartKind::hose, "hose-1", 0}));
}

void TestProof::aBrokenRuleHasNoMarginWhereItIsBroken()
{
    Sketch s = soundLoop();
    s.heaters[0].position.z = 120;
    const Analysis analysis = analyse(s);
    QVERIFY(findingOf(analysis, "heater-drop"));
    QVERIFY(!marginOf(analysis, "heater-drop"));
}

QTEST_APPLESS_MAIN(TestProof)
#include "test_proof.moc"
