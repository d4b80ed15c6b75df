#pragma once

#include <QColor>

namespace siphonwright::drawing {

/// \param share 0 gives the first colour, 1 the second
inline QColor between(const QColor& a, const QColor& b, double share)
{
    return QColor::fromRgbF(float(a.redF() + (b.redF() - a.redF()) * share),
                            float(a.greenF() + (b.greenF() - a.greenF()) * share),
                            float(a.blueF() + (b.blueF() - a.blueF()) * share));
}

} // namespace siphonwright::drawing
