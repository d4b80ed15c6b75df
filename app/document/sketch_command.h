#pragma once

#include "app/document/document.h"
#include "app/document/sketch_change.h"

#include <QUndoCommand>

namespace siphonwright {

/// One step of the undo stack: what it changed. Steps of one gesture become one.
class SketchCommand : public QUndoCommand {
public:
    SketchCommand(Document& document, const QString& text, const Sketch& after, int gesture);

    int gesture() const { return gesture_; }

    int id() const override;
    bool mergeWith(const QUndoCommand* other) override;
    void undo() override;
    void redo() override;

private:
    Document& document_;
    SketchChange change_;
    int gesture_ = 0;
};

} // namespace siphonwright
