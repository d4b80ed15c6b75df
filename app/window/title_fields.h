#pragma once

#include "core/sketch/sketch.h"

#include <QObject>

namespace siphonwright {

class Document;

/// The fields of the title block that are the same on most of somebody's drawings: whose they are, who draws,
/// who approves, what kind of document. What was entered last is offered in the next new drawing.
class TitleFields : public QObject {
    Q_OBJECT
public:
    /// Remembers what is entered from now on. The document must live as long as this.
    explicit TitleFields(Document& document, QObject* parent = nullptr);

    /// A new drawing's title block, with all else empty.
    static SheetDetails offered();

private:
    void remember();

    Document& document_;
    SheetDetails before_; ///< the last change
    SheetDetails now_;
};

} // namespace siphonwright
