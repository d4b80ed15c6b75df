#pragma once

#include "app/document/document.h"
#include "app/language/in_words.h"

#include <string>

/// What a sketch has in place of the rule book, and what the rules say about it.
namespace siphonwright::rules {

/// The sketch's change of a rule; nothing where it leaves it to the rule book.
const LimitChange* changeOf(const Sketch& sketch, std::string_view rule);

/// Put a change in the place of the rule's former one; one that changes nothing is taken out. One undo step.
void keepChange(Document& document, const QString& step, const LimitChange& change);

/// Every finding of a rule, alone or within another's fault.
std::vector<const Finding*> findingsOf(const Analysis& analysis, std::string_view rule);

/// The worst that a rule found; nothing if it found nothing.
std::optional<Severity> worstOf(const Analysis& analysis, std::string_view rule);

bool lacksAFact(const Analysis& analysis, std::string_view rule);

inline QString words(std::string_view text)
{
    return inWords(text);
}

} // namespace siphonwright::rules
