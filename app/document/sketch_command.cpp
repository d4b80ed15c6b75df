#include "app/document/sketch_command.h"

#include <utility>

namespace siphonwright {

SketchCommand::SketchCommand(Document& document, const QString& text, Sketch after, int gesture)
    : QUndoCommand(text),
      document_(document),
      before_(document.sketch()),
      after_(std::move(after)),
      gesture_(gesture)
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
    after_ = next->after_;
    // A drag that comes back to where it began is no step.
    setObsolete(before_ == after_);
    return true;
}

void SketchCommand::undo()
{
    // The stack deletes a command that turns obsolete while it is undone, so nothing is left to redo.
    if (gesture_ != 0 && document_.cancelled_gesture_ == gesture_)
        setObsolete(true);
    document_.setSketch(before_);
}

void SketchCommand::redo()
{
    document_.setSketch(after_);
}

} // namespace siphonwright
