#include "app/drawing/ink.h"

#include <algorithm>

/// Item numbers of what sits in a hose.
namespace siphonwright::drawing {

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
              number, ink.palette.ink, Led{at, 1.6 * gap});
}

} // namespace siphonwright::drawing
