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
        return "not on the level";
    char text[60];
    std::snprintf(text, sizeof text, "%+.1f%s to %+.1f%s", sound->low_percent, sound->low_open ? "+" : "",
                  sound->high_percent, sound->high_open ? "+" : "");
    return text;
}

void print(const std::vector<Finding>& findings, Severity from)
{
    for (const Finding& finding : findings)
        if (finding.severity >= from)
            std::printf("    %s\n", words(finding).c_str());
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
    std::printf("\n%-42s %5s %8s %6s  %s\n", "Good job", "stops", "cautions", "advice", "sound grades, %");
    QStringList wrong;
    for (const GoodJob& job : goodJobs()) {
        const Analysis analysis = proven(job.sketch);
        const std::size_t stops = analysis.count(Severity::stop);
        const std::size_t cautions = analysis.count(Severity::caution);
        std::printf("%-42s %5zu %8zu %6zu  %s\n", job.name.c_str(), stops, cautions,
                    analysis.count(Severity::advice), soundText(analysis).c_str());
        print(analysis.findings, Severity::caution);
        QCOMPARE(analysis.layout.hoses.size(), std::size_t{2});
        if (stops > 0 || cautions > 1)
            wrong << QString::fromStdString(job.name);
    }
    std::fflush(stdout);
    QCOMPARE(wrong, QStringList());
}

void TestCorpus::badJobsAreCaughtAtTheRightPlaceByTheRightRule()
{
    std::printf("\n%-42s %-30s %-8s %-10s %6s\n", "Bad job", "caught by", "severity", "on", "others");
    QStringList wrong;
    for (const BadJob& job : badJobs()) {
        const Analysis analysis = proven(job.sketch);
        const Finding* found = caughtBy(analysis, job.caught);
        std::printf("%-42s %-30s %-8s %-10s %6zu\n", job.name.c_str(),
                    found ? found->rule.c_str() : "NOT CAUGHT",
                    std::string(nameOf(job.caught.severity)).c_str(), job.caught.part.id.c_str(),
                    analysis.findings.size() - (found ? 1 : 0));
        if (found)
            continue;
        print(analysis.findings, Severity::advice);
        wrong << QString::fromStdString(job.name);
    }
    std::fflush(stdout);
    QCOMPARE(wrong, QStringList());
}

QTEST_APPLESS_MAIN(TestCorpus)
#include "test_corpus.moc"
