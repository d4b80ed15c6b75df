#include "app/drawing/ink.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

/// Item numbers of what sits in a hose, and where it sits.
namespace siphonwright::drawing {

QString placeWords(const Ink& ink, const Route& route, double along_mm)
{
    return tr("%1, %2 along it")
        .arg(inWords(nameOfHose(*route.hose)), inWords(std::round(along_mm), Unit::mm, ink.style.units));
}

void labelInlinePart(Ink& ink, const ResolvedHose& hose, std::size_t index)
{
    const QString number = ink.numbered({}, {PartKind::inline_part, hose.id(), index});
    if (number.isEmpty())
        return;
    const QPointF at = ink.page(alongHose(*hose, hose->hose->parts[index].along_mm));
    const double gap = std::max(hose->outsideDiameter() * 0.7, ink.paper(1.2)) + ink.paper(1.2);
    const double h = ink.paper(ink.style.lettering_mm);
    ink.label({{at + QPointF(gap, h / 2), Anchor::left},
               {at + QPointF(-gap, h / 2), Anchor::right},
               {at + QPointF(0, -gap), Anchor::centre},
               {at + QPointF(0, gap + h), Anchor::centre}},
              number, ink.palette.ink,
              Led{at, ink.style.page ? gap + ink.paper(0.8) : 1.6 * gap, false,
                  placeWords(ink, *hose, hose->hose->parts[index].along_mm)});
}

} // namespace siphonwright::drawing
