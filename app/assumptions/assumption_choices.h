#pragma once

#include "app/document/document.h"
#include "app/language/in_words.h"

#include <QString>
#include <QStringList>

/// What a sketch has in place of the book of assumptions, and what an assumption does to its results.
namespace siphonwright::assumptions {

/// The sketch's change of an assumption; nothing where it leaves it to the book.
const AssumptionChange* changeOf(const Sketch& sketch, std::string_view id);

/// Put a change in the place of the former one, in one undo step.
void keepChange(Document& document, const AssumptionChange& change);
/// Back to the book's, in one undo step.
void takeBack(Document& document, std::string_view id);

/// The results whose band this assumption drives, for any heater: "peak outlet, flow"; those that it drives
/// most of all come first.
QStringList drivenBy(const Analysis& analysis, Assumed which);
QString nameOf(Banded result);

inline QString words(std::string_view text)
{
    return inWords(text);
}

} // namespace siphonwright::assumptions
