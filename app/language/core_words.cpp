#include "app/language/core_words.h"

#include <QCoreApplication> // QT_TRANSLATE_NOOP

namespace siphonwright::language {

std::span<const char* const> coreWords()
{
    static constexpr const char* words[] = {
#include "app/language/core_words.inc"
    };
    return words;
}

} // namespace siphonwright::language
