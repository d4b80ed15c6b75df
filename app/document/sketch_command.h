#pragma once

#include "app/document/document.h"

#include <QUndoCommand>

namespace siphonwright {

/// One step of the undo stack: the sketch before and after it. Steps of one gesture become one.
class SketchCommand : public QUndoCommand {
public:
    SketchCommand(Document& document, const QString& text, Sketch after, int gesture);

    int gesture() const { return gesture_; }

    int id() const override;
    bool mergeWith(const QUndoCommand* other) override;
    void undo() override;
    void redo() override;

private:
    Document& document_;
    Sketch before_;
    Sketch after_;
    int gesture_ = 0;
};

} // namespace siphonwright
