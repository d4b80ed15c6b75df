#pragma once

#include "app/document/document.h"
#include "app/document/sketch_change.h"

#include <QUndoCommand>

#include <cstddef>

namespace siphonwright {

/// One step of the undo stack: what it changed. Steps of one gesture become one.
class SketchCommand : public QUndoCommand {
public:
    SketchCommand(Document& document, const QString& text, const Sketch& after, int gesture);
    /// Takes over what another did, which is about to go.
    explicit SketchCommand(SketchCommand& leaving);
    ~SketchCommand() override;

    int gesture() const { return gesture_; }
    /// Memory that it takes: counted, not measured.
    std::size_t bytes() const { return bytes_; }

    int id() const override;
    bool mergeWith(const QUndoCommand* other) override;
    void undo() override;
    void redo() override;

private:
    void count();

    Document& document_;
    SketchChange change_;
    int gesture_ = 0;
    std::size_t bytes_ = 0; ///< as the document counts them
};

} // namespace siphonwright
