#include "app/language/margin_words.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"

namespace siphonwright {

QString marginWords(const Margin& margin, UnitSystem units)
{
    const auto shown = [&](double value) { return inWords(value, margin.unit, units); };
    // The difference of two slopes is no slope that anybody would know again.
    if (margin.unit == Unit::slope)
        return tr("sound: measured %1, limit %2").arg(shown(margin.measured), shown(margin.limit));
    if (margin.limit == 0 || (margin.measured < 0 && margin.limit > 0))
        return tr("sound, with %1 left").arg(shown(margin.left));
    return tr("sound, with %1 left: measured %2, limit %3")
        .arg(shown(margin.left), shown(margin.measured), shown(margin.limit));
}

} // namespace siphonwright
