#include "app/document/document.h"

#include "app/document/sketch_command.h"
#include "app/language/default_names.h"

#include "core/layout/follow_dimensions.h"

#include <QSignalBlocker>

#include <algorithm>
#include <memory>
#include <utility>
#include <vector>

namespace siphonwright {

Document::Document(QObject* parent) : QObject(parent), level_(analyse(sketch_)), analysis_(level_)
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
    proof_.reset();
    grade_ = {};
    first_revision_ = revision_ + 1;
}

void Document::startProving()
{
    if (prover_)
        return;
    prover_ = new Prover(this);
    connect(prover_, &Prover::ready, this, &Document::takeProof, Qt::QueuedConnection);
    prover_->ask({revision_, sketch_, level_});
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
    if (!proof.graded && proof_) {
        // Grades and margins take longer: until they come, those of the drawing before stand.
        proof.graded = proof_->graded;
        proof.on_grade = std::move(proof_->on_grade);
        proof.sound = proof_->sound;
        proof.sag = std::move(proof_->sag);
    }
    proof_ = std::move(proof);
    proof_revision_ = answer->revision;
    if (grade_ == Grade{})
        merge();
    Q_EMIT analysed();
}

void Document::merge()
{
    if (grade_ != Grade{}) {
        analysis_ = analyse(sketch_, &level_, grade_);
        return;
    }
    if (!proof_) {
        analysis_ = level_;
        return;
    }
    // A proof from before may speak of what has been deleted since.
    Proof proof = *proof_;
    // Where air stays is seen while a hose is dragged: some hundred microseconds.
    if (proof_revision_ != revision_) {
        proof.filling = fillOf(sketch_, level_.layout, &level_.running, Assumptions(sketch_), &level_tables_);
        proof.running = level_.running;
        passAir(proof.running, sketch_, level_.layout, proof.filling);
    }
    const auto gone = [this](const Finding& finding) {
        return (!finding.hose.empty() && !sketch_.hose(finding.hose)) ||
               (finding.part.kind == PartKind::heater && !sketch_.heater(finding.part.id));
    };
    proof.on_grade.erase(std::remove_if(proof.on_grade.begin(), proof.on_grade.end(), gone),
                         proof.on_grade.end());
    analysis_ = withProof(level_, std::move(proof));
}

void Document::analyseAgain()
{
    level_ = analyse(sketch_, &level_);
    ++revision_;
    merge();
    if (prover_)
        prover_->ask({revision_, sketch_, level_});
}

void Document::setSketch(const Sketch& sketch)
{
    sketch_ = sketch;
    analyseAgain();
    applying_ = true;
    Q_EMIT changed();
    applying_ = false;
}

} // namespace siphonwright
