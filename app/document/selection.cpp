#include "app/document/document.h"

namespace siphonwright {

void Selection::select(const PartRef& part)
{
    if (part == part_)
        return;
    part_ = part;
    Q_EMIT partChanged();
}

void Selection::selectFinding(int index)
{
    if (index == finding_)
        return;
    finding_ = index;
    Q_EMIT findingChanged();
}

void Selection::hover(const Id& hose, double along_mm)
{
    if (hose == hover_hose_ && (hose.empty() || along_mm == hover_along_))
        return;
    hover_hose_ = hose;
    hover_along_ = along_mm;
    Q_EMIT hoverChanged();
}

} // namespace siphonwright
