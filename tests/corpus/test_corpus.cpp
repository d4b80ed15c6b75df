#include "tests/corpus/jobs.h"

#include "core/analysis/analysis.h"

#include <QTest>

#include <algorithm>
#include <cstdio>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Analysis proven(const Sketch& sketch)
{
    Analysis level = analyse(sketch);
    std::optional<Proof> proof = prove(sketch, level);
    return withProof(std::move(level), std::move(*proof));
}

std::string words(const Finding& finding)
{
    return std::string(nameOf(finding.severity)) + " " + finding.rule + ": " +
           format(finding.text, UnitSystem::metric);
}

bool isIt(const Finding& finding, const Caught& caught)
{
    if (finding.rule != caught.rule || finding.severity != caught.severity || finding.part != caught.part ||
        finding.only_on_grade.has_value() != caught.only_on_grade)
        return false;
    return !caught.near || (finding.at && distance(*finding.at, *caught.near) <= caught.within_mm);
}

const Finding* caughtBy(const Analysis& analysis, const Caught& caught)
{
    const auto found = std::find_if(analysis.findings.begin(), analysis.findings.end(),
                                    [&](const Finding& finding) { return isIt(finding, caught); });
    return found == analysis.findings.end() ? nullptr : &*found;
}

std::string soundText(const Analysis& analysis)
{
    const std::optional<SoundGrades>& sound = analysis.proof->sound;
    if (!sound)
        return "not sound on the level";
    char text[60];
    std::snprintf(text, sizeof text, "sound %+.1f to %+.1f %%", sound->low_percent, sound->high_percent);
    return text;
}

} // namespace

class TestCorpus : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void thereAreEnoughJobs();
    void goodJobsDrawNoStopAndAtMostOneCaution();
    void badJobsAreCaughtAtTheRightPlaceByTheRightRule();
};

void TestCorpus::thereAreEnoughJobs()
{
    QVERIFY(goodJobs().size() >= 10);
    QVERIFY(badJobs().size() >= 12);
}

void TestCorpus::goodJobsDrawNoStopAndAtMostOneCaution()
{
    std::printf("\n%-40s %5s %8s %7s  %s\n", "Good job", "stops", "cautions", "advice", "grades, cautions");
    QStringList wrong;
    for (const GoodJob& job : goodJobs()) {
        const Analysis analysis = proven(job.sketch);
        const std::size_t stops = analysis.count(Severity::stop);
        const std::size_t cautions = analysis.count(Severity::caution);
        std::printf("%-40s %5zu %8zu %7zu  %s\n", job.name.c_str(), stops, cautions,
                    analysis.count(Severity::advice), soundText(analysis).c_str());
        for (const Finding& finding : analysis.findings)
            if (finding.severity != Severity::advice || qEnvironmentVariableIsSet("CORPUS_ADVICE"))
                std::printf("%64s %s\n", "", words(finding).c_str());
        QVERIFY(!analysis.layout.hoses.empty());
        if (stops > 0 || cautions > 1)
            wrong << QString::fromStdString(job.name);
    }
    std::fflush(stdout);
    QCOMPARE(wrong, QStringList());
}

void TestCorpus::badJobsAreCaughtAtTheRightPlaceByTheRightRule()
{
    std::printf("\n%-44s %-30s %-8s %s\n", "Bad job", "caught by", "severity", "other faults");
    QStringList wrong;
    for (const BadJob& job : badJobs()) {
        const Analysis analysis = proven(job.sketch);
        const Finding* found = caughtBy(analysis, job.caught);
        std::printf(
            "%-44s %-30s %-8s %zu\n", job.name.c_str(), found ? job.caught.rule.c_str() : "NOT CAUGHT",
            std::string(nameOf(job.caught.severity)).c_str(), analysis.findings.size() - (found ? 1 : 0));
        for (const Finding& finding : analysis.findings) {
            if (!found || qEnvironmentVariableIsSet("CORPUS_ADVICE"))
                std::printf("%46s %s %s (%.0f, %.0f, %.0f)\n", "", finding.part.id.c_str(),
                            words(finding).c_str(), finding.at.value_or(Vec3{}).x,
                            finding.at.value_or(Vec3{}).y, finding.at.value_or(Vec3{}).z);
        }
        if (!found)
            wrong << QString::fromStdString(job.name);
    }
    std::fflush(stdout);
    QCOMPARE(wrong, QStringList());
}

QTEST_APPLESS_MAIN(TestCorpus)
#include "test_corpus.moc"
