#include "app/document/document.h"

#include "app/document/sketch_command.h"
#include "app/language/default_names.h"

#include "core/layout/follow_dimensions.h"

#include <QSignalBlocker>
#include <QTimer>

#include <algorithm>
#include <memory>
#include <utility>
#include <vector>

namespace siphonwright {

Document::Document(QObject* parent)
    : QObject(parent), level_(analyse(sketch_)), proof_(std::make_shared<const std::optional<Proof>>())
{
    connect(&undo_stack_, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

bool Document::apply(const QString& text, const std::function<void(Sketch&)>& edit, int gesture)
{
    if (applying_)
        return false;
    Sketch after = sketch_;
    edit(after);
    language::nameNewParts(after, sketch_);
    followDimensions(after, sketch_, level_.layout);
    if (after == sketch_)
        return false;
    undo_stack_.push(new SketchCommand(*this, text, after, gesture));
    if (undo_bytes_ > undo_ceiling_)
        forgetOldestSteps();
    return true;
}

/// A stack cannot drop what is at its bottom, so what stays is put on it anew. That is done seldom, since
/// more goes than is over the ceiling.
void Document::forgetOldestSteps()
{
    const auto stepAt = [this](int index) {
        // The stack shows its commands to be read only; these are about to be deleted by it.
        return dynamic_cast<SketchCommand*>(const_cast<QUndoCommand*>(undo_stack_.command(index)));
    };
    const std::size_t wanted = undo_ceiling_ / 4 * 3;
    std::size_t left = undo_bytes_;
    int first = 0;
    for (; first < undo_stack_.count() - 1 && left > wanted; ++first)
        left -= stepAt(first)->bytes();
    if (first == 0)
        return;
    std::vector<std::unique_ptr<SketchCommand>> staying;
    for (int i = first; i < undo_stack_.count(); ++i)
        staying.push_back(std::make_unique<SketchCommand>(*stepAt(i)));
    const int clean = undo_stack_.cleanIndex() - first;
    forgetting_ = true;
    {
        const QSignalBlocker quiet(undo_stack_); // nothing that it tells of is another afterwards
        undo_stack_.clear();
        if (clean < 0)
            undo_stack_.resetClean();
        for (auto& step : staying) {
            undo_stack_.push(step.release());
            if (undo_stack_.index() == clean)
                undo_stack_.setClean();
        }
    }
    forgetting_ = false;
    Q_EMIT undoForgotten();
}

int Document::beginGesture()
{
    return ++last_gesture_;
}

void Document::cancelGesture(int gesture)
{
    if (gesture == 0)
        return;
    const auto gesture_on_top = [this] {
        const int top = undo_stack_.index() - 1;
        const auto* command =
            top < 0 ? nullptr : dynamic_cast<const SketchCommand*>(undo_stack_.command(top));
        return command ? command->gesture() : 0;
    };
    cancelled_gesture_ = gesture;
    // More than one command where a save in between kept them from merging.
    while (gesture_on_top() == gesture)
        undo_stack_.undo();
    cancelled_gesture_ = 0;
}

/// What was known of another drawing.
void Document::forget()
{
    proof_ = std::make_shared<const std::optional<Proof>>();
    grade_ = {};
    first_revision_ = revision_ + 1;
}

void Document::startProving()
{
    if (prover_)
        return;
    prover_ = new Prover(this);
    connect(prover_, &Prover::ready, this, &Document::takeProof, Qt::QueuedConnection);
    askProver();
}

void Document::setGrade(Grade grade)
{
    if (grade == grade_)
        return;
    grade_ = grade;
    merge();
    Q_EMIT analysed();
}

void Document::takeProof()
{
    std::optional<Prover::Answer> answer = prover_->take();
    if (!answer || answer->revision < first_revision_)
        return;
    Proof proof = std::move(answer->proof);
    if (const std::optional<Proof>& before = *proof_; !proof.graded && before) {
        // Grades and margins take longer: until they come, those of the drawing before stand.
        proof.graded = before->graded;
        proof.on_grade = before->on_grade;
        proof.sound = before->sound;
        proof.sag = before->sag;
    }
    proof_ = std::make_shared<const std::optional<Proof>>(std::move(proof));
    proof_revision_ = answer->revision;
    if (analyser_ && isLarge(sketch_)) {
        proof_shown_ = false;
        if (analyser_->isIdle())
            askAnalyser();
        return;
    }
    if (grade_ == Grade{})
        merge();
    Q_EMIT analysed();
}

void Document::merge()
{
    shown_ = shownOf(sketch_, level_, *proof_, proof_revision_ == revision_, grade_, level_tables_);
    proof_shown_ = true;
}

void Document::askProver()
{
    if (pause_)
        pause_->stop();
    if (prover_)
        prover_->ask({revision_, sketch_, level_});
}

/// Proofs of a large sketch take longer than the pointer rests in a drag, so they would be stopped again and
/// again, and take time from what is drawn.
void Document::askProverInAPause()
{
    if (!prover_)
        return;
    if (!pause_) {
        constexpr int pause_ms = 120;
        pause_ = new QTimer(this);
        pause_->setSingleShot(true);
        pause_->setInterval(pause_ms);
        connect(pause_, &QTimer::timeout, this, [this] {
            if (analysisIsCurrent())
                askProver();
        });
    }
    pause_->start();
}

void Document::analyseAgain()
{
    level_ = analyse(sketch_, &level_);
    judged_revision_ = revision_;
    merge();
    askProver();
}

/// What is drawn and dragged on; the rest follows.
void Document::layOutAgain()
{
    level_.layout = resolve(sketch_, plumbOf(sketch_), &level_.layout);
    layOutShown();
    if (prover_)
        prover_->halt();
    if (pause_)
        pause_->stop();
    if (!analyser_) {
        analyser_ = new Analyser(this);
        connect(analyser_, &Analyser::ready, this, &Document::takeAnalysis, Qt::QueuedConnection);
    }
    if (analyser_->isIdle())
        askAnalyser();
}

void Document::layOutShown()
{
    if (shown_)
        shown_->layout =
            grade_ == Grade{} ? level_.layout : resolve(sketch_, plumbOf(sketch_, grade_), &shown_->layout);
}

void Document::askAnalyser()
{
    Analysis before;
    before.layout = level_.layout;
    before.running = level_.running;
    before.judged = level_.judged;
    analyser_->ask({revision_, sketch_, std::move(before), proof_, proof_revision_ == revision_, grade_,
                    std::move(done_with_)});
    done_with_.clear();
}

void Document::takeAnalysis()
{
    std::optional<Analyser::Answer> answer = analyser_->take();
    if (!answer)
        return;
    const bool newer = answer->revision > judged_revision_;
    if (answer->revision >= judged_revision_) {
        judged_revision_ = answer->revision;
        std::swap(level_, answer->level);
        if (!analysisIsCurrent())
            level_.layout = std::move(answer->level.layout); // the newest, put aside by the swap
        proof_shown_ = answer->proof == proof_;
        if (answer->grade == grade_)
            std::swap(shown_, answer->shown);
        else
            merge();
        if (!analysisIsCurrent())
            layOutShown();
        else if (newer)
            askProverInAPause();
    }
    done_with_.push_back(std::move(answer->level));
    if (answer->shown)
        done_with_.push_back(std::move(*answer->shown));
    if (!analysisIsCurrent() || !proof_shown_)
        askAnalyser();
    Q_EMIT analysed();
}

void Document::setSketch(const Sketch& sketch, Judged when)
{
    const bool soon = when == Judged::soon && isLarge(sketch) && sameParts(sketch_, sketch);
    sketch_ = sketch;
    ++revision_;
    if (soon)
        layOutAgain();
    else
        analyseAgain();
    applying_ = true;
    Q_EMIT changed();
    applying_ = false;
}

} // namespace siphonwright
