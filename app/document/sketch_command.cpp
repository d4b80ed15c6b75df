#include "app/document/sketch_command.h"

#include <utility>

namespace siphonwright {

SketchCommand::SketchCommand(Document& document, const QString& text, const Sketch& after, int gesture)
    : QUndoCommand(text), document_(document), change_(document.sketch(), after), gesture_(gesture)
{
    count();
}

SketchCommand::SketchCommand(SketchCommand& leaving)
    : QUndoCommand(leaving.text()),
      document_(leaving.document_),
      change_(std::move(leaving.change_)),
      gesture_(leaving.gesture_)
{
    count();
}

SketchCommand::~SketchCommand()
{
    document_.undo_bytes_ -= bytes_;
}

void SketchCommand::count()
{
    constexpr std::size_t of_qt = 160; // what it keeps of a command, and of its place on the stack
    document_.undo_bytes_ -= bytes_;
    bytes_ = sizeof(SketchCommand) + of_qt + change_.bytes();
    document_.undo_bytes_ += bytes_;
}

int SketchCommand::id() const
{
    constexpr int never_merged = -1;
    constexpr int sketch_command = 1;
    return gesture_ == 0 ? never_merged : sketch_command;
}

bool SketchCommand::mergeWith(const QUndoCommand* other)
{
    const auto* next = dynamic_cast<const SketchCommand*>(other);
    if (!next || next->gesture_ != gesture_ || document_.forgetting_)
        return false;
    // The stack has done the next step already.
    Sketch before = document_.sketch();
    next->change_.undo(before);
    change_.undo(before);
    change_ = SketchChange(before, document_.sketch());
    count();
    // A drag that comes back to where it began is no step.
    setObsolete(change_.isNothing());
    return true;
}

void SketchCommand::undo()
{
    // The stack deletes a command that turns obsolete while it is undone, so nothing is left to redo.
    if (gesture_ != 0 && document_.cancelled_gesture_ == gesture_)
        setObsolete(true);
    Sketch before = document_.sketch();
    change_.undo(before);
    document_.setSketch(before);
}

void SketchCommand::redo()
{
    if (document_.forgetting_)
        return;
    Sketch after = document_.sketch();
    change_.redo(after);
    document_.setSketch(after, gesture_ == 0 ? Document::Judged::at_once : Document::Judged::soon);
}

} // namespace siphonwright
