#pragma once

#include <QImage>
#include <QSize>
#include <QString>

#include <vector>

namespace siphonwright::drawing {

/// The sketch's photograph, decoded: what the painter is lent, so that it decodes nothing itself.
struct Picture {
    QSize size_px;              ///< pixels as the document counts them: what Photo::mm_per_pixel is of
    std::vector<QImage> levels; ///< whole, then each half as large as the one before; empty: unreadable
    QString problem;            ///< why it cannot be read
};

} // namespace siphonwright::drawing
