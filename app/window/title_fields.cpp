#include "app/window/title_fields.h"

#include "app/document/document.h"

#include <QSettings>
#include <QString>

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
    : QObject(parent), document_(document), seen_(document.sketch().sheet)
{
    connect(&document_, &Document::changed, this, &TitleFields::look);
}

SheetDetails TitleFields::offered()
{
    const QSettings settings;
    SheetDetails sheet;
    for (const Remembered& one : remembered)
        sheet.*one.field = settings.value(QLatin1String(one.key)).toString().toStdString();
    return sheet;
}

/// Another drawing on the table has nothing to undo: what stands in it was not entered here.
void TitleFields::look()
{
    const SheetDetails& now = document_.sketch().sheet;
    if (now == seen_)
        return;
    if (document_.undoStack().count() > 0)
        for (const Remembered& one : remembered)
            if (now.*one.field != seen_.*one.field)
                QSettings().setValue(QLatin1String(one.key), QString::fromStdString(now.*one.field));
    seen_ = now;
}

} // namespace siphonwright
