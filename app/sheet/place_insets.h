#pragma once

#include "app/sheet/inset.h"

#include <QRectF>

#include <cstddef>
#include <vector>

class QPainter;

/// Which insets go into a free box of the sheet, and where: in columns of one width, as those of the notes
/// are.
namespace siphonwright::sheet {

struct PlacedInset {
    std::size_t inset = 0;
    QRectF box; ///< with its heading
    double lettering_mm = 0;
};

struct Packed {
    std::vector<PlacedInset> placed; ///< from the box's top left corner
    double height_mm = 0;            ///< with the margins over and under; 0: nothing is placed
};

/// \param waiting  indices of insets, in order of need: what has no room is passed over, a group as a whole
/// \param wish  low takes as little height as it can; broad leaves a page to itself and takes few columns
enum class PackWish { low, broad };
Packed packed(const std::vector<Inset>& insets, const std::vector<std::size_t>& waiting, double width_mm,
              double most_mm, double lettering_mm, PackWish wish = PackWish::low);

/// Does `a` hold more of what is needed than `b`?
bool holdsMore(const Packed& a, const Packed& b);

/// `waiting` without what is placed.
std::vector<std::size_t> without(const std::vector<std::size_t>& waiting,
                                 const std::vector<PlacedInset>& placed);

/// The same, moved to a box's corner.
std::vector<PlacedInset> movedTo(std::vector<PlacedInset> placed, QPointF corner);

void paintInset(QPainter& painter, const Inset& inset, const PlacedInset& at);

} // namespace siphonwright::sheet
