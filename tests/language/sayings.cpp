#include "tests/language/sayings.h"

#include "core/analysis/analysis.h"
#include "core/analysis/margin_text.h"
#include "core/analysis/running_text.h"
#include "core/checks/rules.h"
#include "core/commissioning/checklist.h"
#include "core/commissioning/checklist_text.h"
#include "core/commissioning/diagnosis.h"
#include "core/commissioning/fault_book.h"
#include "core/commissioning/readings.h"
#include "core/paperwork/coolant_mix.h"
#include "core/paperwork/electrical_load.h"
#include "core/paperwork/estimate.h"
#include "core/paperwork/parts.h"
#include "core/proposing/fix.h"
#include "core/proposing/proposal_text.h"
#include "core/proposing/propose.h"
#include "core/running/assumptions.h"
#include "core/running/fill_words.h"
#include "core/sketch/draw_survey.h"

#include <optional>

using namespace siphonwright;

namespace {

void sayFinding(Sayings& out, const Finding& finding)
{
    out.add(finding.text);
    out.add(finding.fix);
    out.add(listOf(finding.rests_on));
    for (const Finding& detail : finding.details)
        sayFinding(out, detail);
}

void sayAnalysis(Sayings& out, const Analysis& analysis)
{
    for (const Finding& finding : analysis.findings)
        sayFinding(out, finding);
    for (const NotJudged& one : analysis.not_judged)
        out.add(one.missing);
    out.add(listOf(analysis.unconfirmed));
}

void sayProof(Sayings& out, const Proof& proof, const Sketch& sketch)
{
    out.add(textOf(proof.sound));
    out.add(textOf(proof.warm_up));
    for (const SagMargin& margin : proof.sag)
        out.add(textOf(margin, sketch));
    if (const auto ends = textOf(proof.at_ends))
        out.add(*ends);
    for (const HeaterBands& bands : proof.bands)
        out.add(textOf(bands, sketch));
}

void sayFilling(Sayings& out, const Filling& filling, const Sketch& sketch, const Layout& layout)
{
    out.add(filling.missing);
    if (!filling.missing.empty())
        return;
    out.add(endOf(filling));
    out.add(topUpOf(filling));
    if (const auto coldest = coldestOf(filling, sketch))
        out.add(*coldest);
    for (const LoopAir& air : filling.loops) {
        out.add(baredOf(air, sketch));
        out.add(runningOf(air, sketch));
    }
    for (const PocketFound& pocket : filling.pockets) {
        out.add(textOf(pocket, sketch, layout.plumb));
        out.add(clearingOf(pocket));
        out.add(placeOf(pocket, sketch));
    }
    FillPlanOf plan = fillRequestOf(sketch, layout, Assumptions(sketch));
    if (!plan.request)
        return;
    out.add(beginningOf(plan));
    for (const FillLine& line : linesOf(fillAsPlanned(*plan.request), plan))
        out.add(line.text);
}

void sayWork(Sayings& out, const Sketch& sketch, const Analysis& analysis)
{
    for (const WorkStep& step : checklistSteps())
        out.addAll(textOf(step, sketch, analysis));
}

void sayParts(Sayings& out, const Sketch& sketch, const Layout& layout)
{
    const PartsList parts = partsOf(sketch, layout);
    for (const PartRow& row : parts.rows) {
        out.add(row.size);
        out.add(row.missing);
        out.addAll(row.notes);
    }
    out.addAll(parts.not_counted);
    const Estimate estimate = estimateOf(sketch, parts);
    out.add(estimate.message);
    out.addAll(estimate.missing);
    for (const EstimateLine& line : estimate.lines) {
        out.add(line.text);
        out.add(line.size);
        out.add(line.missing);
    }
}

/// What mends a fault on the drawing, and where a layout puts the heater.
void sayChanges(Sayings& out, const Sketch& sketch, const Analysis& analysis)
{
    for (const Finding& finding : analysis.findings)
        if (out.isFirstOf(finding.rule))
            if (const auto fix = fixFor(sketch, analysis, finding))
                out.add(fix->text);
    for (const double by_mm : {-10.0, 10.0})
        for (const Vec3 way :
             {Vec3{by_mm, 0, 0}, Vec3{0, by_mm, 0}, Vec3{0, 0, by_mm}, Vec3{by_mm, -by_mm, by_mm}}) {
            Proposal moved;
            moved.sketch = sketch;
            for (Heater& heater : moved.sketch.heaters) {
                heater.position = heater.position + way;
                moved.heater = heater.id;
            }
            out.addAll(changesFrom(sketch, moved));
        }
}

void sayElectrics(Sayings& out, const Sketch& sketch)
{
    const ElectricalLoad load = electricalLoadOf(sketch);
    out.addAll(load.missing);
    out.addAll(load.remarks);
    for (const HeaterLoad& heater : load.heaters)
        out.add(heater.missing);
}

void saySurvey(Sayings& out, const Sketch& sketch)
{
    const SurveyReport report = reportOn(sketch);
    out.addAll(report.not_measured);
    out.addAll(report.taken);
    out.addAll(report.disagree);
}

} // namespace

void Sayings::add(const Message& message)
{
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch})
        sentences_.insert(format(message, units));
    add(message.pattern);
    for (const std::string& word : message.words)
        add(word);
    for (const Quantity& quantity : message.quantities)
        if (quantity.unit == Unit::slope || quantity.unit == Unit::bores)
            add(format(quantity.value, quantity.unit, UnitSystem::metric));
}

void callByUsersWord(Sketch& sketch)
{
    int n = 0;
    const auto name = [&n] { return std::string(users_word) + ' ' + std::to_string(++n); };
    for (Port& port : sketch.ports)
        port.name = name();
    for (Heater& heater : sketch.heaters)
        heater.name = name();
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([&](Hose& changed) { changed.name = name(); });
    for (Shared<Area>& area : sketch.areas)
        area.edit([&](Area& changed) { changed.name = name(); });
}

void saySketch(Sayings& sayings, const Sketch& sketch)
{
    const Analysis analysis = proved(sketch);
    sayAnalysis(sayings, analysis);
    for (const LoopRun& run : analysis.running.loops)
        sayings.add(textOf(run, sketch));
    for (const double percent : {-10.0, 10.0})
        sayAnalysis(sayings, analyse(sketch, &analysis, {percent, percent / 2}));
    if (analysis.proof) {
        sayProof(sayings, *analysis.proof, sketch);
        sayFilling(sayings, analysis.proof->filling, sketch, analysis.layout);
    }
    sayWork(sayings, sketch, analysis);
    sayParts(sayings, sketch, analysis.layout);
    sayElectrics(sayings, sketch);
    sayChanges(sayings, sketch, analysis);
    saySurvey(sayings, sketch);
    // Another mixture than is in: drained and filled in rounds, where little runs out at once.
    Sketch mixed = sketch;
    mixed.coolant_plan.wanted_percent = 50;
    for (const double drainable_l : {1.0, 4.0, 60.0}) {
        mixed.coolant_plan.drainable_l = drainable_l;
        sayWork(sayings, mixed, analysis);
    }
}

void sayDiagnosis(Sayings& sayings, const Sketch& sketch)
{
    const JudgedReadings judged = judgeReadings(sketch);
    sayings.add(judged.missing);
    sayings.add(judged.cycles_words);
    for (const ReadingVerdict& verdict : judged.verdicts)
        sayings.add(verdict.words);
    const Diagnosis diagnosis = diagnose(sketch);
    sayings.add(diagnosis.missing);
    sayings.addAll(diagnosis.not_simulated);
    for (const SuspectGroup& group : diagnosis.groups)
        for (const Suspect& suspect : group.members) {
            sayings.add(suspect.fault.title);
            sayings.add(suspect.why);
            sayings.add(suspect.check);
            sayings.add(suspect.fix);
        }
    if (diagnosis.next)
        sayings.add(diagnosis.next->words);
}

void sayBooks(Sayings& sayings)
{
    for (const WorkStep& step : checklistSteps()) {
        sayings.add(step.title);
        sayings.add(step.caution);
    }
    for (const FaultRow& fault : faultBook()) {
        sayings.add(fault.title);
        sayings.add(fault.check);
        sayings.add(fault.fix);
    }
    for (int kind = 0; kind <= static_cast<int>(ItemKind::distilled_water); ++kind)
        sayings.add(nameOf(static_cast<ItemKind>(kind)));
    for (const Rule& rule : ruleBook()) {
        sayings.add(rule.title);
        sayings.add(rule.basis);
        sayings.add(rule.why);
        sayings.add(rule.fix);
    }
    for (std::size_t i = 0; i < assumed_count; ++i)
        sayings.add(assumptionOf(static_cast<Assumed>(i)).title);
}
