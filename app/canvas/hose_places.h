#pragma once

#include "app/canvas/viewport.h"

#include "core/layout/layout.h"

#include <QPointF>
#include <QRectF>
#include <QTransform>

#include <memory>
#include <vector>

namespace siphonwright {

/// Places on the hoses a few pixels apart, fewer where hoses are very long or many. Those round the box that
/// was asked for are kept for the next box near it, while the paper lies still and a hose is unchanged.
class HosePlaces {
public:
    /// Those of all hoses that lie in a box, px.
    std::vector<QPointF> within(const QRectF& box, const Layout& layout, const Viewport& viewport);

    static constexpr double step_px = 6;

private:
    struct OfHose {
        std::shared_ptr<const Route> route;
        double step_mm = 0;
        std::vector<QPointF> places; ///< in area_
    };
    QTransform paper_;
    Projection view_;
    QRectF area_;
    std::vector<OfHose> hoses_;
};

} // namespace siphonwright
