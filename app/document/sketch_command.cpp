#include "app/document/sketch_command.h"

namespace siphonwright {

SketchCommand::SketchCommand(Document& document, const QString& text, const Sketch& after, int gesture)
    : QUndoCommand(text), document_(document), change_(document.sketch(), after), gesture_(gesture)
{}

int SketchCommand::id() const
{
    constexpr int never_merged = -1;
    constexpr int sketch_command = 1;
    return gesture_ == 0 ? never_merged : sketch_command;
}

bool SketchCommand::mergeWith(const QUndoCommand* other)
{
    const auto* next = dynamic_cast<const SketchCommand*>(other);
    if (!next || next->gesture_ != gesture_)
        return false;
    // The stack has done the next step already.
    Sketch before = document_.sketch();
    next->change_.undo(before);
    change_.undo(before);
    change_ = SketchChange(before, document_.sketch());
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
    Sketch after = document_.sketch();
    change_.redo(after);
    document_.setSketch(after, gesture_ == 0 ? Document::Judged::at_once : Document::Judged::soon);
}

} // namespace siphonwright
