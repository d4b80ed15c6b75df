#pragma once

#include "app/document/analyser.h"
#include "app/document/prover.h"
#include "app/document/saving.h"

#include "core/analysis/analysis.h"
#include "core/sketch/edits.h"
#include "core/sketch/file.h"

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QUndoStack>

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

class QTimer;

namespace siphonwright {

/// Memory that undo and redo may take, as the steps count it: over a million small edits. A step that holds a
/// photograph takes as much as that does.
constexpr std::size_t undo_ceiling_bytes = std::size_t{512} << 20;

/// A file as it was read.
struct SketchFile {
    Sketch sketch;
    FileMark mark;
};
using FileRead = std::variant<SketchFile, QStringList>;

/// The open sketch, its analysis, its undo stack and its file: the only place where they change.
///
/// An edit is a function on a sketch. It is wrapped in one undo command that keeps the value before and
/// after. Steps that share a gesture number (one drag, one burst of nudges) merge into one command; undo or
/// cancelGesture() during a drag puts back what was there before it.
///
/// In a large drawing the steps of a gesture are laid out at once and judged beside the window; until that
/// comes, findings and figures are those of a step before.
class Document : public QObject {
    Q_OBJECT
public:
    explicit Document(QObject* parent = nullptr);

    const Sketch& sketch() const { return sketch_; }
    /// On the level with its proof, as soon as there is one; or as seen with the vehicle on grade().
    const Analysis& analysis() const { return shown_ ? *shown_ : level_; }
    /// Whether findings and figures in analysis() are of the sketch as it is now; its layout always is.
    bool analysisIsCurrent() const { return judged_revision_ == revision_; }
    /// Whether the proof in analysis() is of the sketch as it is now, not of one before.
    bool proofIsCurrent() const { return *proof_ && proof_revision_ == revision_ && proof_shown_; }
    const std::optional<Proof>& proof() const { return *proof_; }

    /// Prove every new sketch beside the window; analysed() says when it is done.
    void startProving();
    /// Look at the drawing with the vehicle on a grade. Not part of the sketch: files and sheets are level.
    void setGrade(Grade grade);
    Grade grade() const { return grade_; }

    QUndoStack& undoStack() { return undo_stack_; }
    bool isModified() const { return !undo_stack_.isClean(); }
    /// Memory that the steps of undo and redo take: counted, not measured.
    std::size_t undoBytes() const { return undo_bytes_; }
    /// From which on the oldest steps are forgotten, a quarter of the memory at a time; the latest step stays
    /// whatever it takes.
    void setUndoCeiling(std::size_t bytes) { undo_ceiling_ = bytes; }

    /// Apply an edit as one undo step named `text`. An edit that changes nothing leaves no step.
    /// @return whether anything changed.
    bool apply(const QString& text, const std::function<void(Sketch&)>& edit, int gesture = 0);
    /// A number for the steps of one gesture; never 0.
    int beginGesture();
    /// Take back what the running gesture did, without leaving a step to redo.
    void cancelGesture(int gesture);

    QString path() const { return file_.path; }
    /// Start afresh with a sketch that has no file yet (a new or template drawing).
    void reset(Sketch sketch);
    /// Read a file. On problems the open drawing stays as it was and the sentences come back.
    QStringList open(const QString& path);
    /// open() in two parts, of which the first may take long and touches no document. \return the sentences
    /// of what is wrong, or what take() puts on the table
    static FileRead read(const QString& path, const Disk& disk = Disk::real());
    void take(SketchFile file);
    /// Write to a path, atomically and durably (replaceFile()), and make it the document's file. On failure
    /// the document stays unsaved and its file is what it was.
    std::optional<WriteFailure> write(const QString& path, Theirs theirs = Theirs::in_the_way);
    /// The same, with the sentences of what went wrong.
    QStringList save(const QString& path);
    /// write() in three parts, of which the middle one, carryOut(), may take long and touches nothing of the
    /// document: between the first and the last it must not be edited.
    std::variant<SaveJob, WriteFailure> beginSave(const QString& path,
                                                  Theirs theirs = Theirs::in_the_way) const;
    std::optional<WriteFailure> endSave(const SaveJob& job, const SaveOutcome& outcome);
    /// What the document's file is, beside what was opened or saved last.
    OnDisk onDisk() const { return onDiskNow(file_); }
    /// That file as it was then.
    const FileMark& fileMark() const { return file_; }
    /// Forget the file: what is on the table is a drawing without one.
    void leaveFile();
    /// Put back a drawing whose program ended: unsaved, with the file it had and that file's fingerprint
    /// then.
    void recover(Sketch sketch, const QString& path, const QByteArray& fingerprint);
    /// Fingerprint of the file as opened or saved last; empty without one.
    const QByteArray& fileFingerprint() const { return file_.fingerprint; }
    /// Writes go through another disk from now on, which must live as long as this: for tests.
    void setDisk(const Disk& disk) { disk_ = &disk; }
    const Disk& disk() const { return *disk_; }

Q_SIGNALS:
    void changed();       ///< sketch and analysis have new values
    void analysed();      ///< the analysis alone has: it or its proof has come, or another grade is looked at
    void fileChanged();   ///< path or unsaved mark
    void undoForgotten(); ///< the oldest steps of undo are gone, since they took too much memory

private:
    friend class SketchCommand;
    enum class Judged { at_once, soon };
    void setSketch(const Sketch& sketch, Judged when = Judged::at_once);
    void forget();
    void forgetOldestSteps();
    void analyseAgain();
    void layOutAgain();
    void layOutShown();
    void askAnalyser();
    void takeAnalysis();
    void askProver();
    void askProverInAPause();
    void takeProof();
    void merge();

    Sketch sketch_;
    Analysis level_;                ///< without proof, on the level
    LevelTables level_tables_;      ///< of its hoses, from one fill to the next
    std::optional<Analysis> shown_; ///< what is shown; nothing: level_
    Grade grade_;
    std::shared_ptr<const std::optional<Proof>> proof_; ///< never null
    std::uint64_t revision_ = 0;                        ///< of the sketch
    std::uint64_t judged_revision_ = 0;
    std::uint64_t proof_revision_ = 0;
    bool proof_shown_ = true;          ///< no newer one than the one in shown_
    std::uint64_t first_revision_ = 0; ///< of this drawing: a proof of the one before comes too late
    Prover* prover_ = nullptr;
    QTimer* pause_ = nullptr;         ///< of a drag of a large sketch, after which it is proven
    Analyser* analyser_ = nullptr;    ///< from the first drag that needs one
    std::vector<Analysis> done_with_; ///< to be freed by the analyser
    std::size_t undo_bytes_ = 0;      ///< kept by the commands, so it stands before their stack
    std::size_t undo_ceiling_ = undo_ceiling_bytes;
    bool forgetting_ = false; ///< commands are put on the stack anew, whose work is done
    QUndoStack undo_stack_;
    FileMark file_;
    int last_gesture_ = 0;
    int cancelled_gesture_ = 0; ///< while cancelGesture() runs: the command that must leave the stack
    bool applying_ = false;     ///< a listener of changed() must not edit in turn
    const Disk* disk_ = &Disk::real();
};

/// What is selected and what is pointed at, by id; shared by canvas and panels.
class Selection : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// The part that panels show: the last of those selected.
    const PartRef& part() const { return part_; }
    /// All that are selected, in the order they were.
    const std::vector<PartRef>& parts() const { return parts_; }
    bool contains(const PartRef& part) const;
    /// This part alone; nothing if it is none.
    void select(const PartRef& part);
    /// These, each once.
    void selectAll(const std::vector<PartRef>& parts);
    /// Add a part to what is selected, or take it out again.
    void toggle(const PartRef& part);
    /// Index into the analysis's findings, -1 for none.
    int finding() const { return finding_; }
    void selectFinding(int index);
    /// A place along a hose that pointer and profile share; an empty hose for none.
    const Id& hoverHose() const { return hover_hose_; }
    double hoverAlong() const { return hover_along_; }
    void hover(const Id& hose, double along_mm);

Q_SIGNALS:
    void partChanged(); ///< part() or parts()
    void findingChanged();
    void hoverChanged();

private:
    PartRef part_;
    std::vector<PartRef> parts_;
    int finding_ = -1;
    Id hover_hose_;
    double hover_along_ = 0;
};

} // namespace siphonwright
