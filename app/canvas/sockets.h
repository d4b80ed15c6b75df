#pragma once

#include "app/canvas/viewport.h"

#include "core/layout/layout.h"
#include "core/sketch/edits.h"

#include <QString>

#include <optional>
#include <vector>

namespace siphonwright {

/// A port or nozzle that a hose end can be pushed onto.
struct Socket {
    HoseEnd end;
    Vec3 opening;
    Vec3 stop; ///< where the hose would start
    std::vector<Corner> stub;
    std::optional<double> bore_mm;
    QString name;

    bool sameAs(const HoseEnd& other) const;
};

/// Every port, then every nozzle, in the sketch's order.
std::vector<Socket> socketsOf(const Sketch& sketch);

/// The socket whose opening, stub or stop is under a place on the widget.
std::optional<Socket> socketAt(const Sketch& sketch, const Viewport& viewport, QPointF screen);

} // namespace siphonwright
