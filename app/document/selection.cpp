#include "app/document/document.h"

#include <algorithm>

namespace siphonwright {

bool Selection::contains(const PartRef& part) const
{
    return std::find(parts_.begin(), parts_.end(), part) != parts_.end();
}

void Selection::select(const PartRef& part)
{
    selectAll({part});
}

void Selection::selectAll(const std::vector<PartRef>& parts)
{
    std::vector<PartRef> wanted;
    for (const PartRef& part : parts)
        if (part.kind != PartKind::nothing && std::find(wanted.begin(), wanted.end(), part) == wanted.end())
            wanted.push_back(part);
    if (wanted == parts_)
        return;
    parts_ = std::move(wanted);
    part_ = parts_.empty() ? PartRef() : parts_.back();
    Q_EMIT partChanged();
}

void Selection::toggle(const PartRef& part)
{
    std::vector<PartRef> wanted = parts_;
    if (std::erase(wanted, part) == 0)
        wanted.push_back(part);
    selectAll(wanted);
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
