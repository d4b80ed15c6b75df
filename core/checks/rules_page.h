#pragma once

#include <string>

namespace siphonwright {

/// The rule book as a page of documentation (Markdown): every rule in the book's order with its id, why,
/// limits with their units in both unit systems, basis, fix, and whether it is judged over the grades.
std::string rulesPage();

} // namespace siphonwright
