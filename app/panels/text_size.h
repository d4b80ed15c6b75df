#pragma once

#include <QVariant>
#include <QWidget>

#include <array>

namespace siphonwright::panels {

/// Text that is to be larger than the usual, px at 100 %. The style sheet of the program has each of these,
/// times what people chose, so that such text follows their choice like all other.
inline constexpr std::array text_sizes_px = {14, 15, 16, 17, 20, 24};

inline void setTextSize(QWidget& widget, int px, bool strong = false)
{
    widget.setProperty("text_px", px);
    widget.setProperty("strong", strong);
}

} // namespace siphonwright::panels
