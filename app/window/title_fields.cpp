#include "app/window/title_fields.h"

#include "app/document/document.h"

#include <QSettings>
#include <QString>
#include <QUndoStack>

#include <array>

namespace siphonwright {

namespace {

struct Remembered {
    const char* key;
    std::string SheetDetails::*field;
};
constexpr std::array remembered = {
    Remembered{"title/legal-owner", &SheetDetails::legal_owner},
    Remembered{"title/department", &SheetDetails::department},
    Remembered{"title/technical-reference", &SheetDetails::technical_reference},
    Remembered{"title/creator", &SheetDetails::creator},
    Remembered{"title/approver", &SheetDetails::approver},
    Remembered{"title/document-type", &SheetDetails::document_type},
};

} // namespace

TitleFields::TitleFields(Document& document, QObject* parent)
    : QObject(parent), document_(document), before_(document.sketch().sheet), now_(before_)
{
    connect(&document_, &Document::changed, this, [this] {
        before_ = now_;
        now_ = document_.sketch().sheet;
    });
    connect(&document_.undoStack(), &QUndoStack::indexChanged, this, &TitleFields::remember);
}

SheetDetails TitleFields::offered()
{
    const QSettings settings;
    SheetDetails sheet;
    for (const Remembered& one : remembered)
        sheet.*one.field = settings.value(QLatin1String(one.key)).toString().toStdString();
    return sheet;
}

/// A drawing that is put on the table changes no step of the undo stack: what stands in it was not entered
/// here.
void TitleFields::remember()
{
    if (document_.undoStack().count() == 0)
        return;
    for (const Remembered& one : remembered)
        if (now_.*one.field != before_.*one.field)
            QSettings().setValue(QLatin1String(one.key), QString::fromStdString(now_.*one.field));
    before_ = now_;
}

} // namespace siphonwright
