#include "app/canvas/hose_places.h"

#include <algorithm>
#include <cstddef>
#include <iterator>

namespace siphonwright {
namespace {

double pastEdge(double at, double low, double high)
{
    return std::max({low - at, at - high, 0.0});
}

std::vector<QPointF> placesOn(const Centreline& line, const Viewport& viewport, double step_mm,
                              const QRectF& area)
{
    std::vector<QPointF> out;
    const auto count = std::size_t(line.empty() ? 0 : line.length() / step_mm + 1);
    for (std::size_t i = 0; i < count;) {
        const QPointF at = viewport.toScreen(line.at(step_mm * double(i)));
        const double away_px = std::max(pastEdge(at.x(), area.left(), area.right()),
                                        pastEdge(at.y(), area.top(), area.bottom()));
        if (!(away_px > 0))
            out.push_back(at);
        // A hose comes no nearer by more than it is followed.
        i += std::max<std::size_t>(1, std::size_t(away_px / viewport.zoom() / step_mm));
    }
    return out;
}

} // namespace

std::vector<QPointF> HosePlaces::within(const QRectF& box, const Layout& layout, const Viewport& viewport)
{
    constexpr std::size_t most = 8000;
    constexpr double round_px = 60; // steps of a drag are smaller, and hoses farther away are passed by
    if (paper_ != viewport.transform() || view_ != viewport.view() || !area_.contains(box)) {
        hoses_.clear();
        area_ = box.adjusted(-round_px, -round_px, round_px, round_px);
    }
    paper_ = viewport.transform();
    view_ = viewport.view();
    hoses_.resize(layout.hoses.size());
    const double most_each = double(
        std::clamp(most / std::max<std::size_t>(layout.hoses.size(), 1), std::size_t(20), std::size_t(1000)));
    std::vector<QPointF> out;
    for (std::size_t i = 0; i < hoses_.size(); ++i) {
        const std::shared_ptr<const Route>& route = layout.hoses[i].route;
        const Centreline& line = route->path.line;
        const double step_mm = std::max(step_px / viewport.zoom(), line.length() / most_each);
        OfHose& hose = hoses_[i];
        if (hose.route != route || hose.step_mm != step_mm)
            hose = {route, step_mm, placesOn(line, viewport, step_mm, area_)};
        std::copy_if(hose.places.begin(), hose.places.end(), std::back_inserter(out),
                     [&](QPointF at) { return box.contains(at); });
    }
    return out;
}

} // namespace siphonwright
